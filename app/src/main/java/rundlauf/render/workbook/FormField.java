package rundlauf.render.workbook;

import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;

/**
 * A field of a form.
 *
 * @param path of the field in its document, such as {@code gauge.diameter}
 * @param label what it is, in the shop's words
 * @param hint an example, or what is accepted
 * @param choices the words it may hold; none where anything may be typed
 * @param offers what is offered while it is typed, where anything may be typed
 * @param text what stands in it
 * @param refusal why that was refused; empty text where it was not
 */
public record FormField(
    String path,
    String label,
    String hint,
    List<String> choices,
    List<String> offers,
    boolean needed,
    String text,
    String refusal) {
  public FormField {
    choices = List.copyOf(choices);
    offers = List.copyOf(offers);
  }

  /**
   * A field that nobody refused, with its label and hint from the bundle.
   *
   * @param code of its label; that of its hint, where it has one, ends with {@code .hint}
   */
  static FormField of(String code, String path, List<String> choices, boolean needed, String text) {
    String label = Sentences.text(Saying.of(code, ""));
    String hint =
        Sentences.has(code + ".hint") ? Sentences.text(Saying.of(code + ".hint", "")) : "";
    return new FormField(path, label, hint, choices, List.of(), needed, text, "");
  }

  /** The same with these offered while it is typed. */
  FormField offering(List<String> offers) {
    return new FormField(path, label, hint, choices, offers, needed, text, refusal);
  }

  /** The same with this refusal, where it is about this field. */
  public FormField refusedBy(Sentences.Refusal found) {
    String place = found.place().field().replaceFirst("\\[\\d+]$", "");
    return place.equals(path.replace("[]", "")) ? saying(found.said()) : this;
  }

  /** The same with this sentence at it. */
  public FormField saying(String refusal) {
    return new FormField(path, label, hint, choices, offers, needed, text, refusal);
  }

  /** Which keys a phone shows for it. */
  public String keys() {
    return switch (path) {
      case "flutes" -> "numeric";
      case "efficiency", "wall-share", "force.mc", "force.kr-ratio", "force.ka-ratio" -> "decimal";
      default -> "text";
    };
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
