package rundlauf.character;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.quantity.Cause;
import rundlauf.reduce.Latest;
import rundlauf.reduce.Reduced;

/**
 * What the trials of a bench say of one setup and of its spindle.
 *
 * @param cutter that is put in; empty when nobody said
 * @param results of all trials of the bench that were reduced, in the order of their files
 */
record SpindleResults(Bench bench, Setup setup, Optional<Cutter> cutter, List<Reduced> results) {
  SpindleResults {
    results = List.copyOf(results);
  }

  /** The doubt of how far the cutter stands out. */
  Cause stickout() {
    return Cause.rectangular("cutter/" + cutter.map(Cutter::name).orElse(""), "stickout");
  }

  /** The latest result of a kind on this setup. */
  <T extends Reduced> Optional<T> ofSetup(Class<T> kind) {
    return Latest.of(results.stream().filter(r -> isOn(r, setup.name())).toList(), kind);
  }

  /** The latest result of a kind on any setup of the spindle. */
  <T extends Reduced> Optional<T> ofSpindle(Class<T> kind) {
    return Latest.of(allOfSpindle(kind), kind);
  }

  /** Every result of a kind on any setup of the spindle. */
  <T extends Reduced> List<T> allOfSpindle(Class<T> kind) {
    return results.stream()
        .filter(r -> setupOf(r).filter(s -> s.spindle().equals(setup.spindle())).isPresent())
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  /** The results of a kind on the spindle's other setups with the same kind of holder. */
  <T extends Reduced> List<T> ofLikeSetups(Class<T> kind) {
    Optional<String> own = holderKind(setup);
    return allOfSpindle(kind).stream()
        .filter(r -> !isOn(r, setup.name()))
        .filter(r -> own.isPresent() && setupOf(r).flatMap(this::holderKind).equals(own))
        .toList();
  }

  private Optional<String> holderKind(Setup one) {
    return one.holder().flatMap(bench::holder).flatMap(Holder::kind);
  }

  private Optional<Setup> setupOf(Reduced result) {
    return result.head().setup().flatMap(bench::setup);
  }

  private static boolean isOn(Reduced result, String name) {
    return result.head().setup().equals(Optional.of(name));
  }
}
