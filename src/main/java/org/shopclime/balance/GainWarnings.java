package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.gain.MotorGain;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** Where the heat of a gain rests on something the owner should know. */
public final class GainWarnings {

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
        if (gain instanceof Gain.Oven oven && !GainHeat.box(oven).reaches(room.setPoint())) {
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

  private static boolean isOutside(double power) {
    return power > 0 && !MotorGain.isInTable(power);
  }
}
