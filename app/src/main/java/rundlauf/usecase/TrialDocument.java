package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.reduce.Reduced;

/**
 * The figures of a stored trial as a document: the very one that the command gives for its exported
 * file, kept by the digest of all it depends on.
 */
public final class TrialDocument {
  private final StoredBench stored;
  private final KeptResults results;
  private final FigureCache figures;
  private final Function<Reduced, String> write;
  private final String version;

  /**
   * @param write makes the document
   * @param version of the program and its methods
   */
  public TrialDocument(
      StoredBench stored,
      KeptResults results,
      FigureCache figures,
      Function<Reduced, String> write,
      String version) {
    this.stored = stored;
    this.results = results;
    this.figures = figures;
    this.write = write;
    this.version = version;
  }

  /**
   * The document of a trial.
   *
   * @throws rundlauf.quantity.Refused when the trial bears no figures
   */
  public String of(TrialName name) {
    BenchContents texts = stored.texts(name.bench());
    Bench bench = results.bench(texts);
    Trial trial = find(bench, name);
    FigureKey key = key(texts, trial);
    Optional<String> known = figures.find(key);
    if (known.isPresent()) {
      return known.get();
    }
    var source = new TrialSource.Sourced(trial, Optional.of(bench));
    var reduce = new ReduceTrial(file -> source, Work.sequential());
    String document = write.apply(reduce.reduce(trial.file(), Draws.DEFAULT));
    figures.keep(key, document);
    return document;
  }

  private static Trial find(Bench bench, TrialName name) {
    String path = StoredBench.path(name.trial());
    return bench.trials().stream()
        .filter(t -> t.file().equals(path))
        .findFirst()
        .orElseThrow(
            () -> Refused.at(Place.NOWHERE, "trial-not-kept-there", Arg.typed(name.trial())));
  }

  /** Everything on the bench: an inspection of any trial may hold the spindle of this one. */
  private FigureKey key(BenchContents texts, Trial trial) {
    StringBuilder inputs = new StringBuilder(trial.file()).append('\n');
    for (String path : texts.paths()) {
      String text = new String(texts.find(path).orElseThrow(), StandardCharsets.UTF_8);
      inputs.append(path).append(' ').append(text.length()).append('\n').append(text);
    }
    Draws draws = Draws.DEFAULT;
    return new FigureKey(
        inputs.toString(), "draws " + draws.count(), draws.seed(), trial.kind(), version);
  }
}
