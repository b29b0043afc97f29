package org.shopclime.shop;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/**
 * Makes shop records of a JSON tree, led by the records' components and {@link Say}. What cannot be
 * read is noted, and something stands in its place, so that the rest is read too.
 */
final class ShopReader {

  private static final int SHOWN = 60;

  private final UnitSystem units;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * A reader.
   *
   * @param units system in which complaints name bounds
   */
  ShopReader(UnitSystem units) {
    this.units = units;
  }

  /**
   * What was found wrong so far.
   *
   * @return problems in the order of the file
   */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /**
   * Reads a record.
   *
   * @param path where it stands; empty for the document
   * @param node what stands there
   * @param type record or sealed interface
   * @param <T> record or sealed interface
   * @return the record; of use only while {@link #problems} is empty
   */
  <T> T read(String path, JsonNode node, Class<T> type) {
    return type.cast(object(path, node, type));
  }

  /**
   * What an absent field means.
   *
   * @param field a field with a default
   * @return its value
   */
  static Object absent(Field field) {
    ShopReader reader = new ShopReader(UnitSystem.INCH_POUND);
    String otherwise = field.say().otherwise();
    JsonNodeFactory nodes = JsonNodeFactory.instance;
    JsonNode node =
        otherwise.equals("[]")
            ? nodes.arrayNode()
            : otherwise.equals("{}") ? nodes.objectNode() : nodes.textNode(otherwise);
    Object value = reader.value(field.name(), node, field.type(), field.say());
    if (!reader.problems.isEmpty()) {
      throw new IllegalStateException(reader.problems.get(0).sentence());
    }
    return value;
  }

  private Object value(String path, JsonNode node, Type type, Say say) {
    Class<?> raw = Field.raw(type);
    if (raw == Optional.class) {
      boolean none = node.isTextual() && node.asText().strip().equalsIgnoreCase("none");
      return none ? Optional.empty() : Optional.of(value(path, node, Field.inner(type), say));
    }
    if (raw == List.class) {
      return list(path, node, Field.inner(type), say);
    }
    if (raw == double.class || raw == Double.class) {
      return number(path, node, say);
    }
    if (raw == Span.class) {
      return span(path, node, say);
    }
    if (raw == String.class) {
      if (!node.isTextual()) {
        return bad(path, node, "a text in quotes", raw);
      }
      return node.asText().equals("-") ? "" : node.asText();
    }
    if (raw == Schedule.class) {
      String text = node.isTextual() ? node.asText() : "";
      Optional<Schedule> schedule = ScheduleText.read(text);
      return schedule.isPresent() ? schedule.get() : bad(path, node, ScheduleText.takes(text), raw);
    }
    if (raw.isEnum()) {
      Optional<?> constant = Words.read(raw, node.isTextual() ? node.asText() : "");
      return constant.isPresent()
          ? constant.get()
          : bad(path, node, "one of " + BriefText.quoted(Words.all(raw)), raw);
    }
    return object(path, node, raw);
  }

  private Object list(String path, JsonNode node, Type inner, Say say) {
    if (!node.isArray()) {
      return bad(path, node, "a list in square brackets", List.class);
    }
    List<Object> elements = new ArrayList<>();
    for (JsonNode element : node) {
      elements.add(value(path + "[" + elements.size() + "]", element, inner, say));
    }
    return elements;
  }

  private double number(String path, JsonNode node, Say say) {
    Reading reading = Quantities.read(say.kind(), text(node));
    if (!node.isTextual() && !node.isNumber()) {
      problems.add(new Problem(path, shown(node), Bounds.takes(say, units)));
      return Double.NaN;
    }
    if (!(reading instanceof Reading.Good good)) {
      problems.add(new Problem(path, shown(node), Bounds.takes(say, units)));
      return Double.NaN;
    }
    // adding 0 turns -0, which would not be equal to 0 in a record, into 0
    double si = good.si() + 0.0;
    if (!Bounds.holds(say, si)) {
      problems.add(new Problem(path, shown(node), Bounds.takes(say, units)));
      return Double.NaN;
    }
    return si;
  }

  private Object span(String path, JsonNode node, Say say) {
    boolean mayBeUnknown = say.unknown().length == 3;
    int before = problems.size();
    List<Double> ends = new ArrayList<>();
    if (node.isTextual() && mayBeUnknown && Words.isUnknown(node.asText())) {
      return unknown(say);
    }
    if (node.isObject()) {
      List<String> names = List.of("low", "likely", "high");
      refuseOthers(path, node, names);
      for (String name : names) {
        if (node.has(name)) {
          ends.add(number(path + "." + name, node.get(name), say));
        } else {
          problems.add(new Problem(path + "." + name, "nothing", Bounds.takes(say, units)));
        }
      }
    } else {
      double si = number(path, node, say);
      Collections.addAll(ends, si, si, si);
      if (problems.size() > before && mayBeUnknown) {
        Problem last = problems.remove(problems.size() - 1);
        String takes = last.takes() + ", or \"" + Words.UNKNOWN + "\"";
        problems.add(new Problem(last.path(), last.found(), takes));
      }
    }
    if (problems.size() > before) {
      return standIn(Span.class);
    }
    if (!(ends.get(0) <= ends.get(1) && ends.get(1) <= ends.get(2))) {
      return bad(path, node, "low, likely and high in rising order", Span.class);
    }
    return new Span(ends.get(0), ends.get(1), ends.get(2));
  }

