package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.air.MoistAir;

/** Coolers and dryers against what the trade says of them. */
class DryerPublishedTest {

  private static final double ABSOLUTE = MoistAir.STANDARD_PRESSURE + 100 * Ip.PSI;

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/aftercooler-approach.csv",
      useHeadersInDisplayName = true)
  void approach(String id, double low, double high, double commonLow, double commonHigh) {
    double ours = Aftercooler.USUAL_APPROACH * 1.8;
    assertThat(ours).as(id).isBetween(low, high).isBetween(commonLow, commonHigh);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/dryer-rating.csv", useHeadersInDisplayName = true)
  void ratingPoint(String id, double inletF, double psig, double ambientF) {
    assertThat(Ip.fahrenheit(RefrigeratedDryer.RATED_INLET)).as(id).isCloseTo(inletF, within(1e-9));
    assertThat(RefrigeratedDryer.RATED_PRESSURE / Ip.PSI).as(id).isCloseTo(psig, within(1e-4));
    assertThat(Ip.fahrenheit(RefrigeratedDryer.RATED_AMBIENT))
        .as(id)
        .isCloseTo(ambientF, within(1e-9));
    RefrigeratedDryer dryer = RefrigeratedDryer.usual(20 * Ip.CFM, LineSite.PLACE);
    LineAir inlet = new LineAir(Ip.celsius(inletF), ABSOLUTE, 1).at(Ip.celsius(inletF));
    LineFlow flow = new LineFlow(0, 20 * Ip.CFM * ToolUse.STANDARD_DENSITY * (1 - 1e-6));
    double ambient = Ip.celsius(ambientF);
    LineStep step = dryer.pass(inlet, flow, new LineSurroundings(ambient, 25, 25));
    assertThat(Ip.fahrenheit(step.out().pressureDewPoint())).as(id).isCloseTo(38, within(1e-6));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/dryer-factors.csv", useHeadersInDisplayName = true)
  void hotterInletTakesLessAir(String id, double inletF, double factor, double tolerance) {
    RefrigeratedDryer dryer = RefrigeratedDryer.usual(20 * Ip.CFM, LineSite.PLACE);
    LineAir inlet = new LineAir(Ip.celsius(inletF), ABSOLUTE, 1).at(Ip.celsius(inletF));
    assertThat(dryer.flowAt(inlet, Ip.celsius(100)) / (20 * Ip.CFM))
        .as(id)
        .isCloseTo(factor, withinPercentage(100 * tolerance));
  }
}
