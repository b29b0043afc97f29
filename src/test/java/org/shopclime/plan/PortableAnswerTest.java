package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.report.AnswerText;
import org.shopclime.run.MadeShops;
import org.shopclime.shop.CapacityLabel;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.EfficiencyLabel;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Place;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.UnitKind;

/** A portable unit told by its SACC. */
class PortableAnswerTest {

  private static final Shop EXAMPLE = Examples.shop("insulated-foam-door");

  private static CoolingUnit unit(
      CapacityLabel of, double btuh, EfficiencyLabel label, double eer) {
    CoolingUnit owned = EXAMPLE.unit().orElseThrow();
    Record unit = owned.withKind(UnitKind.PORTABLE_ONE_HOSE).withCapacity(MadeShops.btuh(btuh));
    unit = ShopParts.with(unit, "capacityLabel", of);
    unit = ShopParts.with(unit, "efficiency", Units.wattsPerWattFromEer(eer));
    return (CoolingUnit) ShopParts.with(unit, "label", label);
  }

  private static SizeAnswer answer(CoolingUnit unit) {
    return new Sizing(EXAMPLE.withUnit(Optional.of(unit)), MadeShops.CLIMATES)
        .answer(List.of(), Progress.silent());
  }

  /**
   * By hand (see {@code PlantTest}): a machine of 12,000 BTU/h with an EER of 9 has 9,010 BTU/h
   * left. So one with 6,757 left is of 9,000; it draws 1,000 W, and its CEER is 6,757 / 1,003 =
   * 6.74.
   */
  @Test
  void theMachineIsThatOfThePencil() {
    CoolingUnit byEer =
        PortableAnswer.asMachine(unit(CapacityLabel.SACC, 6757, EfficiencyLabel.EER, 9));
    assertThat(byEer.capacity()).isCloseTo(MadeShops.btuh(9000), within(MadeShops.btuh(90)));
    CoolingUnit byCeer =
        PortableAnswer.asMachine(unit(CapacityLabel.SACC, 6757, EfficiencyLabel.CEER, 6.74));
    assertThat(byCeer.capacity()).isCloseTo(MadeShops.btuh(9000), within(MadeShops.btuh(90)));
    assertThat(byCeer.ratedPower()).isCloseTo(1000, within(3.0));
    CoolingUnit rated = unit(CapacityLabel.RATED, 9000, EfficiencyLabel.EER, 9);
    assertThat(PortableAnswer.asMachine(rated)).isSameAs(rated);
  }

  /** The air drawn in is charged once: SACC and its machine typed as such are the same day. */
  @Test
  void theAnswerIsThatOfTheMachine() {
    CoolingUnit typed = unit(CapacityLabel.SACC, 9000, EfficiencyLabel.CEER, 6.7);
    SizeAnswer adjusted = answer(typed);
    SizeAnswer machine = answer(PortableAnswer.asMachine(typed));
    double peak = adjusted.unit().orElseThrow().day().peakTemperature();
    assertThat(peak).isCloseTo(machine.unit().orElseThrow().day().peakTemperature(), within(1e-9));
    assertThat(adjusted.recommended()).isEqualTo(machine.recommended());
    SizeAnswer rated = answer(unit(CapacityLabel.RATED, 9000, EfficiencyLabel.EER, 9));
    assertThat(peak).isLessThan(rated.unit().orElseThrow().day().peakTemperature() - 0.1);
    PortableAnswer told = PortableAnswer.of(adjusted).orElseThrow();
    assertThat(told.typed()).isTrue();
    assertThat(told.adjusted()).isCloseTo(MadeShops.btuh(9000), within(0.5));
    PortableAnswer reckoned = PortableAnswer.of(machine).orElseThrow();
    assertThat(reckoned.typed()).isFalse();
    assertThat(reckoned.adjusted()).isCloseTo(MadeShops.btuh(9000), within(1e-6));
    assertThat(AnswerText.facts(adjusted, UnitSystem.INCH_POUND))
        .anyMatch(fact -> fact.startsWith("The label says 9,000 BTU/h SACC, taken as a machine"));
    assertThat(PortableAnswer.of(answer(EXAMPLE.unit().orElseThrow()))).isEmpty();
  }

  /** On a mild day a size holds, and is told as cartons have it: three quarters of its machine. */
  @Test
  void theSizeThatHoldsIsToldAsCartonsHaveIt() {
    Shop mild =
        EXAMPLE
            .withPlace(
                (Place)
                    ShopParts.with(
                        EXAMPLE.place(), "typedPeak", Optional.of(MadeShops.celsius(84))))
            .withUnit(Optional.of(unit(CapacityLabel.SACC, 9000, EfficiencyLabel.CEER, 6.7)));
    SizeAnswer answer = new Sizing(mild, MadeShops.CLIMATES).answer(List.of(), Progress.silent());
    PortableAnswer told = PortableAnswer.of(answer).orElseThrow();
    assertThat(told.recommended().orElseThrow() / answer.recommended().orElseThrow())
        .isCloseTo(0.75, within(0.01));
    assertThat(AnswerText.facts(answer, UnitSystem.INCH_POUND))
        .anyMatch(fact -> fact.contains("SACC on its carton"));
  }
}
