package org.shopclime.report;

import java.util.List;
import java.util.Locale;
import org.shopclime.plan.InWords;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/** Figures as sentences and tables show them: rounded to what the answer is worth. */
final class Shown {

  private static final double HUNDRED = 100;
  private static final double TEN = 10;

  private Shown() {}

  /** A temperature, °C, as "85 °F" or "29.4 °C"; a dash where there is none. */
  static String temperature(double celsius, UnitSystem units) {
    if (!Double.isFinite(celsius)) {
      return "–";
    }
    return Quantities.show(Kind.TEMPERATURE, whole(celsius, units) + 0.0, units).replace('-', '−');
  }

  /** Two temperatures, °C, as "81–84 °F"; one if they read alike. */
  static String range(double low, double high, UnitSystem units) {
    String unit = " " + Quantities.unit(Kind.TEMPERATURE, units).strip();
    String from = temperature(low, units);
    String to = temperature(high, units);
    return from.equals(to) ? to : from.replace(unit, "") + "–" + to;
  }

  /** A temperature difference, K, as "22 °F" or "12 K". */
  static String difference(double kelvin, UnitSystem units) {
    double rounded =
        units == UnitSystem.SI
            ? Math.rint(kelvin * TEN) / TEN
            : Units.kelvinDifference(Math.rint(Units.fahrenheitDifference(kelvin)));
    return Quantities.show(Kind.TEMPERATURE_DIFFERENCE, rounded + 0.0, units).replace('-', '−');
  }

  /** The same to a tenth of a degree, for small ones that decide: "3.6 °F". */
  static String fineDifference(double kelvin, UnitSystem units) {
    double rounded =
        units == UnitSystem.SI
            ? Math.rint(kelvin * TEN) / TEN
            : Units.kelvinDifference(Math.rint(Units.fahrenheitDifference(kelvin) * TEN) / TEN);
    return Quantities.show(Kind.TEMPERATURE_DIFFERENCE, rounded + 0.0, units).replace('-', '−');
  }

  /** A heat flow or capacity, W, to the nearest 100 BTU/h (10 below 1,000) or 10 W. */
  static String power(double watts, UnitSystem units) {
    if (units == UnitSystem.SI) {
      return Quantities.show(Kind.POWER, Math.rint(watts / TEN) * TEN + 0.0, units)
          .replace('-', '−');
    }
    double btuh = Units.btuh(watts);
    double step = Math.abs(btuh) >= TEN * HUNDRED ? HUNDRED : TEN;
    return Quantities.show(
            Kind.POWER, Units.wattsFromBtuh(Math.rint(btuh / step) * step + 0.0), units)
        .replace('-', '−');
  }

  /** A heat flow as in tables: a whole number without its unit; a true minus is not overlooked. */
  static String heat(double watts, UnitSystem units) {
    double figure = units == UnitSystem.SI ? watts : Units.btuh(watts);
    return grouped(Math.round(figure));
  }

  /** Unit of {@link #heat}. */
  static String heatUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "W" : "BTU/h";
  }

  /** Unit of a temperature. */
  static String temperatureUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "°C" : "°F";
  }

  /** Temperature as a plain number, °C or °F. */
  static double degrees(double celsius, UnitSystem units) {
    return units == UnitSystem.SI ? celsius : Units.fahrenheit(celsius);
  }

  /** Heat flow as a plain number, W or BTU/h. */
  static double flow(double watts, UnitSystem units) {
    return units == UnitSystem.SI ? watts : Units.btuh(watts);
  }

  /** A fraction as "45 %". */
  static String percent(double fraction) {
    return grouped(Math.round(fraction * HUNDRED)) + " %";
  }

  /** Minutes as "45 min", "2 h" or "5 h 55 min". */
  static String duration(long minutes) {
    long hours = minutes / 60;
    long rest = minutes % 60;
    String part = rest + " min";
    return hours == 0 ? part : hours + " h" + (rest == 0 ? "" : " " + part);
  }

  /** A sign before a change: "+300", "−300", "0". */
  static String signed(double watts, UnitSystem units) {
    long figure = Math.round(flow(watts, units));
    return (figure > 0 ? "+" : "") + grouped(figure);
  }

  /** A whole number in groups of three. */
  static String grouped(long figure) {
    return (figure < 0 ? "−" : "") + String.format(Locale.ROOT, "%,d", Math.abs(figure));
  }

  /** Words in a row: "a", "a and b", "a, b and c". */
  static String row(List<String> words) {
    return InWords.row(words);
  }

  /** An owner's text on one line, without signs that could steer a terminal or break a page. */
  static String line(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints().map(sign -> isSteering(sign) ? ' ' : sign).forEach(plain::appendCodePoint);
    return plain.toString().strip();
  }

  private static boolean isSteering(int sign) {
    int type = Character.getType(sign);
    return Character.isISOControl(sign)
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || sign == 0xFFFE
        || sign == 0xFFFF;
  }

  private static double whole(double celsius, UnitSystem units) {
    return units == UnitSystem.SI
        ? Math.rint(celsius * TEN) / TEN
        : Units.celsius(Math.rint(Units.fahrenheit(celsius)));
  }
}
