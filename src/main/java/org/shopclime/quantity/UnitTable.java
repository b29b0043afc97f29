package org.shopclime.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The units of each kind, with the words that ask for them.
 *
 * <p>Source: NIST Special Publication 811 (2008), appendix B; definitions as in {@link Units}.
 */
final class UnitTable {

  /**
   * What may be written for one kind.
   *
   * @param takes what is asked for, with an example
   * @param inchPound usual inch-pound units; a person gets the first that is not too large
   * @param metric usual SI units, likewise; the SI unit itself is among all units
   * @param more units that are read but not written
   */
  record Entry(String takes, List<Unit> inchPound, List<Unit> metric, List<Unit> more) {

    /** Copies the lists. */
    Entry {
      inchPound = List.copyOf(inchPound);
      metric = List.copyOf(metric);
      more = List.copyOf(more);
    }

    /**
     * The usual units of a system.
     *
     * @param system system of units
     * @return at least one unit
     */
    List<Unit> usual(UnitSystem system) {
      return system == UnitSystem.SI ? metric : inchPound;
    }

    /**
     * Every unit of the kind.
     *
     * @return units of both systems and those only read
     */
    List<Unit> all() {
      List<Unit> all = new ArrayList<>(inchPound);
      all.addAll(metric);
      all.addAll(more);
      return all;
    }
  }

  private static final BigDecimal ONE = BigDecimal.ONE;
  private static final BigDecimal FOOT = BigDecimal.valueOf(Units.METRES_PER_FOOT);
  private static final BigDecimal MILE = FOOT.multiply(n(5280));
  private static final BigDecimal POUND = BigDecimal.valueOf(Units.KG_PER_LB);
  private static final BigDecimal GRAVITY = BigDecimal.valueOf(Units.STANDARD_GRAVITY);
  private static final BigDecimal BTU_PER_POUND =
      BigDecimal.valueOf(Units.JOULES_PER_KG_IN_BTU_PER_LB);
  private static final BigDecimal BTU = BTU_PER_POUND.multiply(POUND);
  private static final BigDecimal HOUR = n(3600);
  private static final BigDecimal HORSEPOWER =
      n(550).multiply(FOOT).multiply(POUND).multiply(GRAVITY);

  private static final Map<Kind, Entry> ENTRIES = entries();

  private UnitTable() {}

  /**
   * The units of a kind.
   *
   * @param kind kind of quantity
   * @return its entry
   */
  static Entry of(Kind kind) {
    return ENTRIES.get(kind);
  }

  private static Map<Kind, Entry> entries() {
    Map<Kind, Entry> table = new EnumMap<>(Kind.class);
    geometry(table);
    temperature(table);
    materials(table);
    flows(table);
    others(table);
    money(table);
    return table;
  }

