package rundlauf.usecase;

import java.util.List;

/** Where recordings and photos of trials are kept; only added to, like the trials. */
public interface AttachmentStore {
  /** The most bytes of one recording or photo. Our choice: ten minutes of 16 bit at 48 kHz. */
  int MOST_BYTES = 64_000_000;

  /**
   * Keeps a file of a trial; the same name with the same content again gives what is kept already.
   *
   * @param trial that is kept
   * @param name the file's name in it
   * @param content at most {@link #MOST_BYTES}
   * @throws rundlauf.quantity.Refused when it is too large, or another content has that name
   */
  Kept.Attachment attach(TrialName trial, String name, byte[] content);

  /** The files of a trial, in the order in which they came. */
  List<Kept.Attachment> attachments(TrialName trial);

  /**
   * The content of a file.
   *
   * @param digest of an attachment
   * @throws rundlauf.quantity.Refused when there is none, or it is no longer what was kept
   */
  byte[] content(String digest);
}
