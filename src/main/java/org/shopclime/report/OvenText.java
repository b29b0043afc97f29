package org.shopclime.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shopclime.balance.OvenBook;
import org.shopclime.balance.Profile;
import org.shopclime.plan.Change;
import org.shopclime.plan.OvenAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** The curing ovens, in sentences. */
public final class OvenText {

  /** What stands below. */
  static final String LIMITS =
      "Powder gives off fumes as it cures: an oven is vented outdoors and make-up air let in, also"
          + " where that costs cooling (NFPA 86, the makers of oven and powder, local fire code); no"
          + " oven of this kind burns gas here. Keep booth, solvent and sparks apart (NFPA 33, OSHA"
          + " 1910.107); with a flame in the shop, have its flue tested with the fans on and keep a"
          + " carbon monoxide alarm (CPSC, EPA).";

  /** Parts of the greatest hour below which an hour is not told. */
  private static final double SMALL = 0.02;

  /** A longer row of hours is not read any more; then the greatest are told. */
  private static final int MOST_HOURS = 8;

  private static final int GREATEST = 3;

  private static final double MINUTE = 60;
  private static final double JOULES = 3.6e6;
  private static final double WATT_HOURS = 1000;

  private OvenText() {}

  /**
   * Everything there is to say.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return one line for each; none without an oven
   */
  public static List<String> lines(SizeAnswer answer, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    answer
        .oven()
        .ifPresent(
            told -> {
              WallClock clock = new WallClock(answer.shop().work(), answer.core().hotDay().date());
              for (OvenAnswer.Oven oven : told.ovens()) {
                lines.add(heat(oven, clock, units));
                oven.book().ifPresent(book -> lines.add(book(oven, book)));
              }
              told.variants().forEach(change -> lines.add(variant(change, answer, units)));
              lines.add(LIMITS);
            });
    return lines;
  }

  private static String heat(OvenAnswer.Oven oven, WallClock clock, UnitSystem units) {
    Profile heat = oven.heat();
    if (heat.peak() <= 0) {
      return Shown.line(oven.name()) + " is cold on a working day.";
    }
    List<Integer> told = new ArrayList<>();
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      if (heat.at(hour) >= SMALL * heat.peak()) {
        told.add(hour);
      }
    }
    boolean all = told.size() <= MOST_HOURS;
    if (!all) {
      told.sort(Comparator.comparingDouble(hour -> -heat.at(hour)));
    }
    List<String> hours =
        told.stream()
            .limit(all ? MOST_HOURS : GREATEST)
            .map(hour -> "from " + clock.start(hour) + " " + Shown.heat(heat.at(hour), units))
            .toList();
    return Shown.line(oven.name())
        + " gives the room "
        + kilowattHours(heat.mean() * Profile.HOURS / WATT_HOURS)
        + " on a working day, "
        + (all ? "by the hour in " : "most in these hours, in ")
        + Shown.heatUnit(units)
        + ": "
        + String.join(", ", hours)
        + ".";
  }

  private static String book(OvenAnswer.Oven oven, OvenBook book) {
    return Shown.line(oven.name())
        + ": "
        + book.batches()
        + (book.batches() == 1 ? " batch" : " batches")
        + " a day, the first hot after "
        + Shown.duration(Math.round(book.heatUp() / MINUTE))
        + ", each up to "
        + Shown.duration(Math.round(book.longest() / MINUTE))
        + " in the oven; of "
        + kilowattHours(book.heater() / JOULES)
        + " of electricity box and parts give the room "
        + kilowattHours(book.room() / JOULES)
        + (book.vented() > 0
            ? ", its own fan carries out " + kilowattHours(book.vented() / JOULES)
            : "")
        + (book.carried() > 0
            ? ", parts taken out of the room " + kilowattHours(book.carried() / JOULES)
            : "")
        + ".";
  }

  private static String variant(Change change, SizeAnswer answer, UnitSystem units) {
    PeakLines peak = PeakLines.of(answer.core().load());
    double load = change.peakSensible() + change.peakLatent() - peak.total();
    String size =
        change.recommended().isPresent()
            ? Shown.power(change.recommended().getAsDouble(), units) + " would hold"
            : "no usual size would hold";
    return Character.toUpperCase(change.name().charAt(0))
        + change.name().substring(1)
        + ": warmest "
        + (answer.unit().isPresent() ? "working hour " : "hour ")
        + Shown.temperature(change.indoorPeak(), units)
        + " (now "
        + Shown.temperature(answer.core().indoorPeak(), units)
        + "), "
        + Shown.power(Math.abs(load), units)
        + (load < 0 ? " less" : " more")
        + " to take out at the worst hour; "
        + (answer.unit().isPresent()
            ? "your unit " + (change.holds() ? "holds, " : "does not hold, ")
            : "")
        + size
        + ".";
  }

  private static String kilowattHours(double value) {
    return String.format(Locale.ROOT, "%.1f kWh", value + 0.0);
  }
}
