package rundlauf.render.workbook;

import java.util.Locale;
import java.util.OptionalDouble;
import rundlauf.guide.Scene;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Unit;
import rundlauf.render.Wording;

/** The drawings of a sheet: where dial, foot, lever and load go. */
final class Scenes {
  private static final int WIDTH = 340;
  private static final int HEIGHT = 196;

  /** Where the spindle's axis stands, and its nut's face. */
  private static final double AXIS = 96;

  private static final double FACE = 74;
  private static final double TABLE = 184;

  private final Wording words;
  private final Svg svg = new Svg(WIDTH, HEIGHT);

  private Scenes(Wording words) {
    this.words = words;
  }

  static String svg(Scene scene, Wording words) {
    Scenes drawing = new Scenes(words);
    if (scene instanceof Scene.Runout runout) {
      return drawing.runout(runout);
    }
    if (scene instanceof Scene.SideLoad load) {
      return drawing.sideLoad(load);
    }
    if (scene instanceof Scene.Axial axial) {
      return drawing.axial(axial);
    }
    if (scene instanceof Scene.Growth) {
      return drawing.growth();
    }
    return scene instanceof Scene.Speed
        ? drawing.speed()
        : drawing.inspection(((Scene.Inspection) scene).item());
  }

  private String word(String name, Arg... args) {
    return words.filled("drawing-" + name, args);
  }

  private String runout(Scene.Runout scene) {
    nose();
    double y = height(scene.station());
    dial(y);
    foot(y, TABLE);
    table();
    scene
        .station()
        .ifPresent(
            at -> {
              svg.line("d-thin", 40, FACE, AXIS - 8, FACE).line("d-thin", 40, y, AXIS - 8, y);
              svg.arrow("d-thin", 46, FACE, 46, y);
              svg.text("end", 40, (FACE + y) / 2 + 4, Format.number(millimetres(at)) + " mm");
            });
    turned(scene.angle());
    String degrees = Format.number(Math.round(Math.toDegrees(scene.angle()) * 10) / 10.0);
    return svg.titled(word("runout", Arg.of(degrees)));
  }

  /** From above: the plunger to the right, the mark turned forward from it. */
  private void turned(double angle) {
    double x = 262;
    double y = 92;
    svg.circle("d-part", x, y, 52).circle("d-solid", x, y, 12);
    svg.line("d-line", x + 12, y, x + 66, y).circle("d-part", x + 70, y, 5);
    double mx = x + 52 * Math.cos(angle);
    double my = y + 52 * Math.sin(angle);
    svg.line("d-mark", x + 36 * Math.cos(angle), y + 36 * Math.sin(angle), mx, my);
    svg.circle("d-dot", mx, my, 5);
    double part = angle % (2 * Math.PI);
    arc(x, y, angle > 0 && part < 0.05 ? 2 * Math.PI - 0.05 : part); // a whole turn, nearly drawn
    svg.text("middle", x, 168, word("from-above"));
    svg.text("middle", x, 22, word("running"));
  }

  private void arc(double x, double y, double angle) {
    if (angle < 0.05) {
      return;
    }
    double r = 26;
    double ex = x + r * Math.cos(angle);
    double ey = y + r * Math.sin(angle);
    svg.path(
        "d-turn",
        String.format(
            Locale.ROOT,
            "M%.1f %.1fA%.1f %.1f 0 %d 1 %.1f %.1f",
            x + r,
            y,
            r,
            r,
            angle > Math.PI ? 1 : 0,
            ex,
            ey));
    double back = angle - 0.35;
    for (double at : new double[] {r - 5, r + 5}) {
      svg.line("d-turn", ex, ey, x + at * Math.cos(back), y + at * Math.sin(back));
    }
  }

  private String sideLoad(Scene.SideLoad scene) {
    nose();
    lever(scene.load());
    dial(Body.of(scene.place()));
    table();
    String where = scene.reference().isEmpty() ? "" : word("foot-" + scene.reference());
    svg.text("end", 174, TABLE - 6, where);
    compass(scene.direction());
    String degrees = Format.number(Math.round(Math.toDegrees(scene.direction()) * 10) / 10.0);
    return svg.titled(word("side-load", Arg.of(degrees), Arg.of(scene.place())));
  }

  private void lever(String load) {
    double y = FACE + 44;
    svg.line("d-line", 44, y + 36, 44, y).arrow("d-push", 44, y, AXIS - 7, y);
    svg.line("d-line", 10, y + 36, 44, y + 36).circle("d-part", 44, y + 36, 4);
    svg.line("d-line", 14, y + 36, 14, y + 46).box("d-solid", 6, y + 46, 16, 14);
    svg.text("start", 28, y + 58, load);
  }

  /** A body that a dial touches from the right: how high, and how far from the axis. */
  private enum Body {
    SHANK(FACE + 44, 6),
    NUT(FACE - 12, 19),
    HOUSING(FACE - 36, 34),
    MOUNT(FACE - 54, 40);

    private final double y;
    private final double from;

    Body(double y, double from) {
      this.y = y;
      this.from = from;
    }

    /** What carries the mount is drawn as the mount is. */
    static Body of(String place) {
      return switch (place) {
        case "shank" -> SHANK;
        case "nut" -> NUT;
        case "housing" -> HOUSING;
        default -> MOUNT;
      };
    }
  }

