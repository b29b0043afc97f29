package org.shopclime.form;

import static org.shopclime.quantity.Units.metresFromFeet;
import static org.shopclime.quantity.Units.metresFromInches;
import static org.shopclime.quantity.Units.rValueSi;
import static org.shopclime.quantity.Units.wattsFromBtuh;
import static org.shopclime.quantity.Units.wattsFromHorsepower;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shopclime.envelope.GlassTable;
import org.shopclime.quantity.Units;
import org.shopclime.shop.Board;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Contents;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorScreen;
import org.shopclime.shop.DoorType;
import org.shopclime.shop.Drier;
import org.shopclime.shop.Duct;
import org.shopclime.shop.EfficiencyLabel;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Glass;
import org.shopclime.shop.HeatSource;
import org.shopclime.shop.Improvement;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Member;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Overhang;
import org.shopclime.shop.Pads;
import org.shopclime.shop.Part;
import org.shopclime.shop.Passage;
import org.shopclime.shop.PassageKind;
import org.shopclime.shop.Prices;
import org.shopclime.shop.PumpHeat;
import org.shopclime.shop.PumpWinter;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Seal;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Supply;
import org.shopclime.shop.UnitFan;
import org.shopclime.shop.Window;

/** What a part that was just added is, until its owner says more; usual sizes (common practice). */
final class Starts {

  private static final double KWH_PRICE = 0.15;

  private Starts() {}

  static Object of(Class<?> type) {
    Schedule work = ScheduleText.work();
    if (type == Room.class) {
      return room("Room");
    }
    if (type == Face.class) {
      return face(Part.WALL, "outdoors");
    }
    if (type == Window.class) {
      return window();
    }
    if (type == Door.class) {
      return door();
    }
    if (type == Fan.class) {
      return new Fan("Fan", FanWay.OUT, 300 * Units.CUBIC_METRES_PER_SECOND_PER_CFM, work);
    }
    if (type == Duct.class) {
      return new Duct(Units.metresFromInches(6), Optional.empty());
    }
    if (type == Gain.People.class) {
      return new Gain.People("People", 1, Gain.Activity.LIGHT_BENCH_WORK, work);
    }
    if (type == Gain.Lights.class) {
      return new Gain.Lights("Lights", 4, 40, Gain.Lamp.LED, work);
    }
    if (type == Gain.Motor.class) {
      return new Gain.Motor("Machine", wattsFromHorsepower(1.5), 0.6, Span.known(0.15), work);
    }
    if (type == Gain.Compressor.class) {
      return new Gain.Compressor("Compressor", wattsFromHorsepower(5), unknown(type, "duty"), work);
    }
    if (type == Gain.Oven.class) {
      double side = metresFromFeet(3);
      return new Gain.Oven(
          "Oven",
          side,
          side,
          metresFromFeet(5),
          unknown(type, "insulation"),
          Units.celsius(400),
          6000,
          Units.kilogramsFromPounds(50),
          0,
          work);
    }
    if (type == OvenBatches.class) {
      return new OvenBatches(
          Optional.of(3.0),
          Units.kilogramsFromPounds(50),
          absent(type, "thickness"),
          1200,
          60,
          0,
          1);
    }
    if (type == Gain.WorkFan.class) {
      return new Gain.WorkFan("Bench fan", absent(type, "power"), absent(type, "airSpeed"), work);
    }
    if (type == Gain.Other.class) {
      return new Gain.Other("Something warm", 500, 0.3, 0, work);
    }
    if (type == CoolingUnit.class) {
      return new CoolingUnit(
          "",
          wattsFromBtuh(12000),
          absent(type, "efficiency"),
          EfficiencyLabel.CEER,
          115,
          Span.known(1));
    }
    if (type == Pads.class) {
      return new Pads(
          Units.cubicMetresPerSecondFromCfm(3000), absent(type, "effectiveness"), Optional.empty());
    }
    if (type == PumpHeat.class) {
      return new PumpHeat(
          PumpWinter.HEATS, Optional.empty(), Optional.empty(), absent(type, "lowestOutdoor"));
    }
    if (type == UnitFan.class) {
      return new UnitFan(Optional.empty());
    }
    if (type == Drier.class) {
      double pints = Units.cubicMetresFromGallons(35 / 8.0) * 1000 / 86_400;
      return new Drier(pints, absent(type, "energyFactor"), absent(type, "humidity"));
    }
    if (type == Supply.class) {
      return new Supply(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Supply.Wire.UNKNOWN,
          Supply.Sharing.UNKNOWN,
          Optional.empty());
    }
    if (type == Prices.ChangePrice.class) {
      return new Prices.ChangePrice(Improvement.DOOR_SEALS_TIGHT, 50);
    }
    if (type == Electricity.Tier.class) {
      return new Electricity.Tier(KWH_PRICE, Optional.empty(), Month.JANUARY, Month.DECEMBER);
    }
    if (type == Electricity.PricedHours.class) {
      return new Electricity.PricedHours(
          2 * KWH_PRICE,
          ScheduleText.read("Mon-Fri 14:00-20:00").orElseThrow(),
          Month.JUNE,
          Month.SEPTEMBER);
    }
    if (type == Overhang.class) {
      return new Overhang(metresFromFeet(1), 0);
    }
    if (type == Passage.class) {
      return ShopParts.create(
          Passage.class,
          Map.of(
              "name",
              "Stair",
              "kind",
              PassageKind.FLOOR_OPENING,
              "width",
              metresFromFeet(3),
              "length",
              metresFromFeet(8)));
    }
    if (type == BuildLayer.class) {
      return layer("gypsum board", 0.5);
    }
    if (type == Board.class) {
      return new Board("XPS foam", metresFromInches(1));
    }
    return kind(type);
  }

