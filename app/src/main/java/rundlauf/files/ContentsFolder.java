package rundlauf.files;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.BenchContents;

/** The files of a bench that lie in memory; they are named by their paths. */
record ContentsFolder(BenchContents contents) implements Folder {
  @Override
  public String shown(String path) {
    return path;
  }

  @Override
  public InputStream open(String path, Place asked) {
    return contents
        .find(InnerPath.of(path, asked))
        .map(ByteArrayInputStream::new)
        .orElseThrow(() -> Refused.at(asked, "file-missing", Arg.typed(path)));
  }

  @Override
  public List<String> paths() {
    return contents.paths();
  }
}
