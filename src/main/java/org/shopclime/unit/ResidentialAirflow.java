package org.shopclime.unit;

/** NREL/TP-5500-56354 (2013). */
record ResidentialAirflow() implements AirflowCurves {

  @Override
  public double capacity(double fraction) {
    return 0.718605468 + (0.410099989 - 0.128705457 * fraction) * fraction;
  }

  @Override
  public double powerPerCapacity(double fraction) {
    return 1.32299905 + (-0.477711207 + 0.154712157 * fraction) * fraction;
  }
}
