package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.quantity.UnitSystem;

/** Places of the compressor as they are drawn. */
class PlacesPictureTest {

  private static final AirlineAnswer ANSWER = MadeAir.answer();
  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

  @ParameterizedTest
  @CsvSource({"220, IP", "330, SI", "400, IP", "760, IP", "760, SI", "1300, IP", "2400, SI"})
  void lettersAreWholeAndLieOverNothing(int width, String system) {
    UnitSystem units = system.equals("SI") ? UnitSystem.SI : UnitSystem.INCH_POUND;
    PlacesPicture picture = new PlacesPicture(ANSWER, units, ChartLook.light());
    PlacesPicture.Layout layout = picture.layout(width);
    assertThat(layout.tiles()).hasSize(13);
    assertThat(layout.keys()).hasSize(3);
    List<Rectangle2D> all = new ArrayList<>();
    for (PlacesPicture.Tile tile : layout.tiles()) {
      assertThat(tile.box().getMaxX()).isLessThanOrEqualTo(width);
      assertThat(tile.box().getMaxY()).isLessThanOrEqualTo(layout.height());
      assertThat(tile.box().contains(tile.scene())).isTrue();
      for (PlacesPicture.Label label : tile.labels()) {
        assertThat(tile.box().contains(label.box())).as(label.text()).isTrue();
        assertThat(label.box().getWidth())
            .as(label.text())
            .isCloseTo(wide(label.text(), label.font()), within(0.01));
        all.add(label.box());
      }
      all.add(tile.scene());
    }
    layout.keys().forEach(key -> all.add(key.label().box()));
    layout.keys().forEach(key -> assertThat(key.label().box().getMaxX()).isLessThan(width));
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Rectangle2D shared = all.get(i).createIntersection(all.get(j));
        assertThat(Math.min(shared.getWidth(), shared.getHeight())).isLessThan(0.01);
      }
    }
  }

  private static double wide(String text, Font font) {
    return font.getStringBounds(text, MEASURE).getWidth();
  }

  @Test
  void eachTellsTemperatureWaterRankAndReason() {
    PlacesPicture picture = new PlacesPicture(ANSWER, UnitSystem.INCH_POUND, ChartLook.light());
    List<String> texts =
        picture.layout(760).tiles().stream()
            .map(
                tile ->
                    tile.labels().stream()
                        .map(PlacesPicture.Label::text)
                        .collect(Collectors.joining(" "))
                        .replace('\u00a0', ' '))
            .toList();
    // 39.4 °C against 40: of the two that stay below the limit one is excluded
    assertThat(texts.get(0))
        .isEqualTo(
            "Closet with a fan from and to the room 103 °F 4 to 5 pm, within its limit Room:"
                + " 79 °F Water an hour: 2.0 fl oz in the tank, 3.3 fl oz in the line");
    assertThat(texts.get(1)).startsWith("Closet with grilles to the room 112 °F");
    assertThat(texts.get(1)).contains("8 °F over its limit");
    assertThat(texts.get(11)).startsWith("In the room 83 °F");
    assertThat(texts.get(11))
        .endsWith("Excluded: fumes or powder in its air and flame or rags beside it");
    assertThat(texts.get(12)).endsWith("Excluded: sucks at the flue");
    assertThat(picture.words())
        .startsWith("1. Closet with a fan from and to the room: 103 °F")
        .contains("– In the room: 83 °F")
        .contains("Excluded: sucks at the flue.");
  }

  @Test
  void drawnSmallItIsWholeAndOnItsPaper() throws IOException {
    for (ChartLook look : List.of(ChartLook.light(), ChartLook.dark())) {
      PlacesPicture picture = new PlacesPicture(ANSWER, UnitSystem.SI, look);
      var image = ImageIO.read(new ByteArrayInputStream(ChartImage.png(picture, 600, 300, 1)));
      assertThat(image.getRGB(0, 0)).isEqualTo(look.paper().getRGB());
      assertThat(image.getRGB(300, 299)).isEqualTo(look.paper().getRGB());
      boolean drawn = false;
      for (int x = 0; x < 600; x++) {
        drawn |= image.getRGB(x, 280) != look.paper().getRGB();
      }
      assertThat(drawn).as("the last row is seen").isTrue();
    }
  }

  private static List<String> names(JFreeChart chart) {
    XYDataset data = ((XYPlot) chart.getPlot()).getDataset();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < data.getSeriesCount(); i++) {
      names.add(data.getSeriesKey(i).toString());
    }
    return names;
  }

  @Test
  void theDayShowsBestRoomHottestAndLimit() {
    JFreeChart chart = AirDayChart.of(ANSWER, UnitSystem.INCH_POUND, ChartLook.light());
    assertThat(names(chart))
        .containsExactly(
            "Closed insulated closet",
            "Closed space under a stair",
            "In the room: the room, and today's place",
            "Closet with a fan from and to the room: the best",
            "Outdoors",
            "Most the machine takes, 104 °F");
    XYDataset data = ((XYPlot) chart.getPlot()).getDataset();
    // the hour ending 16 by standard time is 4 to 5 pm on the wall in summer
    assertThat(data.getXValue(3, 15)).isEqualTo(16.5);
    assertThat(data.getYValue(3, 15)).isCloseTo(103, within(1e-9));
    assertThat(data.getYValue(3, 14)).isCloseTo(103 - 1.8, within(1e-9));
    assertThat(data.getYValue(5, 0)).isCloseTo(104, within(1e-9));

    AirlineAnswer safe = MadeAir.answer(false);
    assertThat(names(AirDayChart.of(safe, UnitSystem.SI, ChartLook.dark())))
        .containsExactly(
            "Closed insulated closet",
            "Closed space under a stair",
            "In the room: the best, and today's place",
            "Outdoors",
            "Most the machine takes, 40 °C");
  }

  @Test
  void theCurveCrossesTheLimit() {
    JFreeChart chart = VentChart.of(ANSWER, UnitSystem.INCH_POUND, ChartLook.light());
    assertThat(names(chart))
        .containsExactly(
            "Closet with two grilles to the room",
            "Closet shut, 206 °F",
            "Most the machine takes, 104 °F");
    XYDataset data = ((XYPlot) chart.getPlot()).getDataset();
    assertThat(data.getXValue(0, 3)).isCloseTo(2, within(1e-9));
    assertThat(data.getYValue(0, 3)).isCloseTo(103, within(1e-9));
    assertThat(new AirReasons(ANSWER, UnitSystem.INCH_POUND).vents())
        .contains("stays within the 104 °F that the machine takes from 2.0 ft² of free area");
    assertThat(new AirReasons(ANSWER, UnitSystem.SI).vents())
        .contains("stays within the 40 °C that the machine takes from 1,860 cm² of free area");
    assertThat(MadeAir.place(ANSWER, Placement.Kind.CLOSED_CLOSET).placePeak()).isGreaterThan(96);
  }

  @Test
  void barsAddUpToTheWaterOfTheDay() {
    JFreeChart chart = LineWaterChart.of(ANSWER.blasting(), UnitSystem.SI, ChartLook.light());
    CategoryDataset bars = ((CategoryPlot) chart.getPlot()).getDataset();
    assertThat(bars.getColumnCount()).isEqualTo(ANSWER.blasting().size());
    for (int column = 0; column < bars.getColumnCount(); column++) {
      double sum = 0;
      for (int row = 0; row < bars.getRowCount(); row++) {
        sum += bars.getValue(row, column).doubleValue();
      }
      // 300 g/h as it is, 320 g/h with a dryer, eight hours
      String name = bars.getColumnKey(column).toString();
      assertThat(sum).isCloseTo(name.endsWith("dryer") ? 2.56 : 2.4, within(1e-9));
    }
    assertThat(bars.getValue("In pipe and hose", "As it is").doubleValue())
        .isCloseTo(0.8, within(1e-9));
    assertThat(bars.getValue("In pipe and hose", "Desiccant dryer").doubleValue()).isZero();
    CategoryDataset quarts =
        ((CategoryPlot)
                LineWaterChart.of(ANSWER.blasting(), UnitSystem.INCH_POUND, ChartLook.dark())
                    .getPlot())
            .getDataset();
    // 0.8 L is 0.845 US quarts
    assertThat(quarts.getValue("In pipe and hose", "As it is").doubleValue())
        .isCloseTo(0.845, within(0.001));
  }
}
