package rundlauf.files;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Builds the document from the parser's events: nothing is kept that was not first checked. */
final class YamlReader {
  private final String file;
  private final Iterator<Event> events;
  private final Map<Place, ScalarStyle> blocks = new LinkedHashMap<>();
  private int parts;

  YamlReader(String text, String file) {
    this.file = file;
    LoadSettings settings =
        LoadSettings.builder().setCodePointLimit((int) Bounds.YAML_BYTES).build();
    this.events = new Parse(settings).parseString(text).iterator();
  }

  YamlDocument document() {
    try {
      return whole();
    } catch (MarkedYamlEngineException wrong) {
      throw YamlMistake.of(wrong, file);
    } catch (YamlVersionException wrong) {
      throw Refused.at(at(0, 0, ""), "yaml-directive");
    } catch (YamlEngineException wrong) {
      throw Refused.at(nowhere(), "yaml-not-read", Arg.typed(String.valueOf(wrong.getMessage())));
    }
  }

  private YamlDocument whole() {
    events.next(); // the stream's start
    if (!(events.next() instanceof DocumentStartEvent head)) {
      throw Refused.at(nowhere(), "document-empty");
    }
    if (head.getSpecVersion().isPresent()) {
      throw Refused.at(at(0, 0, ""), "yaml-directive");
    }
    Event first = events.next();
    if (!(first instanceof MappingStartEvent)) {
      boolean empty = first instanceof ScalarEvent s && s.getValue().isBlank();
      refuseMarks(first, "");
      throw Refused.at(place(first, ""), empty ? "document-empty" : "document-without-fields");
    }
    Entry.Fields fields = (Entry.Fields) entry(first, "", false, 1);
    events.next(); // the document's end
    Event after = events.next();
    if (after.getEventId() != Event.ID.StreamEnd) {
      throw Refused.at(place(after, ""), "yaml-second-document");
    }
    return new YamlDocument(fields, blocks);
  }

  private Entry entry(Event event, String path, boolean flow, int depth) {
    refuseMarks(event, path);
    if (depth > Bounds.DEPTH) {
      throw Refused.at(place(event, path), "document-too-deep", Arg.of(Bounds.DEPTH));
    }
    if (++parts > Bounds.PARTS) {
      throw Refused.at(place(event, path), "document-too-many", Arg.of(Bounds.PARTS));
    }
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar, path, flow);
    }
    CollectionStartEvent start = (CollectionStartEvent) event;
    boolean inFlow = flow || start.getFlowStyle() == FlowStyle.FLOW;
    return event instanceof MappingStartEvent
        ? fields(event, path, inFlow, depth)
        : items(event, path, inFlow, depth);
  }

  private Entry scalar(ScalarEvent scalar, String path, boolean flow) {
    Place place = place(scalar, path);
    if (scalar.isLiteral() || scalar.isFolded()) {
      blocks.put(place, scalar.getScalarStyle());
    }
    return new Entry.Scalar(scalar.getValue(), flow && scalar.isPlain(), place);
  }

  private Entry items(Event start, String path, boolean flow, int depth) {
    List<Entry> items = new ArrayList<>();
    for (Event e = events.next(); e.getEventId() != Event.ID.SequenceEnd; e = events.next()) {
      items.add(entry(e, path + "[" + items.size() + "]", flow, depth + 1));
    }
    return new Entry.Items(items, place(start, path));
  }

  private Entry fields(Event start, String path, boolean flow, int depth) {
    Map<String, Entry> fields = new LinkedHashMap<>();
    Map<String, Place> keys = new LinkedHashMap<>();
    for (Event e = events.next(); e.getEventId() != Event.ID.MappingEnd; e = events.next()) {
      String name = key(e, path, flow, keys);
      String inner = inner(path, name);
      keys.put(name, place(e, inner));
      fields.put(name, entry(events.next(), inner, flow, depth + 1));
    }
    return new Entry.Fields(fields, keys, place(start, path));
  }

  private static String inner(String path, String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  private String key(Event event, String path, boolean flow, Map<String, Place> before) {
    refuseMarks(event, path);
    if (!(event instanceof ScalarEvent scalar)) {
      throw Refused.at(place(event, path), "yaml-key-not-a-name");
    }
    String name = scalar.getValue();
    Place place = place(event, path);
    if (name.length() > Bounds.NAME) {
      throw Refused.at(place, "field-name-too-long", Arg.of(Bounds.NAME));
    }
    if (scalar.isPlain() && name.equals("<<")) {
      throw Refused.at(place, "yaml-merge-key");
    }
    Place first = before.get(name);
    // what a decimal comma leaves over may well stand twice: 1,5 mm and 2,5 mm
    if (first != null && flow && name.matches("\\d.*")) {
      throw Refused.at(place, "comma-parted", Arg.typed(name));
    }
    if (first != null) {
      Place second = place(event, inner(path, name));
      throw Refused.at(second, "field-twice", Arg.typed(name), Arg.of(first.line()));
    }
    return name;
  }

  private void refuseMarks(Event event, String path) {
    if (event.getEventId() == Event.ID.Alias) {
      throw Refused.at(place(event, path), "yaml-alias");
    }
    if (event instanceof org.snakeyaml.engine.v2.events.NodeEvent node
        && node.getAnchor().isPresent()) {
      throw Refused.at(
          place(event, path), "yaml-anchor", Arg.typed("&" + node.getAnchor().get().getValue()));
    }
    Optional<String> tag =
        event instanceof ScalarEvent s
            ? s.getTag()
            : event instanceof CollectionStartEvent c ? c.getTag() : Optional.empty();
    if (tag.isPresent()) {
      throw Refused.at(
          place(event, path), "yaml-tag", Arg.typed(tag.get().replace("tag:yaml.org,2002:", "!!")));
    }
  }

  private Place place(Event event, String path) {
    return event
        .getStartMark()
        .map(m -> at(m.getLine(), m.getColumn(), path))
        .orElse(new Place(file, 0, 0, path));
  }

  /** The parser counts from 0. */
  private Place at(int line, int column, String path) {
    return new Place(file, line + 1, column + 1, path);
  }

  private Place nowhere() {
    return Place.of(file);
  }
}
