package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.plan.UnitSight;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Pads;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.UnitKind;

/** The unit against outdoor temperature, the days of its cases, and what is said beside them. */
class UnitChartTest {

  private static final ChartLook LIGHT = ChartLook.light();
  private static SizeAnswer answer;
  private static UnitSight sight;

  @BeforeAll
  static void reckon() {
    answer = Answers.example();
    sight = UnitSight.of(answer).orElseThrow();
  }

  private static XYPlot panel(JFreeChart chart, int index) {
    return ((CombinedDomainXYPlot) chart.getPlot()).getSubplots().get(index);
  }

  private static List<String> names(XYPlot plot, boolean legendOnly) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < plot.getDataset().getSeriesCount(); i++) {
      if (!legendOnly || plot.getRenderer().isSeriesVisibleInLegend(i)) {
        names.add(plot.getDataset().getSeriesKey(i).toString());
      }
    }
    return names;
  }

  @Test
  void theCurveIsDrawnWithItsEdges() {
    XYPlot heat = panel(UnitChart.of(sight, answer, UnitSystem.INCH_POUND, LIGHT), 0);
    assertThat(names(heat, true))
        .containsExactly(
            "Heat it can take out",
            "Heat and moisture it can take out",
            "Heat to take out in the worst working hour",
            "The same on the hot day");
    XYDataset data = heat.getDataset();
    int inside = data.getItemCount(0);
    assertThat(inside).isEqualTo(41);
    assertThat(data.getXValue(0, 0)).isCloseTo(75, offset(1e-9));
    assertThat(data.getXValue(0, inside - 1)).isCloseTo(115, offset(1e-9));
    // Beyond the edge nothing falls any more.
    assertThat(data.getYValue(2, data.getItemCount(2) - 1))
        .isCloseTo(data.getYValue(0, inside - 1), offset(1e-9));
    List<String> labels = new ArrayList<>();
    for (Object marker : heat.getDomainMarkers(Layer.BACKGROUND)) {
      labels.add(((Marker) marker).getLabel());
    }
    assertThat(labels).contains("the hot day", "tested from here", "tested to here");
    assertThat(labels).anyMatch(label -> label.startsWith("keeps up to "));
  }

  @Test
  void axesSayWhatAndInWhichUnit() {
    JFreeChart si = UnitChart.of(sight, answer, UnitSystem.SI, LIGHT);
    assertThat(((XYPlot) si.getPlot()).getDomainAxis().getLabel())
        .isEqualTo("Outdoor temperature, °C");
    assertThat(panel(si, 0).getRangeAxis().getLabel()).isEqualTo("Heat, W");
    assertThat(panel(si, 1).getRangeAxis().getLabel()).isEqualTo("Power, W");
    JFreeChart ip = UnitChart.of(sight, answer, UnitSystem.INCH_POUND, LIGHT);
    // Power is in watts in both.
    assertThat(panel(ip, 1).getDataset().getYValue(0, 20))
        .isEqualTo(panel(si, 1).getDataset().getYValue(0, 20));
    assertThat(panel(ip, 0).getDataset().getYValue(0, 20))
        .isCloseTo(panel(si, 0).getDataset().getYValue(0, 20) * 3.412142, offset(0.01));
  }

  @Test
  void theCaptionTellsTheFiguresDrawn() {
    String caption = UnitChart.caption(sight, answer, UnitSystem.INCH_POUND);
    double sensible = sight.at(answer.core().hotDay().peak()).sensible();
    assertThat(caption)
        .contains("100 °F outdoors")
        .contains(Shown.power(sensible, UnitSystem.INCH_POUND) + " of heat")
        .contains(Shown.temperature(sight.meets().orElseThrow(), UnitSystem.INCH_POUND))
        .contains("keeps up until a day of");
  }

  @ParameterizedTest
  @EnumSource(UnitKind.class)
  void limitsAreTrueOfTheKind(UnitKind kind) {
    Shop shop = answer.shop();
    CoolingUnit unit = shop.unit().orElseThrow().withKind(kind);
    String limits =
        String.join(
            " ",
            UnitLimits.lines(
                Answers.named(answer, shop.withUnit(Optional.of(unit))), UnitSystem.INCH_POUND));
    assertThat(limits).contains("no maker's data").contains("wear");
    if (kind == UnitKind.WINDOW) {
      assertThat(limits).contains("window units").contains("75 to 115 °F outdoors");
    } else {
      assertThat(limits).doesNotContain("six window units");
    }
  }

  /**
   * A cooler with wet pads in damp air: at 99 °F and a dew point of some 72 °F it blows in air of
   * about 85 °F where 78 °F are wished. Its picture stays near the load and its words say so.
   */
  @Test
  void aCoolerWithPadsIsDrawnNearItsLoad() {
    Shop shop = answer.shop();
    CoolingUnit unit = shop.unit().orElseThrow().withKind(UnitKind.EVAPORATIVE).withCapacity(0);
    unit =
        (CoolingUnit)
            ShopParts.with(unit, "pads", Optional.of(new Pads(1.4, 0.8, Optional.empty())));
    SizeAnswer blown =
        new Sizing(shop.withUnit(Optional.of(unit)), Climates.load())
            .answer(List.of(), Progress.silent());
    UnitSight pads = UnitSight.of(blown).orElseThrow();
    XYPlot heat = panel(UnitChart.of(pads, blown, UnitSystem.SI, LIGHT), 0);
    assertThat(names(heat, true))
        .containsExactly(
            "Heat it can take out",
            "Heat to take out in the worst working hour",
            "The same on the hot day");
    double most = pads.loads().stream().mapToDouble(each -> each.sensible()).max().orElseThrow();
    assertThat(heat.getRangeAxis().getLowerBound()).isBetween(-1.2 * most, 0.0);
    assertThat(heat.getRangeAxis().getUpperBound()).isBetween(most, 3.3 * most);
    assertThat(heat.getRangeMarkers(Layer.BACKGROUND)).hasSize(1);
    String caption = UnitChart.caption(pads, blown, UnitSystem.INCH_POUND);
    assertThat(caption).contains("brings in").doesNotContain("-").doesNotContain("takes out −");
    assertThat(String.join(" ", UnitLimits.lines(blown, UnitSystem.SI)))
        .contains("pads")
        .doesNotContain("coil")
        .doesNotContain("label");
  }

  @Test
  void whatLiesBeyondIsSaid() {
    assertThat(answer.core().unit().orElseThrow().beyond()).isNotEmpty();
    assertThat(UnitLimits.lines(answer, UnitSystem.SI).get(1))
        .startsWith("Some hours of the hot day lie beyond what was tested: ")
        .doesNotContain("_");
    assertThat(
            UnitLimits.lines(
                Answers.named(answer, answer.shop().withUnit(Optional.empty())), UnitSystem.SI))
        .isEmpty();
  }

  @Test
  void oneCaseIsDrawnAlone() {
    Scenario first = CaseChart.asItIs(CaseChart.cases(answer)).orElseThrow();
    assertThat(first.name()).isEqualTo("work + compressor");
    JFreeChart chart = CaseChart.of(answer, first, Optional.empty(), UnitSystem.INCH_POUND, LIGHT);
    assertThat(names(panel(chart, 0), false))
        .containsExactly("Outdoors", "Inside", "Dew point inside", "Wished inside");
    assertThat(names(panel(chart, 1), false))
        .containsExactly("Heat to take out", "Heat the unit can take out");
    // The same hour as in the picture of the hot day.
    XYPlot usual =
        panel(DayChart.of(answer.core(), answer.shop(), UnitSystem.INCH_POUND, LIGHT), 0);
    assertThat(panel(chart, 0).getDataset().getYValue(1, 14))
        .isEqualTo(usual.getDataset().getYValue(2, 14));
  }

  /** What two cases share is drawn once. */
  @Test
  void twoCasesLieOverEachOther() {
    List<Scenario> cases = CaseChart.cases(answer);
    Scenario first = CaseChart.asItIs(cases).orElseThrow();
    JFreeChart dusty =
        CaseChart.of(
            answer, first, Optional.of(named(cases, "dusty")), UnitSystem.INCH_POUND, LIGHT);
    assertThat(names(panel(dusty, 0), false))
        .containsExactly(
            "Outdoors",
            "Inside: work + compressor",
            "Dew point inside: work + compressor",
            "Inside: dusty coil and filter, at best",
            "Dew point inside: dusty coil and filter, at best",
            "Wished inside");
    assertThat(names(panel(dusty, 1), false))
        .containsExactly(
            "Heat to take out",
            "Heat the unit can take out: work + compressor",
            "Heat the unit can take out: dusty coil and filter, at best");
    JFreeChart humid =
        CaseChart.of(
            answer, first, Optional.of(named(cases, "most humid")), UnitSystem.INCH_POUND, LIGHT);
    assertThat(names(panel(humid, 0), false))
        .startsWith("Outdoors: work + compressor", "Outdoors: most humid day");
    assertThat(names(panel(humid, 1), false)).hasSize(4);
  }

  private static Scenario named(List<Scenario> cases, String begin) {
    return cases.stream().filter(each -> each.name().startsWith(begin)).findFirst().orElseThrow();
  }

  @Test
  void aCaseIsToldInASentence() {
    Scenario dusty = named(CaseChart.cases(answer), "dusty");
    assertThat(CaseChart.sentence(answer, dusty, UnitSystem.INCH_POUND))
        .startsWith("Dusty coil and filter, at best: at most ")
        .contains(Shown.temperature(dusty.indoorPeak(), UnitSystem.INCH_POUND))
        .contains("dew point")
        .endsWith("the unit does not hold.");
    assertThat(CaseChart.warmest(CaseChart.cases(answer)).orElseThrow().indoorPeak())
        .isEqualTo(
            answer.scenarios().stream().mapToDouble(Scenario::indoorPeak).max().orElseThrow());
    assertThat(CaseChart.asItIs(List.of())).isEmpty();
  }
}
