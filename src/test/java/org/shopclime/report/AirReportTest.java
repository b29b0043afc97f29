package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.ClosetWalls;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.quantity.UnitSystem;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The page on places for the compressor, its figures, its sentences. */
class AirReportTest {

  private static final AirlineAnswer ANSWER = MadeAir.answer();

  @TempDir Path folder;

  @Test
  void thePageIsWellFormedAndNamesItsFiles()
      throws IOException, ParserConfigurationException, SAXException {
    Path page = AirReport.write(ANSWER, UnitSystem.INCH_POUND, folder);
    String html = Files.readString(page);
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>", ""))));
    assertThat(document.getElementsByTagName("img").getLength()).isEqualTo(4);
    assertThat(document.getElementsByTagName("table").getLength()).isEqualTo(4);
    for (int i = 0; i < 4; i++) {
      assertThat(
              document
                  .getElementsByTagName("img")
                  .item(i)
                  .getAttributes()
                  .getNamedItem("alt")
                  .getNodeValue())
          .hasSizeGreaterThan(40);
    }
    for (String file :
        List.of(
            "air-closets.csv",
            "air-hours.csv",
            "air-line.csv",
            "air-places.csv",
            "air-vents.csv")) {
      assertThat(folder.resolve(file)).exists();
      assertThat(html).contains(file);
    }
    assertThat(new AirPage(ANSWER, UnitSystem.SI, false).text(List.of("a.csv")))
        .contains(HtmlReport.NO_CHARTS)
        .doesNotContain("<img");
  }

  @Test
  void figuresStandInTheFilesAsTheyAre() throws IOException {
    AirReport.write(ANSWER, UnitSystem.SI, folder, false);
    List<CSVRecord> places = rows("air-places.csv");
    assertThat(places).hasSize(14);
    assertThat(places.get(1).get(0)).isEqualTo("1");
    assertThat(places.get(1).get(1)).isEqualTo("closet with a fan from and to the room");
    // 103 °F
    assertThat(places.get(1).get(2)).isEqualTo("39.44");
    assertThat(places.get(12).get(0)).isEmpty();
    assertThat(rows("air-hours.csv")).hasSize(25);
    assertThat(rows("air-hours.csv").get(16).get(2)).isEqualTo("39.44");
    assertThat(rows("air-hours.csv").get(15).get(2)).isEqualTo("38.44");
    assertThat(rows("air-vents.csv").get(3).get(0)).isEqualTo("0.0929");
    List<CSVRecord> closets = rows("air-closets.csv");
    assertThat(closets).hasSize(1 + 3 * ANSWER.closets().size());
    // 112 °F and 4,400 BTU/h
    assertThat(closets.get(4).toList())
        .containsExactly("closet, grilles to room", "bare", "44.44", "1289.51", "26.67");
    assertThat(rows("air-line.csv")).hasSize(1 + 2 * ANSWER.changes().size());
  }

  @Test
  void whatPartitionsDoIsTold() {
    assertThat(AirTable.walls(ANSWER.closets(), UnitSystem.INCH_POUND))
        .startsWith(
            "R-13 in the partitions keeps at most 900 BTU/h out of the room (closed closet), and"
                + " makes the closet up to 34 °F hotter (closed closet).");
    ClosetWalls none = ANSWER.closets().get(1);
    ClosetWalls alike = new ClosetWalls(none.kind(), none.bare(), none.bare(), none.stair());
    assertThat(AirTable.walls(List.of(alike), UnitSystem.SI))
        .startsWith("R-13 in the partitions keeps hardly any of the heat out of the room. It pays");
    assertThat(AirlineText.of(ANSWER, UnitSystem.INCH_POUND)).contains("closet, vents of outdoors");
    assertThat(AirlineJson.of(java.util.Optional.of(ANSWER)))
        .contains("\"closetWalls\"", "\"kind\" : \"outdoor loop\"");
  }

  /** Text and page tell water in the unit asked for, and lines fit a terminal. */
  @Test
  void waterIsToldInTheUnitsAskedFor() {
    String inch = AirlineText.of(ANSWER, UnitSystem.INCH_POUND);
    String metric = AirlineText.of(ANSWER, UnitSystem.SI);
    // 58 g of 29.57 g a fluid ounce.
    assertThat(inch).contains("fl oz/h", "2.0 fl oz of water an hour", "quarts a day");
    assertThat(inch).doesNotContainPattern("\\d g\\b|g/h|grams|liters");
    assertThat(metric).contains("g/h", "58 g of water an hour", "liters a day");
    assertThat(metric).doesNotContain("fl oz").doesNotContain("quarts");
    assertThat((inch + metric).lines()).allMatch(line -> line.length() <= 100);
  }

  private List<CSVRecord> rows(String file) throws IOException {
    return CSVFormat.RFC4180.parse(Files.newBufferedReader(folder.resolve(file))).getRecords();
  }

  @Test
  void reasonsAreTellableInEveryCase() {
    AirReasons reasons = new AirReasons(ANSWER, UnitSystem.INCH_POUND);
    assertThat(reasons.why(MadeAir.place(ANSWER, Placement.Kind.FAN_TO_ROOM)))
        .isEqualTo(
            "Ranked above \"closet with grilles to the room\", whose place reaches 112 °F where the"
                + " machine takes 104 °F; here it is 103 °F.");
    assertThat(reasons.why(MadeAir.place(ANSWER, Placement.Kind.OUTDOOR_LOOP_FAN)))
        .isEqualTo(
            "Ranked below \"closet with a fan from and to the room\" because its place reaches 113 °F"
                + " where the machine takes 104 °F; there it is 103 °F.");
    assertThat(reasons.why(MadeAir.place(ANSWER, Placement.Kind.LOFT)))
        .isEqualTo(
            "Ranked below \"closet with a fan from and to the room\" because its place reaches 142 °F"
                + " where the machine takes 104 °F; there it is 103 °F.");
    assertThat(reasons.why(MadeAir.place(ANSWER, Placement.Kind.FAN_OUTDOORS)))
        .isEqualTo("Excluded because its draught sucks at the shop's flue.");
    assertThat(reasons.hazards()).hasSize(3);
    assertThat(String.join(" ", reasons.hazards()))
        .contains("OSHA 1910.107")
        .contains("NFPA 33")
        .contains("fire authority")
        .contains("licensed electrician")
        .contains("carbon monoxide")
        .contains("fuel-gas code");
    AirReasons safe = new AirReasons(MadeAir.answer(false), UnitSystem.SI);
    assertThat(safe.hazards()).isEmpty();
    // All but the best are told against it: those with a place too hot in one sentence, the others
    // each, and no name is left out.
    List<String> lines = safe.lines();
    String told = String.join("\n", lines);
    for (PlaceAnswer place : MadeAir.answer(false).places()) {
      assertThat(told).containsOnlyOnce(AirReasons.heading(place));
    }
    assertThat(lines).hasSizeLessThan(6);
    assertThat(lines.get(0)).startsWith("1. ").contains("ranked above");
    assertThat(lines.get(lines.size() - 1))
        .contains("hotter than the 40 °C the machine takes: ")
        .contains("Loft 61.1 °C");
    assertThat(safe.today().orElseThrow().placement().kind()).isEqualTo(Placement.Kind.IN_ROOM);
  }
}
