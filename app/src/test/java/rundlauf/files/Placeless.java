package rundlauf.files;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Place;

/**
 * What something says, without where it stands: lines and columns move when a file is rewritten.
 */
final class Placeless {
  private static final List<String> WHERE = List.of("line", "keyPlaces");

  private Placeless() {}

  static Object of(Object value) {
    if (value instanceof Record record) {
      return ofRecord(record);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(Placeless::of).toList();
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream().map(e -> List.of(e.getKey(), of(e.getValue()))).toList();
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(Placeless::of);
    }
    return value instanceof Measured m ? List.of(m.value(), m.unit(), m.effects()) : value;
  }

  private static Object ofRecord(Record record) {
    List<Object> parts = new ArrayList<>(List.of(record.getClass().getSimpleName()));
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      if (component.getType() != Place.class && !WHERE.contains(component.getName())) {
        parts.add(of(read(component, record)));
      }
    }
    return parts;
  }

  private static Object read(RecordComponent component, Record record) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
