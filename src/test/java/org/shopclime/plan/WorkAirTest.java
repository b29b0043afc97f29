package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.FlueKind;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Room;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;
import org.shopclime.shop.Warning;

class WorkAirTest {

  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;
  private static SizeAnswer answer;

  private static Fan fan(String name, double cfm, FanUse use) {
    return new Fan(name, FanWay.OUT, cfm * CFM, ScheduleText.work(), use, 3600, 0);
  }

  private static Shop shop() {
    Shop shop = Examples.shop(Examples.USUAL);
    Schedule afternoon = ScheduleText.read("Mon-Sat 13:00-16:00").orElseThrow();
    Gain oven =
        new Gain.Oven("Oven", 0.9, 0.9, 1.2, Span.known(1.4), 204, 6000, 20, 0, afternoon)
            .withBatches(
                Optional.of(new OvenBatches(Optional.of(3.0), 22, 0.003, 1200, 60, 0.005, 1)));
    List<Gain> gains = new ArrayList<>(shop.rooms().get(0).gains());
    gains.add(oven);
    Room room =
        shop.rooms()
            .get(0)
            .withGains(gains)
            .withLeakage(new Leakage.Area(Span.known(0.02)))
            .withFans(
                List.of(
                    fan("Dust", 800, FanUse.DUST_COLLECTOR),
                    fan("Blasting", 100, FanUse.BLAST_CABINET),
                    fan("Welding fume dust", 100, FanUse.DUST_COLLECTOR),
                    fan("Booth", 300, FanUse.SPRAY),
                    fan("Hood", 200, FanUse.OVEN_HOOD),
                    fan("Closet", 50, FanUse.CLOSET_FAN),
                    fan("Wall fan", 50, FanUse.OTHER)));
    List<Room> rooms = new ArrayList<>(shop.rooms());
    rooms.set(0, room);
    return shop.withRooms(rooms).withFlue(FlueKind.CHIMNEY);
  }

  @BeforeAll
  static void ask() {
    answer = new Sizing(shop(), Climates.load()).answer(List.of(), Progress.silent());
  }

  /**
   * Only dust may return; no way moves less air, none is offered for spray, closet, unknown fans.
   */
  @Test
  void offersNothingThatCouldHurt() {
    AirAnswer air = answer.air().orElseThrow();
    assertThat(air.options())
        .extracting(option -> option.fan() + " " + option.way())
        .containsExactlyInAnyOrder(
            "Dust FILTERED_RETURN",
            "Dust LED_TO_HOOD",
            "Blasting FILTERED_RETURN",
            "Blasting LED_TO_HOOD",
            "Welding fume dust LED_TO_HOOD",
            "Hood LED_TO_HOOD");
    double most = 0;
    for (AirAnswer.Option option : air.options()) {
      assertThat(option.saved()).isBetween(0.0, air.book().total());
      assertThat(option.suction()).isLessThan(air.book().suction().pascals());
      most = Math.max(most, option.saved());
    }
    assertThat(most).isGreaterThan(0.2 * air.book().total());
  }

  @Test
  void warnsOfSuctionAtItsFan() {
    assertThat(answer.warnings())
        .filteredOn(warning -> warning.path().equals("rooms[0].fans[0].flow"))
        .extracting(Warning::text)
        .anySatisfy(text -> assertThat(text).contains("Pa below outdoors", "carbon monoxide"))
        .anySatisfy(text -> assertThat(text).contains("lbf) to open", "NFPA 101"))
        .anySatisfy(text -> assertThat(text).contains("more heat and moisture than the unit"));
  }

  /**
   * The oven's books close; cured after work the peak falls; a hood without make-up air is dear.
   */
  @Test
  void ovenAndItsVariants() {
    OvenAnswer oven = answer.oven().orElseThrow();
    OvenAnswer.Oven told = oven.ovens().get(0);
    assertThat(told.book().orElseThrow().missing()).isBetween(-1.0, 1.0);
    assertThat(told.heat().mean() * 86_400)
        .isBetween(
            told.book().orElseThrow().room() * (1 - 1e-9),
            told.book().orElseThrow().room() * (1 + 1e-9));
    assertThat(oven.variants())
        .extracting(Change::name)
        .containsExactly(OvenAnswer.AFTER_WORK, OvenAnswer.HOOD, OvenAnswer.HOOD_LED);
    assertThat(load(oven.variants().get(0))).isLessThan(answer.core().load().total().peak());
    assertThat(load(oven.variants().get(2))).isLessThan(load(oven.variants().get(1)));
  }

  private static double load(Change change) {
    return change.peakSensible() + change.peakLatent();
  }

  @Test
  void shopWithoutOvenHasNoOvenAnswer() {
    SizeAnswer plain =
        new Sizing(Examples.shop("insulated"), Climates.load())
            .answer(List.of(), Progress.silent());
    assertThat(plain.oven()).isEmpty();
    assertThat(plain.air().orElseThrow().options()).isEmpty();
    assertThat(plain.air().orElseThrow().warnings()).isEmpty();
  }
}
