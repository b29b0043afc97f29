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
import org.shopclime.shop.Shop;

/**
 * Shorter steps tell the same year: on a made year, and on recorded ones (Mobile and Phoenix, TMY3,
 * NREL/TP-581-43156) where the files are at hand.
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

  @ParameterizedTest
  @CsvSource({"bare-studs", "insulated", "insulated-foam-door", "metal"})
  void aQuarterOfAnHourIsEnough(String name) {
    Shop shop =
        name.equals("metal")
            ? MadeShops.preset(
                "Post-frame metal shop with foil bubble wrap",
                "Hand tools and radio",
                MadeShops.MOBILE,
                MadeShops.btuh(18000),
                Optional.empty())
            : Examples.shop(name);
    Optional<Cooling> unit = Optional.of(MadeShops.window(MadeShops.btuh(18000)));
    for (int number = 0; number < (name.equals("insulated") ? YEARS.size() : 1); number++) {
      ShopYear year = ShopYear.of(shop, YEARS.get(number));
      YearResult fine = new FullYear(year, unit, 12).run();
      YearResult told = YearRun.of(year, unit);
      assertThat(off(told, fine, COOLING)).isCloseTo(0, within(0.25));
      assertThat(off(told, fine, POWER)).isCloseTo(0, within(0.5));
      // An ideal heater that brings a cold room up at once every morning is hard on any step: its
      // heat is up to 2 % low, half a percent of all heat moved.
      double moved = fine.kilowattHours(HEATING, 0) + fine.kilowattHours(COOLING, 0);
      assertThat(told.kilowattHours(HEATING, 0))
          .isCloseTo(fine.kilowattHours(HEATING, 0), within(0.005 * moved));
      double warm = MadeShops.celsius(85);
      int hours = fine.hoursAbove(AIR, 0, warm);
      assertThat(told.hoursAbove(AIR, 0, warm)).isCloseTo(hours, within(3 + hours / 100));
    }
  }

  private static double off(YearResult coarse, YearResult fine, YearResult.Figure figure) {
    double of = fine.kilowattHours(figure, 0);
    return of == 0 ? 0 : 100 * (coarse.kilowattHours(figure, 0) / of - 1);
  }
}
