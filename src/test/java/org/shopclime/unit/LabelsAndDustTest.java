package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.air.AirState;
import org.shopclime.unit.SeasonalRating.Build;

class LabelsAndDustTest {

  @Test
  void labelsComeBack() {
    for (Build build : Build.values()) {
      for (double figure = 6; figure < 30; figure += 1.7) {
        assertThat(build.coolingFrom2(build.cooling2(figure))).isCloseTo(figure, within(1e-12));
        assertThat(build.hspfFrom2(build.hspf2(figure))).isCloseTo(figure, within(1e-12));
        assertThat(build.cooling2(figure)).isLessThanOrEqualTo(figure);
        assertThat(build.hspf2(figure)).isLessThan(figure);
      }
    }
    for (double seer = 5; seer <= 20; seer += 0.5) {
      double eer = SeasonalRating.singleSpeedEer(seer);
      assertThat(SeasonalRating.singleSpeedSeer(eer)).isCloseTo(seer, within(1e-9));
    }
    // a better season goes with a better hot day and a better heating test
    for (double figure = 5; figure < 12; figure += 0.5) {
      assertThat(SeasonalRating.singleSpeedEer(figure + 0.5))
          .isGreaterThan(SeasonalRating.singleSpeedEer(figure));
      assertThat(SeasonalRating.singleSpeedCopAt47(figure + 0.5))
          .isGreaterThan(SeasonalRating.singleSpeedCopAt47(figure));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesLabelsThatCannotBe(double figure) {
    assertThatIllegalArgumentException().isThrownBy(() -> Build.DUCTLESS.cooling2(figure));
    assertThatIllegalArgumentException().isThrownBy(() -> Build.DUCTLESS.coolingFrom2(figure));
    assertThatIllegalArgumentException().isThrownBy(() -> Build.DUCTLESS.hspf2(figure));
    assertThatIllegalArgumentException().isThrownBy(() -> Build.DUCTLESS.hspfFrom2(figure));
    assertThatIllegalArgumentException().isThrownBy(() -> SeasonalRating.cop(figure));
    assertThatIllegalArgumentException().isThrownBy(() -> SeasonalRating.singleSpeedEer(figure));
    assertThatIllegalArgumentException().isThrownBy(() -> SeasonalRating.singleSpeedSeer(figure));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SeasonalRating.singleSpeedCopAt47(figure));
  }

  @Test
  void dustNeverHelpsAndTheUnkindEndIsWorse() {
    DustBand clean = new DustBand(0);
    assertThat(clean.kind()).isEqualTo(new DustBand.End(1, 1, 1));
    assertThat(clean.unkind()).isEqualTo(new DustBand.End(1, 1, 1));
    DustBand before = clean;
    for (double lost = 0.05; lost <= 0.401; lost += 0.05) {
      DustBand now = new DustBand(Math.min(lost, 0.4));
      assertThat(now.kind().capacity()).isLessThan(before.kind().capacity());
      assertThat(now.kind().efficiency()).isLessThan(before.kind().efficiency());
      assertThat(now.unkind().capacity()).isLessThan(now.kind().capacity());
      assertThat(now.unkind().efficiency()).isLessThan(now.kind().efficiency());
      assertThat(now.isBeyondTested()).isFalse();
      before = now;
    }
    DustBand packed = new DustBand(0.7);
    assertThat(packed.isBeyondTested()).isTrue();
    assertThat(packed.kind().capacity()).isEqualTo(before.kind().capacity());
    assertThat(packed.unkind().capacity()).isEqualTo(before.unkind().capacity());
    assertThat(packed.unkind().efficiency()).isEqualTo(before.unkind().efficiency());
    assertThat(packed.kind().airflow()).isCloseTo(0.3, within(1e-12));
    assertThatIllegalArgumentException().isThrownBy(() -> new DustBand(0.71));
    assertThatIllegalArgumentException().isThrownBy(() -> new DustBand(Double.NaN));
  }

  /** A third lost, by hand: 0.2 of the capacity and 0.33 of the bill come back with the brush. */
  @Test
  void brushingGivesBackByPencil() {
    DustBand.End unkind = new DustBand(1.0 / 3).unkind();
    assertThat(unkind.capacityGivenBack()).isCloseTo(0.20, within(1e-9));
    assertThat(unkind.energyGivenBack()).isCloseTo(0.93 / 2.82, within(1e-9));
    assertThat(unkind.energy()).isCloseTo(2.82 / 1.89, within(1e-9));
    assertThat(unkind.power()).isCloseTo(0.8 * 2.82 / 1.89, within(1e-9));
    // 0.7186055 + 0.41010 x 0.6667 - 0.1287055 x 0.4444 = 0.93480
    DustBand.End kind = new DustBand(1.0 / 3).kind();
    assertThat(kind.capacity()).isCloseTo(0.9348, within(1e-4));
    assertThat(kind.capacityGivenBack()).isCloseTo(0.0652, within(1e-4));
    // the power drawn hardly moves
    assertThat(kind.power()).isCloseTo(1, within(0.005));
  }

  /** In the rated state, an eighth of the air lost and a third: what the band says, on the unit. */
  @Test
  void aDustyUnitDoesWhatTheBandSays() {
    AirState room = AirState.ofWetBulb((80 - 32) / 1.8, (67 - 32) / 1.8, 101325);
    RoomUnit clean = RoomUnit.windowUnitByEer(3516.85, 3.2);
    Delivered before = clean.at(35, room);
    for (double lost : new double[] {0.125, 1.0 / 3, 0.6}) {
      DustBand band = new DustBand(lost);
      for (DustBand.End end : List.of(band.kind(), band.unkind())) {
        Delivered dusty = clean.withDust(end).at(35, room);
        assertThat(dusty.total()).isCloseTo(before.total() * end.capacity(), within(1e-9));
        assertThat(dusty.power()).isCloseTo(before.power() * end.power(), within(1e-9));
        assertThat(dusty.airMassFlow()).isCloseTo(before.airMassFlow() * (1 - lost), within(1e-12));
        assertThat(dusty.sensibleHeatRatio()).isLessThan(before.sensibleHeatRatio());
        assertThat(dusty.limits().contains(Limit.AIRFLOW_LOW)).isEqualTo(lost > 0.4);
      }
    }
    Delivered same = clean.withDust(new DustBand(0).kind()).at(35, room);
    assertThat(same.total()).isCloseTo(before.total(), within(1e-9));
    assertThat(same.apparatusDewPoint()).isCloseTo(before.apparatusDewPoint(), within(1e-9));
    // portable and ductless units take it too
    DustBand.End packed = new DustBand(1.0 / 3).unkind();
    Rating rating = new Rating(3516.85, 1200);
    PortableUnit hose = PortableUnit.twoHoses(rating).withHeatBack(0);
    DuctlessHeatPump head = DuctlessHeatPump.usual(rating, rating, Compressor.singleSpeed());
    for (RoomPlant plant : List.of(hose.withDust(packed), head.withDust(packed).cooling())) {
      RoomEffect effect = plant.at(room, new AirState(35, 0.01, 101325), 1);
      assertThat(effect.heatToRoom(room.dryBulb())).isCloseTo(-0.8 * 3516.85, within(1e-3));
      assertThat(effect.power()).isCloseTo(1200 * packed.power(), within(1e-3));
    }
  }
}
