package org.shopclime.unit;

/**
 * What dust on the coil does, as a band: published figures of clean coils with less air at the kind
 * end, of dirty coils at the unkind one.
 *
 * <p>Source: kind end, the airflow curves of NREL/TP-5500-56354 (2013), see {@link
 * CurveSet#residentialSingleSpeed}. Unkind end, capacity falling straight to 0.8 with a third of
 * the air lost (trade article on fouled coils: three tons act as two and a half) and efficiency
 * straight to 0.67 (COP 2.82 and 1.89, Ali and Ismail, HVAC and R Research 14(2), 2008: room units,
 * 100 g of fouling). The two are different works, and the second names no airflow: that it is the
 * same state of dirt is our reading, and so power flat out at the unkind end reads high. Both ends
 * are held beyond two fifths lost, where the curves end.
 *
 * @param lostAirflow part of the clean airflow lost, 0 to 0.7
 */
public record DustBand(double lostAirflow) {

  /** Largest loss taken: what {@link RoomUnit#LEAST_AIRFLOW_FRACTION} leaves. */
  private static final Range LOST = new Range(0, 1 - RoomUnit.LEAST_AIRFLOW_FRACTION);

  /** Airflow lost in the two unkind figures, 1. */
  private static final double THIRD = 1.0 / 3;

  private static final double CAPACITY_LOST_AT_THIRD = 0.20;
  private static final double EFFICIENCY_LOST_AT_THIRD = 1 - 1.89 / 2.82;

  private static final AirflowCurves CLEAN = new ResidentialAirflow();

  /** Checks the range. */
  public DustBand {
    LOST.require("airflow lost", lostAirflow, "");
  }

  /**
   * One end of the band, as parts of what the clean unit does in the same air.
   *
   * @param airflow airflow left, part of the clean one, 0.3 to 1
   * @param capacity total capacity left, 0 to 1
   * @param efficiency cooling for each watt-hour left, 0 to 1
   */
  public record End(double airflow, double capacity, double efficiency) {

    /**
     * Power drawn flat out.
     *
     * @return part of the clean one's; may be above 1
     */
    public double power() {
      return capacity / efficiency;
    }

    /**
     * Electricity for the same cooling.
     *
     * @return part of the clean one's, 1 or more
     */
    public double energy() {
      return 1 / efficiency;
    }

    /**
     * Capacity that brushing the coil gives back, beside the clean capacity.
     *
     * @return 0 to 1
     */
    public double capacityGivenBack() {
      return 1 - capacity;
    }

    /**
     * Part of the bill for cooling that brushing the coil gives back.
     *
     * @return 0 to 1
     */
    public double energyGivenBack() {
      return 1 - efficiency;
    }
  }

  /**
   * The kind end: a clean coil with so much less air.
   *
   * @return the end
   */
  public End kind() {
    double left = 1 - counted();
    // the curves as they are at full air give 1.000 but for rounding in print
    return new End(
        1 - lostAirflow,
        CLEAN.capacity(left) / CLEAN.capacity(1),
        CLEAN.powerPerCapacity(1) / CLEAN.powerPerCapacity(left));
  }

  /**
   * The unkind end: a dirty coil.
   *
   * @return the end
   */
  public End unkind() {
    double thirds = counted() / THIRD;
    return new End(
        1 - lostAirflow,
        1 - CAPACITY_LOST_AT_THIRD * thirds,
        1 - EFFICIENCY_LOST_AT_THIRD * thirds);
  }

  /**
   * Whether more air is lost than the curves were tested for, so that both ends are held.
   *
   * @return true beyond two fifths
   */
  public boolean isBeyondTested() {
    return lostAirflow > counted();
  }

  private double counted() {
    return Math.min(lostAirflow, 1 - AirflowCurves.TESTED.low());
  }
}
