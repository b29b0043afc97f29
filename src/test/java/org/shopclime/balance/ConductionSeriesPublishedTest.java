package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Nodes;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.End;
import org.shopclime.heat.March;
import org.shopclime.heat.Network;

/**
 * Walls as the envelope cuts them and the network marches them: heat that reaches a room at one
 * temperature when the air outside rises by one kelvin for an hour each day, straight up from the
 * hour before and straight down to the next.
 */
class ConductionSeriesPublishedTest {

  private static final double STEP = 300;
  private static final int PER_HOUR = 12;

  /** Layers of the handbook's table (from memory): m, W/(m·K), kg/m³, J/(kg·K). */
  private static final Map<String, Layer> LAYERS =
      Map.ofEntries(
          Map.entry("F04", Layer.massless("wall air space", 0.15)),
          Map.entry("F05", Layer.massless("ceiling air space", 0.18)),
          Map.entry("F08", new Layer("metal", 0.0008, 45.28, 7824, 500)),
          Map.entry("F09", new Layer("spandrel glass", 0.0064, 0.99, 2528, 880)),
          Map.entry("F11", new Layer("wood siding", 0.0127, 0.09, 592, 1170)),
          Map.entry("F12", new Layer("asphalt shingles", 0.0032, 0.04, 1120, 1260)),
          Map.entry("F16", new Layer("acoustic tile", 0.0191, 0.06, 368, 590)),
          Map.entry("G01", new Layer("gypsum board", 0.0159, 0.16, 800, 1090)),
          Map.entry("G02", new Layer("plywood", 0.0159, 0.12, 544, 1210)),
          Map.entry("G03", new Layer("fibreboard", 0.0127, 0.07, 400, 1300)),
          Map.entry("G04", new Layer("wood", 0.0127, 0.15, 608, 1630)),
          Map.entry("G05", new Layer("wood", 0.0254, 0.15, 608, 1630)),
          Map.entry("I02", new Layer("insulation board", 0.0508, 0.03, 43, 1210)),
          Map.entry("I04", new Layer("batt", 0.0894, 0.05, 19, 960)),
          Map.entry("I05", new Layer("batt", 0.1544, 0.05, 19, 960)));

  private static final Map<String, Double> FILMS = Map.of("F01", 0.044, "F02", 0.12, "F03", 0.16);

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/balance/conduction-series.csv",
      useHeadersInDisplayName = true)
  void agreesWithTheHandbook(
      String id, String element, String layers, String series, double tolerance) {
    double[] ours = series(List.of(layers.split(" ", -1)));
    double sum = 0;
    for (double part : ours) {
      sum += part;
    }
    assertThat(sum).as("%s: all of it arrives", id).isCloseTo(100, within(0.1));
    String[] printed = series.split(" ", -1);
    for (int hour = 0; hour < 24; hour++) {
      double expected = hour < printed.length ? Double.parseDouble(printed[hour]) : 0;
      assertThat(ours[hour])
          .as("%s, %s, hour %d", id, element, hour)
          .isCloseTo(expected, within(tolerance));
    }
  }

  private static double[] series(List<String> codes) {
    List<Layer> layers = new ArrayList<>();
    for (String code : codes.subList(1, codes.size() - 1)) {
      layers.add(LAYERS.get(code));
    }
    Nodes nodes = Nodes.of(layers);
    double[] capacities = new double[nodes.count()];
    double[] conductances = new double[nodes.count() - 1];
    double resistance = FILMS.get(codes.get(0)) + FILMS.get(codes.get(codes.size() - 1));
    for (int node = 0; node < nodes.count(); node++) {
      capacities[node] = nodes.capacity(node);
      if (node < nodes.count() - 1) {
        conductances[node] = nodes.conductance(node);
        resistance += 1 / conductances[node];
      }
    }
    double film = 1 / FILMS.get(codes.get(codes.size() - 1));
    Network.Builder builder = Network.builder();
    int room = builder.room(0);
    int air = builder.boundary();
    builder.chain(
        new End.Boundary(air, 1 / FILMS.get(codes.get(0))),
        capacities,
        conductances,
        new End.Room(room, film, 0));
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.hold(room, 0);
    March march = new March(network, STEP);
    march.start(0);
    double[] heat = new double[24];
    for (int day = 0; day < 6; day++) {
      for (int step = 0; step < 24 * PER_HOUR; step++) {
        double middle = (step + 0.5) / PER_HOUR;
        double away = Math.min(middle, 24 - middle);
        drivers.boundary(air, Math.max(0, 1 - away));
        march.step(drivers);
        if ((step + 1) % PER_HOUR == 0) {
          heat[(step + 1) / PER_HOUR % 24] = film * march.rightFace(0) * resistance * 100;
        }
      }
    }
    return heat;
  }
}
