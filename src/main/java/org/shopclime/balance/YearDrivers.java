package org.shopclime.balance;

import org.shopclime.heat.Drivers;

/**
 * Temperatures before the boundaries of a network and heat on its faces, hour by hour of a year.
 */
final class YearDrivers implements HourSink {

  private final int chains;
  private final double[] boundary;
  private final double[] left;
  private final double[] right;

  YearDrivers(int chains) {
    this.chains = chains;
    boundary = new double[chains * YearWeather.HOURS];
    left = new double[chains * YearWeather.HOURS];
    right = new double[chains * YearWeather.HOURS];
  }

  private int place(int chain, int hour) {
    return hour * chains + chain;
  }

  void boundary(int chain, int hour, double celsius) {
    boundary[place(chain, hour)] = celsius;
  }

  @Override
  public void addLeft(int chain, int hour, double watts) {
    left[place(chain, hour)] += watts;
  }

  @Override
  public void addRight(int chain, int hour, double watts) {
    right[place(chain, hour)] += watts;
  }

  double left(int chain, int hour) {
    return left[place(chain, hour)];
  }

  double right(int chain, int hour) {
    return right[place(chain, hour)];
  }

  double boundary(int chain, int hour) {
    return boundary[place(chain, hour)];
  }

  void fill(Drivers into, int hour) {
    for (int chain = 0; chain < chains; chain++) {
      int place = place(chain, hour);
      into.boundary(chain, boundary[place]);
      into.leftSource(chain, left[place]);
      into.rightSource(chain, right[place]);
    }
  }
}
