package rundlauf.render.workbook;

import rundlauf.guide.Scene;

/** The drawing of a step. */
final class Scenes {
  private Scenes() {}

  static String svg(Scene scene) {
    return "";
  }
}
