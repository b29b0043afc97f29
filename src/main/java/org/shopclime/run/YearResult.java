package org.shopclime.run;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;

/** What a year's run tells of each room: hours are means, from 0 to 8,759. */
public final class YearResult {

  /** What is told of each room and hour. */
  public enum Figure {
    /** Air temperature, °C. */
    AIR,
    /** Mean of air and radiant temperature, °C. */
    OPERATIVE,
    /** Humidity ratio, kg/kg. */
    HUMIDITY_RATIO,
    /** Heat put in by a heating plant, W. */
    HEATING,
    /** Sensible heat taken out by an ideal plant or the unit, W. */
    COOLING,
    /** Latent heat taken out by the unit, W. */
    LATENT,
    /** Electric power of the unit, W. */
    POWER,
    /** The part of the heating that the unit gives, a heat pump, W. */
    PUMP_HEAT,
    /** Electric power it draws for that, W. */
    PUMP_POWER,
    /** Electric power of the room's dehumidifier, W. */
    DRIER_POWER,
    /** Water that takes out, kg/s. */
    DRIER_WATER
  }

  private final ShopYear year;

  /** By room and hour. */
  private final double[][] air;

  private final double[][] operative;
  private final double[][] humidityRatio;
  private final double[][] heating;
  private final double[][] cooling;
  private final double[][] latent;
  private final double[][] power;
  private final double[][] pumpHeat;
  private final double[][] pumpPower;
  private final double[][] drierPower;
  private final double[][] drierWater;
  private final double[][] iron;
  private final double[][] slab;

  YearResult(ShopYear year) {
    this.year = year;
    air = new double[year.rooms()][YearWeather.HOURS];
    operative = new double[year.rooms()][YearWeather.HOURS];
    humidityRatio = new double[year.rooms()][YearWeather.HOURS];
    heating = new double[year.rooms()][YearWeather.HOURS];
    cooling = new double[year.rooms()][YearWeather.HOURS];
    latent = new double[year.rooms()][YearWeather.HOURS];
    power = new double[year.rooms()][YearWeather.HOURS];
    pumpHeat = new double[year.rooms()][YearWeather.HOURS];
    pumpPower = new double[year.rooms()][YearWeather.HOURS];
    drierPower = new double[year.rooms()][YearWeather.HOURS];
    drierWater = new double[year.rooms()][YearWeather.HOURS];
    iron = new double[year.rooms()][YearWeather.HOURS];
    slab = new double[year.rooms()][YearWeather.HOURS];
  }

  /** Adds a step that lasts some share of an hour. */
  void add(int room, int hour, double share, double airMean, double radiantMean, double humidity) {
    air[room][hour] += share * airMean;
    operative[room][hour] += share * (airMean + radiantMean) / 2;
    humidityRatio[room][hour] += share * humidity;
  }

  /** Adds the coldest faces of iron and of floors on the ground in it, °C; infinite for none. */
  void addFaces(int room, int hour, double share, double ironMean, double slabMean) {
    iron[room][hour] += share * ironMean;
    slab[room][hour] += share * slabMean;
  }

  /** Adds what a plant did in it, W, below 0 for cooling. */
  void addPlant(int room, int hour, double share, double plant) {
    if (plant > 0) {
      heating[room][hour] += share * plant;
    } else {
      cooling[room][hour] -= share * plant;
    }
  }

  /** Adds what the unit took out beside that, and drew, W. */
  void addUnit(int room, int hour, double share, double latentHeat, double drawn) {
    latent[room][hour] += share * latentHeat;
    power[room][hour] += share * drawn;
  }

  /** Tells what a heat pump gave of the hour's heating, and drew for it, W. */
  void setPump(int room, int hour, double heat, double drawn) {
    pumpHeat[room][hour] = heat;
    pumpPower[room][hour] = drawn;
  }

  /** Adds what a dehumidifier drew, W, and took out, kg/s. */
  void addDrier(int room, int hour, double share, double drawn, double water) {
    drierPower[room][hour] += share * drawn;
    drierWater[room][hour] += share * water;
  }

