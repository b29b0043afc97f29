package org.shopclime.balance;

import java.util.List;
import java.util.function.IntPredicate;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Hours;
import org.shopclime.envelope.Season;
import org.shopclime.gain.HeatGain;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.Network;
import org.shopclime.heat.SteadyState;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.sun.SkyTemperature;

/**
 * A shop on one day as numbers: the network, what drives it, and which line each driver belongs to.
 * Every span of the shop is taken at its likely value; choose its ends before.
 *
 * <p>Radiation is made linear at the faces' mean temperatures of the day: for a network of constant
 * coefficients these are the steady temperatures under the means of the drivers, so two steady
 * solutions find them.
 */
public final class ShopModel {

  /** Whether cooled rooms are held while mean temperatures are found. */
  public enum Holding {
    /** At their set points. */
    HELD,
    /** Left to float, for days without a unit. */
    FREE
  }

  private static final int ROUNDS = 3;
  private static final double KELVIN = 273.15;

  /** Rounds in which floating rooms and the air that enters them find each other. */
  private static final int AIR_ROUNDS = 8;

  /** Farthest from outdoors at which an air flow is taken in those rounds, K. */
  private static final double FARTHEST = 100;

  private static final double SOIL_DIFFUSIVITY_PER_CONDUCTIVITY = 86400 / (1800.0 * 1100.0);

  private final Shop shop;
  private final HotDay day;
  private final Skeleton skeleton;
  private final Week week;
  private final AirStreams streams;
  private final SunOnShop sun;
  private final List<SunInside> inside;
  private final Linearisation at;
  private final Network network;

  private ShopModel(
      Shop shop, HotDay day, Skeleton skeleton, SunOnShop sun, Linearisation at, Network network) {
    this.shop = shop;
    this.day = day;
    this.skeleton = skeleton;
    this.week = new Week(shop, day.date());
    this.streams = new AirStreams(skeleton, day, shop.place().shelter(), week);
    this.sun = sun;
    this.inside =
        java.util.stream.IntStream.range(0, skeleton.rooms().size())
            .mapToObj(room -> new SunInside(skeleton.pieces(), room))
            .toList();
    this.at = at;
    this.network = network;
  }

  /**
   * The model of a shop on a hot or humid day.
   *
   * @param shop a shop that passed its checks
   * @param day the day
   * @param holding whether cooled rooms are held while mean temperatures are found
   * @return model with the films of the cooling season
   */
  public static ShopModel cooling(Shop shop, HotDay day, Holding holding) {
    return of(shop, day, Season.COOLING, holding, true);
  }

  /**
   * The model of a shop in steady winter cold: one outdoor temperature, saturated air, no sun.
   *
   * @param shop a shop that passed its checks
   * @param hot a day at the same place, for pressure and ground
   * @param dryBulb outdoor temperature, °C
   * @param wind wind at the weather station, m/s
   * @return model with the films of the heating season
   */
  public static ShopModel heating(Shop shop, HotDay hot, double dryBulb, double wind) {
    double moisture = MoistAir.saturationHumidityRatio(dryBulb, hot.pressure());
    HotDay cold =
        new HotDay(
            hot.station(),
            hot.date().withMonth(1),
            Hours.constant(dryBulb),
            Hours.constant(moisture),
            Hours.constant(dryBulb),
            Hours.constant(wind),
            hot.pressure(),
            moisture,
            hot.aerosol(),
            hot.waterCm(),
            hot.ground());
    return of(shop, cold, Season.HEATING, Holding.HELD, false);
  }

  /**
   * The model of a shop on a day.
   *
   * @param shop a shop that passed its checks
   * @param day the day
   * @param season which published films stand
   * @param holding whether cooled rooms are held while mean temperatures are found
   * @param sunny whether the sun shines from a clear sky
   * @return model
   */
  static ShopModel of(Shop shop, HotDay day, Season season, Holding holding, boolean sunny) {
    Skeleton skeleton = SkeletonMaker.of(shop, season);
    SunOnShop sun =
        sunny
            ? SunOnShop.clear(skeleton.pieces(), day, shop.place().groundReflectance())
            : SunOnShop.none(skeleton.pieces().size());
    NetworkMaker maker = new NetworkMaker(skeleton);
    Linearisation at =
        new Linearisation(skeleton.pieces().size(), skeleton.rooms().size(), day.dryBulb().mean());
    Network network = maker.make(at, day.pressure());
    for (int round = 0; round < ROUNDS; round++) {
      ShopModel guess = new ShopModel(shop, day, skeleton, sun, at, network);
      at = guess.means(holding);
      network = maker.make(at, day.pressure());
    }
    return new ShopModel(shop, day, skeleton, sun, at, network);
  }

