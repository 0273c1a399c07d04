package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who is let in, asked as foreign pages, foreign names and foreign devices would ask. */
class GuardTest {
  private static final String HERE = OutsideServed.HERE;
  private static final String OUTSIDE = OutsideServed.OUTSIDE;
  private static final String NEW_BENCH = "/bench";

  @TempDir static Path folder;
  private static OutsideServed workbook;

  @BeforeAll
  static void open() {
    workbook = new OutsideServed(folder);
  }

  @AfterAll
  static void close() {
    workbook.close();
    assertThat(workbook.faults()).isEmpty();
  }

  /** A page of this machine, and what a browser sends along afterwards. */
  private static Map<String, String> cookieOf(Asked page) {
    return new LinkedHashMap<>(Map.of("Cookie", page.cookie()));
  }

  private static void isRefused(Asked asked, String sentence) {
    assertThat(asked.status()).isEqualTo(403);
    assertThat(asked.text()).containsIgnoringCase(sentence).doesNotContain("luthier");
  }

  @Test
  void aForeignNameIsRefusedThoughItLeadsHere() {
    for (String name :
        new String[] {"bench.example", "127.0.0.1.example", "localhost.example:80"}) {
      isRefused(
          workbook.get(HERE, "/bench/1", Map.of("Host", name)),
          "the address in the request is not one of this workbook");
    }
    assertThat(workbook.get(HERE, "/bench/1", Map.of("Host", "localhost")).status()).isEqualTo(200);
  }

  @Test
  void aForeignPageChangesNothing() {
    Asked page = workbook.get(HERE, "/bench", Map.of());
    String body = "token=" + page.token() + "&name=Foreign";
    for (String origin : new String[] {"http://other.example", "null", "https://" + HERE}) {
      Map<String, String> says = cookieOf(page);
      says.put("Origin", origin);
      isRefused(workbook.post(HERE, NEW_BENCH, says, body), "came from another page than one of");
    }
    Map<String, String> crossed = cookieOf(page);
    crossed.put("Sec-Fetch-Site", "cross-site");
    isRefused(workbook.post(HERE, NEW_BENCH, crossed, body), "came from another page than one of");
    assertThat(workbook.get(HERE, "/bench", Map.of()).text()).doesNotContain("Foreign");
  }

  @Test
  void noChangeWithoutTheSessionsToken() {
    Asked page = workbook.get(HERE, "/bench", Map.of());
    Asked other = workbook.get(HERE, "/bench", Map.of());
    String stale = "this page was opened before";
    isRefused(workbook.post(HERE, NEW_BENCH, cookieOf(page), "name=Unmeant"), stale);
    isRefused(
        workbook.post(HERE, NEW_BENCH, cookieOf(page), "name=Unmeant&token=" + other.token()),
        stale);
    isRefused(
        workbook.post(HERE, NEW_BENCH, Map.of(), "name=Unmeant&token=" + page.token()), stale);
    assertThat(workbook.get(HERE, "/bench", Map.of()).text()).doesNotContain("Unmeant");
  }

  @Test
  void withAllOfThemAChangeIsMade() {
    Asked page = workbook.get(HERE, "/bench", Map.of());
    Map<String, String> says = cookieOf(page);
    says.put("Origin", "http://" + HERE + ":" + workbook.port());
    Asked made = workbook.post(HERE, NEW_BENCH, says, "name=Meant&token=" + page.token());
    assertThat(made.status()).isEqualTo(303);
    assertThat(workbook.get(HERE, "/bench", Map.of()).text()).contains("Meant");
  }

