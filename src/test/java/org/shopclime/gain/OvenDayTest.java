package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntToDoubleFunction;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class OvenDayTest {

  private static final OvenBox BOX = new OvenBox(1.2, 1.2, 1.8, 1.4, 200, 6000, 0);
  private static final double CAPACITY = OvenBatch.usualCapacity(BOX);
  private static final double HOUR = 3600;

  private static OvenBatch batch(double mass, double exhaust) {
    return new OvenBatch(BOX, mass, 0.003, CAPACITY, 1200, 60, exhaust);
  }

  private static double kilowattHours(IntToDoubleFunction watts) {
    double sum = 0;
    for (int slot = 0; slot < OvenDay.SLOTS; slot++) {
      sum += watts.applyAsDouble(slot) / 12_000;
    }
    return sum;
  }

  /**
   * By pencil, 45 kg at 200 °C from a room of 30 °C: box 92.2 kJ/K · 170 K = 15.7 MJ, parts 45 ·
   * 490 · 168 = 3.7 MJ, shell 7.4 W/K · some 150 K · 4700 s = 5 MJ: 24 MJ or 6.8 kWh. All of it
   * stays in the room; parts give off 0.95 kWh of it after the door opens, 63 % in the first 481 s.
   */
  @Test
  void oneBatchByPencil() {
    OvenDay day = OvenDay.of(batch(45, 0), new double[] {13 * HOUR}, 30, 1);
    assertThat(day.done()).isEqualTo(1);
    assertThat(day.reached()).isTrue();
    assertThat(kilowattHours(day::heater)).isCloseTo(6.8, within(0.7));
    assertThat(kilowattHours(day::given)).isCloseTo(kilowattHours(day::heater), within(1e-9));
    assertThat(day.missing()).isCloseTo(0, within(1e-3));
    assertThat(day.use(13 * 12)).isCloseTo(1, within(1e-12));
    assertThat(day.use(13 * 12 - 1)).isZero();
    assertThat(kilowattHours(day::use) * 12_000 * 300).isCloseTo(day.longest(), within(1e-6));
    int out = (int) ((13 * HOUR + day.longest()) / 300);
    OvenDay elsewhere = OvenDay.of(batch(45, 0), new double[] {13 * HOUR}, 30, 0);
    assertThat(elsewhere.carried()).isCloseTo(3.7e6, within(0.1e6));
    double parts = 0;
    for (int slot = out; slot < out + 3; slot++) {
      parts += (day.given(slot) - elsewhere.given(slot)) * 300;
    }
    double since = (out + 3) * 300 - 13 * HOUR - day.longest();
    assertThat(parts / elsewhere.carried()).isCloseTo(1 - Math.exp(-since / 481.0), within(1e-3));
  }

  /** The box of 15.7 MJ behind 7.4 W/K cools in 12,480 s: after 8 h a tenth of it is left. */
  @Test
  void boxGivesBackItsHeatAfterWork() {
    OvenDay day = OvenDay.of(batch(0, 0), new double[] {12 * HOUR}, 30, 1);
    int out = (int) Math.ceil((12 * HOUR + day.longest()) / 300);
    double first = day.given(out);
    double later = day.given((out + 96) % OvenDay.SLOTS);
    assertThat(later / first).isCloseTo(Math.exp(-8 * HOUR / 12_480), within(5e-3));
  }

  @Test
  void secondBatchFindsTheBoxWarm() {
    OvenDay one = OvenDay.of(batch(45, 0), new double[] {8 * HOUR}, 30, 1);
    OvenDay two = OvenDay.of(batch(45, 0), new double[] {8 * HOUR, 8 * HOUR}, 30, 1);
    assertThat(two.done()).isEqualTo(2);
    double second = kilowattHours(two::heater) - kilowattHours(one::heater);
    assertThat(second).isBetween(1.5, 0.6 * kilowattHours(one::heater));
  }

  @Test
  void whatFindsNoTimeIsLeftOut() {
    double[] starts = new double[48];
    OvenDay day = OvenDay.of(batch(400, 0), starts, 30, 1);
    assertThat(day.done()).isLessThan(48);
    assertThat(day.done() * day.longest()).isLessThan(30 * HOUR);
  }

  @Test
  void noBatchIsNothing() {
    OvenDay day = OvenDay.of(batch(45, 0), new double[0], 30, 1);
    assertThat(kilowattHours(day::given)).isZero();
    assertThat(day.done()).isZero();
    assertThat(day.reached()).isTrue();
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OvenDay.of(batch(45, 0), new double[] {9 * HOUR, 8 * HOUR}, 30, 1))
        .withMessageContaining("start of a batch");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OvenDay.of(batch(45, 0), new double[] {0}, 30, 1.5));
  }

  /** Electricity of the day is what room, fan and parts carried out got. */
  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void theBooksOfTheDayClose(
      @ForAll @DoubleRange(max = 100) double mass,
      @ForAll @DoubleRange(max = 0.02) double exhaust,
      @ForAll @DoubleRange(max = 1) double inRoom,
      @ForAll @IntRange(min = 0, max = 86_399) int first,
      @ForAll @IntRange(min = 1, max = 5) int batches) {
    double[] starts = new double[batches];
    for (int i = 0; i < batches; i++) {
      starts[i] = first + 4000.0 * i;
    }
    OvenDay day = OvenDay.of(batch(mass, exhaust), starts, 25, inRoom);
    assertThat(day.done()).isPositive();
    assertThat(day.missing()).isCloseTo(0, within(1e-9 * 3.6e6 * kilowattHours(day::heater)));
  }
}
