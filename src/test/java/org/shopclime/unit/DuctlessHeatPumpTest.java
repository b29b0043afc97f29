package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.air.AirState;

class DuctlessHeatPumpTest {

  private static final double SEA_LEVEL = 101325;
  private static final Rating COOLING = new Rating(3516.85, 1000);
  private static final Rating HEATING = new Rating(3600, 1000);

  private static final DuctlessHeatPump SINGLE =
      DuctlessHeatPump.usual(COOLING, HEATING, Compressor.singleSpeed());
  private static final DuctlessHeatPump VARIABLE =
      DuctlessHeatPump.usual(COOLING, HEATING, Compressor.variableSpeed());

  private static final AirState SUMMER_ROOM =
      AirState.ofWetBulb(celsius(80), celsius(67), SEA_LEVEL);
  private static final AirState SUMMER = AirState.ofWetBulb(celsius(95), celsius(75), SEA_LEVEL);
  private static final AirState WINTER_ROOM = damp(70, 0.4);

  @Test
  void givesItsLabelFlatOutInBothStates() {
    for (DuctlessHeatPump pump : List.of(SINGLE, VARIABLE)) {
      RoomEffect cool = pump.cooling().at(SUMMER_ROOM, SUMMER, 1);
      assertThat(-cool.heatToRoom(SUMMER_ROOM.dryBulb())).isCloseTo(3516.85, within(1e-3));
      assertThat(cool.power()).isCloseTo(1000, within(1e-3));
      assertThat(cool.limits()).isEmpty();
      RoomEffect heat = pump.heating().at(WINTER_ROOM, damp(47, 0.7), 1);
      assertThat(heat.sensible()).isCloseTo(3600, within(1e-9));
      assertThat(heat.power()).isCloseTo(1000, within(1e-9));
      assertThat(heat.water()).isZero();
      assertThat(heat.elsewhere().heatOutdoors()).isCloseTo(-2600, within(1e-9));
      assertThat(heat.limits()).isEmpty();
    }
  }

  /**
   * By hand from the printed coefficients at 70 °F indoors: capacity 0.6304 at 17 °F, 0.9958 at 47;
   * power per capacity 1.3472 and 0.9937. So 3,600 x 0.6331 = 2,279 W at a COP of 3.6 x 0.7376 =
   * 2.66. At 35 °F frost: 3,600 x 0.9 x (0.8387 / 0.9958) = 2,729 W.
   */
  @Test
  void coldTakesCapacityAsByPencil() {
    RoomEffect cold = SINGLE.heating().at(WINTER_ROOM, damp(17, 0.7), 1);
    assertThat(cold.sensible()).isCloseTo(2279, within(1.0));
    assertThat(cold.sensible() / cold.power()).isCloseTo(2.655, within(0.003));
    RoomEffect frosty = SINGLE.heating().at(WINTER_ROOM, damp(35, 0.9), 1);
    assertThat(frosty.sensible()).isCloseTo(2729, within(1.0));
  }