  @Test
  void aDeviceThatWasNotLetInSeesOnlyWhereItIsAskedForTheCode() {
    for (String path : new String[] {"/", "/bench/1", "/devices", "/method", "/bench/1/kit"}) {
      Asked asked = workbook.get(OUTSIDE, path, Map.of());
      assertThat(asked.status()).isEqualTo(303);
      assertThat(asked.header("Location")).endsWith("/let-in");
      assertThat(asked.text()).doesNotContain("luthier");
    }
    Asked document = workbook.get(OUTSIDE, "/token", Map.of("Accept", "application/json"));
    isRefused(document, "this device has not been let in");
    Asked page = workbook.get(OUTSIDE, "/let-in", Map.of());
    assertThat(page.status()).isEqualTo(200);
    String body = "token=" + page.token() + "&name=Outside";
    isRefused(
        workbook.post(OUTSIDE, NEW_BENCH, cookieOf(page), body), "this device has not been let in");
  }

  @Test
  void aCodeLetsOneDeviceInAndShuttingOutWorksAtOnce() {
    String code = workbook.code();
    assertThat(code).matches("[" + Door.LETTERS + "]{4} [" + Door.LETTERS + "]{4}");
    Asked in = workbook.typed(code);
    assertThat(in.status()).isEqualTo(303);
    Map<String, String> cookie = cookieOf(in);
    assertThat(workbook.get(OUTSIDE, "/bench/1", cookie).text()).contains("luthier");
    isRefused(
        workbook.get(OUTSIDE, "/devices", cookie), "only on the machine that serves the workbook");

    assertThat(workbook.typed(code).text()).contains("No code is good now");

    Asked devices = workbook.get(HERE, "/devices", Map.of());
    String out = devices.text().replaceAll("(?s).*action=\"(/devices/\\d+/out)\".*", "$1");
    workbook.post(HERE, out, cookieOf(devices), "token=" + devices.token());
    assertThat(workbook.get(OUTSIDE, "/bench/1", cookie).header("Location")).endsWith("/let-in");
  }

  @Test
  void anotherCookieThanOneOfOursLetsNobodyIn() {
    String mine = workbook.get(OUTSIDE, "/let-in", Map.of()).cookie();
    String in = workbook.typed(workbook.code()).cookie();
    String end = in.substring(in.lastIndexOf('.'));
    for (String forged :
        new String[] {
          mine.replace(".l.", ".p."),
          mine.replaceFirst("\\.[0-9a-f]+$", end).replace(".l.", ".p."),
          in.replaceFirst("\\.(\\d+)\\.p", ".9$1.p"),
          in.substring(0, in.length() - 1),
          "rundlauf=",
          "rundlauf=a.b.p.d"
        }) {
      assertThat(workbook.get(OUTSIDE, "/bench/1", Map.of("Cookie", forged)).status())
          .as(forged)
          .isEqualTo(303);
    }
    assertThat(workbook.get(OUTSIDE, "/bench/1", Map.of("Cookie", in)).status()).isEqualTo(200);
  }

  @Test
  void aSessionEndsAfterFourteenHours() {
    Asked in = workbook.typed(workbook.code());
    Asked here = workbook.get(HERE, "/bench", Map.of());
    workbook.later(Duration.ofHours(14).minusSeconds(1));
    assertThat(workbook.get(OUTSIDE, "/bench/1", cookieOf(in)).status()).isEqualTo(200);
    workbook.later(Duration.ofSeconds(2));
    assertThat(workbook.get(OUTSIDE, "/bench/1", cookieOf(in)).status()).isEqualTo(303);
    isRefused(
        workbook.post(HERE, NEW_BENCH, cookieOf(here), "name=Late&token=" + here.token()),
        "or more than 14 hours ago");
  }

  @Test
  void thisMachineIsWhoSpeaksFromLoopbackOrFromTheAddressSpokenTo() {
    assertThat(Guard.fromHere("127.0.0.1", "127.0.0.1")).isTrue();
    assertThat(Guard.fromHere("[0:0:0:0:0:0:0:1]", "[0:0:0:0:0:0:0:1]")).isTrue();
    assertThat(Guard.fromHere("192.168.7.5", "192.168.7.5")).isTrue();
    assertThat(Guard.fromHere("192.168.7.6", "192.168.7.5")).isFalse();
    assertThat(Guard.fromHere("fe80::1", "192.168.7.5")).isFalse();
  }
}
