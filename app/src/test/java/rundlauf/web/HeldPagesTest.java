package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.store.Store;
import rundlauf.usecase.TrialName;

/** Every page about a spindle that is on hold says so before anything else of it. */
class HeldPagesTest {
  private static final String HELD = "Shrike must not be powered: its last inspection holds it.";

  /** Of a kind that is not reduced yet, and may lie on a bench already. */
  private static final String SHRIKES_SOUND = "/bench/1/trial/29";

  /** In the demo bench. */
  private static final String SHRIKES_RUNOUT = "/bench/1/trial/19";

  @TempDir static Path folder;
  private static WorkbookServed workbook;

  @BeforeAll
  static void open() {
    workbook = WorkbookServed.demo(folder);
    try (Store store = Store.open(workbook.store(), InstantSource.system())) {
      var sound = new TrialName(store.benches().benches().get(0), "shrike-sound.yaml");
      store.benches().keepTrial(sound, "trial: sound\nsetup: Shrike sleeve\ntitle: Heard\n");
    }
  }

  @AfterAll
  static void close() {
    workbook.close();
    assertThat(workbook.faults()).isEmpty();
  }

  private static String body(String path) throws Exception {
    Sender sender = new Sender(workbook.at(""));
    return sender.send(sender.to(path, java.util.Optional.empty()).build()).body();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        SHRIKES_RUNOUT,
        SHRIKES_SOUND,
        SHRIKES_RUNOUT + "/sheet",
        SHRIKES_RUNOUT + "/sheet/now",
        SHRIKES_RUNOUT + "/figures.json",
        SHRIKES_RUNOUT + "/figure?path=stations%5B0%5D.tir",
        "/bench/1/trial/new/speed?setup=Shrike+sleeve",
        "/bench/1/kit",
        "/bench/1/kit/spindles/4",
        "/bench/1/kit/setups/8"
      })
  void saysThatTheSpindleIsHeld(String page) throws Exception {
    assertThat(body(page)).contains(HELD);
  }

  @Test
  void aTrialThatIsNotReducedYetSaysSo() throws Exception {
    assertThat(body(SHRIKES_RUNOUT)).contains(SHRIKES_RUNOUT + "/sheet\"");
    assertThat(body(SHRIKES_SOUND))
        .doesNotContain(SHRIKES_SOUND + "/sheet\"")
        .contains("Not reduced: Heard")
        .contains("this version does not reduce them");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/bench/1/trial/1",
        "/bench/1/trial/1/sheet",
        "/bench/1/trial/new/speed?setup=Wren+3+mm",
        "/bench/1/kit/spindles/1"
      })
  void saysNothingOfAnother(String page) throws Exception {
    assertThat(body(page)).doesNotContain(HELD).doesNotContain("must not be powered");
  }
}
