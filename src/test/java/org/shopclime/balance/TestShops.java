package org.shopclime.balance;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.GroundTemperature;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Hours;
import org.shopclime.climate.Station;
import org.shopclime.envelope.Season;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Contents;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorScreen;
import org.shopclime.shop.DoorType;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Glass;
import org.shopclime.shop.HotDayLevel;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Place;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Seal;
import org.shopclime.shop.Shelter;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;
import org.shopclime.shop.Window;
import org.shopclime.shop.Work;

/** Small shops and plain days that tests can reckon with by pencil. */
public final class TestShops {

  /** W in a BTU/h. */
  public static final double BTUH = 0.29307107;

  /** m²·K/W in one h·ft²·°F/BTU. */
  public static final double R = 0.17611018;

  /** m in a foot. */
  public static final double FOOT = 0.3048;

  /** 78 °F. */
  public static final double WISHED = celsius(78);

  /** Sea-level pressure, Pa. */
  public static final double PRESSURE = 101_325;

  /** A place in the middle of its time zone, so that noon is at 12. */
  public static final Station PLACE = new Station("999999", "Testfield", "AL", -6, 31, -90, 0);

  private TestShops() {}

  /** °C of a temperature in °F. */
  public static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /** A schedule from its text. */
  public static Schedule when(String text) {
    return ScheduleText.read(text).orElseThrow();
  }

  /** A shop that is worked in on weekdays, by standard time. */
  public static Shop shop(Room... rooms) {
    return new Shop(
        "Test",
        "",
        UnitSystem.SI,
        new Place(
            "999999", HotDayLevel.P1, Optional.empty(), Optional.empty(), 0.2, Shelter.TYPICAL),
        work("Mon-Fri 8:00-17:00", Clock.STANDARD),
        List.of(rooms),
        Optional.empty());
  }

  /** Working hours. */
  public static Work work(String hours, Clock clock) {
    return new Work(when(hours), 3600, clock, 18.3);
  }

  /** A tight room without gains and contents. */
  public static Room room(
      String name, RoomUse use, double area, double height, double setPoint, Face... faces) {
    return new Room(
        name,
        use,
        area,
        height,
        Optional.empty(),
        setPoint,
        0.5,
        List.of(faces),
        new Leakage.AirChanges(Span.known(0)),
        List.of(),
        List.of(),
        new Contents(Span.known(0), Span.known(0), 0));
  }

  /** The same with iron, wood and drywall in it. */
  public static Room withContents(Room room, double iron, double wood, double drywall) {
    return new Room(
        room.name(),
        room.use(),
        room.floorArea(),
        room.height(),
        room.volume(),
        room.setPoint(),
        room.wishedHumidity(),
        room.faces(),
        room.leakage(),
        room.fans(),
        room.gains(),
        new Contents(Span.known(iron), Span.known(wood), drywall));
  }

