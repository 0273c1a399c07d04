package rundlauf.guide;

import static rundlauf.bench.Typed.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rundlauf.bench.Entry;

/** A trial whose rows are what its guide gives, each answered with one text. All of it invented. */
final class Followed {
  private static final int MOST = 500;

  private final Entry.Fields document;
  private final List<Map<String, String>> rows = new ArrayList<>();

  Followed(Entry.Fields document) {
    this.document = document;
  }

  /** What is said at this point. */
  Guidance guidance() {
    return Guide.next(trial(document, table()), Optional.empty());
  }

  Step next() {
    return guidance().step().orElseThrow();
  }

  /** Answers the next step. */
  Followed take(int times) {
    for (int i = 0; i < times; i++) {
      row(cells(next()));
    }
    return this;
  }

  /** Types a row, whatever was asked. */
  Followed row(Map<String, String> cells) {
    rows.add(new java.util.LinkedHashMap<>(cells));
    return this;
  }

  /** Strikes a row out, from 0. */
  Followed strike(int row) {
    rows.get(row).put("struck", "yes");
    return this;
  }

  /** The steps to the end, in their order. */
  List<Step> all() {
    List<Step> steps = new ArrayList<>();
    for (Optional<Step> next = guidance().step(); next.isPresent(); next = guidance().step()) {
      steps.add(next.get());
      if (steps.size() > MOST) {
        throw new IllegalStateException("the guide does not end");
      }
      row(cells(next.get()));
    }
    return steps;
  }

  private static Map<String, String> cells(Step step) {
    Map<String, String> cells = new java.util.LinkedHashMap<>();
    step.given().forEach(g -> cells.put(g.column(), g.text()));
    step.asked().forEach(a -> cells.put(a.column(), a.choices().isEmpty() ? "1" : "good"));
    return cells;
  }

  private String[] table() {
    Set<String> columns = new LinkedHashSet<>();
    rows.forEach(row -> columns.addAll(row.keySet()));
    List<String> lines = new ArrayList<>(List.of(String.join(", ", columns)));
    for (Map<String, String> row : rows) {
      lines.add(String.join(", ", columns.stream().map(c -> row.getOrDefault(c, "")).toList()));
    }
    return rows.isEmpty() ? new String[0] : lines.toArray(String[]::new);
  }

  /** What a step gives in one column; empty text where it gives none. */
  static String given(Step step, String column) {
    return step.given().stream()
        .filter(g -> g.column().equals(column))
        .map(Given::text)
        .findFirst()
        .orElse("");
  }

  /** What all steps give in one column. */
  static List<String> given(List<Step> steps, String column) {
    return steps.stream().map(step -> given(step, column)).toList();
  }

  static List<String> prompts(List<Step> steps) {
    return steps.stream().map(step -> step.prompt().code()).toList();
  }
}