  /**
   * The same network under other outdoor air; the sun stays.
   *
   * @param other the other day, at the same place and date
   * @return model
   */
  public ShopModel on(HotDay other) {
    return new ShopModel(shop, other, skeleton, sun, at, network);
  }

  private Linearisation means(Holding holding) {
    Drivers drivers = new Drivers(network);
    drivers(DayKind.WORKING, component -> true, 0).fillMeans(drivers);
    double[] warm = new double[rooms()];
    for (int room = 0; room < rooms(); room++) {
      warm[room] = at.star(room);
      if (isCooled(room) && holding == Holding.HELD) {
        drivers.hold(room, skeleton.rooms().get(room).setPoint());
      }
    }
    SteadyState.Solution steady = null;
    for (int round = 0; round < AIR_ROUNDS; round++) {
      for (int room = 0; room < rooms(); room++) {
        meanInflow(drivers, room, warm[room]);
      }
      steady = SteadyState.solve(network, drivers);
      for (int room = 0; room < rooms(); room++) {
        warm[room] = steady.air(room);
      }
    }
    Linearisation means = new Linearisation(network.chains(), rooms(), 0);
    for (int chain = 0; chain < network.chains(); chain++) {
      means.left(chain, steady.leftFace(chain));
      means.right(chain, steady.rightFace(chain));
    }
    for (int room = 0; room < rooms(); room++) {
      means.star(room, steady.star(room));
    }
    return means;
  }

  /**
   * Mean air flow into a room at a temperature, which is bounded while room and flow find each
   * other: a shut closet with a machine in it starts at no flow and would be red-hot.
   */
  private void meanInflow(Drivers drivers, int room, double celsius) {
    double mean = meanOutdoor();
    double bounded = Math.max(mean - FARTHEST, Math.min(mean + FARTHEST, celsius));
    double flow = 0;
    double heat = 0;
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      double streamed =
          streams.total(
                  room, bounded, DayKind.WORKING, (hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR)
              * MoistAir.humidHeat(day.humidityRatio().at(hour));
      flow += streamed / Profile.HOURS;
      heat += streamed * day.dryBulb().at(hour) / Profile.HOURS;
    }
    drivers.inflow(room, flow, flow > 0 ? heat / flow : 0);
  }

  /**
   * What drives the network through a day, without holds and air flows.
   *
   * @param kind working or idle day
   * @param counts which components count, by index; the others stand at {@code reference} and give
   *     off nothing
   * @param reference temperature that all temperatures are told from, °C
   * @return drivers
   */
  public DayDrivers drivers(DayKind kind, IntPredicate counts, double reference) {
    DayDrivers drivers = new DayDrivers(network.chains(), rooms());
    for (int chain = 0; chain < network.chains(); chain++) {
      Piece piece = skeleton.pieces().get(chain);
      if (counts.test(piece.component().index())) {
        drive(drivers, chain, piece, reference);
      }
    }
    for (Skeleton.GainPlace place : skeleton.gains()) {
      if (counts.test(place.component().index())) {
        int room = place.component().room();
        HeatGain heat = fullOn(place);
        DaySlots slots = week.slots(place.gain().when(), kind);
        for (int slot = 0; slot < DaySlots.COUNT; slot++) {
          drivers.addGain(
              room, slot, heat.convective() * slots.at(slot), heat.radiant() * slots.at(slot));
        }
      }
    }
    return drivers;
  }

  private HeatGain fullOn(Skeleton.GainPlace place) {
    return GainHeat.fullOn(place.gain(), skeleton.rooms().get(place.component().room()).setPoint());
  }

  private void drive(DayDrivers drivers, int chain, Piece piece, double reference) {
    for (int hour = 0; hour < 24; hour++) {
      if (piece.outside() instanceof Piece.Outdoors outdoors) {
        drivers.boundary(chain, hour, surroundings(outdoors, chain, hour + 1) - reference);
        double absorbed = sun.absorbed(chain, hour) * piece.area();
        double insidePart = piece.pane().map(Piece.Pane::absorbedInside).orElse(0.0);
        drivers.addLeft(chain, hour, absorbed * (1 - insidePart));
        drivers.addRight(chain, hour, absorbed * insidePart);
        if (piece.pane().isPresent()) {
          scatter(drivers, piece, hour, chain);
        }
      } else if (piece.outside() instanceof Piece.Ground ground) {
        drivers.boundary(chain, hour, groundTemperature(ground) - reference);
      }
    }
  }

