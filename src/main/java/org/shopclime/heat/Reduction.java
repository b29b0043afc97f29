package org.shopclime.heat;

/**
 * A network at one rate of storing, with all chains eliminated once and for all. It solves, for
 * every node, C rate (T - before) = sum of conductance (T_neighbour - T) + source.
 *
 * <p>A chain is a tridiagonal system, solved by elimination from left to right (Thomas) with pivots
 * made of sums only, and it meets the rest of the network at its two faces. The response of its
 * nodes to 1 W on a face that looks into a room (influence) does not change, so each solution is:
 * the chains as though all rooms were at 0 °C, the {@link Core}, and the influences times the
 * drives of the rooms.
 */
final class Reduction {

  private final Network network;
  private final Core core;

  /** C rate of each node of the chains and of each room's air, W/K. */
  private final double[] storage;

  private final double[] airStorage;

  /** 1 / pivot of each node, K/W. */
  private final double[] inverse;

  /** Share of the left neighbour, and of the right one, in a node's temperature. */
  private final double[] fromLeft;

  private final double[] fromRight;

  /** Response of each node to 1 W on the left, and on the right face, where that sees a room. */
  private final double[] leftInfluence;

  private final double[] rightInfluence;

  private final double[] drive;
  private final double[] x;

  /** Drives of the rooms in the steady state without air flows. */
  private double[] still = {};

