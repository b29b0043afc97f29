package org.shopclime.plan;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shopclime.balance.CoolingHabit;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.balance.YearWeeks;
import org.shopclime.climate.HotDay;
import org.shopclime.run.Cooling;
import org.shopclime.run.PullDown;
import org.shopclime.run.RustWatch;
import org.shopclime.run.UnitSearch;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearRun;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Work;

/**
 * Runs a shop's unit through the year by each habit: left on, set back outside of work, on demand.
 *
 * <p>The lead before work is that of the hot day's first working morning ({@link PullDown}), in
 * whole hours as the year's plant hours are; where no lead is enough, the time that the owner
 * allows for cooling down. All habits but the first have it, so they ask the same of the working
 * hours.
 */
final class Habits {

  /** How much above the wished temperature the unit is set back at least, K: 5 °F. */
  private static final double LEAST = 5 / 1.8;

  private static final Set<DayOfWeek> WEEKEND = Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

  private static final double HOUR = 3600;

  private final Shop shop;
  private final HotDay day;
  private final YearWeather weather;
  private final Cooling unit;
  private final PriceBook prices;

  Habits(Shop shop, HotDay day, YearWeather weather, Cooling unit, PriceBook prices) {
    this.shop = shop;
    this.day = day;
    this.weather = weather;
    this.unit = unit;
    this.prices = prices;
  }

  /** One year to run. */
  private record Run(Habit habit, boolean weekendsOnly, ShopYear year) {}

  /**
   * Runs them all.
   *
   * @param described the owner's year, whose networks and sun are used again
   * @param steps told how far it is
   * @param from part of the whole that is done before
   * @param to part that is done after
   * @return answer; nothing if nobody ever works
   */
  Optional<HabitAnswer> answer(ShopYear described, Steps steps, double from, double to) {
    ShopModel model = ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
    Optional<PullDown> morning = new UnitSearch(model, unit.room()).pullDown(unit);
    if (morning.isEmpty()) {
      return Optional.empty();
    }
    double away =
        Math.max(shop.work().setBackTo(), described.plants().cooledTo(unit.room()) + LEAST);
    double lead =
        morning.get().lead().isPresent()
            ? morning.get().lead().getAsInt() * 60.0
            : shop.work().pullDown();
    int leadHours = (int) Math.ceil(lead / HOUR);
    List<Run> runs = new ArrayList<>(runs(described, away, leadHours, false));
    int own = runs.size();
    Set<DayOfWeek> days = shop.work().hours().days();
    if (!WEEKEND.containsAll(days)) {
      ShopYear weekends = ShopYear.of(onWeekends(), weather);
      runs.addAll(runs(weekends, away, leadHours, true));
    }
    List<HabitYear> years =
        Batch.within(steps, "habits of running the unit", from, to).run(runs, this::run).stream()
            .map(Batch.Outcome::orThrow)
            .toList();
    return Optional.of(
        new HabitAnswer(
            away,
            shop.work().setBackTo(),
            morning.get(),
            leadHours,
            YearWeeks.hottest(weather),
            YearWeeks.dampSpring(weather),
            years.subList(0, own),
            years.subList(own, years.size())));
  }

  private static List<Run> runs(ShopYear year, double away, int leadHours, boolean weekends) {
    return List.of(
        new Run(Habit.ALWAYS_ON, weekends, year.cooledBy(CoolingHabit.alwaysOn())),
        new Run(Habit.SET_BACK, weekends, year.cooledBy(new CoolingHabit(away, leadHours))),
        new Run(Habit.ON_DEMAND, weekends, year.cooledBy(CoolingHabit.onDemand(leadHours))));
  }

  private HabitYear run(Run asked) {
    YearResult year = YearRun.of(asked.year(), Optional.of(unit));
    return new HabitYear(
        asked.habit(),
        asked.weekendsOnly(),
        unit.room(),
        year,
        RustWatch.of(year, unit.room()),
        prices.cost(year));
  }

  private Shop onWeekends() {
    Schedule hours = shop.work().hours();
    Schedule moved = new Schedule(false, WEEKEND, hours.periods());
    return shop.withWork((Work) ShopParts.with(shop.work(), "hours", moved));
  }
}
