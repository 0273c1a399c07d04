package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Ran;
import rundlauf.docs.Schemas;
import rundlauf.web.WorkbookServed;

/** A copy of the whole store, by its command. */
class BackupCommandTest {
  private static final String DEMO = "../demo/bench";

  @TempDir private Path folder;

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  private Ran backUp(String out, String... more) {
    return Ran.of(
        Stream.concat(
                Stream.of("backup", "--store", at("workbook.db"), "--out", at(out)),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private void imported() {
    assertThat(Ran.of("import", DEMO, "--store", at("workbook.db")).status()).isZero();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void holdsEverythingAndSaysWhereItLies() throws IOException {
    imported();
    Ran ran = backUp("copy.db");
    long kilobytes = (Files.size(Path.of(at("copy.db"))) + 999) / 1000;
    assertThat(ran)
        .isEqualTo(
            new Ran(
                0,
                "Copied the store into %s: %d kB, with everything that was kept up to then.\n"
                        .formatted(at("copy.db"), kilobytes)
                    + "To serve from the copy: rundlauf serve --store %s\n"
                        .formatted(at("copy.db")),
                ""));
    assertThat(names()).containsExactly("copy.db", "workbook.db");
    // what is taken into the copy again is there already
    Ran again = Ran.of("import", DEMO, "--store", at("copy.db"));
    assertThat(again.out()).contains("Nothing of it was new");
  }

  @Test
  void worksWhileAServerHasTheStoreOpenIntoAFolderToo() throws Exception {
    Files.createDirectory(folder.resolve("stick"));
    try (WorkbookServed served = WorkbookServed.demo(folder)) {
      JsonNode line = new ObjectMapper().readTree(backUp("stick", "--json").out());
      assertThat(Schemas.complaints("copied.json", line)).isEmpty();
      assertThat(line.path("store").asText()).isEqualTo(served.store());
      assertThat(line.path("copy").asText())
          .matches("\\Q" + at("stick") + "\\E/rundlauf\\.\\d{8}T\\d{9}\\.db");
      assertThat(line.path("bytes").asLong())
          .isEqualTo(Files.size(Path.of(line.path("copy").asText())));
      assertThat(served.faults()).isEmpty();
    }
  }

  @Test
  void aFileIsNeverOverwritten() throws IOException {
    imported();
    Files.writeString(folder.resolve("copy.db"), "mine");
    Ran ran = backUp("copy.db");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .isEqualTo(
            at("copy.db")
                + ": a file of that name is there — name another one: nothing is ever overwritten\n");
    assertThat(folder.resolve("copy.db")).hasContent("mine");
    assertThat(backUp("workbook.db").status()).isEqualTo(3);
    JsonNode line = refusal(backUp("copy.db", "--json"));
    assertThat(line.path("error").path("code").asText()).isEqualTo("copy-there");
  }

  private static JsonNode refusal(Ran ran) throws IOException {
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.lines()).hasSize(1);
    JsonNode line = new ObjectMapper().readTree(ran.out());
    assertThat(Schemas.complaints("refusal.json", line)).isEmpty();
    return line;
  }

  @Test
  void whatIsNoStoreIsRefusedAndNothingIsMade() throws IOException {
    assertThat(backUp("copy.db").err()).contains("there is no store of this program");
    assertThat(names()).isEmpty();
    Files.writeString(folder.resolve("workbook.db"), "");
    assertThat(backUp("copy.db").err()).contains("there is no store of this program");
    Files.writeString(folder.resolve("workbook.db"), "bench: long enough to be seen as no store\n");
    assertThat(backUp("copy.db").err()).contains("the store could not be opened");
    assertThat(names()).doesNotContain("copy.db");
  }

  @Test
  void aFolderThatIsNotThereIsNotMade() throws IOException {
    imported();
    Ran ran = backUp("stick/copy.db");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("there is no such folder — look whether the disk");
    assertThat(names()).containsExactly("workbook.db");
  }

  @Test
  void aStoreOnAServerIsLeftToTheServersOwnTool() {
    String store = "jdbc:postgresql://127.0.0.1:1/bench?user=me&password=secret";
    Ran ran = Ran.of("backup", "--store", store, "--out", "copy.sql");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .startsWith("jdbc:postgresql://127.0.0.1:1/bench: a store on a PostgreSQL server is not")
        .contains("pg_dump --schema=rundlauf --file=copy.sql DATABASE")
        .doesNotContain("secret");
  }
}
