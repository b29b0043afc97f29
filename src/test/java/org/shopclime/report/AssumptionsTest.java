package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.MadeShops;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;
import org.shopclime.shop.Span;

class AssumptionsTest {

  private static List<String> unknowns(Shop shop) {
    SizeAnswer answer = Answers.named(Answers.example(), shop);
    return new Assumptions(answer, UnitSystem.SI).unknowns();
  }

  private static Face onUnknownSoil(Face face) {
    return face.build() instanceof Build.Slab slab
        ? face.withBuild(
            new Build.Slab(
                slab.layers(),
                slab.exposedPerimeter(),
                slab.edgeInsulation(),
                slab.edgeDepth(),
                new Span(1.5, 2, 3.5)))
        : face;
  }

  /** Soil that conducts well takes more heat out of the room, so that end is the kind one. */
  @Test
  void unknownSoilIsToldInItsOwnUnit() {
    List<Room> rooms =
        Answers.SHOP.rooms().stream()
            .map(
                room ->
                    room.withFaces(
                        room.faces().stream().map(AssumptionsTest::onUnknownSoil).toList()))
            .toList();
    assertThat(unknowns(Answers.SHOP.withRooms(rooms)))
        .anySatisfy(
            line ->
                assertThat(line)
                    .contains("soil conductivity – 2 W/(m·K) taken; 3.5 W/(m·K) at best")
                    .contains("1.5 W/(m·K) at worst"));
  }

  /** What strips are reckoned to do, and what not. */
  @Test
  void stripsAreToldWithTheirLimits() {
    SizeAnswer answer = Answers.named(Answers.example(), ShopEdit.stripsInOpenDoors(Answers.SHOP));
    assertThat(new Assumptions(answer, UnitSystem.SI).lines())
        .contains(
            "Roll-up door, strips in the open doorway: 93 % of the air that warmth would move"
                + " through is held back, as measured with whole strips hanging closed (parted or"
                + " worn ones hold back much less); nothing of what wind drives through.");
  }

  @Test
  void unknownTightnessIsToldInWords() {
    Leakage unknown = new Leakage.Tightness(Leakage.Grade.UNKNOWN);
    List<Room> rooms =
        Answers.SHOP.rooms().stream().map(room -> room.withLeakage(unknown)).toList();
    assertThat(unknowns(Answers.SHOP.withRooms(rooms)))
        .anySatisfy(line -> assertThat(line).endsWith("between good and very leaky in the band."))
        .anySatisfy(line -> assertThat(line).contains("gaps in its insulation – 3 % taken"));
  }

  /** Albuquerque lies at 5,310 ft, where the standard atmosphere has 83 kPa; Mobile at the sea. */
  @Test
  void thinAirIsToldWhereItIsThin() {
    assertThat(lines("723650")).anyMatch(line -> line.contains("So high up its fans move thinner"));
    assertThat(lines(MadeShops.MOBILE)).noneMatch(line -> line.contains("So high up"));
  }

  private static List<String> lines(String station) {
    Shop shop = MadeShops.example("insulated-foam-door", station);
    SizeAnswer answer = new Sizing(shop, MadeShops.CLIMATES).answer(List.of(), Progress.silent());
    return new Assumptions(answer, UnitSystem.INCH_POUND).lines();
  }
}
