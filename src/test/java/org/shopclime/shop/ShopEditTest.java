package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Kind;

/** Each change changes what it says and nothing else. */
class ShopEditTest {

  private static final Shop BARE = Examples.shop("bare-studs");
  private static final Shop DAY = DayFile.shop();

  @Test
  void boardsGoIntoBigDoorsOnly() {
    List<Board> stack = List.of(new Board("EPS foam", Typed.length("3/4 in")));
    Shop shop = ShopEdit.doorBoards(BARE, stack);
    assertThat(door(shop, 0).boards()).isEqualTo(stack);
    assertThat(door(shop, 1).boards()).isEmpty();
    assertThat(ShopEdit.doorBoards(shop, List.of())).isEqualTo(BARE);
  }

  @Test
  void allSealsBecomeTight() {
    Shop shop = ShopEdit.sealsTight(BARE);
    assertThat(door(shop, 0).seal()).isEqualTo(Seal.TIGHT);
    assertThat(door(shop, 1).seal()).isEqualTo(Seal.TIGHT);
  }

  @Test
  void wallsTakeTheBattThatFits() {
    assertThat(framed(ShopEdit.wallsFilled(BARE), 0).cavity()).isEqualTo(Typed.rValue("R-13"));
    assertThat(framed(ShopEdit.wallsFilledDensely(BARE), 0).cavity())
        .isEqualTo(Typed.rValue("R-15"));
    assertThat(framed(ShopEdit.wallsFilled(BARE), 4).cavity()).as("ceiling").isZero();
    Shop dense = ShopEdit.wallsFilledDensely(BARE);
    assertThat(ShopEdit.wallsFilled(dense)).isEqualTo(dense);
    assertThat(ShopEdit.wallsFilled(BARE).rooms().get(1)).isEqualTo(BARE.rooms().get(1));
  }

  @Test
  void ceilingsAreBroughtUpToTheirResistance() {
    Shop shop = ShopEdit.ceilingsFilled(DAY, Typed.rValue("R-38"));
    Build.Framed ceiling = framed(shop, 4);
    assertThat(ceiling.cavity()).isEqualTo(Typed.rValue("R-19"));
    assertThat(ceiling.continuous()).isEqualTo(Typed.rValue("R-19"));
    assertThat(ShopEdit.ceilingsFilled(shop, Typed.rValue("R-30"))).isEqualTo(shop);
    Build plain =
        new Build.Layers(
            List.of(
                new BuildLayer(
                    "gypsum board",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())));
    Shop layered =
        Walk.each(
            DAY, Face.class, face -> face.part() == Part.CEILING ? face.withBuild(plain) : face);
    Shop filled = ShopEdit.ceilingsFilled(layered, 5);
    Build.Layers layers = (Build.Layers) filled.rooms().get(0).faces().get(4).build();
    assertThat(layers.layers()).hasSize(2);
    assertThat(layers.layers().get(0).resistance()).contains(5.0);
    assertThat(ShopCheck.check(filled, Stations.any()).problems()).isEmpty();
  }

  @Test
  void windowsAreShadedAndNeverUnshaded() {
    Window window = ShopEdit.windowsShaded(DAY).rooms().get(0).faces().get(1).windows().get(0);
    assertThat(window.outerShade()).isEqualTo(0.3);
    Shop dark = Walk.each(DAY, Window.class, one -> one.withOuterShade(0.1));
    assertThat(ShopEdit.windowsShaded(dark)).isEqualTo(dark);
  }

  @Test
  void theCompressorLeavesTheRoom() {
    List<Gain> rest = new ArrayList<>(DAY.rooms().get(0).gains());
    rest.removeIf(gain -> gain instanceof Gain.Compressor);
    assertThat(rest).hasSize(5);
    assertThat(ShopEdit.compressorOut(DAY).rooms().get(0).gains()).isEqualTo(rest);
  }

