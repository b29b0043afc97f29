package org.shopclime.balance;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.envelope.Season;
import org.shopclime.heat.Network;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;

/**
 * A shop on one day as numbers: the network, what drives it, and which line each driver belongs to.
 * Every span of the shop is taken at its likely value; choose its ends before.
 *
 * <p>Radiation is linear about the faces' mean temperatures of the day.
 */
public final class ShopModel {

  /** Whether cooled rooms are held while mean temperatures are found. */
  public enum Holding {
    /** At their set points. */
    HELD,
    /** Left to float, for days without a unit. */
    FREE
  }

  /** √(2 · 1.3 Pa / 1.2 kg/m³), m/s. */
  private static final double SPEED_AT_USUAL_PRESSURE = Math.sqrt(2 * 1.3 / 1.2);

  private final ShopOnDay parts;
  private final HotDay day;
  private final Skeleton skeleton;
  private final Linearisation at;
  private final Network network;

  ShopModel(ShopOnDay parts, Linearisation at, Network network) {
    this.parts = parts;
    this.day = parts.day();
    this.skeleton = parts.skeleton();
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
    return ModelMaker.of(shop, day, Season.COOLING, holding, true);
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
    HotDay cold = ModelMaker.cold(hot, dryBulb, wind);
    return ModelMaker.of(shop, cold, Season.HEATING, Holding.HELD, false);
  }

  /**
   * The same network under other outdoor air; the sun stays.
   *
   * @param other the other day, at the same place and date
   * @return model
   */
  public ShopModel on(HotDay other) {
    return new ShopModel(parts.on(other), at, network);
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
    return new DriverMaker(parts, at).drivers(kind, counts, reference);
  }

  /**
   * Tells the same component by component, all temperatures in °C.
   *
   * @param kind working or idle day
   * @param to takes what is told
   */
  public void tell(DayKind kind, PartSink to) {
    new PartTeller(parts, at).tell(kind, to);
  }

  /**
   * Water given off in a room, by line.
   *
   * @param component index of the line
   * @param kind working or idle day
   * @return W of latent heat, by the hour; 0 for lines that are no gains
   */
  public Profile latentGain(int component, DayKind kind) {
    return parts.gains().latent(component, kind);
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

  /** The heat paths; chain i of the network is path i. */
  Skeleton skeleton() {
    return skeleton;
  }

  /** Mean temperatures of faces and rooms on a working day. */
  Linearisation means() {
    return at;
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
    return RoomWater.wishedHumidityRatio(room(room), day.pressure());
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
    return parts.shop().work().pullDown();
  }

  /**
   * What holds water in a room.
   *
   * @param room index
   * @return its air and the store beside it
   */
  public RoomWater roomWater(int room) {
    return RoomWater.of(skeleton, room, day.pressure());
  }

  /**
   * Water given off in the rooms.
   *
   * @param kind working or idle day
   * @return kg/s, 288 five-minute slots for each room, one room after the other
   */
  public double[] latentGains(DayKind kind) {
    return parts.gains().moisture(kind);
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
   * @return °C by the hour
   */
  public Profile behindTemperature(int component) {
    for (Piece piece : skeleton.pieces()) {
      if (piece.component().index() == component
          && piece.outside() instanceof Piece.Ground ground) {
        double below = Surroundings.below(ground, day.ground(), day.date().getDayOfYear());
        return Profile.of(hour -> below);
      }
    }
    return Profile.of(this::outdoor);
  }

  /**
   * What a slab loses in winter at its edge along outdoors, by the trade's F-factor ({@link
   * org.shopclime.envelope.FFactor}).
   *
   * @param chain number of the chain; its boundary has the same number
   * @return W for each kelvin between room and outdoor air; 0 for any chain but a slab with an edge
   *     along outdoors under a cooled room
   */
  public double edgeLossPerKelvin(int chain) {
    Piece piece = skeleton.pieces().get(chain);
    return piece.outside() instanceof Piece.Ground ground && isCooled(piece.room())
        ? ground.edgeLoss()
        : 0;
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
    return parts.streams();
  }

  /**
   * Air that changes places between rooms.
   *
   * @return ways that stand open on this day
   */
  public Passages passages() {
    return parts.passages();
  }

  /**
   * The air of a room on the working day, in one picture that balances.
   *
   * @param room index
   * @return where air enters and leaves in the hour in which that costs most
   */
  public AirBook airBook(int room) {
    List<DaySlots> running = parts.streams().running(room, DayKind.WORKING);
    return new AirBooks(this, parts.shop(), room, running).make();
  }

  /**
   * Sensible heat that a gain gives off in a room on a working day.
   *
   * @param room index of the room
   * @param gain number of the gain in its room
   * @return W, means by the hour
   */
  public Profile sensibleGain(int room, int gain) {
    int seen = 0;
    for (int i = 0; i < skeleton.gains().size(); i++) {
      if (skeleton.gains().get(i).component().room() == room && seen++ == gain) {
        GainCourse course = parts.gains().course(i, DayKind.WORKING);
        return Profile.of(hour -> course.mean(hour));
      }
    }
    throw new IllegalArgumentException("room " + room + " has no gain " + gain);
  }

  /**
   * The batches of an oven on a working day.
   *
   * @param room index of the room
   * @param oven an oven with batches in it
   * @return its books
   */
  public OvenBook ovenBook(int room, Gain.Oven oven) {
    DaySlots when = parts.week().slots(oven.when(), DayKind.WORKING);
    return OvenDays.book(OvenDays.of(oven, setPoint(room), when));
  }

  /**
   * Working hours of the busiest day of the week.
   *
   * @return standard time
   */
  public DaySlots working() {
    return parts.week().working();
  }

  /**
   * Effective leakage area of a room to outdoors.
   *
   * @param room index
   * @return m² at 4 Pa; of a room told by constant air changes the area through which that air
   *     passes at 1.3 Pa, a usual pressure of wind and stack (common practice: 1 to 2 Pa)
   */
  public double leakageArea(int room) {
    RoomAir air = skeleton.air().get(room);
    return air.leakageArea() + air.constantFlow() / SPEED_AT_USUAL_PRESSURE;
  }

  /**
   * A schedule on the day.
   *
   * @param schedule what goes on when
   * @param kind working or idle day
   * @return standard time
   */
  public DaySlots slots(Schedule schedule, DayKind kind) {
    return parts.week().slots(schedule, kind);
  }

  /**
   * Number of rooms.
   *
   * @return 1 or more
   */
  public int rooms() {
    return skeleton.rooms().size();
  }

  /**
   * The dehumidifier of a room.
   *
   * @param room index
   * @return its label; nothing where none stands
   */
  public Optional<DrierPlate> drier(int room) {
    return DrierPlate.of(room(room));
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
