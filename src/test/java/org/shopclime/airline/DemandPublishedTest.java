package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Nozzles and tools against a table of leaks. */
class DemandPublishedTest {

  private static final double ATMOSPHERE = 14.7;

  private static double cfm(double inches, double psig, double discharge) {
    double flow =
        Nozzle.flow(inches * 0.0254, (psig + ATMOSPHERE) * Ip.PSI, Ip.celsius(70), discharge);
    return flow / ToolUse.STANDARD_DENSITY / Ip.CFM;
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/orifice.csv", useHeadersInDisplayName = true)
  void leaks(String id, double inches, double psig, double cfm, double tolerance) {
    assertThat(cfm(inches, psig, 1)).as(id).isCloseTo(cfm, withinPercentage(100 * tolerance));
  }

  @Test
  void blastersAreTheirNozzles() {
    assertThat(AirTool.BLAST_CABINET.usual().flow() / Ip.CFM)
        .isCloseTo(cfm(3.0 / 32, 80, Nozzle.ROUNDED), withinPercentage(5));
    assertThat(AirTool.BLAST_POT.usual().flow() / Ip.CFM)
        .isCloseTo(cfm(1.0 / 8, 80, Nozzle.ROUNDED), withinPercentage(5));
  }
}
