package rundlauf.files;

import java.util.Collection;
import java.util.Map;
import rundlauf.bench.Entry;

/**
 * Writes a document so that it reads back the same: every text, whether a comma parts where it
 * stands, and the order of the fields. One document is always written the same way.
 */
public final class YamlText {
  private static final String STEP = "  ";

  private final StringBuilder out = new StringBuilder();

  private YamlText() {}

  /** The document in YAML 1.2. */
  public static String of(Entry.Fields document) {
    YamlText writer = new YamlText();
    if (isFlow(document)) {
      writer.flow(document, STEP);
      writer.out.append('\n');
    } else {
      writer.block(document, "");
    }
    return writer.out.toString();
  }

  private void block(Entry.Fields fields, String indent) {
    for (Map.Entry<String, Entry> field : fields.fields().entrySet()) {
      out.append(indent).append(key(field.getKey())).append(':');
      value(field.getValue(), indent);
    }
  }

  private void block(Entry.Items items, String indent) {
    for (Entry item : items.items()) {
      out.append(indent).append('-');
      value(item, indent);
    }
  }

  private void value(Entry value, String indent) {
    String inner = indent + STEP;
    if (value instanceof Entry.Scalar scalar) {
      out.append(' ').append(scalar(scalar, inner)).append('\n');
    } else if (isFlow(value)) {
      out.append(' ');
      flow(value, inner);
      out.append('\n');
    } else {
      out.append('\n');
      if (value instanceof Entry.Fields fields) {
        block(fields, inner);
      } else {
        block((Entry.Items) value, inner);
      }
    }
  }

  /** What is empty, and what itself holds a text that stood plain where a comma parts. */
  private static boolean isFlow(Entry entry) {
    Collection<Entry> inner =
        entry instanceof Entry.Fields fields
            ? fields.fields().values()
            : ((Entry.Items) entry).items();
    return inner.isEmpty() || inner.stream().anyMatch(e -> e instanceof Entry.Scalar s && s.flow());
  }

  private void flow(Entry entry, String indent) {
    if (entry instanceof Entry.Scalar scalar) {
      out.append(scalar.flow() ? plain(scalar.text(), indent) : YamlScalar.quoted(scalar.text()));
    } else if (entry instanceof Entry.Fields fields) {
      flow(fields, indent);
    } else {
      flow((Entry.Items) entry, indent);
    }
  }

  private void flow(Entry.Fields fields, String indent) {
    String parting = "";
    out.append('{');
    for (Map.Entry<String, Entry> field : fields.fields().entrySet()) {
      out.append(parting).append(key(field.getKey())).append(": ");
      flow(field.getValue(), indent);
      parting = ", ";
    }
    out.append('}');
  }

  private void flow(Entry.Items items, String indent) {
    String parting = "";
    out.append('[');
    for (Entry item : items.items()) {
      out.append(parting);
      flow(item, indent);
      parting = ", ";
    }
    out.append(']');
  }

  /**
   * A plain text reads back as it stands; a break within it is folded away unless it is doubled.
   */
  private static String plain(String text, String indent) {
    return text.replaceAll("\n+", "$0\n" + indent);
  }

  private static String key(String name) {
    return YamlScalar.isName(name) ? name : YamlScalar.quoted(name);
  }

  private static String scalar(Entry.Scalar scalar, String indent) {
    String text = scalar.text();
    return YamlScalar.isLiteral(text) ? YamlScalar.literal(text, indent) : YamlScalar.quoted(text);
  }
}
