package rundlauf.devices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.usecase.TlsIdentity;

/** A certificate is made once, kept, and made anew when it no longer serves. */
class BenchCertificateTest {
  private static final List<String> HERE = List.of("localhost", "127.0.0.1");
  private static final List<String> WIDE =
      List.of("localhost", "127.0.0.1", "192.0.2.7", "fd00::7");

  @TempDir Path folder;
  private final Instant now = Instant.now(); // keytool asks the machine's clock too

  private TlsIdentity made(List<String> names, Instant when) {
    return new BenchCertificate(folder).identity(names, when);
  }

  private Path file() {
    return folder.resolve("rundlauf-tls.p12");
  }

  @Test
  void isKeptAndShownByItsFingerprint() throws Exception {
    TlsIdentity first = made(HERE, now);
    assertThat(first.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
    assertThat(made(HERE, now).fingerprint()).isEqualTo(first.fingerprint());
    var certificate = (X509Certificate) first.keys().getCertificate("rundlauf");
    certificate.verify(certificate.getPublicKey());
    Duration lasts = Duration.between(now, certificate.getNotAfter().toInstant());
    assertThat(lasts.toDays()).isBetween(395L, 398L);
    assertThat(Files.getPosixFilePermissions(file()))
        .isEqualTo(PosixFilePermissions.fromString("rw-------"));
  }

  @Test
  void namesEveryAddressAndIsMadeAnewForAnother() throws Exception {
    String narrow = made(HERE, now).fingerprint();
    TlsIdentity wide = made(WIDE, now);
    assertThat(wide.fingerprint()).isNotEqualTo(narrow);
    var certificate = (X509Certificate) wide.keys().getCertificate("rundlauf");
    assertThat(certificate.getSubjectAlternativeNames())
        .extracting(one -> one.get(1).toString())
        .containsExactly("localhost", "127.0.0.1", "192.0.2.7", "fd00:0:0:0:0:0:0:7");
    assertThat(made(WIDE, now).fingerprint()).isEqualTo(wide.fingerprint());
    assertThat(made(HERE, now).fingerprint()).isEqualTo(wide.fingerprint());
  }

  @Test
  void isMadeAnewAWeekBeforeItEnds() {
    String first = made(HERE, now).fingerprint();
    assertThat(made(HERE, now.plus(Duration.ofDays(389))).fingerprint()).isEqualTo(first);
    assertThat(made(HERE, now.plus(Duration.ofDays(391))).fingerprint()).isNotEqualTo(first);
  }

  @Test
  void whatIsNoCertificateIsRefusedAndLeft() throws IOException {
    Files.writeString(file(), "mine");
    Refused refused = catchThrowableOfType(Refused.class, () -> made(HERE, now));
    assertThat(refused.place().file()).isEqualTo(file().toString());
    assertThat(Sentences.refusal(refused).said())
        .isEqualTo(
            "The certificate that was made for this machine cannot be read. Take the file away,"
                + " and a new one is made; every device must then accept the new one.");
    assertThat(file()).hasContent("mine");
  }

  @Test
  void withoutTheToolNoneIsMade() {
    var none = new BenchCertificate(folder, folder.resolve("keytool"));
    Refused refused = catchThrowableOfType(Refused.class, () -> none.identity(HERE, now));
    assertThat(Sentences.refusal(refused).said())
        .startsWith("No certificate could be made for this machine: ")
        .endsWith("or serve without --tls.");
    assertThat(folder).isEmptyDirectory();
  }
}
