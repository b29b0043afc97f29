package org.shopclime.plan;

import org.shopclime.run.LivedDay;

/**
 * What a fan that runs on while the compressor rests does on the hot day, beside the same unit
 * whose fan stops with it.
 *
 * @param runsOn the unit as it is
 * @param stopping its fan stopping with the compressor
 */
public record FanAnswer(Effect runsOn, Effect stopping) {

  /**
   * One way of the fan.
   *
   * @param humidity relative humidity of the dampest judged hour, 0 to 1; 0 where none is judged
   * @param indoorPeak hottest judged hour, °C
   * @param holds whether the unit holds
   * @param energy electricity of the unit that day, kWh
   */
  public record Effect(double humidity, double indoorPeak, boolean holds, double energy) {

    private static final double HOURS = 24;
    private static final double WATTS_PER_KILOWATT = 1000;

    private static Effect of(LivedDay day) {
      return new Effect(
          day.judged().stream().mapToDouble(day.trace().relativeHumidity()::at).max().orElse(0),
          day.peakTemperature(),
          day.holds(),
          day.trace().power().mean() * HOURS / WATTS_PER_KILOWATT);
    }
  }

  static FanAnswer of(LivedDay runsOn, LivedDay stopping) {
    return new FanAnswer(Effect.of(runsOn), Effect.of(stopping));
  }
}
