package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Takes the files of a bench into the store: documents as they were typed, each row of a table as a
 * reading under its {@code id} (else by its position), what its trials name as recordings and
 * photos as attachments. Everything is looked at before anything is kept.
 */
public final class KeepContents {
  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final Documents documents;
  private final StoredBench stored;

  public KeepContents(BenchStore benches, AttachmentStore attachments, Documents documents) {
    this.benches = benches;
    this.attachments = attachments;
    this.documents = documents;
    this.stored = new StoredBench(benches, attachments, documents);
  }

  /**
   * What was taken in.
   *
   * @param bench its name
   * @param fresh what the store had not kept before
   */
  public record Imported(String bench, BenchTally fresh) {}

  /**
   * Keeps a bench and all its trials; what is kept already in the same words is not kept twice.
   *
   * @throws Refused when a file cannot be read or is named by no trial, or when a bench, trial or
   *     reading of that name is kept otherwise; then nothing of it is kept
   */
  public Imported keep(BenchContents contents) {
    Bench bench = documents.bench(contents);
    String document = text(contents, BenchContents.DOCUMENT);
    List<ImportedTrial> trials =
        bench.trials().stream().map(t -> ImportedTrial.of(bench.name(), t, documents)).toList();
    requireNamed(contents, bench.trials(), trials);
    trials.forEach(trial -> requireWhole(contents, trial));
    look(bench.name(), document, trials);
    BenchTally before = BenchTally.of(bench.name(), benches, attachments);
    benches.keepBench(bench.name(), document);
    trials.forEach(trial -> keep(contents, trial));
    BenchTally after = BenchTally.of(bench.name(), benches, attachments);
    return new Imported(bench.name(), after.minus(before));
  }

  private static void requireNamed(
      BenchContents contents, List<Trial> files, List<ImportedTrial> trials) {
    Set<String> left = new LinkedHashSet<>(contents.paths());
    left.removeIf(path -> !path.startsWith(BenchContents.TRIALS));
    for (int i = 0; i < trials.size(); i++) {
      left.remove(files.get(i).file());
      files.get(i).readings().ifPresent(table -> left.remove(table.place().file()));
      trials.get(i).files().forEach(left::remove);
    }
    for (String path : left) {
      throw Refused.at(Place.of(path), "import-file-unnamed", Arg.typed(path));
    }
  }

  /** Refuses a trial that names a file that is not there, or gives two rows one id. */
  private static void requireWhole(BenchContents contents, ImportedTrial trial) {
    for (String path : trial.files()) {
      if (contents.find(path).isEmpty()) {
        Place place = Place.of(StoredBench.path(trial.name().trial()));
        throw Refused.at(place, "file-missing", Arg.typed(path));
      }
    }
    Set<String> keys = new LinkedHashSet<>();
    for (ImportedTrial.Row row : trial.rows()) {
      if (!keys.add(row.reading().key())) {
        Place place =
            new Place(trial.table().orElse(StoredBench.path(trial.name().trial())), 0, 0, "id");
        throw Refused.at(place, "import-reading-twice", Arg.typed(row.reading().key()));
      }
    }
  }

  /** Refuses what is kept already and otherwise. */
  private void look(String bench, String document, List<ImportedTrial> trials) {
    if (benches.bench(bench).filter(e -> !e.document().equals(document)).isPresent()) {
      throw differs(BenchContents.DOCUMENT);
    }
    boolean there = benches.bench(bench).isPresent();
    for (ImportedTrial trial : trials) {
      List<Kept.Edition> editions = there ? benches.editions(trial.name()) : List.of();
      if (!editions.isEmpty()) {
        if (!stored.document(trial.name()).equals(trial.document())) {
          throw differs(StoredBench.path(trial.name().trial()));
        }
        look(trial, benches.readings(trial.name()));
      }
    }
  }

  private static void look(ImportedTrial trial, List<Kept.Reading> kept) {
    for (ImportedTrial.Row row : trial.rows()) {
      for (Kept.Reading reading : kept) {
        boolean same = reading.typed().key().equals(row.reading().key());
        Optional<String> reason = reading.struck().map(Kept.Strike::reason);
        if (same && !(reading.typed().equals(row.reading()) && reason.equals(row.struck()))) {
          Place place = new Place(StoredBench.table(trial.name().trial()), 0, 0, "id");
          throw Refused.at(place, "import-reading-differs", Arg.typed(row.reading().key()));
        }
      }
    }
  }

  private static Refused differs(String path) {
    return Refused.at(Place.of(path), "import-differs", Arg.typed(path));
  }

  private void keep(BenchContents contents, ImportedTrial trial) {
    benches.keepTrial(trial.name(), trial.document());
    for (ImportedTrial.Row row : trial.rows()) {
      benches.append(trial.name(), row.reading());
      row.struck().ifPresent(why -> benches.strike(trial.name(), row.reading().key(), why));
    }
    for (String path : trial.files()) {
      String name = path.substring(StoredBench.folder(trial.name().trial()).length());
      attachments.attach(trial.name(), name, contents.find(path).orElseThrow());
    }
    keepAsImported(contents, trial);
  }

  /** Comments, quotes and spacing are no reading, and yet they were typed. */
  private void keepAsImported(BenchContents contents, ImportedTrial trial) {
    BenchContents then = stored.alone(trial.name());
    List<String> own = new ArrayList<>(List.of(StoredBench.path(trial.name().trial())));
    trial.table().ifPresent(own::add);
    for (String path : own) {
      byte[] given = contents.find(path).orElseThrow();
      if (then.find(path).filter(kept -> Arrays.equals(kept, given)).isEmpty()) {
        String name = path.substring(BenchContents.TRIALS.length());
        attachments.attach(trial.name(), StoredBench.AS_IMPORTED + name, given);
      }
    }
  }

  private static String text(BenchContents contents, String path) {
    return new String(contents.find(path).orElseThrow(), StandardCharsets.UTF_8);
  }
}
