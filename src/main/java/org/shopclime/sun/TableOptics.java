package org.shopclime.sun;

/**
 * Glass by a table over the angle; between its rows figures run straight.
 *
 * @param table the table
 */
record TableOptics(AngleTable table) implements PassByAngle {

  @Override
  public Pass at(double incidenceDeg) {
    if (incidenceDeg >= 90) {
      return new Pass(0, 0, 0);
    }
    int above = 1;
    while (table.rows().get(above).angleDeg() < incidenceDeg) {
      above++;
    }
    AngleTable.Row low = table.rows().get(above - 1);
    AngleTable.Row high = table.rows().get(above);
    double share = (incidenceDeg - low.angleDeg()) / (high.angleDeg() - low.angleDeg());
    return pass(low).times(1 - share).plus(pass(high).times(share));
  }

  private static Pass pass(AngleTable.Row row) {
    return new Pass(
        row.transmitted(), row.absorbedOutside() + row.absorbedInside(), row.absorbedInside());
  }
}
