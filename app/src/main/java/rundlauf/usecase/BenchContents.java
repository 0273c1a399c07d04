package rundlauf.usecase;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The files of a bench in memory: paths within its folder, parted by {@code /}, in their order. */
public final class BenchContents {
  /** Where the bench's own document lies. */
  public static final String DOCUMENT = "bench.yaml";

  /** The folder of its trials. */
  public static final String TRIALS = "trials/";

  private final TreeMap<String, byte[]> files;

  private BenchContents(TreeMap<String, byte[]> files) {
    this.files = files;
  }

  /** These files; later changes of the arrays are not seen. */
  public static BenchContents of(Map<String, byte[]> files) {
    TreeMap<String, byte[]> copy = new TreeMap<>();
    files.forEach((path, bytes) -> copy.put(path, bytes.clone()));
    return new BenchContents(copy);
  }

  /** The paths of all files, sorted. */
  public List<String> paths() {
    return List.copyOf(files.keySet());
  }

  /** A file's content; empty when there is no such file. */
  public Optional<byte[]> find(String path) {
    return Optional.ofNullable(files.get(path)).map(byte[]::clone);
  }

  /** The same with one file more, or in place of one. */
  public BenchContents with(String path, byte[] content) {
    Map<String, byte[]> more = new LinkedHashMap<>(files);
    more.put(path, content);
    return of(more);
  }

  /** The same without a file. */
  public BenchContents without(String path) {
    Map<String, byte[]> less = new LinkedHashMap<>(files);
    less.remove(path);
    return of(less);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BenchContents that
        && files.keySet().equals(that.files.keySet())
        && files.entrySet().stream()
            .allMatch(e -> Arrays.equals(e.getValue(), that.files.get(e.getKey())));
  }

  @Override
  public int hashCode() {
    int hash = 1;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      hash = 31 * hash + file.getKey().hashCode() * 31 + Arrays.hashCode(file.getValue());
    }
    return hash;
  }
}
