package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.SunPosition;

class AerosolFillTest {
  private static final Months LENT = Months.from(month -> 0.15);

  private static Station north(double latitude) {
    return new Station("111110", "Lender", "ZZ", -6, latitude, -90, 0);
  }

  @Test
  void takesItsOwnDepthBeforeAll() {
    WeatherYear year =
        new MadeYear()
            .with(WeatherColumn.AEROSOL, hour -> WeatherYear.monthOf(hour) / 100.0)
            .year();
    Aerosol aerosol = AerosolFill.of(year, Map.of(north(35.1), LENT));
    assertThat(aerosol.source()).isEqualTo(new AerosolSource.Own());
    assertThat(aerosol.depth().at(7)).isCloseTo(0.07, within(1e-12));
  }

  /** A degree of latitude is 111.19 km on a sphere of 6371 km. */
  @Test
  void takesTheNearestWithin150Km() {
    WeatherYear year = new MadeYear().year();
    Aerosol aerosol =
        AerosolFill.of(year, Map.of(north(36.2), LENT, north(34), Months.from(month -> 0.3)));
    assertThat(aerosol.depth().at(1)).isEqualTo(0.3);
    assertThat(aerosol.source().label()).isEqualTo("NEIGHBOUR 111110 111");
  }

  /**
   * The beam is the model's own at a depth of 0.02 a month; of the month's hours half are hazed
   * over.
   */
  @Test
  void turnsTheModelRoundWhereNobodyIsNear() {
    WeatherYear year =
        new MadeYear()
            .with(WeatherColumn.TOTAL_CLOUD, hour -> WeatherYear.dayOf(hour) % 2 == 0 ? 0.8 : 0)
            .with(WeatherColumn.DIRECT_NORMAL, AerosolFillTest::beam)
            .year();
    Aerosol aerosol = AerosolFill.of(year, Map.of(north(37), LENT));
    assertThat(aerosol.source().label()).isEqualTo("INVERTED");
    for (int month = 1; month <= 12; month++) {
      assertThat(aerosol.depth().at(month))
          .as("month %d", month)
          .isCloseTo(0.02 * month, within(1e-3));
    }
  }

  private static double beam(int hour) {
    int day = WeatherYear.dayOf(hour);
    double altitude =
        SunPosition.atStandardTime(2025, day, WeatherYear.hourEnding(hour) - 0.5, -6, 35, -90, 100)
            .altitudeDeg();
    if (altitude < 5) {
      return 0;
    }
    double depth = 0.02 * WeatherYear.monthOf(hour);
    double beam = BirdClearSky.at(altitude, day, 100_000, 0.3, 2, depth, 0.2).directNormal();
    return day % 2 == 0 ? beam / 2 : beam;
  }

  @Test
  void aMonthWithoutSunTakesTheNearest() {
    WeatherYear year =
        new MadeYear()
            .with(
                WeatherColumn.DIRECT_NORMAL, hour -> WeatherYear.monthOf(hour) < 3 ? 0 : beam(hour))
            .year();
    Months depth = AerosolFill.inverted(year).depth();
    assertThat(depth.at(2)).isEqualTo(depth.at(3));
    assertThat(depth.at(1)).as("December is nearer than March").isEqualTo(depth.at(12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AerosolFill.inverted(new MadeYear().year()))
        .withMessageContaining("999990");
  }

  @Test
  void labelsReadBack() {
    for (String label : new String[] {"OWN", "INVERTED", "NEIGHBOUR 722235 18"}) {
      assertThat(AerosolSource.of(label).label()).isEqualTo(label);
    }
    for (String label : new String[] {"", "own", "NEIGHBOUR 722235", "NEIGHBOUR 722235 151"}) {
      assertThatIllegalArgumentException().isThrownBy(() -> AerosolSource.of(label));
    }
  }
}
