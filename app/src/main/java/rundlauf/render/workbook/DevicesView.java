package rundlauf.render.workbook;

import java.util.List;
import java.util.Optional;

/**
 * The devices of a workbook as this machine's own page shows them.
 *
 * @param wide whether others than this machine can reach it
 * @param addresses by which they do
 * @param open the code that is good now
 * @param inside the devices that were let in
 * @param fingerprint of the certificate; empty text over plain HTTP
 */
public record DevicesView(
    boolean wide,
    List<String> addresses,
    Optional<Open> open,
    List<Inside> inside,
    String fingerprint) {
  public DevicesView {
    addresses = List.copyOf(addresses);
    inside = List.copyOf(inside);
  }

  /**
   * A code that is good now.
   *
   * @param code in two groups, as it is read out
   * @param until when
   * @param address that a device opens to type it
   * @param drawing of that address with the code in it
   */
  public record Open(String code, String until, String address, QrDrawing drawing) {
    public static Open of(String code, String until, String address) {
      int half = code.length() / 2;
      return new Open(
          code.substring(0, half) + " " + code.substring(half),
          until,
          address,
          QrDrawing.of(address + "?code=" + code));
    }
  }

  /** A device that was let in. */
  public record Inside(int number, String browser, String since, String until) {
    /**
     * @param agent what its browser says it is
     */
    public static Inside of(int number, String agent, String since, String until) {
      return new Inside(number, BrowserName.of(agent), since, until);
    }
  }
}
