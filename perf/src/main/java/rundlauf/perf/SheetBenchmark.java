package rundlauf.perf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import rundlauf.MainServing;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.store.Store;
import rundlauf.usecase.KeepContents;
import rundlauf.usecase.Serving;
import rundlauf.usecase.TrialName;

/**
 * Readings sent to the workbook over HTTP, each on the disk before its answer, on the invented demo
 * bench in an SQLite file of its own. Set {@code java.io.tmpdir} to the disk that is meant.
 */
@State(Scope.Benchmark)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class SheetBenchmark {
  private static final String HEAD =
      "trial: runout\nsetup: Heron 3 mm\nindicator: plunger dial\n"
          + "gauge: {diameter: 3 mm, tip: 28 mm}\n"
          + "intended: {stations: [5 mm, 20 mm]}\n";

  private final AtomicInteger begun = new AtomicInteger();
  private Path folder = Path.of("");
  private Optional<Store> store = Optional.empty();
  private Optional<Serving.Running> running = Optional.empty();
  private String bench = "";

  @Setup
  public void open() throws IOException {
    folder = Files.createTempDirectory("sheet-benchmark");
    String address = folder.resolve("workbook.db").toString();
    Store opened = Store.open(address, InstantSource.system());
    store = Optional.of(opened);
    bench =
        new KeepContents(opened.benches(), opened.attachments(), new TypedDocuments())
            .keep(DemoBenchFiles.contents())
            .bench();
    running =
        Optional.of(
            new MainServing(Throwable::printStackTrace)
                .serve(new Serving.Call(Optional.of(address), "127.0.0.1", 0, false)));
  }

  @TearDown
  public void close() throws IOException {
    running.orElseThrow().stop().run();
    store.orElseThrow().close();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** A new sheet; its number. */
  private synchronized int begin() {
    var name = new TrialName(bench, String.format("sheet-%06d.yaml", begun.incrementAndGet()));
    store.orElseThrow().benches().keepTrial(name, HEAD);
    List<String> all = store.orElseThrow().benches().trials(bench);
    return all.indexOf(name.trial()) + 1;
  }

  /** A hand at a sheet: two sweeps of eight positions and the mark again, then the next sheet. */
  @State(Scope.Thread)
  public static class Hand {
    private static final int SWEEP = 9;
    private Optional<SheetClient> client = Optional.empty();
    private int sheet;
    private int taken;

    @Setup(Level.Trial)
    public void open(SheetBenchmark workbook) {
      String address = workbook.running.orElseThrow().address();
      client = Optional.of(new SheetClient(address.replaceFirst("/$", "")));
      sheet = workbook.begin();
    }

    private void take(SheetBenchmark workbook) {
      if (taken == 2 * SWEEP) {
        sheet = workbook.begin();
        taken = 0;
      }
      int position = taken % SWEEP;
      long divisions = Math.round(3 * Math.cos(Math.PI * position / 4) + 0.2 + taken / SWEEP);
      client
          .orElseThrow()
          .reading(
              sheet,
              "key" + taken,
              taken < SWEEP ? "5" : "20",
              Integer.toString(45 * position),
              Long.toString(10 * divisions));
      taken++;
    }
  }

  /** From sending a reading to the sheet's new figures, plot and next step, one device alone. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public String readingAndFigures(Hand hand) {
    hand.take(this);
    return hand.client.orElseThrow().now(hand.sheet);
  }

  /** Readings acknowledged, twenty sheets at once. */
  @Benchmark
  @BenchmarkMode(Mode.Throughput)
  @OutputTimeUnit(TimeUnit.SECONDS)
  @Threads(20)
  public void readingsOfTwentySheets(Hand hand) {
    hand.take(this);
  }
}