  private static void geometry(Map<Kind, Entry> table) {
    BigDecimal foot2 = FOOT.pow(2);
    BigDecimal foot3 = FOOT.pow(3);
    table.put(
        Kind.LENGTH,
        new Entry(
            "a length with its unit, such as \"8 ft\" or \"2.4 m\"",
            List.of(
                unit(" ft", FOOT, ONE, 1, 2, "ft", "foot", "feet", "'"),
                unit(" in", FOOT, n(12), 0, 2, "in", "inch", "inches", "\"")),
            List.of(
                unit(" m", ONE, ONE, 0.3, 2, "m", "meter", "meters", "metre", "metres"),
                unit(" mm", ONE, n(1000), 0, 0, "mm", "millimeters", "millimetres")),
            List.of(
                unit(" cm", ONE, n(100), 0, 1, "cm", "centimeters", "centimetres"),
                unit(" yd", FOOT.multiply(n(3)), ONE, 0, 2, "yd", "yard", "yards"),
                unit(" km", n(1000), ONE, 0, 1, "km", "kilometers", "kilometres"),
                unit(" mi", MILE, ONE, 0, 1, "mi", "mile", "miles"))));
    table.put(
        Kind.AREA,
        new Entry(
            "an area with its unit, such as \"48 ft2\" or \"4.5 m2\"",
            List.of(
                unit(" ft²", foot2, ONE, 0, 1, "ft2", "sf"),
                unit(" in²", foot2, n(144), 0, 1, "in2")),
            List.of(
                unit(" m²", ONE, ONE, 0, 2, "m2", "sqm"),
                unit(" cm²", ONE, n(10_000), 0, 0, "cm2")),
            List.of(unit(" yd²", foot2.multiply(n(9)), ONE, 0, 1, "yd2", "sqyd"))));
    table.put(
        Kind.VOLUME,
        new Entry(
            "a volume with its unit, such as \"60 gal\", \"8 ft3\" or \"0.23 m3\"",
            List.of(
                unit(" ft³", foot3, ONE, 0, 1, "ft3", "cf"),
                unit(" gal", foot3.multiply(n(231)), n(1728), 0, 1, "gal", "gallon", "gallons")),
            List.of(
                unit(" m³", ONE, ONE, 1, 2, "m3"),
                unit(" L", ONE, n(1000), 0, 1, "l", "liter", "liters", "litre", "litres")),
            List.of(
                unit(" in³", foot3, n(1728), 0, 1, "in3"),
                unit(" yd³", foot3.multiply(n(27)), ONE, 0, 1, "yd3"))));
    List<Unit> degrees = List.of(unit("°", ONE, ONE, 0, 1, "deg", ""));
    table.put(
        Kind.ANGLE,
        new Entry(
            "an angle in degrees, a compass point or a roof pitch,"
                + " such as \"180\", \"SSW\" or \"4 in 12\"",
            degrees,
            degrees,
            List.of()));
    table.put(
        Kind.LEAKAGE_AREA,
        new Entry(
            "a leakage area with its unit, such as \"77 in2\" or \"500 cm2\"",
            List.of(
                unit(" in²", foot2, n(144), 0, 0, "in2"), unit(" ft²", foot2, ONE, 0, 2, "ft2")),
            List.of(unit(" cm²", ONE, n(10_000), 0, 0, "cm2"), unit(" m²", ONE, ONE, 0, 2, "m2")),
            List.of(unit(" mm²", ONE, n(1_000_000), 0, 0, "mm2"))));
  }

  private static void temperature(Map<Kind, Entry> table) {
    table.put(
        Kind.TEMPERATURE,
        new Entry(
            "a temperature with its unit, such as \"78 °F\" or \"25.5 °C\"",
            List.of(unit("", " °F", n(5), n(9), n(32), 0, 1, "f", "fahrenheit")),
            List.of(unit(" °C", ONE, ONE, 0, 1, "c", "celsius")),
            List.of(unit("", " K", ONE, ONE, new BigDecimal("273.15"), 0, 1, "k", "kelvin"))));
    table.put(
        Kind.TEMPERATURE_DIFFERENCE,
        new Entry(
            "a temperature difference with its unit, such as \"20 °F\" or \"11 K\"",
            List.of(unit(" °F", n(5), n(9), 0, 1, "f", "fahrenheit", "r")),
            List.of(unit(" K", ONE, ONE, 0, 1, "k", "kelvin", "c", "celsius")),
            List.of()));
    List<Unit> percent =
        List.of(unit(" %", ONE, n(100), 0, 1, "%", "percent", "pct"), unit("", ONE, ONE, 0, 3, ""));
    table.put(
        Kind.FRACTION,
        new Entry("a fraction, such as \"90 %\" or \"0.9\"", percent, percent, List.of()));
  }