  /**
   * Eliminates the chains.
   *
   * @param network the network
   * @param rate 1/s, above 0 for a step; 0 for the steady state
   * @throws IllegalStateException if rate is 0 and a chain sees nothing at either end
   */
  Reduction(Network network, double rate) {
    this.network = network;
    int nodes = network.capacity.length;
    storage = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      storage[i] = network.capacity[i] * rate;
    }
    airStorage = new double[network.rooms()];
    inverse = new double[nodes];
    fromLeft = new double[nodes];
    fromRight = new double[nodes];
    leftInfluence = new double[nodes];
    rightInfluence = new double[nodes];
    core = new Core(network);
    drive = new double[core.size()];
    x = new double[core.size()];
    for (int r = 0; r < network.rooms(); r++) {
      airStorage[r] = network.airCapacity[r] * rate;
      core.ground(r, airStorage[r]);
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      core.ground(network.linkRoom[l], network.linkConductance[l]);
    }
    double[] known = storage.clone();
    for (int k = 0; k < network.chains(); k++) {
      eliminate(k);
      couple(k, known);
    }
  }

  private void eliminate(int k) {
    int first = network.start[k];
    int last = network.start[k + 1] - 1;
    // Conductance from node i to all that is known, through itself and through what lies left.
    double known = endConductance(2 * k);
    for (int i = first; i <= last; i++) {
      known += storage[i];
      if (i == last) {
        known += endConductance(2 * k + 1);
      }
      double pivot = known + network.conductance[i];
      if (!(pivot > 0)) {
        throw new IllegalStateException(
            "nothing fixes the temperature of chain " + k + ": it is insulated at both ends");
      }
      inverse[i] = 1 / pivot;
      fromRight[i] = network.conductance[i] * inverse[i];
      if (i > first) {
        fromLeft[i] = network.conductance[i - 1] * inverse[i];
      }
      known = fromRight[i] * known;
    }
  }

  /**
   * Ties the rooms at both ends of a chain to each other and to what is known.
   *
   * @param known conductance from each node to its own store; used up
   */
  private void couple(int k, double[] known) {
    int first = network.start[k];
    int last = network.start[k + 1] - 1;
    int left = 2 * k;
    int right = 2 * k + 1;
    boolean leftRoom = network.endRoom[left] >= 0;
    boolean rightRoom = network.endRoom[right] >= 0;
    if (leftRoom) {
      leftInfluence[first] = 1;
      sweep(first, last, leftInfluence);
    }
    if (rightRoom) {
      rightInfluence[last] = 1;
      sweep(first, last, rightInfluence);
    }
    known[first] += network.endOuter[left];
    known[last] += network.endOuter[right];
    sweep(first, last, known);
    if (leftRoom) {
      ground(left, known[first]);
      tie(left, left, leftInfluence[first]);
    }
    if (rightRoom) {
      ground(right, known[last]);
      tie(right, right, rightInfluence[last]);
    }
    if (leftRoom && rightRoom) {
      tie(left, right, rightInfluence[first]);
      tie(right, left, leftInfluence[last]);
    }
  }

  private double endConductance(int e) {
    return network.endOuter[e] + network.endConvective[e] + network.endRadiant[e];
  }

  private void ground(int e, double share) {
    int room = network.endRoom[e];
    core.ground(room, network.endConvective[e] * share);
    if (network.endRadiant[e] > 0) {
      core.ground(core.starRow(room), network.endRadiant[e] * share);
    }
  }

  /** Ties air and star at end e to air and star at end f. */
  private void tie(int e, int f, double influence) {
    int air = network.endRoom[e];
    int otherAir = network.endRoom[f];
    int star = core.starRow(air);
    int otherStar = core.starRow(otherAir);
    double convective = network.endConvective[e] * influence;
    double radiant = network.endRadiant[e] * influence;
    core.tie(air, otherAir, convective * network.endConvective[f]);
    if (otherStar >= 0) {
      core.tie(air, otherStar, convective * network.endRadiant[f]);
    }
    if (star >= 0) {
      core.tie(star, otherAir, radiant * network.endConvective[f]);
    }
    if (star >= 0 && otherStar >= 0) {
      core.tie(star, otherStar, radiant * network.endRadiant[f]);
    }
  }

  /** Solves one chain in place: heat in, temperatures out. */
  private void sweep(int first, int last, double[] t) {
    double left = t[first] * inverse[first];
    t[first] = left;
    for (int i = first + 1; i <= last; i++) {
      left = t[i] * inverse[i] + fromLeft[i] * left;
      t[i] = left;
    }
    double right = left;
    for (int i = last - 1; i >= first; i--) {
      right = t[i] + fromRight[i] * right;
      t[i] = right;
    }
  }

  /**
   * Solves the network.
   *
   * @param before temperatures the stores come from (layout of {@link Network#temperatures})
   * @param d drivers
   * @param out temperatures found; another array than {@code before}
   * @throws IllegalStateException if nothing fixes the temperature of a room
   */
  void solve(double[] before, Drivers d, double[] out) {
    core.prepare(d);
    driveRooms(before, d);
    driveChains(before, d, out);
    rooms(d, out);
    spread(out);
  }

  private void rooms(Drivers d, double[] out) {
    int rooms = airStorage.length;
    System.arraycopy(drive, 0, x, 0, x.length);
    for (int r = 0; r < rooms; r++) {
      if (d.held[r]) {
        x[r] = d.holdTemperature[r];
      }
    }
    core.solve(x);
    for (int r = 0; r < rooms; r++) {
      int star = core.starRow(r);
      out[r] = x[r];
      out[rooms + r] = star >= 0 ? x[star] : x[r];
    }
  }

  /**
   * Drives the chains for the steady state without air flows.
   *
   * @param d drivers
   * @param out the chains as though all rooms were at 0 °C
   */
  void driveStill(Drivers d, double[] out) {
    double[] zero = new double[out.length];
    for (int r = 0; r < airStorage.length; r++) {
      drive[r] = d.airSource[r];
    }
    driveStarsAndLinks(d);
    driveChains(zero, d, out);
    still = drive.clone();
  }

  /**
   * Solves for air and stars under the air flows of the drivers, all else as it was driven.
   *
   * @param d the drivers of {@link #driveStill}, with any air flows
   * @param out takes air and stars
   */
  void solveRooms(Drivers d, double[] out) {
    core.prepare(d);
    System.arraycopy(still, 0, drive, 0, drive.length);
    for (int r = 0; r < airStorage.length; r++) {
      drive[r] += d.inflow[r] * d.inflowTemperature[r];
    }
    rooms(d, out);
  }

  private void driveRooms(double[] before, Drivers d) {
    for (int r = 0; r < airStorage.length; r++) {
      drive[r] = airStorage[r] * before[r] + d.airSource[r] + d.inflow[r] * d.inflowTemperature[r];
    }
    driveStarsAndLinks(d);
  }

  private void driveStarsAndLinks(Drivers d) {
    for (int r = 0; r < airStorage.length; r++) {
      int star = core.starRow(r);
      if (star >= 0) {
        drive[star] = d.starSource[r];
      } else {
        drive[r] += d.starSource[r];
      }
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      drive[network.linkRoom[l]] +=
          network.linkConductance[l] * d.boundary[network.linkBoundary[l]];
    }
  }

  /** The chains as though all rooms were at 0 °C, and what their faces then give to the rooms. */
  private void driveChains(double[] before, Drivers d, double[] out) {
    double[] store = storage;
    double[] inv = inverse;
    double[] fl = fromLeft;
    double[] fr = fromRight;
    double[] source = d.nodeSource;
    int shift = 2 * airStorage.length;
    int chains = network.chains();
    for (int k = 0; k < chains; k++) {
      int first = network.start[k];
      int last = network.start[k + 1] - 1;
      double leftHeat = outerHeat(2 * k, d);
      double rightHeat = outerHeat(2 * k + 1, d);
      double left = 0;
      for (int i = first; i <= last; i++) {
        double heat = store[i] * before[shift + i] + source[i];
        if (i == first) {
          heat += leftHeat;
        }
        if (i == last) {
          heat += rightHeat;
        }
        left = heat * inv[i] + fl[i] * left;
        out[shift + i] = left;
      }
      double right = left;
      for (int i = last - 1; i >= first; i--) {
        right = out[shift + i] + fr[i] * right;
        out[shift + i] = right;
      }
      giveToRoom(2 * k, right);
      giveToRoom(2 * k + 1, left);
    }
  }

  private double outerHeat(int e, Drivers d) {
    int boundary = network.endBoundary[e];
    return boundary >= 0
        ? d.endSource[e] + network.endOuter[e] * d.boundary[boundary]
        : d.endSource[e];
  }

  private void giveToRoom(int e, double face) {
    int room = network.endRoom[e];
    if (room >= 0) {
      drive[room] += network.endConvective[e] * face;
      if (network.endRadiant[e] > 0) {
        drive[core.starRow(room)] += network.endRadiant[e] * face;
      }
    }
  }

  /** Adds to all nodes of the chains what the rooms at their ends do to them. */
  void spread(double[] out) {
    int shift = 2 * airStorage.length;
    int chains = network.chains();
    for (int k = 0; k < chains; k++) {
      int first = network.start[k];
      int next = network.start[k + 1];
      if (network.endRoom[2 * k] >= 0) {
        double heat = roomHeat(2 * k, out);
        for (int i = first; i < next; i++) {
          out[shift + i] += leftInfluence[i] * heat;
        }
      }
      if (network.endRoom[2 * k + 1] >= 0) {
        double heat = roomHeat(2 * k + 1, out);
        for (int i = first; i < next; i++) {
          out[shift + i] += rightInfluence[i] * heat;
        }
      }
    }
  }

  private double roomHeat(int e, double[] out) {
    int room = network.endRoom[e];
    return network.endConvective[e] * out[room]
        + network.endRadiant[e] * out[airStorage.length + room];
  }

  /**
   * Adds the plant heat of held rooms in the last solution.
   *
   * @param weight share of that solution in the mean
   * @param d drivers of that solution
   * @param plant W by room
   */
  void addPlant(double weight, Drivers d, double[] plant) {
    for (int r = 0; r < plant.length; r++) {
      if (d.held[r]) {
        plant[r] += weight * core.missing(r, x, drive[r]);
      }
    }
  }
}
