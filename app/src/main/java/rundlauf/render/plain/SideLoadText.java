package rundlauf.render.plain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Unit;
import rundlauf.reduce.push.Straightness;
import rundlauf.reduce.sideload.Compliances;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.render.Sentences;

/** The figures of a side-load trial as text. */
final class SideLoadText {
  /** Under this probability a straight line does not fit; common practice, no source. */
  private static final double BENT = 0.05;

  /** Smaller probabilities are only said to be so. */
  private static final double LEAST = 0.01;

  private SideLoadText() {}

  static void write(Sheet sheet, SideLoad load) {
    Map<String, Figure> whole = new LinkedHashMap<>();
    whole.put("label-stiffness", load.stiffness());
    whole.put("label-compliance", load.compliance());
    whole.put("label-play", load.play());
    whole.put("label-hysteresis", load.hysteresis());
    sheet.group("heading-under-load", List.of(), whole);
    load.straightness().ifPresent(test -> straightness(sheet, test));
    Map<String, Figure> parted = new LinkedHashMap<>();
    parted.put("label-setup-stiffness", load.setupStiffness());
    parted.put("label-shank-compliance", load.shankCompliance());
    sheet.group("heading-without-shank", List.of(), parted);
    SharesText.write(sheet, load.compliances().shares());
    directions(sheet, load.compliances());
    reach(sheet, load);
    Blame.write(sheet, sheet.word("label-stiffness"), load.stiffness(), load.head().name());
    Blame.write(sheet, sheet.word("label-play"), load.play(), load.head().name());
  }

  private static void directions(Sheet sheet, Compliances compliances) {
    Map<String, Figure> axes = new LinkedHashMap<>();
    axes.put("label-soft-angle", compliances.soft().angle());
    axes.put("label-soft-stiffness", compliances.soft().stiffness());
    axes.put("label-stiff-angle", compliances.stiff().angle());
    axes.put("label-stiff-stiffness", compliances.stiff().stiffness());
    sheet.group("heading-directions", List.of(), axes);
  }

  private static void reach(Sheet sheet, SideLoad load) {
    Compliances found = load.compliances();
    if (found.reach().isEmpty()) {
      return;
    }
    sheet.heading("heading-reach");
    found.reach().forEach(r -> sheet.figure(distance(sheet, "label-reach-at", r), r.stiffness()));
    sheet.heading("heading-noses");
    found
        .otherNoses()
        .forEach(r -> sheet.figure(distance(sheet, "label-nose-of", r), r.stiffness()));
    sheet.line("");
    found.sayings().forEach(said -> sheet.paragraph(Sentences.text(said)));
  }

  private static String distance(Sheet sheet, String code, Compliances.Reach reach) {
    return sheet.word(code, Arg.of(reach.at(), Unit.MILLIMETRE));
  }

  /** How straight the line is, in words. */
  static void straightness(Sheet sheet, Straightness test) {
    String code =
        test.p() >= BENT
            ? "straightness-straight"
            : test.p() >= LEAST ? "straightness-bent" : "straightness-bent-surely";
    sheet.row(sheet.word("label-straightness"), sheet.word(code, percent(test.p())));
  }

  /** A probability in percent, not finer than it is worth. */
  private static Arg percent(double p) {
    return Arg.of(Math.max(1, Math.round(100 * p)));
  }
}
