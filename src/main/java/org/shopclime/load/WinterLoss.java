package org.shopclime.load;

import org.shopclime.air.MoistAir;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.MeanPassages;
import org.shopclime.balance.Passages;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.SteadyState;

/**
 * Heat a shop loses in steady cold, without sun and without anything that gives off heat: what a
 * heater must cover.
 *
 * <p>A slab with an edge along outdoors under a cooled room loses what the trade reckons: F-factor
 * times edge times indoor less outdoor temperature, in place of the network's heat into the ground.
 * On the hot day the network's ground stands (ISO 13370 with the ground's own temperature), as the
 * ground then takes heat out of the room while it is hotter outdoors. In the cold the rim of the
 * slab follows the air of the design night, which a mean over slab and month does not tell. Floors
 * that are no slabs, slabs without such an edge and those of floating rooms stay as the network has
 * them.
 *
 * <p>Source: F-factors of ASHRAE 90.1, Table A6.3; steady heat balance otherwise.
 *
 * <p>Limit: insulation under the whole slab and what its soil conducts do not count in the F-factor
 * taken: 0.73 BTU/(h·ft·°F) where the table has 0.36 for R-10 under it all.
 */
public final class WinterLoss {

  /** Rounds in which floating rooms and their leakage find each other. */
  private static final int ROUNDS = 10;

  /** The same where air passes between rooms, the guesses moved part of the way. */
  private static final int MORE_ROUNDS = 40;

  private WinterLoss() {}

  /**
   * Loss of all cooled rooms held at one temperature.
   *
   * @param model the shop in winter
   * @param indoor temperature held, °C
   * @return W, through faces and by outdoor air (sensible only)
   */
  public static double of(ShopModel model, double indoor) {
    boolean[] face = new boolean[model.components().size()];
    model
        .components()
        .forEach(
            component ->
                face[component.index()] =
                    component.kind().isFace() || component.kind() == ComponentKind.LEAKAGE);
    DayDrivers day = model.drivers(DayKind.IDLE, component -> face[component], 0);
    Drivers drivers = new Drivers(model.network());
    day.fillMeans(drivers);
    double outdoor = model.outdoor(1);
    double heat = MoistAir.humidHeat(model.outdoorHumidityRatio(1));
    double[] warm = new double[model.rooms()];
    for (int room = 0; room < model.rooms(); room++) {
      warm[room] = model.isCooled(room) ? indoor : outdoor;
    }
    double air = 0;
    SteadyState.Solution steady = null;
    int idle = Passages.plan(DayKind.IDLE);
    MeanPassages between =
        new MeanPassages(
            model.passages(), way -> model.passages().open(way, idle, 0, DaySlots.PER_HOUR), heat);
    double onward = between.isEmpty() ? 1 : RoomsAir.ONWARD;
    int rounds = between.isEmpty() ? ROUNDS : MORE_ROUNDS;
    for (int round = 0; round < rounds; round++) {
      air = 0;
      for (int room = 0; room < model.rooms(); room++) {
        double flow =
            model.streams().total(room, warm[room], DayKind.IDLE, 0, DaySlots.PER_HOUR) * heat;
        if (model.isCooled(room)) {
          drivers.hold(room, indoor);
          air += flow * (indoor - outdoor);
        } else {
          drivers.inflow(room, flow, outdoor);
        }
      }
      between.set(drivers, warm);
      steady = SteadyState.solve(model.network(), drivers);
      for (int room = 0; room < model.rooms(); room++) {
        warm[room] =
            onward == 1 ? steady.air(room) : warm[room] + onward * (steady.air(room) - warm[room]);
      }
    }
    double loss = air;
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        loss += steady.plant(room);
      }
    }
    for (int chain = 0; chain < model.network().chains(); chain++) {
      double edge = model.edgeLossPerKelvin(chain);
      if (edge > 0) {
        loss += edge * (indoor - outdoor) + steady.boundaryHeat(chain);
      }
    }
    return loss;
  }
}
