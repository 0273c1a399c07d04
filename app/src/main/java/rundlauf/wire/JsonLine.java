package rundlauf.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Shown;
import rundlauf.quantity.Unit;

/** One JSON document on one line, written from the first key to the last. */
final class JsonLine {
  /** The shortest digits that read back as the same double, alike on every JDK. */
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private final JsonGenerator out;
  private final Function<Saying, String> wording;

  private JsonLine(JsonGenerator out, Function<Saying, String> wording) {
    this.out = out;
    this.wording = wording;
  }

  /** The document that {@code body} writes, without a line end. */
  static String of(Function<Saying, String> wording, Consumer<JsonLine> body) {
    var text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.writeStartObject();
      body.accept(new JsonLine(out, wording));
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** An object under {@code name}. */
  void object(String name, Runnable body) {
    write(
        () -> {
          out.writeObjectFieldStart(name);
          body.run();
          out.writeEndObject();
        });
  }

  /** A list under {@code name} with an object for every item. */
  <T> void list(String name, List<T> items, Consumer<T> body) {
    write(
        () -> {
          out.writeArrayFieldStart(name);
          for (T item : items) {
            out.writeStartObject();
            body.accept(item);
            out.writeEndObject();
          }
          out.writeEndArray();
        });
  }

  void text(String name, String value) {
    write(() -> out.writeStringField(name, value));
  }

  /** A text, or null when there is none. */
  void text(String name, Optional<String> value) {
    value.ifPresentOrElse(text -> text(name, text), () -> nothing(name));
  }

  /** A list of texts. */
  void texts(String name, List<String> values) {
    write(
        () -> {
          out.writeArrayFieldStart(name);
          for (String value : values) {
            out.writeString(value);
          }
          out.writeEndArray();
        });
  }

  void count(String name, long value) {
    write(() -> out.writeNumberField(name, value));
  }

  void truth(String name, boolean value) {
    write(() -> out.writeBooleanField(name, value));
  }

  void nothing(String name) {
    write(() -> out.writeNullField(name));
  }

  void number(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException(name + " is " + value + ": JSON has no such number");
    }
    write(() -> out.writeNumberField(name, value));
  }

  /** A bare number whose key carries {@code unit}; null when there is none. */
  void number(String name, OptionalDouble si, Unit unit) {
    if (si.isPresent()) {
      number(name, unit.fromSi(si.getAsDouble()));
    } else {
      nothing(name);
    }
  }

  /** A figure with its doubt, or null with the reason why it cannot be had. */
  void figure(String name, Figure figure) {
    figure(name, figure, List.of());
  }

  /** The same, with what is assumed beneath it; nothing is said of a figure without such. */
  void figure(String name, Figure figure, List<Saying> assumed) {
    object(
        name,
        () -> {
          if (figure instanceof Missing missing) {
            nothing("value");
            text("unit", missing.unit().symbol());
            text("why", wording.apply(missing.why()));
          } else {
            shown(Shown.of(figure).orElseThrow());
          }
          if (!assumed.isEmpty()) {
            texts("assumed", assumed.stream().map(wording).toList());
          }
        });
  }

  private void shown(Shown figure) {
    number("value", figure.value());
    text("unit", figure.unit().symbol());
    number("u", figure.u());
    number("low", figure.low());
    number("high", figure.high());
    number("level", figure.level());
    figure.dof().ifPresent(dof -> number("dof", dof));
  }

  /** The sentence of a saying. */
  String worded(Saying saying) {
    return wording.apply(saying);
  }

  /** Why something is not there, under {@code name}. */
  void why(String name, Saying why) {
    text(name, wording.apply(why));
  }

  /** Sayings, each with its code, its sentence and what it is about. */
  void sayings(String name, List<Saying> sayings) {
    list(
        name,
        sayings,
        saying -> {
          text("code", saying.code());
          text("text", wording.apply(saying));
          text("about", saying.about());
        });
  }

  private void write(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A step that writes. */
  private interface Step {
    void run() throws IOException;
  }
}
