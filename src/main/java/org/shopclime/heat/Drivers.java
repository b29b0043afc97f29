package org.shopclime.heat;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * What drives a network during one step: boundary temperatures, sources of heat, air flows, rooms
 * held at a temperature. All are means over the step. A buffer to be used again and again; every
 * call replaces what the same call said before for the same place, nothing is added up.
 *
 * <p>A new buffer, and one after {@link #clear()}, has all boundaries at 0 °C, no source, no flow
 * and no room held.
 */
public final class Drivers {

  final Network network;
  final double[] boundary;
  final double[] endSource;
  final double[] nodeSource;
  final double[] airSource;
  final double[] starSource;
  final double[] inflow;
  final double[] inflowTemperature;

  /** Air flow from room j into room i at i * rooms + j, W/K. */
  final double[] exchange;

  final boolean[] held;
  final double[] holdTemperature;

  /** Whether heat was ever put on a node since the buffer was empty. */
  boolean onNodes;

  /**
   * An empty buffer for a network.
   *
   * @param network the network it will drive
   */
  public Drivers(Network network) {
    this.network = network;
    int rooms = network.rooms();
    boundary = new double[network.boundaries()];
    endSource = new double[2 * network.chains()];
    nodeSource = new double[network.capacity.length];
    airSource = new double[rooms];
    starSource = new double[rooms];
    inflow = new double[rooms];
    inflowTemperature = new double[rooms];
    exchange = new double[rooms * rooms];
    held = new boolean[rooms];
    holdTemperature = new double[rooms];
  }

  /**
   * Sets a driven temperature.
   *
   * @param index number of the boundary
   * @param celsius °C, finite
   * @throws IllegalArgumentException if there is no such boundary or the value is not finite
   */
  public void boundary(int index, double celsius) {
    Check.index("boundary", index, boundary.length);
    boundary[index] = Check.finite("temperature of a boundary, °C", celsius);
  }

  /**
   * Sets the heat put on the left face of a chain: absorbed sun, radiant gains.
   *
   * @param chain number of the chain
   * @param watts W, finite; below 0 for heat taken
   * @throws IllegalArgumentException if there is no such chain or the value is not finite
   */
  public void leftSource(int chain, double watts) {
    Check.index("chain", chain, network.chains());
    endSource[2 * chain] = Check.finite("heat on a left face, W", watts);
  }

  /**
   * Sets the heat put on the right face of a chain: absorbed sun, radiant gains.
   *
   * @param chain number of the chain
   * @param watts W, finite; below 0 for heat taken
   * @throws IllegalArgumentException if there is no such chain or the value is not finite
   */
  public void rightSource(int chain, double watts) {
    Check.index("chain", chain, network.chains());
    endSource[2 * chain + 1] = Check.finite("heat on a right face, W", watts);
  }

  /**
   * Sets the driven temperatures of all boundaries at once.
   *
   * @param celsius °C, from {@code first} on, one for each boundary, finite
   * @param first where the first of them lies
   * @throws IllegalArgumentException if one is not finite
   */
  public void boundaries(double[] celsius, int first) {
    System.arraycopy(celsius, first, boundary, 0, boundary.length);
    finite("temperatures of the boundaries, °C,", boundary);
  }

  /**
   * Sets the heat on the faces of all chains at once, as the sum of two parts.
   *
   * @param watts W, from {@code first} on, left and right of each chain, finite
   * @param first where the first of them lies
   * @param more W, the other part, from its start on
   * @throws IllegalArgumentException if a sum is not finite
   */
  public void faces(double[] watts, int first, double[] more) {
    for (int e = 0; e < endSource.length; e++) {
      endSource[e] = watts[first + e] + more[e];
    }
    finite("heat on the faces, W,", endSource);
  }

  /** By two sums at a time, so that one addition need not wait for the last. */
  private static void finite(String what, double[] values) {
    double even = 0;
    double odd = 0;
    for (int i = 1; i < values.length; i += 2) {
      even += values[i - 1];
      odd += values[i];
    }
    if (values.length % 2 != 0) {
      even += values[values.length - 1];
    }
    Check.finite(what, even + odd);
  }

  /**
   * Sets the heat put on any node of a chain, beside what is put on its faces.
   *
   * @param chain number of the chain
   * @param node number of the node, from 0 at the left face
   * @param watts W, finite; below 0 for heat taken
   * @throws IllegalArgumentException if there is no such node or the value is not finite
   */
  public void nodeSource(int chain, int node, double watts) {
    nodeSource[network.node(chain, node) - 2 * network.rooms()] =
        Check.finite("heat on a node, W", watts);
    onNodes |= watts != 0;
  }

  /**
   * Sets the heat put into the air of a room: convective gains and plant.
   *
   * @param room number of the room
   * @param watts W, finite; below 0 for cooling
   * @throws IllegalArgumentException if there is no such room or the value is not finite
   */
  public void airSource(int room, double watts) {
    airSource[network.air(room)] = Check.finite("heat into the air of a room, W", watts);
  }

  /**
   * Sets the heat put on the star node of a room, which its radiant conductances spread over the
   * faces. In a room where nothing radiates it goes into the air.
   *
   * @param room number of the room
   * @param watts W, finite
   * @throws IllegalArgumentException if there is no such room or the value is not finite
   */
  public void starSource(int room, double watts) {
    starSource[network.air(room)] = Check.finite("heat on the star of a room, W", watts);
  }

  /**
   * Sets the air that comes into a room from outside the network.
   *
   * @param room number of the room
   * @param wattsPerKelvin mass flow times specific heat, W/K, 0 or more and finite
   * @param celsius temperature it comes in with, °C, finite
   * @throws IllegalArgumentException if there is no such room or a value is out of its range
   */
  public void inflow(int room, double wattsPerKelvin, double celsius) {
    int i = network.air(room);
    Check.notNegative("air flow into a room, W/K", wattsPerKelvin);
    Check.finite("temperature of air flowing into a room, °C", celsius);
    inflow[i] = wattsPerKelvin;
    inflowTemperature[i] = celsius;
  }

  /**
   * Sets the air that flows out of one room into another: the latter gains {@code wattsPerKelvin}
   * (T_from - T_to); the former is not changed by what leaves it.
   *
   * @param from number of the room the air comes from
   * @param to number of the room it enters, another one
   * @param wattsPerKelvin mass flow times specific heat, W/K, 0 or more and finite
   * @throws IllegalArgumentException if there is no such room, both are the same, or the value is
   *     out of its range
   */
  public void exchange(int from, int to, double wattsPerKelvin) {
    network.air(from);
    network.air(to);
    if (from == to) {
      throw new IllegalArgumentException("air flow from room " + from + " into itself");
    }
    exchange[to * network.rooms() + from] =
        Check.notNegative("air flow between rooms, W/K", wattsPerKelvin);
  }

  /**
   * Holds the air of a room at a temperature, with whatever plant heat that takes.
   *
   * @param room number of the room
   * @param celsius °C, finite
   * @throws IllegalArgumentException if there is no such room or the value is not finite
   */
  public void hold(int room, double celsius) {
    holdTemperature[network.air(room)] = Check.finite("temperature to hold, °C", celsius);
    held[room] = true;
  }

  /**
   * Lets the air of a room float.
   *
   * @param room number of the room
   * @throws IllegalArgumentException if there is no such room
   */
  public void release(int room) {
    held[network.air(room)] = false;
    holdTemperature[room] = 0;
  }

  /** Back to an empty buffer. */
  public void clear() {
    Arrays.fill(boundary, 0);
    Arrays.fill(endSource, 0);
    Arrays.fill(nodeSource, 0);
    onNodes = false;
    Arrays.fill(airSource, 0);
    Arrays.fill(starSource, 0);
    Arrays.fill(inflow, 0);
    Arrays.fill(inflowTemperature, 0);
    Arrays.fill(exchange, 0);
    Arrays.fill(held, false);
    Arrays.fill(holdTemperature, 0);
  }

  /**
   * All heat put on faces, nodes, air and stars together.
   *
   * @return W
   */
  public double sources() {
    double sum = 0;
    for (double[] each : new double[][] {endSource, nodeSource, airSource, starSource}) {
      for (double watts : each) {
        sum += watts;
      }
    }
    return sum;
  }

  /**
   * Heat that the air coming into a room from outside the network brings.
   *
   * @param room number of the room
   * @param celsius air temperature of the room, °C
   * @return W, below 0 where it cools
   * @throws IllegalArgumentException if there is no such room
   */
  public double inflowHeat(int room, double celsius) {
    int i = network.air(room);
    return inflow[i] * (inflowTemperature[i] - celsius);
  }

  /**
   * Heat that the air coming into a room from other rooms brings.
   *
   * @param room number of the room
   * @param air air temperature of a room by its number, °C
   * @return W, below 0 where it cools
   * @throws IllegalArgumentException if there is no such room
   */
  public double exchangeHeat(int room, IntToDoubleFunction air) {
    int to = network.air(room);
    double heat = 0;
    for (int from = 0; from < inflow.length; from++) {
      double flow = exchange[to * inflow.length + from];
      if (flow > 0) {
        heat += flow * (air.applyAsDouble(from) - air.applyAsDouble(to));
      }
    }
    return heat;
  }

  /** Takes over flows and holds of another buffer, with 0 °C for all temperatures of these. */
  void takeFlows(Drivers other) {
    System.arraycopy(other.inflow, 0, inflow, 0, inflow.length);
    System.arraycopy(other.exchange, 0, exchange, 0, exchange.length);
    System.arraycopy(other.held, 0, held, 0, held.length);
  }
}
