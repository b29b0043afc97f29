package org.shopclime.shop;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

/** Makes a JSON tree of shop records; what is as it would be if absent is left out. */
final class ShopWriter {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final UnitSystem units;

  /**
   * A writer.
   *
   * @param units system of units
   */
  ShopWriter(UnitSystem units) {
    this.units = units;
  }

  /**
   * Adds the fields of a record.
   *
   * @param record record
   * @param object object to add to
   */
  void add(Record record, ObjectNode object) {
    List<Field> fields = Field.of(record.getClass());
    List<Object> values = Field.values(record);
    List<Optional<Object>> absents = Field.absent(record.getClass());
    for (int i = 0; i < values.size(); i++) {
      Field field = fields.get(i);
      Object value = values.get(i);
      boolean absent = absents.get(i).map(value::equals).orElse(false);
      if (!absent) {
        object.set(field.name(), node(value, field.say()));
      }
    }
  }

  private JsonNode node(Object value, Say say) {
    if (value instanceof Optional<?> optional) {
      return optional.map(held -> node(held, say)).orElseGet(() -> NODES.textNode("none"));
    }
    if (value instanceof List<?> list) {
      ArrayNode array = NODES.arrayNode();
      list.forEach(element -> array.add(node(element, say)));
      return array;
    }
    if (value instanceof Double number) {
      return number(number, say);
    }
    if (value instanceof Span span) {
      return span(span, say);
    }
    if (value instanceof String text) {
      return NODES.textNode(text.isEmpty() ? "-" : text);
    }
    if (value instanceof Schedule schedule) {
      return NODES.textNode(ScheduleText.write(schedule));
    }
    if (value instanceof Enum<?> constant) {
      return NODES.textNode(Words.of(constant));
    }
    Optional<String> brief = BriefText.write(value, units);
    if (brief.isPresent()) {
      return NODES.textNode(brief.get());
    }
    ObjectNode object = NODES.objectNode();
    if (value.getClass().getInterfaces().length > 0) {
      object.put("kind", Words.kind(value.getClass()));
    }
    add((Record) value, object);
    return object;
  }

  private JsonNode number(double si, Say say) {
    if (say.kind() != Kind.COUNT) {
      return NODES.textNode(Quantities.exact(say.kind(), si, units));
    }
    boolean whole = si == Math.rint(si) && Math.abs(si) < 1e15;
    return whole ? NODES.numberNode((long) si) : NODES.numberNode(si);
  }

  private JsonNode span(Span span, Say say) {
    if (say.unknown().length == 3 && span.equals(ShopReader.unknown(say))) {
      return NODES.textNode(Words.UNKNOWN);
    }
    if (span.isKnown()) {
      return number(span.likely(), say);
    }
    ObjectNode object = NODES.objectNode();
    object.set("low", number(span.low(), say));
    object.set("likely", number(span.likely(), say));
    object.set("high", number(span.high(), say));
    return object;
  }
}