  private double[][] of(Figure figure) {
    return switch (figure) {
      case AIR -> air;
      case OPERATIVE -> operative;
      case HUMIDITY_RATIO -> humidityRatio;
      case HEATING -> heating;
      case COOLING -> cooling;
      case LATENT -> latent;
      case POWER -> power;
      case PUMP_HEAT -> pumpHeat;
      case PUMP_POWER -> pumpPower;
      case DRIER_POWER -> drierPower;
      case DRIER_WATER -> drierWater;
    };
  }

  /**
   * The shop that was run.
   *
   * @return the shop through its year
   */
  public ShopYear year() {
    return year;
  }

  /**
   * One figure of one hour.
   *
   * @param figure which
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return mean of the hour
   */
  public double at(Figure figure, int room, int hour) {
    return of(figure)[room][hour];
  }

  /**
   * Heat that a heater gives, where a heat pump does not give all or none is there.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return mean of the hour, W
   */
  public double missing(int room, int hour) {
    return heating[room][hour] - pumpHeat[room][hour];
  }

  /**
   * Face of the machines and stock of iron that the owner tells.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return mean of the hour, °C; infinite where there is none
   */
  public double iron(int room, int hour) {
    return iron[room][hour];
  }

  /**
   * The coldest face of the floors on the ground.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return mean of the hour, °C; infinite where no floor lies on the ground
   */
  public double slab(int room, int hour) {
    return slab[room][hour];
  }

  /**
   * A sum over the year.
   *
   * @param figure one told in W
   * @param room index of the room
   * @return kWh
   */
  public double kilowattHours(Figure figure, int room) {
    return sum(hour -> at(figure, room, hour)) / 1000;
  }

  /**
   * A sum over a month.
   *
   * @param figure one told in W
   * @param room index of the room
   * @param month 1 to 12
   * @return kWh
   */
  public double kilowattHours(Figure figure, int room, int month) {
    return sum(hour -> YearWeather.monthOf(hour) == month ? at(figure, room, hour) : 0) / 1000;
  }

  /**
   * The hour of the greatest value; the first of equals.
   *
   * @param figure which
   * @param room index of the room
   * @return 0 to 8,759
   */
  public int peakHour(Figure figure, int room) {
    return best(figure, room, value -> value);
  }

  /**
   * The hour of the least value; the first of equals.
   *
   * @param figure which
   * @param room index of the room
   * @return 0 to 8,759
   */
  public int leastHour(Figure figure, int room) {
    return best(figure, room, value -> -value);
  }

  /**
   * Mean over the year.
   *
   * @param figure which
   * @param room index of the room
   * @return mean
   */
  public double mean(Figure figure, int room) {
    return sum(hour -> at(figure, room, hour)) / YearWeather.HOURS;
  }

  /**
   * Hours whose mean lies above a value.
   *
   * @param figure which
   * @param room index of the room
   * @param value limit
   * @return number of hours, 0 to 8,760
   */
  public int hoursAbove(Figure figure, int room, double value) {
    return (int) sum(hour -> at(figure, room, hour) > value ? 1 : 0);
  }

  /**
   * The same while work goes on, each hour counting by the part of it that is worked.
   *
   * @param figure which
   * @param room index of the room
   * @param value limit
   * @return hours, 0 to 8,760
   */
  public double workHoursAbove(Figure figure, int room, double value) {
    return sum(hour -> at(figure, room, hour) > value ? year.working(hour) : 0);
  }

  private int best(Figure figure, int room, DoubleUnaryOperator worth) {
    int best = 0;
    for (int hour = 1; hour < YearWeather.HOURS; hour++) {
      if (worth.applyAsDouble(at(figure, room, hour))
          > worth.applyAsDouble(at(figure, room, best))) {
        best = hour;
      }
    }
    return best;
  }

  private static double sum(IntToDoubleFunction value) {
    double sum = 0;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      sum += value.applyAsDouble(hour);
    }
    return sum;
  }
}
