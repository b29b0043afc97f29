package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.climate.Climates;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.report.AirlineAsk;
import org.shopclime.shop.Choice;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.CompressedAir.AirTools;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.SpanPlace;
import org.shopclime.shop.Unknowns;

/** Tools that are told make the compressor run: in the load, the day and the band. */
class ToolTimeTest {

  private static final double SEA_LEVEL = 101_325;
  private static final double BTUH = 0.29307107;
  private static final Climates CLIMATES = Climates.load();

  private static Shop with(AirTools tools) {
    Shop shop = Examples.shop("insulated-foam-door");
    return shop.withAir((CompressedAir) ShopParts.with(shop.air(), "tools", tools));
  }

  private static AirTools pot(double minutes) {
    return new AirTools(0, 60 * minutes, 0, 0, 0, 0, 0, 0);
  }

  /**
   * By pencil: 21 cfm of standard air (0.0750 lb/ft³) for 40 of 60 minutes are 1.05 lb/min; 5 hp at
   * 3.5 cfm draw 17.5 cfm of air of 78 °F and 50 %, 0.0726 lb of dry air in each, 1.270 lb/min.
   */
  @Test
  void runningTimeByPencil() {
    ToolTime time = ToolTime.of(with(pot(40)), SEA_LEVEL).orElseThrow();
    assertThat(time.asked()).isCloseTo(1.05 / 1.270, within(0.003));
    assertThat(time.duty()).isEqualTo(time.asked());
    ToolTime starved = ToolTime.of(with(pot(60)), SEA_LEVEL).orElseThrow();
    assertThat(starved.asked()).isCloseTo(1.5 * time.asked(), within(1e-9));
    assertThat(starved.duty()).isEqualTo(1);
    assertThat(ToolTime.of(Examples.shop("insulated-foam-door"), SEA_LEVEL)).isEmpty();
    Shop none = with(pot(40));
    none =
        none.withRooms(none.rooms().stream().map(r -> r.withGains(java.util.List.of())).toList());
    assertThat(ToolTime.of(none, SEA_LEVEL)).isEmpty();
  }

  /**
   * 5 hp draw 15,515 BTU/h while they run; what a quarter radiates is a little less at the peak.
   */
  @Test
  void theLoadIsThatOfTheTools() {
    CoreAnswer guessed = new Sizing(Examples.shop("insulated-foam-door"), CLIMATES).core();
    CoreAnswer told = new Sizing(with(pot(40)), CLIMATES).core();
    double more = told.load().total().peak() - guessed.load().total().peak();
    assertThat(more / BTUH).isCloseTo(15_515 * (0.827 - 0.3), within(0.12 * 15_515 * 0.527));
    assertThat(told.unit().orElseThrow().peakTemperature())
        .isGreaterThan(guessed.unit().orElseThrow().peakTemperature() + 4);
  }

  /**
   * The comparison of places, where the machine stands in the room, tells the same room: within 1
   * K, as it knows also that the air drawn in is as warm as the room gets (3 % longer at 36 °C) and
   * that vapour condenses at the machine. Before, they were 7 K apart.
   */
  @Test
  void placesAndSizeTellTheSameRoom() {
    for (AirTools tools : new AirTools[] {pot(40), new AirTools(0, 0, 0, 0, 0, 0, 0, 300)}) {
      Shop shop = with(tools);
      double size = new Sizing(shop, CLIMATES).core().unit().orElseThrow().peakTemperature();
      PlaceAnswer here =
          AirlineAsk.answer(shop, CLIMATES).orElseThrow().places().stream()
              .filter(each -> each.placement().kind() == Placement.Kind.IN_ROOM)
              .findFirst()
              .orElseThrow();
      assertThat(here.indoorPeak()).isCloseTo(size, within(1.0));
    }
  }

  @Test
  void whatToolsDecideIsNotUnknown() {
    Function<Shop, Optional<SpanPlace>> duty =
        shop ->
            Unknowns.of(shop).stream().filter(each -> each.path().endsWith(".duty")).findFirst();
    assertThat(duty.apply(Examples.shop("insulated-foam-door"))).isPresent();
    assertThat(duty.apply(with(pot(40)))).isEmpty();
    SizeAnswer answer =
        new Sizing(with(pot(40)), CLIMATES).answer(java.util.List.of(), Progress.silent());
    assertThat(answer.band().decidedBy().orElse("")).doesNotContain("running");
  }

  /** A fourth more or less air, a fourth more or less running time, and a band that says so. */
  @Test
  void whatToolsDrawMakesABand() {
    Shop known = Unknowns.choose(with(pot(30)), Choice.LIKELY);
    Shop tools = known.withAir(with(pot(30)).air());
    double likely = ToolTime.of(tools, SEA_LEVEL).orElseThrow().duty();
    Shop more = Unknowns.choose(tools, Choice.UNKIND);
    assertThat(ToolTime.of(more, SEA_LEVEL).orElseThrow().duty())
        .isCloseTo(1.25 * likely, within(1e-9));
    SizeAnswer answer = new Sizing(tools, CLIMATES).answer(java.util.List.of(), Progress.silent());
    double peak = answer.core().unit().orElseThrow().peakTemperature();
    assertThat(answer.band().low()).isLessThan(peak - 0.5);
    assertThat(answer.band().high()).isGreaterThan(peak + 0.5);
    assertThat(answer.band().decidedBy()).contains("Air the tools draw, of the usual");
  }
}
