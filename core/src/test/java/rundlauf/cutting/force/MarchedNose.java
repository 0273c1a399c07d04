package rundlauf.cutting.force;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;

/**
 * The same cut by marching: the surface is kept as a row of distances from the axis at every
 * height, it comes nearer with the feed, each tooth that reaches it sets it back to where its edge
 * is, and the nose creeps to rest at each angle. No looking back, no smoothing, sharp edge force.
 */
final class MarchedNose {
  private static final int SLICES = 48;
  private static final double CREEP = 0.08;
  private static final int CREEPS = 60;

  final double[] x;
  final double[] y;
  final double[] tipX;
  final double[] tipY;
  final double[] peak;
  private final int n;
  private final double piece;
  private final double feedByAngle;
  private final LinearEdge k;
  private final double[][] surface = new double[SLICES][];
  private final double[][] sine = new double[SLICES][];
  private final List<List<Touch>> touches = new ArrayList<>();
  private double dx;
  private double dy;
  private double fx;
  private double fy;

  /** A piece of edge within the engagement at one angle. */
  private record Touch(int tooth, int slice, int at, double radius, double sin, double cos) {}

  MarchedNose(Tool tool, Conditions cut, ToolRunout runout, LinearEdge k, int n) {
    this.n = n;
    this.k = k;
    piece = cut.axial() / SLICES;
    feedByAngle = cut.feedPerTooth() * tool.teeth() / n;
    x = new double[n];
    y = new double[n];
    tipX = new double[n];
    tipY = new double[n];
    peak = new double[tool.teeth()];
    for (int i = 0; i < n; i++) {
      touches.add(new ArrayList<>());
    }
    for (int j = 0; j < SLICES; j++) {
      lay(j, tool, cut, runout);
    }
  }

  private void lay(int slice, Tool tool, Conditions cut, ToolRunout runout) {
    double lag = tool.lag() * (slice + 0.5) * piece;
    sine[slice] = new double[n];
    surface[slice] = new double[n];
    for (int at = 0; at < n; at++) {
      double phi = 2 * Math.PI * at / n - lag;
      phi -= 2 * Math.PI * Math.floor(phi / (2 * Math.PI));
      sine[slice][at] = Math.sin(phi);
      for (int t = 0; t < tool.teeth(); t++) {
        double ahead = runout.firstTooth() - 2 * Math.PI * t / tool.teeth() - lag;
        double radius = runout.eccentricity() * Math.cos(ahead);
        surface[slice][at] = Math.max(surface[slice][at], radius);
        if (phi > cut.entry(tool.diameter()) && phi < cut.exit(tool.diameter())) {
          touches
              .get((at + t * n / tool.teeth()) % n)
              .add(new Touch(t, slice, at, radius, Math.sin(phi), Math.cos(phi)));
        }
      }
    }
  }

  /** Turns on, keeping forces, places and thickest chips of the last turn. */
  MarchedNose turn(int turns, double complianceX, double complianceY) {
    for (int turn = 0; turn < turns; turn++) {
      Arrays.fill(peak, 0);
      for (int i = 0; i < n; i++) {
        feed();
        for (int creep = 0; creep < CREEPS; creep++) {
          push(touches.get(i));
          dx += CREEP * (complianceX * fx - dx);
          dy += CREEP * (complianceY * fy - dy);
        }
        cut(touches.get(i));
        x[i] = fx;
        y[i] = fy;
        tipX[i] = dx;
        tipY[i] = dy;
      }
    }
    return this;
  }

  /** The feed of one angle brings the material nearer, by its part along each direction. */
  private void feed() {
    for (int j = 0; j < SLICES; j++) {
      for (int at = 0; at < n; at++) {
        surface[j][at] -= feedByAngle * sine[j][at];
      }
    }
  }

  private double edge(Touch t) {
    return t.radius + dx * t.sin + dy * t.cos;
  }

  /** Force where the nose stands. */
  private void push(List<Touch> all) {
    fx = 0;
    fy = 0;
    for (Touch t : all) {
      double h = edge(t) - surface[t.slice][t.at];
      if (h > 0) {
        double ft = piece * (k.ktc() * h + k.kte());
        double fr = piece * (k.krc() * h + k.kre());
        fx -= ft * t.cos + fr * t.sin;
        fy += ft * t.sin - fr * t.cos;
      }
    }
  }

  private void cut(List<Touch> all) {
    for (Touch t : all) {
      double h = edge(t) - surface[t.slice][t.at];
      if (h > 0) {
        surface[t.slice][t.at] = edge(t);
        peak[t.tooth] = Math.max(peak[t.tooth], h);
      }
    }
  }
}
