package rundlauf.render;

import java.text.FieldPosition;
import java.text.MessageFormat;
import java.text.ParsePosition;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;

/** Makes the sentences of sayings, the same in every locale. */
public final class Sentences {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle(
          "rundlauf.render.sentences",
          Locale.ROOT,
          Sentences.class.getClassLoader(),
          ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));

  private Sentences() {}

  /**
   * A refusal in words.
   *
   * @param code of its saying
   * @param text what was found, and what is wrong with it
   * @param remedy what to do
   * @param place where
   */
  public record Refusal(String code, String text, String remedy, Place place) {
    /** One line: {@code file:line: field: text — remedy} */
    public String line() {
      return where() + text + " — " + remedy;
    }

    /** Two sentences: what was found, and what to do. */
    public String said() {
      return sentence(code, text) + " " + sentence(code + ".remedy", remedy);
    }

    /** {@code file:line: field: }, as much of it as is known. */
    public String where() {
      StringBuilder line = new StringBuilder();
      if (!place.file().isEmpty()) {
        line.append(place.file()).append(place.line() > 0 ? ":" + place.line() : "").append(": ");
      }
      if (!place.field().isEmpty()) {
        line.append(place.field()).append(": ");
      }
      return line.toString();
    }
  }

  /** The sentence of a saying. */
  public static String text(Saying saying) {
    return fill(saying.code(), saying.args());
  }

  /** The saying of a refusal or of its remedy as a whole sentence. */
  static String sentence(Saying saying) {
    return sentence(saying.code(), text(saying));
  }

  /** Begins with a capital, unless what was typed begins it. */
  private static String sentence(String code, String clause) {
    boolean typed = !has(code) || BUNDLE.getString(code).startsWith("{");
    String begun =
        typed || clause.isEmpty()
            ? clause
            : clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }

  /** Whether there is a sentence of this code. */
  public static boolean has(String code) {
    return BUNDLE.containsKey(code);
  }

  /** A refusal with its remedy. */
  public static Refusal refusal(Refused refused) {
    Saying saying = refused.saying();
    String remedy = fill(saying.code() + ".remedy", saying.args());
    return new Refusal(saying.code(), text(saying), remedy, refused.place());
  }

  /** The word for a term's code, such as a cause's part. */
  public static String term(String code) {
    return fill("term." + code, List.of());
  }

  private static String fill(String key, List<Arg> args) {
    String pattern;
    try {
      pattern = BUNDLE.getString(key);
    } catch (MissingResourceException none) {
      throw new IllegalArgumentException("no sentence for " + key, none);
    }
    MessageFormat format = new MessageFormat(pattern, Locale.ROOT);
    java.text.Format[] given = format.getFormats();
    for (int i = 0; i < given.length; i++) {
      if (given[i] == null) {
        format.setFormat(i, new AsIs());
      }
    }
    return format.format(args.stream().map(Sentences::printed).toArray());
  }

  /** Counts stay numbers, so that a sentence can choose between one and many. */
  private static Object printed(Arg arg) {
    if (arg instanceof Arg.Count count) {
      return count.value();
    }
    if (arg instanceof Arg.Amount amount) {
      return Format.amount(amount.si(), amount.unit());
    }
    if (arg instanceof Arg.Number number) {
      return Format.number(number.value());
    }
    return arg instanceof Arg.Term term ? term(term.code()) : ((Arg.Word) arg).text();
  }

  /** Prints an argument without grouping its digits. */
  private static final class AsIs extends java.text.Format {
    private static final long serialVersionUID = 1L;

    @Override
    public StringBuffer format(Object arg, StringBuffer to, FieldPosition position) {
      return to.append(arg);
    }

    @Override
    public Object parseObject(String source, ParsePosition position) {
      throw new UnsupportedOperationException("sentences are not parsed");
    }
  }
}
