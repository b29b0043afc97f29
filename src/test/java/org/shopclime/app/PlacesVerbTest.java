package org.shopclime.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlacesVerbTest {

  private static CommandsTest.Outcome run(String... words) {
    return CommandsTest.run(
        Stream.concat(Stream.of("places"), Stream.of(words)).toArray(String[]::new));
  }

  private static JsonNode json(String... words) throws IOException {
    CommandsTest.Outcome outcome =
        run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.code()).isZero();
    return new ObjectMapper().readTree(outcome.out());
  }

  @Test
  void jsonHoldsWhatIsPromised() throws IOException {
    JsonNode root = json("30.7,-88.2");
    JsonNode first = root.at("/places/0");
    assertThat(first.at("/id").textValue()).isEqualTo("722230");
    assertThat(first.at("/name").textValue()).isEqualTo("Mobile Regional AP");
    assertThat(first.at("/state").textValue()).isEqualTo("AL");
    assertThat(first.at("/latitudeDeg").doubleValue()).isCloseTo(30.683, within(1e-9));
    assertThat(first.at("/longitudeDeg").doubleValue()).isCloseTo(-88.25, within(1e-9));
    // 0.017 and 0.05 degrees: 1.89 km and 4.78 km, together 5.14 km.
    assertThat(first.at("/distanceMi").doubleValue()).isCloseTo(5.14 / 1.609344, within(0.02));
    // 66 m in the printed table.
    assertThat(first.at("/elevationFt").doubleValue()).isCloseTo(66 / 0.3048, within(0.01));
    assertThat(first.at("/elevationAboveShopFt").isNull()).isTrue();
    assertThat(first.at("/climate").textValue()).isEqualTo("hot, humid summers, mild winters");
    assertThat(root.at("/places")).hasSize(10);
    assertThat(root.at("/found").intValue()).isGreaterThan(70);
    assertThat(root.at("/warnings")).isEmpty();
  }

  @Test
  void everyQuantityEndsInItsUnit() throws IOException {
    List<String> bare = new ArrayList<>();
    JsonNode first = json("mobile").at("/places/0");
    first
        .fieldNames()
        .forEachRemaining(
            key -> {
              if (first.get(key).isNumber() && !key.matches(".*(Deg|Mi|Ft|F)")) {
                bare.add(key);
              }
            });
    assertThat(bare).isEmpty();
  }

  @Test
  void distancesOfATextAreFromTheFirst() throws IOException {
    assertThat(json("portland").at("/places/0/distanceMi").doubleValue()).isZero();
    assertThat(json("mobile").at("/places/0/distanceMi").doubleValue()).isZero();
    JsonNode portland = json("portland").at("/places/1");
    assertThat(portland.at("/state").textValue()).isEqualTo("ME");
    // Portland, Oregon to Portland, Maine: some 2,540 miles (map).
    assertThat(portland.at("/distanceMi").doubleValue()).isCloseTo(2540, within(20.0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mobile",
        "mobile al",
        "mobile, alabama",
        "MOBILE  REGIONAL",
        "722230",
        "30.7,-88.2",
        "30.7, -88.2",
        "30.7 -88.2",
        "30.7N 88.2W",
        "--limit 3 30.7 -88.2",
        "30.7 -88.2 --limit 3",
        "mobile --elevation 100ft"
      })
  void wordsNeedNoQuotes(String words) throws IOException {
    assertThat(json(words.split(" ")).at("/places/0/id").textValue()).isEqualTo("722230");
  }

  @ParameterizedTest
  @CsvSource({"TX,TX", "texas,TX", "puerto rico,PR", "Hawaii,HI", "new york,NY"})
  void aStateShowsAllItsStations(String text, String state) throws IOException {
    JsonNode root = json(text.split(" "));
    assertThat(root.at("/places")).isNotEmpty().hasSize(root.at("/found").intValue());
    root.at("/places").forEach(one -> assertThat(one.at("/state").textValue()).isEqualTo(state));
    assertThat(json("TX", "--limit", "2").at("/places")).hasSize(2);
  }

  @Test
  void theLimitLimits() throws IOException {
    assertThat(json("30.7,-88.2", "--limit", "3").at("/places")).hasSize(3);
    JsonNode all = json("30.7,-88.2", "--all");
    assertThat(all.at("/places")).hasSize(all.at("/found").intValue()).hasSizeGreaterThan(70);
    assertThat(run("30.7,-88.2", "--limit", "2").out()).contains(" more; --all shows them.");
  }

  @Test
  void elevationIsCompared() throws IOException {
    JsonNode root = json("denver", "--elevation", "1200 ft");
    // Denver International: 1650 m in the printed table.
    assertThat(root.at("/places/0/elevationAboveShopFt").doubleValue())
        .isCloseTo(1650 / 0.3048 - 1200, within(0.01));
    assertThat(root.at("/warnings/0/path").textValue()).isEqualTo("places[0]");
    assertThat(root.at("/warnings/0/text").textValue())
        .startsWith("Denver Intl AP lies 4,213 ft above you.");
    assertThat(json("denver", "--elevation", "5000 ft").at("/warnings")).isEmpty();
    assertThat(run("denver", "--elevation", "2000 m", "--units", "si").out())
        .contains("your shop at 2,000 m", "1,650 m", "350 m below you")
        .doesNotContain(" ft")
        .doesNotContain("°F");
  }

  /** The Atlantic some 500 miles east of New York. */
  @Test
  void farFromAnyStationThereIsAWarning() throws IOException {
    assertThat(json("38,-64").at("/warnings/0/text").textValue())
        .startsWith("The nearest station is ")
        .contains("Mountains and coast make a neighbour's weather different.")
        .doesNotContain("minus");
    assertThat(json("30.7", "88.2").at("/warnings/0/text").textValue())
        .endsWith("write them with a minus or a W.");
    assertThat(json("mobile").at("/warnings")).isEmpty();
  }

  @Test
  void theTextEndsWithTheWordsForTheShopFile() {
    CommandsTest.Outcome outcome = run("mobile");
    assertThat(outcome.code()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out())
        .contains("722230", "Mobile Regional AP, AL", "hot, humid summers (91 °F, dew point 70 °F)")
        .endsWith("In the shop file: \"place\": {\"station\": \"722230\"}\n");
    assertThat(outcome.out().lines())
        .allSatisfy(line -> assertThat(line.length()).isBetween(0, 100));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {
        "95,-88>found a latitude of 95°; takes latitude and longitude in degrees",
        "30 -188>found a longitude of -188°; takes latitude and longitude in degrees",
        "30.7>found \"30.7\"; takes latitude and longitude in degrees",
        "Pheonix>found \"Pheonix\"; takes a town, a state, the number of a station",
        "36695>found the number 36695; takes a town",
        "--jsn>found \"--jsn\"; takes TEXT|LAT,LON and the options --limit, --all, --elevation",
        "mobile -x>found \"-x\"; takes TEXT|LAT,LON and the options"
      },
      quoteCharacter = '`')
  void badInputIsOneLine(String words, String told) {
    refused("places: " + told, words.split(" "));
  }

  @Test
  void badInputOfOptionsIsOneLine() {
    refused("places: found nothing; takes a town", "");
    refused("places: found nothing; takes TEXT|LAT,LON");
    refused("places --limit: found \"0\"; takes a whole number from 1 up", "x", "--limit", "0");
    refused("places --limit: found \"two\"; takes a whole number from 1 up", "x", "--limit", "two");
    refused("places --elevation: found \"8\"; takes a length", "x", "--elevation", "8");
    refused(
        "places --elevation: found \"30000 ft\"; takes a height", "x", "--elevation", "30000 ft");
    refused("places --units: found \"metric\"; takes ip|si", "x", "--units", "metric");
  }

  @Test
  void aMissSuggestsWhatIsSpeltAlike() {
    assertThat(run("Pheonix").err()).contains("; spelt most alike: 722780 Phoenix Sky Harbor");
  }

  private static void refused(String start, String... words) {
    CommandsTest.Outcome outcome = run(words);
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().toList()).singleElement().asString().startsWith(start);
  }
}
