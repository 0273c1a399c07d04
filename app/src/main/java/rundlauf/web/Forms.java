package rundlauf.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.render.workbook.FormField;

/** What a form sent, and how it is shown again when that was refused. */
final class Forms {
  private Forms() {}

  /** Every field by its name, save the token. */
  static Map<String, String> given(Context ctx) {
    Map<String, String> given = new LinkedHashMap<>();
    ctx.formParamMap()
        .forEach(
            (name, texts) -> {
              if (!name.equals(Guard.TOKEN_FIELD) && !texts.isEmpty()) {
                given.put(name, texts.get(0));
              }
            });
    return given;
  }

  /** One field; empty text where it was not sent. */
  static String text(Context ctx, String name) {
    return given(ctx).getOrDefault(name, "");
  }

  /** A file that was sent, by the name that it had there. */
  record Sent(String name, byte[] content) {}

  /**
   * The file of a field.
   *
   * @param missing the code of the refusal where none was sent, or an empty one
   */
  static Sent file(Context ctx, String field, String missing) {
    UploadedFile sent = ctx.uploadedFile(field);
    if (sent == null || sent.size() == 0) {
      throw Refused.at(Place.NOWHERE.field(field), missing);
    }
    try (InputStream content = sent.content()) {
      return new Sent(sent.filename(), content.readAllBytes());
    } catch (IOException broken) {
      throw Refused.at(Place.NOWHERE.field(field), "request-not-understood");
    }
  }

  /**
   * Does what a form asks for.
   *
   * @param again shows the form once more, with what refused it
   */
  static void take(Context ctx, Runnable asked, Consumer<Refused> again) {
    try {
      asked.run();
    } catch (Refused refused) {
      ctx.status(Refusals.status(refused));
      again.accept(refused);
    }
  }

  /** What a page with a form is given; a refusal stands at its field where the form has it. */
  static Map<String, Object> shown(List<FormField> fields, Optional<Sentences.Refusal> refusal) {
    List<FormField> shown =
        fields.stream().map(field -> refusal.map(field::refusedBy).orElse(field)).toList();
    String above = shown.equals(fields) ? refusal.map(Sentences.Refusal::said).orElse("") : "";
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("fields", shown);
    given.put("refusal", above);
    return given;
  }
}
