package rundlauf.planning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Cutter;
import rundlauf.bench.Job;
import rundlauf.cutting.Materials;
import rundlauf.cutting.prediction.Allowed;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** Understands a job as typed: what it needs of material, cutters and bench together. */
public final class JobTasks {
  /** The wall's share of the tolerance where none is given: half, so that either side has one. */
  private static final double WALL_SHARE = 0.5;

  private JobTasks() {}

  /**
   * A job with everything it needs.
   *
   * @throws Refused for what is missing, a material or a cutter nobody knows, and a job that none
   *     of the cutters it names can do
   */
  public static JobTask of(Job job, Bench bench) {
    var material =
        Materials.of(
            job.material()
                .orElseThrow(() -> Refused.at(job.place("material"), "job-without-material")),
            bench.materials());
    Feature feature =
        Feature.of(
            job.feature()
                .orElseThrow(() -> Refused.at(job.place("feature"), "job-without-feature")));
    Quantity depth =
        job.depth().orElseThrow(() -> Refused.at(job.place("depth"), "job-without-depth"));
    if (feature == Feature.POCKET && job.width().isEmpty()) {
      throw Refused.at(job.place("width"), "pocket-without-width");
    }
    JobTask task =
        new JobTask(
            job,
            feature,
            material,
            depth.si(),
            si(job.width()),
            si(job.length()),
            si(job.tolerance()),
            allowed(job, bench));
    requireOneFits(task, bench);
    return task;
  }

  /** Where the job names its cutters, one of them must be able to do it. */
  private static void requireOneFits(JobTask task, Bench bench) {
    List<CutterChecks.Unfit> unfit =
        task.job().cutters().stream()
            .map(name -> named(task.job(), name, bench))
            .flatMap(cutter -> CutterChecks.unfit(task, cutter).stream())
            .toList();
    if (!unfit.isEmpty() && unfit.size() == task.job().cutters().size()) {
      throw new Refused(unfit.get(0).why(), task.job().place(unfit.get(0).field()));
    }
  }

  private static Cutter named(Job job, String name, Bench bench) {
    return bench
        .cutter(name)
        .orElseThrow(
            () ->
                BenchReader.undefined(
                    job.place("cutter"),
                    name,
                    bench.cutters().stream().map(Cutter::name).toList()));
  }

  private static Allowed allowed(Job job, Bench bench) {
    double share = job.wallShare().map(Quantity::si).orElse(WALL_SHARE);
    Optional<Job.Workholding> bears = job.workholding();
    return new Allowed(
        si(job.tolerance(), width -> width * share),
        si(job.finish()),
        si(bears.flatMap(Job.Workholding::inPlane)),
        si(bears.flatMap(Job.Workholding::lift)),
        si(bench.feed()),
        OptionalDouble.empty());
  }

  static OptionalDouble si(Optional<Quantity> quantity) {
    return si(quantity, value -> value);
  }

  private static OptionalDouble si(Optional<Quantity> quantity, Function<Double, Double> of) {
    return quantity.map(q -> OptionalDouble.of(of.apply(q.si()))).orElse(OptionalDouble.empty());
  }
}
