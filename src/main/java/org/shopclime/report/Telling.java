package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.plan.Band;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.plan.Verdict;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;
import org.shopclime.shop.Shop;

/** How one day is told: the parts of the answer's sentence. */
final class Telling {

  private static final double FLAT_OUT = 0.999;

  private final CoreAnswer core;
  private final UnitSystem units;
  private final Optional<Band> band;
  private final Optional<Verdict> verdict;
  private final LivedDay day;
  private final WallClock clock;
  private final List<Integer> judged;

  Telling(
      CoreAnswer core,
      Shop shop,
      UnitSystem units,
      Optional<Band> band,
      Optional<Verdict> verdict) {
    this.core = core;
    this.units = units;
    this.band = band;
    this.verdict = verdict;
    this.day = core.unit().orElse(core.without());
    this.clock = new WallClock(shop.work(), core.hotDay().date());
    this.judged = WallClock.lived(day.judged());
  }

  boolean nothingAsked() {
    return judged.isEmpty();
  }

  String nothing() {
    return "No working hours are given, so nothing is asked of any unit; the room is hottest by "
        + clock.end(core.without().trace().air().peakHour())
        + " with "
        + temperature(core.without().trace().air().peak())
        + ".";
  }

  /** The sentence without its full stop, up to what the unit is worth elsewhere. */
  String opening() {
    return verdict
        .map(
            found ->
                switch (found) {
                  case HOLDS -> "Holds " + wished() + " all working day " + onTheDay() + held();
                  case JUST_HOLDS ->
                      "Just holds " + wished() + " " + onTheDay() + held() + flatOut();
                  case DRIFTS -> drifts();
                  case NEVER_CATCHES_UP -> never();
                })
        .orElseGet(this::without);
  }

  String keepsUpTo(UnitAnswer unit) {
    if (unit.keepsUpTo().isPresent()) {
      return "; keeps up until about " + temperature(unit.keepsUpTo().getAsDouble()) + " outside";
    }
    return unit.day().holds()
        ? "; keeps up even in the greatest heat tried"
        : "; does not keep up even on the coolest day tried";
  }

  String wished() {
    return temperature(day.setPoint());
  }

  String power(double watts) {
    return Shown.power(watts, units);
  }

  /** Hours in which the unit never stops, as stretches; empty if there are none. */
  static String flatOutHours(Trace trace, WallClock clock) {
    List<Integer> hours = new ArrayList<>();
    for (int hour = 1; hour <= 24; hour++) {
      if (trace.running().at(hour) > FLAT_OUT) {
        hours.add(hour);
      }
    }
    return hours.isEmpty() ? "" : clock.stretches(hours);
  }

  private String flatOut() {
    String hours = flatOutHours(day.trace(), clock);
    return hours.isEmpty() ? "" : "; runs flat out " + hours;
  }

  private String drifts() {
    int held = 0;
    while (isHeld(judged.get(held))) {
      held++;
    }
    if (held > 0) {
      return "Holds "
          + wished()
          + " until "
          + clock.start(judged.get(held))
          + ", then drifts to "
          + worst()
          + " "
          + onTheDay();
    }
    String when = clock.stretches(judged.stream().filter(this::isHeld).toList());
    return "Holds " + wished() + " only from " + when + "; reaches " + worst() + " " + onTheDay();
  }

  private String never() {
    return "Never catches up " + onTheDay() + ": " + worst() + " where you wish " + wished();
  }

  private String without() {
    return "Without cooling the room reaches " + worst() + " " + onTheDay() + "; " + bearable();
  }

  private String bearable() {
    String limit = temperature(AnswerText.BEARABLE);
    List<Integer> working = clock.working();
    for (int i = 0; i < working.size(); i++) {
      double felt = day.trace().operative().at(working.get(i));
      if (felt >= AnswerText.BEARABLE) {
        return i == 0
            ? "it feels hotter than " + limit + " from the first working hour on"
            : "bearable (feels below " + limit + ") until " + clock.start(working.get(i));
      }
    }
    return "bearable (feels below " + limit + ") in all working hours";
  }

  /** The worst hour with its band: "82 °F by 5 pm (81–84 °F)". */
  private String worst() {
    return temperature(day.peakTemperature()) + " by " + clock.end(day.peakHour()) + inBand();
  }

  private String inBand() {
    return band.filter(known -> known.decidedBy().isPresent())
        .map(known -> " (" + Shown.range(known.low(), known.high(), units) + ")")
        .orElse("");
  }

  /** What the band says of a day that is held. */
  private String held() {
    boolean mayFail =
        band.map(known -> known.high() > day.setPoint() + LivedDay.TOLERANCE).orElse(false);
    return mayFail
        ? ", but up to "
            + temperature(band.get().high())
            + " if what you do not know turns out badly"
        : inBand();
  }

  private boolean isHeld(int hour) {
    return day.trace().air().at(hour) <= day.setPoint() + LivedDay.TOLERANCE;
  }

  private String onTheDay() {
    return "on a " + temperature(core.hotDay().peak()) + " day";
  }

  private String temperature(double celsius) {
    return Shown.temperature(celsius, units);
  }
}
