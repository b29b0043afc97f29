package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.shopclime.docs.MethodsPart;
import org.shopclime.sun.AstronomicalDay;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.SunPosition;
import org.tukaani.xz.XZInputStream;

/**
 * Bird's beam against the recorded one in cloudless hours about noon (TMY3, NREL/TP-581-43156).
 *
 * <p>Rule of choice, fixed before anything was compared: ten states over hot dry, hot damp, mild,
 * cold and high country; of each the station with the lowest number whose file tells its aerosol
 * depth. Hours: total cloud 0, middle of the hour within an hour of solar noon, sun at 10 degrees
 * or higher (below that a beam says little).
 *
 * <p>The first comparison by that rule failed at Sanford ME, Orr MN and Crossville TN (medians
 * 1.12, 1.18, 1.05). In the hours whose beam strays by more than a tenth there, the recorded light
 * of the sky is 0.39, 0.45 and 0.26 of the whole in the middle, where the other hours have 0.14 to
 * 0.18: cloud is seen by an instrument that looks straight up and not far (from memory: 12,000 ft),
 * sun comes from satellite pictures, and the two disagree. So both are told: all hours with cloud
 * 0, and those of them whose recorded sky light is no more than a quarter of the whole, a sieve
 * without the model in it.
 */
@EnabledIfSystemProperty(named = "shopclime.weather", matches = ".+")
class ClearNoonWeatherTest {

  private static final List<String> STATES =
      List.of("AZ", "CO", "FL", "KS", "ME", "MN", "NM", "TN", "WA", "WY");
  private static final String MARK = "<!-- clear noons: from the hourly files -->";
  private static final double LOWEST_SUN_DEG = 10;

  private static final double MOST_SKY = 0.25;

  /** It moves the light of the sky only. */
  private static final double ALBEDO = 0.2;

  /** Modelled beam over recorded one, hour by hour: rising. */
  private record Ratios(List<Double> rising) {
    static Ratios of(List<Noon> hours, ToDoubleFunction<Noon> ratio) {
      return new Ratios(hours.stream().mapToDouble(ratio).sorted().boxed().toList());
    }

    double at(double part) {
      double place = part * (rising.size() - 1);
      int below = (int) Math.floor(place);
      int above = Math.min(below + 1, rising.size() - 1);
      return rising.get(below) + (place - below) * (rising.get(above) - rising.get(below));
    }

    String cells() {
      return String.format(Locale.ROOT, "%.3f | %.3f | %.3f", at(0.5), at(0.1), at(0.9));
    }
  }

  /** A station: with the hour's own air, and with the air of the program's hot day. */
  private record Noons(WeatherYear year, List<Noon> hours) {
    List<Noon> agreeing() {
      return hours.stream().filter(noon -> noon.skyShare() <= MOST_SKY).toList();
    }
  }

  /** An hour: modelled over recorded beam, and the recorded part of its light from the sky. */
  private record Noon(double hourly, double monthly, double skyShare) {}

  @SuppressWarnings("NonFinalStaticField") // read once for the class
  private static List<Noons> stations;

  @BeforeAll
  static void read() throws IOException {
    Map<String, List<Path>> files = filesByState();
    stations = STATES.stream().map(state -> noons(first(files.get(state)))).toList();
  }

