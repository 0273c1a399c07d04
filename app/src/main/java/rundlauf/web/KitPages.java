package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.KitForm;
import rundlauf.render.workbook.KitView;
import rundlauf.render.workbook.Pages;
import rundlauf.usecase.Kept;
import rundlauf.usecase.ShowKit;

/** What stands on a bench: spindles, holders, cutters and all the rest, each with its form. */
final class KitPages implements Group {
  private static final String KIT = "/bench/{bench}/kit";
  private static final String PART = KIT + "/{section}/{part}";
  private static final String EDITION = "edition";
  private static final String NEW = "new";

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
    return cases.shelf().bench(Frame.number(ctx, "bench"));
  }

  private static String base(Context ctx) {
    return "/bench/" + Frame.number(ctx, "bench") + "/kit";
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
    List<KitView.Section> sections = new ArrayList<>();
    for (String name : KitForm.names()) {
      List<String> parts = kit.parts(name).stream().map(KitPages::name).toList();
      sections.add(new KitView.Section(name, words.word("kit-" + name), parts));
    }
    List<KitView.Edition> editions =
        kit.editions().stream()
            .map(e -> new KitView.Edition(e.number(), e.at().toString(), e.document()))
            .toList();
    List<FormField> head = KitForm.head(kit.bench(), kit.document(), typed);
    Map<String, Object> given = given(ctx, words.word("workbook-page-kit"), words, head, refusal);
    given.put("view", new KitView(base(ctx), kit.edition(), sections, editions));
    ctx.html(Pages.of("kit", given));
  }

  private static String name(Entry part) {
    return part instanceof Entry.Fields fields ? EntryTexts.at(fields, "name") : "";
  }

  /** What every form is given; a refusal stands at its field where the form has it. */
  private Map<String, Object> given(
      Context ctx,
      String title,
      Wording words,
      List<FormField> fields,
      Optional<Sentences.Refusal> refusal) {
    List<FormField> shown = fields;
    if (refusal.isPresent()) {
      shown = fields.stream().map(field -> field.refusedBy(refusal.get())).toList();
    }
    boolean placed = shown.stream().anyMatch(field -> !field.refusal().isEmpty());
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.of(ctx, Frame.number(ctx, "bench"), title, "[]", words));
    given.put("fields", shown);
    given.put("refusal", placed ? "" : refusal.map(Sentences.Refusal::said).orElse(""));
    return given;
  }

  private void form(Context ctx, Map<String, String> typed, Optional<Sentences.Refusal> refusal) {
    String section = section(ctx);
    ShowKit.Kit kit = cases.showKit().show(bench(ctx));
    boolean fresh = ctx.pathParam("part").equals(NEW);
    Entry.Fields part = fresh ? nothing() : part(ctx, kit, section);
    Wording words = new Wording();
    String heading = fresh ? words.word("kit-new-" + section) : words.word("kit-one-" + section);
    List<FormField> fields = KitForm.of(section, kit.bench(), part, typed);
    Map<String, Object> given = given(ctx, heading, words, fields, refusal);
    given.put("action", base(ctx) + "/" + section + "/" + ctx.pathParam("part"));
    given.put("heading", heading);
    given.put("edition", kit.edition());
    given.put("fresh", fresh);
    given.put("mains", section.equals("spindles"));
    given.put("base", base(ctx));
    ctx.html(Pages.of("part", given));
  }

  private static Entry.Fields nothing() {
    return new Entry.Fields(new LinkedHashMap<>(), new LinkedHashMap<>(), Place.NOWHERE);
  }

  private static Entry.Fields part(Context ctx, ShowKit.Kit kit, String section) {
    int number = Frame.number(ctx, "part");
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
    Map<String, String> typed = Frame.fields(ctx);
    int edition = edition(typed);
    boolean copy = typed.remove("copy") != null;
    int number = copy || ctx.pathParam("part").equals(NEW) ? 0 : Frame.number(ctx, "part");
    try {
      cases.putPart().put(bench(ctx), edition, section, number, typed);
      ctx.redirect(base(ctx), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      form(ctx, typed, Optional.of(within(refused, section)));
    }
  }

  private void sayHead(Context ctx) {
    Map<String, String> typed = Frame.fields(ctx);
    int edition = edition(typed);
    try {
      cases.sayHead().say(bench(ctx), edition, typed);
      ctx.redirect(base(ctx), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      all(ctx, typed, Optional.of(Sentences.refusal(refused)));
    }
  }

  private void remove(Context ctx) {
    int edition = edition(Frame.fields(ctx));
    String section = section(ctx);
    cases.removePart().remove(bench(ctx), edition, section, Frame.number(ctx, "part"));
    ctx.redirect(base(ctx), HttpStatus.SEE_OTHER);
  }

  private void restore(Context ctx) {
    Kept.Edition kept = cases.restoreEdition().restore(bench(ctx), Frame.number(ctx, "number"));
    ctx.redirect(base(ctx) + "#edition-" + kept.number(), HttpStatus.SEE_OTHER);
  }

  private static int edition(Map<String, String> typed) {
    String edition = typed.remove(EDITION);
    return edition != null && edition.matches("\\d{1,9}") ? Integer.parseInt(edition) : 0;
  }

  /** The refusal of the whole document, told of the form's own field. */
  private static Sentences.Refusal within(Refused refused, String section) {
    Sentences.Refusal said = Sentences.refusal(refused);
    Place place = said.place();
    String own = place.field().replaceFirst("^" + section + "\\[\\d+]\\.?", "");
    return new Sentences.Refusal(said.code(), said.text(), said.remedy(), place.field(own));
  }
}
