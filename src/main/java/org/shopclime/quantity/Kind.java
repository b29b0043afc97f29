package org.shopclime.quantity;

/** What a quantity measures; each kind knows the units it may be written in. */
public enum Kind {
  /** Length, m. */
  LENGTH,
  /** Area, m². */
  AREA,
  /** Volume, m³. */
  VOLUME,
  /** Angle, degrees. */
  ANGLE,
  /** Temperature, °C. */
  TEMPERATURE,
  /** Temperature difference, K. */
  TEMPERATURE_DIFFERENCE,
  /** Fraction, 1; written as a percentage or a plain number. */
  FRACTION,
  /** Thermal resistance of one unit of area, m²·K/W; "R-15" is h·ft²·°F/BTU. */
  R_VALUE,
  /** Thermal transmittance or film coefficient, W/(m²·K). */
  U_FACTOR,
  /** Thermal conductivity, W/(m·K). */
  CONDUCTIVITY,
  /** Permeance for water vapour, kg/(s·m²·Pa); also US perm. */
  PERMEANCE,
  /** Density, kg/m³. */
  DENSITY,
  /** Specific heat, J/(kg·K). */
  SPECIFIC_HEAT,
  /** Mass, kg. */
  MASS,
  /** Power or heat flow, W; also hp, kW, BTU/h, tons of cooling. */
  POWER,
  /** Volume flow of air, m³/s. */
  AIR_FLOW,
  /** Water in time, kg/s, a liter taken as a kilogram; pints a day on labels. */
  WATER_FLOW,
  /** Air changes, 1/h (kept per hour). */
  AIR_CHANGES,
  /** Effective leakage area at 4 Pa, m². */
  LEAKAGE_AREA,
  /** Speed, m/s. */
  SPEED,
  /** Pressure, Pa. */
  PRESSURE,
  /** Duration, s. */
  DURATION,
  /** Cooling per power, W/W; also BTU/Wh (EER, CEER). */
  EFFICIENCY,
  /** Electric tension, V. */
  VOLTAGE,
  /** Electric current, A. */
  CURRENT,
  /** Money, US dollars. */
  MONEY,
  /** Electric energy or heat as bills have it, kWh (kept in kWh). */
  ENERGY,
  /** Price of electricity, $/kWh (kept for a kWh). */
  ENERGY_PRICE,
  /** Price of the heat in a fuel, $/kWh (kept for a kWh); also $/therm. */
  HEAT_PRICE,
  /** Price of a liquid, $/m³; also $/gal. */
  LIQUID_PRICE,
  /** Charge for the greatest power of a month, $/kW (kept for a kW). */
  DEMAND_PRICE,
  /** Extinction coefficient of glass, 1/m. */
  EXTINCTION,
  /** A count, 1. */
  COUNT
}
