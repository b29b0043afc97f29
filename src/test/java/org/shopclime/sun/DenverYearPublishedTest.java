package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.tukaani.xz.XZInputStream;

/**
 * A year of Denver (typical year, station 725650): sun on the faces of a box and sky temperature
 * within the ranges of ANSI/ASHRAE Standard 140, and Bird's clear sky in the clear hours.
 */
@EnabledIfSystemProperty(named = "shopclime.weather", matches = ".+")
class DenverYearPublishedTest {

  private record Hour(
      int year,
      int day,
      int hour,
      double direct,
      double diffuse,
      double global,
      double dryBulb,
      double dewPoint,
      double pressure,
      double totalCloud,
      double opaqueCloud,
      double ceiling,
      double water,
      double aerosol,
      double albedo) {
    SunAngles sun() {
      return SunPosition.atStandardTime(year, day, hour - 0.5, -7, 39.833, -104.650, 1650);
    }
  }

  @SuppressWarnings("NonFinalStaticField") // read once for the class
  private static List<Hour> year;

  @BeforeAll
  static void read() {
    Path file = Path.of(System.getProperty("shopclime.weather"), "full", "725650TYA.CSV.xz");
    List<Hour> hours = new ArrayList<>();
    try (Reader reader =
        new InputStreamReader(
            new XZInputStream(Files.newInputStream(file)), StandardCharsets.ISO_8859_1)) {
      StringBuilder station = new StringBuilder();
      for (int c = reader.read(); c != '\n'; c = reader.read()) {
        station.append((char) c);
      }
      assertThat(station.toString()).startsWith("725650,");
      CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
      for (CSVRecord row : CSVParser.parse(reader, format)) {
        String[] date = row.get("Date (MM/DD/YYYY)").split("/", -1);
        LocalDate day =
            LocalDate.of(
                Integer.parseInt(date[2]), Integer.parseInt(date[0]), Integer.parseInt(date[1]));
        hours.add(
            new Hour(
                day.getYear(),
                day.getDayOfYear(),
                Integer.parseInt(row.get("Time (HH:MM)").substring(0, 2)),
                number(row, "DNI (W/m^2)"),
                number(row, "DHI (W/m^2)"),
                number(row, "GHI (W/m^2)"),
                number(row, "Dry-bulb (C)"),
                number(row, "Dew-point (C)"),
                100 * number(row, "Pressure (mbar)"),
                number(row, "TotCld (tenths)"),
                number(row, "OpqCld (tenths)"),
                number(row, "CeilHgt (m)"),
                number(row, "Pwat (cm)"),
                number(row, "AOD (unitless)"),
                number(row, "Alb (unitless)")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(hours).hasSize(8760);
    year = hours;
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/denver-year.csv", useHeadersInDisplayName = true)
  void liesInThePublishedRange(
      String id, String quantity, double low, double high, double rounding) {
    double found =
        switch (quantity) {
          case "horizontal" -> face(0, 180);
          case "north" -> face(90, 0);
          case "east" -> face(90, 90);
          case "south" -> face(90, 180);
          case "west" -> face(90, 270);
          case "skyMean" -> year.stream().mapToDouble(h -> clark(h)).average().orElseThrow();
          case "skyLow" -> year.stream().mapToDouble(h -> clark(h)).min().orElseThrow();
          case "skyHigh" -> year.stream().mapToDouble(h -> clark(h)).max().orElseThrow();
          default -> throw new IllegalArgumentException(quantity);
        };
    assertThat(found).as("%s %s", id, quantity).isBetween(low - rounding, high + rounding);
  }

  /**
   * Source: sky temperatures supplied with ANSI/ASHRAE Standard 140-2020: mean -5.9, least -46.9,
   * most 24.6 °C; they are Martin and Berdahl's with opaque cloud at 2 km where no ceiling is
   * reported and thin cloud as a veil (recomputed).
   */
  @Test
  void martinBerdahlMakesTheSuppliedSky() {
    double mean = year.stream().mapToDouble(h -> martin(h)).average().orElseThrow();
    double low = year.stream().mapToDouble(h -> martin(h)).min().orElseThrow();
    double high = year.stream().mapToDouble(h -> martin(h)).max().orElseThrow();
    assertThat(mean).isCloseTo(-5.9, within(0.051));
    assertThat(low).isCloseTo(-46.9, within(0.051));
    assertThat(high).isCloseTo(24.6, within(0.051));
  }

  /**
   * Bird's model with the file's own pressure, water, aerosol and albedo in the hours without
   * cloud. The file's sun is itself partly modelled, from the same inputs (NREL/TP-581-43156).
   */
  @Test
  void birdMeetsTheClearHours() {
    double beam = 0;
    double birdBeam = 0;
    double level = 0;
    double birdLevel = 0;
    int count = 0;
    for (Hour h : year) {
      SunAngles sun = h.sun();
      if (h.totalCloud() == 0 && sun.altitudeDeg() > 15) {
        ClearSky sky =
            BirdClearSky.at(
                sun.altitudeDeg(), h.day(), h.pressure(), 0.3, h.water(), h.aerosol(), h.albedo());
        beam += h.direct();
        birdBeam += sky.directNormal();
        level += h.global();
        birdLevel += sky.globalHorizontal();
        count++;
      }
    }
    assertThat(count).isGreaterThan(200);
    assertThat(birdBeam / beam).isCloseTo(1, within(0.05));
    assertThat(birdLevel / level).isCloseTo(1, within(0.05));
  }

  private static double face(double tilt, double azimuth) {
    double sum = 0;
    for (Hour h : year) {
      if (h.global() > 0) {
        sum += PerezSky.on(tilt, azimuth, h.sun(), h.direct(), h.diffuse(), h.day(), 0.2).total();
      }
    }
    return sum / 1000;
  }

  private static double clark(Hour h) {
    return SkyTemperature.clarkAllen(h.dryBulb(), h.dewPoint(), h.opaqueCloud());
  }

  private static double martin(Hour h) {
    // 77777 is an unlimited ceiling, 88888 high ice cloud.
    double base = h.ceiling() > 70_000 ? 2000 : h.ceiling();
    return SkyTemperature.martinBerdahl(
        h.dryBulb(),
        h.dewPoint(),
        h.hour(),
        h.pressure(),
        h.opaqueCloud(),
        h.totalCloud() - h.opaqueCloud(),
        base);
  }
}
