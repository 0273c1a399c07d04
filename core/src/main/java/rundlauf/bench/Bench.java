package rundlauf.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.quantity.Quantity;

/**
 * Everything one workshop owns and has measured.
 *
 * @param file as the user named it
 * @param name as given under {@code bench}
 * @param feed the fastest feed of the machine's axes
 * @param materials the user's own
 * @param notes as given
 * @param trials in the order of their files' names
 */
public record Bench(
    String file,
    String name,
    Optional<Quantity> feed,
    List<Spindle> spindles,
    List<Holder> holders,
    List<Cutter> cutters,
    List<Indicator> indicators,
    List<Rig> rigs,
    List<Material> materials,
    List<Setup> setups,
    List<Job> jobs,
    Optional<String> notes,
    List<Trial> trials) {

  public Bench {
    spindles = List.copyOf(spindles);
    holders = List.copyOf(holders);
    cutters = List.copyOf(cutters);
    indicators = List.copyOf(indicators);
    rigs = List.copyOf(rigs);
    materials = List.copyOf(materials);
    setups = List.copyOf(setups);
    jobs = List.copyOf(jobs);
    trials = List.copyOf(trials);
  }

  public Optional<Spindle> spindle(String wanted) {
    return find(spindles, Spindle::name, wanted);
  }

  public Optional<Holder> holder(String wanted) {
    return find(holders, Holder::name, wanted);
  }

  public Optional<Cutter> cutter(String wanted) {
    return find(cutters, Cutter::name, wanted);
  }

  public Optional<Indicator> indicator(String wanted) {
    return find(indicators, i -> i.name().orElse(""), wanted);
  }

  public Optional<Rig> rig(String wanted) {
    return find(rigs, r -> r.name().orElse(""), wanted);
  }

  public Optional<Setup> setup(String wanted) {
    return find(setups, Setup::name, wanted);
  }

  public Optional<Material> material(String wanted) {
    return find(materials, Material::name, wanted);
  }

  public Optional<Job> job(String wanted) {
    return find(jobs, Job::name, wanted);
  }

  private static <T> Optional<T> find(List<T> all, Function<T, String> name, String wanted) {
    return all.stream().filter(one -> name.apply(one).equals(wanted)).findFirst();
  }
}
