package rundlauf.render;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import rundlauf.maths.Samples;
import rundlauf.report.Scale;

/** Numbers of a chart's data: the same digits as in its table. */
final class ChartNumbers {
  static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

  private ChartNumbers() {}

  static ArrayNode row(Samples si, Scale scale) {
    ArrayNode row = NODES.arrayNode();
    si.stream().forEach(x -> row.add(number(x, scale)));
    return row;
  }

  static JsonNode number(double si, Scale scale) {
    return NODES.numberNode(new BigDecimal(Digits.of(si, scale)));
  }
}
