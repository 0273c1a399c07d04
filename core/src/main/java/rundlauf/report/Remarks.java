package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/** Sentences of one kind, each with where it leads. */
public record Remarks(Tone tone, List<Remark> remarks) implements Block {
  public Remarks {
    remarks = List.copyOf(remarks);
  }

  /** What the sentences want of the reader. */
  public enum Tone {
    /** Must be looked at. */
    CAUTION,
    /** Would make the figures better. */
    ADVICE,
    /** Explains. */
    NOTE
  }

  /**
   * A sentence.
   *
   * @param leadsTo id of a section of the same report; empty when it leads nowhere
   */
  public record Remark(Saying saying, String leadsTo) {}

  static Remarks of(Tone tone, List<Saying> sayings) {
    return new Remarks(tone, sayings.stream().map(s -> new Remark(s, "")).toList());
  }
}
