package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Units;

/** A portable unit by the smaller of the two capacities on its carton. */
class AdjustedLabelTest {

  private static Shop with(UnitKind kind, String label, double eer) {
    Shop shop = Examples.shop("insulated-foam-door");
    Record unit = shop.unit().orElseThrow().withKind(kind).withCapacity(wattsOf(6000));
    unit = ShopParts.with(unit, "capacityLabel", CapacityLabel.SACC);
    unit = ShopParts.with(unit, "efficiency", Units.wattsPerWattFromEer(eer));
    unit = ShopParts.with(unit, "label", EfficiencyLabel.valueOf(label));
    return shop.withUnit(Optional.of((CoolingUnit) unit));
  }

  private static double wattsOf(double btuh) {
    return btuh / Units.btuh(1);
  }

  private static List<String> problems(Shop shop) {
    return ShopCheck.check(shop, Stations.any()).problems().stream().map(Problem::path).toList();
  }

  private static List<String> told(Shop shop) {
    return ShopCheck.check(shop, Stations.any()).warnings().stream()
        .filter(each -> each.path().equals("unit.efficiency"))
        .map(Warning::text)
        .toList();
  }

  @Test
  void aFileKeepsIt() {
    Shop shop = with(UnitKind.PORTABLE_ONE_HOSE, "CEER", 6.5);
    String file = ShopFile.write(shop);
    assertThat(file).contains("\"capacityLabel\": \"SACC\"");
    assertThat(ShopFile.read(file, Stations.any()))
        .isInstanceOfSatisfying(
            ShopReading.Good.class,
            good -> assertThat(ShopFile.write(good.shop())).isEqualTo(file));
    assertThat(ShopFile.write(Examples.shop("insulated-foam-door"))).doesNotContain("SACC");
  }

  @Test
  void onlyPortableUnitsHaveOne() {
    assertThat(problems(with(UnitKind.PORTABLE_ONE_HOSE, "CEER", 6.5))).isEmpty();
    assertThat(problems(with(UnitKind.PORTABLE_TWO_HOSES, "EER", 9))).isEmpty();
    assertThat(problems(with(UnitKind.WINDOW, "CEER", 11))).containsExactly("unit.capacityLabel");
    assertThat(problems(with(UnitKind.HEAT_PUMP, "EER", 11))).containsExactly("unit.capacityLabel");
    assertThat(problems(with(UnitKind.EVAPORATIVE, "EER", 11))).contains("unit.capacityLabel");
  }

  /** 4 to 9 BTU/Wh are usual; more is an EER, and a CEER so low with a rated capacity is a mix. */
  @Test
  void aCeerGoesWithItAndAnEerWithTheOther() {
    assertThat(told(with(UnitKind.PORTABLE_ONE_HOSE, "CEER", 5))).isEmpty();
    assertThat(told(with(UnitKind.PORTABLE_ONE_HOSE, "CEER", 10)))
        .singleElement()
        .asString()
        .contains("EER");
    CoolingUnit mixed =
        (CoolingUnit)
            ShopParts.with(
                with(UnitKind.PORTABLE_ONE_HOSE, "CEER", 6.5).unit().orElseThrow(),
                "capacityLabel",
                CapacityLabel.RATED);
    Shop shop = Examples.shop("insulated-foam-door").withUnit(Optional.of(mixed));
    assertThat(told(shop)).singleElement().asString().contains("SACC");
  }

  /**
   * 6,000 BTU/h at a CEER of 6 BTU/Wh are 1,000 W; beside an EER of 9 1.7 x 6,000 / 9 = 1,133 W.
   */
  @Test
  void aCircuitCarriesWhatTheMachineDraws() {
    CoolingUnit ceer = with(UnitKind.PORTABLE_ONE_HOSE, "CEER", 6).unit().orElseThrow();
    assertThat(ceer.ratedPower()).isCloseTo(1000, within(0.5));
    CoolingUnit eer = with(UnitKind.PORTABLE_ONE_HOSE, "EER", 9).unit().orElseThrow();
    assertThat(eer.ratedPower()).isCloseTo(1133, within(0.5));
  }
}