  private static Map<String, List<Path>> filesByState() throws IOException {
    Path folder = Path.of(System.getProperty("shopclime.weather"), "hourly");
    Map<String, List<Path>> byState = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String head = head(file);
        for (String state : STATES) {
          if (head.contains("," + state + ",")) {
            byState.computeIfAbsent(state, any -> new ArrayList<>()).add(file);
          }
        }
      }
    }
    return byState;
  }

  private static String head(Path file) throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                new XZInputStream(Files.newInputStream(file)), StandardCharsets.ISO_8859_1))) {
      return reader.readLine();
    }
  }

  private static WeatherYear first(List<Path> files) {
    for (Path file : files) {
      if (WeatherFile.read(file) instanceof WeatherReading.Good good && good.year().hasAerosol()) {
        return good.year();
      }
    }
    throw new IllegalStateException("none of " + files);
  }

  private static Noons noons(WeatherYear year) {
    StationClimate climate = StationStatistics.of(year, AerosolFill.own(year).orElseThrow());
    Noons noons = new Noons(year, new ArrayList<>());
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      double altitude = altitude(year, hour);
      if (year.totalCloud(hour) == 0 && isNearNoon(year, hour) && altitude >= LOWEST_SUN_DEG) {
        int month = WeatherYear.monthOf(hour);
        double recorded = year.directNormal(hour);
        double own =
            beam(
                altitude,
                hour,
                year.pressure(hour),
                year.precipitableWaterCm(hour),
                year.aerosol(hour));
        double usual =
            beam(
                altitude,
                hour,
                climate.pressure(),
                climate.waterCm().at(month),
                climate.aerosol().depth().at(month));
        noons
            .hours()
            .add(
                new Noon(
                    own / recorded,
                    usual / recorded,
                    year.diffuseHorizontal(hour) / year.globalHorizontal(hour)));
      }
    }
    return noons;
  }

  private static double beam(
      double altitude, int hour, double pressure, double water, double aerosol) {
    return BirdClearSky.at(
            altitude,
            WeatherYear.dayOf(hour),
            pressure,
            BirdClearSky.USUAL_OZONE_CM,
            water,
            aerosol,
            ALBEDO)
        .directNormal();
  }

  private static boolean isNearNoon(WeatherYear year, int hour) {
    double solar =
        new AstronomicalDay(WeatherYear.dayOf(hour))
            .solarHour(
                WeatherYear.hourEnding(hour) - 0.5,
                year.station().timeZoneHours(),
                year.station().longitudeDeg());
    return Math.abs(solar - 12) <= 1;
  }

  private static double altitude(WeatherYear year, int hour) {
    Station station = year.station();
    return SunPosition.atStandardTime(
            WeatherYear.COMMON_YEAR,
            WeatherYear.dayOf(hour),
            WeatherYear.hourEnding(hour) - 0.5,
            station.timeZoneHours(),
            station.latitudeDeg(),
            station.longitudeDeg(),
            station.elevationM())
        .altitudeDeg();
  }

  /** Band: the few per cent that the model's report tells (SERI/TR-642-761). */
  @Test
  void theMiddleRatioIsNearOneAtEachStationWhereTheRecordsAgree() {
    for (Noons each : stations) {
      assertThat(each.agreeing()).as("%s", each.year().station()).hasSizeGreaterThan(25);
      assertThat(Ratios.of(each.agreeing(), Noon::hourly).at(0.5))
          .as("%s", each.year().station())
          .isBetween(0.95, 1.05);
    }
  }

  @Test
  void theMiddleRatioIsNearOneOverAllHoursWithoutCloud() {
    List<Noon> all = all(Noons::hours);
    assertThat(Ratios.of(all, Noon::hourly).at(0.5)).isBetween(0.95, 1.05);
    assertThat(Ratios.of(all, Noon::monthly).at(0.5)).isBetween(0.95, 1.05);
  }

  @Test
  void aStationStraysOnlyWhereItsRecordsDisagree() {
    List<String> straying = new ArrayList<>();
    for (Noons each : stations) {
      if (Math.abs(Ratios.of(each.hours(), Noon::hourly).at(0.5) - 1) > 0.05) {
        straying.add(each.year().station().state());
        double agreeing = (double) each.agreeing().size() / each.hours().size();
        assertThat(agreeing).as("%s", each.year().station()).isLessThan(0.8);
      }
    }
    assertThat(straying).containsExactly("ME", "MN", "TN");
  }

  private static List<Noon> all(Function<Noons, List<Noon>> hours) {
    return stations.stream().flatMap(each -> hours.apply(each).stream()).toList();
  }

  @Test
  void theTablesOfTheMethodsPageAreFresh() throws IOException {
    String text =
        "All hours with cloud 0:\n\n"
            + table(Noons::hours)
            + "\nThose of them whose recorded light from the sky is no more than a quarter of the"
            + " whole:\n\n"
            + table(Noons::agreeing)
            + "\n";
    MethodsPart.isFresh(MARK, text);
  }

  private static String table(Function<Noons, List<Noon>> hours) {
    StringBuilder table =
        new StringBuilder(
            """
            | station | elevation, m | hours | median, the hour's air | 10 % | 90 % \
            | median, the month's air | 10 % | 90 % |
            |---|---|---|---|---|---|---|---|---|
            """);
    for (Noons each : stations) {
      Station station = each.year().station();
      table.append(
          row(
              station.name() + " " + station.state() + ", " + station.id(),
              Long.toString(Math.round(station.elevationM())),
              hours.apply(each)));
    }
    return table.append(row("all", "", all(hours))).toString();
  }

  private static String row(String name, String metres, List<Noon> hours) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %d | %s | %s |\n",
        name,
        metres,
        hours.size(),
        Ratios.of(hours, Noon::hourly).cells(),
        Ratios.of(hours, Noon::monthly).cells());
  }
}
