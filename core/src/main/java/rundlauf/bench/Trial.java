package rundlauf.bench;

import java.util.Optional;

/**
 * A trial as it was typed.
 *
 * @param file as the user named it
 * @param document the whole document, {@code readings} left in as its text or file name
 * @param readings the table behind {@code readings}; empty for kinds without one (inspection)
 */
public record Trial(String file, Entry.Fields document, Optional<Table> readings) {
  /** What {@code trial:} says; empty text when it is missing or not a text. */
  public String kind() {
    return document.get("trial").orElse(null) instanceof Entry.Scalar s ? s.text() : "";
  }

  /**
   * The file's own name, without the folders: its causes are named by it, so that a trial gives the
   * same digits anywhere.
   */
  public String name() {
    return FileName.of(file);
  }
}
