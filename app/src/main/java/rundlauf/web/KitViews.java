package rundlauf.web;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.Setup;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.KitForm;
import rundlauf.render.workbook.KitView;
import rundlauf.safety.SetupCautions;
import rundlauf.safety.Standing;
import rundlauf.usecase.FirstTrial;
import rundlauf.usecase.ShowKit;

/** What the pages of a bench's equipment show of it. */
final class KitViews {
  private KitViews() {}

  /**
   * The list of everything.
   *
   * @param bench its number
   * @param standing of its spindles
   */
  static KitView of(int bench, ShowKit.Kit kit, Map<String, Standing> standing, Wording words) {
    List<KitView.Section> sections = new ArrayList<>();
    for (String name : KitForm.names()) {
      List<KitView.Part> parts =
          kit.parts(name).stream()
              .map(part -> part(bench, kit.bench(), standing, name, part))
              .toList();
      sections.add(new KitView.Section(name, words.word("kit-" + name), parts));
    }
    return new KitView(
        BenchLinks.base(bench) + "/kit",
        kit.edition(),
        texts(FirstTrial.missing(kit.bench())),
        sections,
        kit.editions().stream().map(KitViews::edition).toList());
  }

  private static KitView.Part part(
      int number, Bench bench, Map<String, Standing> standing, String section, Entry typed) {
    String name = name(typed).strip();
    List<String> cautions = new ArrayList<>(texts(standing(section, typed, standing)));
    if (!section.equals("setups")) {
      return new KitView.Part(name, cautions, "");
    }
    for (Setup setup : bench.setups()) {
      if (setup.name().equals(name)) {
        OptionalDouble none = OptionalDouble.empty();
        cautions.addAll(texts(SetupCautions.of(bench, setup, none, none)));
      }
    }
    return new KitView.Part(name, cautions, BenchLinks.measure(number, name));
  }

  /** What must be said of the spindle that a part is, or that a setup names. */
  static List<Saying> standing(String section, Entry part, Map<String, Standing> standing) {
    String spindle =
        switch (section) {
          case "spindles" -> name(part).strip();
          case "setups" ->
              part instanceof Entry.Fields f ? EntryTexts.at(f, "spindle").strip() : "";
          default -> "";
        };
    return standing.getOrDefault(spindle, Standing.INSPECTED).cautions(spindle);
  }

  private static List<String> texts(List<Saying> sayings) {
    return sayings.stream().map(Sentences::text).toList();
  }

  private static KitView.Edition edition(ShowKit.Step step) {
    String at = step.edition().at().truncatedTo(ChronoUnit.SECONDS).toString();
    return new KitView.Edition(
        step.edition().number(),
        at.replace('T', ' ').replace("Z", " UTC"),
        texts(step.changes()),
        step.edition().document());
  }

  static String name(Entry part) {
    return part instanceof Entry.Fields fields ? EntryTexts.at(fields, "name") : "";
  }

  /** Fields with what a newer edition says, where it is not what stands in them. */
  static List<FormField> beside(List<FormField> fields, Entry.Fields newer) {
    return fields.stream()
        .map(
            field -> {
              String there = EntryTexts.at(newer, field.path()).strip();
              return there.equals(field.text().replace("\r\n", "\n").strip())
                  ? field
                  : field.saying(says(there));
            })
        .toList();
  }

  private static String says(String there) {
    return there.isEmpty()
        ? Sentences.text(Saying.of("edition-says-nothing", ""))
        : Sentences.text(Saying.of("edition-says", "", Arg.typed(there)));
  }
}
