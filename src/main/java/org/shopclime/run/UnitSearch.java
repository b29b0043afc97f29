package org.shopclime.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;

/**
 * Answers that take many lived days: up to what heat a unit keeps up, and which size would hold.
 */
public final class UnitSearch {

  /** Range of outdoor peaks searched, °C: 60 to 130 °F. */
  private static final double COLDEST = (60 - 32) / 1.8;

  private static final double HOTTEST = (130 - 32) / 1.8;
  private static final double FINENESS = 0.05 / 1.8;

  private final ShopModel model;
  private final int room;
  private final DayRunner.State idle;

  /**
   * A search on one shop and day.
   *
   * @param model the shop on its day
   * @param room index of the room that is cooled
   */
  public UnitSearch(ShopModel model, int room) {
    this.model = model;
    this.room = room;
    DayRunner runner = new DayRunner(model, Optional.empty(), room);
    runner.startSteady();
    LivedDay.repeat(runner, DayKind.IDLE);
    this.idle = runner.state();
  }

  /**
   * The lived day of a unit on the day as it is.
   *
   * @param cooling the unit, if any
   * @return the day
   */
  public LivedDay day(Optional<Cooling> cooling) {
    DayRunner runner = new DayRunner(model, cooling, room);
    runner.restore(idle);
    return LivedDay.afterIdle(model, runner, room);
  }

  /**
   * The lived day with the outdoor temperature moved bodily.
   *
   * @param cooling the unit
   * @param kelvin how far, K
   * @return the day
   */
  public LivedDay shifted(Cooling cooling, double kelvin) {
    return LivedDay.of(model.shifted(kelvin), Optional.of(cooling), room);
  }

  /**
   * Highest outdoor peak at which a unit still holds, the hot day moved bodily.
   *
   * @param cooling the unit
   * @return °C, to 0.1 °F; empty if it fails at 60 °F or still holds at 130 °F
   */
  public OptionalDouble keepsUpTo(Cooling cooling) {
    double peak = model.outdoorPeak();
    double low = COLDEST - peak;
    double high = HOTTEST - peak;
    if (!shifted(cooling, low).holds() || shifted(cooling, high).holds()) {
      return OptionalDouble.empty();
    }
    while (high - low > FINENESS) {
      double middle = (low + high) / 2;
      if (shifted(cooling, middle).holds()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of(peak + low);
  }

  /**
   * Smallest standard size that holds.
   *
   * @param ofCapacity makes the unit of a rated capacity, W
   * @return rated capacity, W; empty if the largest does not hold
   */
  public OptionalDouble smallestThatHolds(DoubleFunction<Cooling> ofCapacity) {
    List<Double> sizes = Cooling.sizes();
    int low = -1;
    int high = sizes.size();
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (day(Optional.of(ofCapacity.apply(sizes.get(middle)))).holds()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high == sizes.size() ? OptionalDouble.empty() : OptionalDouble.of(sizes.get(high));
  }
}
