package org.shopclime.unit;

/** NREL/TP-5500-57617 (2013) for capacity; power unmoved, see {@link CurveSet#windowUnit}. */
record WindowAirflow() implements AirflowCurves {

  @Override
  public double capacity(double fraction) {
    return 0.887 + 0.1128 * fraction;
  }

  @Override
  public double powerPerCapacity(double fraction) {
    return 1 / capacity(fraction);
  }
}
