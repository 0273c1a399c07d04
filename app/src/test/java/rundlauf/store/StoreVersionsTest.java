package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rundlauf.store.Invented.TRIAL;
import static rundlauf.store.Invented.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** Stores of older and of newer versions, copies, and what is no store at all. */
@ParameterizedClass
@EnumSource(Engine.class)
class StoreVersionsTest {
  /** What a later version brings with it. */
  private static final List<String> LATER = List.of(Store.MIGRATIONS, "rundlauf/store/later");

  private final Engine engine;
  @TempDir private Path folder;

  StoreVersionsTest(Engine engine) {
    this.engine = engine;
  }

  private String begun() {
    String address = engine.fresh(folder);
    try (Store store = Store.open(address, new Ticking())) {
      Invented.begin(store.benches());
      store.benches().append(TRIAL, reading("k1", "0", "10"));
    }
    return address;
  }

  private static Store later(String address) {
    return Store.open(Database.at(address), LATER, new Ticking());
  }

  @Test
  void anOlderStoreIsCopiedAndThenMigrated() throws Exception {
    String address = begun();
    assertThat(copies(address)).isEmpty();
    try (Store store = later(address)) {
      assertThat(store.benches().readings(TRIAL)).hasSize(1);
    }
    assertThat(tables(address)).contains("shelf");
    assertThat(copies(address)).hasSize(1);
    String copy = copies(address).get(0);
    assertThat(copy).contains("v1");
    assertThat(readingsIn(copy, address)).isEqualTo(1);
    later(address).close();
    assertThat(copies(address)).hasSize(1);
  }

  @Test
  void aNewerStoreIsRefusedAndLeftAsItIs() throws Exception {
    String address = begun();
    later(address).close();
    Refused refused =
        catchThrowableOfType(Refused.class, () -> Store.open(address, new Ticking()).close());
    assertThat(Sentences.refusal(refused).text())
        .isEqualTo(
            "a newer version of this program has written the store: its tables are of version 1000");
    assertThat(copies(address)).hasSize(1);
    try (Store store = later(address)) {
      assertThat(store.benches().readings(TRIAL)).hasSize(1);
    }
  }

  @Test
  void aCopyHoldsWhatWasKeptUpToThen() throws Exception {
    String address = begun();
    try (Store store = Store.open(address, new Ticking())) {
      String copy = store.benches().backUp();
      store.benches().append(TRIAL, reading("k2", "45", "30"));
      assertThat(readingsIn(copy, address)).isEqualTo(1);
      assertThat(store.benches().backUp()).isNotEqualTo(copy);
      assertThat(copies(address)).hasSize(2);
    }
  }

  @Test
  void whatIsNoStoreIsRefused() throws Exception {
    String address = engine.fresh(folder);
    if (engine == Engine.SQLITE) {
      Files.writeString(Path.of(address), "bench: not a database, and long enough to be seen\n");
    } else {
      address = address.replaceFirst("store_\\d+", "nowhere");
    }
    String there = address;
    Refused refused =
        catchThrowableOfType(Refused.class, () -> Store.open(there, new Ticking()).close());
    assertThat(Sentences.refusal(refused).text())
        .startsWith("the store could not be opened: ")
        .containsAnyOf("not a database", "does not exist");
    assertThat(refused.place().file()).doesNotContain("user=");
  }

  private List<String> copies(String address) throws SQLException, IOException {
    if (engine == Engine.POSTGRESQL) {
      return column(
          address,
          "SELECT schema_name FROM information_schema.schemata"
              + " WHERE schema_name LIKE 'rundlauf_backup%' ORDER BY 1");
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(Path::toString).filter(file -> file.endsWith(".backup")).sorted().toList();
    }
  }

  private List<String> tables(String address) throws SQLException {
    return column(
        address,
        engine == Engine.SQLITE
            ? "SELECT name FROM sqlite_schema WHERE type = 'table'"
            : "SELECT table_name FROM information_schema.tables WHERE table_schema = 'rundlauf'");
  }

  private int readingsIn(String copy, String address) throws SQLException {
    return engine == Engine.SQLITE
        ? column(copy, "SELECT key FROM reading").size()
        : column(address, "SELECT key FROM \"" + copy + "\".reading").size();
  }

  private List<String> column(String address, String query) throws SQLException {
    List<String> answers = new ArrayList<>();
    try (Connection raw = engine.raw(address);
        var rows = raw.createStatement().executeQuery(query)) {
      while (rows.next()) {
        answers.add(rows.getString(1));
      }
    }
    return answers;
  }
}
