package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClimatesTest {
  private final Climates climates = Climates.load();

  private static Climates of(String... idNameState) {
    return new Climates(
        Stream.of(idNameState)
            .map(text -> text.split("\\|", -1))
            .map(part -> MadeClimate.at(new Station(part[0], part[1], part[2], -6, 35, -90, 0)))
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    "722230,722230",
    "Mobile,722230",
    "mobile al,722230",
    "'Mobile, AL',722230",
    "MOBILE REGIONAL AP,722230",
    "phoenix,722780",
    "O'Hare,725300",
    "'Las Vegas, NV',723860",
    "'Portland, Oregon',726980",
    "'St. Louis, Mo.',724340",
    "saint louis,724340",
    "Denver,725650",
    "'Portland, OR',726980",
    "'Portland, ME',726060",
    "New Orl,722310",
    "reagan,724050",
    "' san juan ',785260"
  })
  void findsAStationByNumberOrName(String text, String id) {
    assertThat(climates.find(text)).map(one -> one.station().id()).hasValue(id);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "722231", "Atlantis", "Portland", "New", "Intl", ",;"})
  void findsNothingWhereNoneOrSeveralFit(String text) {
    assertThat(climates.find(text)).isEmpty();
  }

  @Test
  void prefersTheMainAirportOfACity() {
    Climates two = of("722235|Mobile Downtown AP|AL", "722230|Mobile Regional AP|AL");
    assertThat(two.find("Mobile")).map(one -> one.station().id()).hasValue("722230");
    assertThat(two.find("Mobile Downtown")).map(one -> one.station().id()).hasValue("722235");
    Climates alike = of("725300|Chicago Ohare|IL", "725340|Chicago Midway|IL");
    assertThat(alike.find("Chicago")).isEmpty();
    assertThat(alike.suggestions("Chicago")).hasSize(2);
  }

  /** Two towns of one name are told apart by their owner, however their numbers end. */
  @Test
  void choosesNoTownForAnotherState() {
    Climates two = of("722180|Augusta Bush Field|GA", "726185|Augusta Airport|ME");
    assertThat(two.find("Augusta")).isEmpty();
    assertThat(two.suggestions("Augusta")).hasSize(2);
    assertThat(two.find("Augusta, ME")).map(one -> one.station().id()).hasValue("726185");
    assertThat(two.find("Augusta, Georgia")).map(one -> one.station().id()).hasValue("722180");
  }

  @Test
  void aNameThatIsWholeHereMayBeginAnotherElsewhere() {
    Climates two = of("726464|Watertown|WI", "726227|Watertown AP|NY");
    assertThat(two.find("Watertown")).isEmpty();
    assertThat(two.find("Watertown WI")).map(one -> one.station().id()).hasValue("726464");
    Climates one = of("725460|Washington|IA", "727930|Seattle Intl AP|WA");
    assertThat(one.find("Washington")).as("the state or the town").isEmpty();
    assertThat(one.find("Washington, Iowa")).map(it -> it.station().id()).hasValue("725460");
    assertThat(of("912120|Guam WFO|GU").find("Guam")).isPresent();
    Climates alike = of("725450|Cedar Field|IA", "725451|Cedar|IA");
    assertThat(alike.find("Cedar")).map(it -> it.station().id()).hasValue("725451");
  }

  @Test
  void theKindOfAnAirportIsNoName() {
    Climates falls = of("727470|International Falls Intl AP|MN");
    assertThat(falls.find("Intl")).isEmpty();
    assertThat(falls.find("International AP")).isEmpty();
    assertThat(falls.find("intl falls")).isPresent();
  }

  /** Troy, California is not Troy, Alabama, though a word of its name begins like the code. */
  @Test
  void takesNoTownElsewhereForOneOfAStateThatWasNamed() {
    Climates one = of("722267|Troy Cargo Field|AL", "722230|Mobile Regional AP|AL");
    assertThat(one.find("Troy, CA")).isEmpty();
    assertThat(one.find("Troy")).map(found -> found.station().id()).hasValue("722267");
  }

  @Test
  void aNameGoesBeforeAStateOfTheSameLetters() {
    Climates two = of("111111|Testing Or Field|WA", "222222|Testing|OR");
    assertThat(two.find("testing or")).map(one -> one.station().id()).hasValue("222222");
    assertThat(two.find("testing or field")).map(one -> one.station().id()).hasValue("111111");
  }

  @Test
  void suggestsWhatIsSpeltAlike() {
    assertThat(climates.suggestions("Mobil"))
        .extracting(one -> one.station().id())
        .contains("722230");
    assertThat(climates.suggestions("Pheonix").get(0).station().id()).isEqualTo("722780");
    assertThat(climates.suggestions("Portland"))
        .extracting(one -> one.station().state())
        .containsOnly("ME", "OR");
    assertThat(climates.suggestions("722231").get(0).station().id()).startsWith("72223");
    assertThat(climates.suggestions("999999")).as("like no number").isEmpty();
    assertThat(climates.suggestions(" ")).isEmpty();
    assertThat(climates.suggestions("AP")).hasSizeBetween(1, 5);
  }

  /** The town of Semmes, Alabama: 30.78 N, 88.26 W (map), west of Mobile. */
  @Test
  void findsTheNearest() {
    assertThat(climates.nearest(30.78, -88.26).station().id()).isEqualTo("722230");
    List<StationClimate> sorted = climates.byDistance(30.78, -88.26);
    assertThat(sorted).hasSameSizeAs(climates.all());
    assertThat(sorted.get(1).station().id()).as("Downtown").isEqualTo("722235");
    assertThatIllegalArgumentException().isThrownBy(() -> climates.nearest(100, 0));
  }

  /** New York to Los Angeles airports: 3974 to 3983 km (common knowledge: 2,470 miles or so). */
  @Test
  void measuresTheGreatCircle() {
    Station newYork = climates.find("744860").orElseThrow().station();
    assertThat(newYork.distanceKm(33.938, -118.406)).isCloseTo(3975, within(15.0));
    assertThat(newYork.distanceKm(newYork.latitudeDeg(), newYork.longitudeDeg())).isZero();
  }

  @Test
  void readsAClimateOnlyWhenItIsAskedFor() {
    assertThat(climates.stations()).hasSameSizeAs(climates.all());
    Station phoenix = climates.find("722780").orElseThrow().station();
    assertThat(climates.climate(phoenix).station()).isSameAs(phoenix);
    assertThat(climates.climate(phoenix)).isSameAs(climates.find("722780").orElseThrow());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> climates.climate(MadeYear.PLACE))
        .withMessage("no station 999990");
  }

  @Test
  void findsTheTypicalYear() {
    Station phoenix = climates.find("722780").orElseThrow().station();
    TypicalYear year = climates.typicalYear(phoenix).orElseThrow();
    assertThat(year.station()).isEqualTo(phoenix);
    assertThat(year.mean(7, DayType::high)).as("climate normals: 41 °C").isBetween(39.0, 43.0);
    assertThat(year.mean(12, DayType::low)).as("climate normals: 7 °C").isBetween(5.0, 9.0);
    assertThat(climates.typicalYear(MadeYear.PLACE)).isEmpty();
    assertThat(of("722780|Phoenix|AZ").typicalYear(phoenix)).as("of none").isEmpty();
  }

  @Test
  void refusesToBeEmpty() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Climates(List.of()));
  }

  @ParameterizedTest
  @CsvSource({
    "MOBILE REGIONAL AP,Mobile Regional AP",
    "'BARROW W POST-W ROGERS ARPT [NSA - ARM]',Barrow W Post-W Rogers Arpt",
    "SAINT MARY`S (AWOS),Saint Mary's (AWOS)",
    "O`NEILL/BAKER FIELD,O'neill/Baker Field",
    "'CLOVIS MUNI  (AWOS)',Clovis Muni (AWOS)",
    "MCCONNELL AFB,Mcconnell AFB"
  })
  void writesNamesForPeople(String printed, String readable) {
    assertThat(StationName.readable(printed)).isEqualTo(readable);
  }
}
