package org.shopclime.heat;

/**
 * A network under constant air flows and holds the plain way: one dense matrix. The heat that
 * leaves node i is the sum over j of g_ij T_j; C dT/dt = b - g T. A held room has the row T = hold
 * and stores nothing, as has the star of a room in which nothing radiates, which stands at the air.
 */
final class DenseNetwork {

  private final Network network;
  private final int rooms;

  /** Heat capacity of each temperature, J/K; 0 for what follows at once. */
  final double[] capacity;

  /** What leaves node i for each kelvin of node j, W/K. */
  final double[][] conductance;

  /**
   * Lays the matrix out.
   *
   * @param network network
   * @param flows whose air flows and holds count
   */
  DenseNetwork(Network network, Drivers flows) {
    this.network = network;
    rooms = network.rooms();
    int size = network.temperatures();
    capacity = new double[size];
    conductance = new double[size][size];
    for (int k = 0; k < network.chains(); k++) {
      chain(k);
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      known(network.linkRoom[l], network.linkConductance[l]);
    }
    for (int r = 0; r < rooms; r++) {
      air(r, flows);
    }
  }

  private void chain(int k) {
    int first = 2 * rooms + network.start[k];
    int last = 2 * rooms + network.start[k + 1] - 1;
    for (int node = first; node <= last; node++) {
      capacity[node] = network.capacity[node - 2 * rooms];
      if (node < last) {
        between(node, node + 1, network.conductance[node - 2 * rooms]);
      }
    }
    end(2 * k, first);
    end(2 * k + 1, last);
  }

  private void end(int e, int face) {
    known(face, network.endOuter[e]);
    int room = network.endRoom[e];
    if (room >= 0) {
      between(face, room, network.endConvective[e]);
      between(face, rooms + room, network.endRadiant[e]);
    }
  }

  private void air(int r, Drivers flows) {
    capacity[r] = network.airCapacity[r];
    known(r, flows.inflow[r]);
    for (int s = 0; s < rooms; s++) {
      conductance[r][r] += flows.exchange[r * rooms + s];
      conductance[r][s] -= flows.exchange[r * rooms + s];
    }
    if (flows.held[r]) {
      capacity[r] = 0;
      conductance[r] = new double[conductance.length];
      conductance[r][r] = 1;
    }
    if (!network.hasStar[r]) {
      conductance[rooms + r][rooms + r] = 1;
      conductance[rooms + r][r] = -1;
    }
  }

  private void known(int i, double watts) {
    conductance[i][i] += watts;
  }

  private void between(int i, int j, double watts) {
    known(i, watts);
    known(j, watts);
    conductance[i][j] -= watts;
    conductance[j][i] -= watts;
  }

  /**
   * Groups of nodes to be taken as one each: neighbours in a chain between which heat settles
   * faster than a time. The two faces of a steel sheet settle in hundredths of a second, which
   * moves no temperature that counts but forces the steps of an explicit integrator.
   *
   * @param quickest s; 0 leaves every node its own group
   * @return number of the group of each temperature; the rooms keep their numbers
   */
  int[] groups(double quickest) {
    int[] group = new int[capacity.length];
    int groups = 2 * rooms;
    for (int i = 0; i < 2 * rooms; i++) {
      group[i] = i;
    }
    for (int k = 0; k < network.chains(); k++) {
      for (int i = network.start[k]; i < network.start[k + 1]; i++) {
        boolean joined =
            i > network.start[k]
                && Math.min(network.capacity[i - 1], network.capacity[i])
                    < quickest * network.conductance[i - 1]
                && Math.min(network.capacity[i - 1], network.capacity[i]) > 0;
        group[2 * rooms + i] = joined ? groups - 1 : groups++;
      }
    }
    return group;
  }

  /** How many temperatures there are. */
  int size() {
    return capacity.length;
  }

  /** How many rooms there are. */
  int rooms() {
    return rooms;
  }

  /**
   * What is put into the nodes, W; the temperature of a held room in its row.
   *
   * @param d drivers with the flows and holds of the constructor
   * @param heat takes it
   */
  void drive(Drivers d, double[] heat) {
    int shift = 2 * rooms;
    System.arraycopy(d.nodeSource, 0, heat, shift, d.nodeSource.length);
    for (int e = 0; e < d.endSource.length; e++) {
      int face = shift + network.endNode(e);
      heat[face] += d.endSource[e];
      if (network.endBoundary[e] >= 0) {
        heat[face] += network.endOuter[e] * d.boundary[network.endBoundary[e]];
      }
    }
    for (int r = 0; r < rooms; r++) {
      heat[r] = d.airSource[r] + d.inflow[r] * d.inflowTemperature[r];
      heat[rooms + r] = network.hasStar[r] ? d.starSource[r] : 0;
      if (!network.hasStar[r]) {
        heat[r] += d.starSource[r];
      }
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      heat[network.linkRoom[l]] += network.linkConductance[l] * d.boundary[network.linkBoundary[l]];
    }
    for (int r = 0; r < rooms; r++) {
      if (d.held[r]) {
        heat[r] = d.holdTemperature[r];
      }
    }
  }
}
