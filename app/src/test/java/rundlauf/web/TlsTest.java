package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.MainServing;
import rundlauf.devices.BenchCertificate;
import rundlauf.store.Store;
import rundlauf.usecase.TlsIdentity;

/** Over TLS the workbook is the same, whoever trusts its certificate is sure of it. */
class TlsTest {
  private static final String HOST = "127.0.0.1";

  @TempDir Path folder;
  private final List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
  private TlsIdentity identity;
  private Store store;
  private Workbook workbook;

  @BeforeEach
  void open() {
    identity = new BenchCertificate(folder).identity(Workbook.names(HOST), Instant.now());
    store = Store.open(folder.resolve("workbook.db").toString(), InstantSource.system());
    Cases cases = new MainServing(faults::add).cases(store);
    workbook = Workbook.start(cases, HOST, 0, Optional.of(identity));
  }

  @AfterEach
  void close() {
    workbook.stop();
    store.close();
    assertThat(faults).isEmpty();
  }

  /** Trusts this certificate alone, and asks that the address is among its names. */
  private HttpClient trusting() throws Exception {
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("bench", identity.keys().getCertificate("rundlauf"));
    var managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    managers.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, managers.getTrustManagers(), null);
    return HttpClient.newBuilder().sslContext(context).build();
  }

  private HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create(workbook.address().replaceFirst("/$", "") + path));
  }

  @Test
  void aChangeIsMadeOverTlsFromOurOwnPage() throws Exception {
    assertThat(workbook.address()).startsWith("https://127.0.0.1:");
    HttpClient client = trusting();
    HttpResponse<String> page = client.send(to("/bench").build(), BodyHandlers.ofString());
    assertThat(page.statusCode()).isEqualTo(200);
    String cookie = page.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie).contains("; Secure");
    String token = page.body().replaceAll("(?s).*rundlauf-token\" content=\"([0-9a-f]+)\".*", "$1");
    for (String origin : List.of("http", "https")) {
      HttpRequest sent =
          to("/bench")
              .header("Cookie", cookie.replaceFirst(";.*", ""))
              .header("Origin", to("").build().uri().toString().replaceFirst("https", origin))
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString("name=Sealed&token=" + token))
              .build();
      int status = client.send(sent, BodyHandlers.ofString()).statusCode();
      assertThat(status).as(origin).isEqualTo(origin.equals("https") ? 303 : 403);
    }
    assertThat(client.send(to("/bench").build(), BodyHandlers.ofString()).body())
        .contains("Sealed");
  }

  @Test
  void whoeverDoesNotTrustItOrAsksInPlainWordsGetsNothing() {
    HttpClient stranger = HttpClient.newHttpClient();
    assertThatThrownBy(() -> stranger.send(to("/bench").build(), BodyHandlers.ofString()))
        .isInstanceOf(IOException.class);
    URI plain = URI.create(workbook.address().replaceFirst("https", "http") + "bench");
    assertThatThrownBy(
            () -> stranger.send(HttpRequest.newBuilder(plain).build(), BodyHandlers.ofString()))
        .isInstanceOf(IOException.class);
  }

  @Test
  void thisMachinesPageShowsTheFingerprintOnlyWhereOthersCome() throws Exception {
    HttpResponse<String> page = trusting().send(to("/devices").build(), BodyHandlers.ofString());
    assertThat(page.body()).doesNotContain(identity.fingerprint()).contains("--tls");
  }
}
