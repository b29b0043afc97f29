package org.shopclime.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Each function and its reverse, and each against the decimal table behind {@link Quantities}. */
class UnitsProperties {

  private record Pair(
      Kind kind, String unit, DoubleUnaryOperator outward, DoubleUnaryOperator inward) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair(Kind.TEMPERATURE, "F", Units::fahrenheit, Units::celsius),
          new Pair(
              Kind.TEMPERATURE_DIFFERENCE,
              "F",
              Units::fahrenheitDifference,
              Units::kelvinDifference),
          new Pair(Kind.LENGTH, "ft", Units::feet, Units::metresFromFeet),
          new Pair(Kind.LENGTH, "in", Units::inches, Units::metresFromInches),
          new Pair(Kind.LENGTH, "mi", Units::miles, Units::metresFromMiles),
          new Pair(Kind.AREA, "ft2", Units::squareFeet, Units::squareMetresFromSquareFeet),
          new Pair(Kind.AREA, "in2", Units::squareInches, Units::squareMetresFromSquareInches),
          new Pair(Kind.VOLUME, "ft3", Units::cubicFeet, Units::cubicMetresFromCubicFeet),
          new Pair(Kind.VOLUME, "gal", Units::gallons, Units::cubicMetresFromGallons),
          new Pair(Kind.MASS, "lb", Units::pounds, Units::kilogramsFromPounds),
          new Pair(Kind.PRESSURE, "psi", Units::psi, Units::pascalsFromPsi),
          new Pair(Kind.POWER, "BTU/h", Units::btuh, Units::wattsFromBtuh),
          new Pair(Kind.POWER, "ton", Units::tons, Units::wattsFromTons),
          new Pair(Kind.POWER, "hp", Units::horsepower, Units::wattsFromHorsepower),
          new Pair(Kind.U_FACTOR, "BTU/h·ft2·F", Units::uFactorIp, Units::uFactorSi),
          new Pair(Kind.R_VALUE, "h·ft2·F/BTU", Units::rValueIp, Units::rValueSi),
          new Pair(
              Kind.CONDUCTIVITY, "BTU·in/h·ft2·F", Units::conductivityIp, Units::conductivitySi),
          new Pair(Kind.AIR_FLOW, "cfm", Units::cfm, Units::cubicMetresPerSecondFromCfm),
          new Pair(Kind.SPEED, "mph", Units::milesPerHour, Units::metresPerSecondFromMilesPerHour),
          new Pair(Kind.EFFICIENCY, "BTU/Wh", Units::eer, Units::wattsPerWattFromEer));

  @Property
  void agreeWithTheTextsAndReturn(
      @ForAll @Scale(9) @DoubleRange(min = -1e6, max = 1e6) double figure) {
    for (Pair pair : PAIRS) {
      double si = ((Reading.Good) Quantities.read(pair.kind, figure + " " + pair.unit)).si();
      assertThat(pair.inward.applyAsDouble(figure))
          .as("%s to SI", pair.unit)
          .isCloseTo(si, offset(1e-13 * (Math.abs(si) + 1)));
      assertThat(pair.outward.applyAsDouble(si))
          .as("%s from SI", pair.unit)
          .isCloseTo(figure, offset(1e-13 * (Math.abs(figure) + 100)));
    }
  }

  @Property
  void energyAndMoistureReturn(
      @ForAll @Scale(9) @DoubleRange(min = -1e9, max = 1e9) double figure) {
    double slack = 1e-13 * (Math.abs(figure) + 1);
    assertThat(Units.btu(Units.joulesFromBtu(figure))).isCloseTo(figure, offset(slack));
    assertThat(Units.kilowattHours(Units.joulesFromKilowattHours(figure)))
        .isCloseTo(figure, offset(slack));
    assertThat(Units.grainsPerPound(Units.humidityRatioFromGrainsPerPound(figure)))
        .isCloseTo(figure, offset(slack));
    assertThat(Units.btuh(figure / 3600)).isCloseTo(Units.btu(figure), offset(slack));
  }
}
