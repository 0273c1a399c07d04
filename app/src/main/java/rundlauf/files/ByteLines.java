package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Iterator;
import java.util.NoSuchElementException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** The lines of a stream, one at a time; no more than one line is held. */
final class ByteLines implements Iterator<Line> {
  private final InputStream in;
  private final String file;
  private final byte[] buffer = new byte[Bounds.LINE_BYTES];
  private final byte[] chunk = new byte[1 << 16];
  private int taken;
  private int filled;
  private long bytes;
  private int number;
  private int ahead;

  ByteLines(InputStream in, String file) throws IOException {
    this.in = in;
    this.file = file;
    this.ahead = read();
  }

  @Override
  public boolean hasNext() {
    return ahead >= 0;
  }

  @Override
  public Line next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    number++;
    try {
      int length = fill();
      return new Line(Utf8.line(ByteBuffer.wrap(buffer, 0, length), file, number), number, 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int fill() throws IOException {
    int length = 0;
    while (ahead >= 0 && ahead != '\n' && ahead != '\r') {
      if (length == buffer.length) {
        throw refused("line-too-long", Bounds.LINE_BYTES);
      }
      buffer[length++] = (byte) ahead;
      ahead = read();
    }
    boolean carriageReturn = ahead == '\r';
    ahead = ahead >= 0 ? read() : ahead;
    if (carriageReturn && ahead == '\n') {
      ahead = read();
    }
    return length;
  }

  private int read() throws IOException {
    if (taken == filled) {
      filled = in.read(chunk);
      taken = 0;
      if (filled <= 0) {
        filled = 0;
        return -1;
      }
      bytes += filled;
      if (bytes > Bounds.CSV_BYTES) {
        throw refused("file-too-large", Bounds.CSV_BYTES);
      }
    }
    return chunk[taken++] & 0xff;
  }

  private Refused refused(String code, long most) {
    return Refused.at(new Place(file, number, 0, ""), code, Arg.of(most));
  }
}
