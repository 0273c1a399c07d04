package rundlauf.usecase;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rundlauf.guide.Step;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.Unfinished;
import rundlauf.report.Outcome;

/** Looks whether what a trial says of itself, without its readings, can be read. */
final class TrialHeads {
  /** What the rows are refused for and only the document can mend. */
  private static final Set<String> OF_THE_RIG = Set.of("count-without-mass", "load-said-twice");

  private final KeptResults results;

  TrialHeads(KeptResults results) {
    this.results = results;
  }

  /** Refuses a trial whose document cannot be read; what its readings lack is let pass. */
  void look(BenchContents texts, TrialName trial) {
    if (results.outcome(texts, trial) instanceof Outcome.Unusable unusable) {
      Place place = unusable.refused().place();
      Saying saying = unusable.refused().saying();
      Place document = Place.of(StoredBench.path(trial.trial()));
      if (OF_THE_RIG.contains(saying.code())) {
        throw new Refused(saying, document.field("load"));
      }
      boolean ofDocument =
          place.file().equals(document.file()) && !place.field().equals("readings");
      if (ofDocument && !Unfinished.is(unusable.refused())) {
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
