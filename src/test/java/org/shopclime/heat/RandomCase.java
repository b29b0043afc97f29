package org.shopclime.heat;

import java.util.Random;

/** A random network with random drivers, the same for the same number. */
final class RandomCase {

  final Random random;
  final Network network;

  RandomCase(long number) {
    random = new Random(number);
    network = network();
  }

  private Network network() {
    while (true) {
      try {
        return attempt();
      } catch (IllegalArgumentException undetermined) {
        // A massless part hung on nothing: try another one.
      }
    }
  }

  private Network attempt() {
    Network.Builder builder = Network.builder();
    int rooms = 1 + random.nextInt(3);
    int boundaries = 1 + random.nextInt(4);
    for (int r = 0; r < rooms; r++) {
      builder.room(capacity(1e5));
    }
    for (int b = 0; b < boundaries; b++) {
      builder.boundary();
    }
    int chains = random.nextInt(7);
    for (int k = 0; k < chains; k++) {
      double[] capacities = new double[1 + random.nextInt(6)];
      double[] conductances = new double[capacities.length - 1];
      for (int i = 0; i < capacities.length; i++) {
        capacities[i] = capacity(1e6);
      }
      for (int i = 0; i < conductances.length; i++) {
        conductances[i] = between(0.5, 200);
      }
      builder.chain(end(rooms, boundaries), capacities, conductances, end(rooms, boundaries));
    }
    for (int r = 0; r < rooms; r++) {
      builder.link(r, random.nextInt(boundaries), random.nextBoolean() ? between(1, 50) : 0);
    }
    return builder.build();
  }

  private double capacity(double most) {
    return random.nextInt(3) == 0 ? 0 : between(most / 100, most);
  }

  private End end(int rooms, int boundaries) {
    return switch (random.nextInt(6)) {
      case 0 -> new End.Insulated();
      case 1, 2 -> new End.Boundary(random.nextInt(boundaries), between(1, 300));
      case 3 -> new End.Room(random.nextInt(rooms), between(1, 100), 0);
      case 4 -> new End.Room(random.nextInt(rooms), 0, between(1, 100));
      default -> new End.Room(random.nextInt(rooms), between(1, 100), between(1, 100));
    };
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Sets every driver anew, the temperatures and sources only. */
  void drive(Drivers d) {
    for (int b = 0; b < network.boundaries(); b++) {
      d.boundary(b, between(-20, 60));
    }
    for (int k = 0; k < network.chains(); k++) {
      d.leftSource(k, between(-100, 1000));
      d.rightSource(k, between(-100, 1000));
      for (int i = 0; i < network.nodes(k); i++) {
        d.nodeSource(k, i, between(-50, 50));
      }
    }
    for (int r = 0; r < network.rooms(); r++) {
      d.airSource(r, between(-2000, 2000));
      d.starSource(r, between(-200, 1000));
      d.inflow(r, d.inflow[r], between(-20, 60));
      if (d.held[r]) {
        d.hold(r, between(15, 30));
      }
    }
  }

  /** Sets air flows and holds anew. */
  void flow(Drivers d) {
    for (int r = 0; r < network.rooms(); r++) {
      d.inflow(r, random.nextBoolean() ? between(0, 100) : 0, between(-20, 60));
      for (int s = 0; s < network.rooms(); s++) {
        if (s != r) {
          d.exchange(s, r, random.nextBoolean() ? between(0, 80) : 0);
        }
      }
      d.release(r);
      if (random.nextInt(3) == 0) {
        d.hold(r, between(15, 30));
      }
    }
  }

  /** Drivers with everything set. */
  Drivers drivers() {
    Drivers d = new Drivers(network);
    flow(d);
    drive(d);
    return d;
  }

  double[] state() {
    double[] state = new double[network.temperatures()];
    for (int i = 0; i < state.length; i++) {
      state[i] = between(-10, 50);
    }
    return state;
  }
}
