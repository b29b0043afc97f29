package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.WorkerHeat;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Supply;

/** The heat on the worker and the unit's circuit in the answer. */
class WorkerTextTest {

  private static final UnitSystem IP = UnitSystem.INCH_POUND;

  private static String told(SizeAnswer answer) {
    return AnswerText.facts(answer, IP).stream()
        .filter(fact -> fact.startsWith("Heat on the worker"))
        .findFirst()
        .orElse("");
  }

  private static SizeAnswer with(SizeAnswer answer, Shop shop) {
    return Answers.named(answer, shop);
  }

  private static SizeAnswer hot(double fahrenheit) {
    return Answers.withoutUnit(
        Answers.day(hour -> fahrenheit, Answers.JUDGED, hour -> 0),
        OptionalDouble.of(24000),
        Answers.band(90, 99));
  }

  /** 96 °F at 50 %: the chart's 108 °F. */
  @Test
  void theSentenceHasFiguresSpeedAndCaution() {
    assertThat(told(hot(96)))
        .contains("heat index 108 °F from 8 to 9 am, wet-bulb globe ")
        .contains("(air moving at 0.67 mph)")
        .contains("In air this hot a fan is no remedy.")
        .contains("not a medical verdict: go by OSHA and NIOSH guidance")
        .doesNotContain("unit off")
        .doesNotContain("end of the Weather");
    assertThat(told(hot(88))).contains("A fan that moves 4.5 mph past the bench would take ");
    assertThat(told(hot(110))).contains("past the end of the Weather Service's chart");
  }

  /**
   * Warm and damp in the morning, dry and hotter in the afternoon: each figure has its own hour.
   */
  @Test
  void eachFigureHasItsOwnHour() {
    SizeAnswer answer = Answers.example();
    LivedDay day = answer.core().unit().orElseThrow();
    WorkerHeat heat = WorkerHeat.of(day.trace(), answer.shop().work().airSpeed());
    WallClock clock = new WallClock(answer.shop().work(), answer.core().hotDay().date());
    int index = WorkerHeat.worst(heat.heatIndex(), clock.working()).orElseThrow();
    int globe = WorkerHeat.worst(heat.wetBulbGlobe(), clock.working()).orElseThrow();
    assertThat(told(answer))
        .containsPattern("heat index \\d+ °F from " + clock.during(index) + ", wet-bulb globe")
        .containsPattern("wet-bulb globe \\d+ °F from " + clock.during(globe) + ";");
  }

  @Test
  void nothingIsEverCalledSafe() {
    for (double air : new double[] {50, 70, 80, 95, 130}) {
      assertThat(told(hot(air)).toLowerCase(java.util.Locale.ROOT)).doesNotContain("safe");
    }
  }

  @Test
  void theUnitIsHeldAgainstNone() throws Exception {
    SizeAnswer answer = Answers.example();
    assertThat(told(answer)).contains("; with the unit off, heat index ");
    JsonNode json = new ObjectMapper().readTree(SizeJson.of(answer));
    List<Integer> working =
        new WallClock(answer.shop().work(), answer.core().hotDay().date()).working();
    for (String key : List.of("heatIndex", "wbgt")) {
      for (JsonNode day : List.of(json, json.get("withoutUnit"))) {
        double most = Double.NEGATIVE_INFINITY;
        for (int hour : working) {
          most = Math.max(most, day.get(key + "F").get(hour - 1).doubleValue());
        }
        int hour = day.get(key + "PeakHour").intValue();
        assertThat(working).contains(hour);
        assertThat(day.get(key + "PeakF").doubleValue()).isCloseTo(most, offset(1e-9));
        assertThat(day.get(key + "F").get(hour - 1).doubleValue()).isCloseTo(most, offset(1e-9));
      }
      assertThat(json.get(key + "PeakF").doubleValue())
          .isLessThan(json.get("withoutUnit").get(key + "PeakF").doubleValue());
    }
    assertThat(json.get("workerAirSpeedMph").doubleValue()).isEqualTo(0.67);
  }

