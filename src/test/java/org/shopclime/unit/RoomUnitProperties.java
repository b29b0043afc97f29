package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

class RoomUnitProperties {

  private static final RoomUnit WINDOW = RoomUnit.windowUnitByEer(3516.85, 3.2);
  private static final RoomUnit RESIDENTIAL =
      new RoomUnit(7000, 2200, 1, 0.33, 0.72, CurveSet.residentialSingleSpeed());

  @Property
  void anyAirGivesAPossibleAnswer(
      @ForAll boolean window,
      @ForAll @Scale(6) @DoubleRange(min = -20, max = 80) double t,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @Scale(6) @DoubleRange(min = -60, max = 80) double outdoor,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double fraction,
      @ForAll @Scale(6) @DoubleRange(min = 65000, max = 105000) double pressure) {
    double vapour = humidity * MoistAir.saturationPressure(t);
    AirState entering =
        new AirState(
            t,
            Math.min(
                0.621945 * vapour / (pressure - vapour),
                MoistAir.saturationHumidityRatio(t, pressure)),
            pressure);
    Delivered delivered =
        (window ? WINDOW : RESIDENTIAL).withAirflowFraction(fraction).at(outdoor, entering);
    assertThat(delivered.total()).isPositive().isFinite();
    assertThat(delivered.power()).isPositive().isFinite();
    assertThat(delivered.sensible()).isBetween(0.0, delivered.total());
    assertThat(delivered.latent()).isBetween(0.0, delivered.total());
    assertThat(delivered.leavingDryBulb()).isFinite().isLessThanOrEqualTo(t);
    assertThat(delivered.leavingHumidityRatio()).isBetween(0.0, entering.humidityRatio());
    assertThat(delivered.apparatusDewPoint()).isLessThanOrEqualTo(delivered.leavingDryBulb());
    assertThat(delivered.bypassFactor()).isBetween(0.0, 1.0);
    assertThat(delivered.limits().contains(Limit.COIL_ICES))
        .isEqualTo(delivered.apparatusDewPoint() < 0);
    if (delivered.leavingDryBulb() > -90) {
      assertThat(delivered.leavingHumidityRatio())
          .isLessThanOrEqualTo(
              MoistAir.saturationHumidityRatio(delivered.leavingDryBulb(), pressure) + 1e-9);
    }
  }

  @Property
  void moreWaterNeverLessensTheTotal(
      @ForAll @Scale(6) @DoubleRange(min = 20, max = 40) double t,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.012) double humidityRatio,
      @ForAll @Scale(6) @DoubleRange(min = 24, max = 46) double outdoor) {
    Delivered drier = WINDOW.at(outdoor, new AirState(t, humidityRatio, 101325));
    Delivered damper = WINDOW.at(outdoor, new AirState(t, humidityRatio + 0.001, 101325));
    // on a dry coil the lighter damp air lessens it by a hair
    assertThat(damper.total()).isGreaterThan(drier.total() * 0.998);
    assertThat(damper.latent()).isGreaterThanOrEqualTo(drier.latent());
  }

  @Property
  void aSmallStepMovesTheAnswerLittle(
      @ForAll @Scale(6) @DoubleRange(min = 15, max = 45) double t,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.0100) double humidityRatio,
      @ForAll @Scale(6) @DoubleRange(min = 20, max = 50) double outdoor) {
    Delivered here = WINDOW.at(outdoor, new AirState(t, humidityRatio, 101325));
    Delivered near = WINDOW.at(outdoor, new AirState(t + 1e-6, humidityRatio + 1e-9, 101325));
    assertThat(near.sensible()).isCloseTo(here.sensible(), within(0.01));
    assertThat(near.latent()).isCloseTo(here.latent(), within(0.01));
    assertThat(near.power()).isCloseTo(here.power(), within(0.01));
  }
}
