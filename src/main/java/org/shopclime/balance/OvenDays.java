package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.air.MoistAir;
import org.shopclime.gain.OvenBatch;
import org.shopclime.gain.OvenBox;
import org.shopclime.gain.OvenDay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.OvenBatches;

/** The batches of an owner's oven on a day. */
final class OvenDays {

  /** Dry air drawn into a hot oven, kg/m³ at 25 °C and sea level; a fan's flow is told as such. */
  private static final double ROOM_AIR = MoistAir.dryAirDensity(25, 0.01, 101_325);

  private OvenDays() {}

  /**
   * The day.
   *
   * @param oven an oven with batches; its span at the likely value
   * @param roomCelsius room, °C
   * @param when its schedule on that day
   */
  static OvenDay of(Gain.Oven oven, double roomCelsius, DaySlots when) {
    OvenBatches batches = oven.batches().orElseThrow();
    OvenBox box = GainHeat.box(oven);
    OvenBatch batch =
        new OvenBatch(
            box,
            batches.parts(),
            batches.thickness(),
            OvenBatch.usualCapacity(box),
            batches.cure(),
            batches.doorOpen(),
            batches.vent() * ROOM_AIR);
    return OvenDay.of(batch, starts(batches, when), roomCelsius, batches.partsInRoom());
  }

  /** When the batches are meant to begin, s after midnight, from the first of the day on. */
  static double[] starts(OvenBatches batches, DaySlots when) {
    int first = when.firstActiveSlot();
    if (first < 0) {
      return new double[0];
    }
    List<Double> starts = new ArrayList<>();
    int active = 0;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      active += when.at(slot) > 0 ? 1 : 0;
    }
    int passed = 0;
    int begun = 0;
    for (int since = 0; since < DaySlots.COUNT; since++) {
      int slot = (first + since) % DaySlots.COUNT;
      if (when.at(slot) > 0) {
        boolean begins = since == 0 || when.at(Math.floorMod(slot - 1, DaySlots.COUNT)) == 0;
        double late = begins ? (1 - when.at(slot)) * DaySlots.SECONDS : 0;
        double at = (first + since) * DaySlots.SECONDS;
        if (batches.number().isEmpty() && begins) {
          starts.add(at + late);
        }
        if (batches.number().isPresent()) {
          double number = Math.rint(batches.number().get());
          while (begun < number && begun * active / number < passed + 1) {
            starts.add(at + (begun * active / number - passed) * DaySlots.SECONDS);
            begun++;
          }
        }
        passed++;
      }
    }
    return starts.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** The books of a day. */
  static OvenBook book(OvenDay day) {
    double heater = 0;
    double room = 0;
    double vented = 0;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      heater += day.heater(slot) * DaySlots.SECONDS;
      room += day.given(slot) * DaySlots.SECONDS;
      vented += day.vented(slot) * DaySlots.SECONDS;
    }
    return new OvenBook(
        day.done(), day.heatUp(), day.longest(), heater, room, vented, day.carried());
  }

  /** Part of each slot in which a batch is in the oven, its fan on. */
  static DaySlots use(OvenDay day) {
    double[] use = new double[DaySlots.COUNT];
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      use[slot] = day.use(slot);
    }
    return DaySlots.of(use);
  }
}
