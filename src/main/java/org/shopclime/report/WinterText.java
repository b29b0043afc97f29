package org.shopclime.report;

import java.util.OptionalDouble;
import org.shopclime.plan.WinterAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.HeaterSize;

/** What the winter figures say, and which cold they rest on. */
final class WinterText {

  private final WinterAnswer winter;
  private final UnitSystem units;

  WinterText(WinterAnswer winter, UnitSystem units) {
    this.winter = winter;
    this.units = units;
  }

  /** Loss, heater, and the cold they are for. */
  String fact() {
    return "In winter, at "
        + temperature(winter.design())
        + " outside and "
        + temperature(winter.indoor())
        + " inside, "
        + Shown.power(winter.loss(), units)
        + " is lost; an electric heater of "
        + Quantities.show(Kind.POWER, winter.heater(), UnitSystem.SI)
        + " covers it. "
        + pump()
        + basis();
  }

  /** What a heat pump gives of it, and what must help. */
  private String pump() {
    if (winter.pump().isEmpty()) {
      return "";
    }
    double gives = winter.pump().getAsDouble();
    if (winter.beside() == 0) {
      return "The heat pump can give "
          + Shown.power(gives, units)
          + " then, so nothing must help it. ";
    }
    return (gives > 0
            ? "The heat pump gives " + Shown.power(gives, units) + " of it"
            : "The heat pump stands still in such cold")
        + ", so an electric heater of "
        + Quantities.show(Kind.POWER, HeaterSize.covering(winter.beside()), UnitSystem.SI)
        + " must help it. ";
  }

  /** Where the cold comes from. */
  String basis() {
    OptionalDouble typicalYear = winter.typicalYear();
    if (typicalYear.isEmpty()) {
      return "That cold is the one you set.";
    }
    double taken = typicalYear.getAsDouble() - winter.design();
    return "In the station's typical year 99 % of the hours are warmer than "
        + temperature(typicalYear.getAsDouble())
        + "; typical years leave out the coldest spells, so "
        + Quantities.show(Kind.TEMPERATURE_DIFFERENCE, taken, units)
        + " is taken off. If you know a colder night, type it.";
  }

  private String temperature(double celsius) {
    return Shown.temperature(celsius, units);
  }
}
