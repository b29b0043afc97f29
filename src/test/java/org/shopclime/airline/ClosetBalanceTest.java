package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosetBalanceTest {

  private static final PlaceAround HOT = new PlaceAround(Ip.air(78, 50), Ip.air(100, 40));

  /** A corner whose partitions are of 1.8 and outer walls of 0.45 W/(m²·K), as the pencil takes. */
  private static final Closet CORNER = new Closet(6.689, 1.8, 6.689, 0.45, 6);

  /**
   * By hand, m²·K/W: films 2 · 0.1198, drywall 2 · 0.0794, together 0.3983; air space 0.1603, R-13
   * 2.289, stud 0.7705. Empty 0.75 / 0.5586 + 0.25 / 1.1688 = 1.557; filled 0.75 / 2.6877 + 0.214 =
   * 0.493 W/(m²·K).
   */
  @Test
  void partitionsAreSumsOfTheirLayers() {
    assertThat(Closet.BARE_PARTITION).isCloseTo(1.557, within(0.001));
    assertThat(Closet.INSULATED_PARTITION).isCloseTo(0.493, within(0.001));
  }

  /**
   * By pencil, 2300 W, faces 12.04 W/K to 25.6 °C and 3.01 W/K to 43.8 °C, vents 1.83 m apart: m =
   * 0.65 A/√2 (353/T) √(2 · 9.81 · 1.83 ΔT/T), 1015 J/(kg·K). 0.03 m²: at 75.5 °C, 0.0317 kg/s take
   * 1604 W, faces 601 and 95 W: 2300. 0.0929 m²: at 50.7 °C 1977 + 302 + 21. 0.2 m²: at 40.9 °C
   * 2124 + 184 - 9.
   */
  @ParameterizedTest
  @CsvSource({
    "0.03, 75.5, 1604, 601, 95",
    "0.0929, 50.7, 1977, 302, 21",
    "0.2, 40.9, 2124, 184, -9"
  })
  void threeVentsByPencil(double area, double celsius, double air, double room, double out) {
    Venting grilles = Venting.openings(Side.ROOM, Side.ROOM, area, 1.83);
    ClosetBalance hour = ClosetBalance.of(CORNER, grilles, HOT, 2300);
    assertThat(hour.celsius()).isCloseTo(celsius, within(2 / 1.8));
    assertThat(hour.byDraught()).isCloseTo(air, within(25.0));
    assertThat(hour.roomByWall()).isCloseTo(room, within(15.0));
    assertThat(hour.outdoorsByWall()).isCloseTo(out, within(5.0));
    assertThat(hour.toRoom() + hour.toOutdoors()).isCloseTo(2300, within(2300 * 1e-9));
  }

  /** By hand: (2300 + 12.04 · 25.56 + 3.01 · 43.78) / 15.05 = 182.0 °C. */
  @Test
  void shutClosetCooks() {
    ClosetBalance hour = ClosetBalance.of(CORNER, Venting.CLOSED, HOT, 2300);
    assertThat(hour.celsius()).isCloseTo(182.0, within(0.2));
    assertThat(hour.toRoom() + hour.toOutdoors()).isCloseTo(2300, within(2300 * 1e-9));
    assertThat(ClosetBalance.of(CORNER, Venting.CLOSED, HOT, 0).celsius()).isBetween(25.6, 37.8);
  }

  @Test
  void curveFallsWithTheVents() {
    Venting loop = Venting.openings(Side.OUTDOORS, Side.OUTDOORS, 1, 1.83);
    List<ClosetBalance.VentPoint> points =
        ClosetBalance.curve(CORNER, loop, HOT, 2300, List.of(0.0, 0.02, 0.05, 0.1, 0.3, 1.0));
    assertThat(points).hasSize(6);
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).balance().celsius())
          .isLessThan(points.get(i - 1).balance().celsius());
      assertThat(points.get(i).balance().toRoom() + points.get(i).balance().toOutdoors())
          .isCloseTo(2300, within(2300 * 1e-9));
    }
    assertThat(points.get(0).balance().celsius()).isCloseTo(182.0, within(0.2));
    assertThat(points.get(5).balance().celsius()).isGreaterThan(37.8);
  }

  /** By hand: 0.1 m³/s of 1.15 kg/m³ carry 117 W/K; with faces (2300 + 117 · 25.6 + 440) / 132. */
  @Test
  void fanToTheRoom() {
    Venting fan = Venting.fan(Side.ROOM, Side.ROOM, 0.1);
    ClosetBalance hour = ClosetBalance.of(CORNER, fan, HOT, 2300);
    assertThat(hour.celsius()).isCloseTo(43.4, within(0.5));
    assertThat(hour.toRoom()).isCloseTo(2300 - hour.toOutdoors(), within(1e-6));
    assertThat(hour.draught().outdoorAirIntoRoom()).isZero();
    double flow = ClosetBalance.fanFor(CORNER, Side.ROOM, HOT, 2300, hour.celsius());
    assertThat(flow).isCloseTo(0.1, within(1e-6));
    assertThat(ClosetBalance.fanFor(CORNER, Side.ROOM, HOT, 100, 60)).isZero();
    assertThat(ClosetBalance.fanFor(CORNER, Side.OUTDOORS, HOT, 2300, 36)).isInfinite();
  }

  /** A fan to outdoors costs the room as much outdoor air as it takes: 0.115 kg/s of damp air. */
  @Test
  void fanToOutdoorsCostsMakeUpAir() {
    Venting fan = Venting.fan(Side.ROOM, Side.OUTDOORS, 0.1);
    ClosetBalance hour = ClosetBalance.of(CORNER, fan, HOT, 2300);
    assertThat(hour.draught().outdoorAirIntoRoom()).isCloseTo(0.115, within(0.003));
    double spread = HOT.outdoors().enthalpy() - HOT.room().enthalpy();
    assertThat(hour.makeUpHeat(HOT)).isCloseTo(hour.draught().dryAir() * spread, within(1e-9));
    assertThat(hour.makeUpHeat(HOT)).isGreaterThan(hour.toOutdoors());
    assertThat(hour.toRoom() + hour.toOutdoors()).isCloseTo(2300, within(2300 * 1e-9));
    assertThat(hour.humidityRatio()).isEqualTo(HOT.room().humidityRatio());
  }

  /** A small machine in a stack closet on a hot day: outdoor air comes down the stack. */
  @Test
  void stackTurnsRoundWhereOutdoorsIsHotter() {
    Venting stack = Venting.openings(Side.ROOM, Side.OUTDOORS, 0.05, 3);
    ClosetBalance hour = ClosetBalance.of(CORNER, stack, HOT, 20);
    assertThat(hour.celsius()).isBetween(25.6, 37.8);
    assertThat(hour.draught().from()).isEqualTo(Side.OUTDOORS);
    assertThat(hour.draught().to()).isEqualTo(Side.ROOM);
    assertThat(hour.byDraught()).isNegative();
    assertThat(hour.humidityRatio()).isEqualTo(HOT.outdoors().humidityRatio());
    assertThat(hour.toRoom() + hour.toOutdoors()).isCloseTo(20, within(1e-7));
    ClosetBalance large = ClosetBalance.of(CORNER, stack, HOT, 2300);
    assertThat(large.draught().to()).isEqualTo(Side.OUTDOORS);
  }

  @Test
  void refusesAPlaceThatCannotLoseHeat() {
    Closet none = new Closet(0, 0, 0, 0, 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ClosetBalance.of(none, Venting.CLOSED, HOT, 100))
        .withMessageContaining("cannot lose heat");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ClosetBalance.of(CORNER, Venting.CLOSED, HOT, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Closet(1, 21, 1, 1, 0));
  }
}
