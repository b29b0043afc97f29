package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Room;
import org.shopclime.shop.ShellPreset;
import org.shopclime.shop.ShellPresets;
import org.shopclime.shop.Shop;

/**
 * Without a unit a bare shop in which somebody works gets 10 to 20 °F hotter than the day (common
 * practice). Left alone, shops on a slab stay at 5 to 10 °F above it: the slab takes up the sun's
 * heat by day. The shed, of thin wood on joists, reaches 10 °F with nobody in it.
 */
class BareShopTest {

  private static double above(Shop shop) {
    HotDay day = DesignDays.hotDay(Climates.load().find("722230").orElseThrow(), Level.P1);
    ShopModel model = ShopModel.cooling(shop, day, ShopModel.Holding.FREE);
    LivedDay lived = LivedDay.of(model, Optional.empty(), 0);
    return 1.8 * (lived.peakTemperature() - model.outdoorPeak());
  }

  @ParameterizedTest
  @CsvSource({"bare-studs, 10, 20", "insulated, 3, 12", "insulated-foam-door, 3, 12"})
  void examples(String name, double low, double high) {
    assertThat(above(Examples.shop(name))).isBetween(low, high);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Attached two-car garage, bare attic, steel door   | 10 | 20 | 5 | 10",
        "Detached stud shop, R-13 walls, bare ceiling      | 10 | 20 | 4 | 10",
        "Post-frame metal shop with foil bubble wrap       | 10 | 20 | 5 | 10",
        "Shed                                              | 20 | 25 | 10 | 20"
      })
  void presetsWithTheWorkOfTheBareExampleAndWithout(
      String name, double low, double high, double lowAlone, double highAlone) {
    ShellPreset preset = ShellPresets.find(name).orElseThrow();
    Shop bare = Examples.shop("bare-studs");
    List<Room> rooms = new ArrayList<>(preset.rooms(preset.usual()));
    assertThat(above(bare.withRooms(rooms))).as("alone").isBetween(lowAlone, highAlone);
    rooms.set(0, rooms.get(0).withGains(bare.rooms().get(0).gains()));
    assertThat(above(bare.withRooms(rooms))).as("with work").isBetween(low, high);
  }

  /** Insulation over the ceiling is worth several degrees even without a unit. */
  @Test
  void insulatedPresetStaysCooler() {
    Shop bare = Examples.shop("bare-studs");
    assertThat(above(shell(bare, "R-38 ceiling")))
        .isLessThan(above(shell(bare, "bare ceiling")) - 3);
  }

  private static Shop shell(Shop shop, String ends) {
    ShellPreset preset =
        ShellPresets.all().stream().filter(p -> p.name().endsWith(ends)).findFirst().orElseThrow();
    return shop.withRooms(preset.rooms(preset.usual()));
  }
}
