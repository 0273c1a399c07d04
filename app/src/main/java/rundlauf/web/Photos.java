package rundlauf.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.usecase.Kept;
import rundlauf.usecase.Shelf;

/** Photos among what is attached to a trial. */
final class Photos {
  private Photos() {}

  /** The content type of a photo, by its name; empty for what is none. */
  static Optional<String> type(String name) {
    if (name.endsWith(".jpg")) {
      return Optional.of("image/jpeg");
    }
    return name.endsWith(".png") ? Optional.of("image/png") : Optional.empty();
  }

  /** Their addresses. */
  static List<String> of(Shelf.Placed placed, List<Kept.Attachment> attachments) {
    List<String> photos = new ArrayList<>();
    for (int i = 1; i <= attachments.size(); i++) {
      if (type(attachments.get(i - 1).name()).isPresent()) {
        photos.add(TrialLinks.base(placed) + "/attachment/" + i);
      }
    }
    return photos;
  }
}
