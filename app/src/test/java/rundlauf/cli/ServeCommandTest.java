package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Ran;

/** What {@code serve} says when it cannot. */
class ServeCommandTest {
  @TempDir private Path folder;

  private String store() {
    return folder.resolve("workbook.db").toString();
  }

  @Test
  void aPortThatIsTakenIsNamed() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      String port = Integer.toString(taken.getLocalPort());
      Ran ran = Ran.of("serve", "--store", store(), "--port", port);
      assertThat(ran.err())
          .isEqualTo(
              "something else listens on 127.0.0.1:"
                  + port
                  + ", or that address is not one of this machine — stop the other one, or name"
                  + " another --port (0 takes any that is free)\n");
      assertThat(ran.status()).isEqualTo(3);
      assertThat(ran.out()).isEmpty();
    }
  }

  @Test
  void anAddressOfAnotherMachineIsRefused() {
    Ran ran = Ran.of("serve", "--store", store(), "--host", "192.0.2.77", "--port", "0");
    assertThat(ran.err()).startsWith("something else listens on 192.0.2.77:0, or that address is");
    assertThat(ran.status()).isEqualTo(3);
  }

  @Test
  void aPortThatIsNoneIsACallThatIsWrong() {
    Ran ran = Ran.of("serve", "--port", "70000");
    assertThat(ran.err())
        .isEqualTo(
            "the port 70000 is not one from 0 to 65535 — leave --port out, or name one of these\n");
    assertThat(ran.status()).isEqualTo(2);
  }

  @Test
  void whatIsNoStoreIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.txt"), "mine, and no store at all");
    Ran ran = Ran.of("serve", "--store", file.toString(), "--port", "0");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).startsWith(file + ": ").contains(" — ").doesNotContain("Exception");
    assertThat(file).hasContent("mine, and no store at all");
  }

  @Test
  void aDatabaseThatIsNotReachedIsRefused() {
    Ran ran = Ran.of("serve", "--store", "jdbc:postgresql://127.0.0.1:1/none", "--port", "0");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).startsWith("jdbc:postgresql://127.0.0.1:1/none: ").contains(" — ");
  }
}
