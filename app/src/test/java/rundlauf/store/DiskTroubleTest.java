package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import org.jdbi.v3.core.transaction.TransactionException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** What a PostgreSQL server says of its disk; SQLite's words are tried on a disk that fails. */
class DiskTroubleTest {
  // source: PostgreSQL, Appendix A, error codes
  @ParameterizedTest
  @CsvSource({
    "53100, 'the disk of the store is full, and this is not kept'",
    "58030, 'the disk of the store failed, and this is not acknowledged as kept: the words'",
    "53300, 'the store could not be written, and this is not acknowledged as kept: the words'"
  })
  void aServersDiskIsToldFromTheRest(String state, String sentence) {
    var said = new TransactionException("commit", new SQLException("the words\nmore", state));
    var server = new PostgresServer("jdbc:postgresql://127.0.0.1/bench?password=secret");
    Refused refused = DiskTrouble.refusal(server, "store-not-written", said);
    assertThat(Sentences.refusal(refused).text()).isEqualTo(sentence);
    assertThat(refused.place().file()).isEqualTo("jdbc:postgresql://127.0.0.1/bench");
  }
}
