package rundlauf.store;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Remembers the first thing that a disk would not do: the making of tables asks again by itself,
 * and what it throws then says nothing of the disk.
 */
final class DiskWatch implements SQLExceptionOverride {
  private final AtomicReference<@Nullable SQLException> first = new AtomicReference<>();

  @java.lang.Override
  public Override adjudicate(SQLException said) {
    if (DiskTrouble.code(said).isPresent()) {
      first.compareAndSet(null, said);
    }
    return Override.CONTINUE_EVICT; // as without it
  }

  Optional<SQLException> first() {
    return Optional.ofNullable(first.get());
  }
}
