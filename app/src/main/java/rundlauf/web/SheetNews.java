package rundlauf.web;

import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import rundlauf.usecase.TrialName;

/** Tells every device that has a sheet open when something was added to its trial. */
final class SheetNews {
  private final Map<TrialName, List<SseClient>> open = new ConcurrentHashMap<>();

  /** Tells this device from now on, until it leaves. */
  void listen(TrialName trial, int version, SseClient client) {
    client.keepAlive();
    List<SseClient> listening = open.computeIfAbsent(trial, t -> new CopyOnWriteArrayList<>());
    listening.add(client);
    client.onClose(() -> listening.remove(client));
    client.sendEvent("changed", Integer.toString(version));
  }

  /** Whether any device has it open. */
  boolean isOpen(TrialName trial) {
    return !open.getOrDefault(trial, List.of()).isEmpty();
  }

  void changed(TrialName trial, int version) {
    for (SseClient client : open.getOrDefault(trial, List.of())) {
      client.sendEvent("changed", Integer.toString(version));
    }
  }
}
