package org.shopclime.balance;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shopclime.air.MoistAir;
import org.shopclime.envelope.Season;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.Network;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;

/**
 * A shop through a year as numbers: one network for each season, and what drives it hour by hour.
 * Every span is taken at its likely value.
 *
 * <p>Months with a mean of 15 °C and more have the films of the cooling season, the others those of
 * the heating season. The networks are linear about the faces' mean temperatures of the season;
 * what true radiation differs from that is put on the faces step by step. Can be read by several
 * threads at once.
 */
public final class ShopYear {

  private final Shop shop;
  private final YearWeather weather;
  private final Skeleton skeleton;
  private final YearSun sun;

  /** Plan of each day. */
  private final int[] plans;

  private final Season[] seasons;
  private final int[] networkOfDay;
  private final List<Network> networks;
  private final List<TrueRadiation> radiation;
  private final YearDrivers drivers;
  private final YearFlows flows;
  private final List<RoomYear> rooms;
  private final PlantHours plants;

  /** Radiant gains by plan, hour of the day and room, W. */
  private final double[][][] radiantGains;

  private ShopYear(Shop shop, YearWeather weather, DayOfWeek first) {
    this.shop = shop;
    this.weather = weather;
    YearWeek week = new YearWeek(shop.work(), first);
    plans = week.plans();
    seasons = SeasonOfMonth.of(weather);
    skeleton = SkeletonMaker.of(shop, Season.COOLING);
    sun = new YearSun(skeleton.pieces(), weather, shop.place().groundReflectance());
    flows = new YearFlows(skeleton, shop.place(), weather, week);
    rooms =
        IntStream.range(0, skeleton.rooms().size())
            .mapToObj(room -> new RoomYear(shop, skeleton, room, week))
            .toList();
    plants = new PlantHours(shop, skeleton.rooms(), rooms, week);
    radiantGains = new double[YearWeek.PLANS][Profile.HOURS][rooms.size()];
    for (int plan = 0; plan < YearWeek.PLANS; plan++) {
      for (int hour = 0; hour < Profile.HOURS; hour++) {
        for (int room = 0; room < rooms.size(); room++) {
          radiantGains[plan][hour][room] = rooms.get(room).radiant(plan, hour);
        }
      }
    }
    drivers = new YearDrivers(skeleton.pieces().size());
    SunHeat heat = SunHeat.of(skeleton, sun.onShop());
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
        if (skeleton.pieces().get(chain).outside() instanceof Piece.Outdoors) {
          heat.put(chain, hour, drivers);
        }
      }
    }
    List<Season> standing = Arrays.stream(seasons).distinct().sorted().toList();
    networkOfDay = new int[YearWeather.DAYS];
    for (int day = 0; day < YearWeather.DAYS; day++) {
      networkOfDay[day] = standing.indexOf(season(day * Profile.HOURS));
    }
    List<SeasonMaker.Made> made =
        standing.stream().map(season -> new SeasonMaker(this, season).make()).toList();
    networks = made.stream().map(SeasonMaker.Made::network).toList();
    radiation = made.stream().map(SeasonMaker.Made::radiation).toList();
  }

  private ShopYear(ShopYear of, PlantHours plants) {
    this.plants = plants;
    shop = of.shop;
    weather = of.weather;
    skeleton = of.skeleton;
    sun = of.sun;
    plans = of.plans;
    seasons = of.seasons;
    networkOfDay = of.networkOfDay;
    networks = of.networks;
    radiation = of.radiation;
    drivers = of.drivers;
    flows = of.flows;
    rooms = of.rooms;
    radiantGains = of.radiantGains;
  }

  /**
   * The same shop and year, its unit run by a habit in place of the hours told for the rooms it
   * cools. Networks and sun are shared.
   *
   * @param habit how the unit is run
   * @return the year
   */
  public ShopYear cooledBy(CoolingHabit habit) {
    return new ShopYear(this, plants.under(habit));
  }

  /**
   * A shop through a year.
   *
   * @param shop a shop that passed its checks
   * @param weather the year
   * @return its numbers; 1 January is a Wednesday
   */
  public static ShopYear of(Shop shop, YearWeather weather) {
    return of(shop, weather, YearWeather.date(0).getDayOfWeek());
  }

  /**
   * A shop through a year whose weeks begin as told.
   *
   * @param shop a shop that passed its checks
   * @param weather the year
   * @param first day of the week that 1 January is
   * @return its numbers
   */
  public static ShopYear of(Shop shop, YearWeather weather, DayOfWeek first) {
    return new ShopYear(ToolTime.applied(shop, weather.pressure()), weather, first);
  }

  Shop shop() {
    return shop;
  }

  Skeleton skeleton() {
    return skeleton;
  }

  YearDrivers drivers() {
    return drivers;
  }

  List<RoomYear> roomYears() {
    return rooms;
  }

  int plan(int hour) {
    return plans[hour / Profile.HOURS];
  }

  /**
   * The weather.
   *
   * @return year that drives the shop
   */
  public YearWeather weather() {
    return weather;
  }

  Season season(int hour) {
    return seasons[YearWeather.monthOf(hour) - 1];
  }

  /**
   * How many networks stand through the year, one for each season.
   *
   * @return 1 or 2
   */
  public int networks() {
    return networks.size();
  }

  /**
   * Which network stands in an hour.
   *
   * @param hour 0 to 8,759
   * @return number of the network, from 0
   */
  public int networkOf(int hour) {
    return networkOfDay[hour / Profile.HOURS];
  }

  /**
   * A network; room i of it is room i of the shop.
   *
   * @param number 0 to {@link #networks()} - 1
   * @return network
   */
  public Network network(int number) {
    return networks.get(number);
  }

  /**
   * Sets temperatures and sources of an hour, but for those of the faces, which {@link #radiate}
   * sets; air flows, holds and plants are the caller's.
   *
   * @param into drivers to set, of that hour's network
   * @param hour 0 to 8,759
   */
  public void fill(Drivers into, int hour) {
    drivers.fill(into, hour);
    int of = hour % Profile.HOURS;
    int plan = plan(hour);
    for (int room = 0; room < rooms.size(); room++) {
      into.airSource(room, rooms.get(room).convective(plan, of));
      into.starSource(room, rooms.get(room).radiant(plan, of));
    }
  }

  /**
   * Sets temperatures, sources and flows of outdoor air to their means over the hours before one,
   * flows as if each room were at its set point; plants are the caller's.
   *
   * @param into drivers to set, of that hour's network
   * @param until 0 to 8,759; December comes before January
   * @param count how many hours, 1 or more
   */
  public void fillMean(Drivers into, int until, int count) {
    drivers.fillMean(into, until, count);
    for (int room = 0; room < rooms.size(); room++) {
      double convective = 0;
      double radiant = 0;
      double conductance = 0;
      double heat = 0;
      for (int ago = 1; ago <= count; ago++) {
        int hour = Math.floorMod(until - ago, YearWeather.HOURS);
        convective += airGain(room, hour);
        radiant += rooms.get(room).radiant(plan(hour), hour % Profile.HOURS);
        double flow =
            inflow(room, plants.cooledTo(room), hour)
                * MoistAir.humidHeat(outdoorHumidityRatio(hour));
        conductance += flow;
        heat += flow * weather.dryBulb(hour);
      }
      into.airSource(room, convective / count);
      into.starSource(room, radiant / count);
      into.inflow(room, conductance / count, conductance > 0 ? heat / conductance : 0);
    }
  }

  /**
   * What radiation by the fourth power of the faces' temperatures, and gaps between panes at them,
   * differ from the network with its constant coefficients.
   *
   * @param faces temperatures of the left (2 k) and right (2 k + 1) face of chain k, °C
   * @param hour 0 to 8,759
   * @param ends set to the heat on each of them, W
   */
  public void radiation(double[] faces, int hour, double[] ends) {
    radiation
        .get(networkOf(hour))
        .find(faces, radiantGains[plan(hour)][hour % Profile.HOURS], ends);
  }

  /**
   * Sets the heat on the faces with more beside it.
   *
   * @param into drivers of that hour's network
   * @param hour 0 to 8,759
   * @param ends what comes to the hour's own, as from {@link #radiation}, W
   */
  public void radiate(Drivers into, int hour, double[] ends) {
    drivers.fillFaces(into, hour, ends);
  }

  /**
   * Outdoor air entering a room.
   *
   * @param room index of the room
   * @param celsius its air temperature, °C
   * @param hour 0 to 8,759
   * @return kg of dry air a second
   */
  public double inflow(int room, double celsius, int hour) {
    return flows.inflow(room, celsius, hour, plan(hour));
  }

  /**
   * Air that changes places between rooms.
   *
   * @return ways that stand open
   */
  public Passages passages() {
    return flows.passages();
  }

  /**
   * Air that goes each way through an opening between rooms.
   *
   * @param way number of the way
   * @param first air of its first room, °C
   * @param second air of its second room, °C
   * @param hour 0 to 8,759
   * @return kg of dry air a second, mean over the hour
   */
  public double passing(int way, double first, double second, int hour) {
    int slot = hour % Profile.HOURS * DaySlots.PER_HOUR;
    return passages().dryAir(way, plan(hour), slot, DaySlots.PER_HOUR, first, second);
  }

  /**
   * The same, mean over the day.
   *
   * @param way number of the way
   * @param first air of its first room, °C
   * @param second air of its second room, °C
   * @param hour an hour of the day, 0 to 8,759
   * @return kg of dry air a second
   */
  public double passingThatDay(int way, double first, double second, int hour) {
    return passages().dryAir(way, plan(hour), 0, DaySlots.COUNT, first, second);
  }

  /**
   * Outdoor humidity ratio.
   *
   * @param hour 0 to 8,759
   * @return kg/kg
   */
  public double outdoorHumidityRatio(int hour) {
    return weather.air(hour).humidityRatio();
  }

  /**
   * Air pressure inside: the year's mean, so that air on the edge of fog does not pass it when the
   * weather changes.
   *
   * @return Pa
   */
  public double pressure() {
    return weather.pressure();
  }

  /**
   * Convective heat of gains in a room.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return W
   */
  public double airGain(int room, int hour) {
    return rooms.get(room).convective(plan(hour), hour % Profile.HOURS);
  }

  /**
   * Water given off in a room.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return kg/s
   */
  public double latentGain(int room, int hour) {
    return rooms.get(room).moisture(plan(hour), hour % Profile.HOURS);
  }

  /**
   * Whether work goes on.
   *
   * @param hour 0 to 8,759
   * @return part of the hour, 0 to 1
   */
  public double working(int hour) {
    return rooms.get(0).working(plan(hour), hour % Profile.HOURS);
  }

  /**
   * Minutes by which the wall clock is ahead of standard time.
   *
   * @param hour 0 to 8,759
   * @return 60 under daylight saving, else 0
   */
  public int minutesAhead(int hour) {
    return DaySlots.minutesAhead(shop.work().clock(), YearWeeks.date(hour));
  }

  /**
   * When the plants of its rooms are switched on and what they hold.
   *
   * @return the hours of its plants
   */
  public PlantHours plants() {
    return plants;
  }

  /**
   * Chains whose right faces are the machines and stock of iron in a room.
   *
   * @param room index of the room
   * @return numbers of the chains; none where the owner tells no iron
   */
  public int[] iron(int room) {
    return new ColdFaces(skeleton).iron(room);
  }

  /**
   * Chains whose right faces are floors on the ground in a room.
   *
   * @param room index of the room
   * @return numbers of the chains; none where no floor lies on the ground
   */
  public int[] slabs(int room) {
    return new ColdFaces(skeleton).slabs(room);
  }

  /**
   * What holds water in a room.
   *
   * @param room index
   * @return its air and the store beside it
   */
  public RoomWater roomWater(int room) {
    return RoomWater.of(skeleton, room, weather.pressure());
  }

  /**
   * Sun on the outer faces and through the glass.
   *
   * @return one entry for each outdoor face, window and door, in the owner's order
   */
  public List<SurfaceSun> surfaces() {
    return sun.surfaces(skeleton.rooms());
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
   * Name of a room.
   *
   * @param room index
   * @return as the owner calls it
   */
  public String roomName(int room) {
    return room(room).name();
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
}
