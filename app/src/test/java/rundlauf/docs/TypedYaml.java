package rundlauf.docs;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** YAML as our files mean it: every scalar is text. */
final class TypedYaml {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  private TypedYaml() {}

  static JsonNode read(String text) {
    return new Compose(LoadSettings.builder().build())
        .composeString(text)
        .map(TypedYaml::json)
        .orElseThrow(() -> new IllegalArgumentException("the document is empty"));
  }

  private static JsonNode json(Node node) {
    if (node instanceof MappingNode mapping) {
      ObjectNode fields = MAKE.objectNode();
      mapping
          .getValue()
          .forEach(pair -> fields.set(key(pair.getKeyNode()), json(pair.getValueNode())));
      return fields;
    }
    if (node instanceof SequenceNode sequence) {
      ArrayNode items = MAKE.arrayNode();
      sequence.getValue().forEach(item -> items.add(json(item)));
      return items;
    }
    return MAKE.textNode(key(node));
  }

  private static String key(Node node) {
    return ((ScalarNode) node).getValue();
  }
}