  /**
   * The span that "don't know" means.
   *
   * @param say annotation with three texts
   * @return low, likely and high
   */
  static Span unknown(Say say) {
    double[] ends = new double[3];
    for (int i = 0; i < 3; i++) {
      if (!(Quantities.read(say.kind(), say.unknown()[i]) instanceof Reading.Good good)) {
        throw new IllegalStateException(say.label() + ": " + say.unknown()[i]);
      }
      ends[i] = good.si();
    }
    return new Span(ends[0], ends[1], ends[2]);
  }

  private Object object(String path, JsonNode node, Class<?> type) {
    JsonNode full = node;
    if (node.isTextual() && BriefText.isTaken(type)) {
      full = BriefText.read(type, node.asText()).map(JsonNode.class::cast).orElse(node);
    }
    if (!full.isObject()) {
      Optional<String> brief = BriefText.takes(type, text(node));
      return bad(path, node, brief.map(text -> text + ", or ").orElse("") + fieldsOf(type), type);
    }
    if (!type.isSealed()) {
      return record(path, full, type, List.of());
    }
    List<String> kinds = new ArrayList<>();
    for (Class<?> permitted : type.getPermittedSubclasses()) {
      kinds.add(Words.kind(permitted));
      if (Words.kind(permitted).equals(full.path("kind").asText(""))) {
        return record(path, full, permitted, List.of("kind"));
      }
    }
    String at = path + ".kind";
    String takes = "one of " + BriefText.quoted(kinds);
    if (full.has("kind")) {
      return bad(at, full.get("kind"), takes, type);
    }
    problems.add(new Problem(at, "nothing", takes));
    return standIn(type);
  }

  private Object record(String path, JsonNode node, Class<?> type, List<String> besides) {
    List<String> known = new ArrayList<>(besides);
    List<Object> values = new ArrayList<>();
    List<Field> fields = Field.of(type);
    fields.forEach(field -> known.add(field.name()));
    if (type == Shop.class) {
      known.add(ShopFile.VERSION_FIELD);
    }
    refuseOthers(path, node, known);
    for (int i = 0; i < fields.size(); i++) {
      Field field = fields.get(i);
      String at = path.isEmpty() ? field.name() : path + "." + field.name();
      if (node.has(field.name())) {
        values.add(value(at, node.get(field.name()), field.type(), field.say()));
      } else if (field.hasDefault()) {
        values.add(Field.absent(type).get(i).orElseThrow());
      } else {
        problems.add(new Problem(at, "nothing", takes(field)));
        values.add(standIn(field.type()));
      }
    }
    return Field.create(type, values);
  }

  private void refuseOthers(String path, JsonNode node, List<String> known) {
    Set<String> others = new TreeSet<>();
    node.fieldNames().forEachRemaining(others::add);
    known.forEach(others::remove);
    for (String other : others) {
      String at = path.isEmpty() ? other : path + "." + other;
      String nearest = BriefText.quoted(Nearest.to(other, known, 3));
      problems.add(new Problem(at, "an unknown field", "known ones, nearest first: " + nearest));
    }
  }

  /** What a field takes, found by offering it something that nothing takes. */
  private String takes(Field field) {
    ShopReader reader = new ShopReader(units);
    reader.value("", JsonNodeFactory.instance.booleanNode(false), field.type(), field.say());
    return reader.problems.get(0).takes();
  }

  private static String fieldsOf(Class<?> type) {
    List<String> names = new ArrayList<>();
    if (type.isSealed()) {
      return "an object with \"kind\" and what belongs to it";
    }
    Field.of(type).stream().filter(f -> !f.hasDefault()).forEach(f -> names.add(f.name()));
    return names.isEmpty()
        ? "an object in curly brackets"
        : "an object in curly brackets with " + BriefText.quoted(names);
  }

  private Object bad(String path, JsonNode node, String takes, Class<?> type) {
    problems.add(new Problem(path, shown(node), takes));
    return standIn(type);
  }

  /** Something of the type, so that reading can go on; NaN fails no later comparison. */
  private static Object standIn(Type type) {
    Class<?> raw = Field.raw(type);
    if (raw == Optional.class) {
      return Optional.empty();
    }
    if (raw == List.class) {
      return List.of();
    }
    if (raw == double.class || raw == Double.class) {
      return Double.NaN;
    }
    if (raw == Span.class) {
      return Span.known(0);
    }
    if (raw == Schedule.class) {
      return ScheduleText.never();
    }
    if (raw == String.class) {
      return "";
    }
    if (raw.isEnum()) {
      return raw.getEnumConstants()[0];
    }
    if (raw.isSealed()) {
      return standIn(raw.getPermittedSubclasses()[0]);
    }
    List<Object> values = new ArrayList<>();
    Field.of(raw).forEach(field -> values.add(standIn(field.type())));
    return Field.create(raw, values);
  }

  private static String text(JsonNode node) {
    return node.isValueNode() ? node.asText() : "";
  }

  /**
   * A value as it stands in the file, cut short.
   *
   * @param node value
   * @return text for {@link Problem#found}
   */
  static String shown(JsonNode node) {
    if (node.isObject()) {
      return "an object";
    }
    if (node.isArray()) {
      return "a list";
    }
    String text = node instanceof TextNode ? "\"" + node.asText() + "\"" : node.toString();
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
  }
}
