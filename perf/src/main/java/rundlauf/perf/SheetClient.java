package rundlauf.perf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A device with a sheet open, as far as its requests go. */
final class SheetClient {
  private static final Pattern TOKEN = Pattern.compile("rundlauf-token\" content=\"([0-9a-f]+)");

  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient client = HttpClient.newHttpClient();
  private final String base;
  private final String cookie;
  private final String token;

  /**
   * @param base the workbook's address, without a slash at its end
   */
  SheetClient(String base) {
    this.base = base;
    HttpResponse<String> page = send(HttpRequest.newBuilder(URI.create(base + "/bench")));
    Matcher found = TOKEN.matcher(page.body());
    if (!found.find()) {
      throw new IllegalStateException("no token in the page");
    }
    this.token = found.group(1);
    this.cookie = page.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  /** Sends a row, its cells by column, until it is acknowledged. */
  void reading(int trial, String key, Map<String, String> cells) {
    ObjectNode sent = JSON.createObjectNode().put("key", key);
    ArrayNode row = sent.putArray("cells");
    cells.forEach((column, text) -> row.addObject().put("column", column).put("text", text));
    ok(send(to(trial, "/readings").POST(BodyPublishers.ofString(sent.toString()))));
  }

  /** What the sheet shows now: its figures, its plot, its steps. */
  JsonNode now(int trial) {
    try {
      return JSON.readTree(ok(send(to(trial, "/sheet/now"))));
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private HttpRequest.Builder to(int trial, String end) {
    return HttpRequest.newBuilder(URI.create(base + "/bench/1/trial/" + trial + end))
        .header("Cookie", cookie)
        .header("Accept", "application/json")
        .header("Rundlauf-Token", token);
  }

  private static String ok(HttpResponse<String> answer) {
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(answer.statusCode() + ": " + answer.body());
    }
    return answer.body();
  }

  private HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), BodyHandlers.ofString());
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }
}
