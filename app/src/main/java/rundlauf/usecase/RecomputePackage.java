package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Method;
import rundlauf.report.Outcome;

/** Derives every figure of a package from its readings once more, and says what differs. */
public final class RecomputePackage {
  private final ContentsSource source;
  private final BenchPackage packages;
  private final PackageDocuments written;

  public RecomputePackage(ContentsSource source, BenchPackage packages, PackageDocuments written) {
    this.source = source;
    this.packages = packages;
    this.written = written;
  }

  /**
   * What was found.
   *
   * @param figures how many figures were compared
   * @param differs what is not as it was published
   */
  public record Recomputed(int figures, List<Saying> differs) {
    public Recomputed {
      differs = List.copyOf(differs);
    }
  }

  /**
   * Compares a package with what its readings give now: every file by size and digest, every figure
   * within a billionth or a hundredth of its standard uncertainty.
   *
   * @param place a folder, or a ZIP of it
   * @throws Refused when it is no package, or its bench cannot be read
   */
  public Recomputed recompute(String place) {
    BenchContents contents = source.contents(place);
    List<PackageFile> files =
        written.readDescriptor(text(contents, BenchPackage.DESCRIPTOR), BenchPackage.DESCRIPTOR);
    PublishedFigures published =
        written.readFigures(text(contents, BenchPackage.FIGURES), BenchPackage.FIGURES);
    List<Saying> differs = new ArrayList<>(files(contents, files));
    Bench bench = packages.bench(contents);
    Draws draws = new Draws(published.seed(), published.draws());
    Map<String, PublishedFigures.PublishedTrial> left = new LinkedHashMap<>(published.trials());
    int figures = 0;
    for (Outcome outcome : packages.outcomes(bench, draws)) {
      String file = outcome.trial().file();
      PublishedFigures.PublishedTrial was = left.remove(file);
      if (was == null) {
        differs.add(Saying.of("recompute-trial-new", file, Arg.of(file)));
      } else {
        figures += was.figures().size();
        differs.addAll(trial(file, was, outcome));
      }
    }
    left.keySet().forEach(f -> differs.add(Saying.of("recompute-trial-gone", f, Arg.of(f))));
    return new Recomputed(figures, differs);
  }

  private static String text(BenchContents contents, String path) {
    return contents
        .find(path)
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .orElseThrow(() -> Refused.at(Place.of(path), "package-missing"));
  }

  private static List<Saying> files(BenchContents contents, List<PackageFile> files) {
    List<Saying> differs = new ArrayList<>();
    List<String> left = new ArrayList<>(contents.paths());
    left.remove(BenchPackage.DESCRIPTOR);
    for (PackageFile file : files) {
      Optional<byte[]> content = contents.find(file.path());
      left.remove(file.path());
      if (content.isEmpty()) {
        differs.add(Saying.of("recompute-file-gone", file.path(), Arg.typed(file.path())));
      } else if (!BenchPackage.hash(content.get()).equals(file.hash())
          || content.get().length != file.bytes()) {
        differs.add(Saying.of("recompute-file-changed", file.path(), Arg.typed(file.path())));
      }
    }
    left.forEach(path -> differs.add(Saying.of("recompute-file-new", path, Arg.typed(path))));
    return differs;
  }

  private static List<Saying> trial(
      String file, PublishedFigures.PublishedTrial was, Outcome outcome) {
    if (outcome instanceof Outcome.Unusable unusable) {
      String code = unusable.refused().saying().code();
      return was.error().filter(code::equals).isPresent()
          ? List.of()
          : List.of(Saying.of("recompute-trial-refused", file, Arg.of(file), Arg.of(code)));
    }
    if (was.error().isPresent()) {
      return List.of(Saying.of("recompute-trial-usable", file, Arg.of(file)));
    }
    List<Saying> differs = new ArrayList<>();
    int version = Method.of(TrialKind.of(outcome.trial())).version();
    if (version != was.method()) {
      differs.add(
          Saying.of("recompute-method", file, Arg.of(file), Arg.of(was.method()), Arg.of(version)));
    }
    differs.addAll(
        FigureDifferences.of(file, was.figures(), ((Outcome.Figures) outcome).reduced().figures()));
    return differs;
  }
}
