package org.shopclime.run;

import org.shopclime.air.AirState;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.unit.RoomEffect;
import org.shopclime.unit.RoomPlant;

/**
 * Shares the heat that a room asks between its heat pump and the heater beside it, hour by hour:
 * the pump gives what it can in the mean air of the hour, and the heater the rest.
 */
final class PumpHours {

  private PumpHours() {}

  /** Fills in what the pump gives and draws in some hours that were run. */
  static void tell(YearResult result, int room, RoomPlant pump, int from, int to) {
    for (int hour = from; hour < to; hour++) {
      double asked = result.at(Figure.HEATING, room, hour);
      if (asked > 0) {
        AirState indoors =
            new AirState(
                result.at(Figure.AIR, room, hour),
                result.at(Figure.HUMIDITY_RATIO, room, hour),
                result.year().pressure());
        AirState outdoors =
            new AirState(
                result.year().weather().dryBulb(hour),
                result.year().outdoorHumidityRatio(hour),
                result.year().pressure());
        RoomEffect effect = pump.at(indoors, outdoors, pump.demandFor(asked, indoors, outdoors));
        result.setPump(room, hour, Math.min(asked, effect.sensible()), effect.power());
      }
    }
  }
}
