package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Vapour in walls against the published rows. */
class VapourPublishedTest {

  private static final double DAYS_90 = 90 * 86_400.0;

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/vapour-saturation.csv",
      useHeadersInDisplayName = true)
  void saturation(String id, double temperature, double pressure, double tolerance) {
    assertThat(Vapour.saturation(temperature)).as(id).isCloseTo(pressure, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/surface-humidity.csv",
      useHeadersInDisplayName = true)
  void surfaces(String id, String quantity, double value, double tolerance) {
    double pressure = 0.5 * Vapour.saturation(20);
    double mouldy = Vapour.surfaceTemperature(pressure, Vapour.MOULD);
    double dew = Vapour.surfaceTemperature(pressure, 1);
    double found =
        switch (quantity) {
          case "mould" -> pressure / Vapour.saturation(mouldy);
          case "condensation" -> pressure / Vapour.saturation(dew);
          case "temperature" -> mouldy;
          case "factor" -> Vapour.surfaceFactor(mouldy, -5, 20);
          default -> throw new IllegalArgumentException(quantity);
        };
    assertThat(found).as("%s, %s", id, quantity).isCloseTo(value, within(tolerance + 1e-12));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/diffusion.csv", useHeadersInDisplayName = true)
  void diffusion(String id, String quantity, double value, double tolerance) {
    Layer sheathing = new Layer("sheathing", 0.015, 0.13, 600, 1500, OptionalDouble.of(0.75));
    Layer wool = new Layer("wool", 0.14, 0.035, 30, 840, OptionalDouble.of(0.14));
    Layer membrane = new Layer("membrane", 0.0002, 0.33, 900, 2000, OptionalDouble.of(2));
    Layer gypsum = new Layer("gypsum", 0.0125, 0.25, 700, 1000, OptionalDouble.of(0.125));
    SlicedWall wall =
        SlicedWall.of(
            id.equals("J-07")
                ? List.of(sheathing, wool, membrane, gypsum)
                : List.of(sheathing, wool, gypsum));
    WallClimate.Air outer = WallClimate.Air.ofHumidity(-5, 0.8, 0.04);
    WallClimate.Air inner = WallClimate.Air.ofHumidity(20, 0.5, 0.25);
    Diffusion found = Diffusion.of(wall, WallClimate.between(wall, outer, inner));
    int plane = 1;
    assertThat(wall.planes().get(plane).inner()).as("plane wool/sheathing").isEqualTo(1);
    assertThat(found.wetPlanes()).isEqualTo(1);
    double answer =
        switch (quantity) {
          case "temperature" -> found.temperature(plane);
          case "pressure" -> found.pressure(plane);
          case "flow in" -> found.flow(plane + 1);
          case "flow out" -> found.flow(plane);
          case "water" -> found.rate(plane) * DAYS_90;
          default -> throw new IllegalArgumentException(quantity);
        };
    assertThat(answer).as("%s, %s", id, quantity).isCloseTo(value, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/retarder-classes.csv",
      useHeadersInDisplayName = true)
  void classes(String id, double perms, RetarderClass wished) {
    assertThat(RetarderClass.of(perms * Vapour.PERM)).as(id).isEqualTo(wished);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/retarder-layers.csv",
      useHeadersInDisplayName = true)
  void classesOfLayers(String id, String layer, RetarderClass wished) {
    double air =
        layer.equals("painted gypsum")
            ? usual("gypsum board") + usual("latex paint")
            : usual(layer);
    assertThat(RetarderClass.of(Vapour.permeance(air))).as("%s, %s", id, layer).isEqualTo(wished);
  }

  private static double usual(String name) {
    return Materials.find(name).orElseThrow().usualLayer().vapour().orElseThrow();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/permeance.csv", useHeadersInDisplayName = true)
  void permeances(String id, String material, double thickness, double perms, double tolerance) {
    Layer layer = Materials.find(material).orElseThrow().layer(thickness * InchPound.INCH);
    assertThat(Vapour.permeance(layer.vapour().orElseThrow()) / Vapour.PERM)
        .as("%s, %s", id, material)
        .isCloseTo(perms, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/perm.csv", useHeadersInDisplayName = true)
  void perm(String id, String quantity, double value, double tolerance) {
    double inchOfMercury = 3386.39; // NIST SP 811, conventional inch of mercury, Pa
    double kilograms =
        Vapour.flow(Vapour.PERM, 0.30 * inchOfMercury) * 100 * 0.09290304 * 24 * 3600;
    double found =
        switch (quantity) {
          case "ng" -> Vapour.PERM * 1e12;
          case "grains" -> kilograms / 0.45359237 * 7000;
          case "pounds" -> kilograms / 0.45359237;
          default -> throw new IllegalArgumentException(quantity);
        };
    assertThat(found).as("%s, %s", id, quantity).isCloseTo(value, within(tolerance));
  }
}
