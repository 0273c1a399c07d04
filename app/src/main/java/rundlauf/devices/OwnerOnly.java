package rundlauf.devices;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/** Keeps a file from everybody but its owner. */
final class OwnerOnly {
  private OwnerOnly() {}

  /** Where the system has no such rights, the user's own folder keeps it. */
  static void of(Path file) throws IOException {
    if (Files.getFileAttributeView(file, PosixFileAttributeView.class) != null) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    }
  }
}
