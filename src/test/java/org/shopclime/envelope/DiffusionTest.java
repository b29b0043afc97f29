package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Vapour through walls by pencil. */
class DiffusionTest {

  private static final double DAY = 86_400;

  /** Boards of R 0.2 and 1 m of still air each. */
  private static SlicedWall boards(int number) {
    return SlicedWall.of(
        Collections.nCopies(
            number, new Layer("board", 0.02, 0.1, 500, 1500, OptionalDouble.of(1))));
  }

  @Test
  void dryWallPassesVapourOverItsWholeThickness() {
    Diffusion dry = Diffusion.of(boards(2), new WallClimate(0, 400, 20, 1400));
    assertThat(dry.temperature(1)).isCloseTo(10, within(1e-9));
    assertThat(dry.pressure(1)).isCloseTo(900, within(1e-9));
    assertThat(dry.flow(1)).isCloseTo(2e-10 * 1000 / 2, within(1e-16));
    assertThat(dry.flow(2)).isCloseTo(2e-10 * 1000 / 2, within(1e-16));
    assertThat(dry.wetPlanes()).isZero();
    assertThat(dry.humidity(1)).isCloseTo(900 / 1227.3, within(0.001));
  }

  /** 10 °C holds 1227 Pa: 2e-10 · (2300 - 1227) arrive, 2e-10 · (1227 - 400) leave. */
  @Test
  void wetPlaneKeepsWhatDoesNotLeave() {
    Diffusion wet = Diffusion.of(boards(2), new WallClimate(0, 400, 20, 2300));
    assertThat(wet.pressure(1)).isCloseTo(1227.3, within(0.5));
    assertThat(wet.flow(2)).isCloseTo(2.145e-7, within(0.002e-7));
    assertThat(wet.flow(1)).isCloseTo(1.655e-7, within(0.002e-7));
    assertThat(wet.rate(1)).isCloseTo(0.490e-7, within(0.003e-7));
    assertThat(wet.dewPoint(1)).isEqualTo(wet.temperature(1));
  }

  /** Planes at 10 and 20 °C: 610, 1227, 2337, 4200 Pa rise by 617, 1110, 1863 a metre. */
  @Test
  void twoPlanesMayBeWet() {
    Diffusion wet = Diffusion.of(boards(3), new WallClimate(0, 610, 30, 4200));
    assertThat(wet.wetPlanes()).isEqualTo(2);
    assertThat(wet.rate(1)).isCloseTo(2e-10 * (1110 - 617), within(0.01e-7));
    assertThat(wet.rate(2)).isCloseTo(2e-10 * (1863 - 1110), within(0.01e-7));
  }

  /** The same seen from a cooled room: vapour comes from outdoors. */
  @Test
  void inwardDriveWetsTheInnerPlane() {
    Diffusion wet = Diffusion.of(boards(2), new WallClimate(30, 3000, 10, 1000));
    assertThat(wet.pressure(1)).isCloseTo(2000, within(1e-9));
    assertThat(wet.wetPlanes()).isZero(); // 20 °C holds 2337 Pa
    Layer siding = new Layer("siding", 0.02, 0.1, 500, 1500, OptionalDouble.of(0.1));
    Layer sheet = new Layer("sheet", 0.0002, 0.3, 900, 2000, OptionalDouble.of(50));
    SlicedWall trapped = SlicedWall.of(List.of(siding, sheet));
    Diffusion trap = Diffusion.of(trapped, new WallClimate(30, 3000, 20, 1200));
    assertThat(trap.wetPlanes()).isEqualTo(1);
    assertThat(trap.flow(1)).isNegative();
    // 20 °C holds 2337 Pa: 2e-10 · (3000 - 2341) / 0.1 arrive
    assertThat(trap.rate(1)).isCloseTo(2e-10 * 659 / 0.1, within(0.02e-6));
  }

  @Test
  void facesTellTheirDew() {
    Diffusion dew = Diffusion.of(boards(2), new WallClimate(25, 3300, 15, 1800));
    assertThat(dew.dewOutside()).isTrue();
    assertThat(dew.dewInside()).isTrue();
    assertThat(dew.pressure(0)).isEqualTo(dew.saturation(0));
    Diffusion none = Diffusion.of(boards(2), new WallClimate(25, 3000, 15, 1600));
    assertThat(none.dewOutside()).isFalse();
    assertThat(none.dewInside()).isFalse();
  }

