package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.Component;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Face;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/**
 * A shop without work in steady heat, without sun: outdoors and the ground are hotter than any
 * cooled room, so that every face brings heat in.
 *
 * <p>Some faces are left alone. A wall between cooled rooms only passes heat from one to the other.
 * A roof over an attic under a clear sky may be cooler outside than the attic, which the outdoor
 * air keeps warm; more of it, and less insulation, then cool the attic. Faces of rooms that float
 * are therefore changed only where no face sees the sky (emittance 0), and never in area: a larger
 * cool or shining roof stands between a ceiling and the hot ones.
 */
@AddLifecycleHook(MoreTries.class)
class SteadySenseProperties {

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void moreResistanceLowersItsLineAndTheTotal(@ForAll long lot) {
    Case any = new Case(lot, true);
    double more = any.drawn.between(0.05, 4);
    boolean inside = any.drawn.any(List.of(true, false));
    Face thick = DrawnShop.insulated(any.face, more, inside);
    double before = any.before.total();
    SteadyLoad after = any.with(thick);
    assertThat(after.total()).as(any.face.name()).isLessThanOrEqualTo(before + any.slack());
    if (any.own()) {
      assertThat(any.line(after)).as(any.face.name()).isLessThan(any.line(any.before));
    }
  }

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void twiceTheAreaLowersNeitherItsLineNorTheTotal(@ForAll long lot) {
    Case any = new Case(lot, false);
    // A face that passes no heat, a floor without an edge outdoors, only moves what others radiate.
    Assume.that(any.own());
    double before = any.before.total();
    SteadyLoad after = any.with(DrawnShop.with(any.face, "width", 2 * any.face.width()));
    assertThat(after.total()).as(any.face.name()).isGreaterThanOrEqualTo(before - any.slack());
    assertThat(any.line(after)).as(any.face.name()).isGreaterThan(any.line(any.before));
  }

  /**
   * One solution, and days run until they repeat, come to the same: to rounding where no room
   * floats. Where one does, days end once a day moves nothing by 1e-6 K, slow walls then being up
   * to some hundred such days away.
   */
  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void aDayThatNeverChangesIsSteady(@ForAll long lot) {
    Case any = new Case(lot, true);
    ShopLoad load = PeakLoad.of(any.model);
    boolean floats = load.rooms().size() < any.model.rooms();
    double total = load.rooms().stream().mapToDouble(room -> room.sensible().at(12)).sum();
    double slack = (floats ? 1e-4 : Near.ROUNDING) * any.before.total();
    assertThat(total).isCloseTo(any.before.total(), within(slack));
    if (any.own()) {
      double line =
          load.rooms().get(any.room).lines().stream()
              .filter(each -> each.name().equals(any.face.name()))
              .mapToDouble(each -> each.sensible().at(12))
              .sum();
      assertThat(line).isCloseTo(any.line(any.before), within(slack));
    }
  }

  /** A shop, a day and a face of it. */
  private static final class Case {
    private final DrawnShop drawn;
    private final Shop shop;
    private final HotDay day;
    private final Face face;
    private final int room;
    private final ShopModel model;
    private final SteadyLoad before;

    Case(long lot, boolean floatingToo) {
      drawn = new DrawnShop(lot);
      boolean sky = drawn.any(List.of(true, false));
      Shop idle = DrawnShop.eachRoom(drawn.shop(), Case::idle);
      shop = sky ? idle : DrawnShop.eachFace(idle, Case::skyless);
      day = TestShops.constant(drawn.between(34, 40), drawn.between(0, 6));
      List<Face> faces = new ArrayList<>();
      for (Room each : shop.rooms()) {
        if ((floatingToo && !sky) || each.use() == RoomUse.COOLED) {
          faces.addAll(each.faces());
        }
      }
      faces.removeIf(each -> each.behind().equals("nothing") || each.behind().equals("Office"));
      face = drawn.any(faces);
      Assume.that(face.netArea() > 0.1);
      room = roomOf(face);
      model = TestShops.dark(shop, day);
      before = new SteadyLoad(model);
    }

    /** Nothing goes on, so that no hour is unlike another. */
    private static Room idle(Room room) {
      List<Face> faces = new ArrayList<>();
      for (Face face : room.faces()) {
        faces.add(
            face.withDoors(
                face.doors().stream()
                    .map(door -> DrawnShop.with(door, "openMinutes", 0.0))
                    .toList()));
      }
      return DrawnShop.with(
          room.withGains(List.of()).withFans(List.of()), "faces", List.copyOf(faces));
    }

    private static Face skyless(Face face) {
      return face.behind().equals("outdoors")
          ? DrawnShop.with(face, "emittanceOutside", 0.0)
          : face;
    }

    private int roomOf(Face wanted) {
      for (int each = 0; each < shop.rooms().size(); each++) {
        if (shop.rooms().get(each).faces().contains(wanted)) {
          return each;
        }
      }
      throw new IllegalArgumentException(wanted.name());
    }

    SteadyLoad with(Face other) {
      Shop changed = DrawnShop.eachFace(shop, each -> each.equals(face) ? other : each);
      return new SteadyLoad(TestShops.dark(changed, day));
    }

    /** A face of a floating room counts in the line of what parts it from the cooled one. */
    boolean own() {
      return model.isCooled(room) && component().uFactor() > 0;
    }

    double line(SteadyLoad load) {
      return load.line(room, component().index());
    }

    private Component component() {
      return model.components().stream()
          .filter(each -> each.room() == room && each.name().equals(face.name()))
          .findFirst()
          .orElseThrow();
    }

    double slack() {
      return Near.ROUNDING * before.total();
    }
  }
}
