package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/** What stands in one cell of a table. */
public sealed interface Cell {
  /** As somebody typed it, to the letter. */
  record Typed(String text) implements Cell {}

  /** A sentence or a word of ours. */
  record Said(Saying saying) implements Cell {}

  /** Sentences of ours, one after the other. */
  record SaidAll(List<Saying> sayings) implements Cell {
    public SaidAll {
      sayings = List.copyOf(sayings);
    }
  }

  /**
   * A sentence or a word of ours that leads somewhere.
   *
   * @param leadsTo id of a section of the same report
   */
  record Link(Saying saying, String leadsTo) implements Cell {}

  /**
   * A figure with its doubt.
   *
   * @param readings id of the section with the readings it came from
   * @param method id of the section that tells how it was made
   * @param id of the figure itself: {@code figure-}, the trial's number, and its path; empty where
   *     it is no figure of one trial
   */
  record Shown(Figure figure, String readings, String method, String id) implements Cell {}

  /**
   * A figure of a cut: computed, not read.
   *
   * @param assumed whether something beneath it is assumed
   */
  record Predicted(Figure figure, boolean assumed) implements Cell {}

  /** A number of a series, SI. */
  record Number(double si, Scale scale) implements Cell {}

  /** Nothing to say. */
  record Blank() implements Cell {}
}
