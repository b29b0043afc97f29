package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Face;
import org.shopclime.shop.Glass;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;

class ShopSessionTest {

  private final Shop shop = Examples.shop(Examples.USUAL);
  private final ShopSession session = new ShopSession(Optional.empty(), shop);

  private void propose(String path, Object value) {
    session.propose(ShopPath.parse(path), value);
  }

  @Test
  void isDirtyUntilSavedOrUndone() {
    assertThat(session.isDirty()).isFalse();
    propose("name", "Other");
    assertThat(session.isDirty()).isTrue();
    assertThat(FormText.title(session)).isEqualTo("* Other - Shopclime");
    session.undo();
    assertThat(session.isDirty()).isFalse();
    session.redo();
    Path file = Path.of("shop.json");
    session.saved(file, session.now());
    assertThat(session.isDirty()).isFalse();
    assertThat(FormText.kept(session)).isEqualTo("shop.json");
    session.undo();
    assertThat(session.isDirty()).isTrue();
    assertThat(FormText.kept(session)).isEqualTo("shop.json - changed, not saved");
  }

  @Test
  void whatIsLeftOverIsUnsaved() {
    session.openUnsaved(shop, shop.withName("Left"));
    assertThat(session.isDirty()).isTrue();
    assertThat(session.canUndo()).isFalse();
    session.open(Optional.empty(), shop);
    assertThat(session.isDirty()).isFalse();
  }

  @Test
  void aRoomsNewNameIsFollowedByWhatRefersToIt() {
    int attic = shop.rooms().size() - 1;
    String old = shop.rooms().get(attic).name();
    propose("rooms[" + attic + "].name", "Loft above");
    assertThat(session.now().rooms())
        .flatExtracting(Room::faces)
        .extracting(Face::behind)
        .contains("Loft above")
        .doesNotContain(old);
  }

  @Test
  void aGlassPickedByNameBringsItsFigures() {
    String glass = glassPath(session.now());
    propose(glass + ".name", "double low-e, wood or vinyl");
    Glass picked = (Glass) ShopPath.parse(glass).value(session.now()).orElseThrow();
    assertThat(picked.shgc()).isEqualTo(0.31);
    propose(glass + ".shgc", 0.4);
    Glass own = (Glass) ShopPath.parse(glass).value(session.now()).orElseThrow();
    assertThat(own.name()).isEqualTo(Tidying.OWN_GLASS);
    assertThat(own.uFactor()).isEqualTo(picked.uFactor());
  }

  private static String glassPath(Shop shop) {
    for (int i = 0; i < shop.rooms().get(0).faces().size(); i++) {
      if (!shop.rooms().get(0).faces().get(i).windows().isEmpty()) {
        return "rooms[0].faces[" + i + "].windows[0].glass";
      }
    }
    throw new IllegalStateException("no window");
  }
}
