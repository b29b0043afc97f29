package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.Trace;

class SizeJsonTest {

  private static final List<String> UNITS =
      List.of(
          "BtuhFt2F",
          "Btuh",
          "Ft2",
          "F",
          "Ft",
          "Watts",
          "Deg",
          "Hour",
          "Hours",
          "Mph",
          "GramsM2",
          "GramsM2Day",
          "In",
          "M",
          "Perm",
          "Share",
          "Cfm",
          "Pa",
          "Lb",
          "Lbf",
          "Kwh",
          "Minutes");
  private static final Set<String> WITHOUT_UNIT =
      Set.of("hour", "month", "months", "mostMonth", "share", "relativeHumidity", "count");
  private static final double ROUNDING = 0.0051;

  private static JsonNode json(SizeAnswer answer) {
    try {
      return new ObjectMapper().readTree(SizeJson.of(answer));
    } catch (JsonProcessingException damaged) {
      throw new AssertionError(damaged);
    }
  }

  private static SizeAnswer withoutUnit() {
    return Answers.withoutUnit(
        Answers.day(hour -> 78 + hour, Answers.JUDGED, hour -> 0),
        OptionalDouble.of(24000),
        Answers.band(90, 99));
  }

  private static void check(String key, JsonNode value, List<String> bare) {
    if (value.isObject()) {
      value.properties().forEach(field -> check(field.getKey(), field.getValue(), bare));
    } else if (value.isArray()) {
      value.forEach(each -> check(key, each, bare));
    } else if (value.isNumber()
        && !WITHOUT_UNIT.contains(key)
        && UNITS.stream().noneMatch(key::endsWith)) {
      bare.add(key);
    }
  }

  @Test
  void everyNumberSaysItsUnit() {
    List<String> bare = new ArrayList<>();
    check("", json(Answers.example()), bare);
    check("", json(withoutUnit()), bare);
    assertThat(bare).isEmpty();
  }

  @Test
  void theAgreedKeysAreThere() {
    for (SizeAnswer answer : List.of(Answers.example(), withoutUnit())) {
      JsonNode json = json(answer);
      assertThat(keys(json))
          .contains(
              "place",
              "hotDay",
              "peak",
              "components",
              "unit",
              "withoutUnit",
              "indoorF",
              "dewPointF",
              "relativeHumidity",
              "band",
              "changes",
              "scenarios",
              "winter",
              "warnings");
      assertThat(keys(json.get("hotDay"))).contains("dryBulbF", "wetBulbF");
      assertThat(keys(json.get("peak")))
          .containsExactly("hour", "sensibleBtuh", "latentBtuh", "totalBtuh");
      assertThat(keys(json.get("components").get(0)))
          .containsExactly(
              "name",
              "kind",
              "room",
              "areaFt2",
              "uFactorBtuhFt2F",
              "driveF",
              "share",
              "sensibleBtuh",
              "latentBtuh",
              "pencilBtuh");
      assertThat(keys(json.get("unit")))
          .contains(
              "ratedBtuh",
              "deliveredSensibleBtuh",
              "deliveredLatentBtuh",
              "holds",
              "indoorPeakF",
              "indoorPeakHour",
              "operativePeakF",
              "keepsUpToF",
              "limitReason",
              "recommendedBtuh");
      assertThat(keys(json.get("withoutUnit")))
          .containsExactly(
              "indoorPeakF",
              "indoorPeakHour",
              "operativePeakF",
              "heatIndexF",
              "wbgtF",
              "heatIndexPeakF",
              "heatIndexPeakHour",
              "wbgtPeakF",
              "wbgtPeakHour");
      assertThat(keys(json.get("band")))
          .containsExactly("indoorPeakLowF", "indoorPeakHighF", "decidedBy");
      assertThat(keys(json.get("changes").get(0)))
          .contains("name", "peakSensibleBtuh", "peakLatentBtuh", "indoorPeakF", "recommendedBtuh");
      assertThat(keys(json.get("scenarios").get(0)))
          .containsExactly("name", "holds", "indoorPeakF", "recommendedBtuh");
      assertThat(keys(json.get("winter")))
          .contains("designF", "typicalYearF", "basis", "lossBtuh", "heaterWatts");
      assertThat(keys(json.get("warnings").get(0))).containsExactly("path", "text");
      for (String array :
          List.of(
              "/indoorF",
              "/dewPointF",
              "/relativeHumidity",
              "/heatIndexF",
              "/wbgtF",
              "/withoutUnit/heatIndexF",
              "/withoutUnit/wbgtF")) {
        assertThat(json.at(array)).as(array).hasSize(24);
      }
      assertThat(json.at("/hotDay/dryBulbF")).hasSize(24);
      assertThat(json.at("/hotDay/wetBulbF")).hasSize(24);
    }
  }

