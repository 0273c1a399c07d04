package rundlauf.devices;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Names in a certificate. */
final class Names {
  private Names() {}

  private static boolean isAddress(String name) {
    return name.contains(":") || name.matches("[\\d.]+");
  }

  /** An address in its one full form, such as {@code 0:0:0:0:0:0:0:1}; a host's name as it is. */
  static String plain(String name) {
    if (!isAddress(name)) {
      return name;
    }
    try {
      return InetAddress.getByName(name).getHostAddress();
    } catch (UnknownHostException no) {
      return name;
    }
  }

  /** As {@code keytool} is told of it. */
  static String said(String name) {
    return (isAddress(name) ? "ip:" : "dns:") + name;
  }
}
