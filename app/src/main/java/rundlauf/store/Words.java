package rundlauf.store;

import java.util.Objects;

/** What a database said. */
final class Words {
  private Words() {}

  /** The first line of the innermost cause. */
  static String of(Throwable e) {
    Throwable inner = e;
    while (inner.getCause() != null && inner.getCause() != inner) {
      inner = inner.getCause();
    }
    String words = Objects.requireNonNullElse(inner.getMessage(), inner.getClass().getSimpleName());
    return words.lines().findFirst().orElse("").strip();
  }
}
