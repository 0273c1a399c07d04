package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.bench.Trial;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** What is common to the trials that push a nose: the stand, the dial, the force. */
record PushedTrial(
    TrialHead head, Around around, DialReader dial, Columns columns, ForceReader force) {

  /**
   * What stands round the points.
   *
   * @param contact the distance of the load from the nut's face
   */
  record Around(
      Optional<Quantity> contact,
      Optional<LoadReadings.Body> body,
      Optional<String> reference,
      Optional<String> reaction,
      Optional<LoadReadings.Stand> stand) {}

  /**
   * Reads all but the points; the document first, so that what it says is refused before a trial
   * has rows.
   *
   * @throws Refused for whatever is not as it should be
   */
  static PushedTrial of(Trial trial, Optional<Bench> bench, TrialKind kind, List<Column> accepted) {
    Section s =
        HeadReader.section(
            trial,
            kind,
            "load",
            "contact",
            "body",
            "reference",
            "reaction",
            StandReader.FIELD,
            "indicator");
    TrialHead head = HeadReader.read(trial, s, bench);
    DialReader dial = DialReader.read(trial.name(), s, bench);
    Around around = around(s, trial.name());
    Columns columns = Columns.of(HeadReader.table(trial, s), accepted);
    ForceReader force = ForceReader.read(trial.name(), s, columns, bench);
    return new PushedTrial(head, around, dial, columns, force);
  }

  private static Around around(Section s, String file) {
    return new Around(
        s.quantity("contact", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        s.section("body", "diameter", "modulus").map(PushedTrial::body),
        s.word("reference", "table", "base", "carriage", "mount"),
        s.text("reaction"),
        StandReader.read(file, s));
  }

  private static LoadReadings.Body body(Section s) {
    return new LoadReadings.Body(
        s.requiredQuantity("diameter", Dimension.LENGTH, Bound.POSITIVE),
        s.requiredQuantity("modulus", Dimension.PRESSURE, Bound.POSITIVE));
  }

  /** The points in the order taken. */
  List<LoadReadings.Point> points(Pushing pushing) {
    return LoadPoints.of(columns, dial, pushing);
  }

  /** The whole trial. */
  LoadReadings with(
      Optional<Quantity> contact,
      Optional<LoadReadings.Nose> nose,
      List<LoadReadings.Point> points) {
    return new LoadReadings(
            head,
            dial.limits(),
            force.scale(),
            contact,
            around.body(),
            around.reference(),
            around.reaction(),
            nose,
            points)
        .withStand(around.stand());
  }
}
