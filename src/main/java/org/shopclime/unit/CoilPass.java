package org.shopclime.unit;

import org.shopclime.air.MoistAir;

/**
 * One pass of room air through the coil of a unit that runs flat out; the method is told at {@link
 * RoomUnit#at}.
 *
 * @param unit the unit
 * @param outdoor outdoor dry bulb, °C
 * @param t entering dry bulb, °C
 * @param wetBulb entering wet bulb, °C
 * @param w entering humidity ratio, kg/kg
 * @param p pressure, Pa
 * @param massFlow dry air, kg/s
 * @param bypass part of it that passes untouched
 */
record CoilPass(
    RoomUnit unit,
    double outdoor,
    double t,
    double wetBulb,
    double w,
    double p,
    double massFlow,
    double bypass) {

  /** Closeness of the wet bulb that just wets the coil, K. */
  private static final double CLOSE = 1e-10;

  private static final int MOST_STEPS = 100;

  /** What the unit does to this air. */
  Delivered delivered() {
    double total = unit.total(wetBulb, outdoor);
    double missing = Saturation.humidityRatio(face(w, total), p) - w;
    return missing >= 0 ? dry(wetBulbThatJustWets(missing)) : wet(total);
  }

  private Delivered wet(double total) {
    double h = MoistAir.enthalpy(t, w);
    double apparatusDewPoint = Saturation.temperature(h - total / touched(), p);
    double saturated = Math.min(w, Saturation.humidityRatio(apparatusDewPoint, p));
    double leavingW = saturated + bypass * (w - saturated);
    double leavingH = h - total / massFlow;
    double leavingT = MoistAir.dryBulbFromEnthalpy(leavingH, leavingW);
    if (leavingW > Saturation.humidityRatio(leavingT, p)) {
      leavingT = Saturation.temperature(leavingH, p);
      leavingW = Saturation.humidityRatio(leavingT, p);
    }
    double condensate = massFlow * (w - leavingW);
    double latent = condensate * Saturation.vapourEnthalpy(t);
    return new Delivered(
        total,
        total - latent,
        latent,
        unit.power(wetBulb, outdoor, total),
        leavingT,
        leavingW,
        apparatusDewPoint,
        bypass,
        massFlow,
        condensate,
        false,
        unit.limits(wetBulb, outdoor, apparatusDewPoint));
  }

  private Delivered dry(double justWets) {
    double total = unit.total(justWets, outdoor);
    double face = face(w, total);
    return new Delivered(
        total,
        total,
        0,
        unit.power(justWets, outdoor, total),
        t - total / (massFlow * MoistAir.humidHeat(w)),
        w,
        face,
        bypass,
        massFlow,
        0,
        true,
        unit.limits(justWets, outdoor, face));
  }

  /**
   * The wet bulb at which air of the entering dry bulb is just as moist as saturation at the coil
   * face. It lies between the entering wet bulb, where water is missing, and the dry bulb, where
   * air is saturated: secant steps, halved where one would leave that bracket. If it lies below the
   * tested range, the entering wet bulb is returned, as the curves hold the same edge for both.
   */
  private double wetBulbThatJustWets(double missingAtEntering) {
    double low = wetBulb;
    double high = t;
    double missingBefore = missingAtEntering;
    double edge = unit.curves().lowestWetBulb();
    if (low < edge && high > edge) {
      low = edge;
      missingBefore = missing(edge);
    }
    if (high <= edge || missingBefore <= 0) {
      return wetBulb;
    }
    double before = low;
    double now = Math.min(low + 1, 0.5 * (low + high));
    for (int i = 0; i < MOST_STEPS; i++) {
      double missingNow = missing(now);
      if (missingNow > 0) {
        low = now;
      } else {
        high = now;
      }
      double next = now - missingNow * (now - before) / (missingNow - missingBefore);
      if (!(next >= low && next <= high)) {
        next = 0.5 * (low + high);
      }
      if (Math.abs(next - now) < CLOSE) {
        return next;
      }
      before = now;
      missingBefore = missingNow;
      now = next;
    }
    throw new ArithmeticException("no wet bulb just wets the coil in " + this);
  }

  /** Water that air of the entering dry bulb and this wet bulb lacks to wet the face, kg/kg. */
  private double missing(double trialWetBulb) {
    double trial = MoistAir.humidityRatioFromWetBulb(t, trialWetBulb, p);
    return Saturation.humidityRatio(face(trial, unit.total(trialWetBulb, outdoor)), p) - trial;
  }

  /** Temperature of the touched air if it loses no water, °C. */
  private double face(double humidityRatio, double total) {
    return t - total / (touched() * MoistAir.humidHeat(humidityRatio));
  }

  /** Dry air that meets the coil, kg/s. */
  private double touched() {
    return massFlow * (1 - bypass);
  }
}
