package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.PortableAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;

/** The figures of an answer, each with its meaning, in the order a shop owner asks for them. */
public final class SizeFigures {

  private SizeFigures() {}

  /**
   * The figures of an answer. Figures that there are none of, such as those of a unit where there
   * is no unit, are left out.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return figures
   */
  public static List<Figure> of(SizeAnswer answer, UnitSystem units) {
    Rows rows = new Rows(units, new WallClock(answer.shop().work(), answer.core().hotDay().date()));
    Optional<PortableAnswer> portable = PortableAnswer.of(answer);
    boolean adjusted = portable.map(PortableAnswer::typed).orElse(false);
    answer.unit().ifPresent(unit -> unit(rows, unit, adjusted));
    answer
        .recommended()
        .ifPresent(
            size -> rows.power("unit.recommendedBtuh", "Smallest usual size that holds", size));
    portable.ifPresent(told -> portable(rows, told));
    FloorAreaGuide.of(answer)
        .ifPresent(
            guide ->
                rows.power(
                    "unit.guideByFloorAreaBtuh",
                    "What the published guide by floor area says, work and walls unseen",
                    guide.usual()));
    peak(rows, answer.core());
    LivedDay without = answer.core().without();
    rows.temperature(
        "withoutUnit.indoorPeakF",
        "Warmest working hour without cooling",
        without.peakTemperature());
    rows.temperature(
        "withoutUnit.operativePeakF",
        "What it feels like then, walls and ceiling included",
        without.operativePeak());
    rows.temperature(
        "band.indoorPeakLowF",
        "Warmest working hour if what you do not know turns out well",
        answer.band().low());
    rows.temperature(
        "band.indoorPeakHighF", "Warmest working hour if it turns out badly", answer.band().high());
    answer
        .band()
        .decidedBy()
        .ifPresent(what -> rows.words("band.decidedBy", "What would narrow it most", what));
    winter(rows, answer);
    return rows.figures;
  }

  private static void unit(Rows rows, UnitAnswer unit, boolean adjusted) {
    LivedDay day = unit.day();
    rows.words("unit.holds", "Holds the wished temperature", day.holds() ? "yes" : "no");
    rows.temperature("unit.indoorPeakF", "Warmest working hour", day.peakTemperature());
    rows.words("unit.indoorPeakHour", "When that is", rows.clock.during(day.peakHour()));
    rows.temperature(
        "unit.operativePeakF",
        "What it feels like at worst, walls and ceiling included",
        day.operativePeak());
    unit.keepsUpTo()
        .ifPresent(
            limit -> rows.temperature("unit.keepsUpToF", "Keeps up until outside it is", limit));
    rows.power(
        "unit.ratedBtuh",
        adjusted
            ? "Capacity of its machine, before hose and air drawn in"
            : "Capacity on the label",
        unit.rated());
    rows.power(
        "unit.deliveredSensibleBtuh",
        "Heat it can take out in the warmest hour",
        unit.deliveredSensible());
    rows.power("unit.deliveredLatentBtuh", "Moisture it can take out then", unit.deliveredLatent());
  }

  private static void portable(Rows rows, PortableAnswer told) {
    rows.power(
        "unit.portable.saccBtuh",
        told.typed() ? "SACC on the label" : "SACC of a usual unit like it",
        told.adjusted());
    told.recommended()
        .ifPresent(
            size ->
                rows.power(
                    "unit.portable.recommendedSaccBtuh",
                    "SACC of the smallest usual size that holds",
                    size));
  }

  private static void peak(Rows rows, CoreAnswer core) {
    PeakLines peak = PeakLines.of(core.load());
    rows.power(
        "peak.totalBtuh", "Most to take out to stay at the wished temperature", peak.total());
    rows.power("peak.sensibleBtuh", "Heat in that", peak.sensible());
    rows.power("peak.latentBtuh", "Moisture in that", peak.latent());
    rows.words("peak.hour", "When that is", rows.clock.during(peak.hour()));
  }

  private static void winter(Rows rows, SizeAnswer answer) {
    rows.temperature(
        "winter.designF",
        answer.winter().typicalYear().isPresent()
            ? "Cold taken: 99 % of a typical year, less what such years leave out"
            : "Cold taken: the one you set",
        answer.winter().design());
    rows.power("winter.lossBtuh", "Heat lost then", answer.winter().loss());
    rows.words(
        "winter.heaterWatts",
        "Electric heater that covers it",
        Quantities.show(Kind.POWER, answer.winter().heater(), UnitSystem.SI));
  }

  /** Figures so far. */
  private static final class Rows {

    private final List<Figure> figures = new ArrayList<>();
    private final UnitSystem units;
    private final WallClock clock;

    Rows(UnitSystem units, WallClock clock) {
      this.units = units;
      this.clock = clock;
    }

    void words(String key, String label, String value) {
      figures.add(new Figure(key, label, value));
    }

    void temperature(String key, String label, double celsius) {
      if (Double.isFinite(celsius)) {
        words(key, label, Shown.temperature(celsius, units));
      }
    }

    void power(String key, String label, double watts) {
      words(key, label, Shown.power(watts, units));
    }
  }
}
