package rundlauf.cutting;

/**
 * Thinnest chip that an edge lifts instead of rubbing, over the radius of the edge: the range that
 * is published.
 *
 * @param low lower end, over 0
 * @param high upper end, at least {@code low}
 * @param status how well it is known
 * @param source code of where it stands; its words are {@code term.CODE}
 */
public record SmallestChip(double low, double high, Status status, String source) {
  /** Where nothing is known of the material itself: "various materials". */
  public static final SmallestChip USUAL =
      new SmallestChip(0.14, 0.43, Status.PUBLISHED, "source-cheng-2018");
}
