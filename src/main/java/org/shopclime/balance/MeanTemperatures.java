package org.shopclime.balance;

import org.shopclime.heat.Drivers;
import org.shopclime.heat.Network;
import org.shopclime.heat.SteadyRounds;
import org.shopclime.heat.SteadyState;

/**
 * Finds the mean temperatures of faces and rooms: for a network of constant coefficients these are
 * the steady temperatures under the means of the drivers.
 */
final class MeanTemperatures {

  /** Rounds where air passes between rooms, and how far a guess is moved towards what it led to. */
  private static final int MORE_ROUNDS = 30;

  private static final double ONWARD = 2.0 / 3;

  private MeanTemperatures() {}

  /** Sets the mean air flow into a room. */
  @FunctionalInterface
  interface Inflow {

    /**
     * Sets the flow among the drivers.
     *
     * @param into drivers
     * @param room index of the room
     * @param celsius its air temperature, °C
     */
    void set(Drivers into, int room, double celsius);
  }

  /**
   * The means.
   *
   * @param network the network
   * @param drivers means of its drivers, with holds and without air flows
   * @param before means that air flows are first reckoned with
   * @param rounds rounds in which floating rooms and the air that enters them find each other
   * @param inflow sets the air flow into a room
   * @param between air between rooms
   * @return means under these drivers
   */
  static Linearisation find(
      Network network,
      Drivers drivers,
      Linearisation before,
      int rounds,
      Inflow inflow,
      MeanPassages between) {
    int rooms = network.rooms();
    double[] warm = new double[rooms];
    for (int room = 0; room < rooms; room++) {
      warm[room] = before.star(room);
    }
    SteadyRounds each = new SteadyRounds(network, drivers);
    boolean changed = true;
    int most = between.isEmpty() ? rounds : MORE_ROUNDS;
    for (int round = 0; round < most && changed; round++) {
      changed = false;
      for (int room = 0; room < rooms; room++) {
        inflow.set(drivers, room, warm[room]);
      }
      between.set(drivers, warm);
      each.solve();
      for (int room = 0; room < rooms; room++) {
        changed |= warm[room] != each.air(room);
        warm[room] =
            between.isEmpty()
                ? each.air(room)
                : warm[room] + ONWARD * (each.air(room) - warm[room]);
      }
    }
    SteadyState.Solution steady = each.finish();
    Linearisation means = new Linearisation(network.chains(), rooms, 0);
    for (int chain = 0; chain < network.chains(); chain++) {
      means.left(chain, steady.leftFace(chain));
      means.right(chain, steady.rightFace(chain));
    }
    for (int room = 0; room < rooms; room++) {
      means.star(room, steady.star(room));
    }
    return means;
  }
}
