package rundlauf.cli;

import java.util.concurrent.CountDownLatch;

/** Waiting for the user to stop what is being served. */
final class Waiting {
  private Waiting() {}

  /** Does this when the program is told to end. */
  static void atTheEnd(Runnable stop) {
    Runtime.getRuntime().addShutdownHook(new Thread(stop, "stop"));
  }

  /** Returns only if this thread is interrupted. */
  static void untilStopped() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
