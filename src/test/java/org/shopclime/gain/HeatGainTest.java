package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shopclime.gain.PeopleGain.Activity;

class HeatGainTest {

  @Test
  void addsAndMultipliesPartByPart() {
    HeatGain sum = new HeatGain(1, 2, 3).plus(new HeatGain(10, 20, 30));
    assertThat(sum).isEqualTo(new HeatGain(11, 22, 33));
    assertThat(sum.times(2)).isEqualTo(new HeatGain(22, 44, 66));
    assertThat(sum.sensible()).isEqualTo(33);
    assertThat(sum.total()).isEqualTo(66);
    assertThat(sum.plus(HeatGain.NONE)).isEqualTo(sum);
    assertThat(sum.times(0)).isEqualTo(HeatGain.NONE);
  }

  @Test
  void splitsDryHeat() {
    assertThat(HeatGain.dry(100, 0.25)).isEqualTo(new HeatGain(75, 25, 0));
  }

  /** A pound of water an hour takes about 1050 to 1076 BTU/h (common practice). */
  @Test
  void moistureFollowsFromLatentHeat() {
    double poundAnHour = 0.45359237 / 3600;
    double latent = 1075.2 * 0.29307107;
    assertThat(new HeatGain(0, 0, latent).moisture()).isCloseTo(poundAnHour, within(1e-7));
    assertThat(new HeatGain(5, 5, 2501).moisture()).isCloseTo(0.001, within(1e-12));
  }

  @Test
  void peopleGiveNoDryHeatInAHotShopAndOnlyDryHeatInTheCold() {
    HeatGain table = PeopleGain.of(Activity.HEAVY_WORK, 1);
    HeatGain hot = PeopleGain.at(Activity.HEAVY_WORK, 1, 40);
    assertThat(hot.sensible()).isZero();
    assertThat(hot.latent()).isCloseTo(table.total(), within(1e-9));
    HeatGain cold = PeopleGain.at(Activity.SEATED, 1, 5);
    assertThat(cold.latent()).isCloseTo(0, within(1e-9));
    assertThat(cold.total()).isCloseTo(PeopleGain.of(Activity.SEATED, 1).total(), within(1e-9));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> new HeatGain(-1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new HeatGain(0, Double.NaN, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new HeatGain(0, 0, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> HeatGain.dry(1, 1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> HeatGain.NONE.times(-1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PeopleGain.of(Activity.SEATED, -1))
        .withMessage("number of people -1.0 is not in 0.0 to 10000.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PeopleGain.at(Activity.SEATED, 1, Double.NaN));
  }
}