  private static Object kind(Class<?> type) {
    if (type == Leakage.Tightness.class) {
      return new Leakage.Tightness(Leakage.Grade.UNKNOWN);
    }
    if (type == Leakage.BlowerDoor.class) {
      return new Leakage.BlowerDoor(Span.known(12));
    }
    if (type == Leakage.AirChanges.class) {
      return new Leakage.AirChanges(unknown(type, "airChanges"));
    }
    if (type == Leakage.Area.class) {
      return new Leakage.Area(Span.known(Units.squareMetresFromSquareInches(100)));
    }
    if (type == Electricity.StateAverage.class) {
      return new Electricity.StateAverage();
    }
    if (type == Electricity.Flat.class) {
      return new Electricity.Flat(KWH_PRICE);
    }
    if (type == Electricity.Tiers.class) {
      return new Electricity.Tiers(List.of((Electricity.Tier) of(Electricity.Tier.class)));
    }
    if (type == Electricity.TimeOfUse.class) {
      return new Electricity.TimeOfUse(
          KWH_PRICE, List.of((Electricity.PricedHours) of(Electricity.PricedHours.class)));
    }
    if (type == HeatSource.Electric.class) {
      return new HeatSource.Electric();
    }
    if (type == HeatSource.Propane.class) {
      return new HeatSource.Propane(3 / Units.CUBIC_METRES_PER_GALLON, absent(type, "efficiency"));
    }
    if (type == HeatSource.NaturalGas.class) {
      return new HeatSource.NaturalGas(1.5 / HeatSource.KWH_PER_THERM, absent(type, "efficiency"));
    }
    if (type == HeatSource.HeatingOil.class) {
      return new HeatSource.HeatingOil(
          4 / Units.CUBIC_METRES_PER_GALLON, absent(type, "efficiency"));
    }
    if (type == Build.Layers.class) {
      return new Build.Layers(List.of(layer("plywood", 0.5)));
    }
    if (type == Build.Framed.class) {
      return new Build.Framed(
          Member.TWO_BY_FOUR,
          metresFromInches(16),
          List.of(layer("plywood", 0.5)),
          rValueSi(13),
          unknown(type, "gaps"),
          0,
          List.of(layer("gypsum board", 0.5)));
    }
    if (type == Build.Slab.class) {
      return new Build.Slab(
          List.of(layer("concrete", 4)),
          metresFromFeet(40),
          0,
          0,
          unknown(type, "soilConductivity"));
    }
    throw new IllegalArgumentException("nothing to start with for " + type);
  }

  /** The same thing of another kind: what both have by name and type is kept. */
  static Record swapped(Record from, Class<?> kind) {
    Record to = (Record) of(kind);
    for (ShopParts.Entry entry : ShopParts.of(kind)) {
      boolean both =
          ShopParts.of(from.getClass()).stream()
              .anyMatch(old -> old.name().equals(entry.name()) && old.type() == entry.type());
      if (both) {
        to = ShopParts.with(to, entry.name(), ShopParts.value(from, entry.name()));
      }
    }
    return to;
  }

