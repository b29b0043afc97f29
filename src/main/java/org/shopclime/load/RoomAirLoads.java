package org.shopclime.load;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Waves;

/**
 * Heat and water that air from other rooms brings into a held room, as {@link AirLoads} has it of
 * outdoor air: sensible m (h(Tj, Wr) - h(Ti, Wr)), latent m (h(Tj, Wj) - h(Tj, Wr)).
 *
 * <p>A held room's water is that of its wished humidity. A floating room's is where the air that
 * enters it, its gains and the air of its neighbours would hold it for good in each half hour, no
 * moister than saturated; what its walls and wood store is left out here, the lived day counts it.
 */
final class RoomAirLoads {

  private static final int STEPS = Waves.STEPS;
  private static final int SLOTS = DaySlots.COUNT / STEPS;

  private final ShopModel model;
  private final HeldDay day;
  private final RoomsAir between;

  /** Humidity ratio of each room by half hour, kg/kg. */
  private final double[][] water;

  RoomAirLoads(ShopModel model, HeldDay day) {
    this.model = model;
    this.day = day;
    between = day.between();
    water = new double[between.count() == 0 ? 0 : model.rooms()][STEPS];
    for (int step = 0; water.length > 0 && step < STEPS; step++) {
      findWater(step);
    }
  }

  private void findWater(int step) {
    int rooms = water.length;
    double outdoor = model.outdoorHumidityRatio(hour(step));
    double[][] matrix = new double[rooms][rooms];
    double[] found = new double[rooms];
    for (int room = 0; room < rooms; room++) {
      matrix[room][room] = 1;
      if (model.isCooled(room)) {
        found[room] = model.wishedHumidityRatio(room);
        continue;
      }
      double fresh = day.flow(room, step) / MoistAir.humidHeat(outdoor);
      double all = fresh;
      double comes = fresh * outdoor + gain(room, step);
      for (int way = 0; way < between.count(); way++) {
        int other = between.other(way, room);
        if (other >= 0) {
          matrix[room][other] -= between.flow(way, step);
          all += between.flow(way, step);
        }
      }
      matrix[room][room] = all;
      found[room] = comes;
      if (all == 0) {
        matrix[room][room] = 1;
        found[room] = outdoor;
      }
    }
    new Factors(matrix).solve(found);
    for (int room = 0; room < rooms; room++) {
      double most = MoistAir.saturationHumidityRatio(day.steps(room)[step], model.pressure());
      water[room][step] = Math.max(0, Math.min(found[room], most));
    }
  }

  private double gain(int room, int step) {
    double[] gains = model.latentGains(DayKind.WORKING);
    double gain = 0;
    for (int slot = 0; slot < SLOTS; slot++) {
      gain += gains[room * DaySlots.COUNT + step * SLOTS + slot] / SLOTS;
    }
    return gain;
  }

  /** Lines of a held room, one for each way into another. */
  List<Line> lines(int room) {
    List<Line> lines = new ArrayList<>();
    for (int way = 0; way < between.count(); way++) {
      int other = between.other(way, room);
      if (other >= 0) {
        Profile there = day.air(other);
        lines.add(
            new Line(
                between.name(way) + ": air from " + model.roomName(other),
                ComponentKind.ROOM_AIR,
                0,
                0,
                Profile.of(hour -> there.at(hour) - model.setPoint(room)),
                hourly(step(way, room, other, false)),
                hourly(step(way, room, other, true))));
      }
    }
    return lines;
  }

  /** Sensible heat that comes to a held room by all ways together, W. */
  Profile sensible(int room) {
    return together(room, false);
  }

  /** The same of latent heat. */
  Profile latent(int room) {
    return together(room, true);
  }

  private Profile together(int room, boolean latent) {
    double[] sum = new double[STEPS];
    for (int way = 0; way < between.count(); way++) {
      int other = between.other(way, room);
      if (other >= 0) {
        double[] each = step(way, room, other, latent);
        for (int step = 0; step < STEPS; step++) {
          sum[step] += each[step];
        }
      }
    }
    return hourly(sum);
  }

  private double[] step(int way, int room, int other, boolean latent) {
    double[] steps = new double[STEPS];
    double[] there = day.steps(other);
    double wished = model.wishedHumidityRatio(room);
    double inside = MoistAir.enthalpy(model.setPoint(room), wished);
    for (int step = 0; step < STEPS; step++) {
      double dry = MoistAir.enthalpy(there[step], wished);
      double brings =
          latent ? MoistAir.enthalpy(there[step], water[other][step]) - dry : dry - inside;
      steps[step] = between.flow(way, step) * brings;
    }
    return steps;
  }

  private static Profile hourly(double[] steps) {
    int each = STEPS / Profile.HOURS;
    return Profile.of(
        hour -> {
          double sum = 0;
          for (int i = 0; i < each; i++) {
            sum += steps[(hour - 1) * each + i];
          }
          return sum / each;
        });
  }

  private static int hour(int step) {
    return step * Profile.HOURS / STEPS + 1;
  }
}
