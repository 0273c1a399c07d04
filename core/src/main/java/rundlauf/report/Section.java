package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * A part of a report under its own heading.
 *
 * @param id unique in its report; what links lead to
 * @param blocks in their order
 * @param parts sections within this one, after its blocks
 */
public record Section(String id, Saying heading, List<Block> blocks, List<Section> parts) {
  public Section {
    blocks = List.copyOf(blocks);
    parts = List.copyOf(parts);
  }

  /** A section without parts. */
  static Section of(String id, Saying heading, List<Block> blocks) {
    return new Section(id, heading, blocks, List.of());
  }
}
