package rundlauf.report;

import java.util.LinkedHashMap;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** A place in a report for drawings that need no more of their trial. */
final class TrialSheet {
  private TrialSheet() {}

  static Sheet turning(String rotation) {
    Place place = new Place("trials/t.yaml", 1, 1, "");
    var fields = new LinkedHashMap<String, Entry>();
    fields.put("trial", new Entry.Scalar("runout", false, place));
    var document = new Entry.Fields(fields, new LinkedHashMap<>(), place);
    var trial = new Trial("trials/t.yaml", document, Optional.empty());
    var outcome =
        new Outcome.Unusable(trial, Optional.of("Heron 3 mm"), Refused.at(place, "no-rows"));
    return new Sheet(4, "", outcome, Optional.of(rotation).filter(r -> !r.isEmpty()));
  }
}
