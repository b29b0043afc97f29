package org.shopclime.heat;

/** The temperatures a network comes to when its drivers never change. */
public final class SteadyState {

  private SteadyState() {}

  /**
   * Solves for the steady state: the sum of heat into every node is 0.
   *
   * @param network the network
   * @param drivers what drives it
   * @return temperatures and heat
   * @throws IllegalStateException if nothing fixes the temperature of some room or chain: no
   *     boundary, no air from outside and no held room reaches it; the message names it
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public static Solution solve(Network network, Drivers drivers) {
    Network.same(network, drivers.network);
    double[] temperatures = new double[network.temperatures()];
    double[] plant = new double[network.rooms()];
    Reduction reduction = new Reduction(network, 0);
    reduction.solve(new double[temperatures.length], drivers, temperatures);
    reduction.addPlant(1, drivers, plant);
    return new Solution(network, drivers.boundary.clone(), temperatures, plant);
  }

  /** A steady state. Numbers of rooms, chains and boundaries out of range are refused. */
  public static final class Solution {

    private final Network network;
    private final double[] boundary;
    private final double[] temperatures;
    private final double[] plant;

    Solution(Network network, double[] boundary, double[] temperatures, double[] plant) {
      this.network = network;
      this.boundary = boundary;
      this.temperatures = temperatures;
      this.plant = plant;
    }

    /**
     * Temperature of a room's air.
     *
     * @param room number of the room
     * @return °C
     */
    public double air(int room) {
      return temperatures[network.air(room)];
    }

    /**
     * Temperature of a room's star node; that of its air where nothing radiates.
     *
     * @param room number of the room
     * @return °C
     */
    public double star(int room) {
      return temperatures[network.star(room)];
    }

    /**
     * Temperature of a chain's left face.
     *
     * @param chain number of the chain
     * @return °C
     */
    public double leftFace(int chain) {
      return temperatures[network.leftFace(chain)];
    }

    /**
     * Temperature of a chain's right face.
     *
     * @param chain number of the chain
     * @return °C
     */
    public double rightFace(int chain) {
      return temperatures[network.rightFace(chain)];
    }

    /**
     * Temperature of a node.
     *
     * @param chain number of the chain
     * @param node number of the node, from 0 at the left face
     * @return °C
     */
    public double node(int chain, int node) {
      return temperatures[network.node(chain, node)];
    }

    /**
     * Heat put into a held room's air to hold it.
     *
     * @param room number of the room
     * @return W, above 0 when heating; 0 for a floating room
     */
    public double plant(int room) {
      return plant[network.air(room)];
    }

    /**
     * Heat out of a boundary into the network.
     *
     * @param index number of the boundary
     * @return W
     */
    public double boundaryHeat(int index) {
      Check.index("boundary", index, boundary.length);
      return network.boundaryHeat(index, boundary[index], temperatures);
    }

    double[] temperatures() {
      return temperatures.clone();
    }
  }
}
