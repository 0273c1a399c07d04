package rundlauf.files;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Bytes to text, strictly. */
final class Utf8 {
  private static final String MARK = "\ufeff";

  private Utf8() {}

  /** The text of a whole file, a byte order mark at its head passed over. */
  static String text(byte[] bytes, String file) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      throw Refused.at(new Place(file, lineAt(bytes, in.position()), 0, ""), "text-not-utf8");
    }
    String text = withoutMark(out.flip().toString());
    refuseControls(text, file, 1);
    return text;
  }

  /** The text of one line of a file. */
  static String line(ByteBuffer bytes, String file, int number) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
      String bare = number == 1 ? withoutMark(text) : text;
      refuseControls(bare, file, number);
      return bare;
    } catch (CharacterCodingException wrong) {
      throw Refused.at(new Place(file, number, 0, ""), "text-not-utf8");
    }
  }

  private static String withoutMark(String text) {
    return text.startsWith(MARK) ? text.substring(1) : text;
  }

  private static int lineAt(byte[] bytes, int position) {
    int line = 1;
    for (int i = 0; i < position; i++) {
      boolean ends = bytes[i] == '\n' || (bytes[i] == '\r' && bytes[i + 1] != '\n');
      line += ends ? 1 : 0;
    }
    return line;
  }

  /** Refuses what no text has: a NUL tells a binary file, an escape could steer a terminal. */
  private static void refuseControls(String text, String file, int firstLine) {
    int line = firstLine;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isControl(c)) {
        String code = c == 0 ? "file-binary" : "control-character";
        throw Refused.at(
            new Place(file, line, 0, ""),
            code,
            Arg.of(String.format(Locale.ROOT, "U+%04X", (int) c)));
      }
      boolean ends =
          c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
      line += ends ? 1 : 0;
    }
  }

  private static boolean isControl(char c) {
    boolean blank = c == '\t' || c == '\n' || c == '\r';
    return (c < 0x20 && !blank) || (c >= 0x7f && c <= 0x9f) || c >= 0xfffe;
  }
}
