package org.shopclime.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/** JSON as text for a person: two spaces a level, and on one line what fits on one line. */
final class JsonText {

  private static final int WIDTH = 110;

  private JsonText() {}

  /**
   * The text of a document.
   *
   * @param root its outermost value
   * @return text that ends with a line break
   */
  static String of(JsonNode root) {
    StringBuilder text = new StringBuilder();
    append(text, root, "", 0);
    return text.append('\n').toString();
  }

  private static void append(StringBuilder text, JsonNode node, String indent, int column) {
    String line = line(node);
    boolean simple = !node.isContainerNode() || node.isEmpty();
    if (simple || (!indent.isEmpty() && column + line.length() <= WIDTH)) {
      text.append(line);
      return;
    }
    String deeper = indent + "  ";
    String between = "";
    text.append(node.isArray() ? '[' : '{');
    if (node.isArray()) {
      for (JsonNode element : node) {
        text.append(between).append('\n').append(deeper);
        append(text, element, deeper, deeper.length());
        between = ",";
      }
    } else {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        String key = "\"" + field.getKey() + "\": ";
        text.append(between).append('\n').append(deeper).append(key);
        append(text, field.getValue(), deeper, deeper.length() + key.length());
        between = ",";
      }
    }
    text.append('\n').append(indent).append(node.isArray() ? ']' : '}');
  }

  private static String line(JsonNode node) {
    if (!node.isContainerNode()) {
      return node.toString();
    }
    StringBuilder text = new StringBuilder();
    String between = "";
    text.append(node.isArray() ? '[' : '{');
    if (node.isArray()) {
      for (JsonNode element : node) {
        text.append(between).append(line(element));
        between = ", ";
      }
    } else {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        text.append(between).append('"').append(field.getKey()).append("\": ");
        text.append(line(field.getValue()));
        between = ", ";
      }
    }
    return text.append(node.isArray() ? ']' : '}').toString();
  }
}
