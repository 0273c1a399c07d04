package rundlauf.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Where a user's own store lies when no other was asked for. */
public final class UserStore {
  private static final String FILE = "rundlauf.db";

  private UserStore() {}

  /**
   * The file, its folder made where it is not there.
   *
   * @throws Refused when the folder cannot be made
   */
  public static String address() {
    return folder().resolve(FILE).toString();
  }

  /**
   * The folder, made where it is not there.
   *
   * @throws Refused when it cannot be made
   */
  public static Path folder() {
    Path folder = folder(System.getenv(), System::getProperty);
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw Refused.at(Place.NOWHERE, "store-folder-not-made", Arg.typed(folder.toString()));
    }
    return folder;
  }

  /**
   * The user's folder for data, by the habit of the system: XDG Base Directory Specification 0.8
   * elsewhere than on Windows and macOS.
   */
  static Path folder(Map<String, String> environment, Function<String, String> property) {
    Path home = Path.of(property.apply("user.home"));
    String system = property.apply("os.name").toLowerCase(Locale.ROOT);
    if (system.contains("win")) {
      String data = environment.get("LOCALAPPDATA");
      return (data == null ? home : Path.of(data)).resolve("Rundlauf");
    }
    if (system.contains("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Rundlauf");
    }
    String data = environment.getOrDefault("XDG_DATA_HOME", "");
    Path base = data.startsWith("/") ? Path.of(data) : home.resolve(".local").resolve("share");
    return base.resolve("rundlauf");
  }
}
