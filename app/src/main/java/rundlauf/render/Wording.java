package rundlauf.render;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.report.Cell;
import rundlauf.report.Chart;
import rundlauf.report.Remarks;

/** Everything a page says, as text; the page escapes it. */
public final class Wording {
  private final UnaryOperator<String> addresses;
  private final boolean figurePages;

  /** For a page that holds everything: what a link leads to is a part of it. */
  public Wording() {
    this.addresses = id -> "#" + id;
    this.figurePages = false;
  }

  /**
   * For pages of which each holds a part.
   *
   * @param addresses where what a link leads to is found, by its id in a report
   */
  public Wording(UnaryOperator<String> addresses) {
    this.addresses = addresses;
    this.figurePages = true;
  }

  /** The address of what a link leads to. */
  public String href(String id) {
    return addresses.apply(id);
  }

  public String say(Saying saying) {
    return Sentences.text(saying);
  }

  /** The address of a figure: its own page where there is one, else its readings. */
  public String figure(Cell.Shown shown) {
    return figurePages && !shown.id().isEmpty() ? href(shown.id()) : href(shown.readings());
  }

  /** A remark; what a refusal says and what to do about it are whole sentences. */
  public String remark(Saying saying) {
    boolean refusal = saying.code().endsWith(".remedy") || Sentences.has(saying.code() + ".remedy");
    return refusal ? Sentences.sentence(saying) : say(saying);
  }

  /** A word of the bundle. */
  public String word(String code) {
    return say(Saying.of(code, ""));
  }

  /** A sentence of the bundle with these arguments. */
  public String filled(String code, Arg... args) {
    return say(new Saying(code, "", List.of(args)));
  }

  /** A known figure's value with its unit. */
  public String value(Figure figure) {
    return FigureText.of(figure).value();
  }

  /** A known figure's interval; empty text when it is exact. */
  public String interval(Figure figure) {
    return FigureText.of(figure)
        .interval()
        .map(i -> word("report-interval", i.low(), i.high()))
        .orElse("");
  }

  /** Why a figure cannot be had. */
  public String why(Figure figure) {
    return figure instanceof Missing missing ? say(missing.why()) : "";
  }

  public String number(Cell.Number number) {
    return FigureText.withUnit(Digits.of(number.si(), number.scale()), number.scale().unit());
  }

  /** A cell's text without its links; empty where there is nothing to say. */
  public String plain(Cell cell) {
    if (cell instanceof Cell.Said said) {
      return say(said.saying());
    }
    if (cell instanceof Cell.SaidAll all) {
      return all.sayings().stream().map(this::say).collect(Collectors.joining(" "));
    }
    if (cell instanceof Cell.Typed typed) {
      return typed.text();
    }
    if (cell instanceof Cell.Number number) {
      return number(number);
    }
    if (cell instanceof Cell.Predicted predicted) {
      return predicted.figure().known() ? value(predicted.figure()) : why(predicted.figure());
    }
    return cell instanceof Cell.Link link ? say(link.saying()) : "";
  }

  /** Typed text in parts between which a narrow page may break it: {@code reading_}, {@code um}. */
  public List<String> parts(String typed) {
    return List.of(typed.split("(?<=[_./])"));
  }

  /** A sentence whose numbers are put in later: {@code {0}} stands where one comes. */
  public String pattern(String code) {
    return word(code, "{0}", "{1}");
  }

  /** What a column of readings is called on a sheet, such as {@code reading_um}. */
  public String column(String name) {
    String code = "sheet-column-" + name.replace("%", "percent");
    return Sentences.has(code) ? word(code) : name;
  }

  /** A word that a column may hold, as it is said on a sheet. */
  public String choice(String column, String value) {
    return Sentences.has("sheet-choice-" + column + "-" + value)
        ? word("sheet-choice-" + column + "-" + value)
        : value;
  }

  /** The class of a chart's element. */
  public String chartKind(Chart chart) {
    return chart.getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  public String tone(Remarks.Tone tone) {
    return switch (tone) {
      case CAUTION -> word("report-tone-caution");
      case ADVICE -> word("report-tone-advice");
      case NOTE -> "";
    };
  }

  private String word(String code, String... args) {
    List<Arg> typed = Arrays.stream(args).<Arg>map(Arg::of).toList();
    return say(new Saying(code, "", typed));
  }
}
