package rundlauf.render.workbook;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code (ISO/IEC 18004) as a drawing, one unit a module, with its quiet zone.
 *
 * @param size units along a side
 * @param path of the dark modules, as an SVG path has it
 */
public record QrDrawing(int size, String path) {
  /** Light modules round it (ISO/IEC 18004, 6.3.8). */
  private static final int QUIET = 4;

  static QrDrawing of(String text) {
    ByteMatrix modules;
    try {
      modules = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException tooLong) {
      throw new IllegalArgumentException("no QR code holds " + text, tooLong);
    }
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      row(modules, y, path);
    }
    return new QrDrawing(modules.getWidth() + 2 * QUIET, path.toString());
  }

  /** Neighbours are drawn as one, so that no light shows between them. */
  private static void row(ByteMatrix modules, int y, StringBuilder path) {
    int x = 0;
    while (x < modules.getWidth()) {
      int end = x;
      while (end < modules.getWidth() && modules.get(end, y) == 1) {
        end++;
      }
      if (end > x) {
        int run = end - x;
        path.append('M').append(x + QUIET).append(' ').append(y + QUIET);
        path.append('h').append(run).append("v1h-").append(run).append('z');
      }
      x = Math.max(end, x + 1);
    }
  }
}