  /** Four wet months of 120 days at 0.490e-7 make 508 g; a March at 20 °C dries 1.2 kg. */
  @Test
  void yearGathersAndDries() {
    WallClimate winter = new WallClimate(0, 400, 20, 2300);
    WallClimate summer = new WallClimate(20, 1168, 20, 1168);
    WaterYear year = WaterYear.of(boards(2), months(winter, summer, 11, 12, 1, 2));
    assertThat(year.firstMonth()).isEqualTo(11);
    assertThat(year.wettestMonth()).isEqualTo(2);
    assertThat(year.most()).isCloseTo(0.490e-7 * 120 * DAY, within(0.004));
    assertThat(year.held(11)).isCloseTo(0.490e-7 * 30 * DAY, within(0.001));
    assertThat(year.held(3)).isZero();
    assertThat(year.left()).isZero();
    assertThat(year.wettestPlane()).isEqualTo(1);
  }

  /** Saturated months neither add nor dry. */
  @Test
  void whatDoesNotDryIsLeft() {
    WallClimate winter = new WallClimate(0, 400, 20, 2300);
    double full = Vapour.saturation(10);
    WallClimate fog = new WallClimate(10, full, 10, full);
    WaterYear year = WaterYear.of(boards(2), months(winter, fog, 1, 2, 12));
    assertThat(year.firstMonth()).isEqualTo(12);
    assertThat(year.left()).isCloseTo(year.most(), within(1e-9)).isGreaterThan(0.3);
  }

  @Test
  void yearWetAllThroughBeginsInJanuary() {
    WallClimate winter = new WallClimate(0, 400, 20, 2300);
    WaterYear year = WaterYear.of(boards(2), months(winter, winter));
    assertThat(year.firstMonth()).isEqualTo(1);
    assertThat(year.left()).isCloseTo(0.490e-7 * 365 * DAY, within(0.01));
    assertThat(year.wettestMonth()).isEqualTo(12);
  }

  @Test
  void dryYearHoldsNothing() {
    WallClimate summer = new WallClimate(20, 1168, 20, 1168);
    WaterYear year = WaterYear.of(boards(2), months(summer, summer));
    assertThat(year.isWet()).isFalse();
    assertThat(year.most()).isZero();
    assertThat(year.left()).isZero();
  }

  private static List<WallClimate> months(WallClimate these, WallClimate others, int... months) {
    return IntStream.rangeClosed(1, 12)
        .mapToObj(month -> IntStream.of(months).anyMatch(m -> m == month) ? these : others)
        .toList();
  }

  @Test
  void thickLayersAreCutAndThinOnesAreNot() {
    Layer foam = new Layer("foam", 0.05, 0.05, 20, 1450, OptionalDouble.of(5));
    SlicedWall wall = SlicedWall.of(List.of(foam, foam.withVapour(0)));
    assertThat(wall.planes()).hasSize(9);
    assertThat(wall.planes().get(1).isInside()).isTrue();
    assertThat(wall.planes().get(4).isInside()).isFalse();
    assertThat(wall.planes().get(4).airThickness()).isCloseTo(5, within(1e-9));
    assertThat(wall.innerFace().resistance()).isCloseTo(2, within(1e-9));
    assertThat(wall.innerFace().depth()).isCloseTo(0.1, within(1e-9));
    assertThat(wall.innerFace().inner()).isEqualTo(2);
  }

  @Test
  void dewPointTurnsSaturationRound() {
    for (double celsius : new double[] {-30, -5, 0, 5, 24, 60}) {
      assertThat(Vapour.dewPoint(Vapour.saturation(celsius))).isCloseTo(celsius, within(1e-9));
    }
  }

  /** The standard's short formula and the one moist air is reckoned with (Hyland and Wexler). */
  @Test
  void saturationIsThatOfMoistAir() {
    for (int celsius = -20; celsius <= 40; celsius++) {
      double air = org.shopclime.air.MoistAir.saturationPressure(celsius);
      assertThat(Vapour.saturation(celsius))
          .isCloseTo(air, within((celsius < 0 ? 0.006 : 0.002) * air));
    }
  }

  @Test
  void refusesWhatCannotBe() {
    Layer unknown = new Layer("mystery board", 0.02, 0.1, 500, 1500);
    assertThatThrownBy(() -> SlicedWall.of(List.of(unknown)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("nothing tells how mystery board resists vapour");
    assertThatThrownBy(() -> Vapour.airThickness(0)).hasMessageContaining("permeance");
    assertThatThrownBy(() -> Vapour.surfaceFactor(15, 20, 20)).hasMessageContaining("differ");
    assertThatThrownBy(() -> WaterYear.of(boards(1), List.of())).hasMessageContaining("12");
    assertThatThrownBy(() -> new WallClimate(Double.NaN, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
