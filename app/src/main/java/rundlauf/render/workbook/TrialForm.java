package rundlauf.render.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.readings.TrialKind;

/** The fields by which a trial is begun, and those that say its conditions, kind by kind. */
public final class TrialForm {
  private static final List<String> YES_NO = List.of("yes", "no");
  private static final List<String> BODIES = List.of("table", "base", "carriage", "mount");

  /** What a trial is usually meant to be; our choices. */
  public static final Map<String, String> USUAL = usual();

  private final Map<String, String> typed;
  private final List<FormField> fields = new ArrayList<>();

  private TrialForm(Map<String, String> typed) {
    this.typed = typed;
  }

  private static Map<String, String> usual() {
    Map<String, String> usual = new LinkedHashMap<>();
    usual.put("intended.reading", "div");
    usual.put("intended.positions", "8");
    usual.put("intended.clampings", "1");
    usual.put("intended.counts[]", "0; 1; 2; 3");
    usual.put("intended.directions[]", "0 deg; 180 deg");
    usual.put("intended.for", "40 min");
    usual.put("intended.every", "2 min");
    return Collections.unmodifiableMap(usual);
  }

  /**
   * The fields that begin a trial.
   *
   * @param typed what stands in them, by their paths
   */
  public static List<FormField> begin(TrialKind kind, Bench bench, Map<String, String> typed) {
    TrialForm form = new TrialForm(typed);
    form.needed("setup", bench.setups().stream().map(Setup::name).toList());
    switch (kind) {
      case RUNOUT -> form.runout(bench);
      case SIDE_LOAD -> form.pushed(bench, true);
      case AXIAL -> form.pushed(bench, false);
      case GROWTH -> form.growth(bench);
      case SPEED -> form.speed();
      case INSPECTION -> {}
    }
    form.free("title");
    form.free("date");
    return form.fields;
  }

  /** The fields that say how a trial is taken. */
  public static List<FormField> conditions(TrialKind kind, Map<String, String> typed) {
    TrialForm form = new TrialForm(typed);
    if (kind == TrialKind.INSPECTION) {
      form.free("notes");
      return form.fields;
    }
    form.choice("conditions.cleaned", YES_NO);
    form.free("conditions.nut");
    form.free("conditions.warm-up");
    form.free("conditions.temperature");
    form.free("conditions.pin");
    switch (kind) {
      case RUNOUT -> {
        form.choice("conditions.turned-by", List.of("hand", "running"));
        form.free("angle-limit");
      }
      case SIDE_LOAD, AXIAL -> {
        form.choice("reference", BODIES);
        form.choice("reaction", BODIES);
        form.choice("conditions.rotor", List.of("free", "locked"));
        form.free("stand.load");
        form.free("stand.moved");
      }
      case GROWTH -> form.choice("reference", BODIES);
      case SPEED, INSPECTION -> {}
    }
    form.free("notes");
    return form.fields;
  }

  private void runout(Bench bench) {
    dial(bench);
    needed("gauge.diameter", List.of());
    free("gauge.tip");
    free("intended.positions");
    free("intended.turns");
    free("intended.stations[]");
    free("intended.clampings");
    free("intended.collet[]");
    free("intended.shank[]");
  }

  private void pushed(Bench bench, boolean side) {
    dial(bench);
    choice("load", bench.rigs().stream().map(r -> r.name().orElse("")).toList());
    if (side) {
      needed("contact", List.of());
      free("body.diameter");
      free("body.modulus");
    }
    choice("reference", BODIES);
    free("intended.counts[]");
    free("intended.loads[]");
    free("intended.repeats");
    if (side) {
      free("intended.directions[]");
      free("intended.places[]");
      free("intended.contacts[]");
    }
  }

  private void growth(Bench bench) {
    dial(bench);
    free("intended.for");
    free("intended.every");
  }

  private void speed() {
    free("wanted[]");
    free("intended.settings[]");
  }

  private void dial(Bench bench) {
    needed("indicator", bench.indicators().stream().map(i -> i.name().orElse("")).toList());
    choice("intended.reading", List.of("div", "um", "mm", "thou"));
  }

  private void free(String path) {
    add(path, List.of(), false);
  }

  private void choice(String path, List<String> choices) {
    add(path, choices, false);
  }

  private void needed(String path, List<String> choices) {
    add(path, choices, true);
  }

  private void add(String path, List<String> choices, boolean needed) {
    String code = "trial-field-" + path.replace("[]", "");
    fields.add(FormField.of(code, path, choices, needed, typed.getOrDefault(path, "")));
  }
}
