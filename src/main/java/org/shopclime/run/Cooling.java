package org.shopclime.run;

import java.util.List;
import org.shopclime.unit.RoomUnit;
import org.shopclime.unit.StandardSizes;

/**
 * A cooling unit in a room of the shop.
 *
 * @param unit the unit
 * @param room index of the room it cools
 */
public record Cooling(RoomUnit unit, int room) {

  /** Which rating an efficiency is. */
  public enum Label {
    /** Cooling for each watt-hour while running. */
    EER,
    /** The same with a year's standby added. */
    CEER
  }

  /**
   * A window unit from its label.
   *
   * @param room index of the room it cools
   * @param capacity rated total capacity, W
   * @param efficiency rated cooling for each watt, W/W
   * @param label which rating that is
   * @param airflow part of the clean indoor airflow that dust leaves, 0.3 to 1
   * @return the unit in its room
   */
  public static Cooling window(
      int room, double capacity, double efficiency, Label label, double airflow) {
    RoomUnit unit =
        label == Label.CEER
            ? RoomUnit.windowUnitByCeer(capacity, efficiency)
            : RoomUnit.windowUnitByEer(capacity, efficiency);
    return new Cooling(unit.withAirflowFraction(airflow), room);
  }

  /**
   * The sizes window units are sold in.
   *
   * @return rated total capacity, W, rising
   */
  public static List<Double> sizes() {
    return StandardSizes.watts();
  }
}
