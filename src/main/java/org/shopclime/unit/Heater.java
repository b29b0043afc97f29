package org.shopclime.unit;

import java.util.Arrays;
import java.util.List;
import org.shopclime.air.AirState;

/**
 * An electric resistance heater: every watt drawn becomes a watt of heat (coefficient of
 * performance 1).
 *
 * @param watts rated power and heat, W, above 0
 */
public record Heater(double watts) implements RoomPlant {

  /** Largest single heater of the list, W. */
  private static final double LARGEST = 15000;

  /** Beyond the largest, several heaters are counted in steps of this, W. */
  private static final double STEP = 5000;

  private static final double[] SIZES = {
    750, 1000, 1500, 2000, 3000, 4000, 5000, 7500, 10000, LARGEST
  };

  /** Checks the range. */
  public Heater {
    Figures.requirePositive("heater", watts, "W");
  }

  @Override
  public RoomEffect at(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    return RoomEffect.heatOfPower(demand * watts, demand, 0);
  }

  /**
   * The sizes sold, rising: 750, 1,000 and 1,500 W for 120 V, then 2,000 to 15,000 W for 240 V.
   *
   * <p>Source: common practice in the United States.
   *
   * @return W, unmodifiable
   */
  public static List<Double> sizes() {
    return Arrays.stream(SIZES).boxed().toList();
  }

  /**
   * Heater power that covers a heat loss: the next size sold; beyond 15,000 W, where several
   * heaters share, the next multiple of 5,000 W.
   *
   * @param lossWatts heat loss, W, 0 or more
   * @return W; 0 for no loss
   * @throws IllegalArgumentException if negative, infinite or NaN
   */
  public static double heaterWattsCovering(double lossWatts) {
    if (!(lossWatts >= 0 && lossWatts < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("loss " + lossWatts + " W is not 0 or more");
    }
    if (lossWatts == 0) {
      return 0;
    }
    return Arrays.stream(SIZES)
        .filter(size -> size >= lossWatts)
        .findFirst()
        .orElseGet(() -> STEP * Math.ceil(lossWatts / STEP));
  }
}
