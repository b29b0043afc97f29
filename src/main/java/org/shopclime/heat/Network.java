package org.shopclime.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A thermal network that does not change: rooms, driven temperatures (boundaries), and chains of
 * nodes (walls, roofs, things) between them. Temperatures in °C, heat in W; made by {@link
 * #builder()}.
 *
 * <p>A room is an air node with a heat capacity and, when any chain radiates into it, a star node
 * without capacity. A chain is a row of nodes, each with a capacity (0 for a bare face), tied to
 * its neighbours by conductances; only its first and last node (left and right face) see a room or
 * a boundary. Source of the form: the resistance-capacity network of EN ISO 52016-1:2017, 6.5.6,
 * with the radiation between faces led through one star node per room.
 */
public final class Network {

  final double[] airCapacity;
  final int boundaryCount;

  /** First node of each chain, and behind the last one the number of all nodes. */
  final int[] start;

  /** Capacity of each node of all chains, J/K. */
  final double[] capacity;

  /** From each node to the next one of its chain, W/K; 0 behind the last node of a chain. */
  final double[] conductance;

  /** Ends: 2 k is the left and 2 k + 1 the right end of chain k. Boundary of each, or -1. */
  final int[] endBoundary;

  /** Room of each end, or -1. */
  final int[] endRoom;

  final double[] endOuter;
  final double[] endConvective;
  final double[] endRadiant;

  final int[] linkRoom;
  final int[] linkBoundary;
  final double[] linkConductance;

  /** Whether anything radiates in the room, so that it has a star node. */
  final boolean[] hasStar;

  private Network(Builder b) {
    int rooms = b.rooms.size();
    int chains = b.chains.size();
    airCapacity = b.rooms.stream().mapToDouble(Double::doubleValue).toArray();
    boundaryCount = b.boundaries;
    start = new int[chains + 1];
    for (int k = 0; k < chains; k++) {
      start[k + 1] = start[k] + b.chains.get(k).capacities.length;
    }
    capacity = new double[start[chains]];
    conductance = new double[start[chains]];
    endBoundary = new int[2 * chains];
    endRoom = new int[2 * chains];
    endOuter = new double[2 * chains];
    endConvective = new double[2 * chains];
    endRadiant = new double[2 * chains];
    hasStar = new boolean[rooms];
    for (int k = 0; k < chains; k++) {
      Chain chain = b.chains.get(k);
      System.arraycopy(chain.capacities, 0, capacity, start[k], chain.capacities.length);
      System.arraycopy(chain.conductances, 0, conductance, start[k], chain.conductances.length);
      end(2 * k, chain.left);
      end(2 * k + 1, chain.right);
    }
    linkRoom = b.links.stream().mapToInt(link -> link.room).toArray();
    linkBoundary = b.links.stream().mapToInt(link -> link.boundary).toArray();
    linkConductance = b.links.stream().mapToDouble(link -> link.conductance).toArray();
    for (int l = 0; l < linkRoom.length; l++) {
      Check.index("room", linkRoom[l], rooms);
      Check.index("boundary", linkBoundary[l], boundaryCount);
    }
  }

  private void end(int e, End end) {
    endBoundary[e] = -1;
    endRoom[e] = -1;
    if (end instanceof End.Boundary boundary) {
      Check.index("boundary", boundary.index(), boundaryCount);
      endBoundary[e] = boundary.index();
      endOuter[e] = boundary.conductance();
    } else if (end instanceof End.Room room) {
      Check.index("room", room.index(), airCapacity.length);
      endRoom[e] = room.index();
      endConvective[e] = room.convective();
      endRadiant[e] = room.radiant();
      hasStar[room.index()] |= room.radiant() > 0;
    }
  }

  /**
   * Starts a description.
   *
   * @return an empty builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * How many rooms there are.
   *
   * @return number of rooms, 0 or more
   */
  public int rooms() {
    return airCapacity.length;
  }

  /**
   * How many chains there are.
   *
   * @return number of chains, 0 or more
   */
  public int chains() {
    return start.length - 1;
  }

  /**
   * How many driven temperatures there are.
   *
   * @return number of boundaries, 0 or more
   */
  public int boundaries() {
    return boundaryCount;
  }

  /**
   * How many nodes a chain has.
   *
   * @param chain number of the chain
   * @return number of nodes, 1 or more
   * @throws IllegalArgumentException if there is no such chain
   */
  public int nodes(int chain) {
    Check.index("chain", chain, chains());
    return start[chain + 1] - start[chain];
  }

  /** All temperatures lie in one array: air of the rooms, stars of the rooms, nodes of chains. */
  int temperatures() {
    return 2 * rooms() + capacity.length;
  }

  int air(int room) {
    Check.index("room", room, rooms());
    return room;
  }

  int star(int room) {
    return rooms() + air(room);
  }

  int leftFace(int chain) {
    return node(chain, 0);
  }

  int rightFace(int chain) {
    return node(chain, nodes(chain) - 1);
  }

  int node(int chain, int node) {
    Check.index("node", node, nodes(chain));
    return 2 * rooms() + start[chain] + node;
  }

  /** Node (of all chains) that end e stands on. */
  int endNode(int e) {
    return e % 2 == 0 ? start[e / 2] : start[e / 2 + 1] - 1;
  }

  /**
   * Heat out of a boundary into the network, W, at the temperatures given by chain node and room.
   */
  double boundaryHeat(int boundary, double driven, double[] temperatures) {
    double heat = 0;
    for (int e = 0; e < endBoundary.length; e++) {
      if (endBoundary[e] == boundary) {
        heat += endOuter[e] * (driven - temperatures[2 * rooms() + endNode(e)]);
      }
    }
    for (int l = 0; l < linkRoom.length; l++) {
      if (linkBoundary[l] == boundary) {
        heat += linkConductance[l] * (driven - temperatures[linkRoom[l]]);
      }
    }
    return heat;
  }

  static void same(Network ours, Network theirs) {
    if (ours != theirs) {
      throw new IllegalArgumentException("the drivers were made for another network");
    }
  }

  /** A node that nothing stores heat for and nothing drives would have no temperature. */
  private void refuseUndetermined() {
    boolean[] air = new boolean[rooms()];
    boolean[] star = new boolean[rooms()];
    boolean[] chain = new boolean[chains()];
    for (int r = 0; r < rooms(); r++) {
      air[r] = airCapacity[r] > 0;
      star[r] = !hasStar[r];
    }
    for (int room : linkRoom) {
      air[room] = true;
    }
    for (int k = 0; k < chains(); k++) {
      chain[k] =
          endBoundary[2 * k] >= 0
              || endBoundary[2 * k + 1] >= 0
              || Arrays.stream(capacity, start[k], start[k + 1]).anyMatch(c -> c > 0);
    }
    boolean spreads = true;
    while (spreads) {
      spreads = false;
      for (int e = 0; e < endRoom.length; e++) {
        if (endRoom[e] >= 0) {
          spreads |= endConvective[e] > 0 && join(chain, e / 2, air, endRoom[e]);
          spreads |= endRadiant[e] > 0 && join(chain, e / 2, star, endRoom[e]);
        }
      }
    }
    for (int r = 0; r < rooms(); r++) {
      if (!air[r] || !star[r]) {
        throw new IllegalArgumentException(
            "room "
                + r
                + " has no "
                + (air[r] ? "radiant " : "")
                + "path to a boundary and no heat capacity, so it has no temperature");
      }
    }
    for (int k = 0; k < chains(); k++) {
      if (!chain[k]) {
        throw new IllegalArgumentException(
            "chain "
                + k
                + " has no path to a boundary and no heat capacity, so it has no temperature");
      }
    }
  }

  /** Makes two nodes determined if one of them is; tells whether that was news. */
  private static boolean join(boolean[] a, int i, boolean[] b, int j) {
    boolean news = a[i] != b[j];
    a[i] |= b[j];
    b[j] |= a[i];
    return news;
  }

  private record Link(int room, int boundary, double conductance) {}

  private static final class Chain {
    private final End left;
    private final double[] capacities;
    private final double[] conductances;
    private final End right;

    private Chain(End left, double[] capacities, double[] conductances, End right) {
      this.left = left;
      this.capacities = capacities;
      this.conductances = conductances;
      this.right = right;
    }
  }

  /** Collects rooms, boundaries, chains and links in any order. */
  public static final class Builder {

    private final List<Double> rooms = new ArrayList<>();
    private final List<Chain> chains = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private int boundaries;

    private Builder() {}

    /**
     * Adds a room.
     *
     * @param airCapacity heat capacity of its air, J/K, 0 or more and finite
     * @return number of the room, counted from 0
     * @throws IllegalArgumentException if the capacity is out of that range
     */
    public int room(double airCapacity) {
      rooms.add(Check.notNegative("heat capacity of a room's air, J/K", airCapacity));
      return rooms.size() - 1;
    }

    /**
     * Adds a driven temperature. Each outdoor face has its own, as each has its own equivalent
     * temperature of air, sun and sky.
     *
     * @return number of the boundary, counted from 0
     */
    public int boundary() {
      return boundaries++;
    }

    /**
     * Adds a chain of nodes.
     *
     * @param left what the first node sees
     * @param capacities heat capacity of each node from left to right, J/K, each 0 or more and
     *     finite; one node or more
     * @param conductances from each node to the next, W/K, each above 0 and finite; one fewer than
     *     nodes
     * @param right what the last node sees
     * @return number of the chain, counted from 0
     * @throws IllegalArgumentException if a value is out of its range or the lengths do not fit
     */
    public int chain(End left, double[] capacities, double[] conductances, End right) {
      if (capacities.length < 1 || conductances.length != capacities.length - 1) {
        throw new IllegalArgumentException(
            "a chain of "
                + capacities.length
                + " nodes and "
                + conductances.length
                + " conductances: takes 1 node or more and one conductance fewer");
      }
      for (double c : capacities) {
        Check.notNegative("heat capacity of a node, J/K", c);
      }
      for (double g : conductances) {
        Check.positive("conductance between nodes, W/K", g);
      }
      if (left == null || right == null) {
        throw new IllegalArgumentException("an end of a chain is null");
      }
      chains.add(new Chain(left, capacities.clone(), conductances.clone(), right));
      return chains.size() - 1;
    }

    /**
     * Ties the air of a room to a boundary without any capacity on the way, as a thin pane does.
     *
     * @param room number of the room
     * @param boundary number of the boundary
     * @param conductance W/K, 0 or more and finite
     * @throws IllegalArgumentException if a value is out of its range
     */
    public void link(int room, int boundary, double conductance) {
      Check.index("room", room);
      Check.index("boundary", boundary);
      Check.notNegative("conductance of a link, W/K", conductance);
      if (conductance > 0) {
        links.add(new Link(room, boundary, conductance));
      }
    }

    /**
     * Checks the description as a whole.
     *
     * @return the network
     * @throws IllegalArgumentException if an end or link names a room or boundary that was not
     *     added, or if a room or chain has neither a heat capacity in reach nor a path to a
     *     boundary, so that it would have no temperature; the message names it
     */
    public Network build() {
      Network network = new Network(this);
      network.refuseUndetermined();
      return network;
    }
  }
}
