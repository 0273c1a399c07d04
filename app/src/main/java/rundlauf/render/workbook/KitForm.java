package rundlauf.render.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.Material;
import rundlauf.cutting.Materials;
import rundlauf.cutting.WorkMaterial;

/** The forms of a bench's equipment: every field that its readers know, section by section. */
public final class KitForm {
  private KitForm() {}

  /** The sections of a bench in the order in which they are needed. */
  public static List<String> names() {
    return List.copyOf(KitFields.SECTIONS.keySet());
  }

  private static List<KitField> known(String section) {
    return KitFields.SECTIONS.getOrDefault(section, List.of());
  }

  /** The paths of all fields of a section. */
  public static List<String> paths(String section) {
    return known(section).stream().map(KitField::path).toList();
  }

  /**
   * The form of a part.
   *
   * @param part as it was typed
   * @param typed what stands in the form instead, by path; empty: the part
   */
  public static List<FormField> of(
      String section, Bench bench, Entry.Fields part, Map<String, String> typed) {
    List<FormField> fields = new ArrayList<>();
    for (KitField known : known(section)) {
      String path = path(known.path(), part);
      fields.add(field("kit-" + section + "-", known, path, bench, text(path, part, typed)));
    }
    return fields;
  }

  /** The fields of the bench itself. */
  public static List<FormField> head(
      Bench bench, Entry.Fields document, Map<String, String> typed) {
    List<FormField> fields = new ArrayList<>();
    for (String path : List.of("machine.feed", "notes")) {
      fields.add(field("kit-bench-", KitField.of(path), path, bench, text(path, document, typed)));
    }
    return fields;
  }

  private static FormField field(
      String prefix, KitField known, String path, Bench bench, String text) {
    String code = prefix + known.path().replace("[]", "");
    List<String> choices = known.names().isEmpty() ? known.choices() : names(known.names(), bench);
    return FormField.of(code, path, choices, known.needed(), text)
        .offering(offers(prefix + known.path(), bench));
  }

  /** Names that stand on the bench or in the library: they are offered, others may be typed. */
  private static List<String> offers(String field, Bench bench) {
    return switch (field) {
      case "kit-jobs-material.name" ->
          Stream.concat(
                  bench.materials().stream().map(Material::name),
                  Materials.all().stream().map(WorkMaterial::name))
              .distinct()
              .toList();
      case "kit-jobs-cutter[]" -> names("cutters", bench);
      case "kit-cutters-kind" -> List.of("end-mill", "ball-nose", "v-tool", "drill");
      default -> List.of();
    };
  }

  /** What may be a name alone or have fields stays what it is. */
  private static String path(String path, Entry.Fields part) {
    return path.endsWith(".name")
            && part.get(path.substring(0, path.indexOf('.'))).orElse(null) instanceof Entry.Scalar
        ? path.substring(0, path.indexOf('.'))
        : path;
  }

  private static String text(String path, Entry.Fields part, Map<String, String> typed) {
    return typed.isEmpty() ? EntryTexts.at(part, path) : typed.getOrDefault(path, "");
  }

  private static List<String> names(String section, Bench bench) {
    return switch (section) {
      case "spindles" -> bench.spindles().stream().map(s -> s.name()).toList();
      case "holders" -> bench.holders().stream().map(h -> h.name()).toList();
      default -> bench.cutters().stream().map(c -> c.name()).toList();
    };
  }
}
