package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.MadeYear;
import org.shopclime.envelope.Season;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.SteadyState;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/** The network of a season and what stands before its faces. */
class SeasonMakerTest {

  /** April to September are warm, the other months cold. */
  private static double halfYear(int hour) {
    return hour > 2160 && hour <= 6552 ? 30 : 0;
  }

  private static ShopYear year(IntToDoubleFunction dryBulb, Room... rooms) {
    return ShopYear.of(
        TestShops.shop(rooms),
        YearWeather.of(
            new MadeYear()
                .dryBulb(dryBulb)
                .dewPoint(hour -> dryBulb.applyAsDouble(hour) - 10)
                .cloud(hour -> 1)
                .year()));
  }

  private static Room box(double emittance) {
    Face wall =
        TestShops.outside(
            TestShops.wall("Wall", 180, 5, 2, TestShops.insulation(2)), 0.6, emittance);
    return TestShops.room("Box", RoomUse.COOLED, 10, 2, TestShops.WISHED, wall);
  }

  /**
   * Before a face that does not radiate stands the air, in every hour of its season, the other
   * season's too.
   */
  @Test
  void beforeABlankFaceStandsTheAir() {
    ShopYear year = year(SeasonMakerTest::halfYear, box(0));
    assertThat(year.networks()).isEqualTo(2);
    for (int hour = 0; hour < YearWeather.HOURS; hour += 37) {
      assertThat(year.drivers().boundary(0, hour))
          .isCloseTo(year.weather().dryBulb(hour), within(1e-9));
    }
  }

  /** A face that radiates to a sky colder than the air stands before something between the two. */
  @Test
  void beforeOtherFacesStandsAirAndSky() {
    ShopYear year = year(SeasonMakerTest::halfYear, box(0.9));
    for (int hour = 0; hour < YearWeather.HOURS; hour += 37) {
      assertThat(year.drivers().boundary(0, hour))
          .isLessThan(year.weather().dryBulb(hour))
          .isGreaterThan(year.weather().sky(hour));
    }
  }

  @Test
  void belowAFloorOnTheGroundStandsTheGround() {
    Room room =
        TestShops.room(
            "Box",
            RoomUse.COOLED,
            20,
            2,
            TestShops.WISHED,
            TestShops.face("Slab", Part.FLOOR, "ground", 0, 180, 4, 5, TestShops.slab(18)));
    ShopYear year = year(SeasonMakerTest::halfYear, room);
    Piece.Ground ground = (Piece.Ground) year.skeleton().pieces().get(0).outside();
    for (int hour = 0; hour < YearWeather.HOURS; hour += 37) {
      assertThat(year.drivers().boundary(0, hour))
          .isEqualTo(Surroundings.below(ground, year.weather().ground(), hour / 24 + 1));
    }
  }

  /**
   * In each season the network's own films: a wall without mass passes what its resistances let
   * through, those of its ends made of film and linear radiation at its mean temperature.
   */
  @Test
  void eachSeasonHasItsFilms() {
    ShopYear year = year(SeasonMakerTest::halfYear, box(0.9));
    double[] passed = new double[2];
    for (int number = 0; number < 2; number++) {
      Drivers drivers = new Drivers(year.network(number));
      drivers.boundary(0, 1);
      drivers.hold(0, 0);
      passed[number] = -SteadyState.solve(year.network(number), drivers).plant(0);
      double resistance = 10 / passed[number] - 2 * TestShops.R;
      // Printed film resistances: 0.12 inside and 0.03 (winter) to 0.044 outside, m2 K/W.
      assertThat(resistance).isBetween(0.1, 0.5);
    }
    assertThat(year.networkOf(0)).isNotEqualTo(year.networkOf(4380));
    // Winter wind passes more heat than summer's.
    assertThat(passed[year.networkOf(0)]).isNotEqualTo(passed[year.networkOf(4380)]);
    assertThat(year.season(0)).isEqualTo(Season.HEATING);
    assertThat(year.season(4380)).isEqualTo(Season.COOLING);
  }

  /** A hotter season's radiation is that of hotter faces: 4 sigma T^3 grows with the mean. */
  @Test
  void radiationIsThatOfTheSeasonsMean() {
    assertThat(conductance(34)).isGreaterThan(conductance(22) * 1.001);
  }

  /** Where it is never cold one network stands all year. */
  @Test
  void oneSeasonIsOneNetwork() {
    ShopYear year = year(hour -> 25, box(0.9));
    assertThat(year.networks()).isEqualTo(1);
    assertThat(year.networkOf(0)).isEqualTo(year.networkOf(8759)).isZero();
  }

  private static double conductance(double celsius) {
    Shop shop = TestShops.shop(box(0.9));
    ShopYear year = year(hour -> celsius, shop.rooms().get(0));
    Drivers drivers = new Drivers(year.network(0));
    drivers.boundary(0, 1);
    drivers.hold(0, 0);
    return -SteadyState.solve(year.network(0), drivers).plant(0);
  }
}
