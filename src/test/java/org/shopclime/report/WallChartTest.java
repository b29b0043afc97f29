package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampSpell;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Examples;
import org.shopclime.shop.HumidityClass;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.WinterAir;

/** Damp in the walls as it is drawn, written and told to machines. */
class WallChartTest {

  private static SizeAnswer answer;

  @BeforeAll
  static void ask() {
    answer =
        new Sizing(Examples.shop(Examples.USUAL), Climates.load())
            .answer(List.of(), Progress.silent());
  }

  private static DampFinding wet() {
    return answer.damp().orElseThrow().findings().stream()
        .filter(each -> each.kind() == DampFinding.Kind.CONDENSES)
        .filter(each -> each.path().component().name().equals("North wall"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void linesMeetWhereWaterFallsOutAndNowhereElse() {
    DampPath path = wet().path();
    DampSpell spell = wet().worst().orElseThrow();
    JFreeChart chart = WallChart.of(path, spell, UnitSystem.INCH_POUND, ChartLook.light());
    XYDataset data = ((XYPlot) chart.getPlot()).getDataset();
    NumberAxis depth = (NumberAxis) ((XYPlot) chart.getPlot()).getDomainAxis();
    assertThat(depth.getNumberFormatOverride().format(-0.2)).as("a minus").isEqualTo("−0.2");
    NumberAxis degrees = (NumberAxis) ((XYPlot) chart.getPlot()).getRangeAxis();
    assertThat(degrees.getNumberFormatOverride().format(-10)).isEqualTo("−10");
    assertThat(data.getSeriesKey(0).toString()).isEqualTo("Temperature");
    assertThat(data.getItemCount(2)).as("rings").isEqualTo(1);
    // siding 0.437 in and OSB 0.437 in lie before the batts
    assertThat(data.getXValue(2, 0)).isCloseTo(0.874, within(0.002));
    for (int i = 0; i < data.getItemCount(0); i++) {
      for (int j = 0; j < data.getItemCount(1); j++) {
        if (data.getXValue(0, i) == data.getXValue(1, j)) {
          double above = data.getYValue(0, i) - data.getYValue(1, j);
          boolean ring = data.getXValue(0, i) == data.getXValue(2, 0);
          if (ring) {
            assertThat(above).isCloseTo(0, within(1e-9));
          } else {
            assertThat(above).isPositive();
          }
        }
      }
    }
    assertThat(((XYPlot) chart.getPlot()).getDomainAxis().getLabel()).contains("in (layers");
    assertThat(WallChart.caption(path, spell, UnitSystem.INCH_POUND))
        .startsWith("North wall, between the framing, mean of January: outdoors 47 °F");
  }

  @Test
  void textTellsWhatWasTakenAndLeftOut() {
    List<String> lines = DampText.lines(answer, UnitSystem.INCH_POUND);
    assertThat(String.join("\n", lines))
        .contains("North wall (between the framing): At the dew point between the OSB and the")
        .contains("no condensation found by this method; that does not make the wall safe.")
        .contains("Taken: the room day and night at 78 °F and 50 % humidity")
        .contains("ISO 13788, class 2")
        .contains("air leaking through the wall")
        .contains("building code");
    assertThat(SizeText.of(answer, UnitSystem.INCH_POUND)).contains("\nDamp in the walls\n- ");
    assertThat(new SizePage(answer, UnitSystem.SI, false).text(List.of("a.csv")))
        .contains("<h2>Damp in the walls</h2>");
  }

  @Test
  void textTellsTheOwnersHumidityAndClass() {
    Shop shop = answer.shop();
    List<Room> rooms = new ArrayList<>(shop.rooms());
    rooms.set(
        0, rooms.get(0).withWinterAir(new WinterAir(HumidityClass.CLASS_4, Optional.of(0.55))));
    assertThat(
            DampText.taken(
                shop.withRooms(rooms), answer.damp().orElseThrow(), UnitSystem.INCH_POUND))
        .contains(
            "with the humidity of 55 % you typed while it is heated, else vapor of up to 1080")
        .contains("(ISO 13788, class 4;");
  }

  @Test
  void machinesAreToldEachPath() throws JsonProcessingException {
    JsonNode json = new ObjectMapper().readTree(SizeJson.of(answer));
    assertThat(json.path("damp")).hasSize(answer.damp().orElseThrow().findings().size());
    JsonNode wall = json.path("damp").get(0);
    assertThat(wall.path("face").asText()).isEqualTo("West wall");
    assertThat(wall.path("path").asText()).isEqualTo("rooms[0].faces[0]");
    assertThat(wall.path("layers")).hasSize(4);
    assertThat(wall.path("times")).hasSize(14);
    assertThat(wall.path("times").get(0).path("layerFacesF")).hasSize(5);
    boolean wet = false;
    for (JsonNode each : json.path("damp")) {
      wet |= each.path("found").asText().equals("condenses");
      if (each.path("found").asText().equals("condenses")) {
        assertThat(each.path("layer").asText()).startsWith("between the ");
        assertThat(each.path("mostGramsM2").isNumber()).isTrue();
        assertThat(each.path("driesOut").isBoolean()).isTrue();
      }
    }
    assertThat(wet).isTrue();
    assertThat(json.path("dampAir")).hasSize(14);
    assertThat(json.path("warnings").toString()).contains("between the OSB and the insulation");
  }
}
