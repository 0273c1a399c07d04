package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Reads trial files with the tables they name. */
public final class TrialFiles {
  private TrialFiles() {}

  /**
   * A trial as typed.
   *
   * @param path the trial's file
   * @param name as the user named it; every sentence names it so
   * @throws Refused for whatever cannot be read one way only
   */
  public static Trial read(Path path, String name) {
    byte[] bytes = TypedFile.bytes(path, name, "trial-is-folder");
    Path absolute = path.toAbsolutePath();
    Path parent = absolute.getParent();
    Path root = parent == null ? absolute : parent;
    return parse(bytes, name, new DiskFolder(root, folderOf(name)));
  }

  /**
   * A trial that stands in no file yet: its readings must stand in it.
   *
   * @param text the document
   * @param name what to call it in sentences
   */
  public static Trial parse(String text, String name) {
    Folder none =
        new Folder() {
          @Override
          public String shown(String path) {
            return path;
          }

          @Override
          public InputStream open(String path, Place asked) {
            throw Refused.at(asked, "file-missing", Arg.typed(path));
          }

          @Override
          public List<String> paths() {
            return List.of();
          }
        };
    return parse(text.getBytes(StandardCharsets.UTF_8), name, none);
  }

  /** A trial of a bench. */
  static Trial read(Folder bench, String path) {
    String name = bench.shown(path);
    Place asked = Place.of(name);
    int slash = path.lastIndexOf('/');
    Folder own = slash < 0 ? bench : bench.under(path.substring(0, slash));
    try (InputStream in = bench.open(path, asked)) {
      return parse(TypedFile.bytes(in, name), name, own);
    } catch (IOException | UncheckedIOException broken) {
      throw TypedFile.notRead(asked, broken);
    }
  }

  private static Trial parse(byte[] bytes, String name, Folder folder) {
    String text = Utf8.text(bytes, name);
    YamlDocument document = YamlDocument.read(text, name);
    Optional<Table> table =
        document.fields().get("readings").map(e -> table(e, document, text, folder));
    return new Trial(name, document.fields(), table);
  }

  private static Table table(Entry entry, YamlDocument document, String text, Folder folder) {
    if (!(entry instanceof Entry.Scalar typed) || typed.text().isBlank()) {
      throw Refused.at(entry.place(), "readings-missing");
    }
    ScalarStyle block = document.blocks().get(typed.place());
    if (block == ScalarStyle.LITERAL) {
      return CsvTable.read(BlockLines.of(typed, text), typed.place().file(), typed.place());
    }
    if (block != null || typed.text().indexOf('\n') >= 0) {
      throw Refused.at(typed.place(), "readings-folded");
    }
    return file(typed.text().strip(), typed.place(), folder);
  }

  private static Table file(String path, Place asked, Folder folder) {
    String shown = folder.shown(InnerPath.of(path, asked));
    try (InputStream in = folder.open(path, asked)) {
      return CsvTable.read(new ByteLines(in, shown), shown, new Place(shown, 0, 0, "readings"));
    } catch (IOException | UncheckedIOException broken) {
      throw TypedFile.notRead(asked, broken);
    }
  }

  private static String folderOf(String name) {
    int slash = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
    return slash < 0 ? "" : slash == 0 ? "/" : name.substring(0, slash);
  }
}
