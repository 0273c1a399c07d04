package rundlauf.render.workbook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rundlauf.guide.Asked;
import rundlauf.guide.Given;
import rundlauf.guide.Step;
import rundlauf.render.Charts;
import rundlauf.render.Wording;
import rundlauf.report.LivePart;
import rundlauf.report.Section;

/** A sheet as its script is given it: the steps that come, and pieces of the page ready made. */
public final class SheetDocument {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Wording words;

  private SheetDocument(Wording words) {
    this.words = words;
  }

  /** The document on one line. */
  public static String of(SheetView view, Wording words) {
    return new SheetDocument(words).text(view);
  }

  private String text(SheetView view) {
    Section live = LivePart.of(view.outcome(), view.earlier(), view.begun());
    ObjectNode node = NODES.objectNode();
    node.put("version", view.version());
    node.put("done", view.guidance().done());
    node.put("intended", view.guidance().intended());
    node.put("lastKey", view.lastKey());
    addKeys(node, view.rows());
    ArrayNode steps = node.putArray("steps");
    view.guidance().ahead().forEach(step -> steps.add(step(step)));
    node.set("more", step(view.guidance().more()));
    ArrayNode standing = node.putArray("standing");
    view.standing().forEach(saying -> standing.add(words.say(saying)));
    node.put("soFar", piece("live", Map.of("section", live)));
    node.put("kept", piece("rows", Map.of("view", view)));
    node.put("advice", piece("advice", Map.of("guidance", view.guidance())));
    try {
      node.set("charts", JSON.readTree(Charts.of(List.of(live), words)));
      return JSON.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a sheet that cannot be written", e);
    }
  }

  private static void addKeys(ObjectNode node, List<SheetView.Row> rows) {
    ArrayNode keys = node.putArray("keys");
    ArrayNode struck = node.putArray("struck");
    for (SheetView.Row row : rows) {
      keys.add(row.key());
      if (row.struck().isPresent()) {
        struck.add(row.key());
      }
    }
  }

  private String piece(String template, Map<String, Object> given) {
    Map<String, Object> all = new LinkedHashMap<>(given);
    all.put("words", words);
    return Pages.of(template, all);
  }

  private ObjectNode step(Step step) {
    ObjectNode node = NODES.objectNode();
    node.put("prompt", words.say(step.prompt()));
    node.put("drawing", Scenes.svg(step.scene(), words));
    ArrayNode given = node.putArray("given");
    step.given().forEach(g -> given.add(given(g)));
    ArrayNode asked = node.putArray("asked");
    step.asked().forEach(a -> asked.add(asked(a)));
    return node;
  }

  private ObjectNode given(Given given) {
    return NODES
        .objectNode()
        .put("column", given.column())
        .put("label", words.column(given.column()))
        .put("text", given.text());
  }

  private JsonNode asked(Asked asked) {
    ObjectNode node = NODES.objectNode();
    node.put("column", asked.column());
    node.put("label", words.column(asked.column()));
    node.put("kind", asked.kind().name().toLowerCase(Locale.ROOT));
    node.put("needed", asked.needed());
    ArrayNode choices = node.putArray("choices");
    asked
        .choices()
        .forEach(
            choice ->
                choices.add(
                    NODES
                        .objectNode()
                        .put("value", choice)
                        .put("label", words.choice(asked.column(), choice))));
    return node;
  }
}
