package rundlauf.usecase;

import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Takes a package of a bench out of the store. */
public final class ExportBench {
  private final BenchStore benches;
  private final StoredBench stored;
  private final BenchPackage packages;
  private final ContentsTarget target;

  public ExportBench(
      BenchStore benches, StoredBench stored, BenchPackage packages, ContentsTarget target) {
    this.benches = benches;
    this.stored = stored;
    this.packages = packages;
    this.target = target;
  }

  /**
   * What was written.
   *
   * @param bench its name
   * @param files the paths of the package's files
   */
  public record Exported(String bench, List<String> files) {}

  /**
   * Writes the package of a bench into a folder.
   *
   * @param bench its name; empty: the only one there is
   * @param folder new or empty
   * @throws Refused when there is no such bench, several and none was named, or the folder is used
   */
  public Exported export(Optional<String> bench, String folder) {
    target.requireFresh(folder);
    String name = bench.orElseGet(this::only);
    BenchContents packed = packed(name);
    target.write(folder, packed);
    return new Exported(name, packed.paths());
  }

  /** The package of a bench, as a ZIP. */
  public byte[] zip(String bench) {
    return target.zip(packed(bench));
  }

  private BenchContents packed(String bench) {
    return packages.of(stored.contents(bench), Draws.DEFAULT);
  }

  private String only() {
    List<String> names = benches.benches();
    if (names.size() == 1) {
      return names.get(0);
    }
    throw names.isEmpty()
        ? Refused.at(Place.NOWHERE, "store-empty")
        : Refused.at(Place.NOWHERE, "bench-not-named", Arg.list(names));
  }
}
