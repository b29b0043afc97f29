package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.unit.Compressor;
import org.shopclime.unit.DuctlessHeatPump;
import org.shopclime.unit.Rating;
import org.shopclime.unit.RoomEffect;
import org.shopclime.unit.RoomPlant;

/**
 * A year with a usual ductless heat pump of variable speed in one room: it cools as the year asks
 * and gives the heat the year asks; what it cannot give in the cold, electric resistance does.
 *
 * <p>A usual one: EER {@value #EER} BTU/Wh, as much heat at 47 °F as it cools at 95 °F, {@value
 * #COP} W of heat for each watt there. Common practice; the label of a real one says more.
 */
public final class PumpYear {

  /** Cooling for each watt-hour in the rated state, BTU/Wh. */
  public static final double EER = 12;

  /** Heat for each watt at 47 °F. */
  public static final double COP = 3.6;

  private static final double WATTS_PER_KILOWATT = 1000;

  private final double[] cooling = new double[YearWeather.HOURS];
  private final double[] heating = new double[YearWeather.HOURS];
  private double heat;
  private double resistance;

  private PumpYear() {}

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
    Rating label = Rating.ofEer(capacity, EER);
    double efficiency = capacity / label.power();
    Cooling cooler =
        Cooling.of(
            Cooling.Kind.VARIABLE_HEAT_PUMP,
            room,
            new Cooling.Plate(capacity, efficiency, Cooling.Label.EER, 1));
    YearResult run = YearRun.of(year, Optional.of(cooler));
    RoomPlant heater =
        DuctlessHeatPump.usual(label, Rating.ofCop(capacity, COP), Compressor.variableSpeed())
            .heating();
    PumpYear told = new PumpYear();
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      told.cooling[hour] = run.at(YearResult.Figure.POWER, room, hour) / WATTS_PER_KILOWATT;
      double asked = run.at(YearResult.Figure.HEATING, room, hour);
      if (asked > 0) {
        told.heat(hour, asked, heater, air(run, room, hour), outdoor(year, hour));
      }
    }
    return told;
  }

  private static AirState air(YearResult run, int room, int hour) {
    return new AirState(
        run.at(YearResult.Figure.AIR, room, hour),
        run.at(YearResult.Figure.HUMIDITY_RATIO, room, hour),
        run.year().pressure());
  }

  private static AirState outdoor(ShopYear year, int hour) {
    return new AirState(
        year.weather().dryBulb(hour), year.outdoorHumidityRatio(hour), year.pressure());
  }

  private void heat(int hour, double asked, RoomPlant heater, AirState room, AirState outdoor) {
    RoomEffect effect = heater.at(room, outdoor, heater.demandFor(asked, room, outdoor));
    double missing = Math.max(0, asked - effect.sensible());
    heating[hour] = (effect.power() + missing) / WATTS_PER_KILOWATT;
    heat += asked / WATTS_PER_KILOWATT;
    resistance += missing / WATTS_PER_KILOWATT;
  }

  /**
   * Electricity for cooling in an hour.
   *
   * @param hour 0 to 8,759
   * @return kWh
   */
  public double cooling(int hour) {
    return cooling[hour];
  }

  /**
   * Electricity for heating in an hour, resistance included.
   *
   * @param hour 0 to 8,759
   * @return kWh
   */
  public double heating(int hour) {
    return heating[hour];
  }

  /**
   * Heat the room asks for.
   *
   * @return kWh a year
   */
  public double heat() {
    return heat;
  }

  /**
   * The part of it that resistance gives.
   *
   * @return kWh a year
   */
  public double resistance() {
    return resistance;
  }
}
