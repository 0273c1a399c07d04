package rundlauf.cutting.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Cut;
import rundlauf.bench.Entry;
import rundlauf.bench.Typed;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Operation;
import rundlauf.quantity.Refused;

class CutTasksTest {
  private final Map<String, Object> cutter = new LinkedHashMap<>();
  private final Map<String, Object> cut = new LinkedHashMap<>();

  CutTasksTest() {
    cutter.put("kind", "end-mill");
    cutter.put("diameter", "3 mm");
    cutter.put("flutes", "2");
    cutter.put("helix", "30 deg");
    cutter.put("flute-length", "9 mm");
    cutter.put("stickout", "20 mm");
    cutter.put("shank", "3 mm");
    cutter.put("modulus", "580 GPa");
    cut.put("material", "brass");
    cut.put("setup", Typed.fields("eccentricity", "6 um"));
    cut.put("operation", "slot");
    cut.put("speed", "18000 rpm");
    cut.put("feed-per-tooth", "15 um");
    cut.put("axial", "0.5 mm");
  }

  private static Entry.Fields typed(Map<String, Object> map) {
    return Typed.fields(
        map.entrySet().stream().flatMap(e -> Stream.of(e.getKey(), e.getValue())).toArray());
  }

  private CutTask task(Optional<Bench> bench) {
    if (bench.isEmpty()) {
      cut.put("cutter", typed(cutter));
    }
    Cut read = Cut.of("cut.yaml", typed(cut));
    CutterInUse used = CutTasks.cutter(read, bench);
    return CutTasks.of(read, used, new MadeTask().setup(), bench);
  }

  private Bench bench() {
    cutter.put("name", "mill");
    return BenchReader.read(
        "bench.yaml",
        Typed.fields(
            "bench",
            "Invented",
            "machine",
            Typed.fields("feed", "1200 mm/min"),
            "spindles",
            Typed.items(Typed.fields("name", "Heron")),
            "holders",
            Typed.items(Typed.fields("name", "collet", "max-speed", "30000 rpm")),
            "cutters",
            Typed.items(typed(cutter)),
            "setups",
            Typed.items(
                Typed.fields(
                    "name",
                    "Heron 3 mm",
                    "spindle",
                    "Heron",
                    "holder",
                    "collet",
                    "cutter",
                    "mill",
                    "stickout",
                    "18 mm"),
                Typed.fields("name", "bare", "spindle", "Heron"))),
        List.of());
  }

  @Test
  void aSlotIsAsWideAsItsCutter() {
    CutTask task = task(Optional.empty());
    assertThat(task.cut().operation()).isEqualTo(Operation.SLOT);
    assertThat(task.cut().radial()).isEqualTo(task.cutter().diameter());
    cut.put("radial", "3 mm");
    assertThat(task(Optional.empty()).cut().radial()).isEqualTo(task.cutter().diameter());
    assertThat(task.allowed()).isEqualTo(Allowed.ANYTHING);
  }

  @Test
  void ofABenchComeCutterStickoutAndLimits() {
    cutter.remove("stickout");
    cut.put("setup", Typed.fields("bench", "shop", "name", "Heron 3 mm"));
    CutTask task = task(Optional.of(bench()));
    assertThat(task.cutter().name()).isEqualTo("mill");
    assertThat(task.cutter().stickout().si()).isCloseTo(18e-3, within(1e-12));
    assertThat(task.allowed().axesFeed().orElseThrow()).isCloseTo(0.02, within(1e-12));
    assertThat(task.allowed().holderSpeed().orElseThrow()).isCloseTo(500, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "axial, 9.1 mm, cut-deeper-than-flutes",
    "radial, 2 mm, slot-not-full-width",
    "radial, 4 mm, radial-over-diameter",
    "feed-per-tooth, 1 mm, feed-beyond-cutter",
    "material, unobtainium, material-unknown"
  })
  void aCutThatDoesNotFitItsCutterIsRefused(String field, String value, String code) {
    cut.put(field, value);
    refuses(code, Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({
    "diameter, '', cutter-field-missing",
    "flutes, '', cutter-field-missing",
    "modulus, '', cutter-field-missing",
    "stickout, '', cutter-field-missing",
    "stickout, 8 mm, flutes-beyond-stickout",
    "helix, 81 deg, helix-too-steep",
    "kind, v-tool, kind-not-predicted"
  })
  void aCutterThatCannotBeIsRefused(String field, String value, String code) {
    if (value.isEmpty()) {
      cutter.remove(field);
    } else {
      cutter.put(field, value);
    }
    refuses(code, Optional.empty());
  }

  @Test
  void namesThatTheBenchDoesNotHaveAreRefused() {
    cut.put("setup", Typed.fields("bench", "shop", "name", "Heron 4 mm"));
    refuses("name-not-defined", Optional.of(bench()));
    cut.put("setup", Typed.fields("bench", "shop", "name", "Heron 3 mm"));
    cut.put("cutter", "saw");
    refuses("name-not-defined", Optional.of(bench()));
    cut.remove("cutter");
    cut.put("setup", Typed.fields("bench", "shop", "name", "bare"));
    refuses("cut-without-cutter", Optional.of(bench()));
  }

  private void refuses(String code, Optional<Bench> bench) {
    assertThatThrownBy(() -> task(bench))
        .isInstanceOfSatisfying(
            Refused.class, refused -> assertThat(refused.saying().code()).isEqualTo(code));
  }
}
