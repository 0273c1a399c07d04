package rundlauf.web;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** By which addresses this machine is reached. */
final class Addresses {
  /** Who listens on every address is reached on this machine itself by this one. */
  private static final String LOOPBACK = "127.0.0.1";

  private Addresses() {}

  /** Whether an address is this machine's own, and nobody else's way to it. */
  static boolean isLoopback(String address) {
    try {
      return InetAddress.getByName(bare(address)).isLoopbackAddress();
    } catch (UnknownHostException unreadable) {
      return false;
    }
  }

  private static boolean isEveryAddress(String host) {
    try {
      return InetAddress.getByName(bare(host)).isAnyLocalAddress();
    } catch (UnknownHostException unreadable) {
      return false;
    }
  }

  private static String bare(String address) {
    return address.replaceAll("[\\[\\]]", "");
  }

  /** What a browser on this machine opens. */
  static String here(String scheme, String host, int port) {
    return scheme + "://" + (isEveryAddress(host) ? LOOPBACK : written(host)) + ":" + port + "/";
  }

  /**
   * What a browser on another device opens, the likeliest first; none where only this machine
   * listens.
   */
  static List<String> outside(String scheme, String host, int port) {
    return outside(host).stream().map(h -> scheme + "://" + h + ":" + port + "/").toList();
  }

  private static List<String> outside(String host) {
    if (isLoopback(host)) {
      return List.of();
    }
    return isEveryAddress(host) ? ofThisMachine() : List.of(written(host));
  }

  /** Every name and address by which it is reached, as a certificate has them. */
  static List<String> names(String host) {
    List<String> names = new ArrayList<>(List.of("localhost", LOOPBACK));
    outside(host).forEach(address -> names.add(bare(address)));
    return names.stream().distinct().toList();
  }

  private static List<String> ofThisMachine() {
    List<InetAddress> found = new ArrayList<>();
    try {
      for (NetworkInterface one : NetworkInterface.networkInterfaces().toList()) {
        if (one.isUp() && !one.isLoopback()) {
          one.inetAddresses().filter(a -> !a.isLinkLocalAddress()).forEach(found::add);
        }
      }
    } catch (SocketException unknown) {
      return List.of(); // the page says that none is known
    }
    return found.stream()
        .sorted(Comparator.comparing(a -> a instanceof Inet6Address))
        .map(a -> written(a.getHostAddress().replaceFirst("%.*", "")))
        .distinct()
        .toList();
  }

  /** As it stands in an address of a page. */
  private static String written(String host) {
    return host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
  }
}
