package rundlauf;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import rundlauf.cli.BackupCommand;
import rundlauf.cli.CommandLines;
import rundlauf.cli.CompareCommand;
import rundlauf.cli.Console;
import rundlauf.cli.DemoCommand;
import rundlauf.cli.ExportCommand;
import rundlauf.cli.ImportCommand;
import rundlauf.cli.PlanCommand;
import rundlauf.cli.PredictCommand;
import rundlauf.cli.PublishCommand;
import rundlauf.cli.RecomputeCommand;
import rundlauf.cli.ReduceCommand;
import rundlauf.cli.ServeCommand;
import rundlauf.devices.Processors;
import rundlauf.files.DemoDisk;
import rundlauf.files.DiskContents;
import rundlauf.files.DiskCuts;
import rundlauf.files.DiskJobs;
import rundlauf.files.DiskTrials;
import rundlauf.files.PublicationFolder;
import rundlauf.maths.Work;
import rundlauf.render.HtmlReport;
import rundlauf.usecase.CompareBench;
import rundlauf.usecase.PlanBench;
import rundlauf.usecase.PlanJob;
import rundlauf.usecase.PredictCut;
import rundlauf.usecase.PublishBench;
import rundlauf.usecase.PublishReport;
import rundlauf.usecase.RecomputePackage;
import rundlauf.usecase.ReduceTrial;
import rundlauf.usecase.ShowDemo;

/** Puts the program together and runs it. */
public final class Main {
  private Main() {}

  /** The command line; ends the process with the command's exit status. */
  public static void main(String[] args) {
    var out = new FileOutputStream(FileDescriptor.out);
    var err = new FileOutputStream(FileDescriptor.err);
    boolean debug = System.getenv("RUNDLAUF_DEBUG") != null;
    System.exit(run(out, err, debug, args));
  }

  /**
   * Runs one command.
   *
   * @param out where results go
   * @param err where refusals and mistakes go
   * @param debug whether the details of a fault of ours are printed
   * @return the exit status
   */
  public static int run(OutputStream out, OutputStream err, boolean debug, String... args) {
    var console = new Console(out, err, debug);
    var disk = new DiskTrials();
    var reduce = new ReduceCommand(new ReduceTrial(disk, Work.sequential()), console);
    var compareBench = new CompareBench(disk, Work.sequential());
    var compare = new CompareCommand(compareBench, console);
    var predict = new PredictCommand(new PredictCut(new DiskCuts(), Work.sequential()), console);
    var plan = new PlanCommand(new PlanJob(disk, new DiskJobs(), new Processors()), console);
    var serving = new MainServing(console::details);
    var demo = new DemoCommand(demo(compareBench), MainStore::demo, serving, console);
    var serve = new ServeCommand(serving, console);
    return CommandLines.run(
        List.of(
            demo,
            serve,
            reduce,
            compare,
            predict,
            plan,
            new PublishCommand(publish(), console),
            new RecomputeCommand(recompute(), console),
            new ImportCommand(MainStore::take, console),
            new ExportCommand(MainStore::give, console),
            new BackupCommand(MainStore::backUp, console)),
        console,
        args);
  }

  private static PublishBench publish() {
    var files = new DiskContents();
    var planBench = new PlanBench(new Processors());
    return new PublishBench(files, files, MainStore.packages(), planBench, HtmlReport::write);
  }

  private static RecomputePackage recompute() {
    return new RecomputePackage(new DiskContents(), MainStore.packages(), MainStore.written());
  }

  private static ShowDemo demo(CompareBench compareBench) {
    return new ShowDemo(
        new DemoDisk(),
        compareBench,
        new PlanBench(new Processors()),
        folder -> new PublishReport(HtmlReport::write, new PublicationFolder(Path.of(folder))));
  }
}
