package org.shopclime.climate;

/**
 * The columns read from an hourly file: header as printed in NREL/TP-581-43156, table 1-2, the
 * factor that makes SI of it, and the range taken as written. A missing-value code (-9900) falls
 * outside.
 */
enum WeatherColumn {
  GLOBAL("GHI (W/m^2)", 1, 0, 1600),
  DIRECT_NORMAL("DNI (W/m^2)", 1, 0, 1500),
  DIFFUSE("DHI (W/m^2)", 1, 0, 1200),
  TOTAL_CLOUD("TotCld (tenths)", 0.1, 0, 10),
  OPAQUE_CLOUD("OpqCld (tenths)", 0.1, 0, 10),
  DRY_BULB("Dry-bulb (C)", 1, -70, 75),
  DEW_POINT("Dew-point (C)", 1, -80, 40),
  RELATIVE_HUMIDITY("RHum (%)", 0.01, 0, 100),
  PRESSURE("Pressure (mbar)", 100, 550, 1100),
  WIND_SPEED("Wspd (m/s)", 1, 0, 80),
  WATER("Pwat (cm)", 1, 0, 12),
  AEROSOL("AOD (unitless)", 1, 0, 3),
  ALBEDO("Alb (unitless)", 1, 0, 1);

  private final String header;
  private final double toSi;
  private final double low;
  private final double high;

  WeatherColumn(String header, double toSi, double low, double high) {
    this.header = header;
    this.toSi = toSi;
    this.low = low;
    this.high = high;
  }

  /** Name and unit of the column, as in the file. */
  String header() {
    return header;
  }

  /** Whether a figure as written can be true. */
  boolean takes(double written) {
    return written >= low && written <= high;
  }

  /** The figure in SI. */
  double si(double written) {
    return written * toSi;
  }

  /** What a cell of this column takes, in words. */
  String range() {
    return "a number from " + (long) low + " to " + (long) high;
  }
}
