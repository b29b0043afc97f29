package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.GeoPoint;
import org.shopclime.climate.Station;
import org.shopclime.quantity.UnitSystem;

/** A station's year as a chart, and its figures in words. */
class ClimateChartTest {

  private static final int JULY = 6;

  private static JFreeChart chart(boolean known, UnitSystem units) {
    return ClimateChart.of(
        MadeWeather.climate(),
        known ? Optional.of(MadeWeather.year()) : Optional.empty(),
        units,
        ChartLook.dark());
  }

  private static List<XYPlot> panels(JFreeChart chart) {
    return ((CombinedDomainXYPlot) chart.getPlot()).getSubplots();
  }

  private static XYDataset data(XYPlot plot, String name) {
    for (int i = 0; i < plot.getDatasetCount(); i++) {
      if (plot.getDataset(i).getSeriesKey(0).toString().equals(name)) {
        return plot.getDataset(i);
      }
    }
    throw new AssertionError("no " + name);
  }

  private static List<String> legend(JFreeChart chart) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < chart.getPlot().getLegendItems().getItemCount(); i++) {
      LegendItem item = chart.getPlot().getLegendItems().get(i);
      names.add(item.getLabel());
    }
    return names;
  }

  /** By the arithmetic of the made year: July is 7 + fifth °C, its fifths 8 to 12, mean 10. */
  @Test
  void bandsHoldTheUsualAndTheExtremeDays() {
    XYPlot warmth = panels(chart(true, UnitSystem.SI)).get(0);
    IntervalXYDataset usual = (IntervalXYDataset) data(warmth, "Usual day");
    assertThat(usual.getStartYValue(0, JULY)).isCloseTo(5, offset(1e-9));
    assertThat(usual.getEndYValue(0, JULY)).isCloseTo(15, offset(1e-9));
    IntervalXYDataset all = (IntervalXYDataset) data(warmth, "Coldest to hottest days");
    assertThat(all.getStartYValue(0, JULY)).isCloseTo(3, offset(1e-9));
    assertThat(all.getEndYValue(0, JULY)).isCloseTo(17, offset(1e-9));
    assertThat(data(warmth, "Dew point").getYValue(0, JULY)).isCloseTo(3, offset(1e-9));
    assertThat(data(warmth, "Hot day").getXValue(0, 0)).isEqualTo(7); // August
    assertThat(data(warmth, "Hot day").getYValue(0, 0)).isEqualTo(35);
  }

  /** 70 W/m² over 24 h are 1.68 kWh/m²; 3412.142 BTU to the kWh, 10.7639 ft² to the m². */
  @Test
  void sunIsThatOfADay() {
    XYDataset si = panels(chart(true, UnitSystem.SI)).get(1).getDataset();
    assertThat(si.getYValue(0, JULY)).isCloseTo(1.68, offset(1e-9));
    XYDataset ip = panels(chart(true, UnitSystem.INCH_POUND)).get(1).getDataset();
    assertThat(ip.getYValue(0, JULY)).isCloseTo(1.68 * 3412.142 / 10.7639, offset(0.01));
    XYPlot warmth = panels(chart(true, UnitSystem.INCH_POUND)).get(0);
    assertThat(data(warmth, "Dew point").getYValue(0, JULY)).isCloseTo(37.4, offset(1e-9));
    assertThat(warmth.getRangeAxis().getLabel()).isEqualTo("Temperature, °F");
  }

  @Test
  void everyMarkHasItsMeaning() {
    assertThat(legend(chart(true, UnitSystem.SI)))
        .containsExactly(
            "Hot day", "Dew point", "Usual day", "Coldest to hottest days", "Sun of a day");
    assertThat(legend(chart(false, UnitSystem.SI))).containsExactly("Hot day", "Mean temperature");
  }

  @Test
  void withoutATypicalYearTheMeansAreShown() {
    JFreeChart chart = chart(false, UnitSystem.SI);
    assertThat(panels(chart)).hasSize(1);
    assertThat(data(panels(chart).get(0), "Mean temperature").getYValue(0, JULY)).isEqualTo(7);
    BufferedImage drawn = chart.createBufferedImage(400, 300);
    assertThat(drawn.getWidth()).isEqualTo(400);
  }

  @Test
  void theDaysThatDecideAreToldInBothUnits() {
    List<Figure> ip = ClimateFacts.of(MadeWeather.climate(), UnitSystem.INCH_POUND);
    assertThat(ip)
        .extracting(Figure::value)
        .map(value -> value.replace('\u00a0', ' '))
        .containsExactly(
            "95 °F in August, wet bulb 77 °F; 18 °F from low to high",
            "100 °F in June, wet bulb 77 °F",
            "dew point 77 °F at 86 °F in September, up to 95 °F on such a day",
            "23 °F");
    assertThat(ip.get(0).value()).contains("95\u00a0°F");
    List<Figure> si = ClimateFacts.of(MadeWeather.climate(), UnitSystem.SI);
    assertThat(si)
        .extracting(Figure::value)
        .map(value -> value.replace('\u00a0', ' '))
        .startsWith("35 °C in August, wet bulb 25 °C; 10 K from low to high")
        .endsWith("−5 °C");
  }

  @Test
  void whereItStandsIsTold() {
    assertThat(ClimateFacts.name(MadeWeather.STATION)).isEqualTo("Mobile Regional AP, AL");
    assertThat(ClimateFacts.where(MadeWeather.STATION, UnitSystem.INCH_POUND))
        .isEqualTo("Station 722230, 30.68° N, 88.25° W, 217 ft above the sea");
    Station low = new Station("1", "Low", "CA", -8, -1, 1, -50);
    assertThat(ClimateFacts.where(low, UnitSystem.SI))
        .isEqualTo("Station 1, 1.00° S, 1.00° E, 50 m below the sea");
    assertThat(ClimateFacts.point(new GeoPoint(0, 0))).isEqualTo("0.00° N, 0.00° E");
    assertThat(ClimateFacts.height(-50, UnitSystem.SI)).isEqualTo("−50 m");
    assertThat(ClimateFacts.distance(1609.344, UnitSystem.INCH_POUND)).isEqualTo("1,000 mi");
    assertThat(ClimateFacts.distance(1609.344, UnitSystem.SI)).isEqualTo("1,609 km");
  }

  @Test
  void theYearIsToldForWhomTheChartIsNoHelp() {
    assertThat(
            ClimateFacts.year(
                MadeWeather.climate(), Optional.of(MadeWeather.year()), UnitSystem.SI))
        .isEqualTo(
            "A usual day has −1 °C to 9 °C in January and 10 °C to 20 °C in December. Sun on level"
                + " ground: 0.2 kWh/m² a day in January, 2.9 kWh/m² in December.");
    assertThat(ClimateFacts.year(MadeWeather.climate(), Optional.empty(), UnitSystem.SI))
        .startsWith("Mean temperature from 1 °C in January to 12 °C in December.")
        .contains("not known");
    assertThat(
            ClimateFacts.year(
                MadeWeather.climate(), Optional.of(MadeWeather.year()), UnitSystem.INCH_POUND))
        .contains("80 BTU/ft² a day in January")
        .contains("910 BTU/ft² in December");
    assertThat(ClimateFacts.caution()).contains("rarest hours");
  }
}
