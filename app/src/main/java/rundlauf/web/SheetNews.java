package rundlauf.web;

import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import rundlauf.usecase.TrialName;

/**
 * Tells every device that has a sheet open when something was added to its trial, or when a spindle
 * may stand otherwise than before.
 */
final class SheetNews {
  private final Map<TrialName, List<Listener>> open = new ConcurrentHashMap<>();

  private record Listener(SseClient client, BooleanSupplier stays) {}

  /**
   * Tells this device from now on, until it leaves.
   *
   * @param stays whether it is let in still
   */
  void listen(TrialName trial, int version, SseClient client, BooleanSupplier stays) {
    client.keepAlive();
    var listener = new Listener(client, stays);
    List<Listener> listening = open.computeIfAbsent(trial, t -> new CopyOnWriteArrayList<>());
    listening.add(listener);
    client.onClose(() -> listening.remove(listener));
    client.sendEvent("changed", Integer.toString(version));
  }

  /** Whether any device has it open. */
  boolean isOpen(TrialName trial) {
    return !open.getOrDefault(trial, List.of()).isEmpty();
  }

  void changed(TrialName trial, int version) {
    tell(open.getOrDefault(trial, List.of()), "changed", Integer.toString(version));
  }

  /** An inspection has changed: whoever is about to power a spindle must know at once. */
  void inspected() {
    // an event without data would not arrive
    open.values().forEach(listening -> tell(listening, "inspected", "now"));
  }

  private static void tell(List<Listener> listening, String event, String data) {
    for (Listener listener : listening) {
      if (listener.stays().getAsBoolean()) {
        listener.client().sendEvent(event, data);
      } else {
        listener.client().close();
      }
    }
  }
}
