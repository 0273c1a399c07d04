package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import rundlauf.quantity.Place;

/** A folder with files in it, on a disk or packed. Nothing outside it can be reached. */
interface Folder {
  /** How a file of it is named to the user. */
  String shown(String path);

  /**
   * Opens a file.
   *
   * @param path within the folder, parted by {@code /}
   * @param asked where it was asked for, for the refusal
   */
  InputStream open(String path, Place asked) throws IOException;

  /** Every file in it and under it, by its path, in the order of the paths. */
  List<String> paths() throws IOException;

  /** A folder within it. */
  default Folder under(String path) {
    Folder outer = this;
    return new Folder() {
      @Override
      public String shown(String inner) {
        return outer.shown(path + "/" + inner);
      }

      @Override
      public InputStream open(String inner, Place asked) throws IOException {
        return outer.open(path + "/" + inner, asked);
      }

      @Override
      public List<String> paths() throws IOException {
        return outer.paths().stream()
            .filter(p -> p.startsWith(path + "/"))
            .map(p -> p.substring(path.length() + 1))
            .toList();
      }
    };
  }
}
