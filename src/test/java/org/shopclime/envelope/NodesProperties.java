package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What any stack of layers keeps when cut, and how near its daily wave comes to the exact one. */
class NodesProperties {

  private static final double DAY = 86400;

  @Property
  void keepsMassAndResistance(@ForAll("walls") List<Layer> wall) {
    Nodes nodes = Nodes.of(wall);
    double mass = 0;
    double resistance = 0;
    for (int i = 0; i < nodes.count(); i++) {
      mass += nodes.capacity(i);
    }
    for (int i = 0; i < nodes.count() - 1; i++) {
      resistance += 1 / nodes.conductance(i);
    }
    double massWished = wall.stream().mapToDouble(Layer::heatCapacity).sum();
    double resistanceWished = wall.stream().mapToDouble(Layer::resistance).sum();
    assertThat(mass).isCloseTo(massWished, within(1e-9 * massWished));
    assertThat(resistance).isCloseTo(resistanceWished, within(1e-9 * resistanceWished));
  }

  @Property
  void onlyFacesAreWithoutMass(@ForAll("walls") List<Layer> wall) {
    Nodes nodes = Nodes.of(wall);
    for (int i = 1; i < nodes.count() - 1; i++) {
      assertThat(nodes.capacity(i)).as("node %d", i).isPositive();
    }
  }

  @Property
  void turnedRoundTheChainIsTurnedRound(@ForAll("walls") List<Layer> wall) {
    List<Layer> turned = new ArrayList<>(wall);
    Collections.reverse(turned);
    Nodes forth = Nodes.of(wall);
    Nodes back = Nodes.of(turned);
    assertThat(back.count()).isEqualTo(forth.count());
    for (int i = 0; i < forth.count(); i++) {
      double wished = forth.capacity(forth.count() - 1 - i);
      assertThat(back.capacity(i)).isCloseTo(wished, within(1e-9 * wished + 1e-12));
    }
  }

  /**
   * The exact answer is the matrix method of ISO 13786. 0.6 % of U: each slice leaves out up to ω ·
   * 900 s / π / 24 of the wave's fading and lag over its own thickness, one slice alone a sixth.
   */
  @Property
  void dailyWaveIsNearTheExactOne(@ForAll("walls") List<Layer> wall) {
    PeriodicTransmittance exact = PeriodicTransmittance.of(wall, 0.04, 0.12, DAY);
    Complex chain = Chain.transmittance(Nodes.of(wall), 0.04, 0.12, DAY);
    double angle = -exact.timeShift() / DAY * 2 * Math.PI;
    double distance =
        Math.hypot(
            chain.re() - exact.amplitude() * Math.cos(angle),
            chain.im() - exact.amplitude() * Math.sin(angle));
    assertThat(distance / exact.uFactor()).isLessThan(0.006);
  }

  /**
   * A wave of two hours, as a sunny spell makes. 4.5 % of U: one slice leaves out ωRC/6 of the
   * wave, and ωRC is at most ω · 900 s / π = 0.25.
   */
  @Property
  void twoHourWaveIsNearTheExactOne(@ForAll("walls") List<Layer> wall) {
    double period = 7200;
    PeriodicTransmittance exact = PeriodicTransmittance.of(wall, 0.04, 0.12, period);
    Complex chain = Chain.transmittance(Nodes.of(wall), 0.04, 0.12, period);
    double angle = -exact.timeShift() / period * 2 * Math.PI;
    double distance =
        Math.hypot(
            chain.re() - exact.amplitude() * Math.cos(angle),
            chain.im() - exact.amplitude() * Math.sin(angle));
    assertThat(distance / exact.uFactor()).isLessThan(0.045);
  }

  /** The faster the wave, the less of it comes through; the slowest comes through as in steady. */
  @Property
  void exactWaveWeakensWithItsSpeed(@ForAll("walls") List<Layer> wall) {
    double before = Double.POSITIVE_INFINITY;
    for (double hours : new double[] {10000, 240, 24, 6}) {
      PeriodicTransmittance found = PeriodicTransmittance.of(wall, 0.04, 0.12, hours * 3600);
      assertThat(found.decrement()).isBetween(0.0, Math.min(1.0, before) + 1e-12);
      before = found.decrement();
    }
  }

  @Provide
  Arbitrary<List<Layer>> walls() {
    Arbitrary<Layer> solid =
        Combinators.combine(
                Arbitraries.of(Materials.all()), Arbitraries.doubles().between(0.5, 2).ofScale(3))
            .as((material, usual) -> material.layer(usual * material.usualThickness()));
    Arbitrary<Layer> air = Arbitraries.of(0.0, 0.1, 0.3).map(r -> Layer.massless("air", r));
    return Arbitraries.oneOf(List.of(solid, solid, air))
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .filter(layers -> layers.stream().anyMatch(layer -> layer.heatCapacity() > 0));
  }
}
