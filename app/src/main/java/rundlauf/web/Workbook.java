package rundlauf.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.TlsIdentity;

/** The server of the workbook. */
public final class Workbook {
  /** Threads at most; the sheets that are open hold none. */
  private static final int THREADS = 24;

  /** Bytes of a request: one recording or photo, and a little. */
  private static final long LARGEST_REQUEST = 65_000_000;

  private final Javalin server;
  private final String host;
  private final String scheme;

  private Workbook(Javalin server, String host, String scheme) {
    this.server = server;
    this.host = host;
    this.scheme = scheme;
  }

  /** Every name and address by which a workbook that listens there is reached. */
  public static List<String> names(String host) {
    return Addresses.names(host);
  }

  /**
   * Starts it.
   *
   * @param cases what can be asked of it
   * @param host the address to listen on
   * @param port to listen on; 0: any that is free
   * @param identity what it shows of itself over TLS; plain HTTP without
   * @throws Refused when it cannot listen there
   */
  public static Workbook start(Cases cases, String host, int port, Optional<TlsIdentity> identity) {
    return start(cases, host, port, identity, InstantSource.system(), Guard::fromHere);
  }

  /**
   * Starts it.
   *
   * @param clock what time it is for sessions and codes
   * @param here whether a request comes from this machine itself
   */
  static Workbook start(
      Cases cases,
      String host,
      int port,
      Optional<TlsIdentity> identity,
      InstantSource clock,
      Predicate<Context> here) {
    var door = new Door(clock);
    var guard = new Guard(new Sessions(clock), door, host, here);
    var frame = new Frame(cases.shelf(), guard);
    var devices = new DevicePages(frame, guard, door, host, identity);
    Javalin server =
        Javalin.create(
            config -> {
              configure(config, cases, guard, frame, devices);
              identity.ifPresent(tls -> TlsConnector.on(config.jetty, host, port, tls));
            });
    try {
      server.start(host, port);
    } catch (JavalinBindException taken) {
      throw Refused.at(Place.NOWHERE, "port-taken", Arg.of(host + ":" + port));
    }
    return new Workbook(server, host, identity.isPresent() ? "https" : "http");
  }

  private static void configure(
      JavalinConfig config, Cases cases, Guard guard, Frame pages, Group devices) {
    config.startup.showJavalinBanner = false;
    config.startup.startupWatcherEnabled = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.jetty.threadPool = new QueuedThreadPool(THREADS, 4);
    config.http.maxRequestSize = LARGEST_REQUEST;
    config.routes.before(guard::before);
    Refusals.on(config.routes, cases.faults());
    config.routes.get("/asset/{name}", AssetPages::give);
    devices.on(config.routes);
    for (Group group : groups(cases, pages)) {
      group.on(config.routes);
    }
  }

  /** The pages, by what they are about. */
  private static List<Group> groups(Cases cases, Frame frame) {
    return List.of(
        new BenchesPages(cases, frame),
        new BenchPages(cases, frame),
        new StartPages(cases, frame),
        new TrialPages(cases, frame),
        new SheetPages(cases, frame),
        new KitPages(cases, frame),
        new PublishPages(cases, frame),
        new MethodPages(frame));
  }

  /** What a browser on this machine opens. */
  public String address() {
    return Addresses.here(scheme, host, server.port());
  }

  /** Whether other devices can reach it. */
  public boolean isWide() {
    return !Addresses.isLoopback(host);
  }

  /** Ends it; requests that are being answered are answered. */
  public void stop() {
    server.stop();
  }
}
