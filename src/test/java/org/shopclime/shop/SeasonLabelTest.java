package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Units;

/** A heat pump by the figure of its season. */
class SeasonLabelTest {

  private static Shop with(UnitKind kind, double eer, EfficiencyLabel label) {
    Shop shop = Examples.shop("insulated-foam-door");
    Record unit = shop.unit().orElseThrow().withKind(kind);
    unit = ShopParts.with(unit, "efficiency", Units.wattsPerWattFromEer(eer));
    return shop.withUnit(Optional.of((CoolingUnit) ShopParts.with(unit, "label", label)));
  }

  private static ShopCheck.Findings check(Shop shop) {
    return ShopCheck.check(shop, Stations.any());
  }

  private static List<String> told(ShopCheck.Findings findings) {
    return findings.warnings().stream()
        .filter(each -> each.path().equals("unit.efficiency"))
        .map(Warning::text)
        .toList();
  }

  @Test
  void aHeatPumpHasOneAndAWindowUnitHasNot() {
    ShopCheck.Findings pump = check(with(UnitKind.VARIABLE_HEAT_PUMP, 22, EfficiencyLabel.SEER2));
    assertThat(pump.problems()).isEmpty();
    assertThat(told(pump)).isEmpty();
    ShopCheck.Findings window = check(with(UnitKind.WINDOW, 14, EfficiencyLabel.SEER2));
    assertThat(window.problems())
        .extracting(org.shopclime.quantity.Problem::path)
        .containsExactly("unit.label");
  }

  @Test
  void whatIsTooGoodForAnEerIsAskedAfter() {
    assertThat(told(check(with(UnitKind.HEAT_PUMP, 20, EfficiencyLabel.EER))))
        .singleElement()
        .asString()
        .contains("SEER2");
    assertThat(told(check(with(UnitKind.HEAT_PUMP, 12, EfficiencyLabel.EER)))).isEmpty();
    assertThat(told(check(with(UnitKind.VARIABLE_HEAT_PUMP, 38, EfficiencyLabel.SEER2))))
        .hasSize(1);
  }

  /** 12,000 BTU/h at 20 BTU/Wh x 0.55 are 1,091 W: more than the 600 W a SEER2 seems to say. */
  @Test
  void aCircuitCarriesMoreThanTheMeanOfASeason() {
    CoolingUnit unit = with(UnitKind.HEAT_PUMP, 20, EfficiencyLabel.SEER2).unit().orElseThrow();
    assertThat(unit.ratedPower()).isCloseTo(12_000 / 11.0, within(0.5));
    assertThat(with(UnitKind.HEAT_PUMP, 20, EfficiencyLabel.EER).unit().orElseThrow().ratedPower())
        .isCloseTo(600, within(0.5));
  }

  @Test
  void itIsWrittenAndReadBack() {
    Shop shop = with(UnitKind.VARIABLE_HEAT_PUMP, 20, EfficiencyLabel.SEER2);
    String text = ShopFile.write(shop);
    assertThat(text).contains("\"SEER2\"");
    ShopReading.Good read = (ShopReading.Good) ShopFile.read(text, Stations.any());
    assertThat(read.shop().unit()).isEqualTo(shop.unit());
  }
}
