package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.load.PeakLoad;
import org.shopclime.load.RoomLoad;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.run.UnitPoint;

/**
 * The shop's unit against outdoor temperature: what it takes out flat out, and what has to be taken
 * out as the hot day gets cooler or hotter.
 *
 * @param curve the unit at every whole °F, rising outdoors, in room air of the next two figures
 * @param room room air, the wished temperature, °C
 * @param dewPoint its dew point, that of the warmest judged hour of the hot day, °C
 * @param loads what has to be taken out, the hot day moved bodily, rising; empty where the room is
 *     not meant to be cooled
 * @param hotDay index in {@code loads} of the hot day itself
 */
public record UnitSight(
    List<UnitPoint> curve, double room, double dewPoint, List<LoadPoint> loads, int hotDay) {

  /** Lowest and highest whole °F drawn, unless the hot day reaches farther. */
  private static final int LEAST = 65;

  private static final int MOST = 122;

  /** How far the hot day stays inside, °F. */
  private static final int ROOM = 5;

  /** How far the day is moved from one load to the next, K. */
  private static final double STEP = 4;

  private static final String HOT_EDGE = "OUTDOOR_HIGH";
  private static final String COOL_EDGE = "OUTDOOR_LOW";

  /** Copies the lists. */
  public UnitSight {
    curve = List.copyOf(curve);
    loads = List.copyOf(loads);
  }

  /**
   * What has to be taken out of the room, held all day, in the judged hour in which that is most.
   *
   * @param outdoor outdoor temperature in that hour, °C
   * @param sensible sensible load, W
   * @param latent latent load, W
   */
  public record LoadPoint(double outdoor, double sensible, double latent) {}

  /**
   * The unit of an answer.
   *
   * @param answer the answer
   * @return nothing if the shop has no unit
   */
  public static Optional<UnitSight> of(SizeAnswer answer) {
    return answer
        .core()
        .unit()
        .flatMap(day -> Sizing.cooling(answer.shop()).map(unit -> of(answer, day, unit)));
  }

  private static UnitSight of(SizeAnswer answer, LivedDay day, Cooling unit) {
    HotDay hot = answer.core().hotDay();
    double dewPoint = Math.min(day.trace().dewPoint().at(day.peakHour()), day.setPoint());
    List<Double> outdoors = new ArrayList<>();
    long first = Math.min(LEAST, Math.round(fahrenheit(hot.dryBulb().min())) - ROOM);
    long last = Math.max(MOST, Math.round(fahrenheit(hot.peak())) + ROOM);
    for (long degree = first; degree <= last; degree++) {
      outdoors.add((degree - 32) / 1.8);
    }
    UnitPoint.Surroundings air =
        new UnitPoint.Surroundings(
            day.setPoint(), dewPoint, hot.dayHumidityRatio(), hot.pressure());
    List<LoadPoint> loads = new ArrayList<>();
    int asItIs = 0;
    Set<Integer> judged = day.judged();
    ShopModel model = ShopModel.cooling(answer.shop(), hot, ShopModel.Holding.HELD);
    int room = answer.core().room();
    if (model.isCooled(room) && !judged.isEmpty()) {
      int below = (int) Math.floor((hot.peak() - outdoors.get(0)) / STEP);
      int above = (int) Math.floor((outdoors.get(outdoors.size() - 1) - hot.peak()) / STEP);
      asItIs = Math.max(0, below);
      for (int i = -asItIs; i <= above; i++) {
        loads.add(load(model, hot, room, judged, i * STEP));
      }
    }
    return new UnitSight(
        UnitPoint.curve(unit, air, outdoors), day.setPoint(), dewPoint, loads, asItIs);
  }

  private static LoadPoint load(
      ShopModel model, HotDay hot, int room, Set<Integer> judged, double kelvin) {
    ShopModel moved = kelvin == 0 ? model : model.shifted(kelvin);
    RoomLoad load =
        PeakLoad.totals(moved).rooms().stream()
            .filter(each -> each.room() == room)
            .findFirst()
            .orElseThrow();
    int worst = -1;
    for (int hour : judged) {
      if (worst < 0 || load.sensible().at(hour) > load.sensible().at(worst)) {
        worst = hour;
      }
    }
    return new LoadPoint(
        DesignDays.shifted(hot, kelvin).dryBulb().at(worst),
        load.sensible().at(worst),
        load.latent().at(worst));
  }

  private static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }

  /**
   * Where the sensible load first passes what the unit takes out.
   *
   * @return outdoor temperature in the worst hour, °C; empty if it does not pass in the range drawn
   */
  public OptionalDouble meets() {
    for (int i = 1; i < curve.size(); i++) {
      double before = shortfall(curve.get(i - 1));
      double after = shortfall(curve.get(i));
      if (before <= 0 && after > 0) {
        double way = before / (before - after);
        return OptionalDouble.of(
            curve.get(i - 1).outdoor()
                + way * (curve.get(i).outdoor() - curve.get(i - 1).outdoor()));
      }
    }
    return OptionalDouble.empty();
  }

  /** Load above capacity, W; NaN where no load is known. */
  private double shortfall(UnitPoint point) {
    for (int i = 1; i < loads.size(); i++) {
      LoadPoint low = loads.get(i - 1);
      LoadPoint high = loads.get(i);
      if (point.outdoor() >= low.outdoor() && point.outdoor() <= high.outdoor()) {
        double way = (point.outdoor() - low.outdoor()) / (high.outdoor() - low.outdoor());
        return low.sensible() + way * (high.sensible() - low.sensible()) - point.sensible();
      }
    }
    return Double.NaN;
  }

  /**
   * The unit at an outdoor temperature.
   *
   * @param celsius °C; beyond what is drawn, the nearest end
   * @return the nearest point of the curve
   */
  public UnitPoint at(double celsius) {
    UnitPoint nearest = curve.get(0);
    for (UnitPoint point : curve) {
      if (Math.abs(point.outdoor() - celsius) < Math.abs(nearest.outdoor() - celsius)) {
        nearest = point;
      }
    }
    return nearest;
  }

  /**
   * Lowest outdoor temperature the curves were tested at.
   *
   * @return °C; empty if that lies outside what is drawn, or if the unit does not feel it
   */
  public OptionalDouble coolEdge() {
    OptionalDouble edge = OptionalDouble.empty();
    for (int i = curve.size() - 1; i > 0; i--) {
      if (!is(curve.get(i), COOL_EDGE) && is(curve.get(i - 1), COOL_EDGE)) {
        edge = OptionalDouble.of(curve.get(i).outdoor());
      }
    }
    return edge;
  }

  /**
   * Highest outdoor temperature the curves were tested at.
   *
   * @return °C; empty as above
   */
  public OptionalDouble hotEdge() {
    for (int i = 1; i < curve.size(); i++) {
      if (is(curve.get(i), HOT_EDGE) && !is(curve.get(i - 1), HOT_EDGE)) {
        return OptionalDouble.of(curve.get(i - 1).outdoor());
      }
    }
    return OptionalDouble.empty();
  }

  private static boolean is(UnitPoint point, String limit) {
    return point.beyond().contains(limit);
  }
}
