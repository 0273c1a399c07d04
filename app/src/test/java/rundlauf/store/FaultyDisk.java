package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Stores on a disk that refuses what it is told to: the system's calls on the store's files are
 * answered with an error before they do anything ({@code strace}).
 *
 * @param said by {@link Persisting}, line by line
 * @param refusals how many calls were answered so
 * @param folder where the stores and images were laid aside
 */
record FaultyDisk(List<String> said, int refusals, Path folder) {
  /**
   * Lets {@link Persisting} run.
   *
   * @param call such as {@code pwrite64}
   * @param error such as {@code ENOSPC}
   * @param when which of the calls: {@code FIRST}, {@code FIRST+STEP}, {@code FIRST..LAST+STEP}
   * @param folder new; for everything
   */
  static FaultyDisk of(String call, String error, String when, int rounds, Path folder)
      throws IOException, InterruptedException {
    Path aside = Files.createDirectories(folder.resolve("aside"));
    Path trace = folder.resolve("calls.txt");
    Path file = folder.resolve("bench.db");
    List<String> command = new ArrayList<>(List.of("strace", "-f", "-qq", "-o", trace.toString()));
    command.addAll(List.of("-e", "trace=" + call));
    command.addAll(List.of("-e", "inject=" + call + ":error=" + error + ":when=" + when));
    for (Object ours : List.of(file, file + "-wal", file + "-shm", folder)) {
      command.addAll(List.of("-P", ours.toString()));
    }
    command.addAll(
        Entering.java(
            Persisting.class, file.toString(), aside.toString(), Integer.toString(rounds)));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Entering.run(command, out, err);
    assertThat(err).isEmptyFile();
    List<String> calls = Files.readAllLines(trace);
    int refusals = (int) calls.stream().filter(line -> line.endsWith("(INJECTED)")).count();
    return new FaultyDisk(Files.readAllLines(out), refusals, aside);
  }
}
