package org.shopclime.unit;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.shopclime.quantity.Units;

/**
 * The rule of thumb by floor area that most buyers meet first, to set beside a computed answer.
 *
 * <p>Source: room-size guidance of the U.S. Department of Energy's labelling programme for room air
 * conditioners. It is meant for rooms of a home with 8 ft ceilings; no wall, roof or machine is in
 * it. Rows that are not among the published checks are from memory.
 */
public final class RoomSizeGuide {

  /** BTU/h to add for each person beyond two. */
  public static final double BTUH_PER_PERSON_BEYOND_TWO = 600;

  /** BTU/h to add where the room is a kitchen. */
  public static final double BTUH_KITCHEN = 4000;

  /** Least area of the table, ft². */
  private static final double LEAST = 100;

  /** Largest area of the table, ft², itself included. */
  private static final double LARGEST = 2500;

  /** BTU/h by the area, ft², from which it holds, up to the next. */
  private static final NavigableMap<Double, Double> TABLE =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(100.0, 5000.0),
              Map.entry(150.0, 6000.0),
              Map.entry(250.0, 7000.0),
              Map.entry(300.0, 8000.0),
              Map.entry(350.0, 9000.0),
              Map.entry(400.0, 10000.0),
              Map.entry(450.0, 12000.0),
              Map.entry(550.0, 14000.0),
              Map.entry(700.0, 18000.0),
              Map.entry(1000.0, 21000.0),
              Map.entry(1200.0, 23000.0),
              Map.entry(1400.0, 24000.0),
              Map.entry(1500.0, 30000.0),
              Map.entry(2000.0, 34000.0)));

  private RoomSizeGuide() {}

  /**
   * The size the table gives, before corrections.
   *
   * @param m2 floor area, m², 9.29 to 232.26 (100 to 2,500 ft²); an area on the edge of two rows
   *     takes the larger
   * @return rated total capacity, BTU/h
   * @throws IllegalArgumentException if the table does not reach there, or NaN
   */
  public static double btuhForArea(double m2) {
    if (!covers(m2)) {
      throw new IllegalArgumentException(
          "area "
              + m2
              + " m² is not within "
              + Units.squareMetresFromSquareFeet(LEAST)
              + " to "
              + Units.squareMetresFromSquareFeet(LARGEST));
    }
    return TABLE.floorEntry(squareFeet(m2)).getValue();
  }

  /**
   * Whether the table reaches this area.
   *
   * @param m2 floor area, m²
   * @return true from 100 to 2,500 ft²
   */
  public static boolean covers(double m2) {
    double feet = squareFeet(m2);
    return feet >= LEAST && feet <= LARGEST;
  }

  /**
   * A size corrected for sun and people.
   *
   * @param btuh size of the table, BTU/h, 0 or more
   * @param sun how much sun the room gets
   * @param people how many are usually in it, 0 or more
   * @return rated total capacity, BTU/h
   * @throws IllegalArgumentException if negative, infinite or NaN
   */
  public static double corrected(double btuh, Sun sun, int people) {
    if (!(btuh >= 0 && btuh < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("size " + btuh + " BTU/h is not 0 or more");
    }
    if (people < 0) {
      throw new IllegalArgumentException("people " + people + " is not 0 or more");
    }
    return btuh * sun.factor + BTUH_PER_PERSON_BEYOND_TWO * Math.max(0, people - 2);
  }

  /** To a thousandth of a ft², so that a converted edge stays on its row. */
  private static double squareFeet(double m2) {
    return Math.rint(Units.squareFeet(m2) * 1000) / 1000;
  }

  /** How much sun the room gets. */
  public enum Sun {
    /** Heavily shaded: 10 % less. */
    HEAVY_SHADE(0.9),
    /** Neither: as the table. */
    USUAL(1),
    /** Very sunny: 10 % more. */
    VERY_SUNNY(1.1);

    private final double factor;

    Sun(double factor) {
      this.factor = factor;
    }
  }
}
