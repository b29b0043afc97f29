package org.shopclime.plan;

import java.util.Optional;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;

/**
 * What the dehumidifier of the room that is told does on the hot day, day and night.
 *
 * @param energy electricity it draws, kWh
 * @param water water it takes out, kg
 * @param with the room with it
 * @param without the room without it
 */
public record DrierAnswer(double energy, double water, Effect with, Effect without) {

  private static final double KILOWATT_HOURS = 24 / 1000.0;
  private static final double DAY = 86_400;

  /**
   * A room.
   *
   * @param humidity highest relative humidity of the day, hourly mean, 0 to 1
   * @param meanHumidity mean of the day
   * @param indoorPeak hottest hour that counts, °C
   * @param unitEnergy electricity of the unit that day, kWh
   */
  public record Effect(double humidity, double meanHumidity, double indoorPeak, double unitEnergy) {

    private static Effect of(LivedDay day) {
      Trace trace = day.trace();
      return new Effect(
          trace.relativeHumidity().peak(),
          trace.relativeHumidity().mean(),
          day.peakTemperature(),
          KILOWATT_HOURS * trace.power().mean());
    }
  }

  /**
   * What a whole answer says of it.
   *
   * @param answer the answer
   * @return nothing where no dehumidifier stands in the room that is told
   */
  public static Optional<DrierAnswer> of(SizeAnswer answer) {
    CoreAnswer core = answer.core();
    LivedDay with = core.unit().orElse(core.without());
    if (answer.shop().rooms().get(core.room()).dehumidifier().isEmpty()) {
      return Optional.empty();
    }
    return answer.scenarios().stream()
        .filter(each -> each.name().equals(Scenarios.DRIER_OFF))
        .findFirst()
        .flatMap(Scenario::day)
        .map(
            off ->
                new DrierAnswer(
                    KILOWATT_HOURS * with.trace().drierPower().mean(),
                    DAY * with.trace().drierWater().mean(),
                    Effect.of(with),
                    Effect.of(off.lived())));
  }
}