  private void scatter(DayDrivers drivers, Piece window, int hour, int chain) {
    double beam = sun.beam(chain, hour) * window.area();
    double diffuse = sun.diffuse(chain, hour) * window.area();
    if (beam + diffuse > 0) {
      SunInside spread = inside.get(window.room());
      for (int other = 0; other < network.chains(); other++) {
        drivers.addLeft(
            other, hour, beam * spread.direct(2 * other) + diffuse * spread.scattered(2 * other));
        drivers.addRight(
            other,
            hour,
            beam * spread.direct(2 * other + 1) + diffuse * spread.scattered(2 * other + 1));
      }
    }
  }

  /**
   * Temperature that stands for air, sky and ground before an outer face. The upper part of the sky
   * seen is at the sky's temperature, near the horizon it nears the air's (Walton, NBSIR 83-2655:
   * share root of (1 + cos tilt)/2); the ground is taken at air temperature.
   *
   * <p>What the face gives off is linear about its mean (4 ε σ T³); what it receives goes with the
   * fourth power, so that the exchange is exact while the face is at its mean.
   */
  private double surroundings(Piece.Outdoors outdoors, int chain, int hour) {
    double air = day.dryBulb().at(hour);
    double dewPoint = MoistAir.dewPoint(day.humidityRatio().at(hour), day.pressure());
    double sky = SkyTemperature.clarkAllen(air, Math.min(dewPoint, air), 0);
    double view = (1 + Math.cos(Math.toRadians(outdoors.tilt()))) / 2;
    double share = view * Math.sqrt(view);
    double face = at.left(chain) + KELVIN;
    double received = share * fourth(sky + KELVIN) + (1 - share) * fourth(air + KELVIN);
    double seen = at.left(chain) - (fourth(face) - received) / (4 * face * face * face);
    double radiative = NetworkMaker.outerRadiative(outdoors, at.left(chain));
    return (outdoors.convective() * air + radiative * seen) / (outdoors.convective() + radiative);
  }

  private static double fourth(double kelvin) {
    return kelvin * kelvin * kelvin * kelvin;
  }

  private double groundTemperature(Piece.Ground ground) {
    return day.ground()
        .at(
            ground.depth(),
            day.date().getDayOfYear(),
            ground.soilConductivity() * SOIL_DIFFUSIVITY_PER_CONDUCTIVITY);
  }

  /**
   * Water given off in a room, by line.
   *
   * @param component index of the line
   * @param kind working or idle day
   * @return W of latent heat, by the hour; 0 for lines that are no gains
   */
  public Profile latentGain(int component, DayKind kind) {
    Profile watts = Profile.of(hour -> 0);
    for (Skeleton.GainPlace place : skeleton.gains()) {
      if (place.component().index() == component) {
        double latent = fullOn(place).latent();
        DaySlots slots = week.slots(place.gain().when(), kind);
        int perHour = DaySlots.COUNT / Profile.HOURS;
        watts = watts.plus(Profile.of(hour -> latent * slots.mean((hour - 1) * perHour, perHour)));
      }
    }
    return watts;
  }

  /**
   * Lines that a cooled room's load is told by.
   *
   * @param room index of the cooled room
   * @return for each component the index of the component whose line it counts in, or {@code -1 -
   *     other} for the line from the cooled room {@code other}
   */
  public int[] linesOf(int room) {
    return LineMap.of(skeleton, room);
  }

  /**
   * The network.
   *
   * @return network; room i of it is room i of the shop
   */
  public Network network() {
    return network;
  }

  /**
   * Outdoor air temperature.
   *
   * @param hour hour ending 1 to 24
   * @return °C
   */
  public double outdoor(int hour) {
    return day.dryBulb().at(hour);
  }

  /**
   * Mean outdoor air temperature of the day.
   *
   * @return °C
   */
  public double meanOutdoor() {
    return day.dryBulb().mean();
  }

  /**
   * Mean temperature of a room on a working day, as its faces see it.
   *
   * @param room index
   * @return °C
   */
  public double meanTemperature(int room) {
    return at.star(room);
  }