  @Test
  void aFanInTheFileLowersTheGlobeOnly() throws Exception {
    SizeAnswer still = hot(85);
    Shop fanned =
        still
            .shop()
            .withWork(
                (org.shopclime.shop.Work) ShopParts.with(still.shop().work(), "airSpeed", 2.0));
    JsonNode before = new ObjectMapper().readTree(SizeJson.of(still));
    JsonNode after = new ObjectMapper().readTree(SizeJson.of(with(still, fanned)));
    assertThat(after.get("wbgtPeakF").doubleValue())
        .isLessThan(before.get("wbgtPeakF").doubleValue());
    assertThat(after.get("heatIndexPeakF")).isEqualTo(before.get("heatIndexPeakF"));
    assertThat(told(with(still, fanned))).doesNotContain("A fan that moves");
  }

  private static SizeAnswer withFans(SizeAnswer answer, Gain... fans) {
    Shop shop = answer.shop();
    List<Room> rooms = new ArrayList<>(shop.rooms());
    List<Gain> gains = new ArrayList<>(rooms.get(0).gains());
    gains.addAll(List.of(fans));
    rooms.set(0, rooms.get(0).withGains(gains));
    return with(answer, shop.withRooms(rooms));
  }

  /**
   * The fastest of what is on and the speed told; a fan in the night does nothing for the worker.
   */
  @Test
  void theFastestFanThatIsOnCounts() throws Exception {
    SizeAnswer still = hot(85);
    Gain slow = new Gain.WorkFan("Box fan", 60, 1, ScheduleText.work());
    Gain fast = new Gain.WorkFan("Drum fan", 240, 3, ScheduleText.work());
    Gain asleep =
        new Gain.WorkFan("Night fan", 40, 4, ScheduleText.read("Mon-Sun 0:00-3:00").orElseThrow());
    SizeAnswer fanned = withFans(still, slow, fast, asleep);
    JsonNode before = new ObjectMapper().readTree(SizeJson.of(still));
    JsonNode after = new ObjectMapper().readTree(SizeJson.of(fanned));
    Shop typed =
        still
            .shop()
            .withWork(
                (org.shopclime.shop.Work) ShopParts.with(still.shop().work(), "airSpeed", 3.0));
    JsonNode same = new ObjectMapper().readTree(SizeJson.of(with(still, typed)));
    assertThat(after.get("workerAirSpeedMph").doubleValue()).isEqualTo(6.71);
    assertThat(after.get("wbgtPeakF")).isEqualTo(same.get("wbgtPeakF"));
    assertThat(after.get("wbgtPeakF").doubleValue())
        .isLessThan(before.get("wbgtPeakF").doubleValue());
    assertThat(after.get("heatIndexPeakF")).isEqualTo(before.get("heatIndexPeakF"));
    assertThat(after.get("wbgtF").get(19)).isEqualTo(before.get("wbgtF").get(19));
    assertThat(told(fanned))
        .contains("(air moving at 6.7 mph)")
        .contains(
            "Box fan, Drum fan and Night fan: air movement as comfort, not cooling; the 340 W drawn"
                + " stay in the room as heat.")
        .doesNotContain("A fan that moves");
  }

  @Test
  void theCircuitIsToldWhereSomethingIsKnownOfIt() {
    SizeAnswer answer = Answers.example();
    assertThat(AnswerText.facts(answer, IP)).noneMatch(fact -> fact.contains("electrician"));
    Supply supply =
        new Supply(
            Optional.of(9.5),
            Optional.empty(),
            Optional.of(20.0),
            Supply.Wire.AWG_12,
            Supply.Sharing.ALONE,
            Optional.empty());
    Shop shop =
        answer
            .shop()
            .withUnit(answer.shop().unit().map(unit -> unit.withSupply(Optional.of(supply))));
    assertThat(AnswerText.facts(with(answer, shop), IP))
        .filteredOn(fact -> fact.contains("electrician"))
        .singleElement()
        .asString()
        .startsWith("The unit draws about 9.5 A at 115 V by its plate")
        .contains("at its rating at once (")
        .contains("Cord at most 10 ft and no extension (NEC 440.64). A caution, not a design");
  }
}
