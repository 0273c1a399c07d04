package rundlauf.simulated;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Unit;

/**
 * One invented trial: its file, and what was true when it was "taken".
 *
 * @param file name in {@code demo/bench/trials}
 * @param text the file
 * @param csv readings that lie beside it, under the same name
 * @param truths what a reduction of it should find
 */
record DemoTrial(String file, String text, Optional<String> csv, List<Truth> truths) {
  DemoTrial {
    truths = List.copyOf(truths);
  }

  DemoTrial(String file, String text, List<Truth> truths) {
    this(file, text, Optional.empty(), truths);
  }

  String csvFile() {
    return file.replace(".yaml", ".csv");
  }

  /**
   * The true value of one figure.
   *
   * @param figure its path in the output, such as {@code stations[0].tir}
   * @param value SI
   * @param unit to write it in
   */
  record Truth(String figure, double value, Unit unit) {
    static Truth um(String figure, double metres) {
      return new Truth(figure, metres, Unit.MICROMETRE);
    }

    static Truth degrees(String figure, double radians) {
      return new Truth(figure, radians, Unit.DEGREE);
    }

    static Truth stiffness(String figure, double newtonsPerMetre) {
      return new Truth(figure, newtonsPerMetre, Unit.NEWTON_PER_MICROMETRE);
    }

    static Truth rpm(String figure, double perSecond) {
      return new Truth(figure, perSecond, Unit.RPM);
    }

    /** A setting, given in its own unit. */
    static Truth setting(String figure, double value, Unit unit) {
      return new Truth(figure, unit.toSi(value), unit);
    }
  }
}
