package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The basic model against the handbook's example and tables. */
class BasicLeakagePublishedTest {

  private static final double SQUARE_INCH = 0.0254 * 0.0254;
  private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
  private static final double CFM = CUBIC_FOOT / 60;
  private static final double MPH = 0.44704;

  /** (cfm/in²)² in one (L/s/cm²)². */
  private static final double FLOW_SQUARED = Math.pow(0.001 / CFM * SQUARE_INCH * 1e4, 2);

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/basic.csv", useHeadersInDisplayName = true)
  void agreesWithTheExample(
      String id,
      double areaIn2,
      int storeys,
      int shelterClass,
      double differenceF,
      double windMph,
      double volumeFt3,
      double cfm,
      double airChanges,
      double tolerance) {
    double flow =
        BasicLeakage.flow(
            areaIn2 * SQUARE_INCH,
            differenceF / 1.8,
            windMph * MPH,
            BasicLeakage.stackCoefficient(storeys),
            BasicLeakage.windCoefficient(storeys, shelterClass));
    assertThat(flow / CFM).as(id).isCloseTo(cfm, withinPercentage(100 * tolerance));
    double fromWholeCfm = Math.rint(flow / CFM) * 60 / volumeFt3;
    assertThat(fromWholeCfm).as(id).isCloseTo(airChanges, withinPercentage(100 * tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/leakage/stack-coefficients.csv",
      useHeadersInDisplayName = true)
  void stackCoefficients(String id, int storeys, double si, double ip) {
    double ours = BasicLeakage.stackCoefficient(storeys);
    assertThat(ours).as(id).isCloseTo(si, within(1e-12));
    assertThat(ours * FLOW_SQUARED / 1.8).as(id).isCloseTo(ip, withinPercentage(0.7));
    assertThat(BasicLeakage.stackCoefficientAt(storeys * BasicLeakage.STOREY))
        .as(id)
        .isCloseTo(si, within(1e-12));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/leakage/wind-coefficients.csv",
      useHeadersInDisplayName = true)
  void windCoefficients(String id, int storeys, int shelterClass, double si, Double ip) {
    double ours = BasicLeakage.windCoefficient(storeys, shelterClass);
    assertThat(ours).as(id).isCloseTo(si, within(1e-12));
    if (ip != null) {
      assertThat(ours * FLOW_SQUARED * MPH * MPH).as(id).isCloseTo(ip, within(0.00007));
    }
    assertThat(BasicLeakage.windCoefficientAt(storeys * BasicLeakage.STOREY, shelterClass))
        .as(id + " by height")
        .isCloseTo(si, within(Math.max(0.01 * si, 1e-6)));
  }
}