  private static void materials(Map<Kind, Entry> table) {
    // 1 BTU/(h·ft²·°F) = BTU / (3600 · foot² · 5/9) = BTU / (2000 · foot²)
    BigDecimal uBelow = FOOT.pow(2).multiply(n(2000));
    table.put(
        Kind.R_VALUE,
        new Entry(
            "a thermal resistance, such as \"R-15\" or \"2.6 m2K/W\"",
            List.of(
                unit(
                    "R-",
                    " h·ft²·°F/BTU",
                    uBelow,
                    BTU,
                    n(0),
                    0,
                    1,
                    orders("", "/btu", "h", "ft2", "f"))),
            List.of(unit(" m²·K/W", ONE, ONE, 0, 2, orders("", "/w", "m2", "k"))),
            List.of()));
    table.put(
        Kind.U_FACTOR,
        new Entry(
            "a U-factor with its unit, such as \"0.35 BTU/h·ft2·F\" or \"2 W/m2K\"",
            List.of(
                unit(" BTU/(h·ft²·°F)", BTU, uBelow, 0, 3, orders("btu/", "", "h", "ft2", "f"))),
            List.of(unit(" W/(m²·K)", ONE, ONE, 0, 3, uFactorSi())),
            List.of()));
    table.put(
        Kind.CONDUCTIVITY,
        new Entry(
            "a conductivity with its unit, such as \"0.8 BTU·in/h·ft2·F\" or \"0.115 W/mK\"",
            List.of(
                unit(
                    " BTU·in/(h·ft²·°F)",
                    BTU.multiply(FOOT),
                    uBelow.multiply(n(12)),
                    0,
                    3,
                    orders("btuin/", "", "h", "ft2", "f"))),
            List.of(unit(" W/(m·K)", ONE, ONE, 0, 3, "w/mk", "w/mc", "w/km")),
            List.of(
                unit(
                    " BTU/(h·ft·°F)",
                    BTU.multiply(FOOT),
                    uBelow,
                    0,
                    3,
                    orders("btu/", "", "h", "ft", "f")))));
    // 1 perm = grain/(h·ft²·inHg); a grain is a 7000th of a pound, mercury as under pressure.
    BigDecimal inchOfMercury = FOOT.multiply(GRAVITY).multiply(n(135_951));
    table.put(
        Kind.PERMEANCE,
        new Entry(
            "a permeance for vapor with its unit, such as \"0.06 perm\" or \"3.4 ng/(s·m2·Pa)\"",
            List.of(
                unit(
                    " perm",
                    POUND.multiply(n(120)),
                    n(7000).multiply(HOUR).multiply(FOOT.pow(2)).multiply(inchOfMercury),
                    0,
                    2,
                    "perm",
                    "perms",
                    "usperm",
                    "usperms",
                    "gr/hft2inhg")),
            List.of(
                unit(" ng/(s·m²·Pa)", ONE, n(1_000_000_000_000L), 0, 1, "ng/sm2pa", "ng/pasm2"),
                unit(" kg/(s·m²·Pa)", ONE, ONE, 0, 3, "kg/sm2pa", "kg/pasm2")),
            List.of()));
    table.put(
        Kind.DENSITY,
        new Entry(
            "a density with its unit, such as \"32 lb/ft3\" or \"510 kg/m3\"",
            List.of(unit(" lb/ft³", POUND, FOOT.pow(3), 0, 1, "lb/ft3", "lbs/ft3", "pcf")),
            List.of(unit(" kg/m³", ONE, ONE, 0, 0, "kg/m3")),
            List.of(unit(" g/cm³", n(1000), ONE, 0, 2, "g/cm3", "kg/l"))));
    table.put(
        Kind.SPECIFIC_HEAT,
        new Entry(
            "a specific heat with its unit, such as \"0.29 BTU/lb·F\" or \"1210 J/kgK\"",
            List.of(
                unit(
                    " BTU/(lb·°F)",
                    BTU_PER_POUND.multiply(n(9)),
                    n(5),
                    0,
                    3,
                    "btu/lbf",
                    "btu/flb",
                    "btu/lbmf")),
            List.of(unit(" J/(kg·K)", ONE, ONE, 0, 0, "j/kgk", "j/kgc", "j/kkg")),
            List.of(unit(" kJ/(kg·K)", n(1000), ONE, 0, 2, "kj/kgk", "kj/kgc", "kj/kkg"))));
    table.put(
        Kind.MASS,
        new Entry(
            "a mass with its unit, such as \"500 lb\" or \"230 kg\"",
            List.of(
                unit(" lb", POUND, ONE, 1, 1, "lb", "lbs", "pound", "pounds"),
                unit(" oz", POUND, n(16), 0, 1, "oz", "ounce", "ounces")),
            List.of(
                unit(" kg", ONE, ONE, 1, 1, "kg", "kilogram", "kilograms"),
                unit(" g", ONE, n(1000), 0, 0, "g", "gram", "grams")),
            List.of()));
  }

