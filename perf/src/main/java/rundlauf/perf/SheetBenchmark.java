package rundlauf.perf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
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
import org.openjdk.jmh.annotations.Param;
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
  private static final String DIAL = "setup: Heron 3 mm\nindicator: plunger dial\n";
  private static final String RUNOUT =
      "trial: runout\n" + DIAL + "gauge: {diameter: 3 mm, tip: 28 mm}\n";
  private static final String TWO_HEIGHTS = RUNOUT + "intended: {stations: [5 mm, 20 mm]}\n";

  /** Trials by the name of their benchmark. Invented. */
  private static final Map<String, String> TRIALS =
      Map.of(
          "two-heights",
          TWO_HEIGHTS,
          "three-turns",
          RUNOUT + "intended: {turns: 3}\n",
          "marks-turned",
          RUNOUT
              + "intended: {stations: [5 mm], collet: [0 deg, 180 deg, 90 deg, 270 deg],"
              + " shank: [0 deg, 90 deg, 180 deg, 180 deg]}\n",
          "nine-sweeps",
          RUNOUT + "intended: {stations: [5 mm, 15 mm, 25 mm], clampings: 3}\n",
          "from-body-to-body",
          "trial: side-load\n"
              + DIAL
              + "load: brass lever\ncontact: 10 mm\nreference: table\n"
              + "body: {diameter: 3 mm, modulus: 210 GPa}\n"
              + "intended: {counts: [0, 2, 4], places: [shank 10 mm, nut -1 mm, nut -12 mm,"
              + " housing -20 mm, housing -30 mm]}\n");

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
  private synchronized int begin(String trial) {
    var name = new TrialName(bench, String.format("sheet-%06d.yaml", begun.incrementAndGet()));
    store.orElseThrow().benches().keepTrial(name, trial);
    List<String> all = store.orElseThrow().benches().trials(bench);
    return all.indexOf(name.trial()) + 1;
  }

  private SheetClient client() {
    return new SheetClient(running.orElseThrow().address().replaceFirst("/$", ""));
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
      client = Optional.of(workbook.client());
      sheet = workbook.begin(TWO_HEIGHTS);
    }

    private void take(SheetBenchmark workbook) {
      if (taken == 2 * SWEEP) {
        sheet = workbook.begin(TWO_HEIGHTS);
        taken = 0;
      }
      int angle = 45 * (taken % SWEEP);
      String reading = reading(3 * Math.cos(Math.toRadians(angle)) + 0.2 + taken / SWEEP);
      Map<String, String> cells =
          Map.of(
              "station_mm",
              taken < SWEEP ? "5" : "20",
              "angle_deg",
              Integer.toString(angle),
              "reading_um",
              reading);
      client.orElseThrow().reading(sheet, "key" + taken, cells);
      taken++;
    }
  }

  /** On the steps of a dial of 0.01 mm. */
  private static String reading(double divisions) {
    return Long.toString(10 * Math.round(divisions));
  }

  /** A hand that does what its sheet says, and begins the next when that is at its end. */
  @State(Scope.Thread)
  public static class GuidedHand {
    @Param({"two-heights", "three-turns", "marks-turned", "nine-sweeps", "from-body-to-body"})
    public String trial = "";

    private final Random scatter = new Random(1);
    private Optional<SheetClient> client = Optional.empty();
    private JsonNode now = MissingNode.getInstance();
    private int sheet;
    private int taken;

    @Setup(Level.Trial)
    public void open(SheetBenchmark workbook) {
      client = Optional.of(workbook.client());
    }

    /** Outside what is measured. */
    @Setup(Level.Invocation)
    public void beginWhereTheLastIsDone(SheetBenchmark workbook) {
      if (now.path("steps").isEmpty()) {
        sheet = workbook.begin(String.valueOf(TRIALS.get(trial)));
        now = client.orElseThrow().now(sheet);
      }
    }

    private JsonNode take() {
      Map<String, String> cells = new LinkedHashMap<>();
      now.path("steps")
          .path(0)
          .path("given")
          .forEach(g -> cells.put(g.path("column").asText(), g.path("text").asText()));
      cells.put("reading_um", reading(truth(cells) + 0.3 * scatter.nextGaussian()));
      client.orElseThrow().reading(sheet, "key" + taken++, cells);
      now = client.orElseThrow().now(sheet);
      return now;
    }

    private static double truth(Map<String, String> cells) {
      if (cells.containsKey("angle_deg")) {
        return 3 * Math.cos(Math.toRadians(number(cells, "angle_deg")));
      }
      double toward = number(cells, "direction_deg") < 90 ? 1 : -1;
      return toward * number(cells, "count") * (1.5 + number(cells, "at_mm") / 50);
    }

    private static double number(Map<String, String> cells, String column) {
      return Double.parseDouble(cells.getOrDefault(column, "0"));
    }
  }

  /** From sending a reading to the sheet's new figures, plot and next step, one device alone. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public JsonNode readingAndFigures(GuidedHand hand) {
    return hand.take();
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
