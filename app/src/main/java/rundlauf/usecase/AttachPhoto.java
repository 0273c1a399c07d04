package rundlauf.usecase;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Keeps a photo with a trial, and names it in the trial's document. */
public final class AttachPhoto {
  private static final List<byte[]> STARTS =
      List.of(new byte[] {(byte) 0xff, (byte) 0xd8}, new byte[] {(byte) 0x89, 'P', 'N', 'G'});
  private static final List<String> ENDINGS = List.of(".jpg", ".png");

  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final StoredBench stored;
  private final Documents documents;

  public AttachPhoto(
      BenchStore benches, AttachmentStore attachments, StoredBench stored, Documents documents) {
    this.benches = benches;
    this.attachments = attachments;
    this.stored = stored;
    this.documents = documents;
  }

  /**
   * Keeps a photo under a name of its own.
   *
   * @param content a JPEG or PNG file
   * @throws Refused when it is neither
   */
  public Kept.Attachment attach(TrialName trial, byte[] content) {
    String name = name(trial, ending(content));
    Kept.Attachment kept = attachments.attach(trial, name, content);
    Entry.Fields document = documents.read(stored.document(trial), StoredBench.path(trial.trial()));
    benches.keepTrial(trial, documents.write(naming(document, name)));
    return kept;
  }

  private static String ending(byte[] content) {
    for (int i = 0; i < STARTS.size(); i++) {
      byte[] start = STARTS.get(i);
      if (content.length > start.length
          && Arrays.equals(content, 0, start.length, start, 0, start.length)) {
        return ENDINGS.get(i);
      }
    }
    throw Refused.at(Place.NOWHERE.field("photo"), "photo-unknown");
  }

  private String name(TrialName trial, String ending) {
    String base = trial.trial().substring(trial.trial().lastIndexOf('/') + 1).replace(".yaml", "");
    int number = attachments.attachments(trial).size() + 1;
    return String.format(Locale.ROOT, "%s-photo-%d%s", base, number, ending);
  }

  private static Entry.Fields naming(Entry.Fields document, String name) {
    List<Entry> photos = new ArrayList<>();
    if (document.get("photos").orElse(null) instanceof Entry.Items there) {
      photos.addAll(there.items());
    }
    photos.add(Entry.Scalar.of(name));
    return document.with("photos", new Entry.Items(photos, Place.NOWHERE));
  }
}
