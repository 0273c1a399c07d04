package rundlauf.cutting.deflection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/**
 * A cut stepped through in time with nothing taken from what is tested: slices of the cutter, the
 * chip of each by looking back, the force of each bending the cutter by its own integral of the
 * curvature, and the surface that remains kept in cells along the feed.
 */
record MilledCut(
    Tool tool,
    Conditions conditions,
    ToolRunout runout,
    LinearEdge force,
    double setupX,
    double setupY,
    int slices) {
  private static final int CELLS = 40;

  /** Forces of one slice at one angle, summed over the teeth [N]. */
  private double[] slice(double angle, double z) {
    double[] sums = new double[2];
    double dz = conditions.axial() / slices;
    for (int k = 0; k < tool.teeth(); k++) {
      double phi = phi(angle, k, z);
      double h = inArc(phi) ? chip(phi, k, z) : 0;
      if (h > 0) {
        double t = (force.ktc() * h + force.kte()) * dz;
        double r = (force.krc() * h + force.kre()) * dz;
        sums[0] += -t * Math.cos(phi) - r * Math.sin(phi);
        sums[1] += t * Math.sin(phi) - r * Math.cos(phi);
      }
    }
    return sums;
  }

  private double phi(double angle, int k, double z) {
    double turn = 2 * Math.PI;
    double raw = angle - turn * k / tool.teeth() - 2 * z * Math.tan(tool.helix()) / tool.diameter();
    return raw - turn * Math.floor(raw / turn);
  }

  private boolean inArc(double phi) {
    double share = conditions.radial() / tool.diameter();
    return switch (conditions.operation()) {
      case SLOT -> phi < Math.PI;
      case SIDE_UP -> phi < Math.acos(1 - 2 * share);
      case SIDE_DOWN -> phi > Math.acos(2 * share - 1) && phi < Math.PI;
    };
  }

  private double radius(int k, double z) {
    double behind =
        2 * Math.PI * k / tool.teeth() + 2 * z * Math.tan(tool.helix()) / tool.diameter();
    return tool.diameter() / 2
        + runout.eccentricity() * Math.cos(runout.firstTooth() - behind)
        + runout.tilt() * z * Math.cos(runout.tiltAngle() - behind);
  }

  private double chip(double phi, int k, double z) {
    double least = Double.POSITIVE_INFINITY;
    for (int m = 1; m <= tool.teeth(); m++) {
      int before = Math.floorMod(k - m, tool.teeth());
      double h = m * conditions.feedPerTooth() * Math.sin(phi) + radius(k, z) - radius(before, z);
      least = Math.min(least, h);
    }
    return Math.max(0, least);
  }

  double height(int j) {
    return (j + 0.5) * conditions.axial() / slices;
  }

  /** Forces of each slice at one angle, along x and along y [N]. */
  double[][] along(double angle) {
    double[][] forces = new double[2][slices];
    for (int j = 0; j < slices; j++) {
      double[] f = slice(angle, height(j));
      forces[0][j] = f[0];
      forces[1][j] = f[1];
    }
    return forces;
  }

  /** The forces over a turn at {@code n} angles, as a turn. */
  ForceTurn turn(int n) {
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < slices; j++) {
        double[] f = slice(2 * Math.PI * i / n, height(j));
        x[i] += f[0];
        y[i] += f[1];
      }
    }
    Samples still = Samples.generate(n, i -> 0);
    return new ForceTurn(Samples.of(x), Samples.of(y), Samples.of(), still, teeth(), still, still);
  }

  private List<ForceTurn.ToothLoad> teeth() {
    double[] area = new double[tool.teeth()];
    for (int k = 0; k < tool.teeth(); k++) {
      for (int i = 0; i < 720; i++) {
        for (int j = 0; j < slices; j++) {
          double phi = phi(Math.PI * i / 360, k, height(j));
          area[k] += inArc(phi) ? chip(phi, k, height(j)) : 0;
        }
      }
    }
    double all = Arrays.stream(area).sum();
    List<ForceTurn.ToothLoad> teeth = new ArrayList<>();
    for (int k = 0; k < tool.teeth(); k++) {
      teeth.add(new ForceTurn.ToothLoad(k + 1, 0, area[k] / all));
    }
    return teeth;
  }

  /**
   * What remains, slice by slice, after two turns in {@code steps} steps each.
   *
   * @return errors of the +y wall, then of the −y wall, from the tip up [m]; positive: material
   *     left
   */
  double[][] walls(int steps) {
    double[][] bending = bending();
    List<ForceTurn.ToothLoad> teeth = teeth();
    double[][] plus = new double[slices][CELLS];
    double[][] minus = new double[slices][CELLS];
    double feed = conditions.feedPerTooth() * tool.teeth();
    for (int i = 0; i < 2 * steps; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / steps;
      double[] u = displaced(angle, bending);
      for (int j = 0; j < slices; j++) {
        for (int k = 0; k < tool.teeth(); k++) {
          double phi = phi(angle, k, height(j));
          if (!inArc(phi) || teeth.get(k).share() == 0) {
            continue;
          }
          double r = radius(k, height(j));
          double along = feed * i / steps + r * Math.sin(phi);
          int cell = (int) (CELLS * (along / feed - Math.floor(along / feed)));
          double y = r * Math.cos(phi) + u[j];
          plus[j][cell] = Math.max(plus[j][cell], y);
          minus[j][cell] = Math.max(minus[j][cell], -y);
        }
      }
    }
    return new double[][] {errors(plus), errors(minus)};
  }

  private double[] errors(double[][] surface) {
    return Arrays.stream(surface)
        .mapToDouble(cells -> tool.diameter() / 2 - Arrays.stream(cells).max().orElseThrow())
        .toArray();
  }

  private double[] displaced(double angle, double[][] bending) {
    double[] f = along(angle)[1];
    double[] u = new double[slices];
    for (int j = 0; j < slices; j++) {
      for (int i = 0; i < slices; i++) {
        u[j] += f[i] * (setupY + bending[i][j]);
      }
    }
    return u;
  }

  /** Deflection at each slice for 1 N at each: curvature integrated twice, from the nut down. */
  private double[][] bending() {
    int steps = 4000;
    double ds = tool.stickout() / steps;
    double[][] all = new double[slices][slices];
    for (int i = 0; i < slices; i++) {
      double slope = 0;
      double shift = 0;
      double[] line = new double[steps + 1];
      for (int s = steps - 1; s >= 0; s--) {
        double z = (s + 0.5) * ds;
        double d = z < tool.fluteLength() ? 0.8 * tool.diameter() : tool.shank();
        double moment = Math.max(0, z - height(i));
        double turned = moment / (tool.modulus() * Math.PI * d * d * d * d / 64) * ds;
        shift += (slope + turned / 2) * ds;
        slope += turned;
        line[s] = shift;
      }
      for (int j = 0; j < slices; j++) {
        all[i][j] = line[(int) Math.round(height(j) / ds)];
      }
    }
    return all;
  }
}
