package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/** Sentences of one kind. */
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

  /** A sentence, with the links before or after it. */
  public record Remark(List<Cell> cells) {
    public Remark {
      cells = List.copyOf(cells);
    }

    static Remark of(Cell... cells) {
      return new Remark(List.of(cells));
    }

    static Remark of(Saying saying) {
      return of(new Cell.Said(saying));
    }
  }

  static Remarks of(Tone tone, List<Saying> sayings) {
    return new Remarks(tone, sayings.stream().map(Remark::of).toList());
  }
}
