package org.shopclime.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.shop.Examples;

class AirlineVerbTest {

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("shop.json"), text);
  }

  @Test
  void jsonHoldsWhatIsPromised() throws IOException {
    CommandsTest.Outcome outcome = CommandsTest.run("airline", "--json");
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.code()).isZero();
    JsonNode root = new ObjectMapper().readTree(outcome.out());
    assertThat(root.at("/placements")).hasSize(13);
    int rank = 1;
    for (JsonNode place : root.at("/placements")) {
      assertThat(place.at("/name").textValue()).isNotBlank();
      assertThat(place.at("/rank").intValue()).isEqualTo(rank++);
      assertThat(place.at("/reason").textValue()).isNotBlank();
      assertThat(place.at("/holds").isBoolean()).isTrue();
      for (String key :
          List.of(
              "placePeakF",
              "roomLoadBtuh",
              "indoorPeakF",
              "tankWaterGramsPerHour",
              "lineWaterGramsPerHour",
              "pressureDewPointF",
              "coldestStretchF")) {
        assertThat(place.get(key).isNumber()).as(key).isTrue();
      }
      assertThat(place.at("/placeF")).hasSize(24);
      assertThat(place.at("/toRoomBtuh")).hasSize(24);
    }
    assertThat(root.at("/changes")).hasSize(7);
    assertThat(root.at("/blasting")).hasSize(7);
    assertThat(root.at("/ventCurve").size()).isGreaterThanOrEqualTo(6);
    assertThat(root.at("/limits").toString()).contains("Noise is not computed");
    List<String> bare = new ArrayList<>();
    JsonNode first = root.at("/placements/0");
    first
        .fieldNames()
        .forEachRemaining(
            key -> {
              if (first.get(key).isNumber() && !key.matches("rank|.*(Hour|F|Btuh|Kwh|Liters)")) {
                bare.add(key);
              }
            });
    assertThat(bare).isEmpty();
  }

  @Test
  void textSaysTheAnswerFirst() {
    Path report = folder.resolve("report");
    CommandsTest.Outcome outcome =
        CommandsTest.run("airline", "--units", "si", "--report", report.toString());
    assertThat(outcome.code()).isZero();
    assertThat(outcome.out()).contains("Report: " + report.resolve("air.html"));
    assertThat(report.resolve("air.html")).content().contains("Best place for the compressor");
    assertThat(report.resolve("air-places.csv")).content().startsWith("rank,place,placePeakC");
    List<String> lines = outcome.out().lines().toList();
    assertThat(lines.get(2)).startsWith("Best place for the compressor: ");
    assertThat(outcome.out())
        .contains("closed closet", "lean-to outside", "loft", "Take care", "Noise is not computed")
        .doesNotContain("°F");
  }

  @Test
  void aShopWithoutACompressorIsOneLine() throws IOException {
    String text =
        Examples.text("insulated").replaceAll(",\\s*\\{\"kind\": \"compressor\"[^}]*\\}", "");
    Path shop = file(text);
    CommandsTest.Outcome outcome = CommandsTest.run("airline", shop.toString());
    assertThat(outcome.code()).isZero();
    assertThat(outcome.out().lines()).singleElement().asString().contains("no compressor");
    CommandsTest.Outcome json = CommandsTest.run("airline", shop.toString(), "--json");
    JsonNode root = new ObjectMapper().readTree(json.out());
    assertThat(root.at("/placements").isArray()).isTrue();
    assertThat(root.at("/placements")).isEmpty();
    assertThat(root.at("/answer").textValue()).contains("no compressor");
  }

  @Test
  void badCompressedAirIsToldLineByLine() throws IOException {
    String text =
        Examples.text("insulated")
            .replaceFirst(
                "\"rooms\"",
                "\"air\": {\"pressure\": \"125 ft\", \"tank\": \"-3 gal\", \"stages\": \"three\","
                    + " \"hose\": 1}, \"rooms\"");
    CommandsTest.Outcome outcome = CommandsTest.run("airline", file(text).toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines())
        .hasSize(4)
        .anyMatch(line -> line.startsWith("air.pressure: found \"125 ft\"; takes a pressure"))
        .anyMatch(line -> line.startsWith("air.tank: found \"-3 gal\""))
        .anyMatch(line -> line.startsWith("air.stages: found \"three\""))
        .anyMatch(line -> line.startsWith("air.hose"));
  }

  @Test
  void toolsFitIntoAnHour() throws IOException {
    String text =
        Examples.text("insulated")
            .replaceFirst(
                "\"rooms\"",
                "\"air\": {\"tools\": {\"sanding\": \"40 min\", \"spraying\": \"30 min\"}},"
                    + " \"rooms\"");
    CommandsTest.Outcome outcome = CommandsTest.run("airline", file(text).toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.err().lines())
        .containsExactly(
            "air.tools: found 70 min together; takes at most 60 min: tools are used one after the"
                + " other");
  }
}
