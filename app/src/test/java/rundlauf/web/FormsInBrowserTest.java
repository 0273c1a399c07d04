package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.Ran;
import rundlauf.store.Store;
import rundlauf.usecase.TrialName;

/** The forms beside those of the equipment: trials begun, conditions, photos, benches, packages. */
class FormsInBrowserTest {
  private static final String BENCH = "The inlay corner of a luthier's workshop (invented)";

  private static final String DIAL =
      "setup=Heron 3 mm|indicator=plunger dial|intended.reading=um|title=Taken anew|date=2026-03-12";
  private static final String PUSH = "|reference=base|intended.counts[]=0; 2|intended.repeats=2";

  /** Every field that a trial of a kind can be begun with. Invented. */
  private static final Map<String, String> BEGUN =
      Map.of(
          "runout",
          DIAL
              + "|gauge.diameter=3 mm|gauge.tip=28 mm|intended.positions=6|intended.turns=2"
              + "|intended.stations[]=5 mm; 20 mm|intended.clampings=2"
              + "|intended.collet[]=0 deg; 90 deg|intended.shank[]=0 deg; 0 deg",
          "side-load",
          DIAL
              + PUSH
              + "|load=brass lever|contact=10 mm|body.diameter=3 mm|body.modulus=210 GPa"
              + "|intended.directions[]=0 deg; 90 deg|intended.places[]=shank 10 mm; nut -2 mm"
              + "|intended.contacts[]=10 mm; 25 mm",
          "axial",
          DIAL + PUSH + "|intended.loads[]=0 N; 5 N",
          "growth",
          DIAL + "|intended.for=20 min|intended.every=4 min",
          "speed",
          "setup=Heron 3 mm|title=Taken anew|date=2026-03-12"
              + "|wanted[]=12000 rpm; 18000 rpm|intended.settings[]=20 %; 40 %",
          "inspection",
          "setup=Heron 3 mm|title=Taken anew|date=2026-03-12");

  private static final String ALWAYS =
      "conditions.cleaned=yes|conditions.nut=6 N m|conditions.warm-up=15 min"
          + "|conditions.temperature=19 degC|conditions.pin=ground pin|notes=Seen twice.";

  /** Every field that says how a trial of a kind is taken. Invented. */
  private static final Map<String, String> TAKEN =
      Map.of(
          "runout",
          ALWAYS + "|conditions.turned-by=hand|angle-limit=1 deg",
          "side-load",
          ALWAYS
              + "|reference=table|reaction=table|conditions.rotor=free"
              + "|stand.load=10 N|stand.moved=2 um",
          "axial",
          ALWAYS
              + "|reference=table|reaction=table|conditions.rotor=locked"
              + "|stand.load=10 N|stand.moved=0 um",
          "growth",
          ALWAYS + "|reference=carriage",
          "speed",
          ALWAYS,
          "inspection",
          "notes=Seen twice.");

  @TempDir private static Path folder;
  private static OpenWorkbook workbook;
  private static Device device;

  @BeforeAll
  static void opened() {
    workbook = OpenWorkbook.demo(folder);
    device = workbook.device();
  }

  @AfterAll
  static void closed() {
    workbook.close();
  }

