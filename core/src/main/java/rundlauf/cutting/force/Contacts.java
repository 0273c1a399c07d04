package rundlauf.cutting.force;

import java.util.Arrays;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;

/**
 * The pieces of edge that lie within the engagement, angle by angle: those of angle i stand at
 * places {@code first(i)} to {@code first(i + 1) − 1}.
 */
final class Contacts {
  private final int[] first;
  private double[] sine = new double[64];
  private double[] cosine = new double[64];
  private double[] length = new double[64];
  private int[] edge = new int[64];
  private int count;

  private Contacts(int angles) {
    first = new int[angles + 1];
  }

  static Contacts of(Tool tool, Conditions cut, Turning turning, int angles) {
    Contacts contacts = new Contacts(angles);
    double entry = cut.entry(tool.diameter());
    double exit = cut.exit(tool.diameter());
    for (int i = 0; i < angles; i++) {
      contacts.first[i] = contacts.count;
      for (int slice = 0; slice < turning.slices().count(); slice++) {
        for (int tooth = 0; tooth < tool.teeth(); tooth++) {
          double angle = 2 * Math.PI * i / angles - turning.behind(tooth, slice);
          contacts.place(angle, turning, entry, exit, slice * tool.teeth() + tooth);
        }
      }
    }
    contacts.first[angles] = contacts.count;
    return contacts;
  }

  /** Puts a piece of edge down by the part of its window that lies within the engagement. */
  private void place(double angle, Turning turning, double entry, double exit, int which) {
    double half = turning.width() / 2;
    double turned = angle - 2 * Math.PI * Math.floor((angle + half) / (2 * Math.PI));
    double from = Math.max(turned - half, entry);
    double to = Math.min(turned + half, exit);
    if (from >= to) {
      return;
    }
    if (count == edge.length) {
      grow();
    }
    sine[count] = Math.sin((from + to) / 2);
    cosine[count] = Math.cos((from + to) / 2);
    length[count] = turning.slices().thickness() * (to - from) / turning.width();
    edge[count++] = which;
  }

  private void grow() {
    sine = Arrays.copyOf(sine, 2 * count);
    cosine = Arrays.copyOf(cosine, 2 * count);
    length = Arrays.copyOf(length, 2 * count);
    edge = Arrays.copyOf(edge, 2 * count);
  }

  int angles() {
    return first.length - 1;
  }

  int first(int angle) {
    return first[angle];
  }

  double sine(int place) {
    return sine[place];
  }

  double cosine(int place) {
    return cosine[place];
  }

  /** Length of edge along the axis [m]. */
  double length(int place) {
    return length[place];
  }

  /** Which piece of edge: slice times N plus tooth, both from 0. */
  int edge(int place) {
    return edge[place];
  }
}
