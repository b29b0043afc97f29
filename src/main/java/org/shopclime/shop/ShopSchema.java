package org.shopclime.shop;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.UnitSystem;

/**
 * JSON Schema (draft 2020-12) of the shop file, made of the records. It is a little stricter than
 * the reader, which takes capitals and hyphens either way, and looser where fields must fit
 * together.
 */
public final class ShopSchema {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  private ShopSchema() {}

  /**
   * The schema that travels with the program.
   *
   * @return JSON
   */
  public static String shipped() {
    try (InputStream stream = ShopSchema.class.getResourceAsStream("shop.schema.json")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("shop.schema.json", e);
    }
  }

  /**
   * The schema as the records have it now.
   *
   * @return JSON, the same as {@link #shipped} unless a record has changed since
   */
  public static String text() {
    ShopSchema schema = new ShopSchema();
    ObjectNode root = NODES.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", "Shop file");
    ObjectNode shop = schema.object(Shop.class);
    ObjectNode version = NODES.objectNode().put("type", "integer");
    version.put("minimum", 1).put("maximum", ShopFile.VERSION);
    ObjectNode properties = NODES.objectNode();
    properties.set(ShopFile.VERSION_FIELD, version.put("description", "Version of the file."));
    properties.setAll((ObjectNode) shop.get("properties"));
    shop.set("properties", properties);
    ((ArrayNode) shop.get("required")).insert(0, ShopFile.VERSION_FIELD);
    root.setAll(shop);
    ObjectNode definitions = NODES.objectNode();
    schema.definitions.forEach(definitions::set);
    root.set("$defs", definitions);
    return JsonText.of(root);
  }

  private ObjectNode object(Class<?> record) {
    ObjectNode properties = NODES.objectNode();
    ArrayNode required = NODES.arrayNode();
    if (record.getInterfaces().length > 0) {
      properties.set("kind", NODES.objectNode().put("const", Words.kind(record)));
      required.add("kind");
    }
    for (Field field : Field.of(record)) {
      ObjectNode property = value(field.type(), field.say());
      property.put("description", description(field.type(), field.say()));
      if (field.hasDefault()) {
        String otherwise = field.say().otherwise();
        switch (otherwise) {
          case "[]" -> property.set("default", NODES.arrayNode());
          case "{}" -> property.set("default", NODES.objectNode());
          default -> property.put("default", otherwise);
        }
      } else {
        required.add(field.name());
      }
      properties.set(field.name(), property);
    }
    ObjectNode object = NODES.objectNode().put("type", "object");
    object.set("properties", properties);
    object.set("required", required);
    return object.put("additionalProperties", false);
  }

  private ObjectNode value(Type type, Say say) {
    Class<?> raw = Field.raw(type);
    ObjectNode node = NODES.objectNode();
    if (raw == Optional.class) {
      ObjectNode inner = value(Field.inner(type), say);
      return inner.has("type") ? inner : either(inner, NODES.objectNode().put("const", "none"));
    }
    if (raw == List.class) {
      node.put("type", "array").set("items", value(Field.inner(type), say));
      return node;
    }
    if (raw == double.class || raw == Double.class) {
      return number(say);
    }
    if (raw == Span.class) {
      ObjectNode ends = NODES.objectNode();
      ArrayNode names = NODES.arrayNode();
      for (String end : List.of("low", "likely", "high")) {
        ends.set(end, number(say));
        names.add(end);
      }
      ObjectNode object = NODES.objectNode().put("type", "object");
      object.set("properties", ends);
      object.set("required", names);
      return either(number(say), object.put("additionalProperties", false));
    }
    if (raw == String.class || raw == Schedule.class) {
      return node.put("type", "string");
    }
    if (raw.isEnum()) {
      ArrayNode words = NODES.arrayNode();
      Words.all(raw).forEach(words::add);
      node.set("enum", words);
      return node;
    }
    return reference(raw);
  }

  private ObjectNode reference(Class<?> type) {
    String name = type.getSimpleName();
    if (!definitions.containsKey(name)) {
      definitions.put(name, NODES.objectNode());
      definitions.put(name, definition(type));
    }
    return NODES.objectNode().put("$ref", "#/$defs/" + name);
  }

  private ObjectNode definition(Class<?> type) {
    ObjectNode full = type.isSealed() ? kinds(type) : object(type);
    Optional<String> brief =
        type == Glass.class ? Optional.of("a glass of the tables") : BriefText.takes(type, "");
    ObjectNode text = NODES.objectNode().put("type", "string");
    return brief.map(takes -> either(text.put("description", takes), full)).orElse(full);
  }

  private ObjectNode kinds(Class<?> type) {
    ArrayNode kinds = NODES.arrayNode();
    for (Class<?> kind : type.getPermittedSubclasses()) {
      kinds.add(reference(kind));
    }
    ObjectNode node = NODES.objectNode();
    node.set("oneOf", kinds);
    return node;
  }

  private static ObjectNode either(ObjectNode first, ObjectNode second) {
    ArrayNode forms = NODES.arrayNode().add(first).add(second);
    ObjectNode node = NODES.objectNode();
    node.set("anyOf", forms);
    return node;
  }

  private static ObjectNode number(Say say) {
    ObjectNode node = NODES.objectNode();
    if (say.kind() == Kind.COUNT || say.kind() == Kind.FRACTION || say.kind() == Kind.ANGLE) {
      node.set("type", NODES.arrayNode().add("string").add("number"));
      return node;
    }
    return node.put("type", "string");
  }

  private static String description(Type type, Say say) {
    Class<?> raw = type instanceof Class<?> plain ? plain : Field.raw(Field.inner(type));
    String text =
        say.label()
            + "."
            + (say.help().isEmpty() ? "" : " " + Help.in(say.help(), UnitSystem.INCH_POUND));
    if (raw == double.class || raw == Double.class || raw == Span.class) {
      text += " Takes " + Bounds.takesExactly(say, UnitSystem.INCH_POUND) + ".";
    }
    if (raw == Schedule.class) {
      text += " Takes " + ScheduleText.TAKES + ".";
    }
    return raw == Span.class && say.unknown().length == 3
        ? text + " Or \"" + Words.UNKNOWN + "\"."
        : text;
  }
}
