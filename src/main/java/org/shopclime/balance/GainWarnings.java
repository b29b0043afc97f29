package org.shopclime.balance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.shopclime.gain.MotorGain;
import org.shopclime.gain.OvenDay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** Where the heat of a gain rests on something the owner should know. */
public final class GainWarnings {

  /** The clock's hour does not matter to what an oven can do. */
  private static final LocalDate ANY_DAY = LocalDate.of(YearWeather.YEAR, 7, 15);

  private GainWarnings() {}

  /**
   * What should stand beside the figures.
   *
   * @param shop the shop, spans at their likely value
   * @return one warning for each oven whose heater is too weak for its set point and parts, and for
   *     each motor outside the table of efficiencies
   */
  public static List<Warning> of(Shop shop) {
    List<Warning> warnings = new ArrayList<>();
    for (int i = 0; i < shop.rooms().size(); i++) {
      Room room = shop.rooms().get(i);
      for (int j = 0; j < room.gains().size(); j++) {
        String path = "rooms[" + i + "].gains[" + j + "]";
        Gain gain = room.gains().get(j);
        if (gain instanceof Gain.Oven oven && oven.batches().isPresent()) {
          warnings.addAll(batches(path, oven, room, new Week(shop, ANY_DAY)));
        } else if (gain instanceof Gain.Oven oven && !GainHeat.box(oven).reaches(room.setPoint())) {
          warnings.add(
              new Warning(
                  path + ".heater",
                  "The heater cannot hold the oven at its temperature with these parts; its heat is"
                      + " reckoned from the heater's full power."));
        }
        if ((gain instanceof Gain.Motor motor && isOutside(motor.power()))
            || (gain instanceof Gain.Compressor compressor && isOutside(compressor.power()))) {
          warnings.add(
              new Warning(
                  path + ".power",
                  "A motor of this size is outside the published table of efficiencies; the"
                      + " nearest one in it is taken."));
        }
      }
    }
    return warnings;
  }

  private static List<Warning> batches(String path, Gain.Oven oven, Room room, Week week) {
    DaySlots when = week.slots(oven.when(), DayKind.WORKING);
    OvenDay day = OvenDays.of(oven, room.setPoint(), when);
    int wanted = OvenDays.starts(oven.batches().orElseThrow(), when).length;
    List<Warning> warnings = new ArrayList<>();
    if (!day.reached()) {
      warnings.add(
          new Warning(
              path + ".heater",
              "The heater does not bring parts and vent air to the oven's temperature in four hours;"
                  + " the cure is not reached and the heater's full power is reckoned."));
    }
    if (day.done() < wanted) {
      warnings.add(
          new Warning(
              path + ".batches.number",
              "Only "
                  + day.done()
                  + " of "
                  + wanted
                  + " batches find time in a day of this oven; the others are left out."));
    }
    return warnings;
  }

  private static boolean isOutside(double power) {
    return power > 0 && !MotorGain.isInTable(power);
  }
}
