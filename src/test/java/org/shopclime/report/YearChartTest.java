package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.LegendItem;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.Yearly;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.shop.Examples;

/** The year of the example in a year of day types, as a chart and on its page. */
class YearChartTest {

  private static YearAnswer answer;

  @TempDir private Path folder;

  @BeforeAll
  static void run() {
    YearAnswer found =
        new Yearly(Examples.shop(Examples.USUAL), Climates.load())
            .ofDayTypes(List.of(), Progress.silent())
            .orElseThrow();
    answer =
        new YearAnswer(
            found.shop(),
            found.home(),
            found.weatherFile(),
            found.room(),
            found.unit(),
            found.described(),
            found.alone(),
            found.bill(),
            found.warnings(),
            List.of("4 hours of wind were missing & filled"));
  }

  private static List<XYPlot> panels(UnitSystem units) {
    return ((CombinedDomainXYPlot) YearChart.of(answer, units, ChartLook.light()).getPlot())
        .getSubplots();
  }

  private static XYDataset data(XYPlot plot, String name) {
    return IntStream.range(0, plot.getDatasetCount())
        .mapToObj(plot::getDataset)
        .filter(each -> each.getSeriesKey(0).toString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void barsAreTheSumsOfTheMonths() {
    XYPlot energy = panels(UnitSystem.SI).get(1);
    XYDataset bars = data(energy, "Heat put in");
    assertThat(bars.getSeriesKey(1).toString()).isEqualTo("Heat taken out");
    for (int month = 1; month <= 12; month++) {
      assertThat(bars.getYValue(0, month - 1))
          .isEqualTo(answer.described().kilowattHours(Figure.HEATING, 0, month));
      assertThat(bars.getYValue(1, month - 1))
          .isEqualTo(answer.described().kilowattHours(Figure.COOLING, 0, month));
    }
    assertThat(bars.getYValue(0, 0)).isPositive();
  }

  /** The mean of a month's lows lies below that of its highs; 1.8 and 32 make °F of °C. */
  @Test
  void edgesAreTheUsualDay() {
    XYDataset si = data(panels(UnitSystem.SI).get(0), "Shop, coolest hour");
    XYDataset ip = data(panels(UnitSystem.INCH_POUND).get(0), "Shop, coolest hour");
    for (int month = 0; month < 12; month++) {
      assertThat(si.getYValue(0, month)).isLessThan(si.getYValue(1, month));
      assertThat(ip.getYValue(0, month)).isCloseTo(1.8 * si.getYValue(0, month) + 32, offset(1e-9));
    }
  }

  @Test
  void theLegendNamesWhatIsDrawn() {
    var items = YearChart.of(answer, UnitSystem.SI, ChartLook.dark()).getPlot().getLegendItems();
    assertThat(IntStream.range(0, items.getItemCount()).mapToObj(items::get))
        .extracting(LegendItem::getLabel)
        .containsExactly(
            "Shop", "Shop left alone", "Outdoors", "Unit draws", "Heat put in", "Heat taken out");
  }

  @Test
  void thePageDoesWithoutCharts() throws IOException {
    Path page = YearReport.write(answer, UnitSystem.SI, folder, false);
    assertThat(Files.readString(page))
        .contains(HtmlReport.NO_CHARTS, "means flatten peaks", "missing &amp; filled", "kWh/m²")
        .doesNotContain("<img", "°F");
  }

  @Test
  void hoursAreRowsOfTheRun() {
    List<String> rows =
        YearCsv.hours(answer, UnitSystem.SI).lines().filter(line -> !line.startsWith("#")).toList();
    assertThat(rows).hasSize(8761);
    assertThat(rows.get(0)).startsWith("hour,month,day,hourEnding,working,outdoorC,Shop: airC,");
    String[] last = rows.get(8760).split(",", -1);
    assertThat(last).startsWith("8760", "12", "31", "24");
    assertThat(Double.parseDouble(last[6]))
        .isCloseTo(answer.described().at(Figure.AIR, 0, 8759), offset(0.005));
  }
}
