package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.report.Outcome;

/** Makes a package of a bench: its files as they are, what they are, and what they tell. */
public final class BenchPackage {
  /** What lies in a package (Frictionless Data Package, version 1). */
  public static final String DESCRIPTOR = "datapackage.json";

  /** Every derived figure. */
  public static final String FIGURES = "figures.json";

  private final Documents documents;
  private final PackageDocuments written;
  private final Work work;

  public BenchPackage(Documents documents, PackageDocuments written, Work work) {
    this.documents = documents;
    this.written = written;
    this.work = work;
  }

  /** The bench of a package or folder. */
  Bench bench(BenchContents contents) {
    return documents.bench(contents);
  }

  /** What became of each of its trials. */
  List<Outcome> outcomes(Bench bench, Draws draws) {
    return BenchOutcomes.reduced(bench, draws, work);
  }

  /**
   * The package of a bench; two documents of an older package are made anew.
   *
   * @throws rundlauf.quantity.Refused when the bench cannot be read
   */
  public BenchContents of(BenchContents contents, Draws draws) {
    Bench bench = bench(contents);
    return of(contents, bench, outcomes(bench, draws), draws);
  }

  BenchContents of(BenchContents contents, Bench bench, List<Outcome> outcomes, Draws draws) {
    BenchContents all =
        contents.with(FIGURES, bytes(written.figures(outcomes, draws))).without(DESCRIPTOR);
    List<PackageFile> files = new ArrayList<>();
    for (String path : all.paths()) {
      files.add(file(path, all.find(path).orElseThrow()));
    }
    return all.with(DESCRIPTOR, bytes(written.descriptor(bench.name(), files)));
  }

  private PackageFile file(String path, byte[] content) {
    Optional<PackageFile.Columns> table =
        path.endsWith(".csv")
            ? Optional.of(
                TableColumns.of(documents.table(new String(content, StandardCharsets.UTF_8), path)))
            : Optional.empty();
    return new PackageFile(path, content.length, hash(content), table);
  }

  /** {@code sha256:} and the digest of a file. */
  static String hash(byte[] content) {
    return "sha256:" + Sha256.hex(content);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
