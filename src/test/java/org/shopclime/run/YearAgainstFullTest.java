package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.run.YearResult.Figure.AIR;
import static org.shopclime.run.YearResult.Figure.COOLING;
import static org.shopclime.run.YearResult.Figure.HEATING;
import static org.shopclime.run.YearResult.Figure.POWER;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.climate.WeatherFile;
import org.shopclime.climate.WeatherReading;
import org.shopclime.shop.Examples;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/**
 * Hourly steps of the modes tell the year of the full network in steps of five minutes: on a made
 * year, and on recorded ones (Mobile and Phoenix, TMY3, NREL/TP-581-43156) where the files are at
 * hand.
 */
class YearAgainstFullTest {

  private static final List<YearWeather> YEARS = new ArrayList<>();

  @BeforeAll
  static void readYears() {
    YEARS.add(MadeYears.swinging());
    String folder = System.getProperty("shopclime.weather", "");
    if (!folder.isEmpty()) {
      for (String station : List.of(MadeShops.MOBILE, MadeShops.PHOENIX)) {
        WeatherReading read = WeatherFile.read(Path.of(folder, "hourly", station + ".csv.xz"));
        YEARS.add(YearWeather.of(((WeatherReading.Good) read).year()));
      }
    }
  }

  /** Energies to 0.1 %, peaks to 0.5 %, hourly temperatures to 0.05 K (attics to 0.1 K). */
  @ParameterizedTest
  @CsvSource({
    "bare-studs, UNIT",
    "insulated, UNIT",
    "insulated-foam-door, UNIT",
    "insulated-foam-door, IDEAL",
    "insulated-foam-door, NONE",
    "metal, IDEAL"
  })
  void hoursAreThoseOfTheFullNetwork(String name, RoomCooling cooling) {
    Shop shop = MadeYears.plants(shop(name), cooling, RoomHeating.IDEAL, "work");
    Optional<Cooling> unit =
        cooling == RoomCooling.UNIT
            ? Optional.of(MadeShops.window(MadeShops.btuh(18000)))
            : Optional.empty();
    for (int number = 0; number < (name.equals("insulated") ? YEARS.size() : 1); number++) {
      ShopYear year = ShopYear.of(shop, YEARS.get(number));
      YearResult full = new FullYear(year, unit, 12).run();
      YearResult told = YearRun.of(year, unit);
      for (int room = 0; room < year.rooms(); room++) {
        energyAgrees(HEATING, room, told, full);
        energyAgrees(COOLING, room, told, full);
        energyAgrees(POWER, room, told, full);
        temperaturesAgree(room, told, full);
      }
    }
  }

  private static Shop shop(String name) {
    return name.equals("metal")
        ? MadeShops.preset(
            "Post-frame metal shop with foil bubble wrap",
            "Hand tools and radio",
            MadeShops.MOBILE,
            MadeShops.btuh(18000),
            Optional.empty())
        : Examples.shop(name);
  }

  private static void energyAgrees(
      YearResult.Figure figure, int room, YearResult told, YearResult full) {
    double energy = full.kilowattHours(figure, room);
    assertThat(told.kilowattHours(figure, room))
        .as("%s of room %s, kWh", figure, room)
        .isCloseTo(energy, within(0.001 * energy));
    double peak = full.at(figure, room, full.peakHour(figure, room));
    assertThat(told.at(figure, room, told.peakHour(figure, room)))
        .as("peak %s of room %s, W", figure, room)
        .isCloseTo(peak, within(0.005 * peak));
  }

  private static void temperaturesAgree(int room, YearResult told, YearResult full) {
    double limit = room == 0 ? 0.05 : 0.1;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      assertThat(told.at(AIR, room, hour))
          .as("air of room %s in hour %s", room, hour)
          .isCloseTo(full.at(AIR, room, hour), within(limit));
    }
  }
}
