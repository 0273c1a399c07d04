package rundlauf.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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

  @Override
  public String keep(String name, String text) {
    Path page = folder.resolve(name);
    try {
      OutFolder.write(page, text.getBytes(StandardCharsets.UTF_8));
      return page.toString();
    } catch (IOException e) {
      throw Refused.at(Place.of(page.toString()), "page-not-written", Arg.of(page.toString()));
    }
  }
}
