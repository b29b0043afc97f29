package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.run.MadeShops;
import org.shopclime.shop.Pads;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** What is said of an evaporative cooler. */
class PadsAnswerTest {

  private static final Pads PADS =
      new Pads(3000 * 0.3048 * 0.3048 * 0.3048 / 60, 0.8, Optional.empty());

  private static SizeAnswer answer(String station) {
    Shop shop = MadeShops.example("insulated-foam-door", station);
    return new Sizing(
            shop.withUnit(shop.unit().map(unit -> unit.withPads(PADS))), MadeShops.CLIMATES)
        .answer(List.of(), Progress.silent());
  }

  private static List<String> said(SizeAnswer answer) {
    return answer.warnings().stream().map(Warning::text).toList();
  }

  /**
   * Mobile, 91 °F on its hot afternoon with a wet bulb near 76 °F: 91 - 0.8 x 15 = 79 °F, warmer
   * than the wished 78 °F; its dew point near 71 °F lies far above 55 °F.
   */
  @Test
  void inMobileItIsDoubtedNotRefused() {
    SizeAnswer answer = answer(MadeShops.MOBILE);
    PadsAnswer pads = PadsAnswer.of(answer.shop(), answer.core()).orElseThrow();
    assertThat(MadeShops.fahrenheit(pads.supply())).isCloseTo(79, within(1.0));
    assertThat(pads.isDoubted()).isTrue();
    assertThat(pads.humidity()).isGreaterThan(pads.humidityWithout() + 0.2);
    assertThat(said(answer))
        .anyMatch(text -> text.contains("humid for an evaporative cooler"))
        .anyMatch(text -> text.contains("no airflow reaches that"))
        .anyMatch(text -> text.contains("makes the room damp"))
        .anyMatch(text -> text.contains("leave a window or door open"));
    assertThat(answer.unit()).isPresent();
    assertThat(answer.recommended().orElseThrow()).isGreaterThan(MadeShops.btuh(9000));
    assertThat(answer.scenarios()).noneMatch(each -> each.name().contains("dusty"));
    assertThat(DustAnswer.of(answer)).isEmpty();
  }

  /** Phoenix, 108 °F with a wet bulb near 70 °F: 108 - 0.8 x 38 = 78 °F, and a dry dew point. */
  @Test
  void inPhoenixItIsNot() {
    SizeAnswer answer = answer(MadeShops.PHOENIX);
    PadsAnswer pads = PadsAnswer.of(answer.shop(), answer.core()).orElseThrow();
    assertThat(MadeShops.fahrenheit(pads.supply())).isCloseTo(78, within(1.0));
    assertThat(pads.isDoubted()).isFalse();
    assertThat(said(answer)).noneMatch(text -> text.contains("humid for an evaporative cooler"));
    assertThat(answer.core().indoorPeak())
        .isLessThan(answer.core().without().peakTemperature() - 10);
    double gallons = pads.water() / 3.785411784;
    assertThat(gallons).isBetween(50.0, 120.0);
  }

  @Test
  void ofAnyOtherUnitNothingIsSaid() {
    Shop shop = MadeShops.example("insulated-foam-door", MadeShops.MOBILE);
    assertThat(PadsAnswer.of(shop, new Sizing(shop, MadeShops.CLIMATES).core())).isEmpty();
  }
}
