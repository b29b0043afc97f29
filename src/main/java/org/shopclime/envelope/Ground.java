package org.shopclime.envelope;

/**
 * A slab on the ground.
 *
 * <p>Source: ISO 13370:2017, slab on ground. The loss follows the edge more than the area: its
 * characteristic size is B = area / half the exposed perimeter.
 */
public final class Ground {

  /** Surface resistances that ISO 13370 counts in, m²·K/W: inside downwards, outside. */
  private static final double RSI = 0.17;

  private static final double RSE = 0.04;

  /** Conductivity by which the thickness of edge insulation is judged, W/(m·K). */
  private static final double EDGE_FOAM = 0.035;

  private Ground() {}

  /**
   * Steady transmittance from room air to outdoor air through slab and soil, edge insulation
   * counted in.
   *
   * <p>Source: ISO 13370:2017, slab on ground (d<sub>t</sub> = w + λ(Rsi + Rf + Rse); below B the
   * logarithm, above it λ / (0.457 B + d<sub>t</sub>)) and annex on edge insulation (ψ by the extra
   * equivalent thickness; Rsi 0.17, Rse 0.04 are added inside). The insulation takes the place of
   * soil as thick as foam of 0.035 W/(m·K).
   *
   * @param area area of the slab, m², above 0
   * @param exposedPerimeter length of its edge along outdoors, m, above 0; a slab with no edge
   *     along outdoors has no such loss and is not for this formula
   * @param wallThickness thickness of the walls on it, m, 0 to 2
   * @param soilConductivity conductivity of the soil, W/(m·K), 0.2 to 5
   * @param floorResistance resistance of all-over insulation and floor coverings from face to face,
   *     without films and, as in the standard, mostly without a dense slab, m²·K/W, 0 to 20
   * @param edge insulation at the edge
   * @return W/(m²·K)
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double slabUFactor(
      double area,
      double exposedPerimeter,
      double wallThickness,
      double soilConductivity,
      double floorResistance,
      EdgeInsulation edge) {
    Range.requireAbove("area of the slab, m²,", area, 0, 1e6);
    Range.requireAbove("exposed perimeter, m,", exposedPerimeter, 0, 1e5);
    Range.require("thickness of the walls, m,", wallThickness, 0, 2);
    Range.require("conductivity of the soil, W/(m·K),", soilConductivity, 0.2, 5);
    Range.require("resistance of the floor, m²·K/W,", floorResistance, 0, 20);
    double b = area / (exposedPerimeter / 2);
    double dt = wallThickness + soilConductivity * (RSI + floorResistance + RSE);
    double whole =
        dt < b
            ? 2 * soilConductivity / (Math.PI * b + dt) * Math.log(Math.PI * b / dt + 1)
            : soilConductivity / (0.457 * b + dt);
    return whole + 2 * edgeTransmittance(soilConductivity, dt, edge) / b;
  }

  /** ψ of the edge insulation, W/(m·K), 0 or negative. */
  private static double edgeTransmittance(double soil, double dt, EdgeInsulation edge) {
    double extra = soil * edge.resistance() * Math.max(0, 1 - EDGE_FOAM / soil);
    double reach =
        edge.placement() == EdgeInsulation.Placement.VERTICAL ? 2 * edge.reach() : edge.reach();
    return -soil / Math.PI * (Math.log(reach / dt + 1) - Math.log(reach / (dt + extra) + 1));
  }

  /**
   * Depth of soil to model as mass below a slab: the depth wished, or, where slab and so much soil
   * would already resist more than the steady transmittance allows, as much as fits.
   *
   * @param targetU steady transmittance to meet, W/(m²·K), above 0 to 10
   * @param insideFilmR film on the slab, m²·K/W, 0 to 10
   * @param slabResistance slab with all that lies on and under it, m²·K/W, 0 to 30
   * @param wishedDepth depth of soil wished, m, 0 to 2; ISO 13370 takes 0.5
   * @param soilConductivity conductivity of the soil, W/(m·K), 0.2 to 5
   * @return m, at most the depth wished; 0 where film and slab alone already resist more
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double soilDepth(
      double targetU,
      double insideFilmR,
      double slabResistance,
      double wishedDepth,
      double soilConductivity) {
    double room = roomForSoil(targetU, insideFilmR, slabResistance);
    Range.require("depth of soil, m,", wishedDepth, 0, 2);
    Range.require("conductivity of the soil, W/(m·K),", soilConductivity, 0.2, 5);
    return Math.max(0, Math.min(wishedDepth, room * soilConductivity));
  }

  /**
   * Massless layer below slab and soil that makes the steady transmittance of the whole.
   *
   * <p>Source: ISO 13370:2017, virtual layer for calculation by the hour: Rv = 1/U - Rsi - Rf - Rg.
   * Where that is negative, film, slab and soil alone resist more than U allows; the answer is then
   * 0 and the whole conducts less than U, unless the soil is first cut to {@link #soilDepth}, which
   * keeps U exact as long as film and slab alone do not exceed it.
   *
   * @param targetU steady transmittance to meet, W/(m²·K), above 0 to 10
   * @param insideFilmR film on the slab, m²·K/W, 0 to 10
   * @param slabResistance slab with all that lies on and under it, m²·K/W, 0 to 30
   * @param soilDepth depth of soil modelled, m, 0 to 2
   * @param soilConductivity conductivity of the soil, W/(m·K), 0.2 to 5
   * @return m²·K/W, 0 or more
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double virtualResistance(
      double targetU,
      double insideFilmR,
      double slabResistance,
      double soilDepth,
      double soilConductivity) {
    double room = roomForSoil(targetU, insideFilmR, slabResistance);
    Range.require("depth of soil, m,", soilDepth, 0, 2);
    Range.require("conductivity of the soil, W/(m·K),", soilConductivity, 0.2, 5);
    return Math.max(0, room - soilDepth / soilConductivity);
  }

  private static double roomForSoil(double targetU, double insideFilmR, double slabResistance) {
    Range.requireAbove("transmittance of the slab, W/(m²·K),", targetU, 0, 10);
    Range.require("film on the slab, m²·K/W,", insideFilmR, 0, 10);
    Range.require("resistance of the slab, m²·K/W,", slabResistance, 0, 30);
    return 1 / targetU - insideFilmR - slabResistance;
  }
}
