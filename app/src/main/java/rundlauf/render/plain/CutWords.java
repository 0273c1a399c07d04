package rundlauf.render.plain;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import rundlauf.cutting.prediction.CutTask;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Format;
import rundlauf.quantity.Shown;
import rundlauf.quantity.Unit;

/** A cut in the numbers that are set at the machine. */
final class CutWords {
  /** An interval narrower than this, relatively, is not shown: no machine is set so finely. */
  private static final double NARROW = 1e-3;

  /** Digits of a value without doubt, beside limits. */
  private static final int EXACT_DIGITS = 4;

  private static final int TIME_DIGITS = 2;

  private CutWords() {}

  /** The cut in one sentence. */
  static String sentence(Sheet sheet, CutTask task, Prediction found) {
    var cut = task.cut();
    String setup = task.setup().name();
    String words =
        sheet.word(
            "cut-in-words",
            operation(task),
            Arg.of(task.cutter().diameter().si(), Unit.MILLIMETRE),
            Arg.of(task.cutter().teeth()),
            Arg.of(task.material().name()),
            Arg.of(cut.speed().si(), Unit.RPM),
            feed(found),
            Arg.of(cut.axial().si(), Unit.MILLIMETRE),
            Arg.of(cut.radial().si(), Unit.MILLIMETRE));
    return setup.isEmpty() ? words : words + " " + sheet.word("cut-on-setup", Arg.of(setup));
  }

  /** The cut of a plan, row by row. */
  static void rows(Sheet sheet, SetupPlan plan, Prediction found) {
    var cut = found.task().cut();
    plan.cutter().ifPresent(name -> sheet.row(sheet.word("shop-cutter"), name));
    sheet.row(sheet.word("shop-operation"), sheet.word("shop-operation-is", operation(found)));
    sheet.row(sheet.word("shop-speed"), Format.amount(cut.speed().si(), Unit.RPM));
    sheet.row(
        sheet.word("shop-feed"),
        sheet.word("shop-feed-is", feed(found), Arg.of(perTooth(found), Unit.MICROMETRE)));
    Optional<SetupPlan.Passes> passes = plan.passes();
    long deep = passes.map(SetupPlan.Passes::deep).orElse(1);
    long wide = passes.map(SetupPlan.Passes::wide).orElse(1);
    sheet.row(
        sheet.word("shop-depth"),
        sheet.word("shop-depth-is", Arg.of(cut.axial().si(), Unit.MILLIMETRE), Arg.of(deep)));
    sheet.row(
        sheet.word("shop-width"),
        sheet.word("shop-width-is", Arg.of(cut.radial().si(), Unit.MILLIMETRE), Arg.of(wide)));
    plan.time().ifPresent(time -> sheet.row(sheet.word("shop-time"), time(time)));
    sheet.row(
        sheet.word("figure.kinematics.removalRate"),
        value(found.figures().at("kinematics.removalRate")));
  }

  private static double perTooth(Prediction found) {
    double teethPerSecond = found.task().cut().speed().si() * found.task().cutter().teeth();
    return found.figures().at("kinematics.feed").value() / teethPerSecond;
  }

  /** A time as it is planned: two digits, seconds below two minutes. */
  static String time(double seconds) {
    Unit unit = seconds < 120 ? Unit.SECOND : seconds < 7200 ? Unit.MINUTE : Unit.HOUR;
    return rough(seconds, unit, TIME_DIGITS);
  }

  private static Arg operation(CutTask task) {
    String name = task.cut().operation().name();
    return Arg.term("operation-" + name.toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private static Arg operation(Prediction found) {
    return operation(found.task());
  }

  private static Arg feed(Prediction found) {
    double feed = found.figures().at("kinematics.feed").value();
    return Arg.of(feed, Unit.MILLIMETRE_PER_MINUTE);
  }

  /** A known figure with its range, where the range is wide enough to matter. */
  static String value(Figure figure) {
    Shown shown = Shown.of(figure).orElseThrow();
    return shown.high() - shown.low() < NARROW * Math.abs(shown.value())
        ? Format.amount(figure.value(), figure.unit())
        : FigureText.of(shown);
  }

  /** A known figure without its range. */
  static String alone(Figure figure) {
    Shown shown = Shown.of(figure).orElseThrow();
    return shown.u() < NARROW * Math.abs(shown.value())
        ? rough(figure.value(), figure.unit(), EXACT_DIGITS)
        : FigureText.value(shown) + FigureText.unit(shown.unit());
  }

  /** A value rounded to so many digits, never before the decimal point. */
  private static String rough(double si, Unit unit, int digits) {
    double value = unit.fromSi(si);
    int places = digits - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
    BigDecimal rounded =
        new BigDecimal(value).setScale(Math.max(0, places), RoundingMode.HALF_EVEN);
    return Format.amount(unit.toSi(rounded.doubleValue()), unit);
  }

  /** A known count, which has no decimals. */
  static String count(Figure figure) {
    Shown shown = Shown.of(figure).orElseThrow();
    String value = Long.toString(Math.round(shown.value()));
    long low = Math.round(shown.low());
    long high = Math.round(shown.high());
    return low == high ? value : value + " (" + low + " to " + high + ")";
  }
}
