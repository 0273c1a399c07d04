package rundlauf.usecase;

import java.util.Optional;

/**
 * Where figures are kept so as not to be worked out anew. They are derived: losing them is free.
 */
public interface FigureCache {
  /** The document kept under a key. */
  Optional<String> find(FigureKey key);

  /** Keeps a document under a key, if it can be kept; the first one kept stays. */
  void keep(FigureKey key, String document);
}
