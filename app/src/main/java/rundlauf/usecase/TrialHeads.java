package rundlauf.usecase;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.guide.Step;
import rundlauf.quantity.Place;
import rundlauf.report.Outcome;

/** Looks whether what a trial says of itself, without its readings, can be read. */
final class TrialHeads {
  private final KeptResults results;

  TrialHeads(KeptResults results) {
    this.results = results;
  }

  /** Refuses a trial whose document cannot be read; what its readings lack is let pass. */
  void look(BenchContents texts, TrialName trial) {
    if (results.outcome(texts, trial) instanceof Outcome.Unusable unusable) {
      Place place = unusable.refused().place();
      boolean ofDocument = place.file().equals(StoredBench.path(trial.trial()));
      if (ofDocument && !place.field().equals("readings")) {
        throw unusable.refused();
      }
    }
  }

  /** A row as the first step asks for it, so that the table has the columns it will have. */
  static Kept.Reading asked(Step step) {
    List<TypedReading.Cell> cells = new ArrayList<>();
    step.given().forEach(g -> cells.add(new TypedReading.Cell(g.column(), g.text())));
    step.asked()
        .forEach(
            a ->
                cells.add(
                    new TypedReading.Cell(
                        a.column(), a.choices().isEmpty() ? "0" : a.choices().get(0))));
    return new Kept.Reading(1, new TypedReading("first", cells), Instant.EPOCH, Optional.empty());
  }
}
