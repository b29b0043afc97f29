package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shopclime.balance.AirBook;
import org.shopclime.balance.AirPath;
import org.shopclime.balance.AirSuction;
import org.shopclime.plan.AirAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.shop.FanWay;

/** The air of the shop, in sentences and as a table. */
public final class AirText {

  /** What stands below every balance. */
  static final String LIMITS =
      "Flows of fans are those told; real ones are often half of what a label says. Wind and stack"
          + " come on top of the suction, and two doors or rooms are not told apart. Never move less"
          + " air than the work needs: capture first, comfort second (OSHA 1910.94, NIOSH). Returned"
          + " air needs a filter meant for that dust and must be allowed (OSHA combustible dust,"
          + " NFPA 652 and 664, local fire code); fumes and solvent vapor are never returned (NFPA"
          + " 33, NFPA 86).";

  private static final double HOUR = 3600;
  private static final double NEWTONS_PER_POUND = 0.45359237 * 9.80665;

  /** Suction below which nothing is felt or drawn backward, Pa. */
  private static final double SLIGHT = 0.5;

  private AirText() {}

  /**
   * Everything there is to say, without the table.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return one line for each; none if the air was not looked at
   */
  public static List<String> lines(SizeAnswer answer, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    answer
        .air()
        .ifPresent(
            air -> {
              WallClock clock = new WallClock(answer.shop().work(), answer.core().hotDay().date());
              lines.add(balance(air.book(), clock, units));
              lines.add(cost(air, units));
              ToolText.air(answer, units).ifPresent(lines::add);
              suction(air.book().suction(), clock).ifPresent(lines::add);
              air.options().forEach(option -> lines.add(option(option, air, units)));
              lines.add(LIMITS);
            });
    return lines;
  }

  private static String balance(AirBook book, WallClock clock, UnitSystem units) {
    return "In the working hour in which outdoor air costs most on the hot day, "
        + clock.during(book.hour())
        + ", "
        + flow(book.in(), units)
        + " of outdoor air comes in and "
        + flow(book.out(), units)
        + " goes out.";
  }

  /** What it costs, such as "It brings 12,300 BTU/h …". */
  static String cost(AirAnswer air, UnitSystem units) {
    AirBook book = air.book();
    return "It brings "
        + Shown.power(book.total(), units)
        + ": "
        + Shown.power(book.sensible(), units)
        + " of heat and "
        + Shown.power(book.latent(), units)
        + " of moisture, "
        + water(book.water(), units)
        + " of water an hour"
        + (air.partOfUnit().isPresent()
            ? "; that is "
                + Shown.percent(air.partOfUnit().getAsDouble())
                + " of what the unit gives by its label"
            : "")
        + ".";
  }

  private static Optional<String> suction(AirSuction suction, WallClock clock) {
    if (suction.fans().isEmpty()) {
      return Optional.empty();
    }
    String running =
        "With "
            + Shown.row(suction.fans().stream().map(Shown::line).toList())
            + " running at once ("
            + clock.during(suction.hour())
            + ") ";
    if (Double.isNaN(suction.pascals())) {
      return Optional.of(
          running
              + "the shop is pulled below outdoors; how far is not known, as its leaks are told by"
              + " air changes alone.");
    }
    String pulled =
        running
            + (suction.pascals() < SLIGHT
                ? "the shop lies less than half a pascal below outdoors"
                : "the shop lies about " + pascals(suction.pascals()) + " Pa below outdoors");
    String door =
        suction
            .door()
            .map(
                hard ->
                    "; "
                        + Shown.line(hard.name())
                        + " takes about "
                        + Math.round(hard.newtons() / NEWTONS_PER_POUND)
                        + " lbf ("
                        + Math.round(hard.newtons())
                        + " N) more to open, of 30 lbf allowed on a way out (NFPA 101)")
            .orElse("");
    String flue =
        Double.isInfinite(suction.flueLimit())
            ? ""
            : "; the flue in the shop stands "
                + pascals(suction.flueLimit())
                + " Pa"
                + (suction.endangersFlue() ? ": too little" : "");
    return Optional.of(pulled + door + flue + ".");
  }

