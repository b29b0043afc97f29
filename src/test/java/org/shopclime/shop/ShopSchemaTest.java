package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The schema that travels with the program is the one the records make. */
class ShopSchemaTest {

  @Test
  void theShippedSchemaIsTheGeneratedOne() throws IOException {
    // if this fails after a change of the records, copy this file over the resource
    Path fresh = Path.of("target", "shop.schema.json");
    Files.writeString(fresh, ShopSchema.text());
    assertThat(ShopSchema.shipped()).as("differs from %s", fresh).isEqualTo(ShopSchema.text());
  }

  @Test
  void everyReferenceHasItsDefinition() throws JsonProcessingException {
    JsonNode schema = new ObjectMapper().readTree(ShopSchema.text());
    for (JsonNode reference : schema.findValues("$ref")) {
      String name = reference.asText().substring("#/$defs/".length());
      assertThat(schema.path("$defs").has(name)).as(name).isTrue();
    }
    assertThat(schema.path("required"))
        .extracting(JsonNode::asText)
        .containsExactly("shopclime", "name", "place", "work", "rooms");
  }
}