  private static void flows(Map<Kind, Entry> table) {
    BigDecimal foot3 = FOOT.pow(3);
    table.put(
        Kind.POWER,
        new Entry(
            "a power or heat flow with its unit, such as \"12000 BTU/h\", \"5 hp\" or \"1.5 kW\"",
            List.of(
                // "12,000 BTU" is how the boxes are labelled (common practice).
                unit(" BTU/h", BTU, HOUR, 0, 0, "btu/h", "btu"),
                unit(" hp", HORSEPOWER, ONE, 0, 2, "hp", "horsepower"),
                watts()),
            List.of(watts(), unit(" kW", n(1000), ONE, 0, 2, "kw", "kilowatt", "kilowatts")),
            List.of(
                unit(" tons", BTU.multiply(n(12_000)), HOUR, 0, 2, "ton", "tons"),
                unit(" kBTU/h", BTU.multiply(n(1000)), HOUR, 0, 1, "kbtu/h", "mbh"))));
    table.put(
        Kind.AIR_FLOW,
        new Entry(
            "an air flow with its unit, such as \"400 cfm\" or \"680 m3/h\"",
            List.of(unit(" cfm", foot3, n(60), 0, 0, "cfm", "ft3/min")),
            List.of(
                unit(" m³/h", ONE, HOUR, 0, 0, "m3/h"),
                unit(" L/s", ONE, n(1000), 0, 1, "l/s"),
                unit(" m³/s", ONE, ONE, 0, 3, "m3/s")),
            List.of(
                unit(" m³/min", ONE, n(60), 0, 1, "m3/min"),
                unit(" L/min", ONE, n(60_000), 0, 1, "l/min"),
                unit(" ft³/h", foot3, HOUR, 0, 0, "cfh", "ft3/h"))));
    BigDecimal pint = foot3.multiply(n(231)).multiply(n(1000));
    table.put(
        Kind.WATER_FLOW,
        new Entry(
            "water in a day with its unit, such as \"35 pints/day\" or \"17 L/day\"",
            List.of(
                unit(
                    " pints/day",
                    pint,
                    n(1728L * 8 * 86_400),
                    0,
                    0,
                    "pints/day",
                    "pint/day",
                    "pt/day",
                    "pintsperday",
                    "pintsaday")),
            List.of(
                unit(
                    " L/day",
                    ONE,
                    n(86_400),
                    0,
                    1,
                    "l/day",
                    "liters/day",
                    "litres/day",
                    "l/24h",
                    "kg/day")),
            List.of()));
    List<Unit> changes =
        List.of(
            unit(
                " /h",
                ONE,
                ONE,
                0,
                2,
                "/h",
                "1/h",
                "ach",
                "perh",
                "perhour",
                "/hour",
                "airchanges/h",
                "airchanges/hour",
                "airchangesperhour"));
    table.put(
        Kind.AIR_CHANGES,
        new Entry("air changes an hour, such as \"0.5 /h\"", changes, changes, List.of()));
    List<Unit> extinctions =
        List.of(
            unit(" /m", ONE, ONE, 0, 2, "/m", "1/m", "perm"),
            unit(" /mm", n(1000), ONE, 0, 4, "/mm", "1/mm", "permm"));
    table.put(
        Kind.EXTINCTION,
        new Entry(
            "an extinction coefficient with its unit, such as \"19.6 /m\"",
            extinctions,
            extinctions,
            List.of(unit(" /in", n(12), FOOT, 0, 2, "/in", "1/in"))));
    table.put(
        Kind.SPEED,
        new Entry(
            "a speed with its unit, such as \"7.5 mph\" or \"3.4 m/s\"",
            List.of(
                unit(" mph", MILE, HOUR, 0, 1, "mph", "mi/h", "miles/h", "milesperhour"),
                unit(" ft/min", FOOT, n(60), 0, 0, "ft/min", "fpm", "feet/min")),
            List.of(
                unit(" m/s", ONE, ONE, 0, 1, "m/s"),
                unit(" km/h", n(1000), HOUR, 0, 1, "km/h", "kph", "kmh")),
            List.of(
                unit(" ft/s", FOOT, ONE, 0, 1, "ft/s", "fps"),
                unit(" kn", n(1852), HOUR, 0, 1, "kn", "kt", "kts", "knot", "knots"))));
    table.put(
        Kind.PRESSURE,
        new Entry(
            "a pressure with its unit, such as \"125 psi\" or \"8.6 bar\"",
            List.of(
                unit(" psi", POUND.multiply(GRAVITY).multiply(n(144)), FOOT.pow(2), 0, 1, "psi"),
                // Mercury of 13 595.1 kg/m³ and water of 1000 kg/m³ under standard gravity.
                unit(" inHg", FOOT.multiply(GRAVITY).multiply(n(135_951)), n(120), 0, 2, "inhg"),
                unit(
                    " inH2O",
                    FOOT.multiply(GRAVITY).multiply(n(1000)),
                    n(12),
                    0,
                    2,
                    "inh2o",
                    "inwc",
                    "inwg")),
            List.of(
                unit(" kPa", n(1000), ONE, 1, 1, "kpa"),
                unit(" Pa", ONE, ONE, 0, 0, "pa"),
                unit(" bar", n(100_000), ONE, 0, 2, "bar")),
            List.of(unit(" hPa", n(100), ONE, 0, 1, "hpa", "mbar", "millibar", "millibars"))));
  }

