package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;

/** An evaporative cooler and a heat pump in the shop file. */
class PadsFileTest {

  private static final String CFM_3000 = "{\"airflow\": \"3000 cfm\"}";

  private static ShopReading read(String unit) {
    Shop shop = Examples.shop("insulated");
    String text = ShopFile.write(shop.withUnit(java.util.Optional.empty())).stripTrailing();
    String with = text.substring(0, text.length() - 1) + ", \"unit\": " + unit + "}";
    return ShopFile.read(with, Stations.any());
  }

  private static List<String> problems(String unit) {
    return read(unit) instanceof ShopReading.Bad bad
        ? bad.problems().stream().map(Problem::sentence).toList()
        : List.of();
  }

  private static List<String> warnings(String unit) {
    ShopReading.Good good = (ShopReading.Good) read(unit);
    return good.warnings().stream().map(Warning::path).toList();
  }

  @Test
  void itIsReadWrittenAndReadAgain() {
    ShopReading.Good good =
        (ShopReading.Good)
            read(
                "{\"kind\": \"evaporative\", \"pads\": {\"airflow\": \"3000 cfm\","
                    + " \"effectiveness\": \"70 %\"}}");
    CoolingUnit unit = good.shop().unit().orElseThrow();
    assertThat(unit.isEvaporative()).isTrue();
    assertThat(unit.capacity()).isZero();
    Pads pads = unit.pads().orElseThrow();
    assertThat(pads.effectiveness()).isCloseTo(0.7, within(1e-12));
    assertThat(pads.watts()).isCloseTo(300 * 3000 * 0.3048 * 0.3048 * 0.3048 / 60, within(1e-9));
    assertThat(unit.ratedPower()).isEqualTo(pads.watts());
    String written = ShopFile.write(good.shop());
    assertThat(((ShopReading.Good) ShopFile.read(written, Stations.any())).shop())
        .isEqualTo(good.shop());
  }

  @Test
  void eachKindAsksForItsOwnFigure() {
    assertThat(problems("{\"kind\": \"evaporative\"}"))
        .singleElement()
        .asString()
        .startsWith("unit.pads: found nothing; takes what the cooler blows");
    assertThat(problems("{\"kind\": \"window\"}"))
        .singleElement()
        .asString()
        .startsWith("unit.capacity: found nothing; takes 1,024 BTU/h or more");
    assertThat(problems("{\"capacity\": \"100 BTU/h\"}"))
        .singleElement()
        .asString()
        .contains("100 BTU/h");
    assertThat(problems("{\"kind\": \"evaporative\", \"pads\": {\"airflow\": \"-1 cfm\"}}"))
        .isNotEmpty();
  }

  @Test
  void aHeatPumpSaysHowItHeats() {
    String figures =
        "{\"kind\": \"heat pump\", \"capacity\": \"12000 BTU/h\", \"heating\": {\"hspf2\":"
            + " \"8.5 BTU/Wh\", \"capacity\": \"13000 BTU/h\"}}";
    ShopReading.Good good = (ShopReading.Good) read(figures);
    CoolingUnit unit = good.shop().unit().orElseThrow();
    PumpHeat heat = unit.winterHeat().orElseThrow();
    assertThat(heat.hspf2().orElseThrow()).isCloseTo(8.5 * 0.293071, within(1e-5));
    assertThat(heat.capacity().orElseThrow()).isCloseTo(13000 * 0.293071, within(1e-2));
    assertThat(heat.lowestOutdoor()).isCloseTo(-15, within(1e-9));
    assertThat(heat.winter()).isEqualTo(PumpWinter.HEATS);
    String written = ShopFile.write(good.shop());
    assertThat(((ShopReading.Good) ShopFile.read(written, Stations.any())).shop())
        .isEqualTo(good.shop());
    assertThat(warnings(figures)).doesNotContain("unit.heating");
    assertThat(warnings(figures.replace("heat pump", "window"))).contains("unit.heating");
    assertThat(problems(figures.replace("8.5 BTU/Wh", "40 BTU/Wh")))
        .singleElement()
        .asString()
        .startsWith("unit.heating.hspf2");
  }

  @Test
  void onlyAHeatPumpHeatsUnlessItIsSaidNotTo() {
    CoolingUnit window = Examples.shop("insulated").unit().orElseThrow();
    assertThat(window.winterHeat()).isEmpty();
    CoolingUnit pump = window.withKind(UnitKind.VARIABLE_HEAT_PUMP);
    assertThat(pump.winterHeat()).isPresent();
    PumpHeat only =
        new PumpHeat(
            PumpWinter.COOLS_ONLY, java.util.Optional.empty(), java.util.Optional.empty(), 0);
    assertThat(pump.withHeating(java.util.Optional.of(only)).winterHeat()).isEmpty();
  }

  @Test
  void aFanThatRunsOnIsReadWrittenAndReadAgain() {
    ShopReading.Good good =
        (ShopReading.Good) read("{\"capacity\": \"12000 BTU/h\", \"fan\": {\"power\": \"90 W\"}}");
    CoolingUnit unit = good.shop().unit().orElseThrow();
    assertThat(unit.fanBetweenRuns(unit.capacity()).orElseThrow()).isCloseTo(90, within(1e-9));
    // one of half the size draws half
    assertThat(unit.fanBetweenRuns(unit.capacity() / 2).orElseThrow()).isCloseTo(45, within(1e-9));
    String written = ShopFile.write(good.shop());
    assertThat(((ShopReading.Good) ShopFile.read(written, Stations.any())).shop())
        .isEqualTo(good.shop());
    // 20 W for each kW: 3.52 kW make 70 W
    CoolingUnit usual =
        ((ShopReading.Good) read("{\"capacity\": \"12000 BTU/h\", \"fan\": {}}"))
            .shop()
            .unit()
            .orElseThrow();
    assertThat(usual.fanBetweenRuns(usual.capacity()).orElseThrow()).isCloseTo(70.3, within(0.1));
    assertThat(unit.withFan(java.util.Optional.empty()).fanBetweenRuns(1000)).isEmpty();
  }

  /** 12,000 BTU/h at 10.9 BTU/Wh draw 1,101 W, half of that is the most a fan can. */
  @Test
  void aFanDrawsNoMoreThanHalfOfTheUnit() {
    assertThat(problems("{\"capacity\": \"12000 BTU/h\", \"fan\": {\"power\": \"600 W\"}}"))
        .containsExactly(
            "unit.fan.power: found 600 W; takes no more than half of what the unit draws, 550 W");
    assertThat(warnings("{\"kind\": \"evaporative\", \"pads\": " + CFM_3000 + ", \"fan\": {}}"))
        .contains("unit.fan");
  }

  @Test
  void whatHasNoEffectIsSaid() {
    assertThat(warnings("{\"capacity\": \"12000 BTU/h\", \"pads\": " + CFM_3000 + "}"))
        .contains("unit.pads");
    assertThat(
            warnings(
                "{\"kind\": \"evaporative\", \"capacity\": \"12000 BTU/h\", \"pads\": "
                    + CFM_3000
                    + "}"))
        .contains("unit.capacity");
    assertThat(warnings("{\"kind\": \"evaporative\", \"pads\": " + CFM_3000 + "}"))
        .doesNotContain("unit.capacity", "unit.pads");
  }
}
