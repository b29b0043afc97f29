package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.DaySlots;
import org.shopclime.heat.Waves;

/** Flows that change within a half hour, made constant ones that carry as much heat. */
class SlotFlowsTest {

  private static double[] effective(double[] slots, double faces, double capacity) {
    double[] steps = new double[Waves.STEPS];
    SlotFlows.effective(slots, faces, capacity, steps);
    return steps;
  }

  @Test
  void constantFlowsStay() {
    double[] slots = new double[DaySlots.COUNT];
    Arrays.fill(slots, 30);
    assertThat(effective(slots, 100, 5e4)).containsOnly(new double[] {30}, within(1e-12));
  }

  /** Air without capacity: each slot passes S G / (S + G); 60 in one of six slots, S = 40. */
  @Test
  void airThatStoresNothingPassesEachSlotAlone() {
    double[] slots = new double[DaySlots.COUNT];
    slots[13] = 60;
    double[] steps = effective(slots, 40, 0);
    double passed = 40 * 60 / 100.0 / 6;
    double far = (5 + 40 / 100.0) / 6;
    assertThat(steps[2]).isCloseTo(passed / far, within(1e-12));
    assertThat(steps[1]).isZero();
    assertThat(steps[3]).isZero();
  }

  /** Air of endless capacity does not stir within a half hour: the mean flow counts. */
  @Test
  void airThatStoresMuchTakesTheMean() {
    double[] slots = new double[DaySlots.COUNT];
    for (int slot = 0; slot < slots.length; slot += 6) {
      slots[slot] = 60;
    }
    double[] steps = effective(slots, 40, 1e12);
    assertThat(steps).containsOnly(new double[] {10}, within(1e-6));
  }

  /** The same by small steps of the midpoint rule over two days. */
  @Test
  void flushedAirCarriesLess() {
    double[] slots = new double[DaySlots.COUNT];
    for (int slot = 96; slot < 216; slot += 12) {
      slots[slot] = 500;
      slots[slot + 7] = 90;
    }
    double faces = 50;
    double capacity = 6e4;
    double[] carried = new double[Waves.STEPS];
    double[] far = new double[Waves.STEPS];
    double now = 1;
    int parts = 3000;
    for (int day = 0; day < 2; day++) {
      Arrays.fill(carried, 0);
      Arrays.fill(far, 0);
      for (int slot = 0; slot < slots.length; slot++) {
        for (int part = 0; part < parts; part++) {
          double length = 300.0 / parts / capacity;
          double sum = faces + slots[slot];
          double move = (faces - sum * now) * length / (1 + sum * length / 2);
          carried[slot / 6] += slots[slot] * (now + move / 2);
          far[slot / 6] += now + move / 2;
          now += move;
        }
      }
    }
    double[] steps = effective(slots, faces, capacity);
    for (int step = 0; step < steps.length; step++) {
      assertThat(steps[step]).isCloseTo(carried[step] / far[step], within(1e-4));
    }
    assertThat(steps[16]).as("plain mean is 83").isLessThan(70);
  }

  /** A bag without faces keeps what flowed in last, and passes no heat while nothing flows. */
  @Test
  void bagWithoutFaces() {
    double[] slots = new double[DaySlots.COUNT];
    Arrays.fill(slots, 100, 150, 20);
    double[] steps = effective(slots, 0, 1e5);
    assertThat(steps[0]).isZero();
    assertThat(steps[20]).isCloseTo(20, within(1e-9));
    assertThat(effective(new double[DaySlots.COUNT], 0, 1e5)).containsOnly(0);
  }
}
