package org.shopclime.balance;

import java.util.List;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Hours;
import org.shopclime.envelope.Season;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.Network;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/**
 * Makes the model of a shop on a day. Radiation is made linear at the faces' mean temperatures: for
 * a network of constant coefficients these are the steady temperatures under the means of the
 * drivers, so a few steady solutions find them, each of the network made at the one before.
 */
final class ModelMaker {

  private static final int ROUNDS = 3;

  /** Rounds in which floating rooms and the air that enters them find each other. */
  private static final int AIR_ROUNDS = 8;

  /** Farthest from outdoors at which an air flow is taken in those rounds, K. */
  private static final double FARTHEST = 100;

  private final ShopOnDay shop;
  private final ShopModel.Holding holding;
  private final int rooms;

  private ModelMaker(ShopOnDay shop, ShopModel.Holding holding) {
    this.shop = shop;
    this.holding = holding;
    this.rooms = shop.skeleton().rooms().size();
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
  static ShopModel of(
      Shop shop, HotDay day, Season season, ShopModel.Holding holding, boolean sunny) {
    Shop worked = ToolTime.applied(shop, day.pressure());
    return of(ShopOnDay.of(worked, day, season, sunny), holding);
  }

  /**
   * The model of a shop on a day.
   *
   * @param shop shop and day
   * @param holding whether cooled rooms are held while mean temperatures are found
   * @return model
   */
  static ShopModel of(ShopOnDay shop, ShopModel.Holding holding) {
    return new ModelMaker(shop, holding).make();
  }

  /**
   * A day of steady cold: one outdoor temperature, saturated air.
   *
   * @param hot a day at the same place, for pressure and ground
   * @param dryBulb outdoor temperature, °C
   * @param wind wind at the weather station, m/s
   * @return the day, in January
   */
  static HotDay cold(HotDay hot, double dryBulb, double wind) {
    double moisture = MoistAir.saturationHumidityRatio(dryBulb, hot.pressure());
    return new HotDay(
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
  }

  private ShopModel make() {
    HotDay day = shop.day();
    NetworkMaker maker = new NetworkMaker(shop.skeleton());
    Linearisation at =
        new Linearisation(shop.skeleton().pieces().size(), rooms, day.dryBulb().mean());
    Network network = maker.make(at, day.pressure());
    DayDrivers drivers = new DriverMaker(shop, at).drivers(DayKind.WORKING, component -> true, 0);
    for (int round = 0; round < ROUNDS; round++) {
      at = means(at, network, drivers);
      network = maker.make(at, day.pressure());
    }
    return new ShopModel(shop, at, network);
  }

  private Linearisation means(Linearisation at, Network network, DayDrivers day) {
    Drivers drivers = new Drivers(network);
    day.fillMeans(drivers);
    List<Piece> pieces = shop.skeleton().pieces();
    for (int chain = 0; chain < pieces.size(); chain++) {
      if (pieces.get(chain).outside() instanceof Piece.Outdoors outdoors) {
        drivers.boundary(chain, shop.sky().meanBefore(outdoors, at.left(chain)));
      }
    }
    for (int room = 0; room < rooms; room++) {
      if (isHeld(room)) {
        drivers.hold(room, shop.skeleton().rooms().get(room).setPoint());
      }
    }
    Passages passages = shop.passages();
    int working = Passages.plan(DayKind.WORKING);
    MeanPassages between =
        new MeanPassages(
            passages,
            way -> passages.open(way, working, 0, DaySlots.COUNT),
            MoistAir.humidHeat(shop.day().humidityRatio().at(1)));
    return MeanTemperatures.find(network, drivers, at, AIR_ROUNDS, this::meanInflow, between);
  }

  private boolean isHeld(int room) {
    return holding == ShopModel.Holding.HELD
        && shop.skeleton().rooms().get(room).use() == RoomUse.COOLED;
  }

  /**
   * Mean air flow into a room at a temperature, which is bounded while room and flow find each
   * other: a shut closet with a machine in it starts at no flow and would be red-hot.
   */
  private void meanInflow(Drivers drivers, int room, double celsius) {
    if (isHeld(room)) {
      return; // air that enters a held room moves no temperature
    }
    HotDay day = shop.day();
    double mean = day.dryBulb().mean();
    double bounded = Math.max(mean - FARTHEST, Math.min(mean + FARTHEST, celsius));
    double flow = 0;
    double heat = 0;
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      int slot = (hour - 1) * DaySlots.PER_HOUR;
      double streamed =
          shop.streams().total(room, bounded, DayKind.WORKING, slot, DaySlots.PER_HOUR)
              * MoistAir.humidHeat(day.humidityRatio().at(hour));
      flow += streamed / Profile.HOURS;
      heat += streamed * day.dryBulb().at(hour) / Profile.HOURS;
    }
    drivers.inflow(room, flow, flow > 0 ? heat / flow : 0);
  }
}
