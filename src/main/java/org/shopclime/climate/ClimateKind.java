package org.shopclime.climate;

import java.util.Arrays;
import org.shopclime.air.AirState;
import org.shopclime.quantity.Units;

/**
 * A station's weather in words, by its figures.
 *
 * <p>Source: of the limits of moisture, the words by which the US National Weather Service tells
 * how a dew point feels (55 °F and less dry and comfortable, 65 °F and more moist; from memory);
 * those of heat and cold are our own choice. All are whole °F, as figures are shown. No climate
 * zone of a building code is named: zones go by county and rain, of which typical years know
 * nothing, and their degree-days alone put Phoenix and Las Vegas one zone too hot. The words agree
 * with the published zones of all cities compared ({@code ClimateKindPublishedTest}).
 *
 * @param summers by the dry bulb passed in 1 % of hours
 * @param moisture by the dew point of those hours
 * @param winters by the dry bulb passed in 99 % of hours
 */
public record ClimateKind(Summers summers, Moisture moisture, Winters winters) {

  /** How hot summers are. */
  public enum Summers {
    /** 100 °F or more. */
    VERY_HOT("very hot", 100),
    /** 90 to 99 °F. */
    HOT("hot", 90),
    /** 80 to 89 °F. */
    WARM("warm", 80),
    /** 70 to 79 °F. */
    MILD("mild", 70),
    /** Below 70 °F. */
    COOL("cool", -1000);

    private final String word;
    private final double from;

    Summers(String word, double from) {
      this.word = word;
      this.from = from;
    }

    private static Summers of(double celsius) {
      return Arrays.stream(values())
          .filter(each -> shown(celsius) >= each.from)
          .findFirst()
          .orElseThrow();
    }
  }

  /** How moist the air of hot hours is. */
  public enum Moisture {
    /** Dew point of 65 °F or more. */
    HUMID("humid", 65),
    /** Dew point of 56 to 64 °F. */
    FAIRLY_HUMID("fairly humid", 56),
    /** Dew point of 55 °F or less. */
    DRY("dry", -1000);

    private final String word;
    private final double from;

    Moisture(String word, double from) {
      this.word = word;
      this.from = from;
    }

    private static Moisture of(double celsius) {
      return Arrays.stream(values())
          .filter(each -> shown(celsius) >= each.from)
          .findFirst()
          .orElseThrow();
    }
  }

  /** How cold winters are. */
  public enum Winters {
    /** 45 °F or more. */
    WARM("warm", 45),
    /** 20 to 44 °F. */
    MILD("mild", 20),
    /** 0 to 19 °F. */
    COLD("cold", 0),
    /** Below 0 °F. */
    VERY_COLD("very cold", -1000);

    private final String word;
    private final double from;

    Winters(String word, double from) {
      this.word = word;
      this.from = from;
    }

    private static Winters of(double celsius) {
      return Arrays.stream(values())
          .filter(each -> shown(celsius) >= each.from)
          .findFirst()
          .orElseThrow();
    }
  }

  /**
   * The kind of a station.
   *
   * @param climate its climate
   * @return its kind
   */
  public static ClimateKind of(StationClimate climate) {
    return new ClimateKind(
        Summers.of(climate.at(Level.P1).dryBulb()),
        Moisture.of(hotDewPoint(climate)),
        Winters.of(climate.winter().dryBulb99()));
  }

  /**
   * Dew point of the hours about the 1 % dry bulb, by their mean wet bulb.
   *
   * @param climate climate of a station
   * @return dew point, °C
   */
  public static double hotDewPoint(StationClimate climate) {
    HotPoint hot = climate.at(Level.P1);
    return AirState.ofWetBulb(hot.dryBulb(), hot.wetBulb(), climate.pressure()).dewPoint();
  }

  /**
   * Words for the summers; moisture is left out where they are cool.
   *
   * @return such as "hot, humid"
   */
  public String summerWords() {
    return summers == Summers.COOL ? summers.word : summers.word + ", " + moisture.word;
  }

  /**
   * Word for the winters.
   *
   * @return such as "mild"
   */
  public String winterWords() {
    return winters.word;
  }

  /**
   * The kind in words.
   *
   * @return such as "hot, humid summers, mild winters"
   */
  public String words() {
    return summerWords() + " summers, " + winterWords() + " winters";
  }

  /** Whole °F, as shown. */
  private static double shown(double celsius) {
    return Math.rint(Units.fahrenheit(celsius));
  }
}
