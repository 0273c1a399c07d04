package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * All that a figure is a function of.
 *
 * @param inputs the trial and the equipment it names, in one agreed order and spelling
 * @param options of the reduction, likewise
 * @param method its name
 * @param version of the method, raised whenever its output moves
 */
public record FigureKey(String inputs, String options, long seed, String method, String version) {
  /** SHA-256 over the parts, each after its length, so that no two keys run together. */
  public String digest() {
    List<byte[]> pieces = new ArrayList<>();
    for (String part : List.of(inputs, options, Long.toString(seed), method, version)) {
      byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
      pieces.add((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
      pieces.add(bytes);
    }
    return Sha256.hex(pieces.toArray(byte[][]::new));
  }
}
