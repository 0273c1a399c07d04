package rundlauf.wire;

import java.util.List;
import java.util.stream.Collectors;
import rundlauf.reduce.NormVerdict;

/** What norms say, as a list of a document. */
final class VerdictList {
  private VerdictList() {}

  static void write(JsonLine json, List<NormVerdict> verdicts) {
    json.list("verdicts", verdicts, verdict -> verdict(json, verdict));
  }

  private static void verdict(JsonLine json, NormVerdict verdict) {
    json.text("norm", verdict.norm());
    json.text("about", verdict.about());
    json.figure("limit", verdict.limit());
    json.figure("figure", verdict.figure());
    if (verdict.probability().isPresent()) {
      json.number("probability", verdict.probability().getAsDouble());
    } else {
      json.nothing("probability");
    }
    json.text("verdict", verdict.outcome().code());
    json.text("text", verdict.said().stream().map(json::worded).collect(Collectors.joining(" ")));
  }
}
