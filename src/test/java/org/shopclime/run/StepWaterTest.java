package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopModel;

/** Water of a room in one step, at 20 °C indoors and out. */
class StepWaterTest {

  private static final double STEP = 300;
  private static final double GAIN = 1e-4;

  private final ShopModel model = MadeShops.steady(MadeShops.box("100 m3", "1 /h", ""), 20, 0.008);
  private final DayParts parts = DayParts.of(model, Optional.empty());

  /** All that comes in in a step of 0.04 kg/s of outdoor air at 8 g/kg, 0.1 g/s of gains. */
  private DayLedger step(double coil) {
    parts.outdoors().begin(20, 0.008);
    parts.outdoors().flow(0, 0.04);
    parts.water().gain(0, GAIN);
    DayLedger ledger = new DayLedger(1);
    parts.water().make(0, parts.water().look(0, coil), coil, Optional.of(ledger));
    return ledger;
  }

  /** What came in is what the air gained: its mass by pencil, at 25.6 °C, 100 m³ x 1.16 kg. */
  @Test
  void itsBooksClose() {
    double before = parts.water().humidityRatio(0);
    DayLedger ledger = step(2e-5);
    double gained = (parts.water().humidityRatio(0) - before) * model.roomWater(0).dryAir();
    assertThat(model.roomWater(0).dryAir()).isCloseTo(116, within(0.5));
    assertThat(ledger.waterGiven).isCloseTo(GAIN * STEP, within(1e-15));
    assertThat(ledger.waterCoil).isCloseTo(2e-5 * STEP, within(1e-15));
    double held = ledger.waterIn + ledger.waterGiven - ledger.waterCoil;
    assertThat(gained).isLessThanOrEqualTo(held + 1e-12).isGreaterThan(0);
    assertThat(ledger.waterIn).isNegative();
  }

  /** A unit may take all that the air holds, and a cap that counts what comes in lies above. */
  @Test
  void noAirGetsDrierThanDry() {
    parts.outdoors().begin(20, 0.008);
    parts.outdoors().flow(0, 0.04);
    parts.water().gain(0, GAIN);
    double held = 0.008 * model.roomWater(0).dryAir() / STEP;
    assertThat(parts.water().mostOfHeld(0)).isCloseTo(held, within(1e-12));
    assertThat(parts.water().most(0)).isCloseTo(held + 0.04 * 0.008 + GAIN, within(1e-12));
    step(parts.water().most(0));
    assertThat(parts.water().humidityRatio(0)).isGreaterThanOrEqualTo(0);
  }

  /**
   * A cooler that blows all the step brings its own water: 0.5 kg/s of 14 g/kg beside 0.04 of 8
   * leave a room, in which it changes the air in four minutes, near (7 + 0.32 + 0.1) / 0.54 = 13.7
   * g/kg within the hour.
   */
  @Test
  void aCoolerBringsItsWater() {
    parts.outdoors().supply(new Blown(0.5, 20, 0.014, 0));
    parts.water().blown(1);
    double came = 0;
    for (int i = 0; i < 12; i++) {
      came += step(0).waterIn;
    }
    assertThat(parts.water().humidityRatio(0)).isCloseTo(0.0137, within(0.0002));
    assertThat(came).isPositive();
  }
}
