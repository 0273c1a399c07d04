package rundlauf.render.workbook;

import java.util.List;
import rundlauf.render.Sentences;

/**
 * A field of a form.
 *
 * @param path of the field in its document, such as {@code gauge.diameter}
 * @param label what it is, in the shop's words
 * @param hint an example, or what is accepted
 * @param choices the words it may hold; none where anything may be typed
 * @param text what stands in it
 * @param refusal why that was refused; empty text where it was not
 */
public record FormField(
    String path,
    String label,
    String hint,
    List<String> choices,
    boolean needed,
    String text,
    String refusal) {
  public FormField {
    choices = List.copyOf(choices);
  }

  /** The same with this refusal, where it is about this field. */
  public FormField refusedBy(Sentences.Refusal found) {
    boolean mine = found.place().field().equals(path.replace("[]", ""));
    return mine ? new FormField(path, label, hint, choices, needed, text, found.said()) : this;
  }

  /** Whether it holds more than one line. */
  public boolean lines() {
    return path.equals("notes") || path.endsWith(".notes");
  }

  /** Unique on its page. */
  public String id() {
    return "field-" + path.replaceAll("[^a-z0-9]+", "-");
  }
}
