package org.shopclime.balance;

import org.shopclime.heat.Drivers;

/**
 * Temperatures before the boundaries of a network and heat on its faces, hour by hour of a year.
 */
final class YearDrivers implements HourSink {

  private final int chains;
  private final double[] boundary;

  /** Left and right face of each chain. */
  private final double[] faces;

  YearDrivers(int chains) {
    this.chains = chains;
    boundary = new double[chains * YearWeather.HOURS];
    faces = new double[2 * chains * YearWeather.HOURS];
  }

  private int place(int chain, int hour) {
    return hour * chains + chain;
  }

  void boundary(int chain, int hour, double celsius) {
    boundary[place(chain, hour)] = celsius;
  }

  @Override
  public void addLeft(int chain, int hour, double watts) {
    faces[2 * place(chain, hour)] += watts;
  }

  @Override
  public void addRight(int chain, int hour, double watts) {
    faces[2 * place(chain, hour) + 1] += watts;
  }

  double left(int chain, int hour) {
    return faces[2 * place(chain, hour)];
  }

  double right(int chain, int hour) {
    return faces[2 * place(chain, hour) + 1];
  }

  double boundary(int chain, int hour) {
    return boundary[place(chain, hour)];
  }

  /** Sets the temperatures before the boundaries. */
  void fill(Drivers into, int hour) {
    into.boundaries(boundary, place(0, hour));
  }

  /** Sets the heat on the faces, with more beside that of the hour. */
  void fillFaces(Drivers into, int hour, double[] more) {
    into.faces(faces, 2 * place(0, hour), more);
  }

  /** Sets temperatures and heat to their means over hours of the year, from the last back. */
  void fillMean(Drivers into, int until, int count) {
    double[] celsius = new double[chains];
    double[] watts = new double[2 * chains];
    for (int ago = 1; ago <= count; ago++) {
      int hour = Math.floorMod(until - ago, YearWeather.HOURS);
      for (int i = 0; i < celsius.length; i++) {
        celsius[i] += boundary[place(0, hour) + i] / count;
      }
      for (int i = 0; i < watts.length; i++) {
        watts[i] += faces[2 * place(0, hour) + i] / count;
      }
    }
    into.boundaries(celsius, 0);
    into.faces(watts, 0, new double[watts.length]);
  }
}