  private static Map<String, String> fields(Map<String, String> all, String kind) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (String field : String.valueOf(all.get(kind)).split("\\|")) {
      fields.put(field.split("=", 2)[0], field.split("=", 2)[1]);
    }
    return fields;
  }

  private static void send(String form, String arrived) {
    device.leaveBy(form + " button");
    assertThat(device.address()).matches(arrived);
  }

  private static FilledForm begin(String kind, Map<String, String> typed) {
    workbook.go("/bench/1/trial/new/" + kind);
    FilledForm form = new FilledForm(device, "form.start");
    form.fill(typed);
    return form;
  }

  private static String newestDocument() {
    try (Store store = Store.open(workbook.served().store(), InstantSource.system())) {
      List<String> trials = store.benches().trials(BENCH);
      int number = Integer.parseInt(device.address().replaceFirst(".*/trial/(\\d+)/.*", "$1"));
      var editions = store.benches().editions(new TrialName(BENCH, trials.get(number - 1)));
      return editions.get(editions.size() - 1).document();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"runout", "side-load", "axial", "growth", "speed", "inspection"})
  void aTrialIsBegunAndItsConditionsSaidWithEveryField(String kind) {
    device.sized(Device.PHONE, false);
    device.console(); // of refusals before
    Map<String, String> typed = fields(BEGUN, kind);
    FilledForm begun = begin(kind, typed);
    assertThat(begun.kept()).containsExactlyInAnyOrderEntriesOf(typed);
    send("form.start", ".*/sheet");
    String document = newestDocument();
    for (String text : typed.values()) {
      assertThat(document).contains(text.split("; "));
    }

    FilledForm taken = new FilledForm(device, "form.conditions");
    taken.fill(fields(TAKEN, kind));
    send("form.conditions", ".*/sheet");
    assertThat(taken.kept()).containsExactlyInAnyOrderEntriesOf(fields(TAKEN, kind));
    assertThat(device.fits()).isTrue();
    assertThat(device.accessibilityFaults()).isEmpty();
    assertThat(device.console()).isEmpty();
  }

  @Test
  void aPushWithoutARigOrForcesIsRefusedAtTheRig() {
    Map<String, String> typed = fields(BEGUN, "side-load");
    typed.remove("load");
    FilledForm form = begin("side-load", typed);
    send("form.start", ".*/new/side-load");
    assertThat(device.all("#field-load[aria-invalid]")).hasSize(1);
    assertThat(device.text("#field-load-hint")).contains("what one of them weighs");
    assertThat(form.kept()).containsExactlyInAnyOrderEntriesOf(typed);
  }

  @Test
  void aConditionThatCannotBeReadIsRefusedAtItsFieldAndNothingTypedIsLost() {
    device.sized(Device.PHONE, false);
    begin("side-load", fields(BEGUN, "side-load"));
    send("form.start", ".*/sheet");
    String sheet = device.address();
    Map<String, String> typed = fields(TAKEN, "side-load");
    typed.put("stand.moved", "2");
    FilledForm taken = new FilledForm(device, "form.conditions");
    taken.fill(typed);
    send("form.conditions", sheet);
    assertThat(device.text("#field-stand-moved-hint")).contains("unit");
    assertThat(device.ask("return document.activeElement.id")).isEqualTo("field-stand-moved");
    assertThat(taken.kept()).containsExactlyInAnyOrderEntriesOf(typed);
    assertThat(device.accessibilityFaults()).isEmpty();
    device.ask("document.getElementById('field-stand-moved').value = '2 um'; return 1");
    send("form.conditions", sheet);
    assertThat(taken.kept()).containsEntry("stand.moved", "2 um");
    device.fill("stand.moved", "2");
    send("form.conditions", sheet);
    assertThat(device.all("[aria-invalid]")).hasSize(1);
    device.ask("location.reload(); return 1");
    device.await("the sheet", () -> device.all("[aria-invalid]").isEmpty());
    assertThat(taken.kept()).containsEntry("stand.moved", "2 um");
  }

  @Test
  void aPhotoIsShownAndWhatIsNoneIsRefused() throws Exception {
    File photo = folder.resolve("nose.png").toFile();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photo);
    begin("speed", fields(BEGUN, "speed"));
    send("form.start", ".*/sheet");
    String sheet = device.address();
    choose("photo", photo);
    send("form[action$='/photo']", ".*/sheet");
    device.await("the photo", () -> !device.all("#kept img.photo").isEmpty());
    assertThat(
            device.ask(
                "const i = document.querySelector('img.photo'); i.loading = 'eager';"
                    + " return i.decode().then(() => i.naturalWidth)"))
        .isEqualTo(40L);
    choose("photo", Path.of("pom.xml").toFile());
    send("form[action$='/photo']", ".*/photo");
    assertThat(device.text("main")).contains("JPEG");
    workbook.go("/bench");
    device.go(sheet);
    assertThat(device.all("img.photo")).hasSize(1);
  }

  private static void choose(String id, File file) {
    device.find("#" + id).sendKeys(file.getAbsolutePath());
  }

  @Test
  void aBenchIsMadeAndItsNameIsTakenOnce() {
    workbook.go("/bench");
    device.fill("name", "The bridge corner");
    send("form[action='/bench']", ".*/bench/\\d+");
    assertThat(device.text("h1")).contains("The bridge corner");
    workbook.go("/bench");
    device.fill("name", "The bridge corner");
    send("form[action='/bench']", ".*/bench");
    assertThat(device.all("#name[aria-invalid]")).hasSize(1);
    assertThat(device.find("#name").getDomProperty("value")).isEqualTo("The bridge corner");
  }

  @Test
  void aPackageIsTakenInAndWhatIsNoneIsRefused() throws Exception {
    Path bench = Files.createDirectory(folder.resolve("bench"));
    Files.writeString(bench.resolve("bench.yaml"), "bench: The binding corner\n");
    Path out = folder.resolve("given");
    assertThat(Ran.of("publish", bench.toString(), "--out", out.toString()).status()).isZero();
    workbook.go("/bench");
    choose("package", out.resolve("package.zip").toFile());
    send("form[action='/package']", ".*/bench/\\d+");
    assertThat(device.text("h1")).contains("The binding corner");
    workbook.go("/bench");
    choose("package", Path.of("pom.xml").toFile());
    send("form[action='/package']", ".*/package");
    assertThat(device.text("main")).contains("nor a ZIP archive that can be read");
    assertThat(device.accessibilityFaults()).isEmpty();
  }

  @Test
  void theStoreIsCopied() {
    workbook.go("/bench/1/publish");
    send("form[action$='/copy']", ".*/copy");
    assertThat(Path.of(device.text("main .typed"))).exists();
  }
}
