package rundlauf.quantity;

import java.util.List;
import java.util.Optional;

/** A figure that cannot be had, and why. */
public record Missing(Unit unit, Saying why) implements Figure {
  @Override
  public Optional<Estimate> estimate() {
    return Optional.empty();
  }

  @Override
  public List<Share> budget() {
    return List.of();
  }
}
