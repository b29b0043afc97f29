package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.quantity.Problem;

/** Files whose every figure is possible and which still cannot be true. */
class WeatherSenseTest {

  private static WeatherReading read(List<String> lines) throws IOException {
    return new WeatherRows("made.csv").read(new StringReader(String.join("\n", lines)));
  }

  private static List<String> told(List<String> lines) throws IOException {
    WeatherReading reading = read(lines);
    return reading instanceof WeatherReading.Bad bad
        ? bad.problems().stream().map(Problem::sentence).toList()
        : ((WeatherReading.Good) reading).notes();
  }

  private static List<String> stationed(String from, String to) {
    List<String> lines = MadeFile.lines();
    lines.set(0, lines.get(0).replace(from, to));
    return lines;
  }

  /** A column of each row changed. */
  private static List<String> changed(int column, UnaryOperator<String> change) {
    List<String> lines = MadeFile.lines();
    for (int i = 2; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",", -1);
      cells[column] = change.apply(cells[column]);
      lines.set(i, String.join(",", cells));
    }
    return lines;
  }

  @Test
  void findsNothingInAnHonestYear() throws IOException {
    assertThat(told(MadeFile.lines())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "-88.250,88.250,time zone -6.0 h at longitude 88.3; takes hours from universal time",
    "'AL,-6','AL,6',time zone 6.0 h at longitude -88.3; takes hours from universal time",
    "'AL,-6','AL,-8',found sun at night",
    "'-88.250,66','-88.250,2000',a mean pressure of 1011 mbar at an elevation of 2000 m"
  })
  void refusesAnotherPlace(String from, String to, String told) throws IOException {
    assertThat(told(stationed(from, to))).singleElement().asString().contains(told);
  }

  @Test
  void notesAPlaceThatIsALittleOff() throws IOException {
    assertThat(told(stationed("AL,-6", "AL,-5")))
        .containsExactly("the sun's day lies 1.0 h early for this zone and longitude");
    assertThat(told(stationed("-88.250,66", "-88.250,800")))
        .singleElement()
        .asString()
        .contains("1011 mbar, does not belong to the elevation told, 800 m");
  }

  /** Hours of the day turned by so many, the dates left. */
  @Test
  void refusesHoursThatAreShifted() throws IOException {
    List<String> lines = MadeFile.lines();
    List<String> turned = new ArrayList<>(lines);
    for (int i = 2; i < lines.size(); i++) {
      String moment = lines.get(i).substring(0, 16);
      String figures = lines.get(2 + (i - 2 + 4) % WeatherYear.COUNT).substring(16);
      turned.set(i, moment + figures);
    }
    assertThat(told(turned)).singleElement().asString().contains("found sun at night");
  }

  @Test
  void refusesFahrenheit() throws IOException {
    List<String> lines = MadeFile.lines();
    for (int i = 2; i < lines.size(); i++) {
      if (lines.get(i).startsWith("07/")) {
        String[] cells = lines.get(i).split(",", -1);
        cells[7] = String.valueOf(32 + 1.8 * Double.parseDouble(cells[7]));
        lines.set(i, String.join(",", cells));
      }
    }
    assertThat(told(lines)).first().asString().contains("K off the months beside it");
  }

  @Test
  void refusesFiguresThatDoNotFitEachOther() throws IOException {
    assertThat(told(changed(8, dewPoint -> "28.0")))
        .anyMatch(line -> line.contains("the dew point above the dry bulb in 8760 hours"));
    assertThat(told(changed(9, humidity -> "20")))
        .anyMatch(line -> line.contains("a relative humidity 3"));
    assertThat(told(changed(6, cloud -> "9")))
        .anyMatch(line -> line.contains("more opaque cloud than cloud in 8760 hours"));
    assertThat(told(changed(2, sun -> "0"))).anyMatch(line -> line.contains("hardly any sun"));
    assertThat(told(changed(2, sun -> "150"))).anyMatch(line -> line.contains("sun at night"));
    assertThat(told(changed(13, depth -> "0.9")))
        .anyMatch(line -> line.contains("a mean aerosol depth of 0.90"));
  }

  /**
   * Two heads exchanged: told for all but these, which are alike in range and sense; a true year
   * betrays more of them, as its figures are not constant.
   */
  @Test
  void refusesOrNotesExchangedHeads() throws IOException {
    List<String> quiet = new ArrayList<>();
    List<String> lines = MadeFile.lines();
    String[] heads = lines.get(1).split(",");
    for (int one = 2; one < heads.length; one++) {
      for (int other = one + 1; other < heads.length; other++) {
        String[] turned = heads.clone();
        turned[one] = heads[other];
        turned[other] = heads[one];
        lines.set(1, String.join(",", turned));
        if (told(lines).isEmpty()) {
          quiet.add(heads[one] + " for " + heads[other]);
        }
      }
    }
    assertThat(quiet)
        .containsExactlyInAnyOrder(
            "OpqCld (tenths) for Pwat (cm)", "AOD (unitless) for Alb (unitless)");
  }

  @Test
  void headsInAnotherOrderAreNoMatter() throws IOException {
    List<String> turned =
        MadeFile.lines().stream()
            .map(line -> line.equals(MadeFile.STATION) ? line : reversed(line))
            .collect(Collectors.toList());
    assertThat(told(turned)).isEmpty();
  }

  private static String reversed(String line) {
    List<String> cells = Arrays.asList(line.split(",", -1));
    Collections.reverse(cells);
    return String.join(",", cells);
  }
}
