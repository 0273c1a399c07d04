package rundlauf.render;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** Sayings to text, from the one bundle. */
public final class Sentences {
  private final ResourceBundle bundle =
      ResourceBundle.getBundle("rundlauf.render.sentences", Locale.ROOT);

  public String text(Saying saying) {
    Object[] args = saying.args().stream().map(Sentences::text).toArray();
    return new MessageFormat(bundle.getString(saying.code()), Locale.ROOT).format(args);
  }

  private static String text(Arg arg) {
    if (arg instanceof Arg.Word w) {
      return w.text();
    }
    if (arg instanceof Arg.Amount a) {
      return Math.rint(a.unit().fromSi(a.si()) * 1000) / 1000 + " " + a.unit().symbol();
    }
    return arg instanceof Arg.Count c ? "" + c.value() : "" + ((Arg.Number) arg).value();
  }
}
