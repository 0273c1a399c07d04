package rundlauf.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.BenchContents;
import rundlauf.usecase.BenchPackage;
import rundlauf.usecase.ContentsSource;
import rundlauf.usecase.ContentsTarget;

/** Benches and packages on a disk: folders, and archives of them. */
public final class DiskContents implements ContentsSource, ContentsTarget {
  /**
   * On the oldest day that an archive can hold: no archive tells when it was made. Noon and without
   * a zone: midnight itself would be written with the zone of the machine.
   */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 12, 0);

  /** Bytes of all files together. Our choice: some recordings, many photos. */
  private static final long MOST_BYTES = 400_000_000;

  @Override
  public BenchContents contents(String place) {
    Place asked = Place.of(place);
    Path path = path(place, asked);
    return BenchFiles.within(path, place, folder -> read(folder, asked));
  }

  @Override
  public BenchContents contents(byte[] zip, String name) {
    try {
      Path file = Files.createTempFile("rundlauf-", ".zip");
      try {
        Files.write(file, zip);
        return BenchFiles.within(file, name, folder -> read(folder, Place.of(name)));
      } finally {
        Files.deleteIfExists(file);
      }
    } catch (IOException | UncheckedIOException broken) {
      throw TypedFile.notRead(Place.of(name), broken);
    }
  }

  private static BenchContents read(Folder folder, Place asked) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    long bytes = 0;
    for (String path : folder.paths()) {
      if (isOfBench(path)) {
        try (InputStream in = folder.open(path, asked)) {
          byte[] content = in.readNBytes((int) (MOST_BYTES - bytes) + 1);
          bytes += content.length;
          if (bytes > MOST_BYTES) {
            throw Refused.at(asked, "package-too-large", Arg.of(MOST_BYTES));
          }
          files.put(path, content);
        }
      }
    }
    if (!files.containsKey(BenchContents.DOCUMENT)) {
      throw Refused.at(Place.of(folder.shown(BenchContents.DOCUMENT)), "bench-missing");
    }
    return BenchContents.of(files);
  }

  private static boolean isOfBench(String path) {
    return path.equals(BenchContents.DOCUMENT)
        || path.equals(BenchPackage.DESCRIPTOR)
        || path.equals(BenchPackage.FIGURES)
        || path.startsWith(BenchContents.TRIALS);
  }

  @Override
  public void requireFresh(String folder) {
    try {
      Path path = path(folder, Place.of(folder));
      OutFolder.requireFresh(path, folder, "out-is-file", "out-used");
    } catch (IOException broken) {
      throw notWritten(folder, broken);
    }
  }

  @Override
  public void write(String folder, BenchContents contents) {
    for (String path : contents.paths()) {
      write(folder, path, contents.find(path).orElseThrow());
    }
  }

  @Override
  public void write(String folder, String name, byte[] content) {
    Place asked = Place.of(folder);
    Path file = path(folder, asked).resolve(InnerPath.of(name, asked));
    try {
      OutFolder.write(file, content);
    } catch (IOException broken) {
      throw notWritten(file.toString(), broken);
    }
  }

  @Override
  public byte[] zip(BenchContents contents) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (String path : contents.paths()) {
        ZipEntry entry = new ZipEntry(path);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(contents.find(path).orElseThrow());
        zip.closeEntry();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken); // memory does not break
    }
    return out.toByteArray();
  }

  private static Path path(String typed, Place asked) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException impossible) {
      throw Refused.at(asked, "nothing-there");
    }
  }

  private static Refused notWritten(String file, IOException broken) {
    return Refused.at(
        Place.of(file), "out-not-written", Arg.typed(String.valueOf(broken.getMessage())));
  }
}
