package rundlauf.render.workbook;

import java.util.List;

/**
 * What was typed for a trial, beside its figures.
 *
 * @param base its address
 * @param hasSheet whether readings of its kind are taken on a sheet
 * @param struck readings that were struck out
 * @param editions of its document, the oldest first
 * @param photos their addresses
 */
public record TrialView(
    String base,
    boolean hasSheet,
    List<Struck> struck,
    List<Edition> editions,
    List<String> photos) {
  public TrialView {
    struck = List.copyOf(struck);
    editions = List.copyOf(editions);
    photos = List.copyOf(photos);
  }

  /** A reading that was struck out, with the reason and the time. */
  public record Struck(int number, List<SheetView.Cell> cells, String reason, String at) {
    public Struck {
      cells = List.copyOf(cells);
    }
  }

  /** An edition of the document, and when it was kept. */
  public record Edition(int number, String at, String document) {}
}
