package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.maths.Work;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.workbook.KitForm;
import rundlauf.store.Store;

/** Parts are put on a bench, changed and taken away, each time as a new edition of it. */
class KitTest {
  @TempDir Path folder;
  private final TypedDocuments documents = new TypedDocuments();
  private Store store;
  private BenchStore benches;
  private StoredBench stored;
  private PutPart put;
  private RemovePart remove;
  private ShowKit show;

  @BeforeEach
  void opened() {
    String address = folder.resolve("kit.db").toString();
    store = Store.open(address, () -> Instant.parse("2026-11-25T20:00:00Z"));
    benches = store.benches();
    stored = new StoredBench(benches, store.attachments(), documents);
    put = new PutPart(benches, stored, documents);
    remove = new RemovePart(benches, stored, documents);
    show = new ShowKit(benches, documents, new KeptResults(stored, documents, Work.sequential()));
  }

  @AfterEach
  void closed() {
    store.close();
  }

  private String empty() {
    new MakeBench(benches, documents).make("Trying corner (invented)");
    return "Trying corner (invented)";
  }

  private String demo() {
    return new KeepContents(benches, store.attachments(), documents)
        .keep(DemoBenchFiles.contents())
        .bench();
  }

  /** As a form does: with every field of its section, the empty ones too. */
  private static Map<String, String> whole(KitExamples.Example example) {
    Map<String, String> typed = new LinkedHashMap<>();
    KitForm.paths(example.section())
        .forEach(path -> typed.put(path, example.typed().getOrDefault(path, "")));
    return typed;
  }

  private int edition(String bench) {
    return show.show(bench).edition();
  }

  private void putAll(String bench) {
    for (KitExamples.Example example : KitExamples.all()) {
      put.put(bench, edition(bench), example.section(), 0, whole(example));
    }
  }

  private Entry.Fields part(String bench, String section, int number) {
    return (Entry.Fields) show.show(bench).parts(section).get(number - 1);
  }

  @Test
  void everyFieldIsKeptAsTypedAndReadBack() {
    String bench = empty();
    putAll(bench);
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (KitExamples.Example example : KitExamples.all()) {
      int number = numbers.merge(example.section(), 1, Integer::sum);
      Entry.Fields kept = part(bench, example.section(), number);
      example
          .typed()
          .forEach((path, text) -> assertThat(EntryTexts.at(kept, path)).as(path).isEqualTo(text));
    }
    assertThat(show.show(bench).bench().spindles().get(0).efficiency().orElseThrow().si())
        .isEqualTo(0.55);
    assertThat(edition(bench)).isEqualTo(1 + KitExamples.all().size());
  }

  @Test
  void namesOfTheBenchAndTheLibraryAreOfferedAndOthersMayBeTyped() {
    String bench = demo();
    ShowKit.Kit kit = show.show(bench);
    Map<String, List<String>> offers = new LinkedHashMap<>();
    KitForm.of("jobs", kit.bench(), part(bench, "jobs", 1), Map.of())
        .forEach(field -> offers.put(field.path(), field.offers()));
    assertThat(offers.get("cutter[]")).contains("1 mm two-flute", "30 deg V-tool");
    assertThat(offers.get("material.name")).contains("mother of pearl").doesNotHaveDuplicates();
    assertThat(offers.get("depth")).isEmpty();
    KitForm.of("jobs", kit.bench(), part(bench, "jobs", 1), Map.of())
        .forEach(
            field -> assertThat(field.choices().isEmpty() || field.offers().isEmpty()).isTrue());
  }

  @Test
  void aTextLongerThanAFormTakesOrOfSeveralLinesIsRefused() {
    String bench = empty();
    assertThatThrownBy(
            () -> put.put(bench, edition(bench), "spindles", 0, Map.of("name", "x".repeat(401))))
        .hasMessageStartingWith("text-too-long");
    assertThatThrownBy(
            () -> put.put(bench, edition(bench), "spindles", 0, Map.of("name", "two\nlines")))
        .hasMessageStartingWith("text-of-one-line");
    Map<String, String> noted = Map.of("name", "Owl", "notes", "two\r\nlines");
    put.put(bench, edition(bench), "spindles", 0, noted);
    assertThat(EntryTexts.at(part(bench, "spindles", 1), "notes")).isEqualTo("two\nlines");
  }

  @Test
  void everyFieldOfEverySectionStandsInAnExample() {
    Map<String, List<String>> filled = new LinkedHashMap<>();
    for (String section : KitForm.names()) {
      filled.put(
          section,
          KitExamples.all().stream()
              .filter(e -> e.section().equals(section))
              .flatMap(e -> e.typed().keySet().stream())
              .distinct()
              .toList());
      assertThat(filled.get(section))
          .as(section)
          .containsExactlyInAnyOrderElementsOf(KitForm.paths(section));
    }
  }

