package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;
import org.shopclime.shop.Warning;

class GainWarningsTest {

  @Test
  void theExamplesGiveNone() {
    for (String name : Examples.names()) {
      assertThat(GainWarnings.of(Examples.shop(name))).as(name).isEmpty();
    }
  }

  /**
   * A cube of 1 m at R 1 m²·K/W held 180 K above the room loses about 6 x 180 / 1.16 = 930 W: a
   * heater of 500 W cannot hold it, one of 2000 W can.
   */
  @Test
  void anOvenWhoseHeaterIsTooWeakIsNamed() {
    assertThat(GainWarnings.of(with(oven(2000)))).isEmpty();
    assertThat(GainWarnings.of(with(oven(500))))
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.path()).isEqualTo("rooms[0].gains[0].heater");
              assertThat(warning.text()).contains("cannot hold the oven at its temperature");
            });
  }

  /** The table begins at 1/20 hp, 37.3 W. */
  @Test
  void aMotorOutsideTheTableIsNamed() {
    assertThat(GainWarnings.of(with(motor(38)))).isEmpty();
    assertThat(GainWarnings.of(with(motor(0)))).isEmpty();
    assertThat(GainWarnings.of(with(motor(37))))
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.path()).isEqualTo("rooms[0].gains[0].power");
              assertThat(warning.text()).contains("outside the published table");
            });
  }

  @Test
  void aCompressorOutsideTheTableIsNamed() {
    assertThat(GainWarnings.of(with(compressor(38)))).isEmpty();
    assertThat(GainWarnings.of(with(compressor(37))))
        .extracting(Warning::path)
        .containsExactly("rooms[0].gains[0].power");
  }

  private static Gain motor(double power) {
    return new Gain.Motor("Fan", power, 0.5, Span.known(0.1), ScheduleText.work());
  }

  private static Gain compressor(double power) {
    return new Gain.Compressor("Airbrush", power, Span.known(0.1), ScheduleText.work());
  }

  private static Gain oven(double heater) {
    return new Gain.Oven("Oven", 1, 1, 1, Span.known(1), 205, heater, 0, 0, ScheduleText.work());
  }

  private static Shop with(Gain gain) {
    Shop shop = Examples.shop("insulated");
    Room room = shop.rooms().get(0).withGains(List.of(gain));
    return shop.withRooms(List.of(room));
  }
}
