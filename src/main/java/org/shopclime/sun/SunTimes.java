package org.shopclime.sun;

/**
 * Rising and setting of the sun's upper edge on one day, in hours after local standard midnight of
 * that day. Where the sun does not set, both lie twelve hours from the transit; where it does not
 * rise, both equal the transit.
 *
 * @param sunriseHour sunrise, h
 * @param transitHour highest sun, h
 * @param sunsetHour sunset, h, not before sunrise
 */
public record SunTimes(double sunriseHour, double transitHour, double sunsetHour) {

  /** Refuses times out of order. */
  public SunTimes {
    if (!(sunriseHour <= transitHour && transitHour <= sunsetHour)) {
      throw new IllegalArgumentException(
          "sunrise "
              + sunriseHour
              + ", transit "
              + transitHour
              + " and sunset "
              + sunsetHour
              + " must follow each other");
    }
  }

  /**
   * Length of the day.
   *
   * @return from sunrise to sunset, h, 0 to 24
   */
  public double dayLengthHours() {
    return sunsetHour - sunriseHour;
  }
}