  private void dial(Body body) {
    if (body == Body.MOUNT) {
      svg.box("d-part", AXIS - 40, 12, 80, 16);
    }
    dial(body.y, body.from);
    foot(body.y, TABLE);
  }

  /** The machine from above: +X to the right, +Y away. */
  private void compass(double direction) {
    double x = 268;
    double y = 96;
    svg.arrow("d-thin", x - 50, y, x + 52, y).arrow("d-thin", x, y + 50, x, y - 52);
    svg.text("start", x + 46, y - 8, "+X").text("end", x - 6, y - 44, "+Y");
    svg.circle("d-part", x, y, 9);
    double c = Math.cos(direction);
    double s = -Math.sin(direction);
    svg.arrow("d-push", x - 46 * c, y - 46 * s, x - 10 * c, y - 10 * s);
    svg.text("middle", x, 168, word("from-above"));
  }

  private String axial(Scene.Axial scene) {
    nose();
    boolean push = scene.direction().equals("push");
    double from = push ? TABLE - 6 : FACE + 54;
    double to = push ? FACE + 54 : TABLE - 6;
    svg.arrow("d-push", AXIS, from, AXIS, to);
    double y = FACE - 4;
    svg.line("d-line", AXIS + 30, y, AXIS + 30, y + 30).circle("d-part", AXIS + 30, y + 46, 16);
    svg.line("d-line", AXIS + 30, y + 46, AXIS + 38, y + 38);
    svg.line("d-line", AXIS + 46, y + 46, 176, y + 46).line("d-line", 176, y + 46, 176, TABLE);
    svg.box("d-solid", 164, TABLE - 8, 24, 8);
    table();
    svg.text("start", 206, 96, word(push ? "push" : "pull")).text("start", 206, 114, scene.load());
    return svg.titled(word("axial"));
  }

  private String growth() {
    nose();
    double y = FACE + 56;
    svg.line("d-line", AXIS, y, AXIS, y + 14).circle("d-part", AXIS, y + 30, 16);
    svg.line("d-line", AXIS, y + 30, AXIS + 8, y + 22).line("d-line", AXIS, y + 46, AXIS, TABLE);
    table();
    svg.circle("d-part", 240, 80, 34)
        .line("d-mark", 240, 80, 240, 56)
        .line("d-mark", 240, 80, 258, 90);
    svg.path("d-part", "M302 40a7 7 0 0 1 14 0v52a13 13 0 1 1 -14 0z").circle("d-dot", 309, 104, 7);
    svg.line("d-mark", 309, 98, 309, 62);
    svg.text("middle", 240, 140, word("clock"));
    return svg.titled(word("growth"));
  }

  private String speed() {
    nose();
    svg.box("d-dot", AXIS - 4, FACE - 20, 8, 14);
    svg.box("d-part", 210, FACE - 34, 54, 40).line("d-turn", 210, FACE - 13, AXIS + 8, FACE - 13);
    svg.text("middle", 237, FACE - 9, "rpm");
    svg.path("d-line", "M150 30v140").path("d-thin", "M154 30v140");
    svg.text("start", 160, 166, word("guard"));
    table();
    return svg.titled(word("speed"));
  }

  private String inspection(String item) {
    nose();
    if (item.equals("protective-earth")) {
      svg.box("d-part", 268, 118, 34, 30).line("d-line", 276, 148, 276, 162);
      svg.line("d-line", 294, 148, 294, 162).line("d-mark", 285, 148, 285, 168);
      svg.box("d-part", 190, 56, 60, 36).text("middle", 220, 79, "Ω");
      svg.path("d-mark", "M206 92v40H112V60").path("d-mark", "M234 92v90h51v-14");
      svg.text("middle", 285, 110, word("plug"));
    } else {
      svg.circle("d-part", 230, 84, 40).line("d-push", 258, 113, 288, 146);
      svg.circle("d-thin", 230, 84, 30);
    }
    return svg.titled(word("inspection"));
  }

  /** Housing, nut and pin, from the side. */
  private void nose() {
    svg.box("d-part", AXIS - 34, 6, 68, 44);
    svg.path("d-solid", "M74 50h44l-6 24h-32z");
    svg.box("d-part", AXIS - 6, FACE, 12, 54);
  }

  /** A dial whose plunger touches the pin from the right. */
  private void dial(double y) {
    dial(y, Body.SHANK.from);
  }

  private void dial(double y, double from) {
    svg.line("d-line", AXIS + from, y, AXIS + 44, y).circle("d-part", AXIS + 62, y, 18);
    svg.line("d-mark", AXIS + 62, y, AXIS + 71, y - 10);
  }

  private void foot(double y, double to) {
    svg.line("d-line", AXIS + 80, y, 190, y).line("d-line", 190, y, 190, to);
    svg.box("d-solid", 178, to - 8, 24, 8);
  }

  private void table() {
    svg.line("d-line", 4, TABLE, 212, TABLE);
  }

  private static double height(OptionalDouble station) {
    double mm = millimetres(station.orElse(0.02));
    return FACE + Math.max(8, Math.min(50, mm * 2));
  }

  private static double millimetres(double length) {
    return Unit.MILLIMETRE.fromSi(length);
  }
}
