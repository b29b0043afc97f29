package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

class AirBalanceTest {

  private static final double CFM = 4.719474e-4;
  private static final double BTU_PER_HOUR = 0.2930711;
  private static final AirState ROOM =
      AirState.ofRelativeHumidity((78 - 32) / 1.8, 0.55, MoistAir.STANDARD_PRESSURE);
  private static final AirState DAMP =
      AirState.ofDewPoint((98 - 32) / 1.8, (75 - 32) / 1.8, MoistAir.STANDARD_PRESSURE);

  /** By pencil: 1.08 · 800 · 20 = 17,300; 4840 · 800 · 0.0075 = 29,000 BTU/h; 27 lb/h of water. */
  @Test
  void collectorOutdoorsByPencil() {
    AirBalance balance =
        AirBalance.of(0.05, 0, List.of(AirStream.out(AirStream.Use.COLLECTOR, 800 * CFM, 60)));
    AirCost cost = AirCost.of(balance.outdoorAir(), ROOM, DAMP);
    assertThat(cost.sensible() / BTU_PER_HOUR).isCloseTo(17_300, withinPercentage(5));
    assertThat(cost.latent() / BTU_PER_HOUR).isCloseTo(29_000, withinPercentage(5));
    assertThat(cost.water() * 3600 / 0.45359237).isCloseTo(27, within(2.0));
    assertThat(cost.partOfUnit(12_000 * BTU_PER_HOUR)).isBetween(3.5, 4.0);
  }

  /**
   * Power law by hand: 0.05 m² passes 0.1289 m³/s at 4 Pa; 0.3776 m³/s is 4 · 2.929^1.538 = 20.9
   * Pa.
   */
  @Test
  void suctionByHand() {
    AirBalance balance =
        AirBalance.of(0.05, 0.02, List.of(AirStream.out(AirStream.Use.COLLECTOR, 800 * CFM, 60)));
    assertThat(balance.suction()).isCloseTo(20.9, within(0.1));
    assertThat(Flue.NATURAL_DRAFT.isEndangeredBy(balance.suction())).isTrue();
    assertThat(DoorForce.at(balance.pressure(), 0.9, 2.03, 0.07, 0)).isCloseTo(20.7, within(0.2));
    assertThat(balance.missing()).isCloseTo(0, within(1e-12));
  }

  @Test
  void returnedAirCostsNothingAndLedAirNearlySo() {
    AirStream returned =
        new AirStream(AirStream.Use.COLLECTOR, AirStream.Way.FILTERED_RETURN, 800 * CFM, 0, 60);
    AirBalance still = AirBalance.of(0.05, 0.02, List.of(returned));
    assertThat(still.outdoorAir()).isEqualTo(0.02);
    assertThat(still.pressure()).isZero();
    AirStream led = new AirStream(AirStream.Use.SPRAY, AirStream.Way.OUT, 800 * CFM, 0.8, 60);
    AirBalance little = AirBalance.of(0.05, 0, List.of(led));
    assertThat(little.outdoorAir()).isCloseTo(0.2 * 800 * CFM, within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new AirStream(AirStream.Use.SPRAY, AirStream.Way.FILTERED_RETURN, 0.1, 0, 60))
        .withMessageContaining("fumes");
  }

  /** By hand: 30 min both (0.3), 15 min the fan alone (0.2), 15 min leaks (0.05): 0.2182. */
  @Test
  void meanOfAnHour() {
    List<AirStream> streams =
        List.of(
            AirStream.out(AirStream.Use.BLAST_CABINET, 0.1, 30),
            AirStream.out(AirStream.Use.CLOSET_FAN, 0.2, 45));
    double hand = (30 * Math.hypot(0.05, 0.3) + 15 * Math.hypot(0.05, 0.2) + 15 * 0.05) / 60;
    assertThat(AirBalance.meanOutdoorAir(0.05, 0.05, streams))
        .isCloseTo(hand, within(1e-12))
        .isCloseTo(0.2161, within(1e-3));
    assertThat(AirBalance.meanOutdoorAir(0.05, 0.05, List.of())).isEqualTo(0.05);
  }

  @Property
  void inIsOut(
      @ForAll @DoubleRange(max = 1) double leak,
      @ForAll @DoubleRange(max = 1) double out,
      @ForAll @DoubleRange(max = 1) double in,
      @ForAll @DoubleRange(max = 1) double led) {
    AirBalance balance =
        AirBalance.of(
            0.03,
            leak,
            List.of(
                new AirStream(AirStream.Use.OVEN_HOOD, AirStream.Way.OUT, out, led, 60),
                new AirStream(AirStream.Use.OTHER, AirStream.Way.IN, in, 0, 60)));
    assertThat(balance.missing()).isCloseTo(0, within(1e-12));
    assertThat(balance.leaksIn()).isGreaterThanOrEqualTo(0);
    assertThat(balance.leaksOut()).isGreaterThanOrEqualTo(0);
    assertThat(balance.outdoorAir()).isGreaterThanOrEqualTo(leak - 1e-12);
    assertThat(Math.signum(balance.pressure())).isEqualTo(Math.signum(in - balance.fansOut()));
  }
}
