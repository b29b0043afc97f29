package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYZDataset;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ComponentKind;
import org.shopclime.load.Line;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.unit.StandardSizes;

class ChartTest {

  private static final ChartLook LIGHT = ChartLook.light();

  private static CoreAnswer core(List<Line> lines) {
    return Answers.core(
        Optional.of(
            Answers.day(hour -> 82, Answers.JUDGED, hour -> Answers.JUDGED.contains(hour) ? 1 : 0)),
        Answers.usualWithout(),
        lines);
  }

  private static CategoryDataset bars(List<Line> lines, UnitSystem units) {
    return ((CategoryPlot) LoadChart.of(core(lines), units, LIGHT).getPlot()).getDataset();
  }

  private static List<String> names(XYPlot plot) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < plot.getDataset().getSeriesCount(); i++) {
      names.add(plot.getDataset().getSeriesKey(i).toString());
    }
    return names;
  }

  private static XYPlot panel(JFreeChart chart, int index) {
    return ((CombinedDomainXYPlot) chart.getPlot()).getSubplots().get(index);
  }

  @Test
  void barsStandByTheirSizeAndLossesAreShown() {
    CategoryDataset bars = bars(Answers.usualLines(), UnitSystem.INCH_POUND);
    assertThat(bars.getColumnKeys().toString()).isEqualTo("[Leakage, West wall, People, Floor]");
    assertThat(bars.getRowKeys().toString()).isEqualTo("[Heat, Moisture]");
    assertThat(bars.getValue("Heat", "Leakage").doubleValue()).isCloseTo(2300, offset(1e-6));
    assertThat(bars.getValue("Moisture", "Leakage").doubleValue()).isCloseTo(2700, offset(1e-6));
    assertThat(bars.getValue("Heat", "Floor").doubleValue()).isCloseTo(-300, offset(1e-6));
    assertThat(bars(Answers.usualLines(), UnitSystem.SI).getValue("Heat", "Leakage").doubleValue())
        .isCloseTo(Units.wattsFromBtuh(2300), offset(1e-6));
  }

  /** Of the example: each row filled from the size that holds, the shop's own column framed. */
  @Test
  void sizesThatHoldAreFilled() {
    SizeAnswer answer = Answers.example();
    XYPlot plot = (XYPlot) ScenarioChart.of(answer, UnitSystem.INCH_POUND, LIGHT).getPlot();
    XYZDataset cells = (XYZDataset) plot.getDataset();
    int sizes = StandardSizes.watts().size();
    assertThat(cells.getItemCount(0)).isEqualTo(answer.scenarios().size() * sizes);
    for (int i = 0; i < cells.getItemCount(0); i++) {
      double size = StandardSizes.watts().get(i % sizes);
      double least = answer.scenarios().get(i / sizes).recommended().orElse(1e9);
      assertThat(cells.getZValue(0, i)).isEqualTo(size >= least - 1 ? 1 : 0);
    }
    // A frame, and the warmest hour in each row.
    assertThat(plot.getAnnotations()).hasSize(1 + answer.scenarios().size());
  }

  /** In kW, short enough for each of ten narrow columns to have its name. */
  @Test
  void sizesInKilowattsAreShort() {
    XYPlot plot = (XYPlot) ScenarioChart.of(Answers.example(), UnitSystem.SI, LIGHT).getPlot();
    assertThat(plot.getDomainAxis().getLabel()).isEqualTo("Rated size, kW");
    assertThat(((SymbolAxis) plot.getDomainAxis()).getSymbols())
        .startsWith("1.47")
        .contains("3.52")
        .endsWith("10.55");
    assertThat(plot.getAnnotations())
        .filteredOn(XYTextAnnotation.class::isInstance)
        .allMatch(text -> ((XYTextAnnotation) text).getText().matches("\\d\\d(\\.\\d)?"));
  }

  @Test
  void aSizeOfItsOwnHasItsColumn() {
    SizeAnswer usual = Answers.example();
    double odd = Units.wattsFromBtuh(11000);
    UnitAnswer own = usual.unit().orElseThrow();
    UnitAnswer other =
        new UnitAnswer(
            odd,
            own.deliveredSensible(),
            own.deliveredLatent(),
            own.day(),
            own.keepsUpTo(),
            own.limitReason(),
            own.verdict(),
            own.pullDown(),
            own.fan());
    SizeAnswer answer =
        new SizeAnswer(
            usual.shop(),
            usual.core(),
            Optional.of(other),
            usual.recommended(),
            usual.band(),
            usual.changes(),
            usual.scenarios(),
            usual.winter(),
            usual.warnings());
    XYPlot plot = (XYPlot) ScenarioChart.of(answer, UnitSystem.INCH_POUND, LIGHT).getPlot();
    assertThat(((SymbolAxis) plot.getDomainAxis()).getSymbols())
        .containsSubsequence("10", "11", "12");
  }

  @Test
  void onlyManyPartsAreGroupedAndNothingIsLost() {
    List<Line> lines = new ArrayList<>(Answers.usualLines());
    for (int i = 1; i <= 8; i++) {
      lines.add(Answers.line("Window " + i, ComponentKind.WINDOW, 10 * i, 0));
    }
    assertThat(bars(lines, UnitSystem.INCH_POUND).getColumnCount()).isEqualTo(12);
    lines.add(Answers.line("Radio", ComponentKind.OTHER, 5, 0));
    CategoryDataset bars = bars(lines, UnitSystem.INCH_POUND);
    assertThat(bars.getColumnCount()).isEqualTo(LoadChart.MOST);
    assertThat(bars.getColumnKeys().toString()).endsWith("Window 2, 2 smaller parts, Floor]");
    assertThat(bars.getValue("Heat", "2 smaller parts").doubleValue()).isCloseTo(15, offset(1e-6));
    double sum = 0;
    for (int column = 0; column < bars.getColumnCount(); column++) {
      sum += bars.getValue(0, column).doubleValue();
    }
    assertThat(sum).isCloseTo(6250 + 360 + 5, offset(1e-6));
  }

  @Test
  void partsOfOneNameKeepTheirOwnBars() {
    List<Line> lines =
        List.of(
            Answers.line("Door", ComponentKind.DOOR, 500, 0),
            Answers.line("Door", ComponentKind.MOTOR, 300, 0));
    assertThat(bars(lines, UnitSystem.INCH_POUND).getColumnKeys().toString())
        .isEqualTo("[Door, Door (2)]");
  }

  @Test
  void axesSayWhatAndInWhichUnit() {
    CoreAnswer core = core(Answers.usualLines());
    CategoryPlot bars = (CategoryPlot) LoadChart.of(core, UnitSystem.INCH_POUND, LIGHT).getPlot();
    assertThat(bars.getRangeAxis().getLabel()).isEqualTo("Heat to take out, BTU/h");
    JFreeChart day = DayChart.of(core, Answers.SHOP, UnitSystem.INCH_POUND, LIGHT);
    assertThat(((XYPlot) day.getPlot()).getDomainAxis().getLabel()).isEqualTo("Time of day");
    assertThat(panel(day, 0).getRangeAxis().getLabel()).isEqualTo("Air, °F");
    assertThat(panel(day, 1).getRangeAxis().getLabel()).isEqualTo("Heat, BTU/h");
    JFreeChart si = DayChart.of(core, Answers.SHOP, UnitSystem.SI, LIGHT);
    assertThat(panel(si, 0).getRangeAxis().getLabel()).isEqualTo("Air, °C");
    assertThat(panel(si, 1).getRangeAxis().getLabel()).isEqualTo("Heat, W");
  }

  @Test
  void theDayIsDrawnByTheClockOnTheWall() {
    JFreeChart chart =
        DayChart.of(core(Answers.usualLines()), Answers.SHOP, UnitSystem.INCH_POUND, LIGHT);
    XYPlot air = panel(chart, 0);
    assertThat(names(air))
        .containsExactly(
            "Outdoors",
            "Inside, unit off",
            "Inside, with the unit",
            "Dew point inside",
            "Wished inside");
    XYDataset data = air.getDataset();
    assertThat(data.getItemCount(0)).isEqualTo(24);
    // the hour ending 15 by standard time is 3 to 4 pm on the wall in July
    assertThat(data.getXValue(1, 14)).isEqualTo(15.5);
    assertThat(data.getYValue(1, 14)).isCloseTo(99, offset(1e-9));
    assertThat(data.getYValue(2, 14)).isCloseTo(82, offset(1e-9));
    assertThat(data.getYValue(4, 3)).isCloseTo(78, offset(1e-9));
    assertThat(((XYPlot) chart.getPlot()).getDomainAxis().getRange().getLowerBound()).isEqualTo(1);
    // 8 to 12 and 13 to 17
    assertThat(air.getDomainMarkers(Layer.BACKGROUND).size()).isEqualTo(2);
  }

  @Test
  void capacityIsDrawnOnlyWhileTheUnitIsOn() {
    XYPlot loads =
        panel(
            DayChart.of(core(Answers.usualLines()), Answers.SHOP, UnitSystem.INCH_POUND, LIGHT), 1);
    assertThat(names(loads))
        .containsExactly(
            "Heat to take out",
            "Moisture to take out",
            "Heat the unit can take out",
            "Moisture it can take out");
    XYDataset data = loads.getDataset();
    assertThat(data.getYValue(2, 14)).isCloseTo(9000, offset(1e-6));
    assertThat(data.getYValue(2, 11)).isNaN();
    assertThat(data.getYValue(0, 14)).isCloseTo(6250, offset(1e-6));
  }

  @Test
  void withoutUnitThereIsOneLineInside() {
    CoreAnswer core = Answers.core(Optional.empty(), Answers.usualWithout(), Answers.usualLines());
    JFreeChart chart = DayChart.of(core, Answers.SHOP, UnitSystem.INCH_POUND, ChartLook.dark());
    assertThat(names(panel(chart, 0)))
        .containsExactly("Outdoors", "Inside", "Dew point inside", "Wished inside");
    assertThat(names(panel(chart, 1))).containsExactly("Heat to take out", "Moisture to take out");
  }

  @Test
  void imagesHaveTheSizeAskedFor() throws IOException {
    assertThat(ChartImage.canDraw()).isTrue();
    JFreeChart chart = LoadChart.of(core(Answers.usualLines()), UnitSystem.SI, LIGHT);
    var image = ImageIO.read(new ByteArrayInputStream(ChartImage.png(chart, 300, 200, 2)));
    assertThat(image.getWidth()).isEqualTo(600);
    assertThat(image.getHeight()).isEqualTo(400);
    assertThat(image.getRGB(1, 1)).isEqualTo(LIGHT.paper().getRGB());
    assertThatThrownBy(() -> ChartImage.png(chart, 0, 200, 2))
        .hasMessage("width 0.0 dots; takes 1 to 20000");
    assertThatThrownBy(() -> ChartImage.png(chart, 300, 200, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void noRoomCooledStillDraws() {
    CoreAnswer none =
        new CoreAnswer(
            core(List.of()).hotDay(),
            0,
            new org.shopclime.load.ShopLoad(List.of(), List.of()),
            Optional.empty(),
            Answers.usualWithout());
    assertThat(ChartImage.png(LoadChart.of(none, UnitSystem.SI, LIGHT), 300, 200, 1)).isNotEmpty();
    assertThat(ChartImage.png(DayChart.of(none, Answers.SHOP, UnitSystem.SI, LIGHT), 300, 200, 1))
        .isNotEmpty();
  }
}
