package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.envelope.EdgeInsulation;
import org.shopclime.envelope.FFactor;
import org.shopclime.envelope.Ground;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Nodes;
import org.shopclime.shop.Build;

/**
 * A slab on the ground: slab, half a metre of soil, and a massless layer that makes the steady
 * transmittance that of ISO 13370.
 *
 * <p>In winter the trade reckons the loss by the length of the edge ({@link FFactor}) against the
 * outdoor air of the design hour, which {@code edgeLoss} is for. On the hot day that would call the
 * floor a gain whenever it is warmer outdoors than in, while the ground below is cooler than the
 * room and takes heat up; so the hot day goes by ISO 13370 and the temperature of the ground.
 *
 * @param nodes soil and slab of one square metre, ground side first
 * @param outerConductance from the outermost node to the ground temperature, W/(m²·K); 0 for a slab
 *     without an edge along outdoors, which has no such loss
 * @param uFactor transmittance from room to ground temperature, W/(m²·K)
 * @param depth thickness of soil that resists as soil and massless layer do: the depth at which the
 *     ground temperature is taken, m
 * @param soilConductivity conductivity of the soil, W/(m·K)
 * @param edgeLoss winter loss at the edge, F-factor times edge along outdoors, W/K; insulation
 *     under the whole slab and the soil do not count in it
 */
record SlabPath(
    Nodes nodes,
    double outerConductance,
    double uFactor,
    double depth,
    double soilConductivity,
    double edgeLoss) {

  private static final double SOIL_DEPTH = 0.5;
  private static final double SOIL_DENSITY = 1800;
  private static final double SOIL_HEAT = 1100;
  private static final double WALL_THICKNESS = 0.15;

  /**
   * Path of a slab.
   *
   * @param slab the owner's slab, spans at their likely value
   * @param area floor area, m²
   * @param insideFilm combined film resistance above it, m²·K/W
   * @return path
   */
  static SlabPath of(Build.Slab slab, double area, double insideFilm) {
    double soil = slab.soilConductivity().likely();
    List<Layer> layers = Builds.layers(slab.layers());
    double resistance = layers.stream().mapToDouble(Layer::resistance).sum();
    if (slab.exposedPerimeter() == 0) {
      return new SlabPath(Nodes.of(chain(SOIL_DEPTH, soil, layers)), 0, 0, SOIL_DEPTH, soil, 0);
    }
    EdgeInsulation edge =
        new EdgeInsulation(
            EdgeInsulation.Placement.VERTICAL, slab.edgeInsulation(), slab.edgeDepth());
    double uFactor =
        Ground.slabUFactor(area, slab.exposedPerimeter(), WALL_THICKNESS, soil, resistance, edge);
    double depth = Ground.soilDepth(uFactor, insideFilm, resistance, SOIL_DEPTH, soil);
    double left = Ground.virtualResistance(uFactor, insideFilm, resistance, depth, soil);
    return new SlabPath(
        Nodes.of(chain(depth, soil, layers)),
        left > 0 ? 1 / left : Piece.DIRECT_CONTACT,
        uFactor,
        depth + left * soil,
        soil,
        FFactor.of(edge) * slab.exposedPerimeter());
  }

  private static List<Layer> chain(double depth, double soil, List<Layer> slab) {
    List<Layer> chain = new ArrayList<>();
    if (depth > 0) {
      chain.add(new Layer("soil", depth, soil, SOIL_DENSITY, SOIL_HEAT));
    }
    chain.addAll(slab);
    return chain;
  }
}
