package org.shopclime.heat;

import java.util.Arrays;

/**
 * Steps a network through time, factored once for one length of step. Drivers are constant over a
 * step (means).
 *
 * <p>Source of the scheme: R. Alexander, Diagonally implicit Runge-Kutta methods for stiff
 * O.D.E.'s, SIAM J. Numer. Anal. 14 (1977) 1006: two stages, second order, L-stable and stiffly
 * accurate, γ = 1 - 1/√2. Both stages have the same matrix C/(γ h) + G. Stage 1 starts from T_n,
 * stage 2 from T_n + ((1 - γ)/γ)(T_1 - T_n), and T_n+1 = T_2. Means over the step are (1 - γ) times
 * stage 1 plus γ times stage 2; with these, heat stored equals heat come in, to rounding. Nodes
 * without capacity follow at once, in both stages.
 *
 * <p>Error: falls with the square of the step ({@code MarchConvergenceTest}). A jump of the drivers
 * is overshot, by at most 21 %, in what answers faster than the step and has capacity (R(z) &lt; 0
 * for steps above 2.4 time constants, least at 8.2); what has none follows the driver exactly. Not
 * for several threads at once. Numbers of rooms, chains and boundaries out of range are refused
 * with an {@link IllegalArgumentException}. No method but the constructor, {@link #state} and
 * {@link #startSteady} allocates.
 */
public final class March {

  /** γ of the scheme, the root of γ² - 2 γ + 1/2 below 1. */
  private static final double GAMMA = 1 - Math.sqrt(0.5);

  private static final double ONWARD = (1 - GAMMA) / GAMMA;

  private final Network network;
  private final Reduction reduction;
  private final Drivers probe;
  private final double[] zero;

  private double[] before;
  private double[] now;
  private double[] next;
  private final double[] stage;
  private final double[] spareStage;
  private final double[] from;

  private final double[] plant;
  private final double[] plantAhead;
  private final double[] boundary;
  private boolean stepped;

  /**
   * Factors a network for one length of step; all temperatures are 0 °C at first.
   *
   * @param network the network
   * @param stepSeconds length of a step, s, above 0 and finite
   * @throws IllegalArgumentException if the step is out of that range
   */
  public March(Network network, double stepSeconds) {
    this.network = network;
    Check.positive("length of a step, s", stepSeconds);
    reduction = new Reduction(network, 1 / (GAMMA * stepSeconds));
    probe = new Drivers(network);
    int size = network.temperatures();
    zero = new double[size];
    before = new double[size];
    now = new double[size];
    next = new double[size];
    stage = new double[size];
    spareStage = new double[size];
    from = new double[size];
    plant = new double[network.rooms()];
    plantAhead = new double[network.rooms()];
    boundary = new double[network.boundaries()];
  }

  /**
   * Puts all temperatures to one value.
   *
   * @param celsius °C, finite
   * @throws IllegalArgumentException if it is not finite
   */
  public void start(double celsius) {
    Arrays.fill(now, Check.finite("temperature to start from, °C", celsius));
    rest();
  }

  /**
   * Puts all temperatures to the steady state under the drivers. Plant and boundary heat then read
   * as after an endless step under them.
   *
   * @param d drivers
   * @throws IllegalStateException as {@link SteadyState#solve}
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public void startSteady(Drivers d) {
    SteadyState.Solution steady = SteadyState.solve(network, d);
    System.arraycopy(steady.temperatures(), 0, now, 0, now.length);
    rest();
    for (int r = 0; r < plant.length; r++) {
      plant[r] = steady.plant(r);
    }
    System.arraycopy(d.boundary, 0, boundary, 0, boundary.length);
    stepped = true;
  }

  /**
   * All temperatures at the end of the last step, to be handed back to {@link #restore}.
   *
   * @return a copy, °C: air of the rooms, stars of the rooms, nodes of chain after chain
   */
  public double[] state() {
    return now.clone();
  }

  /**
   * Puts all temperatures to those of an earlier {@link #state}. What is told of the last step then
   * reads as at rest: means equal to the state, no plant, no heat.
   *
   * @param state from a march of the same network; copied
   * @throws IllegalArgumentException if the number of values does not fit or one is not finite
   */
  public void restore(double[] state) {
    if (state.length != now.length) {
      throw new IllegalArgumentException(
          "a state of " + state.length + " values; takes " + now.length);
    }
    for (double value : state) {
      Check.finite("temperature in a state, °C", value);
    }
    System.arraycopy(state, 0, now, 0, now.length);
    rest();
  }

  private void rest() {
    System.arraycopy(now, 0, before, 0, now.length);
    System.arraycopy(now, 0, stage, 0, now.length);
    Arrays.fill(plant, 0);
    stepped = false;
  }

  /**
   * Advances one step.
   *
   * @param d drivers, constant over the step
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public void step(Drivers d) {
    Network.same(network, d.network);
    Arrays.fill(plant, 0);
    reduction.solve(now, d, stage);
    reduction.addPlant(1 - GAMMA, d, plant);
    onward(now, stage);
    reduction.solve(from, d, next);
    reduction.addPlant(GAMMA, d, plant);
    double[] old = before;
    before = now;
    now = next;
    next = old;
    System.arraycopy(d.boundary, 0, boundary, 0, boundary.length);
    stepped = true;
  }

  /** Where stage 2 starts from. */
  private void onward(double[] start, double[] first) {
    for (int i = 0; i < from.length; i++) {
      from[i] = start[i] + ONWARD * (first[i] - start[i]);
    }
  }