  static Face face(Part part, String behind) {
    double tilt =
        switch (part) {
          case WALL -> 90;
          case ROOF, CEILING -> 0;
          case FLOOR -> 180;
        };
    String name =
        part.name().charAt(0) + part.name().substring(1).toLowerCase(java.util.Locale.ROOT);
    Build build =
        (Build)
            of(
                part == Part.FLOOR && behind.equals("ground")
                    ? Build.Slab.class
                    : Build.Framed.class);
    return new Face(
        name,
        part,
        behind,
        0,
        tilt,
        metresFromFeet(10),
        metresFromFeet(part == Part.WALL ? 8 : 10),
        0,
        build,
        Span.known(0.6),
        0.9,
        0.9,
        List.of(),
        List.of(),
        Optional.empty(),
        1);
  }

  private static Room room(String name) {
    return new Room(
        name,
        RoomUse.FLOATING,
        Units.squareMetresFromSquareFeet(100),
        metresFromFeet(8),
        Optional.empty(),
        Units.celsius(78),
        0.5,
        List.of(face(Part.WALL, "outdoors")),
        new Leakage.Tightness(Leakage.Grade.UNKNOWN),
        List.of(),
        List.of(),
        new Contents(Span.known(0), Span.known(0), 0));
  }

  private static Window window() {
    Glass glass =
        GlassTable.find("double clear, aluminium")
            .map(g -> new Glass(g.name(), g.uFactor(), g.shgc()))
            .orElseThrow();
    double side = metresFromFeet(3);
    return new Window("Window", side, side, 0, side, glass, 1, 1, Optional.empty());
  }

  private static Door door() {
    return new Door(
        "Door",
        DoorType.ENTRY,
        metresFromFeet(3),
        metresFromFeet(6.75),
        "insulated steel entry",
        List.of(),
        Span.known(0.9),
        Seal.WORN,
        0,
        ScheduleText.work(),
        DoorScreen.NOTHING,
        Span.known(0.6));
  }

  private static BuildLayer layer(String material, double inches) {
    return new BuildLayer(
        material,
        Optional.of(metresFromInches(inches)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static double absent(Class<?> type, String name) {
    return (Double) ShopParts.absent(type, name).orElseThrow();
  }

  private static Span unknown(Class<?> type, String name) {
    return ShopParts.of(type).stream()
        .filter(entry -> entry.name().equals(name))
        .findFirst()
        .flatMap(entry -> ShopParts.unknown(entry.say()))
        .orElseThrow();
  }

  /** A record with a name that is not taken: "Window 2". */
  static Record named(Record record, Set<String> taken) {
    Optional<String> name = FormText.nameOf(record);
    if (name.isEmpty() || !taken.contains(name.get())) {
      return record;
    }
    String stem = name.get().replaceAll(" \\d+$", "");
    int number = 2;
    while (taken.contains(stem + " " + number)) {
      number++;
    }
    return ShopParts.with(record, "name", stem + " " + number);
  }

  /** A doubled part whose own parts have names that are not taken either. */
  static Record withOwnNames(Record record, Shop shop, ShopPath list) {
    if (!(record instanceof Face face) || !list.last().name().equals("faces")) {
      return record;
    }
    Set<String> taken = Outline.taken(shop, list.parent().child("faces", 0).child("windows"));
    List<Object> windows = new ArrayList<>();
    List<Object> doors = new ArrayList<>();
    for (Window window : face.windows()) {
      windows.add(takeName(window, taken));
    }
    for (Door door : face.doors()) {
      doors.add(takeName(door, taken));
    }
    return ShopParts.with(ShopParts.with(face, "windows", windows), "doors", doors);
  }

  private static Record takeName(Record opening, Set<String> taken) {
    Record own = named(opening, taken);
    taken.add(FormText.nameOf(own).orElse(""));
    return own;
  }

  /** An element put into a list. */
  static List<Object> inserted(List<?> list, int at, Object element) {
    List<Object> longer = new ArrayList<>(list);
    longer.add(at, element);
    return longer;
  }
}
