package org.shopclime.balance;

import org.shopclime.heat.Drivers;

/**
 * What drives the network through a day, for all lines or some: temperatures of the boundaries by
 * the hour, sun on the faces by the hour, heat from gains by five minutes.
 */
public final class DayDrivers implements HourSink {

  private final double[][] boundary;
  private final double[][] left;
  private final double[][] right;
  private final double[][] air;
  private final double[][] star;

  DayDrivers(int chains, int rooms) {
    boundary = new double[chains][24];
    left = new double[chains][24];
    right = new double[chains][24];
    air = new double[rooms][DaySlots.COUNT];
    star = new double[rooms][DaySlots.COUNT];
  }

  void boundary(int chain, int hour, double celsius) {
    boundary[chain][hour] = celsius;
  }

  @Override
  public void addLeft(int chain, int hour, double watts) {
    left[chain][hour] += watts;
  }

  @Override
  public void addRight(int chain, int hour, double watts) {
    right[chain][hour] += watts;
  }

  /**
   * Adds a gain.
   *
   * @param room index of the room
   * @param slot five-minute slot
   * @param convective heat into the air, W, either sign
   * @param radiant heat onto the faces, W, either sign
   */
  public void addGain(int room, int slot, double convective, double radiant) {
    air[room][slot] += convective;
    star[room][slot] += radiant;
  }

  /**
   * Sets temperatures and sources of a network for some slots; holds and air flows are the
   * caller's.
   *
   * @param into drivers to set
   * @param slot first five-minute slot
   * @param slots number of slots, within one hour
   */
  public void fill(Drivers into, int slot, int slots) {
    fillHour(into, slot / DaySlots.PER_HOUR);
    fillGains(into, slot, slots);
  }

  /**
   * Fills in what stays as it is through an hour: boundaries, and sources at the ends of chains.
   *
   * @param into drivers
   * @param hour 0 to 23
   */
  public void fillHour(Drivers into, int hour) {
    for (int chain = 0; chain < boundary.length; chain++) {
      into.boundary(chain, boundary[chain][hour]);
      into.leftSource(chain, left[chain][hour]);
      into.rightSource(chain, right[chain][hour]);
    }
  }

  /**
   * Fills in the means of the gains in the rooms over some slots.
   *
   * @param into drivers
   * @param slot first slot
   * @param slots number of slots
   */
  public void fillGains(Drivers into, int slot, int slots) {
    for (int room = 0; room < air.length; room++) {
      into.airSource(room, mean(air[room], slot, slots));
      into.starSource(room, mean(star[room], slot, slots));
    }
  }

  /**
   * Sets the means over the whole day.
   *
   * @param into drivers to set
   */
  public void fillMeans(Drivers into) {
    for (int chain = 0; chain < boundary.length; chain++) {
      into.boundary(chain, mean(boundary[chain], 0, 24));
      into.leftSource(chain, mean(left[chain], 0, 24));
      into.rightSource(chain, mean(right[chain], 0, 24));
    }
    for (int room = 0; room < air.length; room++) {
      into.airSource(room, mean(air[room], 0, DaySlots.COUNT));
      into.starSource(room, mean(star[room], 0, DaySlots.COUNT));
    }
  }

  /**
   * Convective heat of gains in a room.
   *
   * @param room index of the room
   * @param slot five-minute slot
   * @return W
   */
  public double airGain(int room, int slot) {
    return air[room][slot];
  }

  private static double mean(double[] values, int first, int count) {
    double sum = 0;
    for (int i = first; i < first + count; i++) {
      sum += values[i];
    }
    return sum / count;
  }
}