  private static List<String> keys(JsonNode object) {
    List<String> keys = new ArrayList<>();
    object.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void figuresAreThoseOfTheAnswer() {
    SizeAnswer answer = Answers.example();
    JsonNode json = json(answer);
    Trace trace = answer.core().unit().orElseThrow().trace();
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(json.get("indoorF").get(hour - 1).doubleValue())
          .isCloseTo(Units.fahrenheit(trace.air().at(hour)), offset(ROUNDING));
      assertThat(json.get("dewPointF").get(hour - 1).doubleValue())
          .isCloseTo(Units.fahrenheit(trace.dewPoint().at(hour)), offset(ROUNDING));
      assertThat(json.get("relativeHumidity").get(hour - 1).doubleValue())
          .isCloseTo(trace.relativeHumidity().at(hour), offset(0.000051));
      assertThat(json.at("/hotDay/dryBulbF").get(hour - 1).doubleValue())
          .isCloseTo(Units.fahrenheit(answer.core().hotDay().dryBulb().at(hour)), offset(ROUNDING));
      assertThat(json.at("/hotDay/wetBulbF").get(hour - 1).doubleValue())
          .isCloseTo(Units.fahrenheit(answer.core().hotDay().wetBulb().at(hour)), offset(ROUNDING));
    }
    assertThat(json.at("/unit/ratedBtuh").doubleValue()).isCloseTo(12000, offset(ROUNDING));
    assertThat(json.at("/unit/indoorPeakF").doubleValue())
        .isCloseTo(Units.fahrenheit(answer.core().indoorPeak()), offset(ROUNDING));
    assertThat(json.at("/unit/indoorPeakHour").intValue())
        .isEqualTo(answer.core().unit().get().peakHour());
    assertThat(json.at("/unit/keepsUpToF").doubleValue())
        .isCloseTo(
            Units.fahrenheit(answer.unit().get().keepsUpTo().orElseThrow()), offset(ROUNDING));
    assertThat(json.at("/unit/limitReason").isNull()).isTrue();
    assertThat(json.at("/unit/recommendedBtuh").doubleValue())
        .isCloseTo(Units.btuh(answer.recommended().orElseThrow()), offset(ROUNDING));
    assertThat(json.at("/withoutUnit/operativePeakF").doubleValue())
        .isCloseTo(Units.fahrenheit(answer.core().without().operativePeak()), offset(ROUNDING));
    assertThat(json.at("/band/indoorPeakHighF").doubleValue())
        .isCloseTo(Units.fahrenheit(answer.band().high()), offset(ROUNDING));
    assertThat(
            json.at("/winter/typicalYearF").doubleValue()
                - json.at("/winter/designF").doubleValue())
        .isCloseTo(2.34, offset(0.02));
    assertThat(json.at("/winter/basis").textValue()).contains("2.3 °F is taken off");
    assertThat(json.at("/winter/heaterWatts").doubleValue())
        .isCloseTo(answer.winter().heater(), offset(ROUNDING));
    assertThat(json.at("/warnings/0/text").textValue()).isEqualTo("Take care.");
    assertThat(json.at("/place/id").textValue()).isEqualTo("722230");
  }

  @Test
  void componentsAddUpToThePeak() {
    JsonNode json = json(Answers.example());
    double sensible = 0;
    double latent = 0;
    double share = 0;
    for (JsonNode component : json.get("components")) {
      sensible += component.get("sensibleBtuh").doubleValue();
      latent += component.get("latentBtuh").doubleValue();
      share += component.get("share").doubleValue();
    }
    double rounding = json.get("components").size() * ROUNDING;
    assertThat(sensible).isCloseTo(json.at("/peak/sensibleBtuh").doubleValue(), within(rounding));
    assertThat(latent).isCloseTo(json.at("/peak/latentBtuh").doubleValue(), within(rounding));
    assertThat(share).isCloseTo(1, within(0.001));
    assertThat(json.at("/peak/totalBtuh").doubleValue())
        .isCloseTo(
            json.at("/peak/sensibleBtuh").doubleValue() + json.at("/peak/latentBtuh").doubleValue(),
            within(2 * ROUNDING));
  }

  @Test
  void componentsAreTheLinesAtThePeakHour() {
    SizeAnswer answer = Answers.example();
    JsonNode json = json(answer);
    int hour = answer.core().load().peakHour();
    assertThat(json.at("/peak/hour").intValue()).isEqualTo(hour);
    RoomLoad room = answer.core().load().rooms().get(0);
    for (int i = 0; i < room.lines().size(); i++) {
      Line line = room.lines().get(i);
      JsonNode component = json.get("components").get(i);
      assertThat(component.get("name").textValue()).isEqualTo(line.name());
      assertThat(component.get("kind").textValue()).isEqualTo(line.kind().word());
      assertThat(component.get("room").textValue()).isEqualTo(room.name());
      assertThat(component.get("areaFt2").doubleValue())
          .isCloseTo(Units.squareFeet(line.area()), offset(ROUNDING));
      assertThat(component.get("uFactorBtuhFt2F").doubleValue())
          .isCloseTo(Units.uFactorIp(line.uFactor()), offset(0.000051));
      assertThat(component.get("driveF").doubleValue())
          .isCloseTo(line.drive().at(hour) * 1.8, offset(ROUNDING));
      assertThat(component.get("pencilBtuh").doubleValue())
          .isCloseTo(Units.btuh(line.pencil(hour)), offset(ROUNDING));
    }
  }

