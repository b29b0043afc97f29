package org.shopclime.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.climate.Climates;
import org.shopclime.climate.LaidOutYear;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.WeatherYear;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.run.Cooling;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearRun;
import org.shopclime.shop.Shop;

/**
 * A year of the shop of two rooms and 25 surfaces with its unit, in ms; beside it what is made
 * ready before and used again, and the bare loop that advances the same walls and rooms by the same
 * weather, sun and gains 8,760 times, without anything that answers to them: no unit, no set point,
 * no radiation by the fourth power, no water, no flow that follows the air.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class YearBenchmark {

  private static final double HOUR = 3600;

  private Shop shop;
  private WeatherYear laidOut;
  private YearWeather weather;
  private ShopYear year;
  private Optional<Cooling> cooling;
  private Climates climates;
  private StationClimate climate;

  /** Makes the year ready. */
  @Setup
  public void read() {
    shop = BenchShop.shop();
    climates = Climates.load();
    climate = climates.find("722230").orElseThrow();
    laidOut = layingOut();
    weather = weather();
    year = sunOnTheShop();
    cooling = Optional.of(Cooling.window(0, 3516.85, 3.19, Cooling.Label.CEER, 1));
  }

  /**
   * Day types as hours.
   *
   * @return the year
   */
  @Benchmark
  public WeatherYear layingOut() {
    return LaidOutYear.of(climates.typicalYear(climate.station()).orElseThrow(), climate);
  }

  /**
   * Places of the sun, sky and humidity of a year, for any shop.
   *
   * @return the weather
   */
  @Benchmark
  public YearWeather weather() {
    return YearWeather.of(laidOut);
  }

  /**
   * Sun on the faces of a shop, and its networks.
   *
   * @return the shop in its year
   */
  @Benchmark
  public ShopYear sunOnTheShop() {
    return ShopYear.of(shop, weather);
  }

  /**
   * The year itself.
   *
   * @return what came of it
   */
  @Benchmark
  public YearResult year() {
    return YearRun.of(year, cooling);
  }

  /**
   * The bare loop.
   *
   * @return sum of the temperatures of the first room
   */
  @Benchmark
  public double bareLoop() {
    List<ModeMarch> marches = new ArrayList<>();
    List<Drivers> drivers = new ArrayList<>();
    for (int number = 0; number < year.networks(); number++) {
      marches.add(ModeMarch.handingOver(year.network(number), HOUR));
      drivers.add(new Drivers(year.network(number)));
    }
    double[] nothing = new double[2 * year.network(0).chains()];
    ModeMarch now = marches.get(year.networkOf(0));
    now.start(year.weather().dryBulb(0));
    double sum = 0;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      int number = year.networkOf(hour);
      Drivers drive = drivers.get(number);
      year.fill(drive, hour);
      year.radiate(drive, hour, nothing);
      double dryBulb = year.weather().dryBulb(hour);
      double humidHeat = MoistAir.humidHeat(year.outdoorHumidityRatio(hour));
      for (int room = 0; room < year.rooms(); room++) {
        double flow = year.inflow(room, year.plants().cooledTo(room), hour);
        drive.inflow(room, flow * humidHeat, dryBulb);
      }
      if (marches.get(number) != now) {
        marches.get(number).takeOver(now);
        now = marches.get(number);
      }
      now.step(drive);
      sum += now.air(0);
    }
    return sum;
  }
}
