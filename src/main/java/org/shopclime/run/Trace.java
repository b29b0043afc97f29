package org.shopclime.run;

import org.shopclime.balance.Profile;

/**
 * A room through one day, means of each hour.
 *
 * @param air air temperature, °C
 * @param operative mean of air and radiant temperature, what a person at the bench feels in still
 *     air, °C
 * @param dewPoint dew point, °C
 * @param relativeHumidity relative humidity, 0 to 1
 * @param sensible sensible heat the unit takes out, W
 * @param latent latent heat the unit takes out, W
 * @param canGive sensible heat the unit would take out running all the hour, W; 0 while off
 * @param canGiveLatent latent heat it would take out running all the hour, W
 * @param running part of the hour that the unit runs, 0 to 1
 * @param power electric power of the unit, W
 * @param starts starts of the unit in an hour
 * @param drierPower electric power of the room's dehumidifier, W
 * @param drierWater water that takes out, kg/s
 */
public record Trace(
    Profile air,
    Profile operative,
    Profile dewPoint,
    Profile relativeHumidity,
    Profile sensible,
    Profile latent,
    Profile canGive,
    Profile canGiveLatent,
    Profile running,
    Profile power,
    Profile starts,
    Profile drierPower,
    Profile drierWater) {

  /**
   * A room without a dehumidifier.
   *
   * @param air air temperature, °C
   * @param operative mean of air and radiant temperature, °C
   * @param dewPoint dew point, °C
   * @param relativeHumidity relative humidity, 0 to 1
   * @param sensible sensible heat the unit takes out, W
   * @param latent latent heat the unit takes out, W
   * @param canGive sensible heat the unit would take out running all the hour, W
   * @param canGiveLatent latent heat it would take out running all the hour, W
   * @param running part of the hour that the unit runs, 0 to 1
   * @param power electric power of the unit, W
   * @param starts starts of the unit in an hour
   */
  public Trace(
      Profile air,
      Profile operative,
      Profile dewPoint,
      Profile relativeHumidity,
      Profile sensible,
      Profile latent,
      Profile canGive,
      Profile canGiveLatent,
      Profile running,
      Profile power,
      Profile starts) {
    this(
        air,
        operative,
        dewPoint,
        relativeHumidity,
        sensible,
        latent,
        canGive,
        canGiveLatent,
        running,
        power,
        starts,
        Profile.of(hour -> 0),
        Profile.of(hour -> 0));
  }
}
