package rundlauf.files;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** A packed folder. Nothing is unpacked to disk; what is read is counted. */
final class ZipFolder implements Folder, AutoCloseable {
  private static final int CHUNK = 1 << 16;

  private final ZipFile zip;
  private final String name;
  private final List<String> paths;
  private long unpacked;

  private ZipFolder(ZipFile zip, String name, List<String> paths) {
    this.zip = zip;
    this.name = name;
    this.paths = paths;
  }

  /** Opens an archive whose every entry stays within it and stands in it once. */
  static ZipFolder open(Path file, String name) throws IOException {
    ZipFile zip = new ZipFile(file.toFile());
    try {
      return new ZipFolder(zip, name, paths(zip, name));
    } catch (Refused wrong) {
      zip.close();
      throw wrong;
    }
  }

  private static List<String> paths(ZipFile zip, String name) {
    Place place = Place.of(name);
    if (zip.size() > Bounds.FILES) {
      throw Refused.at(place, "files-many", Arg.of(Bounds.FILES));
    }
    List<String> paths = new ArrayList<>();
    Enumeration<? extends ZipEntry> entries = zip.entries();
    while (entries.hasMoreElements()) {
      ZipEntry entry = entries.nextElement();
      String path = entry.getName();
      InnerPath.of(path.endsWith("/") ? path.substring(0, path.length() - 1) : path, place);
      if (!entry.isDirectory()) {
        paths.add(path);
      }
    }
    paths.sort(null);
    for (int i = 1; i < paths.size(); i++) {
      if (paths.get(i).equals(paths.get(i - 1))) {
        throw Refused.at(place, "archive-entry-twice", Arg.typed(paths.get(i)));
      }
    }
    return List.copyOf(paths);
  }

  @Override
  public String shown(String path) {
    return name + "/" + path;
  }

  @Override
  public List<String> paths() {
    return paths;
  }

  @Override
  public InputStream open(String path, Place asked) throws IOException {
    ZipEntry entry = zip.getEntry(InnerPath.of(path, asked));
    if (entry == null || entry.isDirectory()) {
      throw Refused.at(asked, "file-missing", Arg.typed(path));
    }
    return new Counted(zip.getInputStream(entry), Math.max(1, entry.getCompressedSize()), asked);
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }

  /** Counts what comes out, against what went in. */
  private final class Counted extends FilterInputStream {
    private final long packed;
    private final Place asked;
    private long own;

    Counted(InputStream in, long packed, Place asked) {
      super(in);
      this.packed = packed;
      this.asked = asked;
    }

    @Override
    public int read() throws IOException {
      int one = super.read();
      count(one < 0 ? 0 : 1);
      return one;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
      int read = super.read(bytes, from, Math.min(length, CHUNK));
      count(Math.max(0, read));
      return read;
    }

    private void count(int read) {
      own += read;
      unpacked += read;
      boolean bomb = own > CHUNK && own / packed > Bounds.PACKING_RATIO;
      if (bomb || unpacked > Bounds.UNPACKED_BYTES) {
        throw Refused.at(asked, "archive-too-large", Arg.of(Bounds.UNPACKED_BYTES));
      }
    }
  }
}
