package rundlauf.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Trials written for the tests of the command line; every number is invented. */
final class Sample {
  /** The contract's runout sample, read on round the whole turn. */
  static final String RUNOUT =
      """
      trial: runout
      title: Heron, 3 mm pin (invented)
      gauge: {diameter: 3 mm, tip: 28 mm}
      indicator: {division: 0.01 mm, limit-of-error: 8 um}
      readings: |
        station_mm, angle_deg, reading_um
        5,   0, 10
        5,  45, 30
        5,  90, 40
        5, 135, 30
        5, 180, 10
        5, 225, -10
        5, 270, -20
        5, 315, -10
        5, 360, 10
      """;

  static final String SPEED =
      """
      trial: speed
      title: Heron by its dial (invented)
      wanted: [12000 rpm]
      readings: |
        setting_%, speed_rpm
        0, 0
        10, 0
        20, 6010
        40, 12030
        40, 12010
        60, 17990
        80, 20040
        100, 20050
      """;

  private Sample() {}

  /** Writes a file and gives its name. */
  static String write(Path folder, String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
