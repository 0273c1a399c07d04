package rundlauf.render.workbook;

import java.util.List;

/**
 * Everything that stands on a bench.
 *
 * @param base the address of its list
 * @param edition the newest one's number
 * @param missing what it lacks before its first trial, in sentences
 */
public record KitView(
    String base,
    int edition,
    List<String> missing,
    List<Section> sections,
    List<Edition> editions) {
  public KitView {
    missing = List.copyOf(missing);
    sections = List.copyOf(sections);
    editions = List.copyOf(editions);
  }

  /**
   * Parts of one kind by their names.
   *
   * @param name of the section in the document
   * @param title in words
   */
  public record Section(String name, String title, List<Part> parts) {
    public Section {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A part.
   *
   * @param cautions of it, in sentences
   * @param trial where a trial of it is begun; empty text where it cannot have one
   */
  public record Part(String name, List<String> cautions, String trial) {
    public Part {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * An edition of the bench's document.
   *
   * @param changes since the one before it, in sentences
   */
  public record Edition(int number, String at, List<String> changes, String document) {
    public Edition {
      changes = List.copyOf(changes);
    }
  }
}