  /** One made for the cold holds all its capacity at 17 °F, at a COP of 2.4. */
  @Test
  void aSecondLabelMovesTheColdEnd() {
    DuctlessHeatPump hardy =
        VARIABLE.withColdRating(Rating.ofCop(3600, 2.4)).withLowestOutdoor(-30);
    RoomEffect cold = hardy.heating().at(WINTER_ROOM, damp(17, 0.7), 1);
    assertThat(cold.sensible()).isCloseTo(3600, within(1e-9));
    assertThat(cold.power()).isCloseTo(1500, within(1e-9));
    RoomEffect mild = hardy.heating().at(WINTER_ROOM, damp(50, 0.7), 1);
    assertThat(mild).isEqualTo(VARIABLE.heating().at(WINTER_ROOM, damp(50, 0.7), 1));
    assertThat(hardy.heating().at(WINTER_ROOM, damp(0, 0.7), 1).sensible()).isLessThan(3600);
    // half way, half the move: 1 + 0.5 x (1 / 0.6331 - 1) = 1.290
    double ratio =
        hardy.heating().at(WINTER_ROOM, damp(32, 0.7), 1).sensible()
            / VARIABLE.heating().at(WINTER_ROOM, damp(32, 0.7), 1).sensible();
    assertThat(ratio).isCloseTo(1.290, within(0.001));
    // cooling is none of its business
    assertThat(hardy.cooling().at(SUMMER_ROOM, SUMMER, 1))
        .isEqualTo(VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 1));
  }

  @Test
  void backUpComesAfterTheCompressor() {
    DuctlessHeatPump pump = SINGLE.withBackUp(1500);
    AirState cold = damp(17, 0.7);
    RoomEffect alone = SINGLE.heating().at(WINTER_ROOM, cold, 1);
    RoomEffect both = pump.heating().at(WINTER_ROOM, cold, 1);
    assertThat(both.sensible()).isCloseTo(alone.sensible() + 1500, within(1e-9));
    assertThat(both.power()).isCloseTo(alone.power() + 1500, within(1e-9));
    double share = alone.sensible() / both.sensible();
    RoomEffect carried = pump.heating().at(WINTER_ROOM, cold, share);
    assertThat(carried.sensible()).isCloseTo(alone.sensible(), within(1e-9));
    assertThat(carried.power()).isCloseTo(alone.power(), within(1e-6));
  }

  @Test
  void belowItsLowestTemperatureOnlyBackUpHeats() {
    AirState bitter = damp(0, 0.7);
    RoomEffect nothing = SINGLE.heating().at(WINTER_ROOM, bitter, 1);
    assertThat(nothing.sensible()).isZero();
    assertThat(nothing.power()).isZero();
    assertThat(nothing.limits()).containsExactly(Limit.TOO_COLD);
    RoomEffect backUp = SINGLE.withBackUp(1500).heating().at(WINTER_ROOM, bitter, 0.5);
    assertThat(backUp.sensible()).isEqualTo(750);
    assertThat(backUp.power()).isEqualTo(750);
    assertThat(backUp.elsewhere().heatOutdoors()).isZero();
    assertThat(backUp.runFraction()).isEqualTo(0.5);
    RoomEffect hardy = SINGLE.withLowestOutdoor(-25).heating().at(WINTER_ROOM, bitter, 1);
    assertThat(hardy.sensible()).isCloseTo(3600 * 0.4638 / 0.9958, within(2.0));
  }

  @Test
  void tellsWhichEdgeItHeld() {
    assertThat(SINGLE.heating().at(damp(45, 0.5), damp(40, 0.7), 1).limits())
        .containsExactly(Limit.ROOM_LOW);
    assertThat(SINGLE.heating().at(damp(85, 0.3), damp(70, 0.7), 1).limits())
        .containsExactlyInAnyOrder(Limit.ROOM_HIGH, Limit.OUTDOOR_HIGH);
    assertThat(SINGLE.withLowestOutdoor(-40).heating().at(WINTER_ROOM, damp(-20, 0.7), 1).limits())
        .containsExactly(Limit.OUTDOOR_LOW);
  }

  /** Half load: 0.45 x 0.5 of the power per capacity is saved, while one speed loses by starts. */
  @Test
  void turningSlowerSavesWhatStartingCosts() {
    RoomEffect slow = VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 0.5);
    assertThat(-slow.heatToRoom(SUMMER_ROOM.dryBulb())).isCloseTo(1758.4, within(0.1));
    assertThat(slow.power()).isCloseTo(500 * (1 - 0.225), within(0.01));
    assertThat(slow.runFraction()).isEqualTo(1);
    RoomEffect onOff = SINGLE.cooling().at(SUMMER_ROOM, SUMMER, 0.5);
    assertThat(onOff.power()).isCloseTo(571.43, within(0.01));
    RoomEffect heat = VARIABLE.heating().at(WINTER_ROOM, damp(47, 0.7), 0.5);
    assertThat(heat.sensible()).isCloseTo(1800, within(1e-9));
    assertThat(heat.power()).isCloseTo(500 * 0.775, within(1e-9));
  }

  /** A slow coil with little less air is warmer, and leaves the water in the room. */
  @Test
  void turningSlowerDriesLess() {
    RoomEffect full = VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 1);
    RoomEffect slow = VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 0.3);
    assertThat(slow.sensible() / full.sensible()).isGreaterThan(0.31);
    assertThat(slow.water() / full.water()).isLessThan(0.29);
  }

  @Test
  void belowItsTurnDownItRunsOnAndOff() {
    RoomEffect least = VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 0.3);
    RoomEffect half = VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 0.15);
    assertThat(half.sensible()).isCloseTo(least.sensible() / 2, within(1e-9));
    assertThat(half.runFraction()).isCloseTo(0.571429, within(1e-6));
    assertThat(half.power()).isCloseTo(0.571429 * least.power(), within(1e-3));
    // no step where it begins
    double near = VARIABLE.cooling().at(SUMMER_ROOM, SUMMER, 0.3 - 1e-9).power();
    assertThat(near).isCloseTo(least.power(), within(1e-5));
    double nearHeat = VARIABLE.heating().at(WINTER_ROOM, damp(40, 0.7), 0.3 - 1e-9).power();
    assertThat(nearHeat)
        .isCloseTo(VARIABLE.heating().at(WINTER_ROOM, damp(40, 0.7), 0.3).power(), within(1e-5));
  }

  @Test
  void dustIsFeltInCoolingOnly() {
    DuctlessHeatPump dusty = SINGLE.withAirflowFraction(0.7);
    assertThat(dusty.cooling().at(SUMMER_ROOM, SUMMER, 1).sensible())
        .isGreaterThan(SINGLE.cooling().at(SUMMER_ROOM, SUMMER, 1).sensible());
    assertThat(dusty.heating().at(WINTER_ROOM, damp(40, 0.7), 1))
        .isEqualTo(SINGLE.heating().at(WINTER_ROOM, damp(40, 0.7), 1));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> SINGLE.withBackUp(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> SINGLE.withLowestOutdoor(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new Compressor(0, 0.4));
    assertThatIllegalArgumentException().isThrownBy(() -> new Compressor(0.3, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SINGLE.heating().at(WINTER_ROOM, damp(40, 0.7), 2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SINGLE.cooling().at(SUMMER_ROOM, SUMMER, -1));
  }

  private static AirState damp(double fahrenheit, double humidity) {
    return AirState.ofRelativeHumidity(celsius(fahrenheit), humidity, SEA_LEVEL);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
