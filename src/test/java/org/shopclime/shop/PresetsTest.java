package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Presets make shops that pass every check, at any size they take. */
class PresetsTest {

  static Stream<ShellPreset> shells() {
    return ShellPresets.all().stream();
  }

  @ParameterizedTest
  @MethodSource("shells")
  void everyShellWithEveryWorkIsAGoodShop(ShellPreset shell) {
    for (WorkPreset work : WorkPresets.all()) {
      Shop shop = shop(shell.rooms(shell.usual()), work);
      assertThat(ShopCheck.check(shop, Stations.any()).problems()).isEmpty();
      assertThat(ShopFile.read(ShopFile.write(shop), Stations.any()))
          .isInstanceOfSatisfying(
              ShopReading.Good.class, good -> assertThat(good.shop()).isEqualTo(shop));
    }
  }

  @ParameterizedTest
  @MethodSource("shells")
  void everyShellStretches(ShellPreset shell) {
    ShellSize size = new ShellSize(20, 9, 3.5, 45);
    List<Room> rooms = shell.rooms(size);
    Shop shop = shop(rooms, WorkPresets.all().get(0));
    assertThat(ShopCheck.check(shop, Stations.any()).problems()).isEmpty();
    Face front = rooms.get(0).faces().get(0);
    assertThat(front.name()).isEqualTo("Northeast wall");
    assertThat(front.width()).isEqualTo(9);
    assertThat(front.azimuth()).isEqualTo(45);
    assertThat(rooms.get(0).floorArea()).isCloseTo(180, within(0.01));
  }

  /** A closed box: the outward areas of its faces, as vectors, add up to nothing. */
  @ParameterizedTest
  @MethodSource("shells")
  void theWorkRoomIsClosed(ShellPreset shell) {
    double east = 0;
    double north = 0;
    double up = 0;
    for (Face face : shell.rooms(shell.usual()).get(0).faces()) {
      double tilt = Math.toRadians(face.tilt());
      double azimuth = Math.toRadians(face.azimuth());
      east += face.grossArea() * Math.sin(tilt) * Math.sin(azimuth);
      north += face.grossArea() * Math.sin(tilt) * Math.cos(azimuth);
      up += face.grossArea() * Math.cos(tilt);
    }
    double area = shell.rooms(shell.usual()).get(0).floorArea();
    assertThat(east).isCloseTo(0, within(1e-9));
    assertThat(north).isCloseTo(0, within(1e-9));
    // slopes and tilts are rounded as a person would
    assertThat(up).isCloseTo(0, within(0.002 * area));
  }

  @Test
  void eachSaysWhatItTakesForGranted() {
    assertThat(ShellPresets.all()).hasSize(5);
    assertThat(WorkPresets.all()).hasSize(3);
    Stream.concat(
            ShellPresets.all().stream().map(ShellPreset::assumptions),
            WorkPresets.all().stream().map(WorkPreset::assumptions))
        .forEach(
            assumptions ->
                assertThat(assumptions).hasSizeGreaterThan(3).allMatch(text -> text.endsWith(".")));
    assertThat(ShellPresets.find("Shed")).isPresent();
    assertThat(ShellPresets.find("Palace")).isEmpty();
    assertThat(WorkPresets.find("Hand tools and radio")).isPresent();
    assertThat(WorkPresets.find("Forging")).isEmpty();
  }

  @Test
  void sizesOutOfRangeAreRefused() {
    assertThatThrownBy(() -> new ShellSize(1, 9, 3, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("length 1.0; takes 2.0 to 60.0");
    assertThatThrownBy(() -> new ShellSize(9, 9, 3, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("facing NaN; takes 0.0 to 360.0");
  }

  private static Shop shop(List<Room> rooms, WorkPreset work) {
    List<Room> all = new ArrayList<>(rooms);
    all.set(0, rooms.get(0).withGains(work.gains()).withFans(work.fans()));
    return Examples.shop("insulated").withRooms(all);
  }
}