  private static void others(Map<Kind, Entry> table) {
    List<Unit> times =
        List.of(
            unit(" h", HOUR, ONE, 2, 2, "h", "hs", "hour", "hours"),
            unit(" min", n(60), ONE, 1, 1, "min", "mins", "minute", "minutes"),
            unit(" s", ONE, ONE, 0, 0, "s", "sec", "secs", "second", "seconds"));
    table.put(
        Kind.DURATION,
        new Entry(
            "a duration with its unit, such as \"90 min\" or \"1 h 30 min\"",
            times,
            times,
            List.of(unit(" d", n(86_400), ONE, 0, 1, "d", "day", "days"))));
    table.put(
        Kind.EFFICIENCY,
        new Entry(
            "cooling per power with its unit, such as \"10.9 BTU/Wh\" or \"3.2 W/W\"",
            List.of(unit(" BTU/Wh", BTU, HOUR, 0, 1, "btu/wh", "btu/hw", "btu/whr")),
            List.of(unit(" W/W", ONE, ONE, 0, 2, "w/w")),
            List.of()));
    List<Unit> volts = List.of(unit(" V", ONE, ONE, 0, 0, "v", "volt", "volts", "vac"));
    table.put(
        Kind.VOLTAGE,
        new Entry("a voltage with its unit, such as \"115 V\"", volts, volts, List.of()));
    List<Unit> amps = List.of(unit(" A", ONE, ONE, 0, 1, "a", "amp", "amps", "ampere", "amperes"));
    table.put(
        Kind.CURRENT,
        new Entry("a current with its unit, such as \"15 A\"", amps, amps, List.of()));
    List<Unit> ones = List.of(unit("", ONE, ONE, 0, 2, ""));
    table.put(Kind.COUNT, new Entry("a number, such as \"2\"", ones, ones, List.of()));
  }

