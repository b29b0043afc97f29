package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The tree is that of Jackson's mapper, and damage is found at the same place. */
class JsonTreeTest {

  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final int EDITS = 2_000;

  /** What a reader made of a text: a tree, or where it found what damage. */
  private record Outcome(JsonNode tree, String damage) {}

  private interface Reader {
    JsonNode read(String text) throws JsonProcessingException;
  }

  private static Outcome outcome(Reader reader, String text) {
    try {
      return new Outcome(reader.read(text), "none");
    } catch (JsonProcessingException e) {
      JsonLocation place = e.getLocation(); // none where a text is nested too deep
      return new Outcome(null, place == null ? "" : place.getLineNr() + ", " + place.getColumnNr());
    }
  }

  private static void alike(String text) {
    assertThat(outcome(JsonTree::read, text)).as(text).isEqualTo(outcome(MAPPER::readTree, text));
  }

  @Test
  void smallTexts() {
    List.of(
            "",
            " ",
            "{}",
            "[]",
            "[1, -2, 0, 3000000000, -99999999999999999999]",
            "[1.5, 1e3, -0.0, 1e400, 2.50, 1E-7]",
            "[true, false, null, \"\", \"\\u00e9\\n\"]",
            "{\"a\": {\"a\": [{}, [], [[]]]}}",
            "{\"a\": 1, \"a\": 2}",
            "{\"a\": 1} 2",
            "{} x",
            "{\"a\": 1,}",
            "[1 2]",
            "[01]",
            "{\"a\"",
            "[".repeat(900) + "]".repeat(900),
            "[".repeat(2000))
        .forEach(JsonTreeTest::alike);
  }

  @Test
  void examplesWithLettersDroppedDoubledAndChanged() {
    Random random = new Random(20261127);
    List<String> texts = new ArrayList<>();
    for (String name : Examples.names()) {
      texts.add(Examples.text(name));
    }
    texts.forEach(JsonTreeTest::alike);
    for (int i = 0; i < EDITS; i++) {
      String text = texts.get(i % texts.size());
      int at = random.nextInt(text.length());
      String change =
          switch (random.nextInt(3)) {
            case 0 -> "";
            case 1 -> text.substring(at, at + 1).repeat(2);
            default -> String.valueOf("{}[]\",:0-e \\".charAt(random.nextInt(12)));
          };
      alike(text.substring(0, at) + change + text.substring(at + 1));
    }
  }
}
