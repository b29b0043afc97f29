package org.shopclime.heat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * A network handed to a general integrator that picks its own steps. What follows at once (stars,
 * bare faces, held rooms) is taken out by one factorisation; what is left of the matrix is kept
 * without its zeros. One more variable for each room adds up its air, for the mean.
 */
public final class AdaptiveMarch {

  private final DenseNetwork network;
  private final ODEIntegrator integrator;

  /** Which of the nodes are one. */
  private final int[] group;

  private final double[] capacity;

  /** Numbers of the temperatures that store heat, and of those that follow at once. */
  private final int[] stored;

  private final int[] following;

  /** Inverse of the matrix of what follows, K/W. */
  private final double[][] inverse;

  /** How what follows answers to what stores. */
  private final double[][] follows;

  /** What the heat put into a following node does to a stored one, 1. */
  private final double[][] passedOn;

  /** Rate of each stored temperature for each kelvin of another, 1/s: places and values. */
  private final int[][] place;

  private final double[][] rate;

  private final double[] nodeHeat;
  private final double[] heat;
  private final double[] push;
  private final double[] airPush;
  private final double[] mean;
  private double[] y;

  /**
   * Prepares a network.
   *
   * @param network network
   * @param flows whose air flows and holds count, for all time
   * @param quickest nodes between which heat settles faster than this are taken as one, s; 0 for
   *     none, see {@link DenseNetwork#groups}
   * @param integrator what integrates
   */
  public AdaptiveMarch(Network network, Drivers flows, double quickest, ODEIntegrator integrator) {
    this.network = new DenseNetwork(network, flows);
    this.integrator = integrator;
    group = this.network.groups(quickest);
    int size = group[group.length - 1] + 1;
    capacity = new double[size];
    RealMatrix g = MatrixUtils.createRealMatrix(size, size);
    for (int i = 0; i < group.length; i++) {
      capacity[group[i]] += this.network.capacity[i];
      for (int j = 0; j < group.length; j++) {
        g.addToEntry(group[i], group[j], this.network.conductance[i][j]);
      }
    }
    stored = numbers(capacity, true);
    following = numbers(capacity, false);
    RealMatrix inverted =
        new LUDecomposition(g.getSubMatrix(following, following)).getSolver().getInverse();
    RealMatrix answer = inverted.multiply(g.getSubMatrix(following, stored)).scalarMultiply(-1);
    RealMatrix toStored = g.getSubMatrix(stored, following);
    RealMatrix left = g.getSubMatrix(stored, stored).add(toStored.multiply(answer));
    inverse = inverted.getData();
    follows = answer.getData();
    passedOn = toStored.multiply(inverted).scalarMultiply(-1).getData();
    place = new int[stored.length][];
    rate = new double[stored.length][];
    for (int i = 0; i < stored.length; i++) {
      double[] row = left.getRow(i);
      place[i] = numbers(row, true);
      rate[i] = new double[place[i].length];
      for (int j = 0; j < place[i].length; j++) {
        rate[i][j] = -row[place[i][j]] / capacity[stored[i]];
      }
    }
    nodeHeat = new double[group.length];
    heat = new double[size];
    push = new double[stored.length];
    airPush = new double[this.network.rooms()];
    mean = new double[this.network.rooms()];
    y = new double[stored.length + this.network.rooms()];
  }

  private static int[] numbers(double[] values, boolean other) {
    return IntStream.range(0, values.length).filter(i -> (values[i] != 0) == other).toArray();
  }

  /**
   * Puts all temperatures to those of a {@link March#state}.
   *
   * @param state temperatures, °C
   */
  public void restore(double[] state) {
    double[] heatOf = new double[capacity.length];
    for (int i = 0; i < group.length; i++) {
      heatOf[group[i]] += network.capacity[i] * state[i];
    }
    for (int i = 0; i < stored.length; i++) {
      y[i] = heatOf[stored[i]] / capacity[stored[i]];
    }
  }

  /**
   * Advances over a time in which the drivers are constant.
   *
   * @param d drivers with the flows and holds of the constructor
   * @param seconds how long, s
   */
  public void advance(Drivers d, double seconds) {
    network.drive(d, nodeHeat);
    Arrays.fill(heat, 0);
    for (int i = 0; i < group.length; i++) {
      heat[group[i]] += nodeHeat[i];
    }
    for (int i = 0; i < stored.length; i++) {
      double sum = heat[stored[i]];
      for (int j = 0; j < following.length; j++) {
        sum += passedOn[i][j] * heat[following[j]];
      }
      push[i] = sum / capacity[stored[i]];
    }
    for (int j = 0; j < following.length; j++) {
      if (following[j] < airPush.length) {
        airPush[following[j]] = 0;
        for (int k = 0; k < following.length; k++) {
          airPush[following[j]] += inverse[j][k] * heat[following[k]];
        }
      }
    }
    Arrays.fill(y, stored.length, y.length, 0);
    y = integrator.integrate(new Rates(), new ODEState(0, y), seconds).getPrimaryState();
    for (int r = 0; r < mean.length; r++) {
      mean[r] = y[stored.length + r] / seconds;
    }
  }

  /**
   * Air of a room, mean over the last time.
   *
   * @param room number of the room
   * @return °C
   */
  public double meanAir(int room) {
    return mean[room];
  }

  private final class Rates implements OrdinaryDifferentialEquation {

    @Override
    public int getDimension() {
      return y.length;
    }

    @Override
    public double[] computeDerivatives(double time, double[] state) {
      double[] derivatives = new double[state.length];
      for (int i = 0; i < stored.length; i++) {
        int[] places = place[i];
        double[] rates = rate[i];
        double sum = push[i];
        for (int j = 0; j < places.length; j++) {
          sum += rates[j] * state[places[j]];
        }
        derivatives[i] = sum;
        if (stored[i] < mean.length) {
          derivatives[stored.length + stored[i]] = state[i];
        }
      }
      for (int j = 0; j < following.length; j++) {
        int room = following[j];
        if (room < mean.length) {
          double air = airPush[room];
          for (int i = 0; i < stored.length; i++) {
            air += follows[j][i] * state[i];
          }
          derivatives[stored.length + room] = air;
        }
      }
      return derivatives;
    }
  }
}
