package org.shopclime.climate;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * How weather goes through the usual day at a station, hour by hour.
 *
 * @param dryBulb of each month: how far the dry bulb at the end of each hour lies above the running
 *     mean, in parts of the day's swing, -1 to 1, mean 0
 * @param global of each month: global irradiance over that of a clear sky of usual haze, 0 to 100;
 *     0 by night
 * @param direct the same of the direct beam
 * @param cloud of each quarter (December to February first): how much more of the sky is covered by
 *     opaque cloud than the day's mean, -1 to 1
 * @param wind of each quarter: wind of each hour over the day's mean, 0 to 24
 */
public record DayCourses(
    List<Hours> dryBulb,
    List<Hours> global,
    List<Hours> direct,
    List<Hours> cloud,
    List<Hours> wind) {

  /** Quarters of the year that have a course of their own. */
  public static final int QUARTERS = 4;

  private static final int MONTHS_IN_QUARTER = 3;

  /** Brightest that a hour of low sun may be against the usual clear sky. */
  static final double BRIGHTEST = 100;

  /** Copies the lists; refuses other numbers of courses than named and figures outside. */
  public DayCourses {
    dryBulb = checked("dry bulb", dryBulb, Months.COUNT, -1, 1);
    global = checked("global", global, Months.COUNT, 0, BRIGHTEST);
    direct = checked("direct", direct, Months.COUNT, 0, BRIGHTEST);
    cloud = checked("cloud", cloud, QUARTERS, -1, 1);
    wind = checked("wind", wind, QUARTERS, 0, Hours.COUNT);
  }

  private static List<Hours> checked(
      String of, List<Hours> courses, int count, double least, double most) {
    if (courses.size() != count) {
      throw new IllegalArgumentException(
          courses.size() + " courses of the " + of + "; takes " + count);
    }
    for (Hours hours : courses) {
      Guard.within("course of the " + of, hours.min(), least, most);
      Guard.within("course of the " + of, hours.max(), least, most);
    }
    return List.copyOf(courses);
  }

  /**
   * The quarter a month lies in.
   *
   * @param month 1 to 12
   * @return 0 (December to February) to 3 (September to November)
   */
  public static int quarter(int month) {
    return month % Months.COUNT / MONTHS_IN_QUARTER;
  }

  /** A course for each month. */
  static List<Hours> ofMonths(IntFunction<Hours> ofMonth) {
    return IntStream.rangeClosed(1, Months.COUNT).mapToObj(ofMonth).toList();
  }

  /** A course for each quarter. */
  static List<Hours> ofQuarters(IntFunction<Hours> ofQuarter) {
    return IntStream.range(0, QUARTERS).mapToObj(ofQuarter).toList();
  }
}
