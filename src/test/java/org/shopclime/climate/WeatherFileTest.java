package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.quantity.Problem;
import org.tukaani.xz.LZMA2Options;
import org.tukaani.xz.XZOutputStream;

class WeatherFileTest {
  @TempDir private Path folder;

  private final List<String> lines = MadeFile.lines();

  private byte[] bytes(String end) {
    return (String.join(end, lines) + end).getBytes(StandardCharsets.UTF_8);
  }

  private WeatherReading read(byte[] bytes) throws IOException {
    return WeatherFile.read(Files.write(folder.resolve("weather.csv"), bytes));
  }

  private WeatherYear good(byte[] bytes) throws IOException {
    WeatherReading reading = read(bytes);
    assertThat(reading).isInstanceOf(WeatherReading.Good.class);
    return ((WeatherReading.Good) reading).year();
  }

  private List<String> bad(byte[] bytes) throws IOException {
    WeatherReading reading = read(bytes);
    assertThat(reading).isInstanceOf(WeatherReading.Bad.class);
    return ((WeatherReading.Bad) reading).problems().stream().map(Problem::sentence).toList();
  }

  private static void isTheMadeYear(WeatherYear year) {
    assertThat(year.station())
        .isEqualTo(new Station("722230", "Mobile Regional AP", "AL", -6, 30.683, -88.25, 66));
    assertThat(year.dryBulb(1)).isEqualTo(1.5);
    assertThat(year.dryBulb(24)).isEqualTo(24.5);
    assertThat(year.dryBulb(8759)).isEqualTo(23.5);
    assertThat(year.globalHorizontal(8760)).isZero();
    // At noon of 1 January the sun stands 36 degrees high at a latitude of 31 degrees.
    assertThat(year.globalHorizontal(12)).isCloseTo(100 + 500 * 0.59, within(5.0));
    assertThat(year.directNormal(12)).isEqualTo(500);
    assertThat(year.diffuseHorizontal(12)).isEqualTo(100);
    assertThat(year.totalCloud(5)).isCloseTo(0.7, within(1e-12));
    assertThat(year.opaqueCloud(5)).isCloseTo(0.3, within(1e-12));
    assertThat(year.dewPoint(5)).isEqualTo(-4.5);
    assertThat(year.relativeHumidity(24)).as("1.65 by 3.07 kPa").isCloseTo(0.54, within(1e-12));
    assertThat(year.pressure(5)).isEqualTo(101_100);
    assertThat(year.windSpeed(5)).isEqualTo(5.2);
    assertThat(year.precipitableWaterCm(5)).isEqualTo(2.5);
    assertThat(year.aerosol(5)).isEqualTo(0.12);
    assertThat(year.albedo(5)).isEqualTo(0.18);
    assertThat(year.hasAerosol()).isTrue();
  }

  @Test
  void readsPlainText() throws IOException {
    isTheMadeYear(good(bytes("\n")));
  }

  @Test
  void readsWindowsLineEndsAndByteOrderMark() throws IOException {
    lines.set(0, "\uFEFF" + lines.get(0));
    isTheMadeYear(good(bytes("\r\n")));
  }

