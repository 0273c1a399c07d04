package rundlauf.render.workbook;

import java.util.List;

/**
 * A bench at a glance.
 *
 * @param base its address
 * @param others trials that name no setup of the bench
 * @param planned whether it has jobs
 */
public record BenchView(String base, List<Setup> setups, List<TrialLink> others, boolean planned) {
  public BenchView {
    setups = List.copyOf(setups);
    others = List.copyOf(others);
  }

  /**
   * A setup with its trials.
   *
   * @param measure the address at which a trial of it is begun
   */
  public record Setup(String id, String name, String measure, List<TrialLink> trials) {
    public Setup {
      trials = List.copyOf(trials);
    }
  }

  /** A trial: its kind in words, its date and title as typed. */
  public record TrialLink(String kind, String date, String title, String href) {}
}
