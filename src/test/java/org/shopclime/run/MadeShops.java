package org.shopclime.run;

import java.util.List;
import java.util.Optional;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Hours;
import org.shopclime.climate.Level;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Place;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.ShellPreset;
import org.shopclime.shop.ShellPresets;
import org.shopclime.shop.ShellSize;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;
import org.shopclime.shop.Work;
import org.shopclime.shop.WorkPreset;
import org.shopclime.shop.WorkPresets;

/** Shops and days that tests are run on. */
public final class MadeShops {

  /** All stations. */
  public static final Climates CLIMATES = Climates.load();

  /** Mobile, Alabama. */
  public static final String MOBILE = "722230";

  /** Phoenix, Arizona. */
  public static final String PHOENIX = "722780";

  /** Houston, Texas. */
  public static final String HOUSTON = "722430";

  private static final double BTUH = 2326 * 0.45359237 / 3600;

  private MadeShops() {}

  /** W of BTU/h. */
  public static double btuh(double each) {
    return each * BTUH;
  }

  /** °C of °F. */
  public static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /** °F of °C. */
  public static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }

  /** A shop from a text. */
  public static Shop read(String text) {
    ShopReading reading = ShopFile.read(text, Stations.any());
    if (reading instanceof ShopReading.Good good) {
      return good.shop();
    }
    throw new IllegalArgumentException(reading.toString());
  }

  /** An example at a station, its typed peak gone. */
  public static Shop example(String name, String station) {
    Shop shop = Examples.shop(name);
    Place at = shop.place();
    return shop.withPlace(
        new Place(
            station,
            at.level(),
            Optional.empty(),
            at.typedCold(),
            at.groundReflectance(),
            at.shelter()));
  }

  /** Two presets together, in another place, of another size if one is given. */
  public static Shop preset(
      String shell, String work, String station, double capacity, Optional<ShellSize> size) {
    ShellPreset building = ShellPresets.find(shell).orElseThrow();
    WorkPreset doing = WorkPresets.find(work).orElseThrow();
    List<Room> rooms =
        building.rooms(size.orElse(building.usual())).stream()
            .map(
                room ->
                    room.use() == RoomUse.COOLED
                        ? room.withGains(doing.gains()).withFans(doing.fans())
                        : room)
            .toList();
    return unit(example("bare-studs", station).withRooms(rooms), capacity);
  }

  /** The shop with a window unit of a rated capacity, W; 0 for none. */
  public static Shop unit(Shop shop, double capacity) {
    return capacity == 0
        ? shop.withUnit(Optional.empty())
        : shop.withUnit(
            Optional.of(Examples.shop("insulated").unit().orElseThrow().withCapacity(capacity)));
  }

  /** The shop with other hours of work. */
  public static Shop hours(Shop shop, String hours, double pullDown) {
    return shop.withWork(
        new Work(
            ScheduleText.read(hours).orElseThrow(),
            pullDown,
            shop.work().clock(),
            shop.work().winterTemperature()));
  }

  /** The shop on a day of a typed peak, °C. */
  public static Shop typed(Shop shop, double peak) {
    Place at = shop.place();
    return shop.withPlace(
        new Place(
            at.station(),
            at.level(),
            Optional.of(peak),
            at.typedCold(),
            at.groundReflectance(),
            at.shelter()));
  }

  /** The 0.4 % day of the shop's place, or the one of its typed peak. */
  public static HotDay day(Shop shop) {
    var climate = CLIMATES.find(shop.place().station()).orElseThrow();
    return shop.place().typedPeak().isPresent()
        ? DesignDays.hotDay(climate, Level.P1, shop.place().typedPeak().get())
        : DesignDays.hotDay(climate, Level.P0_4);
  }

  /** Model of a shop on its day, cooled rooms held. */
  public static ShopModel model(Shop shop) {
    return ShopModel.cooling(shop, day(shop), ShopModel.Holding.HELD);
  }

  /** Model of a shop under air that never changes, without sun. */
  public static ShopModel steady(Shop shop, double celsius, double humidityRatio) {
    HotDay hot = day(shop);
    HotDay flat =
        new HotDay(
            hot.station(),
            hot.date(),
            Hours.constant(celsius),
            Hours.constant(humidityRatio),
            Hours.constant(celsius),
            Hours.constant(3),
            hot.pressure(),
            humidityRatio,
            hot.aerosol(),
            hot.waterCm(),
            hot.ground());
    return ShopModel.heating(shop, hot, celsius, 3).on(flat);
  }

  /** A window unit of a rated capacity, W, in the first room. */
  public static Cooling window(double capacity) {
    return unit(Cooling.Kind.WINDOW, capacity);
  }

  /** A usual unit of some kind in the first room. */
  public static Cooling unit(Cooling.Kind kind, double capacity) {
    return Cooling.of(kind, 0, plate(capacity));
  }

  /** The same, its fan of so many watts running on between runs. */
  public static Cooling unitWithFan(Cooling.Kind kind, double capacity, double watts) {
    return Cooling.of(kind, 0, plate(capacity).withFan(watts));
  }

  private static Cooling.Plate plate(double capacity) {
    return new Cooling.Plate(capacity, 10.9 * BTUH, Cooling.Label.CEER, 1);
  }

  /**
   * A bare box of light walls: nothing in it stores heat but its air.
   *
   * @param volume of the air, such as "2000 m3"
   * @param airChanges such as "0.1 /h"
   * @param more further fields of the room, each with a comma before it
   * @return the shop
   */
  public static Shop box(String volume, String airChanges, String more) {
    return box("1", volume, airChanges, more);
  }

  /** The same of walls of another resistance, m²·K/W. */
  public static Shop box(String resistance, String volume, String airChanges, String more) {
    String wall =
        "{\"name\": \"%s wall\", \"part\": \"wall\", \"azimuth\": \"%d°\", \"width\": \"3 m\","
            + " \"height\": \"3 m\", \"build\": {\"kind\": \"layers\", \"layers\":"
            + " [{\"material\": \"plain resistance\", \"resistance\": \""
            + resistance
            + " m2·K/W\"}]}}";
    return read(
        """
        {"shopclime": 1, "name": "Box",
         "place": {"station": "722230"},
         "work": {"hours": "Mon-Fri 8:00-17:00", "clock": "standard"},
         "rooms": [{"name": "Box", "use": "cooled", "floorArea": "9 m2", "height": "3 m",
           "volume": "%s", "faces": [%s, %s],
           "leakage": {"kind": "air changes", "airChanges": "%s"},
           "contents": {"iron": "0 lb", "wood": "0 lb"} %s}]}
        """
            .formatted(
                volume, wall.formatted("West", 270), wall.formatted("East", 90), airChanges, more));
  }
}