  @Test
  void leakageIsHalved() {
    assertThat(halved(new Leakage.Tightness(Leakage.Grade.VERY_LEAKY)))
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.LEAKY));
    assertThat(halved(new Leakage.Tightness(Leakage.Grade.LEAKY)))
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.AVERAGE));
    assertThat(halved(new Leakage.Tightness(Leakage.Grade.UNKNOWN)))
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.AVERAGE));
    assertThat(halved(new Leakage.Tightness(Leakage.Grade.AVERAGE)))
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.GOOD));
    assertThat(halved(new Leakage.Tightness(Leakage.Grade.TIGHT)))
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.TIGHT));
    Span span = new Span(2, 6, 10);
    Span half = new Span(1, 3, 5);
    assertThat(halved(new Leakage.BlowerDoor(span))).isEqualTo(new Leakage.BlowerDoor(half));
    assertThat(halved(new Leakage.AirChanges(span))).isEqualTo(new Leakage.AirChanges(half));
    assertThat(halved(new Leakage.Area(span))).isEqualTo(new Leakage.Area(half));
    assertThat(ShopEdit.leakageHalved(DAY).rooms().get(1)).isEqualTo(DAY.rooms().get(1));
  }

  @Test
  void theUnitTakesAnyCapacity() {
    assertThat(ShopEdit.unitCapacity(DAY, 5000).unit())
        .contains(DAY.unit().orElseThrow().withCapacity(5000));
    Shop none = DAY.withUnit(Optional.empty());
    CoolingUnit small = ShopEdit.unitCapacity(none, 3000).unit().orElseThrow();
    CoolingUnit large = ShopEdit.unitCapacity(none, 7000).unit().orElseThrow();
    assertThat(small.volts()).isEqualTo(115);
    assertThat(large.volts()).isEqualTo(230);
    // 10.9 BTU/Wh by 0.29307107 W for a BTU/h
    assertThat(small.efficiency()).isCloseTo(3.19447, within(0.00001));
    assertThat(ShopCheck.check(ShopEdit.unitCapacity(none, 3000), Stations.any()).problems())
        .isEmpty();
  }

  @Test
  void unknownsAreListedAndDecided() {
    List<SpanPlace> places = Unknowns.of(DAY);
    assertThat(places)
        .extracting(SpanPlace::path)
        .containsExactly(
            "rooms[0].faces[0].build.gaps",
            "rooms[0].faces[1].build.gaps",
            "rooms[0].faces[2].build.gaps",
            "rooms[0].faces[3].build.gaps",
            "rooms[0].leakage.grade",
            "rooms[0].gains[4].duty");
    assertThat(places.get(0).of()).isEqualTo("West wall");
    assertThat(places.get(4).of()).isEqualTo("Shop");
    assertThat(places.get(0).kind()).isEqualTo(Kind.FRACTION);
    assertThat(places.get(4).kind()).isEqualTo(Kind.COUNT);
    SpanPlace duty = places.get(5);
    assertThat(duty)
        .isEqualTo(
            new SpanPlace(
                "rooms[0].gains[4].duty",
                "Part of the time running",
                "Compressor",
                Kind.FRACTION,
                new Span(0.1, 0.3, 0.6),
                true));
    Shop one = Unknowns.chooseOne(DAY, duty, Choice.UNKIND);
    assertThat(Unknowns.of(one)).hasSize(5).doesNotContain(duty);
    assertThat(((Gain.Compressor) one.rooms().get(0).gains().get(4)).duty())
        .isEqualTo(Span.known(0.6));
  }

  @Test
  void theKindEndOfATightnessIsTheTightOne() {
    assertThat(Unknowns.choose(DAY, Choice.KIND).rooms().get(0).leakage())
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.GOOD));
    assertThat(Unknowns.choose(DAY, Choice.LIKELY).rooms().get(0).leakage())
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.LEAKY));
    assertThat(Unknowns.choose(DAY, Choice.UNKIND).rooms().get(0).leakage())
        .isEqualTo(new Leakage.Tightness(Leakage.Grade.VERY_LEAKY));
  }

  @Test
  void whereHighIsKindTheEndsChangePlaces() {
    Span dusty = new Span(0.6, 0.85, 1);
    CoolingUnit unit = DAY.unit().orElseThrow();
    Shop shop =
        DAY.withUnit(
            Optional.of(
                new CoolingUnit(
                    unit.room(),
                    unit.capacity(),
                    unit.efficiency(),
                    unit.label(),
                    unit.volts(),
                    dusty)));
    assertThat(Unknowns.choose(shop, Choice.KIND).unit().orElseThrow().airflow())
        .isEqualTo(Span.known(1));
    assertThat(Unknowns.choose(shop, Choice.UNKIND).unit().orElseThrow().airflow())
        .isEqualTo(Span.known(0.6));
    assertThat(Unknowns.choose(shop, Choice.LIKELY).unit().orElseThrow().airflow())
        .isEqualTo(Span.known(0.85));
  }

  private static Leakage halved(Leakage leakage) {
    Shop shop = Walk.each(DAY, Room.class, room -> room.withLeakage(leakage));
    return ShopEdit.leakageHalved(shop).rooms().get(0).leakage();
  }

  private static Build.Framed framed(Shop shop, int face) {
    return (Build.Framed) shop.rooms().get(0).faces().get(face).build();
  }

  private static Door door(Shop shop, int face) {
    return shop.rooms().get(0).faces().get(face).doors().get(0);
  }
}
