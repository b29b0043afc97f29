package org.shopclime.load;

import java.util.function.IntPredicate;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.SteadyState;

/**
 * Sensible loads of a shop on a day that never changes, by one solution for each question instead
 * of days run until they repeat.
 */
final class SteadyLoad {

  private static final int MOST_ROUNDS = 500;
  private static final double FOUND = 1e-12;

  private final ShopModel model;
  private final double[] flow;

  SteadyLoad(ShopModel model) {
    this.model = model;
    flow = new double[model.rooms()];
    double[] warm = new double[model.rooms()];
    for (int room = 0; room < warm.length; room++) {
      warm[room] = model.meanTemperature(room);
    }
    double moved = 1;
    for (int round = 0; round < MOST_ROUNDS && moved > FOUND; round++) {
      for (int room = 0; room < warm.length; room++) {
        flow[room] =
            model.streams().total(room, warm[room], DayKind.WORKING, 0, DaySlots.PER_HOUR)
                * MoistAir.humidHeat(
                    model.isCooled(room)
                        ? model.wishedHumidityRatio(room)
                        : model.outdoorHumidityRatio(1));
      }
      SteadyState.Solution steady = solve(component -> true, 0, true);
      moved = 0;
      for (int room = 0; room < warm.length; room++) {
        double half = (warm[room] + steady.air(room)) / 2;
        moved = Math.max(moved, Math.abs(half - warm[room]));
        warm[room] = half;
      }
    }
    if (moved > FOUND) {
      throw new IllegalStateException("rooms and air flows still move by " + moved + " K");
    }
  }

  /** Heat that faces and outdoor air bring to all cooled rooms, W. */
  double total() {
    SteadyState.Solution steady = solve(component -> true, 0, true);
    double total = 0;
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        total += flow[room] * (model.outdoor(1) - model.setPoint(room)) - steady.plant(room);
      }
    }
    return total;
  }

  /** Heat that one line of a cooled room's faces brings to it, W. */
  double line(int room, int component) {
    int[] lineOf = model.linesOf(room);
    return -solve(other -> lineOf[other] == component, model.setPoint(room), false).plant(room);
  }

  private SteadyState.Solution solve(IntPredicate counts, double reference, boolean absolute) {
    DayDrivers day = model.drivers(DayKind.WORKING, counts, reference);
    Drivers drivers = new Drivers(model.network());
    day.fillMeans(drivers);
    boolean[] airCounts = new boolean[model.rooms()];
    model.components().forEach(each -> airCounts[each.room()] = counts.test(each.index()));
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        drivers.hold(room, absolute ? model.setPoint(room) : 0);
      } else {
        drivers.inflow(room, flow[room], airCounts[room] ? model.outdoor(1) - reference : 0);
      }
    }
    return SteadyState.solve(model.network(), drivers);
  }
}
