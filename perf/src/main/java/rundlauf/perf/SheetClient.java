package rundlauf.perf;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A device with a sheet open, as far as its requests go. */
final class SheetClient {
  private static final Pattern TOKEN = Pattern.compile("rundlauf-token\" content=\"([0-9a-f]+)");

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

  /** Sends a row of a runout trial until it is acknowledged. */
  void reading(int trial, String key, String station, String angle, String reading) {
    String body =
        "{\"key\": \"%s\", \"cells\": [{\"column\": \"station_mm\", \"text\": \"%s\"},"
            + " {\"column\": \"angle_deg\", \"text\": \"%s\"},"
            + " {\"column\": \"reading_um\", \"text\": \"%s\"}]}";
    String sent = String.format(body, key, station, angle, reading);
    ok(send(to(trial, "/readings").POST(HttpRequest.BodyPublishers.ofString(sent))));
  }

  /** What the sheet shows now: its figures, its plot, its steps. */
  String now(int trial) {
    return ok(send(to(trial, "/sheet/now")));
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
