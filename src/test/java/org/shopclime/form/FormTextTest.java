package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.quantity.Problem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

class FormTextTest {

  @TempDir Path folder;

  private final Shop shop = SmallShop.shop();

  @Test
  void placesAreToldByNameAndLabel() {
    assertThat(FormText.place(shop, "rooms[0].faces[0].windows[0].width"))
        .isEqualTo("Shop, West wall, Window, Width");
    assertThat(FormText.place(shop, "unit.capacity")).isEqualTo("Cooling unit, Rated capacity");
    assertThat(FormText.place(shop, "rooms[0].faces[x]")).isEqualTo("rooms[0].faces[x]");
    assertThat(FormText.problem(shop, new Problem("place.station", "\"X\"", "a station")))
        .isEqualTo("Place and hot day, Weather station: found \"X\"; takes a station");
    assertThat(FormText.warning(shop, new Warning("unit", "Mind the dust.")))
        .isEqualTo("Cooling unit: Mind the dust.");
  }

  @Test
  void countsWhatIsToBeMinded() {
    assertThat(FormText.warnings(0)).isEqualTo("Nothing to mind");
    assertThat(FormText.warnings(1)).isEqualTo("1 thing to mind");
    assertThat(FormText.warnings(3)).isEqualTo("3 things to mind");
  }

  @Test
  void remembersFilesAndTheme() throws Exception {
    FormSettings settings = new FormSettings(folder.resolve("new"));
    assertThat(settings.recent()).isEmpty();
    assertThat(settings.isDark()).isFalse();
    settings.keepDark(true);
    for (int i = 0; i < 10; i++) {
      settings.keepRecent(folder.resolve(i + ".json"));
    }
    settings.keepRecent(folder.resolve("8.json"));
    assertThat(settings.recent()).hasSize(8);
    assertThat(settings.recent().get(0)).isEqualTo(folder.resolve("8.json").toAbsolutePath());
    assertThat(settings.isDark()).isTrue();
    Files.write(folder.resolve("new").resolve("form.properties"), new byte[] {'\\', 'u', 'x'});
    assertThat(settings.recent()).isEmpty();
  }

  @Test
  void findsCopiesOfRunsThatAreOver() throws Exception {
    FormSettings settings = new FormSettings(folder);
    Files.writeString(folder.resolve("unsaved-999999999999.json"), "{}");
    Files.writeString(settings.unsavedCopy(), "{}");
    Files.writeString(folder.resolve("unsaved-x.json"), "{}");
    assertThat(settings.leftCopies()).containsExactly(folder.resolve("unsaved-999999999999.json"));
  }
}
