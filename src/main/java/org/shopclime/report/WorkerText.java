package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shopclime.air.HeatIndex;
import org.shopclime.balance.Profile;
import org.shopclime.balance.WorkerAir;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.LivedDay;
import org.shopclime.run.WorkerHeat;
import org.shopclime.shop.Gain;

/** The heat on the worker in working hours, in words and figures. Never calls anything safe. */
final class WorkerText {

  /** Air speed in front of a fan, m/s (common practice). */
  private static final double FAN = 2;

  /**
   * Air above which a fan warms more than it cools, °C (95 °F; public health advice of CDC and EPA,
   * from memory).
   */
  private static final double NO_FAN = 35;

  /** Less than this is not worth telling, K. */
  private static final double LITTLE = 0.28;

  private static final String CAUTION =
      " Estimates, not a measurement and not a medical verdict: go by OSHA and NIOSH guidance on heat"
          + " and ask your physician.";

  private static final int DECIMALS = 2;
  private static final int HOURS = 24;

  private final SizeAnswer answer;
  private final WallClock clock;
  private final List<Integer> working;
  private final Profile speed;

  WorkerText(SizeAnswer answer) {
    this.answer = answer;
    this.clock = new WallClock(answer.shop().work(), answer.core().hotDay().date());
    this.working = clock.working();
    this.speed = WorkerAir.of(answer.shop(), answer.core().room(), answer.core().hotDay().date());
  }

  /** One fact; nothing where nobody works. */
  Optional<String> fact(UnitSystem units) {
    LivedDay told = answer.core().unit().orElse(answer.core().without());
    WorkerHeat heat = WorkerHeat.of(told.trace(), speed);
    if (working.isEmpty()) {
      return Optional.empty();
    }
    double index = peak(heat.heatIndex());
    String without =
        answer.core().unit().isPresent()
            ? "; with the unit off, "
                + both(WorkerHeat.of(answer.core().without().trace(), speed), units)
            : "";
    return Optional.of(
        "Heat on the worker at its worst: "
            + both(heat, units)
            + without
            + " (air moving at "
            + moving(heat, units)
            + ")."
            + (index > HeatIndex.CHART_END
                ? " That heat index lies past the end of the Weather Service's chart."
                : "")
            + fans()
            + fan(told, heat, units)
            + CAUTION);
  }

  /** The speed in the worst hour. */
  private String moving(WorkerHeat heat, UnitSystem units) {
    int hour = WorkerHeat.worst(heat.wetBulbGlobe(), working).orElseThrow();
    return Quantities.show(Kind.SPEED, speed.at(hour), units);
  }

  /** What the fans over the worker are, and what not. */
  private String fans() {
    List<Gain.WorkFan> fans = WorkerAir.fans(answer.shop(), answer.core().room());
    if (fans.isEmpty()) {
      return "";
    }
    double watts = fans.stream().mapToDouble(Gain.WorkFan::power).sum();
    return " "
        + Shown.row(fans.stream().map(each -> Shown.line(each.name())).toList())
        + ": air movement as comfort, not cooling; the "
        + Quantities.show(Kind.POWER, watts, UnitSystem.SI)
        + " drawn stay in the room as heat.";
  }

  /** The fastest the air moves while work goes on, m/s. */
  double fastest() {
    return working.stream().mapToDouble(speed::at).max().orElse(answer.shop().work().airSpeed());
  }

  private String both(WorkerHeat heat, UnitSystem units) {
    return "heat index "
        + atWorst(heat.heatIndex(), units)
        + ", wet-bulb globe "
        + atWorst(heat.wetBulbGlobe(), units);
  }

  /** The worst working hour; the two figures need not have it together. */
  private String atWorst(Profile profile, UnitSystem units) {
    int hour = WorkerHeat.worst(profile, working).orElseThrow();
    return Shown.temperature(profile.at(hour), units) + " from " + clock.during(hour);
  }

  private String fan(LivedDay told, WorkerHeat heat, UnitSystem units) {
    if (peak(told.trace().air()) > NO_FAN) {
      return " In air this hot a fan is no remedy.";
    }
    double gained =
        fastest() >= FAN
            ? 0
            : peak(heat.wetBulbGlobe()) - peak(WorkerHeat.of(told.trace(), FAN).wetBulbGlobe());
    return gained < LITTLE
        ? ""
        : " A fan that moves "
            + Quantities.show(Kind.SPEED, FAN, units)
            + " past the bench would take "
            + Shown.difference(gained, units)
            + " off the wet-bulb globe figure.";
  }

  private double peak(Profile profile) {
    OptionalInt worst = WorkerHeat.worst(profile, working);
    return worst.isPresent() ? profile.at(worst.getAsInt()) : Double.NaN;
  }

  /** Hours and peaks of a day into an object; peaks are those of working hours. */
  void put(ObjectNode into, LivedDay day) {
    WorkerHeat heat = WorkerHeat.of(day.trace(), speed);
    profile(into, "heatIndexF", heat.heatIndex());
    profile(into, "wbgtF", heat.wetBulbGlobe());
    peak(into, "heatIndexPeak", heat.heatIndex());
    peak(into, "wbgtPeak", heat.wetBulbGlobe());
  }

  private static void profile(ObjectNode into, String key, Profile profile) {
    ArrayNode array = into.putArray(key);
    for (int hour = 1; hour <= HOURS; hour++) {
      array.add(SizeJson.rounded(Units.fahrenheit(profile.at(hour)), DECIMALS));
    }
  }

  private void peak(ObjectNode into, String key, Profile profile) {
    OptionalInt worst = WorkerHeat.worst(profile, working);
    into.put(key + "F", SizeJson.rounded(Units.fahrenheit(peak(profile)), DECIMALS));
    into.put(key + "Hour", worst.isPresent() ? worst.getAsInt() : null);
  }
}
