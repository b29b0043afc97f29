package org.shopclime.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.shop.Examples;

/** The year as an owner and a machine get it. */
class YearVerbTest {

  private static final String HOURS_OF_MOBILE = "722230TYA.CSV.xz";

  @TempDir private Path folder;

  private static JsonNode json(CommandsTest.Outcome outcome) throws IOException {
    assertThat(outcome.code()).isZero();
    return new ObjectMapper().readTree(outcome.out());
  }

  private Path shop(String... replacements) throws IOException {
    String text = Examples.text("insulated-foam-door");
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(text).contains(replacements[i]);
      text = text.replace(replacements[i], replacements[i + 1]);
    }
    return Files.writeString(folder.resolve("shop.json"), text);
  }

  private static double sum(JsonNode array) {
    assertThat(array).hasSize(12);
    double sum = 0;
    for (JsonNode each : array) {
      sum += each.doubleValue();
    }
    return sum;
  }

  /** What holds whatever the weather comes from. */
  private static void isWhole(JsonNode json) {
    assertThat(json.at("/place/id").textValue()).isEqualTo("722230");
    assertThat(json.get("rooms")).hasSize(2);
    JsonNode room = json.at("/rooms/0");
    assertThat(room.get("name").textValue()).isEqualTo("Shop");
    assertThat(room.get("cooling").textValue()).isEqualTo("unit");
    assertThat(room.get("heating").textValue()).isEqualTo("ideal");
    for (String name : List.of("Heating", "Cooling", "Latent", "Unit")) {
      assertThat(sum(room.get("monthly" + name + "Kwh")))
          .as(name)
          .isCloseTo(
              room.get(name.toLowerCase(Locale.ROOT) + "Kwh").doubleValue(),
              within(0.001)); // thirteen figures rounded to 0.0001
    }
    assertThat(sum(room.get("monthlyWorkHoursAbove85FH")))
        .isCloseTo(room.get("workHoursAbove85FH").doubleValue(), within(0.001));
    double taken = room.get("coolingKwh").doubleValue() + room.get("latentKwh").doubleValue();
    // A window unit's yearly cooling for each kWh lies about its rating, 3 (common practice).
    assertThat(taken / room.get("unitKwh").doubleValue()).isBetween(2.0, 4.5);
    assertThat(room.at("/leftAlone/meanC").doubleValue())
        .isGreaterThan(room.get("meanC").doubleValue());
    assertThat(room.at("/leftAlone/workHoursAbove85FH").doubleValue())
        .isGreaterThan(room.get("workHoursAbove85FH").doubleValue());
    assertThat(room.at("/leftAlone/hoursAbove85FH").doubleValue())
        .isGreaterThan(room.at("/leftAlone/workHoursAbove85FH").doubleValue());
    JsonNode attic = json.at("/rooms/1");
    assertThat(attic.get("cooling").textValue()).isEqualTo("none");
    assertThat(attic.get("heating").textValue()).isEqualTo("none");
    assertThat(attic.get("coolingKwh").doubleValue()).isZero();
    assertThat(attic.has("unitKwh")).isFalse();
    assertThat(json.get("surfaces"))
        .anySatisfy(
            surface -> {
              assertThat(surface.get("name").textValue()).isEqualTo("South window");
              assertThat(surface.get("room").textValue()).isEqualTo("Shop");
              assertThat(surface.get("transmittedKwhM2").doubleValue())
                  .isBetween(1.0, surface.get("incidentKwhM2").doubleValue());
            });
  }

  @Test
  void dayTypesTellSumsAndNoPeaks() throws IOException {
    CommandsTest.Outcome outcome = CommandsTest.run("year", "--json");
    assertThat(outcome.err()).isEmpty();
    JsonNode json = json(outcome);
    assertThat(json.get("weather").textValue()).isEqualTo("day types");
    isWhole(json);
    for (JsonNode room : json.get("rooms")) {
      for (String key :
          List.of(
              "peakHeatingKw",
              "peakHeatingHour",
              "peakCoolingKw",
              "peakCoolingHour",
              "minC",
              "maxC")) {
        assertThat(room.has(key)).as(key).isTrue();
        assertThat(room.get(key).isNull()).as(key).isTrue();
      }
      assertThat(room.at("/leftAlone/maxC").isNull()).isTrue();
      assertThat(room.get("meanC").isNumber()).isTrue();
    }
  }

  private static final String PRICES =
      """
      {"electricity": "13.9 c/kWh", "source": "bill of June 2026", "monthlyCharge": "$14.50",
       "heater": {"kind": "natural gas", "price": "$1.20/therm"},
       "changes": [{"change": "leaks halved", "cost": "$120"},
                   {"change": "walls filled", "cost": "$350"}],
       "firstCosts": {"windowUnit": "$450", "heater": "$600", "heatPump": "$1,900"},
       "budget": "$300"}""";

  @Test
  void theUnitsElectricityHasItsCost() throws IOException {
    JsonNode json = json(CommandsTest.run("year", "--json"));
    JsonNode bill = json.get("bill");
    JsonNode room = json.at("/rooms/0");
    double unit = room.get("unitKwh").doubleValue();
    assertThat(bill.at("/price/electricityUsdPerKwh").doubleValue()).isEqualTo(0.1504);
    assertThat(bill.at("/price/source").textValue()).contains("Energy Information Administration");
    assertThat(bill.at("/price/area").textValue()).isEqualTo("US");
    assertThat(bill.at("/price/year").intValue()).isEqualTo(2022);
    assertThat(bill.at("/price/typed").booleanValue()).isFalse();
    assertThat(room.get("unitCostUsd").doubleValue()).isCloseTo(0.1504 * unit, within(0.001));
    assertThat(bill.get("unitCostUsd")).isEqualTo(room.get("unitCostUsd"));
    assertThat(sum(room.get("monthlyUnitCostUsd")))
        .isCloseTo(room.get("unitCostUsd").doubleValue(), within(0.001));
    assertThat(bill.get("heatingCostUsd").doubleValue())
        .isCloseTo(0.1504 * room.get("heatingKwh").doubleValue(), within(0.001));
    assertThat(sum(bill.get("monthlyCostUsd")))
        .isCloseTo(bill.get("costUsd").doubleValue(), within(0.001));
    assertThat(bill.get("costHighUsd").doubleValue())
        .isCloseTo(1.2 * bill.get("costUsd").doubleValue(), within(0.001));
    assertThat(json.at("/rooms/1").has("unitCostUsd")).isFalse();
    assertThat(bill.get("changes")).isEmpty();
    assertThat(bill.has("firstSteps")).isFalse();
  }

  @Test
  void typedPricesAndWhatChangesSave() throws IOException {
    Path file =
        shop("\"unit\": {\"capacity\"", "\"prices\": " + PRICES + ", \"unit\": {\"capacity\"");
    JsonNode bill = json(CommandsTest.run("year", file.toString(), "--json")).get("bill");
    assertThat(bill.get("heating").textValue()).isEqualTo("natural gas");
    assertThat(bill.get("fuelTherm").doubleValue() * 1.2)
        .isCloseTo(bill.get("heatingCostUsd").doubleValue(), within(0.001));
    assertThat(bill.get("changes")).hasSize(1);
    JsonNode leaks = bill.at("/changes/0");
    assertThat(leaks.get("name").textValue()).isEqualTo("leaks halved");
    assertThat(leaks.get("paybackYears").doubleValue())
        .isCloseTo(120 / leaks.get("savedUsd").doubleValue(), within(0.2));
    assertThat(leaks.get("paybackLowYears").doubleValue())
        .isCloseTo(leaks.get("paybackYears").doubleValue() / 1.2, within(0.001));
    assertThat(bill.at("/firstSteps/budgetUsd").doubleValue()).isEqualTo(300);
    JsonNode bought = bill.get("toBuy");
    double yearly = bought.get("yearlyCostUsd").doubleValue();
    assertThat(yearly).isCloseTo(bill.get("costUsd").doubleValue(), within(0.001));
    // bought twice in 15 years, and its heater once
    assertThat(bought.get("presentCostUsd").doubleValue())
        .isCloseTo(2 * 450 + 600 + 15 * yearly, within(0.01));
    assertThat(bought.get("heatPumpBreakEvenYearlyUsd").doubleValue())
        .isCloseTo((1500 + 15 * yearly - 1900) / 15, within(0.01));
    JsonNode pump = bought.get("heatPump");
    double pumpYearly = pump.get("yearlyCostUsd").doubleValue();
    assertThat(pump.get("presentCostUsd").doubleValue())
        .isCloseTo(1900 + 15 * pumpYearly, within(0.01));
    assertThat(pump.get("gainUsd").doubleValue())
        .isCloseTo(2 * 450 + 600 + 15 * yearly - 1900 - 15 * pumpYearly, within(0.01));
    double heat = pump.get("heatKwh").doubleValue();
    assertThat(pump.get("heatingKwh").doubleValue()).isBetween(heat / 6, heat / 2);
    assertThat(pump.get("coolingKwh").doubleValue())
        .isLessThan(sum(bill.at("/monthlyCostUsd")) / 0.139);
    CommandsTest.Outcome told = CommandsTest.run("year", file.toString());
    String text = told.out().replaceAll("\\s+", " ");
    assertThat(text)
        .contains(
            "Price of electricity: 13.9 cents a kWh (bill of June 2026). The monthly charge of"
                + " $14.50 is paid anyway and left out.",
            "for heating by natural gas",
            "What changes save",
            "With $300: ",
            "A heat pump at $1,900 costs less over these years if",
            "walls filled: No saving is reckoned")
        .doesNotContain("Energy Information");
    assertThat(told.out().lines()).allMatch(line -> line.length() <= 100);
    Path reports = folder.resolve("r");
    assertThat(CommandsTest.run("year", file.toString(), "--report", reports.toString()).code())
        .isZero();
    assertThat(reports.resolve("year.html"))
        .content()
        .contains("<h2>What changes save</h2>", "leaks halved", "With $300: ");
    assertThat(Files.readAllLines(reports.resolve("year-months.csv")).get(0))
        .endsWith("unitCostUsd,heatingCostUsd");
  }

  @Test
  void theTextOfDayTypesSaysWhyThereAreNoPeaks() {
    CommandsTest.Outcome outcome = CommandsTest.run("year", "--units", "si");
    assertThat(outcome.code()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out())
        .contains("the unit draws", "means flatten peaks", "--weather", "power bill", "°C")
        .contains("1 January", "July", "left alone")
        .doesNotContain("°F", "Hours that stand out");
    assertThat(outcome.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void hoursOfDayTypesSayWhatTheyAre() throws IOException {
    Path out = folder.resolve("hours.csv");
    CommandsTest.Outcome outcome = CommandsTest.run("year", "--hourly", out.toString());
    assertThat(outcome.code()).isZero();
    assertThat(outcome.out()).endsWith("Hours: " + out + System.lineSeparator());
    List<String> lines = Files.readAllLines(out);
    assertThat(lines.stream().filter(line -> line.startsWith("#")))
        .anyMatch(line -> line.contains("no forecast") && line.contains("no peaks"));
    assertThat(lines.stream().filter(line -> !line.startsWith("#"))).hasSize(1 + 8760);
    assertThat(out.getParent()).isDirectoryNotContaining(file -> file.toFile().isHidden());
  }

  @Test
  void aShopWithoutPlantsIsLeftAlone() throws IOException {
    Path file =
        shop(
            "\"use\": \"cooled\",",
            "\"use\": \"cooled\", \"cooling\": \"none\", \"heating\": \"none\",");
    JsonNode json = json(CommandsTest.run("year", file.toString(), "--json"));
    JsonNode room = json.at("/rooms/0");
    assertThat(room.get("cooling").textValue()).isEqualTo("none");
    assertThat(room.get("coolingKwh").doubleValue()).isZero();
    assertThat(room.get("heatingKwh").doubleValue()).isZero();
    assertThat(room.has("unitKwh")).isFalse();
    assertThat(room.get("meanC").doubleValue())
        .isEqualTo(room.at("/leftAlone/meanC").doubleValue());
    assertThat(json.get("warnings"))
        .anySatisfy(
            warning -> assertThat(warning.get("text").textValue()).contains("unit is not run"));
  }

  @Test
  void anIdealPlantIsNamedAndHasNoElectricity() throws IOException {
    Path file = shop("\"use\": \"cooled\",", "\"use\": \"cooled\", \"cooling\": \"ideal\",");
    JsonNode room = json(CommandsTest.run("year", file.toString(), "--json")).at("/rooms/0");
    assertThat(room.get("cooling").textValue()).isEqualTo("ideal");
    assertThat(room.get("coolingKwh").doubleValue()).isPositive();
    assertThat(room.has("unitKwh")).isFalse();
    assertThat(CommandsTest.run("year", file.toString()).out())
        .contains("an ideal plant takes out", "heat, not electricity")
        .doesNotContain("the unit draws");
  }

  @Test
  void thePageHoldsTheYear() throws IOException {
    Path reports = folder.resolve("r");
    CommandsTest.Outcome outcome =
        CommandsTest.run("year", "--json", "--report", reports.toString());
    json(outcome);
    assertThat(outcome.err())
        .isEqualTo("Report: " + reports.resolve("year.html") + System.lineSeparator());
    assertThat(reports.resolve("year.html"))
        .content()
        .contains("<h2>Month by month</h2>", "September", "means flatten peaks", "data:image/png");
    assertThat(Files.readAllLines(reports.resolve("year-months.csv"))).hasSize(13);
  }

  private static String weather(String name) {
    return Path.of(System.getProperty("shopclime.weather"), "full", name).toString();
  }

  @Test
  @EnabledIfSystemProperty(named = "shopclime.weather", matches = ".+")
  void hoursTellPeaksThatStandInTheirRows() throws IOException {
    Path out = folder.resolve("hours.csv");
    CommandsTest.Outcome outcome =
        CommandsTest.run(
            "year",
            "--json",
            "--weather",
            weather(HOURS_OF_MOBILE),
            "--hourly",
            out.toString(),
            "--units",
            "si");
    JsonNode json = json(outcome);
    assertThat(json.get("weather").textValue()).isEqualTo(HOURS_OF_MOBILE);
    isWhole(json);
    JsonNode room = json.at("/rooms/0");
    List<String[]> rows =
        Files.readAllLines(out).stream()
            .filter(line -> !line.startsWith("#"))
            .skip(1)
            .map(line -> line.split(",", -1))
            .toList();
    assertThat(rows).hasSize(8760);
    // Columns of the first room: 6 air, 9 heating, 10 cooling, 12 power; rounded to 0.01.
    assertThat(column(rows, 9).max().orElseThrow())
        .isCloseTo(1000 * room.get("peakHeatingKw").doubleValue(), within(0.1));
    assertThat(column(rows, 10).max().orElseThrow())
        .isCloseTo(1000 * room.get("peakCoolingKw").doubleValue(), within(0.1));
    assertThat(rows.get(room.get("peakCoolingHour").intValue() - 1)[10])
        .isEqualTo(
            rows.stream()
                .map(row -> row[10])
                .max(Comparator.comparingDouble(Double::parseDouble))
                .orElseThrow());
    assertThat(rows.get(room.get("peakHeatingHour").intValue() - 1)[0])
        .isEqualTo(room.get("peakHeatingHour").asText());
    assertThat(column(rows, 6).max().orElseThrow())
        .isCloseTo(room.get("maxC").doubleValue(), within(0.01));
    assertThat(column(rows, 6).min().orElseThrow())
        .isCloseTo(room.get("minC").doubleValue(), within(0.01));
    assertThat(column(rows, 12).sum() / 1000)
        .isCloseTo(room.get("unitKwh").doubleValue(), within(0.05));
  }

  private static DoubleStream column(List<String[]> rows, int column) {
    return rows.stream().mapToDouble(row -> Double.parseDouble(row[column]));
  }

  @Test
  @EnabledIfSystemProperty(named = "shopclime.weather", matches = ".+")
  void anotherStationIsToldWithItsDistance() throws IOException {
    CommandsTest.Outcome outcome =
        CommandsTest.run("year", "--json", "--weather", weather("725650TYA.CSV.xz"));
    JsonNode json = json(outcome);
    assertThat(json.at("/place/id").textValue()).isEqualTo("725650");
    // About 1,200 mi as the crow flies (from memory).
    assertThat(json.get("warnings"))
        .anySatisfy(
            warning -> {
              assertThat(warning.get("path").textValue()).isEqualTo("weather");
              assertThat(warning.get("text").textValue())
                  .contains("Denver")
                  .containsPattern("1,[12]\\d\\d mi from");
            });
    assertThat(outcome.err()).startsWith("Weather: the file is from Denver");
  }

  private static void refused(CommandsTest.Outcome outcome, String... lines) {
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().toList()).isEqualTo(List.of(lines));
  }

  @Test
  void whatCannotBeReadOrWrittenIsToldAtOnce() throws IOException {
    Path file = shop();
    Path none = folder.resolve("none");
    String takes =
        "takes a TMY3 hourly file: CSV, plain or packed as .xz, .gz or .zip, such as"
            + " 722230TYA.CSV";
    String out = "takes a file that can be written, in a folder that is there";
    refused(
        CommandsTest.run(
            "year",
            none.toString(),
            "--weather",
            none.toString(),
            "--hourly",
            none.resolve("x.csv").toString(),
            "--report",
            file.toString()),
        none + ": found no file; takes a shop file that can be read",
        "none: found no such file; " + takes,
        none.resolve("x.csv") + ": found no folder " + none + "; " + out,
        file + ": found a file; takes a folder that can be written to");
    refused(
        CommandsTest.run("year", "--weather", folder.toString()),
        folder.getFileName() + ": found a folder or device; " + takes);
    refused(
        CommandsTest.run("year", "--hourly", folder.toString()),
        folder + ": found a folder; " + out);
    refused(
        CommandsTest.run("year", file.toString(), "--hourly", file.toString()),
        file + ": found the shop file itself; " + out);
    assertThat(file).hasContent(Examples.text("insulated-foam-door"));
    assertThat(CommandsTest.run("year", "--weather", file.toString()).code()).isEqualTo(2);
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS) // where links need rights of their own
  void aLinkIsNotReplaced() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("to.csv"));
    refused(
        CommandsTest.run("year", "--hourly", link.toString()),
        link
            + ": found a link to another file; takes a file that can be written, in a folder that"
            + " is there");
    assertThat(link).isSymbolicLink();
  }

  @Test
  void aRoomTooHotToBeReckonedIsNamed() throws IOException {
    CommandsTest.Outcome outcome =
        CommandsTest.run("year", shop("\"5 hp\"", "\"90 hp\"").toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().toList())
        .singleElement()
        .asString()
        .startsWith("rooms: found room \"Shop\" would get hotter than");
  }

  @Test
  void theShopsStationMustBeKnown() throws IOException {
    CommandsTest.Outcome outcome =
        CommandsTest.run("year", shop("\"722230\"", "\"Nowhere, ZZ\"").toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.err().lines().toList())
        .singleElement()
        .asString()
        .startsWith("place.station: found \"Nowhere, ZZ\"");
  }
}
