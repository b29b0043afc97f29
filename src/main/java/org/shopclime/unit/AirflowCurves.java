package org.shopclime.unit;

/**
 * What the indoor airflow, as a fraction of the clean one, does to a unit.
 *
 * <p>These are figures of clean coils with less air. Published results of dirty coils are worse:
 * one third of the air lost to blockage is told as 20 % of the capacity lost (trade article), and
 * 100 g of fouling as the efficiency falling to 67 % (Ali and Ismail, HVAC and R Research 14(2),
 * 2008).
 */
sealed interface AirflowCurves permits WindowAirflow, ResidentialAirflow {

  /** Fractions the curves are used for; from memory. */
  Range TESTED = new Range(0.6, 1);

  /** Capacity as a fraction of that at full airflow. */
  double capacity(double fraction);

  /** Power per capacity as a fraction of that at full airflow. */
  double powerPerCapacity(double fraction);
}
