package rundlauf.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.cutting.prediction.Predicting;
import rundlauf.maths.Draws;
import rundlauf.render.Sentences;
import rundlauf.render.plain.CutText;
import rundlauf.usecase.PredictCut;
import rundlauf.wire.CutDocument;

/** {@code predict CUT…}: what each cut will do. */
@Command(name = "predict")
public final class PredictCommand implements Callable<Integer> {
  private final PredictCut predictCut;
  private final Console console;

  @Parameters(arity = "1..*", paramLabel = "CUT", descriptionKey = "cut")
  private List<String> cuts = List.of();

  @Option(names = "--json")
  private boolean json;

  @Mixin private StateOptions options = new StateOptions();

  public PredictCommand(PredictCut predictCut, Console console) {
    this.predictCut = predictCut;
    this.console = console;
  }

  @Override
  public Integer call() {
    Draws draws = options.draws();
    int states = options.states(Predicting.STATES);
    var answers = new Answers(console, json);
    Exit worst = Exit.DONE;
    for (String cut : cuts) {
      worst =
          worst.and(answers.give(cut, () -> answer(cut, predictCut.predict(cut, draws, states))));
    }
    return worst.status();
  }

  private Answers.Answer answer(String file, PredictCut.Predicted found) {
    String text =
        json
            ? CutDocument.of(file, found.title(), found.prediction(), Sentences::text)
            : CutText.of(file, found.title(), found.prediction()).stripTrailing();
    return new Answers.Answer(text, Exit.of(found.prediction()));
  }
}
