package org.shopclime.run;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.balance.ShopYear;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.unit.DuctlessHeatPump;
import org.shopclime.unit.Rating;

/**
 * A year with a usual ductless heat pump of variable speed in one room: it cools as the year asks
 * and gives the heat the year asks; what it cannot give in the cold, electric resistance does.
 *
 * <p>A usual one: EER {@value #EER} BTU/Wh, as much heat at 47 °F as it cools at 95 °F, {@value
 * Cooling#USUAL_COP} W of heat for each watt there. Common practice; the label of a real one says
 * more.
 */
public final class PumpYear {

  /** Cooling for each watt-hour in the rated state, BTU/Wh. */
  public static final double EER = 12;

  private static final double WATTS_PER_KILOWATT = 1000;

  private final YearResult run;
  private final int room;

  private PumpYear(YearResult run, int room) {
    this.run = run;
    this.room = room;
  }

  /**
   * Runs the year.
   *
   * @param year the shop through the year, its room cooled by a unit, heated ideally where it is
   *     heated
   * @param room index of the room
   * @param capacity rated cooling, W, above 0
   * @return the year with the pump
   * @throws RoomTooHot as {@link YearRun#of}
   */
  public static PumpYear of(ShopYear year, int room, double capacity) {
    double efficiency = capacity / Rating.ofEer(capacity, EER).power();
    Cooling pump =
        Cooling.heatPump(
            Cooling.Kind.VARIABLE_HEAT_PUMP,
            room,
            new Cooling.Plate(capacity, efficiency, Cooling.Label.EER, 1),
            new Cooling.Heat(
                capacity, OptionalDouble.empty(), DuctlessHeatPump.USUAL_LOWEST_OUTDOOR));
    return new PumpYear(YearRun.of(year, Optional.of(pump)), room);
  }

  /**
   * Electricity for cooling in an hour.
   *
   * @param hour 0 to 8,759
   * @return kWh
   */
  public double cooling(int hour) {
    return run.at(Figure.POWER, room, hour) / WATTS_PER_KILOWATT;
  }

  /**
   * Electricity for heating in an hour, resistance included.
   *
   * @param hour 0 to 8,759
   * @return kWh
   */
  public double heating(int hour) {
    return (run.at(Figure.PUMP_POWER, room, hour) + run.missing(room, hour)) / WATTS_PER_KILOWATT;
  }

  /**
   * Heat the room asks for.
   *
   * @return kWh a year
   */
  public double heat() {
    return run.kilowattHours(Figure.HEATING, room);
  }

  /**
   * The part of it that resistance gives.
   *
   * @return kWh a year
   */
  public double resistance() {
    return heat() - run.kilowattHours(Figure.PUMP_HEAT, room);
  }
}
