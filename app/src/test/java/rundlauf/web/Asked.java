package rundlauf.web;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a request got that says of itself whatever it likes, as a foreign program may.
 *
 * @param text of the whole answer
 */
record Asked(String text) {
  private static final int PATIENCE_MS = 10_000;

  /**
   * Asks this machine.
   *
   * @param address of this machine, 127.x.y.z
   * @param says headers; {@code Host} too
   */
  static Asked of(String address, int port, String request, Map<String, String> says, String body) {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put("Host", address + ":" + port);
    headers.put("Accept", "text/html");
    headers.put("Connection", "close");
    headers.putAll(says);
    if (request.startsWith("POST")) {
      headers.putIfAbsent("Content-Type", "application/x-www-form-urlencoded");
      headers.put("Content-Length", Integer.toString(body.length()));
    }
    StringBuilder sent = new StringBuilder(request).append(" HTTP/1.1\r\n");
    headers.forEach((name, value) -> sent.append(name).append(": ").append(value).append("\r\n"));
    sent.append("\r\n").append(body);
    try (Socket socket = new Socket(address, port)) {
      socket.setSoTimeout(PATIENCE_MS);
      socket.getOutputStream().write(sent.toString().getBytes(StandardCharsets.ISO_8859_1));
      byte[] answer = socket.getInputStream().readAllBytes();
      return new Asked(new String(answer, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  int status() {
    return Integer.parseInt(text.substring(9, 12));
  }

  /** What follows a word up to another one; empty where the word is not. */
  private String between(String before, String after) {
    int at = text.indexOf(before);
    int from = at + before.length();
    return at < 0 ? "" : text.substring(from, text.indexOf(after, from));
  }

  String header(String name) {
    return between("\r\n" + name + ": ", "\r\n");
  }

  /** The cookie that it sets, as it is sent back. */
  String cookie() {
    return "rundlauf=" + between("rundlauf=", ";");
  }

  /** The token of the page. */
  String token() {
    return between("name=\"rundlauf-token\" content=\"", "\"");
  }

  /** The code that the page shows. */
  String code() {
    return between("<p class=\"code\">", "</p>");
  }
}