  private static void money(Map<Kind, Entry> table) {
    List<Unit> dollars =
        List.of(unit("$", " $", ONE, ONE, n(0), 0, 0, "$", "dollar", "dollars", "usd", "us$"));
    table.put(
        Kind.MONEY,
        new Entry(
            "an amount in dollars, such as \"$450\" or \"12.50 $\"", dollars, dollars, List.of()));
    List<Unit> energy = List.of(unit(" kWh", ONE, ONE, 0, 0, "kwh"));
    table.put(
        Kind.ENERGY,
        new Entry(
            "an energy with its unit, such as \"900 kWh\"",
            energy,
            energy,
            List.of(
                unit(" MWh", n(1000), ONE, 0, 2, "mwh"), unit(" Wh", ONE, n(1000), 0, 0, "wh"))));
    BigDecimal kilowattHour = HOUR.multiply(n(1000));
    List<Unit> prices =
        List.of(
            unit(" c/kWh", ONE, n(100), 0, 2, "c/kwh", "ct/kwh", "¢/kwh", "cents/kwh", "cent/kwh"));
    table.put(
        Kind.ENERGY_PRICE,
        new Entry(
            "a price of electricity, such as \"15 c/kWh\" or \"0.15 $/kWh\"",
            prices,
            prices,
            List.of(
                unit(" $/kWh", ONE, ONE, 0, 3, "$/kwh", "dollars/kwh", "dollar/kwh", "usd/kwh"),
                unit(" $/MWh", ONE, n(1000), 0, 1, "$/mwh"))));
    List<Unit> therms =
        List.of(unit(" $/therm", kilowattHour, BTU.multiply(n(100_000)), 0, 2, "$/therm"));
    table.put(
        Kind.HEAT_PRICE,
        new Entry(
            "a price of gas, such as \"1.20 $/therm\"",
            therms,
            therms,
            List.of(
                unit(" $/kWh", ONE, ONE, 0, 3, "$/kwh"),
                unit(" $/MMBTU", kilowattHour, BTU.multiply(n(1_000_000)), 0, 2, "$/mmbtu"))));
    List<Unit> gallons =
        List.of(
            unit(
                " $/gal",
                n(1728),
                FOOT.pow(3).multiply(n(231)),
                0,
                2,
                "$/gal",
                "$/gallon",
                "dollars/gal",
                "dollars/gallon"));
    table.put(
        Kind.LIQUID_PRICE,
        new Entry(
            "a price of a liquid, such as \"2.90 $/gal\"",
            gallons,
            gallons,
            List.of(unit(" $/L", n(1000), ONE, 0, 2, "$/l", "$/liter", "$/litre"))));
    List<Unit> demand = List.of(unit(" $/kW", ONE, ONE, 0, 2, "$/kw", "dollars/kw"));
    table.put(
        Kind.DEMAND_PRICE,
        new Entry("a price of power, such as \"8 $/kW\"", demand, demand, List.of()));
  }

  private static Unit watts() {
    return unit(" W", ONE, ONE, 0, 0, "w", "watt", "watts");
  }

  private static String[] uFactorSi() {
    return new String[] {"w/m2k", "w/km2", "w/m2c"};
  }

  /** Spellings of three or fewer factors in any order. */
  private static String[] orders(String before, String after, String... factors) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < factors.length; i++) {
      for (int j = 0; j < factors.length; j++) {
        if (factors.length == 2 && i != j) {
          found.add(before + factors[i] + factors[j] + after);
        }
        if (factors.length == 3 && i != j) {
          found.add(before + factors[i] + factors[j] + factors[3 - i - j] + after);
        }
      }
    }
    return found.toArray(new String[0]);
  }

  private static BigDecimal n(long number) {
    return BigDecimal.valueOf(number);
  }

  private static Unit unit(
      String after,
      BigDecimal numerator,
      BigDecimal denominator,
      double least,
      int decimals,
      String... spellings) {
    return unit("", after, numerator, denominator, n(0), least, decimals, spellings);
  }

  private static Unit unit(
      String before,
      String after,
      BigDecimal numerator,
      BigDecimal denominator,
      BigDecimal offset,
      double least,
      int decimals,
      String... spellings) {
    return new Unit(
        before,
        after,
        numerator,
        denominator,
        offset,
        BigDecimal.valueOf(least),
        decimals,
        List.of(spellings));
  }
}
