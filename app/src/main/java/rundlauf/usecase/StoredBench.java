package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * The files that a bench in the store stands for: the same that an export writes, so that every
 * figure is worked out from what others can read.
 */
public final class StoredBench {
  /** Attachments under this folder are what an import was given; an export leaves them out. */
  public static final String AS_IMPORTED = "as-imported/";

  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final Documents documents;
  private final Memo<BenchContents, Bench> bare = new Memo<>(4);

  public StoredBench(BenchStore benches, AttachmentStore attachments, Documents documents) {
    this.benches = benches;
    this.attachments = attachments;
    this.documents = documents;
  }

  /**
   * Everything: the bench's document, its trials with their tables, recordings and photos.
   *
   * @param bench its name in the store
   * @throws Refused when it is not kept, or two files would have one name
   */
  public BenchContents contents(String bench) {
    Map<String, byte[]> files = new LinkedHashMap<>(documents(bench));
    for (String trial : benches.trials(bench)) {
      for (Kept.Attachment kept : attachments.attachments(new TrialName(bench, trial))) {
        if (!kept.name().startsWith(AS_IMPORTED)) {
          add(files, folder(trial) + kept.name(), attachments.content(kept.digest()));
        }
      }
    }
    return BenchContents.of(files);
  }

  /** The same without recordings and photos. */
  public BenchContents texts(String bench) {
    return BenchContents.of(documents(bench));
  }

  /** The bench's document and the files of one of its trials: all that its figures come from. */
  BenchContents alone(TrialName trial) {
    return alone(trial, document(trial), benches.readings(trial));
  }

  /** The same, as if the trial had this document and these readings. */
  BenchContents alone(TrialName trial, String document, List<Kept.Reading> readings) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(BenchContents.DOCUMENT, bytes(benchDocument(trial.bench())));
    trial(files, trial.trial(), document, readings);
    return BenchContents.of(files);
  }

  /**
   * Reads a trial as its reduction does, and reduces nothing.
   *
   * @throws Refused when it cannot be read with these readings
   */
  void read(TrialName trial, List<Kept.Reading> readings) {
    BenchContents alone = alone(trial, document(trial), readings);
    Reduction.read(documents.trial(alone, path(trial.trial())), Optional.of(bare(alone)));
  }

  /** A bench without its trials, as it stands in the store now. */
  Bench bare(String bench) {
    return bare(BenchContents.of(Map.of(BenchContents.DOCUMENT, bytes(benchDocument(bench)))));
  }

  /** A bench without its trials, as its document among these files tells it. */
  Bench bare(BenchContents texts) {
    byte[] document = texts.find(BenchContents.DOCUMENT).orElseThrow();
    BenchContents only = BenchContents.of(Map.of(BenchContents.DOCUMENT, document));
    return bare.get(only, () -> documents.bench(only));
  }

  private String benchDocument(String bench) {
    return benches
        .bench(bench)
        .orElseThrow(() -> Refused.at(Place.NOWHERE, "bench-not-there", Arg.typed(bench)))
        .document();
  }

  private Map<String, byte[]> documents(String bench) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(BenchContents.DOCUMENT, bytes(benchDocument(bench)));
    for (String trial : benches.trials(bench)) {
      var name = new TrialName(bench, trial);
      trial(files, trial, document(name), benches.readings(name));
    }
    return files;
  }

  /**
   * The newest edition of a trial's document.
   *
   * @throws Refused when the trial is not kept
   */
  String document(TrialName trial) {
    return newest(trial, benches.editions(trial));
  }

  static String newest(TrialName trial, List<Kept.Edition> editions) {
    if (editions.isEmpty()) {
      throw Refused.at(Place.NOWHERE, "trial-not-kept-there", Arg.typed(trial.trial()));
    }
    return editions.get(editions.size() - 1).document();
  }

  private void trial(
      Map<String, byte[]> files, String trial, String document, List<Kept.Reading> readings) {
    String path = path(trial);
    if (readings.isEmpty()) {
      add(files, path, bytes(document));
      return;
    }
    String table = table(trial);
    String name = table.substring(table.lastIndexOf('/') + 1);
    String line = documents.write(KeptTable.readingsField(name));
    add(files, path, bytes(ended(document) + line));
    add(files, table, bytes(KeptTable.of(readings).write(documents)));
  }

  /** The path of a trial's document among the bench's files. */
  public static String path(String trial) {
    return BenchContents.TRIALS + trial;
  }

  /** The path of a trial's table among the bench's files. */
  public static String table(String trial) {
    String path = path(trial);
    return path.substring(0, path.lastIndexOf('.')) + ".csv";
  }

  /** Where a trial's files lie, ending in {@code /}. */
  static String folder(String trial) {
    String path = path(trial);
    return path.substring(0, path.lastIndexOf('/') + 1);
  }

  private static String ended(String document) {
    return document.endsWith("\n") ? document : document + "\n";
  }

  private static void add(Map<String, byte[]> files, String path, byte[] content) {
    byte[] there = files.putIfAbsent(path, content);
    if (there != null && !java.util.Arrays.equals(there, content)) {
      throw Refused.at(Place.of(path), "stored-files-clash", Arg.typed(path));
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