  @Test
  void aFormKeptUnchangedGivesAnEqualDocument() {
    String bench = demo();
    for (String section : KitForm.names()) {
      int parts = show.show(bench).parts(section).size();
      for (int number = 1; number <= parts; number++) {
        ShowKit.Kit before = show.show(bench);
        Entry.Fields was = part(bench, section, number);
        Map<String, String> typed = new LinkedHashMap<>();
        KitForm.of(section, before.bench(), was, Map.of())
            .forEach(field -> typed.put(field.path(), field.text()));
        put.put(bench, before.edition(), section, number, typed);
        assertThat(documents.write(show.show(bench).document()))
            .as(section + " " + number)
            .isEqualTo(documents.write(before.document()));
      }
    }
    assertThat(show.show(bench).editions())
        .hasSizeGreaterThan(1)
        .allSatisfy(step -> assertThat(step.changes()).isEmpty());
  }

  @Test
  void aChangeLeavesEverythingElseAsItWas() {
    String bench = demo();
    ShowKit.Kit before = show.show(bench);
    put.put(bench, before.edition(), "spindles", 2, Map.of("input", "350 W"));
    ShowKit.Kit now = show.show(bench);
    assertThat(EntryTexts.at(part(bench, "spindles", 2), "input")).isEqualTo("350 W");
    assertThat(said(now)).containsExactly("Wren says otherwise: input");
    put.put(bench, now.edition(), "spindles", 2, Map.of("input", "300 W"));
    assertThat(documents.write(show.show(bench).document()))
        .isEqualTo(documents.write(before.document()));
  }

  private static List<String> said(ShowKit.Kit kit) {
    return kit.editions().get(kit.editions().size() - 1).changes().stream()
        .map(Sentences::text)
        .toList();
  }

