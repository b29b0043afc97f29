package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shopclime.heat.Drivers;

/** Outdoor air and what a cooler blows, as the network and the water of a room take them. */
class StepInflowTest {

  /** Dry air a second, kg; such a flow takes 1,006 + 1,860 W J/K for each. */
  private static final double LEAK = 0.05;

  private final Drivers drivers =
      new Drivers(MadeShops.steady(MadeShops.box("100 m3", "1 /h", ""), 30, 0.01).network());
  private final StepInflow outdoors = new StepInflow(drivers, 1, 0);

  /** By pencil: 0.05 kg/s of 1,024.6 J/K are 51.23 W/K; 5 K above the room they bring 256 W. */
  @Test
  void outdoorAirWarmsByItsFlow() {
    outdoors.begin(30, 0.01);
    outdoors.flow(0, LEAK);
    assertThat(drivers.inflowHeat(0, 25)).isCloseTo(256.15, within(0.01));
    assertThat(outdoors.inflow(0, 0)).isEqualTo(LEAK);
    assertThat(outdoors.humidityRatio(0, 0)).isEqualTo(0.01);
  }

  /**
   * By pencil: a cooler blows 0.4 kg/s of 20 °C and 14 g/kg for half of the step: 0.2 kg/s of
   * 1,032.0 J/K, 206.4 W/K, take 5 K x 206.4 = 1,032 W out of a room at 25 °C, from which the 256 W
   * of the leaks go off. Both together are 0.25 kg/s of (0.05 x 10 + 0.2 x 14) / 0.25 = 13.2 g/kg.
   */
  @Test
  void whatIsBlownComesOnTop() {
    outdoors.begin(30, 0.01);
    outdoors.supply(new Blown(0.4, 20, 0.014, 0));
    outdoors.flow(0, LEAK);
    outdoors.blow(0.5);
    assertThat(drivers.inflowHeat(0, 25)).isCloseTo(256.15 - 1032.04, within(0.1));
    assertThat(outdoors.inflow(0, 0.5)).isCloseTo(0.25, within(1e-12));
    assertThat(outdoors.humidityRatio(0, 0.5)).isCloseTo(0.0132, within(1e-12));
    outdoors.begin(30, 0.01);
    outdoors.flow(0, LEAK);
    assertThat(outdoors.blowing()).isZero();
    assertThat(drivers.inflowHeat(0, 25)).isCloseTo(256.15, within(0.01));
  }
}
