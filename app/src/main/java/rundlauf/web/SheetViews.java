package rundlauf.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.RowColumns;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.render.Wording;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.SheetDocument;
import rundlauf.render.workbook.SheetPage;
import rundlauf.render.workbook.SheetView;
import rundlauf.render.workbook.SheetWords;
import rundlauf.render.workbook.TrialForm;
import rundlauf.report.LivePart;
import rundlauf.usecase.Kept;
import rundlauf.usecase.SheetState;
import rundlauf.usecase.Shelf;

/** What is kept of a trial, as its sheet shows it. */
final class SheetViews {
  private SheetViews() {}

  /** The trial in words: its title, or its kind and what was measured. */
  static String heading(SheetState state, Wording words) {
    String kind = words.say(Saying.of("trial-kind-" + state.trial().kind().strip(), ""));
    String of = EntryTexts.all(state.document()).getOrDefault("setup", state.trial().name());
    return words.say(Saying.of("sheet-heading", "", Arg.of(kind), Arg.of(of)));
  }

  static SheetPage page(Shelf.Placed placed, SheetState state, Wording words) {
    String name = placed.name().bench() + " / " + placed.name().trial() + " / " + state.begun();
    return new SheetPage(
        TrialLinks.base(placed),
        name,
        heading(state, words),
        SheetWords.reasons(words),
        SheetWords.of(words),
        SheetDocument.of(view(placed, state), words).replace("<", "\\u003c"));
  }

  /**
   * The fields that say how a trial is taken.
   *
   * @param typed what was typed into them, where that was not kept
   */
  static List<FormField> conditions(SheetState state, Map<String, String> typed) {
    Map<String, String> texts = new LinkedHashMap<>(EntryTexts.all(state.document()));
    texts.putAll(typed);
    return TrialForm.conditions(TrialKind.of(state.trial()), texts);
  }

  static SheetView view(Shelf.Placed placed, SheetState state) {
    List<SheetView.Row> rows = new ArrayList<>();
    state.readings().forEach(reading -> rows.add(row(reading)));
    Collections.reverse(rows);
    return new SheetView(
        state.version(),
        state.outcome(),
        state.earlier().map(e -> new LivePart.Earlier(e.count(), e.reduced())),
        state.turnBegun(),
        state.guidance(),
        state.standing(),
        rows,
        Photos.of(placed, state.attachments()));
  }

  /** What was typed of a reading; when it was taken is left out. */
  static List<SheetView.Cell> cells(Kept.Reading reading) {
    return reading.typed().cells().stream()
        .filter(cell -> !cell.column().equals(RowColumns.TAKEN))
        .map(cell -> new SheetView.Cell(cell.column(), cell.text()))
        .toList();
  }

  private static SheetView.Row row(Kept.Reading reading) {
    return new SheetView.Row(
        reading.position(),
        reading.typed().key(),
        cells(reading),
        reading.struck().map(Kept.Strike::reason));
  }
}
