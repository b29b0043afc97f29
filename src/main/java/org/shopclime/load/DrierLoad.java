package org.shopclime.load;

import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.DrierPlate;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;

/**
 * What a dehumidifier brings to a held room: the water that comes in, as much as its label takes
 * out, becomes sensible heat, and so does its power.
 *
 * <p>It runs where the humidity it is set to is no higher than the wished one, at which the room is
 * held; else it stands. By its label at all temperatures: the lived day has its curves.
 */
final class DrierLoad {

  private static final double SECONDS_PER_DAY = 86_400;
  private static final double JOULES_PER_KILOWATT_HOUR = 3.6e6;
  private static final Profile NOTHING = Profile.of(hour -> 0);

  private final boolean there;
  private final Profile sensible;
  private final Profile latent;

  private DrierLoad(boolean there, Profile sensible, Profile latent) {
    this.there = there;
    this.sensible = sensible;
    this.latent = latent;
  }

  /**
   * The dehumidifier of a room.
   *
   * @param model the shop on a day
   * @param room index of a held room
   * @param air air and water of the room without it
   */
  static DrierLoad of(ShopModel model, int room, AirLoads air) {
    Optional<DrierPlate> found = model.drier(room);
    if (found.isEmpty()) {
      return new DrierLoad(false, NOTHING, NOTHING);
    }
    DrierPlate plate = found.get();
    double celsius = model.setPoint(room);
    double set =
        MoistAir.humidityRatioFromRelativeHumidity(celsius, plate.humidity(), model.pressure());
    if (set > model.wishedHumidityRatio(room)) {
      return new DrierLoad(true, NOTHING, NOTHING);
    }
    Profile coming = air.latentTotal();
    double most = plate.litresPerDay() / SECONDS_PER_DAY;
    double vapour = MoistAir.LATENT_HEAT + MoistAir.SPECIFIC_HEAT_VAPOUR * celsius;
    double liquid = MoistAir.SPECIFIC_HEAT_WATER * celsius;
    double electricity = JOULES_PER_KILOWATT_HOUR / plate.litresPerKilowattHour();
    Profile water = Profile.of(hour -> Math.max(0, Math.min(most, coming.at(hour) / vapour)));
    return new DrierLoad(
        true,
        Profile.of(hour -> water.at(hour) * (electricity + vapour - liquid)),
        Profile.of(hour -> -water.at(hour) * vapour));
  }

  /** Its line; nothing where none stands. */
  Optional<Line> line() {
    return there
        ? Optional.of(
            new Line("Dehumidifier", ComponentKind.DEHUMIDIFIER, 0, 0, NOTHING, sensible, latent))
        : Optional.empty();
  }

  /** Sensible heat it gives, W. */
  Profile sensible() {
    return sensible;
  }

  /** Latent heat it gives, W, 0 or less. */
  Profile latent() {
    return latent;
  }
}
