package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.envelope.EdgeInsulation;
import org.shopclime.envelope.Ground;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Nodes;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.End;
import org.shopclime.heat.March;
import org.shopclime.heat.Network;

/**
 * What a slab comes to in the network when nothing changes for years: the printed steady
 * transmittance of ISO 13370, with soil that stores heat between room and ground temperature.
 */
class SlabSteadyPublishedTest {

  private static final double SOIL = 1.5;
  private static final double FILM = 0.17;
  private static final double DAY = 86400;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/slab-iso.csv", useHeadersInDisplayName = true)
  void endsAtThePrintedTransmittance(
      String id, double perimeterOverArea, double insulation, double uFactor, double tolerance) {
    double target =
        Ground.slabUFactor(
            100, 100 * perimeterOverArea, 0.3, SOIL, insulation, EdgeInsulation.none());
    double depth = Ground.soilDepth(target, FILM, insulation, 0.5, SOIL);
    double left = Ground.virtualResistance(target, FILM, insulation, depth, SOIL);
    List<Layer> layers = new ArrayList<>();
    layers.add(Layer.massless("virtual", left));
    layers.add(new Layer("soil", depth, SOIL, 1800, 1100));
    layers.add(Layer.massless("insulation", insulation));
    Nodes nodes = Nodes.of(layers);
    double[] capacities = new double[nodes.count()];
    double[] conductances = new double[nodes.count() - 1];
    for (int node = 0; node < nodes.count(); node++) {
      capacities[node] = nodes.capacity(node);
      if (node < conductances.length) {
        conductances[node] = nodes.conductance(node);
      }
    }
    Network.Builder builder = Network.builder();
    int room = builder.room(0);
    int ground = builder.boundary();
    builder.chain(
        new End.Boundary(ground, Piece.DIRECT_CONTACT),
        capacities,
        conductances,
        new End.Room(room, 1 / FILM, 0));
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.hold(room, 25);
    drivers.boundary(ground, 15);
    March march = new March(network, DAY);
    march.start(25);
    march.step(drivers);
    assertThat(march.plant(room)).as("at first only the soil cools").isLessThan(0.5 * 10 * target);
    for (int day = 1; day <= 3 * 365; day++) {
      march.step(drivers);
    }
    assertThat(march.plant(room) / 10).as(id).isCloseTo(uFactor, within(tolerance));
    assertThat(-march.boundaryHeat(ground)).isCloseTo(march.plant(room), withinPercentage(0.01));
  }
}