  private double[] trial(double[] start, Drivers d) {
    reduction.solve(start, d, spareStage);
    onward(start, spareStage);
    reduction.solve(from, d, next);
    return next;
  }

  private double mean(int i) {
    return (1 - GAMMA) * stage[i] + GAMMA * now[i];
  }

  /**
   * Air of a room at the end of the last step.
   *
   * @param room number of the room
   * @return °C
   */
  public double air(int room) {
    return now[network.air(room)];
  }

  /**
   * Air of a room, mean over the last step.
   *
   * @param room number of the room
   * @return °C
   */
  public double meanAir(int room) {
    return mean(network.air(room));
  }

  /**
   * Star node of a room at the end of the last step; its air where nothing radiates.
   *
   * @param room number of the room
   * @return °C
   */
  public double star(int room) {
    return now[network.star(room)];
  }

  /**
   * Star node of a room, mean over the last step; its air where nothing radiates.
   *
   * @param room number of the room
   * @return °C
   */
  public double meanStar(int room) {
    return mean(network.star(room));
  }

  /**
   * Left face of a chain at the end of the last step.
   *
   * @param chain number of the chain
   * @return °C
   */
  public double leftFace(int chain) {
    return now[network.leftFace(chain)];
  }

  /**
   * Left face of a chain, mean over the last step.
   *
   * @param chain number of the chain
   * @return °C
   */
  public double meanLeftFace(int chain) {
    return mean(network.leftFace(chain));
  }

  /**
   * Right face of a chain at the end of the last step.
   *
   * @param chain number of the chain
   * @return °C
   */
  public double rightFace(int chain) {
    return now[network.rightFace(chain)];
  }

  /**
   * Right face of a chain, mean over the last step.
   *
   * @param chain number of the chain
   * @return °C
   */
  public double meanRightFace(int chain) {
    return mean(network.rightFace(chain));
  }

  /**
   * A node of a chain at the end of the last step.
   *
   * @param chain number of the chain
   * @param node number of the node, from 0 at the left face
   * @return °C
   */
  public double node(int chain, int node) {
    return now[network.node(chain, node)];
  }

  /**
   * Heat put into a held room's air to hold it, mean over the last step.
   *
   * @param room number of the room
   * @return W, above 0 when heating; 0 for a floating room and before the first step
   */
  public double plant(int room) {
    return plant[network.air(room)];
  }

  /**
   * Heat the network stored over the last step, in the air of rooms and the nodes of chains.
   *
   * @return J; 0 before the first step
   */
  public double storedHeatChange() {
    double heat = 0;
    int rooms = network.rooms();
    for (int r = 0; r < rooms; r++) {
      heat += network.airCapacity[r] * (now[r] - before[r]);
    }
    for (int i = 0; i < network.capacity.length; i++) {
      heat += network.capacity[i] * (now[2 * rooms + i] - before[2 * rooms + i]);
    }
    return heat;
  }

  /**
   * Heat out of a boundary into the network, mean over the last step.
   *
   * @param index number of the boundary
   * @return W; 0 before the first step
   */
  public double boundaryHeat(int index) {
    Check.index("boundary", index, boundary.length);
    if (!stepped) {
      return 0;
    }
    return (1 - GAMMA) * network.boundaryHeat(index, boundary[index], stage)
        + GAMMA * network.boundaryHeat(index, boundary[index], now);
  }

  /**
   * How the air of one room at the end of a step answers to constant heat put into the air of one
   * room over that step. Exact, as the network is linear.
   *
   * @param d drivers, of which only flows and holds matter
   * @param into number of the room the heat goes into
   * @param of number of the room whose air is asked for
   * @return K/W, 0 or more; 0 if either room is held
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public double response(Drivers d, int into, int of) {
    Network.same(network, d.network);
    int source = network.air(into);
    int asked = network.air(of);
    probe.takeFlows(d);
    probe.airSource[source] = 1;
    double answer = trial(zero, probe)[asked];
    probe.airSource[source] = 0;
    return answer;
  }

  /**
   * Where a step would lead, without making it: for controls.
   *
   * @param d drivers, constant over the step
   * @param room number of the room asked for
   * @return its air at the end of that step, °C
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public double lookAhead(Drivers d, int room) {
    Network.same(network, d.network);
    return trial(now, d)[network.air(room)];
  }

  /**
   * What a step would take to hold a room, without making it: for controls.
   *
   * @param d drivers, constant over the step, that hold the room
   * @param room number of the room asked for
   * @return plant heat into its air, mean over that step, W; 0 for a floating room
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public double lookAheadPlant(Drivers d, int room) {
    Network.same(network, d.network);
    Arrays.fill(plantAhead, 0);
    reduction.solve(now, d, spareStage);
    reduction.addPlant(1 - GAMMA, d, plantAhead);
    onward(now, spareStage);
    reduction.solve(from, d, next);
    reduction.addPlant(GAMMA, d, plantAhead);
    return plantAhead[network.air(room)];
  }
}
