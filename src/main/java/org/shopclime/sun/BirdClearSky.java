package org.shopclime.sun;

/**
 * Cloudless sun from what hangs in the air: ozone, water vapour, dust.
 *
 * <p>Source: R. E. Bird and R. L. Hulstrom, A Simplified Clear Sky Model for Direct and Diffuse
 * Insolation on Horizontal Surfaces, SERI/TR-642-761 (1981). Departures: the strength outside the
 * air is that of {@link AstronomicalDay} (the report has 1353 W/m²); the aerosol depth is the
 * report's broadband one, given as it is instead of from depths at two wavelengths; the Rayleigh
 * curve, which turns back up beyond an air mass of 14 (sun below 3.4 degrees), is held there.
 *
 * <p>Error: a few per cent of the beam against rigorous models for sun higher than 10 degrees, by
 * the report; the unknown aerosol moves it more.
 */
public final class BirdClearSky {

  /** Ozone above the ground when nothing better is known, cm at standard state. */
  public static final double USUAL_OZONE_CM = 0.3;

  /** Share of the light scattered by aerosol that goes forward (rural aerosol). */
  private static final double FORWARD = 0.84;

  /** Absorbing part of the aerosol (the report's K1). */
  private static final double ABSORBING = 0.1;

  /** Air mass at which the Rayleigh curve takes most. */
  private static final double RAYLEIGH_TURNS = 14;

  /**
   * Sun below which nothing is reckoned: in clean air the fit of scattered light turns negative
   * there, and what is left out is below 6 W/m² on the level, below 2 with usual aerosol.
   */
  private static final double LOWEST_DEG = 0.5;

  /** Pressure to which the air mass is referred, Pa. */
  private static final double SEA_LEVEL_PA = 101_325;

  private BirdClearSky() {}

  /**
   * Clear sky for a height of the sun.
   *
   * @param altitudeDeg height of the sun, degrees, -90 to 90; nothing comes at half a degree or
   *     below
   * @param dayOfYear day of the year, 1 to 366
   * @param pressurePa air pressure, Pa, 30000 to 110000
   * @param ozoneCm ozone, cm at standard state, 0 to 1
   * @param waterCm precipitable water, cm, 0 to 15
   * @param aerosolBroadband broadband aerosol optical depth, the report's total depth, 0 to 2
   * @param groundAlbedo reflectance of the land around, 0 to 1
   * @return beam, sky and both on the level
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static ClearSky at(
      double altitudeDeg,
      int dayOfYear,
      double pressurePa,
      double ozoneCm,
      double waterCm,
      double aerosolBroadband,
      double groundAlbedo) {
    Range.check("sun altitude, degrees", altitudeDeg, -90, 90);
    Range.check("pressure, Pa", pressurePa, 30_000, 110_000);
    Range.check("ozone, cm", ozoneCm, 0, 1);
    Range.check("precipitable water, cm", waterCm, 0, 15);
    Range.check("broadband aerosol depth", aerosolBroadband, 0, 2);
    Range.check("ground albedo", groundAlbedo, 0, 1);
    double outside = new AstronomicalDay(dayOfYear).extraterrestrialNormal();
    if (altitudeDeg <= LOWEST_DEG) {
      return ClearSky.DARK;
    }
    double vertical = Math.sin(Math.toRadians(altitudeDeg));
    double mass = 1 / (vertical + 0.15 * Math.pow(3.885 + altitudeDeg, -1.25));
    double massHere = mass * pressurePa / SEA_LEVEL_PA;

    double scattering = Math.min(massHere, RAYLEIGH_TURNS);
    double rayleigh =
        Math.exp(
            -0.0903 * Math.pow(scattering, 0.84) * (1 + scattering - Math.pow(scattering, 1.01)));
    double ozonePath = ozoneCm * mass;
    double ozone =
        1
            - 0.1611 * ozonePath * Math.pow(1 + 139.48 * ozonePath, -0.3035)
            - 0.002715 * ozonePath / (1 + 0.044 * ozonePath + 0.0003 * ozonePath * ozonePath);
    double mixedGases = Math.exp(-0.0127 * Math.pow(massHere, 0.26));
    double waterPath = waterCm * mass;
    double water =
        1 - 2.4959 * waterPath / (Math.pow(1 + 79.034 * waterPath, 0.6828) + 6.385 * waterPath);
    double aerosol =
        Math.exp(
            -Math.pow(aerosolBroadband, 0.873)
                * (1 + aerosolBroadband - Math.pow(aerosolBroadband, 0.7088))
                * Math.pow(mass, 0.9108));
    double aerosolAbsorbed = 1 - ABSORBING * (1 - mass + Math.pow(mass, 1.06)) * (1 - aerosol);
    double aerosolScattered = aerosol / aerosolAbsorbed;

    double direct = 0.9662 * outside * rayleigh * ozone * mixedGases * water * aerosol;
    double scattered =
        0.79
            * outside
            * vertical
            * ozone
            * mixedGases
            * water
            * aerosolAbsorbed
            * (0.5 * (1 - rayleigh) + FORWARD * (1 - aerosolScattered))
            / (1 - mass + Math.pow(mass, 1.02));
    double skyAlbedo = 0.0685 + (1 - FORWARD) * (1 - aerosolScattered);
    double global = (direct * vertical + scattered) / (1 - groundAlbedo * skyAlbedo);
    return new ClearSky(direct, global - direct * vertical, global);
  }
}
