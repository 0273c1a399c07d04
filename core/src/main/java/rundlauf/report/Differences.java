package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Pair;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.report.Table.Row;

/** Differences of every pair of setups: for each figure one table, folded. */
final class Differences {
  private static final Scale ODDS = new Scale(Unit.PERCENT, 1);

  private static final double LEAST_TOLD = 0.001;

  /** A difference, the pair it belongs to, and where each of the two was measured. */
  private record One(Pair pair, Difference difference, Sheet ofA, Sheet ofB) {}

  private Differences() {}

  static Section section(BenchResults results, List<Sheet> sheets) {
    Map<Saying, List<One>> tables = new LinkedHashMap<>();
    for (Pair pair : results.comparison().pairs()) {
      for (Difference d : pair.differences()) {
        if (d.verdict() != Verdict.MISSING) {
          One one = new One(pair, d, sheet(d.aFile(), sheets), sheet(d.bFile(), sheets));
          tables.computeIfAbsent(name(d), k -> new ArrayList<>()).add(one);
        }
      }
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Remarks.of(
            Remarks.Tone.NOTE,
            List.of(
                Saying.of(
                    tables.isEmpty() ? "report-nothing-to-compare" : "report-differences-intro",
                    ""))));
    tables.forEach((name, all) -> blocks.add(table(name, all)));
    return Section.of("differences", Saying.of("report-differences", ""), blocks);
  }

  private static Sheet sheet(String file, List<Sheet> sheets) {
    return sheets.stream()
        .filter(s -> s.outcome().trial().file().equals(file))
        .findFirst()
        .orElseThrow();
  }

  private static Saying name(Difference d) {
    return d.station().isPresent()
        ? Saying.of("report-tir-at", "", Arg.of(d.station().getAsDouble(), Unit.MILLIMETRE))
        : FigureTable.name(d.figure());
  }

  private static Table table(Saying name, List<One> all) {
    List<Row> rows = new ArrayList<>();
    for (One one : all) {
      Difference d = one.difference();
      rows.add(
          Row.of(
              new Cell.Link(setup(one.pair().a()), one.ofA().section()),
              new Cell.Link(setup(one.pair().b()), one.ofB().section()),
              new Cell.Shown(d.difference(), one.ofA().readings(), Methods.COMPARE, ""),
              odds(d),
              new Cell.SaidAll(verdict(d))));
    }
    List<Cell> columns = new ArrayList<>();
    for (String column : List.of("first", "second", "difference", "first-smaller", "verdict")) {
      columns.add(Table.heading("report-column-" + column));
    }
    return new Table(name, columns, rows, Table.Kind.FIGURES, true);
  }

  /** So few draws cannot tell a probability of 99.95 % from certainty, nor 0.05 % from none. */
  private static Cell odds(Difference d) {
    double probability = d.aSmaller().orElseThrow();
    if (probability > 1 - LEAST_TOLD) {
      return new Cell.Said(Saying.of("report-odds-over", ""));
    }
    return probability < LEAST_TOLD
        ? new Cell.Said(Saying.of("report-odds-under", ""))
        : new Cell.Number(probability, ODDS);
  }

  private static Saying setup(String name) {
    return Saying.of("report-name", "", Arg.of(name));
  }

  private static List<Saying> verdict(Difference d) {
    List<Saying> all = new ArrayList<>();
    Arg name = Arg.of(d.better().orElse(""));
    all.add(Saying.of("report-verdict-" + d.verdict().code(), "", name));
    all.addAll(d.because());
    all.addAll(d.unsaid());
    return all;
  }
}
