package rundlauf.cutting.chip;

import java.util.ArrayList;
import java.util.List;

/**
 * The chip of one tooth at one height, as the stretches of its way on which it cuts.
 *
 * <p>{@code h = max(0, min over m of (m c s + lead_m))} with {@code s = sin φ} is the lower
 * envelope of N straight lines in s, so it is concave: it leaves 0 once, and the surface it meets
 * grows younger as s rises. Over φ the same stretches return in reverse beyond π/2.
 */
public final class ChipArcs {
  private ChipArcs() {}

  /**
   * The stretches in order of φ.
   *
   * @param feedPerTooth c [m], over 0
   * @param leads N numbers: place m − 1 is {@code R_k − R_(k−m)} [m]; the last is 0
   * @param entry angle at which the tooth enters [rad], 0 to π
   * @param exit angle at which it leaves [rad], from entry to π
   * @return the stretches; none where the tooth never cuts
   * @see "W.A. Kline, R.E. DeVor, Int. J. Mach. Tool Des. Res. 23 (1983) 123-140"
   */
  public static List<ChipArc> of(double feedPerTooth, double[] leads, double entry, double exit) {
    List<ChipArc> rising = new ArrayList<>();
    double s = start(feedPerTooth, leads);
    int m = oldestAt(feedPerTooth, leads, s);
    while (s < 1) {
      int next = m;
      double end = 1;
      for (int younger = m - 1; younger >= 1; younger--) {
        double meets = (leads[younger - 1] - leads[m - 1]) / ((m - younger) * feedPerTooth);
        if (meets <= end) {
          end = Math.max(meets, s);
          next = younger;
        }
      }
      rising.add(new ChipArc(Math.asin(s), Math.asin(end), m * feedPerTooth, leads[m - 1]));
      if (next == m) {
        break;
      }
      s = end;
      m = next;
    }
    return clipped(bothSides(rising), entry, exit);
  }

  /** Where the chip leaves 0, as sin φ; 1 or more: nowhere. */
  private static double start(double c, double[] leads) {
    double start = 0;
    for (int m = 1; m <= leads.length; m++) {
      start = Math.max(start, -leads[m - 1] / (m * c));
    }
    return start;
  }

  /** The surface met where the chip leaves 0. */
  private static int oldestAt(double c, double[] leads, double start) {
    for (int m = leads.length; m > 1; m--) {
      if (-leads[m - 1] / (m * c) >= start) {
        return m;
      }
    }
    return 1;
  }

  /** The stretches up to π/2, and the same beyond it in reverse. */
  private static List<ChipArc> bothSides(List<ChipArc> rising) {
    List<ChipArc> both = new ArrayList<>(rising);
    for (int i = rising.size() - 1; i >= 0; i--) {
      ChipArc arc = rising.get(i);
      both.add(new ChipArc(Math.PI - arc.to(), Math.PI - arc.from(), arc.rise(), arc.lead()));
    }
    return both;
  }

  private static List<ChipArc> clipped(List<ChipArc> arcs, double entry, double exit) {
    List<ChipArc> kept = new ArrayList<>();
    for (ChipArc arc : arcs) {
      double from = Math.max(arc.from(), entry);
      double to = Math.min(arc.to(), exit);
      if (from < to) {
        kept.add(new ChipArc(from, to, arc.rise(), arc.lead()));
      }
    }
    return kept;
  }

  /**
   * Thickness of the chip at one place.
   *
   * @param feedPerTooth c [m], over 0
   * @param leads as in {@link #of}
   * @param sine sin φ, 0 to 1
   * @return {@code max(0, min over m of (m c sin φ + lead_m))} [m]
   */
  public static double thickness(double feedPerTooth, double[] leads, double sine) {
    double least = Double.POSITIVE_INFINITY;
    for (int m = 1; m <= leads.length; m++) {
      least = Math.min(least, m * feedPerTooth * sine + leads[m - 1]);
    }
    return Math.max(0, least);
  }
}
