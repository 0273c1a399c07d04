package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Bench;
import rundlauf.bench.Cut;
import rundlauf.bench.Cutter;
import rundlauf.bench.FileName;
import rundlauf.bench.Setup;
import rundlauf.character.EnteredCharacter;
import rundlauf.character.MeasuredCharacter;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.prediction.CutTasks;
import rundlauf.cutting.prediction.Predicting;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Saying;
import rundlauf.report.Outcome;

/** Predicts what a cut will do. */
public final class PredictCut {
  private final CutSource source;
  private final Work work;
  private @Nullable Spindle last;

  public PredictCut(CutSource source, Work work) {
    this.source = source;
    this.work = work;
  }

  /** A prediction, under the title of its cut. */
  public record Predicted(Optional<String> title, Prediction prediction) {}

  /** A spindle's trials reduced: kept, so that many cuts on one spindle do not reduce them anew. */
  private record Spindle(Bench bench, String name, Draws draws, List<Outcome> outcomes) {
    boolean is(Bench other, String spindle, Draws drawn) {
      return bench == other && name.equals(spindle) && draws.equals(drawn);
    }
  }

  /**
   * What the cut of a file will do.
   *
   * @param file as the user named it
   * @param draws that everything is drawn with
   * @param states how many of them are looked at, at most {@code draws.count()}
   * @throws rundlauf.quantity.Refused when the cut, or the bench its setup is of, cannot be read,
   *     or when what it asks cannot be cut so; a trial of the bench that is refused is a caution
   */
  public Predicted predict(String file, Draws draws, int states) {
    CutSource.Sourced sourced = source.read(file);
    Cut cut = sourced.cut();
    Optional<Bench> bench = sourced.bench();
    CutterInUse cutter = CutTasks.cutter(cut, bench);
    SetupCharacter setup =
        bench.isPresent()
            ? measured(cut, bench.get(), cutter, draws)
            : EnteredCharacter.of((Cut.SetupGiven) cut.setup(), "cut/" + FileName.of(file), draws);
    return new Predicted(
        cut.title(), Predicting.predict(CutTasks.of(cut, cutter, setup, bench), draws, states));
  }

  private SetupCharacter measured(Cut cut, Bench bench, CutterInUse cutter, Draws draws) {
    Setup setup = CutTasks.setup(cut, bench);
    Spindle spindle = spindle(bench, setup.spindle(), draws);
    SetupCharacter character =
        MeasuredCharacter.of(
            bench,
            setup,
            typed(cut, bench, setup),
            BenchOutcomes.figures(spindle.outcomes()),
            cutter.stickout(),
            draws);
    List<Saying> cautions = new ArrayList<>(character.cautions());
    cautions.addAll(BenchOutcomes.refused(spindle.outcomes()));
    return character.withCautions(cautions);
  }

  /** The cutter as it was typed, in the cut or in the bench. */
  private static Optional<Cutter> typed(Cut cut, Bench bench, Setup setup) {
    return cut.cutter().orElse(null) instanceof Cut.CutterGiven given
        ? Optional.of(given.cutter())
        : cut.cutter()
            .map(named -> ((Cut.CutterNamed) named).name())
            .or(setup::cutter)
            .flatMap(bench::cutter);
  }

  private Spindle spindle(Bench bench, String name, Draws draws) {
    Spindle known = last;
    if (known == null || !known.is(bench, name, draws)) {
      known = new Spindle(bench, name, draws, BenchOutcomes.ofSpindle(bench, name, draws, work));
      last = known;
    }
    return known;
  }
}
