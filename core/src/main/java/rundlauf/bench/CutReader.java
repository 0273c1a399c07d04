package rundlauf.bench;

import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** Understands a cut's document. */
final class CutReader {
  private static final String[] FIELDS = {
    "title",
    "date",
    "notes",
    "material",
    "cutter",
    "setup",
    "operation",
    "speed",
    "feed-per-tooth",
    "feed",
    "axial",
    "radial"
  };

  private CutReader() {}

  static Cut read(String file, Entry.Fields document) {
    Section s = Section.of(document, FIELDS);
    DateText.of(s);
    s.text("notes");
    Entry material = material(s);
    Cut.SetupTyped setup = setup(s);
    Optional<Cut.CutterTyped> cutter = cutter(s, setup);
    String operation =
        s.word("operation", "slot", "side-down", "side-up")
            .orElseThrow(() -> Refused.at(s.place("operation"), "cut-without-operation"));
    return new Cut(
        file,
        s.text("title"),
        material,
        cutter,
        setup,
        operation,
        s.requiredQuantity("speed", Dimension.FREQUENCY, Bound.POSITIVE),
        feed(s),
        s.requiredQuantity("axial", Dimension.LENGTH, Bound.POSITIVE),
        radial(s, operation),
        document);
  }

  /** Kept as typed, so that a name nobody knows can be told with its place. */
  private static Entry material(Section s) {
    if (!s.has("material")) {
      throw Refused.at(s.place("material"), "cut-without-material");
    }
    Entry typed = s.entry("material").orElseThrow();
    Material.of(typed);
    return typed;
  }

  private static Cut.SetupTyped setup(Section s) {
    if (!s.has("setup")) {
      throw Refused.at(s.place("setup"), "cut-without-setup");
    }
    return SetupReader.read(s.entry("setup").orElseThrow());
  }

  private static Optional<Cut.CutterTyped> cutter(Section s, Cut.SetupTyped setup) {
    boolean named = setup instanceof Cut.SetupNamed;
    if (!s.has("cutter")) {
      if (named) {
        return Optional.empty();
      }
      throw Refused.at(s.place("cutter"), "cut-without-cutter");
    }
    Entry typed = s.entry("cutter").orElseThrow();
    if (typed instanceof Entry.Scalar name) {
      if (!named) {
        throw Refused.at(name.place(), "cutter-name-without-bench", Arg.typed(name.text().strip()));
      }
      return Optional.of(new Cut.CutterNamed(name.text().strip()));
    }
    return Optional.of(new Cut.CutterGiven(Cutter.inline(typed)));
  }

  private static Cut.Feed feed(Section s) {
    Optional<Quantity> perTooth = s.quantity("feed-per-tooth", Dimension.LENGTH, Bound.POSITIVE);
    Optional<Quantity> rate = s.quantity("feed", Dimension.VELOCITY, Bound.POSITIVE);
    if (perTooth.isPresent() && rate.isPresent()) {
      throw Refused.at(
          s.place("feed"), "feed-said-twice", s.typed("feed-per-tooth"), s.typed("feed"));
    }
    if (perTooth.isPresent()) {
      return new Cut.FeedPerTooth(perTooth.get());
    }
    Place place = s.place("feed-per-tooth");
    return new Cut.FeedRate(rate.orElseThrow(() -> Refused.at(place, "cut-without-feed")));
  }

  private static Optional<Quantity> radial(Section s, String operation) {
    Optional<Quantity> radial = s.quantity("radial", Dimension.LENGTH, Bound.POSITIVE);
    if (radial.isEmpty() && !operation.equals("slot")) {
      throw Refused.at(s.place("radial"), "radial-missing", Arg.of(operation));
    }
    return radial;
  }
}
