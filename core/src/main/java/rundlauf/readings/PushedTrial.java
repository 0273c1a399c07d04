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
    Section section, TrialHead head, DialReader dial, Columns columns, ForceReader force) {
  /**
   * Reads all but the points.
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
    Columns columns = Columns.of(HeadReader.table(trial, s), accepted);
    return new PushedTrial(
        s, head, dial, columns, ForceReader.read(trial.name(), s, columns, bench));
  }

  /** The distance of the load from the nut's face. */
  Optional<Quantity> contact() {
    return section.quantity("contact", Dimension.LENGTH, Bound.NOT_NEGATIVE);
  }

  /** The points in the order taken. */
  List<LoadReadings.Point> points(Pushing pushing) {
    return LoadPoints.of(columns, dial, pushing);
  }

  /**
   * The whole trial.
   *
   * @throws Refused for whatever is not as it should be in what stands round its points
   */
  LoadReadings with(
      Optional<Quantity> contact,
      Optional<LoadReadings.Nose> nose,
      List<LoadReadings.Point> points) {
    return new LoadReadings(
            head,
            dial.limits(),
            force.scale(),
            contact,
            section.section("body", "diameter", "modulus").map(PushedTrial::body),
            section.word("reference", "table", "base", "carriage", "mount"),
            section.text("reaction"),
            nose,
            points)
        .withStand(StandReader.read(head.name(), section));
  }

  private static LoadReadings.Body body(Section s) {
    return new LoadReadings.Body(
        s.requiredQuantity("diameter", Dimension.LENGTH, Bound.POSITIVE),
        s.requiredQuantity("modulus", Dimension.PRESSURE, Bound.POSITIVE));
  }
}
