package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;

/** A drawing of numbers, with the same numbers as a table beside it. */
public sealed interface Chart extends Block
    permits Chart.Polar,
        Chart.LoadLoop,
        Chart.SpeedCurve,
        Chart.Rise,
        Chart.Budget,
        Chart.Forces,
        Chart.Chips,
        HistoryChart,
        ClockingDial,
        RoundnessCircles,
        ShareBars,
        ComplianceRose {
  /** Unique in its report. */
  String id();

  /** What it shows. */
  Saying caption();

  /** What is seen in it, in a sentence. */
  Saying summary();

  /** The same numbers as text. */
  Table twin();

  /**
   * Readings round the turn, as distances from their mean circle.
   *
   * @param angle how angles are printed
   * @param length how distances are printed
   * @param angles of the readings, rad
   * @param readings as many, m from the mean circle
   * @param fitAngles of the fitted curve, rad, the first again at the end
   * @param fit as many, m from the mean circle
   * @param low lower edge of its interval
   * @param high upper edge
   * @param span m; the same for all sweeps of a trial, so that they compare by eye
   */
  record Polar(
      String id,
      Saying caption,
      Saying summary,
      Scale angle,
      Scale length,
      Samples angles,
      Samples readings,
      Samples fitAngles,
      Samples fit,
      Samples low,
      Samples high,
      double span,
      Table twin)
      implements Chart {}

  /**
   * Readings against the load that pushed, in the order taken.
   *
   * @param force how loads are printed
   * @param length how readings are printed
   * @param fitted how fitted readings are printed
   * @param loops one for each body touched and setting of the dial
   * @param lines fitted straight lines
   */
  record LoadLoop(
      String id,
      Saying caption,
      Saying summary,
      Scale force,
      Scale length,
      Scale fitted,
      List<Loop> loops,
      List<Line> lines,
      Table twin)
      implements Chart {
    public LoadLoop {
      loops = List.copyOf(loops);
      lines = List.copyOf(lines);
    }
  }

  /**
   * Readings in the order taken.
   *
   * @param loads N, positive along the dial
   * @param readings as many, m
   * @param branches as many: load rising or falling
   */
  record Loop(Saying name, Samples loads, Samples readings, List<LoadReadings.Branch> branches) {
    public Loop {
      branches = List.copyOf(branches);
    }
  }

  /** A straight line by its ends: loads [N] and readings [m]. */
  record Line(Saying name, Samples loads, Samples readings) {}

  /**
   * Speed against the setting.
   *
   * @param setting how settings are printed
   * @param settingUnit as it was typed: empty, {@code %} or {@code V}
   * @param speed how speeds are printed
   * @param settings of the readings
   * @param readings as many speeds, turns per second
   * @param curveSettings of the curve
   * @param curve as many speeds
   * @param low lower ends of their intervals
   * @param high upper ends
   * @param usable lowest and highest usable speed, where known
   */
  record SpeedCurve(
      String id,
      Saying caption,
      Saying summary,
      Scale setting,
      String settingUnit,
      Scale speed,
      Samples settings,
      Samples readings,
      Samples curveSettings,
      Samples curve,
      Samples low,
      Samples high,
      Optional<Samples> usable,
      Table twin)
      implements Chart {}

  /**
   * Readings over time, and a curve through them.
   *
   * @param time how times are printed
   * @param length how readings are printed
   * @param fitted how the curve is printed
   * @param times of the readings, s
   * @param readings as many, m
   * @param curve as many, m
   * @param low lower ends of its intervals
   * @param high upper ends
   */
  record Rise(
      String id,
      Saying caption,
      Saying summary,
      Scale time,
      Scale length,
      Scale fitted,
      Samples times,
      Samples readings,
      Samples curve,
      Samples low,
      Samples high,
      Table twin)
      implements Chart {}

  /**
   * What the doubt of a figure is made of.
   *
   * @param u how standard uncertainties are printed
   * @param share how shares of the variance are printed
   * @param bars largest first
   */
  record Budget(
      String id, Saying caption, Saying summary, Scale u, Scale share, List<Bar> bars, Table twin)
      implements Chart {
    public Budget {
      bars = List.copyOf(bars);
    }
  }

  /**
   * Forces on the cutter over a turn.
   *
   * @param angle how angles are printed
   * @param force how forces are printed
   * @param angles of tooth 1 at the tip, rad
   * @param rows forces by angle, N
   */
  record Forces(
      String id,
      Saying caption,
      Saying summary,
      Scale angle,
      Scale force,
      Samples angles,
      List<Row> rows,
      Table twin)
      implements Chart {
    public Forces {
      rows = List.copyOf(rows);
    }
  }

  /** A row of forces: its name, and one number for each angle [N]. */
  record Row(Saying name, Samples forces) {}

  /**
   * The thickest chip of each tooth.
   *
   * @param length how chips are printed
   * @param teeth in their order
   */
  record Chips(
      String id, Saying caption, Saying summary, Scale length, List<Tooth> teeth, Table twin)
      implements Chart {
    public Chips {
      teeth = List.copyOf(teeth);
    }
  }

  /** A tooth's thickest chip and the ends of its interval, m. */
  record Tooth(Saying name, double chip, double low, double high) {}

  /**
   * A cause's part in the doubt.
   *
   * @param name the cause
   * @param u its standard uncertainty, SI
   * @param share of the variance, 0 to 1
   */
  record Bar(Saying name, double u, double share) {}
}
