package rundlauf.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.Publication;

/** A folder that published pages are written to. */
public final class PublicationFolder implements Publication {
  private final Path folder;

  public PublicationFolder(Path folder) {
    this.folder = folder;
  }

  /** Writes beside the page first, so that an older page stays whole until the new one is. */
  @Override
  public String keep(String name, String text) {
    Path page = folder.resolve(name);
    try {
      Files.createDirectories(folder);
      Path fresh = folder.resolve(name + ".part");
      Files.write(fresh, text.getBytes(StandardCharsets.UTF_8));
      Files.move(fresh, page, StandardCopyOption.REPLACE_EXISTING);
      return page.toString();
    } catch (IOException e) {
      throw Refused.at(
          new Place(page.toString(), 0, 0, ""), "page-not-written", Arg.of(page.toString()));
    }
  }
}
