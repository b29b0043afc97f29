package org.shopclime.heat;

/**
 * Steady states of one network of which only the air flows differ: the chains are eliminated and
 * driven once, each round solves for air and stars alone.
 */
public final class SteadyRounds {

  private final Network network;
  private final Drivers drivers;
  private final Reduction reduction;
  private final double[] temperatures;

  /**
   * Eliminates and drives the chains.
   *
   * @param network the network
   * @param drivers what drives it; air flows and their temperatures may be changed between rounds,
   *     nothing else
   * @throws IllegalStateException if a chain sees nothing at either end
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public SteadyRounds(Network network, Drivers drivers) {
    Network.same(network, drivers.network);
    this.network = network;
    this.drivers = drivers;
    temperatures = new double[network.temperatures()];
    reduction = new Reduction(network, 0);
    reduction.driveStill(drivers, temperatures);
  }

  /**
   * Solves for air and stars under the air flows as they now are.
   *
   * @throws IllegalStateException if nothing fixes the temperature of some room; the message names
   *     it
   */
  public void solve() {
    reduction.solveRooms(drivers, temperatures);
  }

  /**
   * Temperature of a room's air in the last round.
   *
   * @param room number of the room
   * @return °C
   */
  public double air(int room) {
    return temperatures[network.air(room)];
  }

  /**
   * All of the last round. It ends the rounds.
   *
   * @return temperatures and heat
   */
  public SteadyState.Solution finish() {
    double[] plant = new double[network.rooms()];
    reduction.spread(temperatures);
    reduction.addPlant(1, drivers, plant);
    return new SteadyState.Solution(network, drivers.boundary.clone(), temperatures, plant);
  }
}
