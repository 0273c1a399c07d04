package rundlauf.render.workbook;

import java.util.List;

/**
 * Everything that stands on a bench.
 *
 * @param base the address of its list
 * @param edition the newest one's number
 */
public record KitView(String base, int edition, List<Section> sections, List<Edition> editions) {
  public KitView {
    sections = List.copyOf(sections);
    editions = List.copyOf(editions);
  }

  /**
   * Parts of one kind by their names.
   *
   * @param name of the section in the document
   * @param title in words
   */
  public record Section(String name, String title, List<String> parts) {
    public Section {
      parts = List.copyOf(parts);
    }
  }

  /** An edition of the bench's document. */
  public record Edition(int number, String at, String document) {}
}
