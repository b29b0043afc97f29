package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What vapour does in any wall. */
class DiffusionProperties {

  @Property
  void neverAboveSaturation(
      @ForAll("walls") List<Layer> layers, @ForAll("climates") WallClimate climate) {
    Diffusion diffusion = Diffusion.of(SlicedWall.of(layers), climate);
    for (int plane = 0; plane < diffusion.wall().planes().size(); plane++) {
      assertThat(diffusion.pressure(plane)).isBetween(0.0, diffusion.saturation(plane) + 1e-6);
      assertThat(diffusion.dewPoint(plane))
          .isLessThanOrEqualTo(diffusion.temperature(plane) + 1e-6);
    }
  }

  /** What enters a dry plane leaves it; a dry wall only takes up water, and keeps what it takes. */
  @Property
  void vapourIsKept(@ForAll("walls") List<Layer> layers, @ForAll("climates") WallClimate climate) {
    Diffusion diffusion = Diffusion.of(SlicedWall.of(layers), climate);
    int last = diffusion.wall().planes().size() - 1;
    double scale = Vapour.AIR * 5000 / 1e-4;
    double gathered = 0;
    for (int plane = 1; plane < last; plane++) {
      double rate = diffusion.flow(plane + 1) - diffusion.flow(plane);
      assertThat(diffusion.rate(plane)).isCloseTo(rate, within(1e-9 * scale));
      assertThat(diffusion.rate(plane)).isGreaterThanOrEqualTo(-1e-9 * scale);
      gathered += diffusion.rate(plane);
    }
    assertThat(gathered)
        .isCloseTo(diffusion.flow(last) - diffusion.flow(1), within(1e-9 * scale * last));
  }

  /**
   * Told of a facing, outside of every plane at which water may fall out: a thick layer that is
   * made tighter also keeps vapour from the planes within itself.
   */
  @Property
  void tighterOutsideNeverGathersLessInWinter(
      @ForAll("walls") List<Layer> layers,
      @ForAll("winters") WallClimate winter,
      @ForAll @DoubleRange(min = 0.01, max = 20) double air,
      @ForAll @DoubleRange(min = 1, max = 20) double times) {
    List<Layer> open = new ArrayList<>(layers);
    open.add(0, facing(air));
    List<Layer> tight = new ArrayList<>(layers);
    tight.add(0, facing(air * times));
    assertThat(gathered(tight, winter)).isGreaterThanOrEqualTo(gathered(open, winter) - 1e-12);
  }

  @Property
  void tighterInsideNeverGathersMoreInWinter(
      @ForAll("walls") List<Layer> layers,
      @ForAll("winters") WallClimate winter,
      @ForAll @DoubleRange(min = 0.01, max = 20) double air,
      @ForAll @DoubleRange(min = 1, max = 20) double times) {
    List<Layer> open = new ArrayList<>(layers);
    open.add(facing(air));
    List<Layer> tight = new ArrayList<>(layers);
    tight.add(facing(air * times));
    assertThat(gathered(tight, winter)).isLessThanOrEqualTo(gathered(open, winter) + 1e-12);
  }

  private static Layer facing(double air) {
    return new Layer("facing", 0.001, 0.5, 900, 1500, OptionalDouble.of(air));
  }

  @Property
  void turnedRoundItIsTheSame(
      @ForAll("walls") List<Layer> layers, @ForAll("climates") WallClimate climate) {
    List<Layer> turned = new ArrayList<>(layers);
    Collections.reverse(turned);
    WallClimate other =
        new WallClimate(
            climate.innerFace(),
            climate.innerPressure(),
            climate.outerFace(),
            climate.outerPressure());
    double wished = gathered(layers, climate);
    assertThat(gathered(turned, other)).isCloseTo(wished, within(1e-6 * wished + 1e-12));
  }

  private static double gathered(List<Layer> layers, WallClimate climate) {
    Diffusion diffusion = Diffusion.of(SlicedWall.of(layers), climate);
    double gathered = 0;
    for (int plane = 0; plane < diffusion.wall().planes().size(); plane++) {
      gathered += diffusion.rate(plane);
    }
    return gathered;
  }

  @Provide
  Arbitrary<List<Layer>> walls() {
    Arbitrary<Double> resistances = Arbitraries.doubles().between(0.01, 3);
    Arbitrary<Double> air = Arbitraries.doubles().between(0.01, 50);
    return Combinators.combine(resistances, air)
        .as((r, sd) -> new Layer("layer", 0.05, 0.05 / r, 100, 1000, OptionalDouble.of(sd)))
        .list()
        .ofMinSize(2)
        .ofMaxSize(5);
  }

  @Provide
  Arbitrary<WallClimate> winters() {
    return climates(-25, 10, 18, 24);
  }

  @Provide
  Arbitrary<WallClimate> climates() {
    return climates(-25, 50, 5, 35);
  }

  private static Arbitrary<WallClimate> climates(
      double outerLow, double outerHigh, double innerLow, double innerHigh) {
    Arbitrary<Double> humidity = Arbitraries.doubles().between(0.1, 0.95);
    return Combinators.combine(
            Arbitraries.doubles().between(outerLow, outerHigh),
            humidity,
            Arbitraries.doubles().between(innerLow, innerHigh),
            humidity)
        .as(
            (outer, outerHumidity, inner, innerHumidity) ->
                new WallClimate(
                    outer,
                    outerHumidity * Vapour.saturation(outer),
                    inner,
                    innerHumidity * Vapour.saturation(inner)));
  }
}
