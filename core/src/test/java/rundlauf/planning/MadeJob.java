package rundlauf.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Cutter;
import rundlauf.bench.Entry;
import rundlauf.bench.Job;
import rundlauf.bench.Typed;
import rundlauf.character.SetupCharacter;
import rundlauf.character.SetupCharacter.TiltOf;
import rundlauf.character.Trait;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.safety.Standing;

/** An invented bench of setups that differ only in what a test gives them, and a job for it. */
public final class MadeJob {
  static final Draws DRAWS = new Draws(11, 400);

  private final Map<String, SetupCharacter> characters = new LinkedHashMap<>();
  private final Map<String, Object> fields = new LinkedHashMap<>();

  public MadeJob() {
    fields.put("name", "jig slot");
    fields.put("material", "aluminium 6082-T6");
    fields.put("cutter", "3 mm two-flute");
    fields.put("feature", "slot");
    fields.put("width", "3 mm");
    fields.put("depth", "1.2 mm");
    fields.put("length", "60 mm");
    fields.put("tolerance", "0.08 mm");
  }

  /** A field of the job; empty text leaves it out. */
  public MadeJob with(String field, String value) {
    if (value.isEmpty()) {
      fields.remove(field);
    } else {
      fields.put(field, value);
    }
    return this;
  }

  /** What the work's holding bears, and nothing else of it. */
  public MadeJob holding(String field, String value) {
    fields.put("workholding", Typed.fields(field, value));
    return this;
  }

  public MadeJob setup(String name, double stiffness, double eccentricity, Standing standing) {
    return setup(
        name,
        Measured.exact(stiffness, Unit.NEWTON_PER_MICROMETRE),
        Measured.exact(eccentricity, Unit.MICROMETRE),
        standing);
  }

  public MadeJob setup(String name, Measured stiffness, Measured eccentricity, Standing standing) {
    Trait nose = Trait.measured(stiffness);
    characters.put(
        name,
        new SetupCharacter(
            name,
            Trait.measured(eccentricity),
            Trait.entered(Measured.exact(0.5, Unit.DEGREE)),
            Trait.entered(Measured.exact(0, Unit.MICROMETRE_PER_MILLIMETRE)),
            Trait.entered(Measured.exact(0, Unit.DEGREE)),
            TiltOf.FIRST_TOOTH,
            nose,
            nose,
            Trait.entered(Measured.exact(8000 / 60.0, Unit.RPM)),
            Trait.entered(Measured.exact(24000 / 60.0, Unit.RPM)),
            Trait.missing(Unit.RPM_PER_WATT, Saying.of("made-missing", "")),
            Trait.entered(Measured.exact(400, Unit.WATT)),
            Trait.entered(Measured.exact(400, Unit.RPM)),
            Optional.of(standing),
            standing == Standing.HELD ? List.of(Saying.of("made-fault", "")) : List.of(),
            List.of()));
    return this;
  }

  static Measured doubtful(double value, double u, Unit unit, Cause cause) {
    return Measured.exact(value, unit).with(cause, u);
  }

  public Bench bench() {
    Entry[] setups =
        characters.keySet().stream()
            .map(name -> Typed.fields("name", name, "spindle", "Heron", "stickout", "20 mm"))
            .toArray(Entry[]::new);
    Entry.Fields cutter =
        Typed.fields(
            "name",
            "3 mm two-flute",
            "kind",
            "end-mill",
            "diameter",
            "3 mm",
            "flutes",
            "2",
            "helix",
            "30 deg",
            "flute-length",
            "9 mm",
            "shank",
            "3 mm",
            "modulus",
            "580 GPa",
            "strength",
            "1500 MPa",
            "edge-radius",
            "3 um");
    Entry.Fields drill = Typed.fields("name", "1.5 mm drill", "kind", "drill");
    Entry.Fields document =
        Typed.fields(
            "bench",
            "Invented",
            "spindles",
            Typed.items(Typed.fields("name", "Heron")),
            "cutters",
            Typed.items(cutter, drill, vTool()),
            "setups",
            Typed.items(setups));
    return BenchReader.read("bench.yaml", document, List.of());
  }

  /** A tool of 60 deg between its edges, its tip 0.1 mm wide. */
  static Cutter pointed() {
    Entry.Fields document = Typed.fields("bench", "Invented", "cutters", Typed.items(vTool()));
    return BenchReader.read("bench.yaml", document, List.of()).cutters().get(0);
  }

  private static Entry.Fields vTool() {
    return Typed.fields(
        "name",
        "pointed",
        "kind",
        "v-tool",
        "diameter",
        "0.1 mm",
        "angle",
        "60 deg",
        "flutes",
        "1",
        "helix",
        "0 deg",
        "flute-length",
        "4 mm",
        "shank",
        "3 mm",
        "modulus",
        "580 GPa",
        "strength",
        "1500 MPa",
        "edge-radius",
        "3 um");
  }

  Job job() {
    Object[] all =
        fields.entrySet().stream().flatMap(e -> Stream.of(e.getKey(), e.getValue())).toArray();
    return Job.of("job.yaml", Typed.fields(all));
  }

  public JobPlan plan() {
    return plan(Work.sequential());
  }

  JobPlan plan(Work work) {
    Knowledge knowledge =
        new Knowledge(
            put -> character(put.setup().name()),
            setup -> character(setup.name()).standing().orElseThrow(),
            setup -> character(setup.name()).because());
    return Planning.plan(bench(), job(), knowledge, DRAWS, Planning.STATES, work);
  }

  private SetupCharacter character(String name) {
    SetupCharacter character = characters.get(name);
    if (character == null) {
      throw new IllegalArgumentException("no setup " + name);
    }
    return character;
  }
}
