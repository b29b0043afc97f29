package org.shopclime.airline;

/**
 * What one thing added to the air line of the best place changes, in its worst working hour.
 *
 * @param kind what is added
 * @param tankWater water that drops out at the machine, g/h
 * @param lineWater water that drops out in pipe and hose, g/h
 * @param dryerWater water that a dryer takes out, g/h
 * @param litresToDrain over a day of such hours, litres
 * @param pressureDewPoint before the coldest stretch, °C
 * @param coldestStretch °C
 */
public record LineChange(
    Kind kind,
    double tankWater,
    double lineWater,
    double dryerWater,
    double litresToDrain,
    double pressureDewPoint,
    double coldestStretch) {

  /** What is added to the line. */
  public enum Kind {
    /** Nothing: the line as it is. */
    AS_IT_IS,
    /** An aftercooler before the tank. */
    AFTERCOOLER,
    /** A long metal drop leg with drains before the hose. */
    DROP_LEG,
    /** A refrigerated dryer. */
    REFRIGERATED_DRYER,
    /** A desiccant dryer. */
    DESICCANT_DRYER,
    /** Nothing but another intake: the cool, dry air of the work room. */
    ROOM_INTAKE,
    /** Nothing but another intake: outdoor air. */
    OUTDOOR_INTAKE
  }
}
