package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import rundlauf.render.workbook.KitForm;
import rundlauf.usecase.KitExamples;

/** The forms of a bench's equipment, by keyboard, in a real browser. */
class KitInBrowserTest {
  @TempDir static Path folder;

  /** Screenshots of every page, to be looked at. */
  private static final Path LOOK = Path.of("target", "look");

  private static final String KIT = "/bench/1/kit";
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

  @Test
  void everyFormIsFilledByKeyboardKeptAndReadBack() {
    device.sized(Device.PHONE, false);
    FilledForm form = new FilledForm(device, "form");
    for (KitExamples.Example example : KitExamples.all()) {
      workbook.go(KIT + "/" + example.section() + "/new");
      form.fill(example.typed());
      device.type(Keys.ENTER);
      device.await(example.toString(), () -> device.address().endsWith(KIT));
      device.all(".kit li > a").stream()
          .filter(a -> a.getText().equals(example.name()))
          .findFirst()
          .orElseThrow()
          .click();
      device.await("its form", () -> device.address().contains("/" + example.section() + "/"));
      assertThat(form.kept())
          .as(example.toString())
          .containsExactlyInAnyOrderEntriesOf(example.typed());
    }
  }

  @Test
  void aRefusalStandsAtItsFieldAndNothingTypedIsLost() {
    device.sized(Device.PHONE, false);
    workbook.go(KIT + "/spindles/1");
    device.ask("document.getElementById('field-efficiency').value = '0.7'; return 1");
    device.ask("document.getElementById('field-input').value = '800'; return 1");
    device.press("form button.first");
    device.await("the refusal", () -> !device.all("[aria-invalid]").isEmpty());
    WebElement field = device.find("[aria-invalid=true]");
    assertThat(device.all("[aria-invalid]")).hasSize(1);
    assertThat(field.getDomAttribute("id")).isEqualTo("field-input");
    device.await("the focus", () -> device.find(":focus").equals(field));
    assertThat(device.text("#" + field.getDomAttribute("aria-describedby"))).contains("unit");
    assertThat(FilledForm.value(field)).isEqualTo("800");
    assertThat(FilledForm.value(device.find("#field-efficiency"))).isEqualTo("0.7");
    assertThat(device.accessibilityFaults()).isEmpty();
    device.shot(LOOK.resolve("kit-refused.png"));
  }

  @Test
  void whatLacksBesideAnotherFieldIsAskedForWhereItIsTyped() {
    device.sized(Device.PHONE, false);
    workbook.go(KIT + "/spindles/new");
    device.ask("document.getElementById('field-name').value = 'Owl'; return 1");
    device.ask("document.getElementById('field-label-speed-min').value = '6000 rpm'; return 1");
    device.press("form button.first");
    device.await("the refusal", () -> !device.all("[aria-invalid]").isEmpty());
    assertThat(device.find("[aria-invalid]").getDomAttribute("id"))
        .isEqualTo("field-label-speed-max");
  }

  @Test
  void whoeverWasSlowerSeesBothAndKeepsItAgain() {
    device.sized(Device.PHONE, false);
    workbook.go(KIT + "/spindles/2");
    device.ask(
        "const f = document.querySelector('form'); const all = new FormData(f);"
            + "all.set('notes', 'Said by another.');"
            + "return fetch(f.action, {method: 'POST', body: new URLSearchParams(all)})"
            + ".then(r => r.status)");
    device.ask("document.getElementById('field-input').value = '310 W'; return 1");
    device.press("form button.first");
    device.await("the sentence", () -> !device.all("[role=alert]").isEmpty());
    assertThat(device.text("[role=alert]")).contains("Somebody has changed this bench");
    assertThat(FilledForm.value(device.find("#field-input"))).isEqualTo("310 W");
    assertThat(device.text("#field-notes-hint")).contains("Said by another.");
    assertThat(device.text("#field-input-hint")).contains("300 W");
    device.shot(LOOK.resolve("kit-newer.png"));
    device.press("form button.first");
    device.await("the list", () -> device.address().endsWith(KIT));
    workbook.go(KIT + "/spindles/2");
    assertThat(FilledForm.value(device.find("#field-input"))).isEqualTo("310 W");
  }

  @Test
  void whatIsNamedStaysAndWhoNamesItIsSaid() {
    device.sized(Device.PHONE, false);
    workbook.go(KIT + "/spindles/1");
    device.press("form[action$='/remove'] button");
    device.await("who names it", () -> !device.all("b.refusal").isEmpty());
    assertThat(device.text("b.refusal")).contains("is named by");
  }

  @Test
  void aCopyWantsANameOfItsOwnAndCanBeUndone() {
    device.sized(Device.PHONE, false);
    workbook.go(KIT + "/rigs/1");
    device.press("button[name=copy]");
    device.await("the refusal", () -> !device.all("[aria-invalid]").isEmpty());
    assertThat(device.find("[aria-invalid]").getDomAttribute("id")).isEqualTo("field-name");
    device.ask("document.getElementById('field-name').value = 'pear lever'; return 1");
    device.press("button[name=copy]");
    device.await("the list", () -> device.address().endsWith(KIT));
    assertThat(device.text(".kit")).contains("brass lever", "pear lever");
    WebElement before = device.all("main details").get(1);
    before.findElement(By.cssSelector("summary")).click();
    before.findElement(By.cssSelector("button")).click();
    device.await("the edition before", () -> device.address().contains("#edition-"));
    assertThat(device.text(".kit")).contains("brass lever").doesNotContain("pear lever");
  }

  @Test
  void everyPageIsCleanByDayAndNightAndFits() {
    for (String path : paths()) {
      String name = "kit" + path.replace('/', '-');
      for (int width : List.of(Device.PHONE, Device.DESK)) {
        for (boolean dark : List.of(false, true)) {
          device.sized(width, dark);
          workbook.go(KIT + path);
          assertThat(device.accessibilityFaults()).as(path + " " + width).isEmpty();
          assertThat(device.fits()).as(path + " " + width).isTrue();
          device.shot(LOOK.resolve(name + "-" + width + (dark ? "-dark" : "") + ".png"));
        }
      }
      device.sized(Device.ZOOMED, false);
      workbook.go(KIT + path);
      assertThat(device.fits()).as(path + " at 400 %").isTrue();
    }
  }

  private static List<String> paths() {
    List<String> paths = new ArrayList<>(List.of("", "/spindles/1"));
    KitForm.names().forEach(section -> paths.add("/" + section + "/new"));
    return paths;
  }
}
