package org.shopclime.load;

import org.shopclime.balance.DaySlots;
import org.shopclime.heat.Waves;

/**
 * Constant flows that carry as much heat as flows that change by the slot: a door that stands open
 * for five minutes carries off what the air holds, and then too little to go on as it began.
 *
 * <p>Air between faces and outdoors, both constant over the while, stands from outdoors as far as
 * φ: C φ' = S (1 - φ) - G φ, solved exactly through the slots of the day that repeats. The flow of
 * a half hour is the mean of G φ over that of φ.
 */
final class SlotFlows {

  private static final int SLOTS = DaySlots.COUNT / Waves.STEPS;

  private SlotFlows() {}

  /**
   * The flows of the half hours.
   *
   * @param slots flow of each slot, W/K
   * @param faces conductance from the air to the faces, W/K
   * @param capacity heat capacity of the air, J/K
   * @param into takes the flow of each half hour, W/K
   */
  static void effective(double[] slots, double faces, double capacity, double[] into) {
    double carry = 1;
    double rest = 0;
    for (double flow : slots) {
      double left = left(faces + flow, capacity);
      carry *= left;
      rest = rest * left + settled(faces, flow) * (1 - left);
    }
    double far = carry < 1 ? rest / (1 - carry) : 1;
    for (int step = 0; step < into.length; step++) {
      double carried = 0;
      double mean = 0;
      double plain = 0;
      for (int slot = step * SLOTS; slot < (step + 1) * SLOTS; slot++) {
        double sum = faces + slots[slot];
        double left = left(sum, capacity);
        double settled = settled(faces, slots[slot]);
        double rate = sum * DaySlots.SECONDS / capacity;
        double stay = rate > 0 ? (1 - left) / rate : 1;
        double each = settled + (far - settled) * (capacity > 0 ? stay : 0);
        carried += slots[slot] * each;
        mean += each;
        plain += slots[slot] / SLOTS;
        far = settled + (far - settled) * left;
      }
      into[step] = mean > 0 ? carried / mean : plain;
    }
  }

  /** What is left of a difference at the end of a slot. */
  private static double left(double conductance, double capacity) {
    return capacity > 0 ? Math.exp(-conductance * DaySlots.SECONDS / capacity) : 0;
  }

  private static double settled(double faces, double flow) {
    return faces + flow > 0 ? faces / (faces + flow) : 1;
  }
}
