package rundlauf.perf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Entry;
import rundlauf.bench.Job;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Knowledge;
import rundlauf.planning.Planning;
import rundlauf.quantity.Place;
import rundlauf.safety.Standing;

/**
 * Jobs of a 3 mm two-flute mill in aluminium 6082 planned on one core on four setups, from stiff to
 * soft, each with 10 ± 3 µm of runout and the place of tooth 1 open.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class PlanBenchmark {
  private static final Draws DRAWS = new Draws(1, 200);
  private static final Place NOWHERE = Place.NOWHERE;
  private static final double[] STIFFNESSES = {8e6, 3e6, 1.2e6, 0.6e6};
  private static final Bench BENCH = bench();
  private static final Knowledge KNOWLEDGE =
      new Knowledge(
          put -> InventedSetup.of(STIFFNESSES[Integer.parseInt(put.setup().name())], 10e-6, DRAWS),
          setup -> Standing.INSPECTED,
          setup -> List.of());

  @Benchmark
  public JobPlan slot() {
    return plan("slot", "3 mm", "0.08 mm");
  }

  @Benchmark
  public JobPlan pocket() {
    return plan("pocket", "20 mm", "0.08 mm");
  }

  @Benchmark
  public JobPlan pocketThatNoneWillDo() {
    return plan("pocket", "20 mm", "0.01 mm");
  }

  private static JobPlan plan(String feature, String width, String tolerance) {
    Entry.Fields document =
        fields(
            "material", text("aluminium 6082-T6"),
            "feature", text(feature),
            "width", text(width),
            "depth", text("3 mm"),
            "length", text("60 mm"),
            "tolerance", text(tolerance));
    Job job = Job.of("job.yaml", document);
    return Planning.plan(BENCH, job, KNOWLEDGE, DRAWS, Planning.STATES, Work.sequential());
  }

  private static Bench bench() {
    Entry.Fields cutter =
        fields(
            "name", text("two-flute"),
            "kind", text("end-mill"),
            "diameter", text("3 mm"),
            "flutes", text("2"),
            "helix", text("30 deg"),
            "flute-length", text("9 mm"),
            "shank", text("3 mm"),
            "modulus", text("580 GPa"),
            "strength", text("1500 MPa"),
            "edge-radius", text("3 um"));
    List<Entry> setups = new ArrayList<>();
    for (int i = 0; i < STIFFNESSES.length; i++) {
      setups.add(
          fields(
              "name", text(String.valueOf(i)),
              "spindle", text("Heron"),
              "cutter", text("two-flute"),
              "stickout", text("20 mm")));
    }
    Entry.Fields document =
        fields(
            "bench", text("Invented"),
            "spindles", items(List.of(fields("name", text("Heron")))),
            "cutters", items(List.of(cutter)),
            "setups", items(setups));
    return BenchReader.read("bench.yaml", document, List.of());
  }

  private static Entry.Items items(List<Entry> items) {
    return new Entry.Items(items, NOWHERE);
  }

  private static Entry.Scalar text(String text) {
    return new Entry.Scalar(text, false, NOWHERE);
  }

  private static Entry.Fields fields(Object... namesAndEntries) {
    Map<String, Entry> fields = new LinkedHashMap<>();
    Map<String, Place> places = new LinkedHashMap<>();
    for (int i = 0; i < namesAndEntries.length; i += 2) {
      fields.put((String) namesAndEntries[i], (Entry) namesAndEntries[i + 1]);
      places.put((String) namesAndEntries[i], NOWHERE);
    }
    return new Entry.Fields(fields, places, NOWHERE);
  }
}
