package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.KitForm;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.Shell;
import rundlauf.usecase.Kept;
import rundlauf.usecase.ShowKit;

/** What stands on a bench: spindles, holders, cutters and all the rest, each with its form. */
final class KitPages implements Group {
  private static final String KIT = "/bench/{bench}/kit";
  private static final String PART = KIT + "/{section}/{part}";
  private static final String EDITION = "edition";
  private static final String NEW = "new";

  /** The name of a part when its form was filled. */
  private static final String WAS = "was";

  private final Cases cases;
  private final Frame frame;

  KitPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get(KIT, this::all);
    routes.post(KIT, this::sayHead);
    routes.post(KIT + "/editions/{number}", this::restore);
    routes.get(PART, ctx -> form(ctx, Map.of(), Optional.empty()));
    routes.post(PART, this::put);
    routes.post(PART + "/remove", this::remove);
  }

  private String bench(Context ctx) {
    return cases.shelf().bench(Frame.bench(ctx));
  }

  private static String base(Context ctx) {
    return BenchLinks.base(Frame.bench(ctx)) + "/kit";
  }

  private static String section(Context ctx) {
    String section = ctx.pathParam("section");
    if (!KitForm.names().contains(section)) {
      throw Refused.at(Place.NOWHERE, "page-not-there");
    }
    return section;
  }

  private void all(Context ctx) {
    all(ctx, Map.of(), Optional.empty());
  }

  private void all(Context ctx, Map<String, String> typed, Optional<Sentences.Refusal> refusal) {
    ShowKit.Kit kit = cases.showKit().show(bench(ctx));
    Wording words = new Wording();
    List<FormField> head = KitForm.head(kit.bench(), kit.document(), typed);
    if (isNewer(refusal)) {
      head = KitViews.beside(head, kit.document());
    }
    Map<String, Object> given = given(ctx, words.word("workbook-page-kit"), words, head, refusal);
    given.put("view", KitViews.of(Frame.bench(ctx), kit, cases.standing().of(bench(ctx)), words));
    ctx.html(Pages.of("kit", given));
  }

  private static boolean isNewer(Optional<Sentences.Refusal> refusal) {
    return refusal.filter(r -> r.code().equals("edition-newer")).isPresent();
  }

  private Map<String, Object> given(
      Context ctx,
      String title,
      Wording words,
      List<FormField> fields,
      Optional<Sentences.Refusal> refusal) {
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", shell(ctx, title, words));
    given.putAll(Forms.shown(fields, refusal));
    return given;
  }

  private Shell shell(Context ctx, String title, Wording words) {
    return frame.of(ctx, Frame.bench(ctx), title, words);
  }

  private void form(Context ctx, Map<String, String> typed, Optional<Sentences.Refusal> refusal) {
    String section = section(ctx);
    ShowKit.Kit kit = cases.showKit().show(bench(ctx));
    int number = number(ctx, kit, section, typed);
    Entry.Fields part = number == 0 ? Entry.Fields.none() : part(kit, section, number);
    Wording words = new Wording();
    String heading =
        number == 0
            ? words.word("kit-new-" + section)
            : words.filled(
                "kit-one-named",
                Arg.of(words.word("kit-one-" + section)),
                Arg.typed(KitViews.name(part)));
    List<FormField> fields = KitForm.of(section, kit.bench(), part, typed);
    if (isNewer(refusal)) {
      fields = KitViews.beside(fields, part);
    }
    Map<String, Object> given = given(ctx, heading, words, fields, refusal);
    List<Saying> standing = KitViews.standing(section, part, cases.standing().of(bench(ctx)));
    given.put("shell", shell(ctx, heading, words).saying(standing));
    given.put("action", base(ctx) + "/" + section + "/" + (number == 0 ? NEW : number));
    given.put("heading", heading);
    given.put("edition", kit.edition());
    given.put("was", KitViews.name(part));
    given.put("fresh", number == 0);
    given.put("mains", section.equals("spindles"));
    given.put("base", base(ctx));
    ctx.html(Pages.of("part", given));
  }

  /**
   * The number of the part that a form is about, 0 for a new one. A newer edition may have it at
   * another place, or no more: then what was typed would be a new one.
   */
  private static int number(
      Context ctx, ShowKit.Kit kit, String section, Map<String, String> typed) {
    if (ctx.pathParam("part").equals(NEW)) {
      return 0;
    }
    String was = typed.get(WAS);
    if (was == null) {
      return Frame.number(ctx, "part");
    }
    return kit.parts(section).stream().map(KitViews::name).toList().indexOf(was) + 1;
  }

  private static Entry.Fields part(ShowKit.Kit kit, String section, int number) {
    List<Entry> parts = kit.parts(section);
    if (number >= 1
        && number <= parts.size()
        && parts.get(number - 1) instanceof Entry.Fields fields) {
      return fields;
    }
    throw Refused.at(Place.NOWHERE, "part-not-there");
  }

  private void put(Context ctx) {
    String section = section(ctx);
    Map<String, String> typed = Forms.given(ctx);
    int edition = edition(typed);
    boolean copy = typed.remove("copy") != null;
    Map<String, String> shown = new LinkedHashMap<>(typed);
    typed.remove(WAS);
    int number = copy || ctx.pathParam("part").equals(NEW) ? 0 : Frame.number(ctx, "part");
    keep(
        ctx,
        () -> cases.putPart().put(bench(ctx), edition, section, number, typed),
        refused -> form(ctx, shown, Optional.of(within(refused, section))));
  }

  private void sayHead(Context ctx) {
    Map<String, String> typed = Forms.given(ctx);
    int edition = edition(typed);
    keep(
        ctx,
        () -> cases.sayHead().say(bench(ctx), edition, typed),
        refused -> all(ctx, typed, Optional.of(Sentences.refusal(refused))));
  }

  private void remove(Context ctx) {
    int edition = edition(Forms.given(ctx));
    String section = section(ctx);
    keep(
        ctx,
        () -> cases.removePart().remove(bench(ctx), edition, section, Frame.number(ctx, "part")),
        refused -> form(ctx, Map.of(), Optional.of(within(refused, section))));
  }

  /** A change, and then the list with it. */
  private static void keep(Context ctx, Runnable change, Consumer<Refused> again) {
    Runnable listed =
        () -> {
          change.run();
          ctx.redirect(base(ctx), HttpStatus.SEE_OTHER);
        };
    Forms.take(ctx, listed, again);
  }

  private void restore(Context ctx) {
    Kept.Edition kept = cases.restoreEdition().restore(bench(ctx), Frame.number(ctx, "number"));
    ctx.redirect(base(ctx) + "#edition-" + kept.number(), HttpStatus.SEE_OTHER);
  }

  private static int edition(Map<String, String> typed) {
    String edition = typed.remove(EDITION);
    return edition != null && edition.matches("\\d{1,9}") ? Integer.parseInt(edition) : 0;
  }

  /** The path of a field that lacks in the part of this path. */
  private static String missing(Refused refused, String part) {
    return refused.saying().args().get(0) instanceof Arg.Word name && !part.endsWith(name.text())
        ? part + (part.isEmpty() ? "" : ".") + name.text()
        : part;
  }

  /** The refusal of the whole document, told of the form's own field. */
  private static Sentences.Refusal within(Refused refused, String section) {
    Sentences.Refusal said = Sentences.refusal(refused);
    Place place = said.place();
    String own =
        said.code().equals("name-twice")
            ? "name"
            : place.field().replaceFirst("^" + section + "\\[\\d+]\\.?", "");
    String missing = said.code().equals("field-missing") ? missing(refused, own) : own;
    return new Sentences.Refusal(said.code(), said.text(), said.remedy(), place.field(missing));
  }
}
