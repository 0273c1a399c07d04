package rundlauf.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Cut;
import rundlauf.cutting.prediction.CutAsked;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;
import rundlauf.safety.Standing;

/** Our own plans of before; whoever moves them says why. */
class PlanFrozenTest {
  private static MadeJob made() {
    Measured stiffness =
        MadeJob.doubtful(1.5e6, 0.15e6, Unit.NEWTON_PER_MICROMETRE, Cause.normal("rig", "made"));
    Measured eccentricity =
        MadeJob.doubtful(6e-6, 1e-6, Unit.MICROMETRE, Cause.normal("dial", "made"));
    return new MadeJob()
        .setup("Heron", stiffness, eccentricity, Standing.INSPECTED)
        .setup("Wren", 0.4e6, 15e-6, Standing.INSPECTED);
  }

  @Test
  void aSlot() {
    assertThat(shown(made().with("tolerance", "0.02 mm")))
        .isEqualTo(
            """
            Heron does it: SLOT 24000 rpm 5.480 um 0.4000 x 3.0000 mm, 3 deep 1 wide, 41.06 s, p 0.9922, chip-thinnest
            Wren misses: SLOT 24000 rpm 11.400 um 0.4000 x 3.0000 mm, 3 deep 1 wide, 19.74 s, p 0.0000, wall-error
            """);
  }

  @Test
  void aPocket() {
    assertThat(shown(made().with("feature", "pocket").with("width", "6 mm")))
        .isEqualTo(
            """
            Heron does it: SIDE_DOWN 24000 rpm 11.400 um 1.2000 x 3.0000 mm, 1 deep 2 wide, 13.16 s, p 0.9922, chip-thickest
            Wren does it: SIDE_UP 24000 rpm 11.400 um 1.2000 x 1.5000 mm, 1 deep 3 wide, 19.74 s, p 1.0000, chip-thickest
            """);
  }

  @Test
  void aGroove() {
    MadeJob groove =
        made()
            .with("feature", "engrave")
            .with("cutter", "pointed")
            .with("depth", "0.2 mm")
            .with("width", "0.35 mm")
            .with("tolerance", "0.05 mm");
    assertThat(shown(groove))
        .isEqualTo(
            """
            Heron does it: SLOT 24000 rpm 1.720 um 0.2000 x 0.2155 mm, 1 deep 1 wide, 87.21 s, p 1.0000, chip-thickest
            Wren does it: SLOT 24000 rpm 1.720 um 0.2000 x 0.2155 mm, 1 deep 1 wide, 87.21 s, p 1.0000, chip-thickest
            """);
  }

  private static String shown(MadeJob made) {
    StringBuilder text = new StringBuilder();
    made.plan().setups().forEach(plan -> text.append(shown(plan)));
    return text.toString();
  }

  private static String shown(SetupPlan plan) {
    Prediction best = plan.best().orElseThrow();
    CutAsked cut = best.task().cut();
    double feed = ((Cut.FeedPerTooth) cut.feed()).length().si();
    return String.format(
        Locale.ROOT,
        "%s %s %s %.0f rpm %.3f um %.4f x %.4f mm, %d deep %d wide, %.2f s, p %.4f, %s%n",
        plan.setup(),
        plan.feasible() ? "does it:" : "misses:",
        cut.operation(),
        Unit.RPM.fromSi(cut.speed().si()),
        Unit.MICROMETRE.fromSi(feed),
        Unit.MILLIMETRE.fromSi(cut.axial().si()),
        Unit.MILLIMETRE.fromSi(cut.radial().si()),
        plan.passes().orElseThrow().deep(),
        plan.passes().orElseThrow().wide(),
        plan.time().orElseThrow(),
        best.probability(),
        plan.boundBy().map(Limit::code).orElse("-"));
  }
}