  static List<KitExamples.Example> examples() {
    return KitExamples.all();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyPartIsChangedByItsFieldAndEmptiedOne(KitExamples.Example example) {
    String bench = empty();
    putAll(bench);
    List<Entry> parts = show.show(bench).parts(example.section());
    int number =
        parts.stream().map(p -> PartUses.name((Entry.Fields) p)).toList().indexOf(example.name())
            + 1;
    boolean notes = KitForm.paths(example.section()).contains("notes");
    assertThat(notes).isTrue();
    Map<String, String> typed = new LinkedHashMap<>(whole(example));
    typed.put("notes", "two\r\nlines, and: a colon");
    put.put(bench, edition(bench), example.section(), number, typed);
    assertThat(EntryTexts.at(part(bench, example.section(), number), "notes"))
        .isEqualTo("two\nlines, and: a colon");
    typed.put("notes", "");
    put.put(bench, edition(bench), example.section(), number, typed);
    assertThat(part(bench, example.section(), number).fields()).doesNotContainKey("notes");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          spindles   | input          | 800      | unit-missing
          spindles   | drive          | steam    | word-unknown
          spindles   | efficiency     | 1.2      | efficiency-over-one
          spindles   | supply.voltage | 0 V      | value-not-positive
          holders    | bore           | 3 kg     | unit-of-another-kind
          holders    | range.min      | 4 mm     | span-reversed
          cutters    | flutes         | 1.5      | count-expected
          indicators | division       |          | division-missing
          rigs       | contact-arm    |          | one-arm-only
          materials  | force.mc       | 0.2      | force-of-two-kinds
          setups     | spindle        | Curlew   | name-not-defined
          setups     | name           |          | field-missing
          jobs       | cutter[]       | Curlew   | name-not-defined
          jobs       | wall-share     | 1.5      | wall-share-over-one
          """)
  void whatCannotBeReadIsRefusedAtItsFieldAndNothingIsKept(
      String section, String path, String text, String code) {
    String bench = empty();
    putAll(bench);
    int edition = edition(bench);
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put(path, text == null ? "" : text);
    assertThatThrownBy(() -> put.put(bench, edition, section, 1, typed))
        .isInstanceOfSatisfying(
            Refused.class,
            refused -> {
              assertThat(refused.saying().code()).isEqualTo(code);
              assertThat(refused.place().field()).contains(path.replace("[]", ""));
            });
    assertThat(edition(bench)).isEqualTo(edition);
  }

  @Test
  void aLimitOfErrorBecomesOneOfSpansAndBack() {
    String bench = empty();
    putAll(bench);
    Map<String, String> typed = new LinkedHashMap<>(whole(KitExamples.all().get(4)));
    KitForm.paths("indicators")
        .forEach(
            path -> typed.put(path, path.startsWith("limit-of-error.") ? "" : typed.get(path)));
    typed.put("limit-of-error", "7 um");
    put.put(bench, edition(bench), "indicators", 2, typed);
    assertThat(EntryTexts.at(part(bench, "indicators", 2), "limit-of-error")).isEqualTo("7 um");
    typed.put("limit-of-error", "");
    typed.put("limit-of-error.range", "15 um");
    put.put(bench, edition(bench), "indicators", 2, typed);
    assertThat(EntryTexts.at(part(bench, "indicators", 2), "limit-of-error.range"))
        .isEqualTo("15 um");
    typed.put("limit-of-error", "7 um");
    assertRefused("field-said-twice", () -> put.put(bench, edition(bench), "indicators", 2, typed));
  }

  @Test
  void whatIsNamedIsNeitherTakenAwayNorNamedAnew() {
    String bench = demo();
    int edition = edition(bench);
    for (String section :
        List.of("spindles", "holders", "cutters", "indicators", "rigs", "setups")) {
      assertRefused("part-used", () -> remove.remove(bench, edition, section, 1));
    }
    assertRefused(
        "part-name-used",
        () -> put.put(bench, edition, "spindles", 1, Map.of("name", "Great heron")));
    assertThat(edition(bench)).isEqualTo(edition);
  }

  @Test
  void whatNothingNamesIsTakenAway() {
    String bench = empty();
    putAll(bench);
    remove.remove(bench, edition(bench), "jobs", 1);
    remove.remove(bench, edition(bench), "setups", 1);
    for (String section : KitForm.names()) {
      while (!show.show(bench).parts(section).isEmpty()) {
        String name = PartUses.name(part(bench, section, 1));
        remove.remove(bench, edition(bench), section, 1);
        assertThat(said(show.show(bench))).containsExactly(name + " is taken away");
      }
    }
  }

  @Test
  void whoeverSawAnOlderEditionIsToldAndChangesNothing() {
    String bench = demo();
    int seen = edition(bench);
    put.put(bench, seen, "spindles", 1, Map.of("input", "750 W"));
    assertRefused(
        "edition-newer", () -> put.put(bench, seen, "spindles", 1, Map.of("input", "700 W")));
    assertRefused("edition-newer", () -> remove.remove(bench, seen, "jobs", 1));
    assertThat(EntryTexts.at(part(bench, "spindles", 1), "input")).isEqualTo("750 W");
    assertThat(edition(bench)).isEqualTo(seen + 1);
  }

  @Test
  void anOlderEditionIsTakenBackAsANewOne() {
    String bench = demo();
    String first = benches.benchEditions(bench).get(0).document();
    put.put(bench, edition(bench), "spindles", 1, Map.of("input", "750 W"));
    new RestoreEdition(benches, stored, documents).restore(bench, 1);
    assertThat(benches.benchEditions(bench)).hasSize(3);
    assertThat(benches.benchEditions(bench).get(2).document()).isEqualTo(first);
  }

  @Test
  void anEditionWithoutWhatATrialNamesIsNotTakenBack() {
    String bench = demo();
    Entry.Fields without = show.show(bench).document();
    without = BenchDocument.with(without, "indicators", List.of());
    String newest = benches.benchEditions(bench).get(0).document();
    benches.keepBench(bench, documents.write(without));
    benches.keepBench(bench, newest);
    RestoreEdition restore = new RestoreEdition(benches, stored, documents);
    assertRefused("part-used", () -> restore.restore(bench, 2));
    assertThat(edition(bench)).isEqualTo(3);
  }

  @Test
  void theHeadOfABenchIsSaid() {
    String bench = empty();
    SayHead head = new SayHead(benches, stored, documents);
    head.say(bench, 1, Map.of("machine.feed", "1800 mm/min", "notes", "Invented"));
    assertThat(show.show(bench).bench().notes()).contains("Invented");
    assertRefused("unit-missing", () -> head.say(bench, 2, Map.of("machine.feed", "1800")));
  }

  @Test
  void anEmptyBenchIsToldWhatItLacks() {
    String bench = empty();
    assertThat(FirstTrial.missing(show.show(bench).bench()).stream().map(Saying::about))
        .containsExactly("spindles", "setups", "indicators", "rigs");
    putAll(bench);
    assertThat(FirstTrial.missing(show.show(bench).bench())).isEmpty();
  }

  private static void assertRefused(String code, Runnable call) {
    assertThatThrownBy(call::run)
        .isInstanceOfSatisfying(
            Refused.class, refused -> assertThat(refused.saying().code()).isEqualTo(code));
  }
}
