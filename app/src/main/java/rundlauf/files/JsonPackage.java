package rundlauf.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import rundlauf.maths.Draws;
import rundlauf.quantity.Saying;
import rundlauf.report.Outcome;
import rundlauf.usecase.PackageDocuments;
import rundlauf.usecase.PackageFile;
import rundlauf.usecase.PublishedFigures;
import rundlauf.wire.DescriptorDocument;
import rundlauf.wire.FiguresDocument;
import rundlauf.wire.PublishedNumbers;

/** The two documents of a package in JSON. */
public final class JsonPackage implements PackageDocuments {
  private final String program;
  private final Function<Saying, String> wording;
  private final UnaryOperator<String> columns;

  /**
   * @param program its version
   * @param wording the sentence of a saying
   * @param columns what a column is called
   */
  public JsonPackage(
      String program, Function<Saying, String> wording, UnaryOperator<String> columns) {
    this.program = program;
    this.wording = wording;
    this.columns = columns;
  }

  @Override
  public String figures(List<Outcome> outcomes, Draws draws) {
    return FiguresDocument.of(program, outcomes, draws, wording);
  }

  @Override
  public PublishedFigures readFigures(String text, String name) {
    FiguresDocument.Read read = FiguresDocument.read(text, name);
    Map<String, PublishedFigures.PublishedTrial> trials = new LinkedHashMap<>();
    read.trials().forEach((file, node) -> trials.put(file, trial(PublishedNumbers.of(node))));
    return new PublishedFigures(read.program(), read.seed(), read.draws(), trials);
  }

  private static PublishedFigures.PublishedTrial trial(PublishedNumbers.Trial read) {
    Map<String, PublishedFigures.PublishedFigure> figures = new LinkedHashMap<>();
    read.figures()
        .forEach(
            (path, f) -> {
              Optional<PublishedFigures.Numbers> known =
                  f.known()
                      ? Optional.of(
                          new PublishedFigures.Numbers(f.value(), f.u(), f.low(), f.high()))
                      : Optional.empty();
              figures.put(path, new PublishedFigures.PublishedFigure(f.unit(), known));
            });
    return new PublishedFigures.PublishedTrial(read.method(), figures, read.error());
  }

  @Override
  public String descriptor(String bench, List<PackageFile> files) {
    return DescriptorDocument.of(bench, files.stream().map(this::resource).toList());
  }

  private DescriptorDocument.Resource resource(PackageFile file) {
    return new DescriptorDocument.Resource(
        file.path(),
        file.bytes(),
        file.hash(),
        file.table().map(PackageFile.Columns::delimiter).orElse(""),
        file.table().stream().flatMap(t -> t.columns().stream()).map(this::field).toList());
  }

  private DescriptorDocument.Field field(PackageFile.Column column) {
    return new DescriptorDocument.Field(
        column.name(),
        column.type(),
        column.unit(),
        column.decimalComma(),
        columns.apply(column.name()));
  }

  @Override
  public List<PackageFile> readDescriptor(String text, String name) {
    return DescriptorDocument.read(text, name).stream()
        .map(r -> new PackageFile(r.path(), r.bytes(), r.hash(), Optional.empty()))
        .toList();
  }
}
