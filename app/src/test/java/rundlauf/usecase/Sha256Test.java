package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class Sha256Test {
  // source: FIPS 180-4 examples (NIST, SHA256.pdf), one-block message "abc"
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @Test
  void isThatOfTheStandard() {
    assertThat(Sha256.hex(bytes("abc"))).isEqualTo(ABC);
  }

  @Test
  void piecesAreReadAsOne() {
    assertThat(Sha256.hex(bytes("a"), bytes(""), bytes("bc"))).isEqualTo(ABC);
    assertThat(Sha256.hex(bytes("a"), bytes("b"))).isNotEqualTo(ABC);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
