package org.shopclime.shop;

import static org.shopclime.shop.Member.TWO_BY_EIGHT;
import static org.shopclime.shop.Member.TWO_BY_FOUR;
import static org.shopclime.shop.Member.TWO_BY_SIX;
import static org.shopclime.shop.Member.TWO_BY_TEN;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.shopclime.quantity.Kind;

/** The changes to a shop that are weighed against each other; each gives a changed copy. */
public final class ShopEdit {

  /** Part of the sun that an outside screen of dense weave lets through (common practice). */
  private static final double SCREEN = 0.3;

  private ShopEdit() {}

  /**
   * All big doors, that is all but entry doors, filled with the same boards.
   *
   * @param shop shop
   * @param boards boards, outside to inside; empty: bare doors
   * @return the changed shop
   */
  public static Shop doorBoards(Shop shop, List<Board> boards) {
    return Walk.each(
        shop, Door.class, door -> door.type() == DoorType.ENTRY ? door : door.withBoards(boards));
  }

  /**
   * All door seals tight.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop sealsTight(Shop shop) {
    return Walk.each(shop, Door.class, door -> door.withSeal(Seal.TIGHT));
  }

  /**
   * Plastic strips in the doorways of all big doors that are opened with nothing in them.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop stripsInOpenDoors(Shop shop) {
    return Walk.each(
        shop, Door.class, door -> door.opensWide() ? door.withScreen(DoorScreen.STRIPS) : door);
  }

  /**
   * All framed outdoor walls of cooled rooms filled with the usual batt of their depth: R-13 in
   * 2x4, R-19 in 2x6, R-25 in 2x8, R-30 in 2x10 (common practice). A better fill stays.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop wallsFilled(Shop shop) {
    return walls(shop, Map.of(TWO_BY_FOUR, 13, TWO_BY_SIX, 19, TWO_BY_EIGHT, 25, TWO_BY_TEN, 30));
  }

  /**
   * All framed outdoor walls of cooled rooms filled with the dense batt of their depth: R-15 in
   * 2x4, R-21 in 2x6, R-30 in 2x8, R-38 in 2x10 (common practice). A better fill stays.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop wallsFilledDensely(Shop shop) {
    return walls(shop, Map.of(TWO_BY_FOUR, 15, TWO_BY_SIX, 21, TWO_BY_EIGHT, 30, TWO_BY_TEN, 38));
  }

  private static Shop walls(Shop shop, Map<Member, Integer> rValues) {
    return cooledFaces(
        shop,
        face -> {
          boolean outdoorWall = face.part() == Part.WALL && face.behind().equals("outdoors");
          if (outdoorWall && face.build() instanceof Build.Framed framed) {
            double batt = Typed.rValue("R-" + rValues.get(framed.member()));
            return face.withBuild(framed.withCavity(Math.max(framed.cavity(), batt)));
          }
          return face;
        });
  }

  /**
   * Ceilings of cooled rooms brought up to a resistance by unbroken insulation above them. What is
   * between the joists counts toward it; a better ceiling stays.
   *
   * @param shop shop
   * @param resistance wished resistance of all the insulation, m²·K/W
   * @return the changed shop
   */
  public static Shop ceilingsFilled(Shop shop, double resistance) {
    return cooledFaces(
        shop,
        face -> {
          if (face.part() != Part.CEILING) {
            return face;
          }
          if (face.build() instanceof Build.Framed framed) {
            double missing = Typed.tidy(Kind.R_VALUE, resistance - framed.cavity());
            double above = Math.max(framed.continuous(), missing);
            return face.withBuild(framed.withContinuous(above));
          }
          if (face.build() instanceof Build.Layers plain) {
            List<BuildLayer> layers = new ArrayList<>(plain.layers());
            Optional<Double> none = Optional.empty();
            layers.add(
                0,
                new BuildLayer(
                    "Added insulation", none, none, none, none, Optional.of(resistance)));
            return face.withBuild(new Build.Layers(layers));
          }
          return face;
        });
  }

  /**
   * All windows behind an outside screen that lets 30 % of the sun through.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop windowsShaded(Shop shop) {
    return Walk.each(
        shop, Window.class, window -> window.withOuterShade(Math.min(window.outerShade(), SCREEN)));
  }

  /**
   * No compressor in a cooled room: it stands outdoors.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop compressorOut(Shop shop) {
    return cooledRooms(
        shop,
        room ->
            room.withGains(
                room.gains().stream().filter(gain -> !(gain instanceof Gain.Compressor)).toList()));
  }

  /**
   * All rooms without what gives off heat in one way.
   *
   * @param shop shop
   * @param kind compressor, oven, …
   * @return the changed shop
   */
  public static Shop withoutGains(Shop shop, Class<? extends Gain> kind) {
    return Walk.each(
        shop,
        Room.class,
        room ->
            room.withGains(room.gains().stream().filter(gain -> !kind.isInstance(gain)).toList()));
  }

  /**
   * Cooled rooms half as leaky. A grade becomes the next tighter one, which has about half the
   * leakage area; an unknown one counts as leaky.
   *
   * @param shop shop
   * @return the changed shop
   */
  public static Shop leakageHalved(Shop shop) {
    return cooledRooms(shop, room -> room.withLeakage(halved(room.leakage())));
  }

  private static Leakage halved(Leakage leakage) {
    if (leakage instanceof Leakage.BlowerDoor blower) {
      return new Leakage.BlowerDoor(halved(blower.airChanges50()));
    }
    if (leakage instanceof Leakage.AirChanges changes) {
      return new Leakage.AirChanges(halved(changes.airChanges()));
    }
    if (leakage instanceof Leakage.Area area) {
      return new Leakage.Area(halved(area.area()));
    }
    Leakage.Grade grade = ((Leakage.Tightness) leakage).grade();
    return new Leakage.Tightness(
        switch (grade) {
          case TIGHT, GOOD -> Leakage.Grade.TIGHT;
          case AVERAGE -> Leakage.Grade.GOOD;
          case LEAKY, UNKNOWN -> Leakage.Grade.AVERAGE;
          case VERY_LEAKY -> Leakage.Grade.LEAKY;
        });
  }

  private static Span halved(Span span) {
    return new Span(span.low() / 2, span.likely() / 2, span.high() / 2);
  }

  /**
   * Another capacity of the unit; without a unit, one of 10.9 BTU/Wh (CEER) at 115 V, or 230 V
   * above 15,000 BTU/h (common practice), that cools the first cooled room.
   *
   * @param shop shop
   * @param capacity rated total capacity, W
   * @return the changed shop
   */
  public static Shop unitCapacity(Shop shop, double capacity) {
    double volts = capacity > Typed.si(Kind.POWER, "15000 BTU/h") ? 230 : 115;
    CoolingUnit usual =
        new CoolingUnit(
            "",
            capacity,
            Typed.si(Kind.EFFICIENCY, "10.9 BTU/Wh"),
            EfficiencyLabel.CEER,
            volts,
            Span.known(1));
    return shop.withUnit(Optional.of(shop.unit().orElse(usual).withCapacity(capacity)));
  }

  private static Shop cooledFaces(Shop shop, UnaryOperator<Face> change) {
    return cooledRooms(shop, room -> room.withFaces(room.faces().stream().map(change).toList()));
  }

  private static Shop cooledRooms(Shop shop, UnaryOperator<Room> change) {
    return Walk.each(
        shop, Room.class, room -> room.use() == RoomUse.COOLED ? change.apply(room) : room);
  }
}
