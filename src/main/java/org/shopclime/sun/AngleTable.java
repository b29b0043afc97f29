package org.shopclime.sun;

import java.util.List;

/**
 * What a window does with the beam at some angles.
 *
 * @param rows at least two, their angles rising from 0 to 90 degrees
 */
public record AngleTable(List<Row> rows) {

  /** Copies the list; refuses angles that do not rise from 0 to 90. */
  public AngleTable {
    rows = List.copyOf(rows);
    boolean rises = rows.size() > 1 && rows.get(0).angleDeg() == 0;
    for (int i = 1; i < rows.size(); i++) {
      rises &= rows.get(i).angleDeg() > rows.get(i - 1).angleDeg();
    }
    if (!rises || rows.get(rows.size() - 1).angleDeg() != 90) {
      throw new IllegalArgumentException("angles " + rows + " must rise from 0 to 90 degrees");
    }
  }

  /**
   * One angle.
   *
   * @param angleDeg angle from the line square to the glass, degrees, 0 to 90
   * @param transmitted part that passes, 0 to 1
   * @param absorbedOutside part that stays at the outer surface, 0 to 1
   * @param absorbedInside part that stays at the inner surface, 0 to 1
   */
  public record Row(
      double angleDeg, double transmitted, double absorbedOutside, double absorbedInside) {

    /** Refuses figures outside their ranges, and more light than came. */
    public Row {
      Range.check("angle, degrees", angleDeg, 0, 90);
      Range.check("transmitted", transmitted, 0, 1);
      Range.check("absorbed outside", absorbedOutside, 0, 1);
      Range.check("absorbed inside", absorbedInside, 0, 1);
      Range.check("transmitted and absorbed", transmitted + absorbedOutside + absorbedInside, 0, 1);
    }
  }
}
