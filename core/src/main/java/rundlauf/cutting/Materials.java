package rundlauf.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Entry;
import rundlauf.bench.Material;
import rundlauf.bench.Nearest;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Materials by name: the bench's own, then the library's. */
public final class Materials {
  private static final List<WorkMaterial> ALL =
      Stream.concat(Metals.ALL.stream(), Guesses.ALL.stream()).toList();

  private Materials() {}

  /** The library, metals first. */
  public static List<WorkMaterial> all() {
    return ALL;
  }

  /** A material of the library, by its exact name. */
  public static Optional<WorkMaterial> named(String name) {
    return ALL.stream().filter(material -> material.name().equals(name)).findFirst();
  }

  /**
   * The material of a cut or a job.
   *
   * @param typed a name, or fields with a name and perhaps coefficients of its own
   * @param own materials that the bench defines; each overrides the library's of its name
   * @return its own coefficients if it has any, else the bench's of that name, else the library's
   * @throws Refused for a name that neither knows, with the nearest, and for whatever cannot be
   *     read
   */
  public static WorkMaterial of(Entry typed, List<Material> own) {
    Material material = Material.of(typed);
    WorkMaterial known =
        material.force().isPresent()
            ? EnteredMaterial.of(material)
            : found(material.name(), own)
                .orElseThrow(() -> unknown(material.name(), own, namePlace(typed)));
    return known.within(EnteredMaterial.speed(material), EnteredMaterial.chip(material));
  }

  private static Optional<WorkMaterial> found(String name, List<Material> own) {
    return own.stream()
        .filter(material -> material.name().equals(name))
        .findFirst()
        .map(EnteredMaterial::of)
        .or(() -> named(name));
  }

  private static Refused unknown(String name, List<Material> own, Place place) {
    List<String> names = new ArrayList<>(own.stream().map(Material::name).toList());
    ALL.stream().map(WorkMaterial::name).filter(n -> !names.contains(n)).forEach(names::add);
    return Refused.at(
        place, "material-unknown", Arg.typed(name), Arg.list(Nearest.first(name, names)));
  }

  private static Place namePlace(Entry typed) {
    return typed instanceof Entry.Fields f
        ? f.get("name").map(Entry::place).orElse(typed.place())
        : typed.place();
  }
}
