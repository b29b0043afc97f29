package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.FanAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.MadeShops;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;
import org.shopclime.shop.UnitFan;

/** A fan that runs on while the compressor rests, as it is told. */
class FanTextTest {

  private static SizeAnswer answer(double btuh, boolean runsOn) {
    Shop shop = Examples.shop("insulated-foam-door");
    Optional<UnitFan> fan = runsOn ? Optional.of(new UnitFan(Optional.empty())) : Optional.empty();
    return new Sizing(
            shop.withUnit(
                shop.unit()
                    .map(unit -> unit.withCapacity(btuh * Units.WATTS_PER_BTUH).withFan(fan))),
            MadeShops.CLIMATES)
        .answer(List.of(), Progress.silent());
  }

  private static JsonNode json(SizeAnswer answer) {
    try {
      return new ObjectMapper().readTree(SizeJson.of(answer));
    } catch (JsonProcessingException damaged) {
      throw new AssertionError(damaged);
    }
  }

  /**
   * A unit of twice the size needed runs half the time; by the published model at half time all
   * that condensed goes back, so the room gets much damper than with a fan that stops (common
   * practice: set it to stop).
   */
  @Test
  void aBigUnitWhoseFanRunsOnLeavesTheRoomDamp() {
    SizeAnswer answer = answer(24000, true);
    SizeAnswer stopping = answer(24000, false);
    FanAnswer fan = answer.unit().orElseThrow().fan().orElseThrow();
    assertThat(fan.runsOn().humidity()).isGreaterThan(fan.stopping().humidity() + 0.05);
    assertThat(fan.runsOn().energy()).isLessThan(fan.stopping().energy());
    assertThat(fan.runsOn().holds() && fan.stopping().holds()).isTrue();
    double alone = stopping.core().indoorPeak();
    assertThat(fan.stopping().indoorPeak()).isEqualTo(alone);
    assertThat(stopping.unit().orElseThrow().fan()).isEmpty();
    assertThat(String.join(" ", AnswerText.facts(stopping, UnitSystem.INCH_POUND)))
        .doesNotContain("fan runs on while");
  }

  /** One that is not enough never rests while it is hot, so that its fan matters little. */
  @Test
  void oneThatIsNotEnoughHardlyDiffers() {
    FanAnswer fan = answer(12000, true).unit().orElseThrow().fan().orElseThrow();
    assertThat(fan.runsOn().indoorPeak() - fan.stopping().indoorPeak()).isBetween(0.0, 0.3);
    assertThat(fan.runsOn().holds()).isFalse();
  }

  @Test
  void itIsToldInTextAndJson() {
    SizeAnswer answer = answer(24000, true);
    FanAnswer fan = answer.unit().orElseThrow().fan().orElseThrow();
    String text = FanText.fact(fan, UnitSystem.INCH_POUND);
    assertThat(text)
        .contains("has " + Math.round(100 * fan.runsOn().humidity()) + " % humidity")
        .contains("would be " + Math.round(100 * fan.stopping().humidity()) + " %")
        .contains("drying the air takes power");
    assertThat(String.join(" ", AnswerText.facts(answer, UnitSystem.INCH_POUND)))
        .contains("Its fan runs on while the compressor rests");
    JsonNode told = json(answer).get("unit").get("fan");
    assertThat(told.get("runsOn").get("humidityPeakShare").asDouble())
        .isGreaterThan(told.get("stopping").get("humidityPeakShare").asDouble());
    assertThat(told.get("stopping").get("holds").asBoolean()).isTrue();
    assertThat(json(answer(24000, false)).get("unit").get("fan").isNull()).isTrue();
  }
}
