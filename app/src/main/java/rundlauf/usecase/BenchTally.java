package rundlauf.usecase;

import java.util.List;

/**
 * How much of a bench a store keeps.
 *
 * @param benches 1 where the bench is kept at all, else 0
 * @param readings of all its trials, also those that were struck out
 * @param struck of them
 * @param files recordings and photos
 */
public record BenchTally(int benches, int trials, int readings, int struck, int files) {
  static BenchTally of(String bench, BenchStore benches, AttachmentStore attachments) {
    int readings = 0;
    int struck = 0;
    int files = 0;
    List<String> trials = benches.trials(bench);
    for (String trial : trials) {
      TrialName name = new TrialName(bench, trial);
      List<Kept.Reading> all = benches.readings(name);
      readings += all.size();
      struck += (int) all.stream().filter(reading -> reading.struck().isPresent()).count();
      files +=
          (int)
              attachments.attachments(name).stream()
                  .filter(file -> !file.name().startsWith(StoredBench.AS_IMPORTED))
                  .count();
    }
    int kept = benches.bench(bench).isPresent() ? 1 : 0;
    return new BenchTally(kept, trials.size(), readings, struck, files);
  }

  BenchTally minus(BenchTally before) {
    return new BenchTally(
        benches - before.benches,
        trials - before.trials,
        readings - before.readings,
        struck - before.struck,
        files - before.files);
  }

  /** Whether it is nothing at all. */
  public boolean isNothing() {
    return benches + trials + readings + struck + files == 0;
  }
}
