package rundlauf.cli;

import java.util.concurrent.CountDownLatch;
import rundlauf.usecase.Serving;

/** Waiting for the user to stop what is being served. */
final class Waiting {
  private Waiting() {}

  /** Returns when this thread is interrupted; the workbook is stopped then, or with the program. */
  static void whileServed(Serving.Running running) {
    Runtime runtime = Runtime.getRuntime();
    Thread atTheEnd = new Thread(running.stop(), "stop");
    runtime.addShutdownHook(atTheEnd);
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException stopped) {
      runtime.removeShutdownHook(atTheEnd);
      running.stop().run();
    }
  }
}
