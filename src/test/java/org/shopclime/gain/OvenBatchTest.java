package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OvenBatchTest {

  private static final OvenBox BOX = new OvenBox(1.2, 1.2, 1.8, 1.4, 200, 6000, 0);
  private static final double CAPACITY = OvenBatch.usualCapacity(BOX);

  private static OvenBatch batch(double mass, double exhaust) {
    return new OvenBatch(BOX, mass, 0.003, CAPACITY, 1200, 60, exhaust);
  }

  /**
   * Empty and shut: T = room + P/K (1 - e^(-K t/C)), K 7.385 W/K, C 92.16 kJ/K: 195 °C in 2848 s.
   */
  @Test
  void emptyBoxIsTheExponential() {
    OvenBatch empty = new OvenBatch(BOX, 0, 0.003, CAPACITY, 0, 0, 0);
    OvenAccount account = empty.run(30, 30, 0);
    double k = 11.52 / 1.56;
    double seconds = -CAPACITY / k * Math.log(1 - k * 165 / 6000);
    assertThat(seconds).isCloseTo(2838, within(20.0));
    assertThat(account.heatUpSeconds()).isCloseTo(seconds, within(5.0));
    assertThat(account.heater()).isCloseTo(6000 * account.seconds(), within(1e-3));
    assertThat(account.parts()).isZero();
  }

  /**
   * 45 kg in a box that is hot already. By pencil: parts 45 · 490 · 168 = 3.7 MJ; shell 7.385 · 165
   * W · 2000 s = 2.4 MJ; the door 40 · 2.16 · 160 · 120 s = 1.7 MJ.
   */
  @Test
  void repeatingBatchByPencil() {
    OvenAccount account = batch(45, 0).repeating(30, 0);
    assertThat(account.reached()).isTrue();
    assertThat(account.stored()).isCloseTo(0, within(1e-3));
    assertThat(account.parts()).isCloseTo(3.7e6, within(0.2e6));
    assertThat(account.door()).isCloseTo(1.6e6, within(0.3e6));
    assertThat(account.shell())
        .isCloseTo(7.385 * 165 * account.seconds(), within(0.1 * account.shell()));
    assertThat(account.seconds()).isBetween(1800.0, 3300.0);
    assertThat(account.missing()).isCloseTo(0, within(account.heater() * 1e-9));
    assertThat(account.meanInRoom().total())
        .isCloseTo(account.heater() / account.seconds(), within(1e-3));
  }

  /** 0.03 kg/s carry 30 W/K: four times the shell's. What they carry is not in the room. */
  @Test
  void exhaustTakesHeatOutdoors() {
    OvenAccount with = batch(45, 0.03).repeating(30, 1800);
    OvenAccount without = batch(45, 0).repeating(30, 1800);
    assertThat(with.exhaust()).isGreaterThan(3 * (with.shell() - 2e6)).isPositive();
    assertThat(with.heater()).isGreaterThan(without.heater() + 0.8 * with.exhaust());
    assertThat(with.room()).isCloseTo(with.heater() - with.exhaust(), within(1.0));
    assertThat(without.exhaust()).isCloseTo(0, within(1e-6));
  }

  @Test
  void longPauseCostsABoxOfHeat() {
    OvenAccount soon = batch(45, 0).repeating(30, 0);
    OvenAccount later = batch(45, 0).repeating(30, 24 * 3600.0);
    assertThat(later.startCelsius()).isLessThan(32);
    assertThat(later.heater() - soon.heater())
        .isBetween(0.6 * CAPACITY * 165, 1.2 * CAPACITY * 165);
    assertThat(later.heatUpSeconds()).isGreaterThan(soon.heatUpSeconds() + 1000);
  }

  /** By hand: 7850 · 490 · 0.003 / 24 = 481 s; after that time 63 % is in the room. */
  @Test
  void partsCoolInTheRoom() {
    OvenBatch batch = batch(45, 0);
    assertThat(batch.coolingTime()).isCloseTo(481, within(1.0));
    OvenAccount account = batch.repeating(30, 0);
    assertThat(account.partsGiven(batch, batch.coolingTime()) / account.parts())
        .isCloseTo(0.632, within(1e-3));
    assertThat(account.partsGiven(batch, 1e6)).isCloseTo(account.parts(), within(1e-3));
  }

  @Test
  void weakHeaterNeverGetsThere() {
    OvenBox weak = new OvenBox(1.2, 1.2, 1.8, 1.4, 200, 1000, 0);
    OvenAccount account = new OvenBatch(weak, 45, 0.003, CAPACITY, 600, 60, 0).run(30, 30, 0);
    assertThat(account.reached()).isFalse();
    assertThat(account.missing()).isCloseTo(0, within(account.heater() * 1e-9));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> batch(-1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> batch(45, 0).run(Double.NaN, 30, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new OvenBatch(BOX, 1, 0.06, CAPACITY, 0, 0, 0))
        .withMessageContaining("thickness of the parts");
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void theBooksClose(
      @ForAll @DoubleRange(max = 200) double mass,
      @ForAll @DoubleRange(min = 1, max = 20) double millimetres,
      @ForAll @DoubleRange(max = 0.05) double exhaust,
      @ForAll @DoubleRange(min = -10, max = 220) double start,
      @ForAll @DoubleRange(max = 5000) double idle) {
    OvenAccount account =
        new OvenBatch(BOX, mass, millimetres / 1000, CAPACITY, 900, 45, exhaust)
            .run(start, 25, idle);
    assertThat(account.missing()).isCloseTo(0, within(Math.max(1e6, account.heater()) * 1e-9));
  }
}
