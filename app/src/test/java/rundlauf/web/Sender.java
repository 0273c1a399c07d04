package rundlauf.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sends what a sheet sends, without a browser. */
final class Sender {
  private static final Pattern TOKEN = Pattern.compile("rundlauf-token\" content=\"([0-9a-f]+)");

  private final HttpClient client = HttpClient.newHttpClient();
  private final String base;
  private final String cookie;
  private final String token;

  /**
   * @param base the workbook's address, without a slash at its end
   */
  Sender(String base) throws IOException, InterruptedException {
    this.base = base;
    HttpResponse<String> page =
        client.send(
            HttpRequest.newBuilder(URI.create(base + "/bench")).build(), BodyHandlers.ofString());
    Matcher found = TOKEN.matcher(page.body());
    if (!found.find()) {
      throw new IllegalStateException("no token in the page");
    }
    this.token = found.group(1);
    this.cookie = page.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  /** Sends a reading; its answer's status and text. */
  HttpResponse<String> reading(String trial, String key, String angle, String reading)
      throws IOException, InterruptedException {
    String body =
        "{\"key\": \"%s\", \"cells\": [{\"column\": \"angle_deg\", \"text\": \"%s\"},"
            + " {\"column\": \"reading_um\", \"text\": \"%s\"}]}";
    return post(trial + "/readings", String.format(body, key, angle, reading));
  }

  HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
    return client.send(
        to(path, Optional.of(token)).POST(HttpRequest.BodyPublishers.ofString(body)).build(),
        BodyHandlers.ofString());
  }

  /** A request in this session, with this token. */
  HttpRequest.Builder to(String path, Optional<String> carried) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(base + path))
            .header("Cookie", cookie)
            .header("Accept", "application/json");
    carried.ifPresent(t -> request.header(Guard.TOKEN_HEADER, t));
    return request;
  }

  HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
    return client.send(request, BodyHandlers.ofString());
  }

  String token() {
    return token;
  }
}
