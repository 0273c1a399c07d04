package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Ran;
import rundlauf.docs.Schemas;

/** Packages by their commands: published, recomputed, imported, exported. */
class PackageCommandsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String DEMO = "../demo/bench";
  private static final String TABLE = "trials/heron-3mm-runout.csv";

  @TempDir private static Path once;
  @TempDir private Path folder;

  @BeforeAll
  static void publish() {
    assertThat(published(once.resolve("out")).status()).isEqualTo(4); // the demo has a held spindle
  }

  private static Ran published(Path out) {
    return Ran.of("publish", DEMO, "--out", out.toString());
  }

  private static Ran recomputed(Path place) {
    return Ran.of("recompute", place.toString());
  }

  private static TreeMap<String, String> files(Path folder) throws IOException {
    TreeMap<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        files.put(folder.relativize(file).toString(), bytes);
      }
    }
    return files;
  }

  @Test
  void whatIsWrittenKeepsToItsSchemas() throws IOException {
    Path made = once.resolve("out/package");
    JsonNode figures = JSON.readTree(made.resolve("figures.json").toFile());
    assertThat(Schemas.complaints("package-figures.json", figures)).isEmpty();
    JsonNode descriptor = JSON.readTree(made.resolve("datapackage.json").toFile());
    assertThat(Schemas.complaints("package-descriptor.json", descriptor)).isEmpty();
    Ran ran = Ran.of("recompute", "--json", made.toString());
    assertThat(Schemas.complaints("recomputed.json", JSON.readTree(ran.out()))).isEmpty();
    assertThat(JSON.readTree(ran.out()).path("figures").asInt()).isGreaterThan(700);
  }

  /** A package to spoil. */
  private Path copy() throws IOException {
    Path copy = folder.resolve("copy");
    for (String name : files(once.resolve("out/package")).keySet()) {
      Files.createDirectories(copy.resolve(name).getParent());
      Files.copy(once.resolve("out/package").resolve(name), copy.resolve(name));
    }
    return copy;
  }

  private static void replace(Path file, String from, String to) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(from);
    int at = text.indexOf(from);
    Files.writeString(file, text.substring(0, at) + to + text.substring(at + from.length()));
  }

  @Test
  void publishedAgainInAnotherTimeZoneItIsTheSameByteForByte() throws IOException {
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("America/Los_Angeles"));
      published(folder.resolve("west"));
    } finally {
      TimeZone.setDefault(before);
    }
    assertThat(files(folder.resolve("west"))).isEqualTo(files(once.resolve("out")));
  }

  @Test
  void theUsersFilesAreCopiedAsTheyAre() throws IOException {
    TreeMap<String, String> packed = files(once.resolve("out/package"));
    assertThat(packed.remove("datapackage.json")).isNotNull();
    assertThat(packed.remove("figures.json")).isNotNull();
    assertThat(packed).isEqualTo(files(Path.of(DEMO)));
  }

  @Test
  void nothingDiffersInTheFolderAndInTheArchive() {
    Ran inFolder = recomputed(once.resolve("out/package"));
    assertThat(inFolder.status()).isZero();
    assertThat(inFolder.out()).matches("Every file is as it was published, and all \\d{3,} .*\\R");
    Ran inZip = recomputed(once.resolve("out/package.zip"));
    assertThat(inZip).isEqualTo(inFolder);
  }

  @Test
  void aChangedByteOfATableIsNamed() throws IOException {
    Path copy = copy();
    replace(copy.resolve(TABLE), "\n", " \n");
    Ran ran = recomputed(copy);
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out())
        .isEqualTo(TABLE + " is not what was published: its bytes have changed.\n");
  }

  @Test
  void anEditedFigureIsNamedWithWhatItWasAndWhatItIs() throws IOException {
    Path copy = copy();
    Path file = copy.resolve("figures.json");
    JsonNode trial = JSON.createObjectNode();
    for (JsonNode one : JSON.readTree(file.toFile()).path("trials")) {
      trial = one.path("file").asText().equals("trials/heron-axial.yaml") ? one : trial;
    }
    String value = trial.path("figures").path("axialStiffness").path("value").toString();
    replace(
        file, "\"axialStiffness\":{\"value\":" + value, "\"axialStiffness\":{\"value\":12345.5");
    Ran ran = recomputed(copy);
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out())
        .contains("figures.json is not what was published")
        .contains(": axialStiffness was published as 12345.5 N/um and comes out as ");
    assertThat(ran.lines()).hasSize(2);
  }

  @Test
  void filesMoreAndFewerAreNamed() throws IOException {
    Path copy = copy();
    Files.writeString(copy.resolve("trials/notes.txt"), "more");
    Files.delete(copy.resolve("trials/wren-speed.yaml"));
    assertThat(recomputed(copy).out())
        .contains("trials/notes.txt is there and the package does not name it.")
        .contains("trials/wren-speed.yaml is named by the package and is not there.")
        .contains("trials/wren-speed.yaml was published and is no trial here.");
  }

  @Test
  void aBenchThatIsNoPackageIsRefused() {
    Ran ran = recomputed(Path.of(DEMO));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("datapackage.json").contains("the package lacks this file");
  }

  @Test
  void aFolderInUseIsRefused() {
    Ran ran = published(once.resolve("out"));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("something lies in");
  }

  // source: Frictionless Data Package v1 and Tabular Data Resource v1, JSON schemas (cases/package)
  @Test
  void theDescriptorKeepsThePublishedSchemas() throws IOException {
    JsonNode found = JSON.readTree(once.resolve("out/package/datapackage.json").toFile());
    assertThat(complaints("data-package.json", found)).isEmpty();
    int tables = 0;
    for (JsonNode resource : found.path("resources")) {
      if (resource.path("profile").asText().equals("tabular-data-resource")) {
        assertThat(complaints("tabular-data-resource.json", resource)).isEmpty();
        tables++;
      }
    }
    assertThat(tables).isEqualTo(3);
  }

  private static List<?> complaints(String schema, JsonNode document) throws IOException {
    String text = Files.readString(Path.of("../cases/package").resolve(schema));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
        .getSchema(text)
        .validate(document);
  }

  @Test
  void exportedImportedAndExportedAgainItIsTheSame() throws IOException {
    Path first = exported(Path.of(DEMO), "a");
    Path second = exported(first, "b");
    assertThat(files(second)).isEqualTo(files(first)).isNotEmpty();
    assertThat(recomputed(second).status()).isZero();
  }

  @Test
  void photosStayInTheirFolderAndStrikesUnicodeAndQuotesComeBack() throws IOException {
    Path first = exported(bench("photos: [pictures/nose.jpg]", "k2"), "a");
    Path second = exported(first, "b");
    assertThat(files(second)).isEqualTo(files(first)).containsKey("trials/pictures/nose.jpg");
    assertThat(Files.readString(second.resolve("trials/a.csv")))
        .contains("größer, \"\"als\"\" gedacht")
        .contains("yes");
  }

  @Test
  void aPhotoThatIsNotThereIsRefusedAndNothingIsKept() throws IOException {
    refused(bench("photos: [pictures/nose.jpg, none.jpg]", "k2"), "there is no file");
  }

  @Test
  void twoRowsOfOneIdAreRefusedAndNothingIsKept() throws IOException {
    refused(bench("photos: [pictures/nose.jpg]", "k1"), "two rows have the id k1");
  }

  @Test
  void whatWasNewIsSaid() throws IOException {
    Path bench = bench("photos: [pictures/nose.jpg]", "k2");
    String store = folder.resolve("a.db").toString();
    assertThat(Ran.of("import", bench.toString(), "--store", store).out())
        .isEqualTo(
            "Imported: Erfunden, für Proben. New in the store: one trial, 3 readings"
                + " (one struck out), one recording or photo.\n");
    Files.writeString(
        bench.resolve("trials/b.yaml"),
        "trial: speed\nreadings: |\n  setting_%, speed_rpm\n  20, 0\n  30, 4260\n");
    JsonNode line = line("imported.json", "import", bench.toString(), "--store", store, "--json");
    assertThat(line.path("new"))
        .isEqualTo(
            JSON.readTree(
                "{'benches':0,'trials':1,'readings':2,'struck':0,'files':0}".replace('\'', '"')));
    String out = folder.resolve("out").toString();
    line = line("exported.json", "export", out, "--store", store, "--json");
    assertThat(line.path("bench").asText()).isEqualTo("Erfunden, für Proben");
    assertThat(line.path("package")).hasSize(files(Path.of(out)).size());
  }

  private static JsonNode line(String schema, String... call) throws IOException {
    Ran ran = Ran.of(call);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.lines()).hasSize(1);
    JsonNode line = JSON.readTree(ran.out());
    assertThat(Schemas.complaints(schema, line)).isEmpty();
    return line;
  }

  @Test
  void refusalsOfImportAndExportAreDocumentsToo() throws IOException {
    String store = folder.resolve("a.db").toString();
    Path bench = bench("photos: [pictures/nose.jpg, none.jpg]", "k2");
    JsonNode line = line("refusal.json", "import", bench.toString(), "--store", store, "--json");
    assertThat(line.path("file").asText()).isEqualTo(bench.toString());
    assertThat(line.path("error").path("code").asText()).isEqualTo("file-missing");
    line = line("refusal.json", "export", bench.toString(), "--store", store, "--json");
    assertThat(line.path("error").path("code").asText()).isEqualTo("out-used");
  }

  private void refused(Path bench, String sentence) {
    String store = folder.resolve("a.db").toString();
    Ran ran = Ran.of("import", bench.toString(), "--store", store);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains(sentence);
    Ran after = Ran.of("export", folder.resolve("none").toString(), "--store", store);
    assertThat(after.err()).contains("the store holds no bench");
  }

  private Path exported(Path bench, String name) {
    String store = folder.resolve(name + ".db").toString();
    Ran ran = Ran.of("import", bench.toString(), "--store", store);
    assertThat(ran.err()).isEmpty();
    Ran again = Ran.of("import", bench.toString(), "--store", store);
    assertThat(again.status()).isZero();
    assertThat(again.out())
        .endsWith(". Nothing of it was new: the store keeps all of it already.\n");
    Path out = folder.resolve(name);
    assertThat(Ran.of("export", out.toString(), "--store", store).err()).isEmpty();
    return out;
  }

  private Path bench(String photos, String second) throws IOException {
    Path bench = folder.resolve("bench");
    Files.createDirectories(bench.resolve("trials/pictures"));
    Files.writeString(bench.resolve("bench.yaml"), "bench: Erfunden, für Proben\n");
    Files.write(bench.resolve("trials/pictures/nose.jpg"), new byte[] {1, 2, 3});
    Files.writeString(
        bench.resolve("trials/a.yaml"),
        "trial: speed # a comment\n" + photos + "\nreadings: a.csv\n");
    Files.writeString(
        bench.resolve("trials/a.csv"),
        "id; setting_%; speed_rpm; power_W; struck; reason\n"
            + "k1; 30; 4260,5; ; no;\n"
            + second
            + "; 40; 6220; 31; yes; \"größer, \"\"als\"\" gedacht\"\n"
            + "k3; 50; 8070; 35; no;\n");
    return bench;
  }
}