  @Test
  void readsFilesWithoutAnEndOfLine() throws IOException {
    isTheMadeYear(good(String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void readsQuotedCellsBlanksAndOneDigitDates() throws IOException {
    lines.set(2, lines.get(2).replace("01/01/1999,01:00", "\"1/1/1999\", 1:00 "));
    isTheMadeYear(good(bytes("\n")));
  }

  @Test
  void findsColumnsByTheirHeadsInAnyOrder() throws IOException {
    List<String> turned =
        lines.stream().skip(1).map(WeatherFileTest::turnedRound).collect(Collectors.toList());
    turned.add(0, lines.get(0));
    isTheMadeYear(good(String.join("\n", turned).getBytes(StandardCharsets.UTF_8)));
  }

  /** Cells from last to first, with a column more that nobody asked for. */
  private static String turnedRound(String line) {
    List<String> cells = Arrays.asList(line.split(",", -1));
    Collections.reverse(cells);
    return "extra," + String.join(",", cells);
  }

  @Test
  void readsGzip() throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(packed)) {
      out.write(bytes("\n"));
    }
    isTheMadeYear(good(packed.toByteArray()));
  }

  @Test
  void readsXz() throws IOException {
    isTheMadeYear(good(xz()));
  }

  private byte[] xz() throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = new XZOutputStream(packed, new LZMA2Options(1))) {
      out.write(bytes("\n"));
    }
    return packed.toByteArray();
  }

  @Test
  void readsTheFirstTableOfAZip() throws IOException {
    isTheMadeYear(good(zip("readme.txt", "722230TYA.CSV")));
  }

  private byte[] zip(String... names) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(packed)) {
      for (String name : names) {
        out.putNextEntry(new ZipEntry(name));
        out.write(name.endsWith(".txt") ? new byte[] {'x'} : bytes("\n"));
        out.closeEntry();
      }
    }
    return packed.toByteArray();
  }

  @Test
  void saysWhenAZipHoldsNoTable() throws IOException {
    assertThat(bad(zip("readme.txt")))
        .containsExactly(
            "weather.csv: found a file that cannot be read (no .csv inside the .zip); takes a TMY3"
                + " hourly file: CSV, plain or packed as .xz, .gz or .zip, such as 722230TYA.CSV");
  }

  @Test
  void saysWhenAPackedFileIsCutOff() throws IOException {
    byte[] whole = xz();
    assertThat(bad(Arrays.copyOf(whole, whole.length / 2)))
        .singleElement()
        .asString()
        .contains("found a packed file that is cut off");
  }

  @Test
  void saysWhenAPackedFileIsDamaged() throws IOException {
    byte[] whole = xz();
    for (int i = 20; i < 60; i++) {
      whole[i] = 77;
    }
    assertThat(bad(whole)).singleElement().asString().contains("a file that cannot be read");
  }

  @Test
  void saysWhenThereIsNoFileOrAFolder() {
    assertThat(WeatherFile.read(folder.resolve("none.csv")))
        .extracting(bad -> ((WeatherReading.Bad) bad).problems().get(0).found())
        .isEqualTo("no such file");
    assertThat(WeatherFile.read(folder))
        .extracting(bad -> ((WeatherReading.Bad) bad).problems().get(0).found())
        .isEqualTo("a folder or device");
  }

  @Test
  void refusesWhatIsNoWeatherFile() throws IOException {
    for (String text : List.of("", "\n\n", "hello", "a,b,c,d,e,f,g\n1,2,3,4,5,6,7\n", "\"open")) {
      assertThat(bad(text.getBytes(StandardCharsets.UTF_8)))
          .as("file of %s", text)
          .singleElement()
          .asString()
          .contains("takes a TMY3 hourly file");
    }
    byte[] picture = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13};
    assertThat(bad(picture)).singleElement().asString().contains("takes a TMY3 hourly file");
  }

  @Test
  void saysWhichFigureOfTheStationIsImpossible() throws IOException {
    lines.set(0, lines.get(0).replace("30.683", "130.683"));
    assertThat(bad(bytes("\n")))
        .containsExactly(
            "weather.csv, line 1: found \"latitude, degrees: 130.683 is outside -9...\"; takes time"
                + " zone, latitude, longitude and elevation");
  }

  @Test
  void saysWhichColumnsAreMissing() throws IOException {
    lines.set(1, lines.get(1).replace("Dry-bulb (C)", "Dry-bulb (F)").replace("Wspd", "Wind"));
    assertThat(bad(bytes("\n")))
        .containsExactly(
            "weather.csv, line 2: found no column \"Dry-bulb (C)\"; takes a column headed"
                + " \"Dry-bulb (C)\"",
            "weather.csv, line 2: found no column \"Wspd (m/s)\"; takes a column headed \"Wspd"
                + " (m/s)\"");
  }

  @Test
  void saysWhichCellsAreNoNumbersByLineAndColumn() throws IOException {
    lines.set(9, lines.get(9).replace("8.5,-1.5", "hot,-1.5"));
    lines.set(10, lines.get(10).replace("9.5,-0.5", "0x1p3,-0.5"));
    lines.set(12, lines.get(12).replace(",0.120,0.18", ""));
    lines.set(13, lines.get(13).replace("12.5,2.5", "NaN,2.5"));
    assertThat(bad(bytes("\r\n")))
        .containsExactly(
            "weather.csv, line 10, column Dry-bulb (C): found \"hot\"; takes a number from -70 to"
                + " 75",
            "weather.csv, line 11, column Dry-bulb (C): found \"0x1p3\"; takes a number from -70"
                + " to 75",
            "weather.csv, line 13: found 13 cells; takes 15 cells, one for each head",
            "weather.csv, line 14, column Dry-bulb (C): found \"NaN\"; takes a number from -70 to"
                + " 75");
  }

  @Test
  void countsProblemsBeyondTwenty() throws IOException {
    for (int line = 2; line < 52; line++) {
      lines.set(line, lines.get(line).replace(",2.5,0.120", ",wet,0.120"));
    }
    assertThat(bad(bytes("\n"))).hasSize(21).last().asString().contains("30 more such problems");
  }

  @Test
  void refusesAShortAndALongFile() throws IOException {
    String last = lines.remove(lines.size() - 1);
    assertThat(bad(bytes("\n")))
        .containsExactly("weather.csv: found 8759 hours; takes 8760 hours, a whole year");
    lines.add(last);
    lines.add(last);
    assertThat(bad(bytes("\n")))
        .containsExactly("weather.csv: found 8761 hours; takes 8760 hours, a whole year");
  }

  @Test
  void refusesHoursOutOfOrder() throws IOException {
    Collections.swap(lines, 100, 101);
    assertThat(bad(bytes("\n")))
        .containsExactly(
            "weather.csv, line 101: found \"01/05/1999 04:00\"; takes the hour 01/05 03:00 of a"
                + " year without a leap day",
            "weather.csv, line 102: found \"01/05/1999 03:00\"; takes the hour 01/05 04:00 of a"
                + " year without a leap day");
  }

  @Test
  void takesAMidnightWrittenAsZeroOfTheNextDay() throws IOException {
    lines.set(25, lines.get(25).replace("01/01/1999,24:00", "01/02/1999,00:00"));
    lines.set(8761, lines.get(8761).replace("12/31/1999,24:00", "01/01/2000,00:00"));
    isTheMadeYear(good(bytes("\n")));
  }

  @Test
  void refusesAMidnightWrittenAsZeroOfTheSameDay() throws IOException {
    lines.set(25, lines.get(25).replace("24:00", "00:00"));
    assertThat(bad(bytes("\n")))
        .singleElement()
        .asString()
        .contains("line 26", "takes the hour 01/01 24:00");
  }

  @Test
  void passesOverBlankLines() throws IOException {
    lines.add("");
    lines.add("  ");
    lines.add(",,,");
    isTheMadeYear(good(bytes("\n")));
  }

  @Test
  void readsANameInLatin1() throws IOException {
    lines.set(0, lines.get(0).replace("MOBILE", "CA\u00D1ON"));
    WeatherYear year = good(String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1));
    assertThat(year.station().name()).isEqualTo("Ca\u00F1on Regional AP");
  }

  @Test
  void refusesAZipOfTwoTablesButNotWhatSystemsAdd() throws IOException {
    isTheMadeYear(good(zip("722230TYA.CSV", "__MACOSX/._722230TYA.CSV")));
    assertThat(bad(zip("722230TYA.CSV", "722235TYA.CSV")))
        .singleElement()
        .asString()
        .contains("2 .csv files inside the .zip, such as 722235TYA.CSV");
  }

  @Test
  void refusesHourlyFilesOfOtherForms() throws IOException {
    String rows = "LOCATION,Testing,ZZ,USA,TMY3,722230,30.68,-88.25,-6.0,66\n1999,1,1,1,60,?9\n";
    String fixed = " 13894 MOBILE                 AL  -6 N 30 41 W  88 15    67\n 600101010000\n";
    String page = "<!DOCTYPE html>\n<html><body class=\"a\">Not found, sorry</body></html>\n";
    String shop = "{\n  \"version\": 1,\n  \"place\": {\"station\": \"722230\"}\n}\n";
    for (String text : List.of(rows, fixed, page, shop)) {
      assertThat(bad(text.getBytes(StandardCharsets.UTF_8)))
          .as(text)
          .singleElement()
          .asString()
          .contains("weather.csv", "takes a TMY3 hourly file")
          .doesNotContain("\n");
    }
  }
}