  /** A face of emittance 0.9 that takes in 60 % of the sun. */
  public static Face face(
      String name,
      Part part,
      String behind,
      double azimuth,
      double tilt,
      double width,
      double height,
      Build build) {
    return new Face(
        name,
        part,
        behind,
        azimuth,
        tilt,
        width,
        height,
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

  /** A wall to outdoors. */
  public static Face wall(String name, double azimuth, double width, double height, Build build) {
    return face(name, Part.WALL, "outdoors", azimuth, 90, width, height, build);
  }

  /** The same face with other surfaces outside. */
  public static Face outside(Face face, double absorptance, double emittance) {
    return new Face(
        face.name(),
        face.part(),
        face.behind(),
        face.azimuth(),
        face.tilt(),
        face.width(),
        face.height(),
        face.gableRise(),
        face.build(),
        Span.known(absorptance),
        emittance,
        face.emittanceInside(),
        face.windows(),
        face.doors(),
        face.overhang(),
        face.treeShade());
  }

  /** The same face under another name, of another width, looking elsewhere. */
  public static Face turned(Face face, String name, double azimuth, double width) {
    return new Face(
        name,
        face.part(),
        face.behind(),
        azimuth,
        face.tilt(),
        width,
        face.height(),
        face.gableRise(),
        face.build(),
        face.absorptance(),
        face.emittanceOutside(),
        face.emittanceInside(),
        face.windows(),
        face.doors(),
        face.overhang(),
        face.treeShade());
  }

  /** A square room 24 x 24 x 9 ft of one build all round, its floor passing no heat. */
  public static Room box(String name, RoomUse use, Build walls, Build roof) {
    double side = 24 * FOOT;
    double height = 9 * FOOT;
    return room(
        name,
        use,
        side * side,
        height,
        WISHED,
        wall("North", 0, side, height, walls),
        wall("East", 90, side, height, walls),
        wall("South", 180, side, height, walls),
        wall("West", 270, side, height, walls),
        face("Roof", Part.ROOF, "outdoors", 0, 0, side, side, roof),
        face("Floor", Part.FLOOR, "nothing", 0, 180, side, side, concrete()));
  }

  /** Insulation without mass, of an R-value in h·ft²·°F/BTU. */
  public static Build insulation(double value) {
    return new Build.Layers(List.of(resisting(value)));
  }

  /** A layer of a resistance in h·ft²·°F/BTU without mass. */
  public static BuildLayer resisting(double value) {
    return new BuildLayer(
        "insulation",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(value * R));
  }

  /** A layer of the materials table at its usual thickness. */
  public static BuildLayer layer(String material) {
    return new BuildLayer(
        material,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Layers, outside first. */
  public static Build layers(BuildLayer... layers) {
    return new Build.Layers(List.of(layers));
  }

  /** Concrete, 4 in. */
  public static Build concrete() {
    return layers(
        new BuildLayer(
            "concrete",
            Optional.of(0.1016),
            Optional.of(1.7),
            Optional.of(2240.0),
            Optional.of(840.0),
            Optional.empty()));
  }

  /** A slab on the ground. */
  public static Build slab(double edge) {
    return new Build.Slab(((Build.Layers) concrete()).layers(), edge, 0, 0, Span.known(2));
  }

  /** A window. */
  public static Window window(String name, double width, double height, double u, double shgc) {
    return new Window(
        name, width, height, 0, 0.9, new Glass("glass", u, shgc), 1, 1, Optional.empty());
  }

  /** A bare steel door that is opened. */
  public static Door door(String name, double width, double height, double secondsOpen) {
    return new Door(
        name,
        DoorType.ROLL_UP,
        width,
        height,
        "sheet steel",
        List.of(),
        Span.known(0.9),
        Seal.WORN,
        secondsOpen,
        when("work"),
        DoorScreen.NOTHING,
        Span.known(0.6));
  }

  /** A fan that runs by a schedule, m³/s. */
  public static Fan fan(String name, FanWay way, double flow, String schedule) {
    return new Fan(name, way, flow, when(schedule));
  }

  /** A gain, W. */
  public static Gain gain(
      String name, double power, double radiant, double moisture, String schedule) {
    return new Gain.Other(name, power, radiant, moisture, when(schedule));
  }

  /** A day of one temperature and one wind, with the moisture that 78 °F and 50 % hold. */
  public static HotDay constant(double celsius, double wind) {
    return day(Hours.constant(celsius), Hours.constant(wind), wished(), celsius);
  }

  /** A day of other moisture. */
  public static HotDay constant(double celsius, double wind, double humidityRatio) {
    return day(Hours.constant(celsius), Hours.constant(wind), humidityRatio, celsius);
  }

  /** The same day at another date. */
  public static HotDay on(HotDay day, LocalDate date) {
    return new HotDay(
        day.station(),
        date,
        day.dryBulb(),
        day.humidityRatio(),
        day.wetBulb(),
        day.wind(),
        day.pressure(),
        day.dayHumidityRatio(),
        day.aerosol(),
        day.waterCm(),
        day.ground());
  }

  /** A hot day: 100 °F at 15:00, 78 °F at 3:00, windy in the afternoon. */
  public static HotDay swinging() {
    double mean = celsius(89);
    Hours dryBulb =
        Hours.from(hour -> mean + 11 / 1.8 * Math.cos(2 * Math.PI * (hour - 15) / 24.0));
    Hours wind = Hours.from(hour -> 3 - 2 * Math.cos(2 * Math.PI * (hour - 4) / 24.0));
    return day(dryBulb, wind, 0.015, mean);
  }

  private static HotDay day(Hours dryBulb, Hours wind, double humidityRatio, double ground) {
    return new HotDay(
        PLACE,
        LocalDate.of(2021, 7, 21),
        dryBulb,
        Hours.constant(humidityRatio),
        dryBulb,
        wind,
        PRESSURE,
        humidityRatio,
        0.1,
        4,
        new GroundTemperature(ground, 0, 20));
  }

  /** Humidity ratio at 78 °F and 50 %. */
  public static double wished() {
    return MoistAir.humidityRatioFromRelativeHumidity(WISHED, 0.5, PRESSURE);
  }

  /** A shop held on a day without sun. */
  public static ShopModel dark(Shop shop, HotDay day) {
    return ModelMaker.of(shop, day, Season.COOLING, ShopModel.Holding.HELD, false);
  }

  /** A shop held on a clear day. */
  public static ShopModel sunny(Shop shop, HotDay day) {
    return ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
  }
}
