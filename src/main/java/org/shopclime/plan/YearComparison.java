package org.shopclime.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.climate.LaidOutYear;
import org.shopclime.climate.Station;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYear;
import org.shopclime.climate.WeatherYear;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearRun;
import org.shopclime.shop.Choice;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;
import org.shopclime.shop.Unknowns;

/**
 * How well a year laid out from day types stands for the hours it was made from: three shops at a
 * station, run through both.
 *
 * <p>A typical year has no weekdays: its months come from different years. So each run is the mean
 * of seven years that begin on each day of the week, in both; otherwise chance decides which days
 * of a short season are worked.
 */
public final class YearComparison {

  /** Hours above this count as hot, °C: 85 °F. */
  public static final double HOT = (85 - 32) / 1.8;

  private static final int WEEK = 7;

  private YearComparison() {}

  /**
   * One shop at one station.
   *
   * @param station the station
   * @param shop which of the shops, by its name in {@link #SHOPS}
   * @param hourly figures of the hourly year
   * @param types figures of the year of day types
   */
  public record Pair(Station station, String shop, Figures hourly, Figures types) {

    /**
     * A line of the table.
     *
     * @return cells in the order of {@link #HEAD}
     */
    public String row() {
      return String.format(
          Locale.ROOT,
          "%s,\"%s\",%s,%s,%.0f,%.0f,%.0f,%.0f,%.0f,%.0f",
          station.id(),
          station.name(),
          station.state(),
          shop,
          hourly.cooling,
          types.cooling,
          hourly.heating,
          types.heating,
          hourly.hotHours,
          types.hotHours);
    }
  }

  /** Head of the table: each figure by the hourly year and by day types. */
  public static final String HEAD =
      "id,station,state,shop,cooling_hourly_kWh,cooling_types_kWh,heating_hourly_kWh,"
          + "heating_types_kWh,hot_hourly_h,hot_types_h";

  /**
   * Yearly figures.
   *
   * @param cooling heat taken out by an ideal plant, kWh
   * @param heating heat put in by an ideal plant, kWh
   * @param hotHours hours with room air above 85 °F when the shop is left to itself, h
   */
  public record Figures(double cooling, double heating, double hotHours) {}

  /** The shops: bare metal; insulated with an attic; block walls used on weekends only. */
  public static final List<String> SHOPS = List.of("metal-bay", "insulated", "block-weekends");

  /**
   * The stations compared: forty, as many apart as can be in the order of their numbers.
   *
   * @param stations all stations in the order of their numbers
   * @return forty of them
   */
  public static List<Station> stations(List<Station> stations) {
    int wanted = 40;
    List<Station> chosen = new ArrayList<>();
    for (int i = 0; i < wanted; i++) {
      chosen.add(stations.get((2 * i + 1) * stations.size() / (2 * wanted)));
    }
    return List.copyOf(chosen);
  }

  /**
   * Runs the three shops at a station.
   *
   * @param year hours of the station's year
   * @param climate its climate
   * @param types its day types
   * @return one pair for each shop, in the order of {@link #SHOPS}
   */
  public static List<Pair> at(WeatherYear year, StationClimate climate, TypicalYear types) {
    YearWeather hours = YearWeather.of(year);
    YearWeather laidOut = YearWeather.of(LaidOutYear.of(types, climate));
    return SHOPS.stream()
        .map(
            name -> {
              Shop shop = shop(name);
              return new Pair(year.station(), name, run(shop, hours), run(shop, laidOut));
            })
        .toList();
  }

  private static Figures run(Shop shop, YearWeather weather) {
    Shop ideal = withPlants(shop, RoomCooling.IDEAL, RoomHeating.IDEAL);
    Shop free = withPlants(shop, RoomCooling.NONE, RoomHeating.NONE);
    double cooling = 0;
    double heating = 0;
    double hot = 0;
    for (DayOfWeek first : DayOfWeek.values()) {
      YearResult held = YearRun.of(ShopYear.of(ideal, weather, first), Optional.empty());
      YearResult left = YearRun.of(ShopYear.of(free, weather, first), Optional.empty());
      cooling += held.kilowattHours(YearResult.Figure.COOLING, 0) / WEEK;
      heating += held.kilowattHours(YearResult.Figure.HEATING, 0) / WEEK;
      hot += left.hoursAbove(YearResult.Figure.AIR, 0, HOT) / (double) WEEK;
    }
    return new Figures(cooling, heating, hot);
  }

  private static Shop withPlants(Shop shop, RoomCooling cooling, RoomHeating heating) {
    List<Room> rooms = new ArrayList<>(shop.rooms());
    rooms.set(0, rooms.get(0).withPlants(cooling, heating));
    return shop.withRooms(rooms);
  }

  private static Shop shop(String name) {
    ShopReading reading =
        Examples.names().contains(name)
            ? ShopFile.read(Examples.text(name), Stations.any())
            : ShopFile.read(text(name), Stations.any());
    if (reading instanceof ShopReading.Good good) {
      return Unknowns.choose(good.shop(), Choice.LIKELY);
    }
    throw new IllegalStateException("shop " + name + " is damaged: " + reading);
  }

  private static String text(String name) {
    try (InputStream stream = YearComparison.class.getResourceAsStream(name + ".json")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("shop " + name, e);
    }
  }
}
