package rundlauf.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.prediction.CutFigures;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;

/** The JSON document of a predicted cut. */
public final class CutDocument {
  private static final String CHIP = "chip.";
  private static final String TEETH_CUTTING = CHIP + "teethCutting";
  private static final String STABLE = "stability.probabilityStable";

  private CutDocument() {}

  /**
   * The document on one line, without a line end.
   *
   * @param file the cut as the user named it
   * @param title as given in it
   */
  public static String of(
      String file, Optional<String> title, Prediction found, Function<Saying, String> wording) {
    return JsonLine.of(
        wording,
        json -> {
          json.text("file", file);
          json.text("title", title);
          setup(json, found.task().setup());
          figures(json, found.figures(), found.assumed());
          json.list("limits", found.limits(), limit -> limit(json, limit));
          json.number("probability", found.probability());
          json.texts("covers", found.covers());
          found
              .rigid()
              .ifPresent(
                  rigid ->
                      json.object("rigid", () -> figures(json, rigid, found.assumedWhenRigid())));
          json.list("budget", BudgetLine.of(all(found.figures())), line -> line.write(json));
          json.sayings("cautions", found.cautions());
          json.sayings("advice", found.advice());
        });
  }

  private static void setup(JsonLine json, SetupCharacter setup) {
    json.object(
        "setup",
        () -> {
          json.text("name", Optional.of(setup.name()).filter(name -> !name.isEmpty()));
          json.text("standing", setup.standing().map(s -> s.code()));
          json.object(
              "traits",
              () ->
                  setup
                      .traits()
                      .forEach(
                          (code, trait) ->
                              json.object(
                                  code,
                                  () -> {
                                    json.text("origin", trait.origin().code());
                                    json.figure("figure", trait.figure());
                                    json.sayings("from", trait.from());
                                  })));
        });
  }

  /** Figures of a cut: chips with their teeth first, then everything else by its path. */
  static void figures(JsonLine json, CutFigures figures, Map<String, List<Saying>> assumed) {
    Map<String, Figure> rest = new LinkedHashMap<>(figures.byPath());
    rest.keySet().removeIf(path -> path.startsWith(CHIP));
    json.object(
        "chip",
        () -> {
          json.list("perTooth", figures.teeth(), tooth -> tooth(json, tooth, assumed));
          figures
              .byPath()
              .forEach(
                  (path, figure) -> {
                    if (path.equals(TEETH_CUTTING)) {
                      count(json, figure);
                    } else if (path.startsWith(CHIP)) {
                      json.figure(path.substring(CHIP.length()), figure, of(assumed, path));
                    }
                  });
        });
    Nested.write(json, rest, (name, path) -> leaf(json, name, path, figures, assumed));
  }

  /** A probability is bare; one that cannot be had says why beside it. */
  private static void leaf(
      JsonLine json,
      String name,
      String path,
      CutFigures figures,
      Map<String, List<Saying>> assumed) {
    if (path.equals(STABLE) && figures.at(path) instanceof Missing missing) {
      json.nothing(name);
      json.why("why", missing.why());
    } else {
      json.figure(name, figures.at(path), of(assumed, path));
    }
  }

  /** A count is bare; where it cannot be had it says why. */
  private static void count(JsonLine json, Figure figure) {
    if (figure.known()) {
      json.count("teethCutting", Math.round(figure.value()));
    } else {
      json.figure("teethCutting", figure);
    }
  }

  private static void tooth(
      JsonLine json, CutFigures.ToothFigures tooth, Map<String, List<Saying>> assumed) {
    String at = "chip.perTooth[" + (tooth.tooth() - 1) + "].";
    json.count("tooth", tooth.tooth());
    json.figure("peak", tooth.peak(), of(assumed, at + "peak"));
    json.figure("share", tooth.share(), of(assumed, at + "share"));
  }

  private static List<Saying> of(Map<String, List<Saying>> assumed, String path) {
    return assumed.getOrDefault(path, List.of());
  }

  /** A limit, judged or not. */
  static void limit(JsonLine json, Limit limit) {
    json.text("limit", limit.code());
    json.figure("value", limit.value(), limit.assumedOfValue());
    json.figure("allowed", limit.allowed(), limit.assumedOfAllowed());
    json.figure("margin", limit.margin(), limit.assumed());
    if (limit.judged()) {
      json.number("probability", limit.probability().orElseThrow());
      json.truth("holds", limit.holds());
    } else {
      json.nothing("probability");
      json.nothing("holds");
      json.why("why", limit.why());
    }
  }

  private static Map<String, Figure> all(CutFigures figures) {
    Map<String, Figure> all = new LinkedHashMap<>();
    for (CutFigures.ToothFigures tooth : figures.teeth()) {
      all.put("chip.perTooth[" + (tooth.tooth() - 1) + "].peak", tooth.peak());
      all.put("chip.perTooth[" + (tooth.tooth() - 1) + "].share", tooth.share());
    }
    figures
        .byPath()
        .forEach(
            (path, figure) -> {
              if (!(figure instanceof Missing)) {
                all.put(path, figure);
              }
            });
    return all;
  }
}
