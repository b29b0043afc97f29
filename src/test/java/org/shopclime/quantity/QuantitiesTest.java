package org.shopclime.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be written, what is refused, and how figures are shown. */
class QuantitiesTest {

  /** Spellings are common practice; sizes by the seven figures of NIST SP 811. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH | 24 ft | 7.3152",
        "PERMEANCE | 1 perm | 5.721349e-11",
        "PERMEANCE | 0.06 perms | 3.432810e-12",
        "PERMEANCE | 57.2 ng/(s·m²·Pa) | 5.72e-11",
        "PERMEANCE | 57.2 ng/(s*m2*Pa) | 5.72e-11",
        "PERMEANCE | 2e-10 kg/(s m² Pa) | 2e-10",
        "LENGTH | 24' | 7.3152",
        "LENGTH | 24′ | 7.3152",
        "LENGTH | 24 FEET | 7.3152",
        "LENGTH | 24ft | 7.3152",
        "LENGTH | 24-ft | 7.3152",
        "LENGTH | 7' 6\" | 2.286",
        "LENGTH | 7'6\" | 2.286",
        "LENGTH | 7'-6\" | 2.286",
        "LENGTH | 7’ 6” | 2.286",
        "LENGTH | 7' 6'' | 2.286",
        "LENGTH | 7 ft 6 in | 2.286",
        "LENGTH | 7 ft. 6 in. | 2.286",
        "LENGTH | 7ft6in | 2.286",
        "LENGTH | 7 ft, 6 in | 2.286",
        "LENGTH | 7 feet and 6 inches | 2.286",
        "LENGTH | 7' 6 1/2\" | 2.2987",
        "LENGTH | 7 ft 6-1/2 in | 2.2987",
        "LENGTH | -7 ft 6 in | -2.286",
        "LENGTH | 1 1/2 in | 0.0381",
        "LENGTH | 1-1/2 in | 0.0381",
        "LENGTH | 1½ in | 0.0381",
        "LENGTH | ½\" | 0.0127",
        "LENGTH | 5/8 in | 0.015875",
        "LENGTH | .5 in | 0.0127",
        "LENGTH | 7.3 m | 7.3",
        "LENGTH | 2 m 50 cm | 2.5",
        "LENGTH | 38 mm | 0.038",
        "LENGTH | 1e-3 m | 0.001",
        "LENGTH | 1,250 ft | 381",
        "AREA | 48 ft2 | 4.45934592",
        "AREA | 48 ft² | 4.45934592",
        "AREA | 48 ft^2 | 4.45934592",
        "AREA | 48 sq ft | 4.45934592",
        "AREA | 48 sq. ft. | 4.45934592",
        "AREA | 48 square feet | 4.45934592",
        "AREA | 4.5 m² | 4.5",
        "VOLUME | 60 gal | 0.227124707",
        "VOLUME | 8 cu ft | 0.226534774",
        "VOLUME | 227 L | 0.227",
        "ANGLE | 180 | 180",
        "ANGLE | 180° | 180",
        "ANGLE | 180 deg | 180",
        "ANGLE | 22.5 degrees | 22.5",
        "ANGLE | N | 0",
        "ANGLE | nne | 22.5",
        "ANGLE | NE | 45",
        "ANGLE | ENE | 67.5",
        "ANGLE | E | 90",
        "ANGLE | ESE | 112.5",
        "ANGLE | south-east | 135",
        "ANGLE | SSE | 157.5",
        "ANGLE | South | 180",
        "ANGLE | ssw | 202.5",
        "ANGLE | SW | 225",
        "ANGLE | WSW | 247.5",
        "ANGLE | west | 270",
        "ANGLE | WNW | 292.5",
        "ANGLE | north west | 315",
        "ANGLE | NNW | 337.5",
        "ANGLE | 12/12 | 45",
        "ANGLE | 4:12 | 18.434948823",
        "ANGLE | 4 in 12 | 18.434948823",
        "TEMPERATURE | 101 °F | 38.333333333",
        "TEMPERATURE | 101F | 38.333333333",
        "TEMPERATURE | 101 deg F | 38.333333333",
        "TEMPERATURE | 101 degrees Fahrenheit | 38.333333333",
        "TEMPERATURE | 101 ℉ | 38.333333333",
        "TEMPERATURE | 38.3 C | 38.3",
        "TEMPERATURE | 38.3 ° C | 38.3",
        "TEMPERATURE | −5 °C | -5",
        "TEMPERATURE | 300 K | 26.85",
        "TEMPERATURE_DIFFERENCE | 20 °F | 11.111111111",
        "TEMPERATURE_DIFFERENCE | 11 K | 11",
        "TEMPERATURE_DIFFERENCE | 11 °C | 11",
        "FRACTION | 90 % | 0.9",
        "FRACTION | 90% | 0.9",
        "FRACTION | 90 percent | 0.9",
        "FRACTION | 0.9 | 0.9",
        "FRACTION | 1/4 | 0.25",
        "R_VALUE | R-15 | 2.641653",
        "R_VALUE | R15 | 2.641653",
        "R_VALUE | r 15 | 2.641653",
        "R_VALUE | 15 h·ft2·F/BTU | 2.641653",
        "R_VALUE | 15 ft²·°F·h/BTU | 2.641653",
        "R_VALUE | RSI 2.6 | 2.6",
        "R_VALUE | RSI-2.6 | 2.6",
        "R_VALUE | 2.6 m2K/W | 2.6",
        "R_VALUE | 2.6 m²·K/W | 2.6",
        "U_FACTOR | 0.35 BTU/h·ft2·F | 1.987392",
        "U_FACTOR | 0.35 BTU/h-ft2-F | 1.987392",
        "U_FACTOR | 0.35 BTU/(h·ft²·°F) | 1.987392",
        "U_FACTOR | 0.35 Btu/hr ft2 degF | 1.987392",
        "U_FACTOR | 0.35 BTUH/ft2-F | 1.987392",
        "U_FACTOR | 0.35 BTU/h/ft2/F | 1.987392",
        "U_FACTOR | 2 W/m2K | 2",
        "U_FACTOR | 2 W/m²·K | 2",
        "U_FACTOR | 2 W/(m² K) | 2",
        "CONDUCTIVITY | 0.8 BTU·in/h·ft2·F | 0.1153823",
        "CONDUCTIVITY | 0.8 BTU-in/hr-ft2-F | 0.1153823",
        "CONDUCTIVITY | 0.1 BTU/h·ft·F | 0.1730735",
        "CONDUCTIVITY | 0.115 W/mK | 0.115",
        "CONDUCTIVITY | 0.115 W/m·K | 0.115",
        "DENSITY | 32 lb/ft3 | 512.5907",
        "DENSITY | 510 kg/m3 | 510",
        "SPECIFIC_HEAT | 0.29 BTU/lb·F | 1214.172",
        "SPECIFIC_HEAT | 0.29 BTU/(lb °F) | 1214.172",
        "SPECIFIC_HEAT | 1210 J/kgK | 1210",
        "SPECIFIC_HEAT | 1.21 kJ/(kg·K) | 1210",
        "MASS | 500 lb | 226.796185",
        "MASS | 2 lbs 8 oz | 1.133980925",
        "MASS | 230 kg | 230",
        "POWER | 12000 BTU/h | 3516.852842",
        "POWER | 12,000 BTU/h | 3516.852842",
        "POWER | 12,000 BTU/hr | 3516.852842",
        "POWER | 12000 btuh | 3516.852842",
        "POWER | 12,000 BTU | 3516.852842",
        "POWER | 1 ton | 3516.852842",
        "POWER | 5 hp | 3728.499358",
        "POWER | 1.5 kW | 1500",
        "POWER | 1500 watts | 1500",
        "AIR_FLOW | 400 cfm | 0.18877896",
        "AIR_FLOW | 400 CFM | 0.18877896",
        "AIR_FLOW | 400 ft3/min | 0.18877896",
        "AIR_FLOW | 0.19 m3/s | 0.19",
        "AIR_FLOW | 36 m³/h | 0.01",
        "AIR_FLOW | 190 L/s | 0.19",
        "AIR_CHANGES | 3 /h | 3",
        "AIR_CHANGES | 3/h | 3",
        "AIR_CHANGES | 3 1/h | 3",
        "AIR_CHANGES | 3 ach | 3",
        "AIR_CHANGES | 0.5 per hour | 0.5",
        "LEAKAGE_AREA | 10 in2 | 0.0064516",
        "LEAKAGE_AREA | 10 sq in | 0.0064516",
        "LEAKAGE_AREA | 65 cm2 | 0.0065",
        "SPEED | 7.5 mph | 3.3528",
        "SPEED | 3.4 m/s | 3.4",
        "SPEED | 36 km/h | 10",
        "PRESSURE | 125 psi | 861844.66",
        "PRESSURE | 29.92 inHg | 101320.76",
        "PRESSURE | 8.6 bar | 860000",
        "PRESSURE | 101.325 kPa | 101325",
        "DURATION | 60 min | 3600",
        "DURATION | 1 h | 3600",
        "DURATION | 1 h 30 min | 5400",
        "DURATION | 1.5 hours | 5400",
        "DURATION | 1 hr 30 s | 3630",
        "EFFICIENCY | 10.9 BTU/Wh | 3.19447468",
        "EFFICIENCY | 10.9 BTU/W·h | 3.19447468",
        "EFFICIENCY | 3.2 W/W | 3.2",
        "VOLTAGE | 115 V | 115",
        "VOLTAGE | 230 volts | 230",
        "CURRENT | 15 A | 15",
        "CURRENT | 11.2 amps | 11.2",
        "MONEY | $450 | 450",
        "MONEY | $ 1,200.50 | 1200.5",
        "MONEY | 12.50 $ | 12.5",
        "MONEY | 450 dollars | 450",
        "MONEY | -5 $ | -5",
        "ENERGY | 1,000 kWh | 1000",
        "ENERGY | 1.2 MWh | 1200",
        "ENERGY_PRICE | 0.15 $/kWh | 0.15",
        "ENERGY_PRICE | $0.15/kWh | 0.15",
        "ENERGY_PRICE | 14 c/kWh | 0.14",
        "ENERGY_PRICE | 14.02 ¢/kWh | 0.1402",
        "ENERGY_PRICE | 29.61 cents/kWh | 0.2961",
        "HEAT_PRICE | 2.930710701722222 $/therm | 0.1",
        "HEAT_PRICE | $0.1/kWh | 0.1",
        "LIQUID_PRICE | 3.785411784 $/gal | 1000",
        "LIQUID_PRICE | $1/L | 1000",
        "DEMAND_PRICE | 8 $/kW | 8",
        "DEMAND_PRICE | 8 dollars/kW | 8",
        "COUNT | 2 | 2",
        "COUNT | 1,200 | 1200",
      })
  void readsTheUsualSpellings(Kind kind, String text, double si) {
    Reading reading = Quantities.read(kind, text);
    assertThat(reading).isInstanceOf(Reading.Good.class);
    assertThat(((Reading.Good) reading).si())
        .isCloseTo(si, offset(Math.max(kind == Kind.PERMEANCE ? 0 : 1e-9, 3e-7 * Math.abs(si))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH | 8",
        "LENGTH | ft",
        "LENGTH | 8 ft2",
        "LENGTH | 8 ft 2",
        "LENGTH | 8 lb",
        "LENGTH | NaN ft",
        "LENGTH | Infinity m",
        "LENGTH | 1e400 m",
        "LENGTH | 1e999 m",
        "LENGTH | 1e9999 m",
        "LENGTH | 12,5 m",
        "LENGTH | 1,25,000 m",
        "LENGTH | 1.2.3 m",
        "LENGTH | 1/0 in",
        "LENGTH | 6 in 7 ft",
        "LENGTH | 7 ft 6 ft",
        "LENGTH | 7 ft - in",
        "LENGTH | 7 ft 1/0 in",
        "LENGTH | 7 ft 6 lb",
        "LENGTH | --8 ft",
        "LENGTH | 8 ft approx",
        "LENGTH | , 8 ft 6 in",
        "AREA | 2 m 2",
        "AREA | 2 m-2",
        "AREA | 8 ft",
        "AIR_FLOW | 400 m3",
        "AIR_CHANGES | 3",
        "AIR_CHANGES | 3 ach50",
        "TEMPERATURE | 78",
        "TEMPERATURE | 78°",
        "TEMPERATURE | 78 K F",
        "TEMPERATURE_DIFFERENCE | 20",
        "FRACTION | 90 F",
        "R_VALUE | 15",
        "R_VALUE | R",
        "R_VALUE | R--15",
        "R_VALUE | R-15 m2",
        "R_VALUE | 15 W/m2K",
        "U_FACTOR | 0.35",
        "U_FACTOR | U-0.35",
        "U_FACTOR | 0.35 BTU/h·ft2",
        "POWER | 12000",
        "POWER | 12 kWh",
        "ANGLE | NNNE",
        "ANGLE | 1/2",
        "ANGLE | 90 m",
        "MASS | 1 ton",
        "DURATION | 90",
        "VOLTAGE | 115",
        "CURRENT | 15",
        "MONEY | 450",
        "MONEY | 450 c",
        "MONEY | $",
        "ENERGY | 900",
        "ENERGY | 900 kW",
        "ENERGY_PRICE | 0.15",
        "ENERGY_PRICE | $0.15",
        "ENERGY_PRICE | 15 c",
        "HEAT_PRICE | 1.20 $/gal",
        "LIQUID_PRICE | $2.90/therm",
        "DEMAND_PRICE | 8 $/kWh",
        "LENGTH | $8 ft",
        "COUNT | two",
        "COUNT | 2 ft",
        "COUNT | 0x10",
        "COUNT | 1d",
      })
  void refusesWhatItWouldHaveToGuess(Kind kind, String text) {
    assertThat(Quantities.read(kind, text)).isInstanceOf(Reading.Bad.class);
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void nothingIsNoQuantityAndTheExampleIs(Kind kind) {
    for (String nothing : new String[] {"", "  ", "\n"}) {
      Reading.Bad bad = (Reading.Bad) Quantities.read(kind, nothing);
      assertThat(bad.found()).isEqualTo("nothing");
      String[] examples = bad.takes().split("\"", -1);
      assertThat(examples.length).isGreaterThanOrEqualTo(3);
      for (int i = 1; i < examples.length; i += 2) {
        assertThat(Quantities.read(kind, examples[i]))
            .as(examples[i])
            .isInstanceOf(Reading.Good.class);
      }
    }
  }

  @Test
  void complaintsSayWhatWasFoundAndWhatIsTaken() {
    Reading.Bad bad = (Reading.Bad) Quantities.read(Kind.LENGTH, " 8 ");
    assertThat(bad.sentence())
        .isEqualTo("found \"8\"; takes a length with its unit, such as \"8 ft\" or \"2.4 m\"");
    assertThat(bad.at("rooms[0].walls[2].height").sentence())
        .isEqualTo(
            "rooms[0].walls[2].height: found \"8\"; takes a length with its unit,"
                + " such as \"8 ft\" or \"2.4 m\"");
  }

  @Test
  void complaintsStayOnOneShortLine() {
    Reading.Bad bad = (Reading.Bad) Quantities.read(Kind.MASS, "1\n2" + "x".repeat(500));
    assertThat(bad.found()).isEqualTo("\"1 2" + "x".repeat(37) + "…\"");
    assertThat(Quantities.read(Kind.COUNT, "1".repeat(100))).isInstanceOf(Reading.Good.class);
    assertThat(Quantities.read(Kind.COUNT, "1".repeat(101))).isInstanceOf(Reading.Bad.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | 7.3152 | 24 ft | 7.32 m",
        "LENGTH | 0.0381 | 1.5 in | 38 mm",
        "LENGTH | 2.286 | 7.5 ft | 2.29 m",
        "LENGTH | 0.0002 | 0.0079 in | 0.2 mm",
        "LENGTH | 0 | 0 ft | 0 m",
        "LENGTH | -0.0 | 0 ft | 0 m",
        "AREA | 53.51 | 576 ft² | 53.51 m²",
        "VOLUME | 0.227124707 | 8 ft³ | 227.1 L",
        "ANGLE | 202.5 | 202.5° | 202.5°",
        "TEMPERATURE | 38.3333333333 | 101 °F | 38.3 °C",
        "TEMPERATURE | 1e-14 | 32 °F | 0 °C",
        "TEMPERATURE_DIFFERENCE | 11.1111111 | 20 °F | 11.1 K",
        "FRACTION | 0.9 | 90 % | 90 %",
        "FRACTION | 0.125 | 12.5 % | 12.5 %",
        "R_VALUE | 2.64165 | R-15 | 2.64 m²·K/W",
        "U_FACTOR | 1.987392 | 0.35 BTU/(h·ft²·°F) | 1.987 W/(m²·K)",
        "CONDUCTIVITY | 0.1153823 | 0.8 BTU·in/(h·ft²·°F) | 0.115 W/(m·K)",
        "PERMEANCE | 5.7213e-11 | 1 perm | 57.2 ng/(s·m²·Pa)",
        "PERMEANCE | 3.4328e-12 | 0.06 perm | 3.4 ng/(s·m²·Pa)",
        "DENSITY | 512.59 | 32 lb/ft³ | 513 kg/m³",
        "SPECIFIC_HEAT | 1214.172 | 0.29 BTU/(lb·°F) | '1,214 J/(kg·K)'",
        "MASS | 226.796185 | 500 lb | 226.8 kg",
        "POWER | 3516.852842 | '12,000 BTU/h' | '3,517 W'",
        "POWER | 100 | 341 BTU/h | 100 W",
        "POWER | 292.9 | 999 BTU/h | 293 W",
        "POWER | 0.4 | 1.4 BTU/h | 0.4 W",
        "AIR_FLOW | 0.18877896 | 400 cfm | 680 m³/h",
        "AIR_CHANGES | 0.5 | 0.5 /h | 0.5 /h",
        "LEAKAGE_AREA | 0.0064516 | 10 in² | 65 cm²",
        "SPEED | 3.3528 | 7.5 mph | 3.4 m/s",
        "PRESSURE | 861844.66 | 125 psi | 861.8 kPa",
        "DURATION | 3600 | 60 min | 60 min",
        "DURATION | 5400 | 90 min | 90 min",
        "DURATION | 28800 | 8 h | 8 h",
        "DURATION | 30 | 30 s | 30 s",
        "EFFICIENCY | 3.19447468 | 10.9 BTU/Wh | 3.19 W/W",
        "VOLTAGE | 115 | 115 V | 115 V",
        "CURRENT | 11.24 | 11.2 A | 11.2 A",
        "MONEY | 1234.4 | $1,234 | $1,234",
        "MONEY | -5 | -5 $ | -5 $",
        "ENERGY | 1234.4 | 1,234 kWh | 1,234 kWh",
        "ENERGY_PRICE | 0.1504 | 15.04 c/kWh | 15.04 c/kWh",
        "HEAT_PRICE | 0.1 | 2.93 $/therm | 2.93 $/therm",
        "LIQUID_PRICE | 1000 | 3.79 $/gal | 3.79 $/gal",
        "DEMAND_PRICE | 8 | 8 $/kW | 8 $/kW",
        "COUNT | 2 | 2 | 2",
      })
  void showsRoundFiguresWithTheirUnit(Kind kind, double si, String inchPound, String metric) {
    assertThat(Quantities.show(kind, si, UnitSystem.INCH_POUND)).isEqualTo(inchPound);
    assertThat(Quantities.show(kind, si, UnitSystem.SI)).isEqualTo(metric);
  }

  /** What was written in a usual unit is written again as it was. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | 24 ft | 24 ft",
        "LENGTH | 7 ft 6 in | 7.5 ft",
        "LENGTH | 6 ft 8 in | 80 in",
        "LENGTH | 12 in | 1 ft",
        "LENGTH | 1-1/2 in | 1.5 in",
        "LENGTH | 5/8 in | 0.625 in",
        "R_VALUE | R-15 | R-15",
        "TEMPERATURE | 101 °F | 101 °F",
        "TEMPERATURE | 38.3 °C | 100.94 °F",
        "TEMPERATURE | 0 °F | 0 °F",
        "TEMPERATURE | -40 °C | -40 °F",
        "POWER | 12000 BTU/h | 12000 BTU/h",
        "POWER | 5 hp | 5 hp",
        "POWER | 1.5 kW | 1500 W",
        "VOLUME | 60 gal | 60 gal",
        "AIR_FLOW | 400 cfm | 400 cfm",
        "FRACTION | 0.9 | 90 %",
        "FRACTION | 0.0 | 0 %",
        "DURATION | 1 h 30 min | 90 min",
        "ANGLE | SSW | 202.5°",
        "EFFICIENCY | 10.9 BTU/Wh | 10.9 BTU/Wh",
        "COUNT | 3 | 3",
      })
  void exactIsShort(Kind kind, String written, String exact) {
    double si = ((Reading.Good) Quantities.read(kind, written)).si();
    assertThat(Quantities.exact(kind, si, UnitSystem.INCH_POUND)).isEqualTo(exact);
  }

  @Test
  void exactInMetric() {
    assertThat(Quantities.exact(Kind.LENGTH, 7.3, UnitSystem.SI)).isEqualTo("7.3 m");
    assertThat(Quantities.exact(Kind.LENGTH, 0.038, UnitSystem.SI)).isEqualTo("38 mm");
    assertThat(Quantities.exact(Kind.R_VALUE, 2.6, UnitSystem.SI)).isEqualTo("2.6 m²·K/W");
    assertThat(Quantities.exact(Kind.AIR_FLOW, 0.01, UnitSystem.SI)).isEqualTo("36 m³/h");
    assertThat(Quantities.exact(Kind.AIR_FLOW, 0.19, UnitSystem.SI)).isEqualTo("684 m³/h");
  }

  @Test
  void exactFallsBackToTheOtherSystem() {
    assertThat(Quantities.exact(Kind.TEMPERATURE, 1e-30, UnitSystem.INCH_POUND))
        .isEqualTo("1E-30 °C");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MIN_VALUE, 1e22, -1e-7})
  void exactTakesTheLargestAndTheSmallest(double si) {
    for (UnitSystem system : UnitSystem.values()) {
      String text = Quantities.exact(Kind.LENGTH, si, system);
      assertThat(Quantities.read(Kind.LENGTH, text)).as(text).isEqualTo(new Reading.Good(si));
    }
  }

  @Test
  void inchesAndFeetAreTheSameNumber() {
    assertThat(Quantities.read(Kind.LENGTH, "12 in"))
        .isEqualTo(Quantities.read(Kind.LENGTH, "1 ft"));
    assertThat(Quantities.read(Kind.POWER, "12000 BTU/h"))
        .isEqualTo(Quantities.read(Kind.POWER, "1 ton"));
  }

  /** A plus sign goes through the patterns, plain digits do not; angles and R-values have none. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void plainTextsReadAsThePatternsDo(Kind kind) {
    Set<String> texts = new LinkedHashSet<>();
    for (Unit unit : UnitTable.of(kind).all()) {
      for (String spelling : unit.spellings()) {
        for (String number : List.of("7", "7.25", "7.", "0.5", "007")) {
          texts.add(number + " " + spelling);
          texts.add(number + spelling);
          texts.add(number + "  " + spelling + " ");
        }
      }
    }
    List.of("7 1/2 in", "7e2 m", "7 2 m", "7,200 W", "7.2.3 m", "7 furlong", "7", "7 eer")
        .forEach(texts::add);
    for (String text : texts) {
      Reading plain = Quantities.read(kind, text);
      Reading signed = Quantities.read(kind, "+" + text);
      if (plain instanceof Reading.Good) {
        assertThat(signed).as(text).isEqualTo(plain);
      } else {
        assertThat(signed).as(text).isInstanceOf(Reading.Bad.class);
      }
    }
  }

  @Test
  void namesItsUnits() {
    assertThat(Quantities.unit(Kind.LENGTH, UnitSystem.INCH_POUND)).isEqualTo("ft");
    assertThat(Quantities.unit(Kind.LENGTH, UnitSystem.SI)).isEqualTo("m");
    assertThat(Quantities.unit(Kind.R_VALUE, UnitSystem.INCH_POUND)).isEqualTo("h·ft²·°F/BTU");
    assertThat(Quantities.unit(Kind.R_VALUE, UnitSystem.SI)).isEqualTo("m²·K/W");
    assertThat(Quantities.unit(Kind.COUNT, UnitSystem.SI)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void onlyFiniteNumbersAreShown(double si) {
    assertThatThrownBy(() -> Quantities.show(Kind.LENGTH, si, UnitSystem.SI))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a quantity must be finite, was " + si);
    assertThatThrownBy(() -> Quantities.exact(Kind.LENGTH, si, UnitSystem.SI))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
