package rundlauf.cli;

import java.util.function.Supplier;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.wire.RefusalDocument;

/** Answers input after input: with its result, with its refusal, or with a fault of ours. */
final class Answers {
  private final Console console;
  private final boolean json;
  private boolean first = true;

  Answers(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  /** The text of a result without its line end, and how it ends. */
  record Answer(String text, Exit exit) {}

  /** Does the work and writes what came of it; what is refused never stops the next input. */
  Exit give(String input, Supplier<Answer> work) {
    Answer answer;
    try {
      answer = work.get();
    } catch (Refused refused) {
      refuse(input, refused);
      return Exit.REFUSED;
    } catch (RuntimeException | Error fault) {
      console.details(fault);
      String kind = fault.getClass().getSimpleName();
      refuse(input, Refused.at(Place.of(input), "fault", Arg.of(kind)));
      return Exit.FAULT;
    }
    write(answer.text());
    return answer.exit();
  }

  private void refuse(String input, Refused refused) {
    if (json) {
      write(RefusalDocument.of(input, refused.saying(), refused.place(), Sentences::text));
    } else {
      console.remark(Sentences.refusal(refused).line());
    }
  }

  /** Pages of text are parted by a blank line, documents stand one a line. */
  private void write(String text) {
    console.result((first || json ? "" : "\n") + text + "\n");
    first = false;
  }
}