  private static String option(AirAnswer.Option option, AirAnswer air, UnitSystem units) {
    String what =
        option.way() == AirAnswer.Way.FILTERED_RETURN
            ? ", its air filtered and given back to the room, would save "
            : ", 80 % of its air led from outdoors to the hood, would save ";
    return Shown.line(option.fan())
        + what
        + Shown.power(option.saved(), units)
        + (air.rated().isPresent()
            ? " (" + Shown.percent(option.saved() / air.rated().getAsDouble()) + " of the unit)"
            : "")
        + " in that hour; it moves as much air as now.";
  }

  /**
   * Heads of the table.
   *
   * @param units system of units to show
   * @return one for each column
   */
  public static List<String> heads(UnitSystem units) {
    String flow = ", " + flowUnit(units);
    String heat = ", " + Shown.heatUnit(units);
    return List.of(
        "Air",
        "in" + flow,
        "out" + flow,
        "not mixed" + flow,
        "heat" + heat,
        "moisture" + heat,
        "water, " + (units == UnitSystem.SI ? "kg/h" : "lb/h"),
        "of unit");
  }

  /** Heads without units. */
  static final List<String> PLAIN_HEADS =
      List.of("", "in", "out", "not mixed", "heat", "moisture", "water", "of unit");

  /** Units of the columns. */
  static String units(UnitSystem units) {
    return units == UnitSystem.SI
        ? "L/s; W; kg of water an hour"
        : "cfm; BTU/h; lb of water an hour";
  }

  /**
   * The table: each path, then the sums.
   *
   * @param air the air of the shop
   * @param units system of units to show
   * @return rows
   */
  public static List<List<String>> rows(AirAnswer air, UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    for (AirPath path : air.book().paths()) {
      rows.add(
          row(
              name(path),
              new double[] {
                path.in(),
                path.out(),
                path.led() + path.returned(),
                path.sensible(),
                path.latent(),
                path.water()
              },
              air,
              units));
    }
    AirBook book = air.book();
    rows.add(
        row(
            "All together",
            new double[] {book.in(), book.out(), 0, book.sensible(), book.latent(), book.water()},
            air,
            units));
    return rows;
  }

  private static List<String> row(String name, double[] of, AirAnswer air, UnitSystem units) {
    return List.of(
        name,
        plainFlow(of[0], units),
        plainFlow(of[1], units),
        of[2] > 0 ? plainFlow(of[2], units) : "",
        Shown.heat(of[3], units),
        Shown.heat(of[4], units),
        decimals(plainWater(of[5], units)),
        air.rated().isPresent() ? Shown.percent((of[3] + of[4]) / air.rated().getAsDouble()) : "");
  }

  /** What the table's columns mean. */
  static final String NOTE =
      "Leaks are charged with what would come in with fans off, fans with what they add to it. Not"
          + " mixed with the room's: air led from outdoors to a hood and out again, or filtered and returned.";

  /** Name of a path as a reader knows it. */
  static String name(AirPath path) {
    String back = path.way() == FanWay.FILTERED_RETURN ? ", returned" : "";
    return Shown.line(path.name()) + back;
  }

  /** A flow as "310 cfm" or "527 m³/h". */
  static String flow(double cubicMetres, UnitSystem units) {
    return plainFlow(cubicMetres, units) + " " + flowUnit(units);
  }

  private static String plainFlow(double cubicMetres, UnitSystem units) {
    return Shown.grouped(
        Math.round(units == UnitSystem.SI ? cubicMetres * 3600 : Units.cfm(cubicMetres)));
  }

  private static String flowUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "m³/h" : "cfm";
  }

  /** Water as "7.9 lb" or "3.6 kg" an hour. */
  static String water(double kilogramsPerSecond, UnitSystem units) {
    return decimals(plainWater(kilogramsPerSecond, units))
        + (units == UnitSystem.SI ? " kg" : " lb");
  }

  private static double plainWater(double kilogramsPerSecond, UnitSystem units) {
    double perHour = kilogramsPerSecond * HOUR;
    return units == UnitSystem.SI ? perHour : Units.pounds(perHour);
  }

  /** One decimal below ten, none above. */
  private static String pascals(double value) {
    return value < 10 ? decimals(value) : Shown.grouped(Math.round(value));
  }

  private static String decimals(double value) {
    return String.format(Locale.ROOT, "%.1f", value + 0.0).replace('-', '−');
  }
}
