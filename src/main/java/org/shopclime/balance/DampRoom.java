package org.shopclime.balance;

import org.shopclime.envelope.Vapour;
import org.shopclime.shop.HumidityClass;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;

/**
 * Air of a held room as it is taken for damp walls. Nothing of it is run: it is what the owner
 * wishes, day and night.
 *
 * <p>In a month as warm as the wished temperature, and on the hot and the humid day, the room is
 * cooled to that temperature and the wished humidity. In a month colder than it is heated to, it is
 * heated; else it is as warm as outdoors. Where it is not cooled its air holds more vapour than
 * outdoors: {@link #excess} at 0 °C and below, falling straight to nothing at 20 °C; where it is
 * heated, a relative humidity that the owner tells takes the place of that.
 *
 * <p>Source: ISO 13788:2012, annex A: upper limits of humidity classes, class 2 (offices and shops)
 * unless told (from memory). A burner without a flue, wet work or drying wood makes far more.
 *
 * @param room index of the room
 * @param celsius mean air temperature, °C
 * @param pressure vapour pressure, Pa
 * @param state what holds it there
 */
public record DampRoom(int room, double celsius, double pressure, State state) {

  /** Step from class to class, Pa. */
  private static final double STEP = 270;

  private static final double WARM = 20;

  /** What holds a room's air. */
  public enum State {
    /** Cooled to the wished temperature and humidity. */
    COOLED,
    /** Heated. */
    HEATED,
    /** As warm as outdoors. */
    LEFT
  }

  /**
   * Air of a room at a time.
   *
   * @param index index of the room
   * @param room the room, one of those that are held
   * @param winter temperature the shop is heated to, °C
   * @param time the time
   * @return its air
   */
  static DampRoom of(int index, Room room, double winter, DampTime time) {
    double wished = room.setPoint();
    boolean cools = room.cooling() != RoomCooling.NONE;
    if (!time.isMonth() || (cools && time.outdoor() >= wished)) {
      double pressure = room.wishedHumidity() * Vapour.saturation(wished);
      return new DampRoom(index, wished, pressure, State.COOLED);
    }
    double heated = Math.min(wished, room.heatedTo().orElse(winter));
    boolean heats = room.heating() == RoomHeating.IDEAL && time.outdoor() < heated;
    double celsius = heats ? heated : time.outdoor();
    double share = Math.max(0, Math.min(1, (WARM - time.outdoor()) / WARM));
    double excess = excess(room.winterAir().moisture()) * share;
    double byClass = Math.min(time.outdoorPressure() + excess, Vapour.saturation(celsius));
    double pressure =
        room.winterAir()
            .humidity()
            .filter(told -> heats)
            .map(told -> told * Vapour.saturation(celsius))
            .orElse(byClass);
    return new DampRoom(index, celsius, pressure, heats ? State.HEATED : State.LEFT);
  }

  /**
   * Vapour pressure above outdoors in cold months.
   *
   * @param moisture humidity class
   * @return its upper limit at 0 °C outdoors and below, Pa
   */
  public static double excess(HumidityClass moisture) {
    return switch (moisture) {
      case CLASS_1 -> STEP;
      case CLASS_2 -> 2 * STEP;
      case CLASS_3 -> 3 * STEP;
      case CLASS_4 -> 4 * STEP;
    };
  }

  /**
   * Relative humidity.
   *
   * @return 0 to 1
   */
  public double humidity() {
    return pressure / Vapour.saturation(celsius);
  }
}