  /**
   * Outdoor humidity ratio.
   *
   * @param hour hour ending 1 to 24
   * @return kg/kg
   */
  public double outdoorHumidityRatio(int hour) {
    return day.humidityRatio().at(hour);
  }

  /**
   * Air pressure.
   *
   * @return Pa
   */
  public double pressure() {
    return day.pressure();
  }

  /**
   * Set point of a room.
   *
   * @param room index
   * @return °C
   */
  public double setPoint(int room) {
    return room(room).setPoint();
  }

  /**
   * Humidity ratio of a room at its set point and wished humidity.
   *
   * @param room index
   * @return kg/kg
   */
  public double wishedHumidityRatio(int room) {
    return MoistAir.humidityRatioFromRelativeHumidity(
        setPoint(room), room(room).wishedHumidity(), day.pressure());
  }

  /**
   * Highest outdoor air temperature of the day.
   *
   * @return °C
   */
  public double outdoorPeak() {
    return day.peak();
  }

  /**
   * The same shop on the same day moved bodily in temperature, its dew point capped.
   *
   * @param kelvin how far, K
   * @return model with the same network
   */
  public ShopModel shifted(double kelvin) {
    return on(DesignDays.shifted(day, kelvin));
  }

  /**
   * Time allowed after the start of work until the set point must hold.
   *
   * @return s
   */
  public double pullDown() {
    return shop.work().pullDown();
  }

  /**
   * Dry air in a room.
   *
   * @param room index
   * @return kg
   */
  public double dryAirMass(int room) {
    return room(room).airVolume()
        * MoistAir.dryAirDensity(setPoint(room), wishedHumidityRatio(room), day.pressure());
  }

  /**
   * Water that walls and wood of a room take up for each kg/kg by which its air grows moister.
   *
   * @param room index
   * @return kg
   */
  public double moistureStore(int room) {
    return skeleton.stores().get(room).perRelativeHumidity()
        / MoistAir.saturationHumidityRatio(setPoint(room), day.pressure());
  }

  /**
   * Water that passes between air and store for each kg/kg of difference.
   *
   * @param room index
   * @return kg/s
   */
  public double moistureExchange(int room) {
    return skeleton.stores().get(room).exchange();
  }

  /**
   * Water given off in the rooms.
   *
   * @param kind working or idle day
   * @return kg/s, 288 five-minute slots for each room, one room after the other
   */
  public double[] latentGains(DayKind kind) {
    double[] gains = new double[rooms() * DaySlots.COUNT];
    for (Skeleton.GainPlace place : skeleton.gains()) {
      double moisture = fullOn(place).moisture();
      DaySlots slots = week.slots(place.gain().when(), kind);
      for (int slot = 0; slot < DaySlots.COUNT; slot++) {
        gains[place.component().room() * DaySlots.COUNT + slot] += moisture * slots.at(slot);
      }
    }
    return gains;
  }

  /**
   * Name of a room.
   *
   * @param room index
   * @return as the owner calls it
   */
  public String roomName(int room) {
    return room(room).name();
  }

  /**
   * What drives a component that no room lies behind: outdoor air, or the ground below it.
   *
   * @param component index
   * @param hour hour ending 1 to 24
   * @return °C
   */
  public double behindTemperature(int component, int hour) {
    for (Piece piece : skeleton.pieces()) {
      if (piece.component().index() == component
          && piece.outside() instanceof Piece.Ground ground) {
        return groundTemperature(ground);
      }
    }
    return outdoor(hour);
  }

  /**
   * All components.
   *
   * @return in order of their index
   */
  public List<Component> components() {
    return skeleton.components();
  }

  /**
   * Air that enters from outdoors.
   *
   * @return streams on this day
   */
  public AirStreams streams() {
    return streams;
  }

  /**
   * Working hours of the busiest day of the week.
   *
   * @return standard time
   */
  public DaySlots working() {
    return week.working();
  }

  /**
   * Number of rooms.
   *
   * @return 1 or more
   */
  public int rooms() {
    return skeleton.rooms().size();
  }

  private Room room(int room) {
    return skeleton.rooms().get(room);
  }

  /**
   * Whether a room is held at its set point.
   *
   * @param room index
   * @return true if cooled
   */
  public boolean isCooled(int room) {
    return room(room).use() == RoomUse.COOLED;
  }
}