  @Test
  void scenariosTellWhatHolds() {
    JsonNode scenarios =
        json(Answers.withUnit(
                Answers.day(hour -> 82, Answers.JUDGED, hour -> 1),
                org.shopclime.plan.Verdict.NEVER_CATCHES_UP,
                OptionalDouble.of(90),
                OptionalDouble.empty(),
                Answers.known(82)))
            .get("scenarios");
    assertThat(scenarios.at("/0/name").textValue()).isEqualTo("work");
    assertThat(scenarios.at("/0/holds").booleanValue()).isTrue();
    assertThat(scenarios.at("/0/indoorPeakF").doubleValue()).isEqualTo(78);
    assertThat(scenarios.at("/0/recommendedBtuh").doubleValue()).isEqualTo(10000);
    assertThat(scenarios.at("/1/holds").booleanValue()).isFalse();
    assertThat(scenarios.at("/1/recommendedBtuh").isNull()).isTrue();
  }

  @Test
  void changesTellTheDifferenceToo() {
    JsonNode change =
        json(Answers.withUnit(
                Answers.day(hour -> 82, Answers.JUDGED, hour -> 1),
                org.shopclime.plan.Verdict.NEVER_CATCHES_UP,
                OptionalDouble.of(90),
                OptionalDouble.empty(),
                Answers.known(82)))
            .get("changes")
            .get(0);
    // by hand: 6,250 and 3,350 BTU/h and 82 °F before, 5,100, 2,000 and 80 °F after
    assertThat(change.get("peakSensibleDifferenceBtuh").doubleValue()).isEqualTo(-1150);
    assertThat(change.get("peakLatentDifferenceBtuh").doubleValue()).isEqualTo(-1350);
    assertThat(change.get("indoorPeakDifferenceF").doubleValue()).isEqualTo(-2);
    assertThat(change.get("recommendedBtuh").isNull()).isTrue();
  }

  @Test
  void withoutUnitItsFiguresAreNull() {
    JsonNode unit = json(withoutUnit()).get("unit");
    assertThat(unit.get("ratedBtuh").isNull()).isTrue();
    assertThat(unit.get("deliveredSensibleBtuh").isNull()).isTrue();
    assertThat(unit.get("keepsUpToF").isNull()).isTrue();
    assertThat(unit.get("limitReason").textValue()).isEqualTo("no unit is given");
    assertThat(unit.get("holds").booleanValue()).isFalse();
    assertThat(unit.get("recommendedBtuh").doubleValue()).isEqualTo(24000);
    assertThat(unit.get("indoorPeakF").doubleValue()).isEqualTo(94);
  }

  @Test
  void aLimitThatThereIsNotHasItsReason() {
    SizeAnswer answer =
        Answers.withUnit(
            Answers.day(hour -> 82, Answers.JUDGED, hour -> 1),
            org.shopclime.plan.Verdict.NEVER_CATCHES_UP,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Answers.known(82));
    assertThat(json(answer).at("/unit/keepsUpToF").isNull()).isTrue();
    assertThat(json(answer).at("/unit/limitReason").textValue()).isEqualTo("why not");
  }

  @Test
  void whatIsNotFiniteIsNull() {
    SizeAnswer idle =
        Answers.withoutUnit(
            Answers.day(hour -> 90, Set.of(), hour -> 0),
            OptionalDouble.empty(),
            Answers.known(Double.NEGATIVE_INFINITY));
    assertThat(json(idle).at("/band/indoorPeakLowF").isNull()).isTrue();
  }

  @Test
  void everyFigureShownHasItsPlaceInTheJson() {
    for (SizeAnswer answer : List.of(Answers.example(), withoutUnit())) {
      JsonNode json = json(answer);
      for (Figure figure : SizeFigures.of(answer, UnitSystem.INCH_POUND)) {
        JsonNode value = json.at("/" + figure.key().replace('.', '/'));
        assertThat(value.isMissingNode() || value.isNull()).as(figure.key()).isFalse();
        if (figure.key().endsWith("F")) {
          assertThat(Double.parseDouble(figure.value().replace(" °F", "")))
              .as(figure.key())
              .isCloseTo(value.doubleValue(), offset(0.51)); // whole degrees are shown
        }
        assertThat(figure.label()).doesNotContain("_").isNotBlank();
      }
    }
  }
}
