package org.shopclime.balance;

import java.util.stream.IntStream;
import org.shopclime.air.MoistAir;
import org.shopclime.envelope.Season;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.Network;

/**
 * Makes the network of one season of a shop's year, with radiation linear at the faces' means of
 * that season, and lays out the temperatures before its outer faces. The means are the steady
 * temperatures under the means of the drivers; a few rounds of network and means find them.
 */
final class SeasonMaker {

  private static final int ROUNDS = 3;

  /** Rounds in which floating rooms and the air that enters them find each other. */
  private static final int AIR_ROUNDS = 6;

  /**
   * Every so many hours one is looked at for the mean air flow; all hours of the day take turns.
   */
  private static final int STRIDE = 13;

  private static final double FARTHEST = 100;

  private final ShopYear year;
  private final Season season;
  private final int[] hours;
  private final Skeleton skeleton;
  private final int rooms;

  SeasonMaker(ShopYear year, Season season) {
    this.year = year;
    this.season = season;
    hours =
        IntStream.range(0, YearWeather.HOURS).filter(hour -> year.season(hour) == season).toArray();
    skeleton = SkeletonMaker.of(year.shop(), season);
    rooms = skeleton.rooms().size();
  }

  /**
   * What is made for a season.
   *
   * @param network network with radiation linear about the season's means
   * @param radiation what true radiation differs from that
   */
  record Made(Network network, TrueRadiation radiation) {}

  Made make() {
    NetworkMaker maker = new NetworkMaker(skeleton);
    double outdoor =
        IntStream.of(hours).mapToDouble(year.weather()::dryBulb).average().orElseThrow();
    Linearisation at = new Linearisation(skeleton.pieces().size(), rooms, outdoor);
    layBoundaries(at);
    Network network = maker.make(at, year.weather().pressure());
    for (int round = 0; round < ROUNDS; round++) {
      at = means(network, at);
      layBoundaries(at);
      network = maker.make(at, year.weather().pressure());
    }
    return new Made(network, new TrueRadiation(skeleton, maker, at, year.weather().pressure()));
  }

  private void layBoundaries(Linearisation at) {
    YearDrivers drivers = year.drivers();
    YearWeather weather = year.weather();
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      Piece piece = skeleton.pieces().get(chain);
      for (int hour : hours) {
        if (piece.outside() instanceof Piece.Outdoors outdoors) {
          drivers.boundary(
              chain,
              hour,
              Surroundings.before(
                  outdoors, at.left(chain), weather.dryBulb(hour), weather.sky(hour)));
        } else if (piece.outside() instanceof Piece.Ground ground) {
          int day = hour / Profile.HOURS + 1;
          drivers.boundary(chain, hour, Surroundings.below(ground, weather.ground(), day));
        }
      }
    }
  }

  private Linearisation means(Network network, Linearisation at) {
    Drivers drivers = new Drivers(network);
    fillMeans(drivers);
    for (int room = 0; room < rooms; room++) {
      if (season == Season.COOLING
          && (year.plants().isCooledByUnit(room) || year.plants().isCooledIdeally(room))) {
        drivers.hold(room, year.plants().cooledTo(room));
      } else if (season == Season.HEATING && year.plants().isHeated(room)) {
        drivers.hold(room, year.plants().heatedTo(room));
      }
    }
    MeanPassages between =
        new MeanPassages(
            year.passages(),
            this::meanOpen,
            MoistAir.humidHeat(year.outdoorHumidityRatio(hours[0])));
    return MeanTemperatures.find(network, drivers, at, AIR_ROUNDS, this::meanInflow, between);
  }

  /** Part of the time that a way between rooms stands open. */
  private double meanOpen(int way) {
    double open = 0;
    for (int hour : hours) {
      int slot = hour % Profile.HOURS * DaySlots.PER_HOUR;
      open += year.passages().open(way, year.plan(hour), slot, DaySlots.PER_HOUR) / hours.length;
    }
    return open;
  }

  private void fillMeans(Drivers into) {
    YearDrivers drivers = year.drivers();
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      double boundary = 0;
      double left = 0;
      double right = 0;
      for (int hour : hours) {
        boundary += drivers.boundary(chain, hour) / hours.length;
        left += drivers.left(chain, hour) / hours.length;
        right += drivers.right(chain, hour) / hours.length;
      }
      into.boundary(chain, boundary);
      into.leftSource(chain, left);
      into.rightSource(chain, right);
    }
    for (int room = 0; room < rooms; room++) {
      double convective = 0;
      double radiant = 0;
      for (int hour : hours) {
        int of = hour % Profile.HOURS;
        convective += year.roomYears().get(room).convective(year.plan(hour), of);
        radiant += year.roomYears().get(room).radiant(year.plan(hour), of);
      }
      into.airSource(room, convective / hours.length);
      into.starSource(room, radiant / hours.length);
    }
  }

  /** Mean air flow into a room, taken no farther from outdoors than a shut closet ever gets. */
  private void meanInflow(Drivers drivers, int room, double celsius) {
    double flow = 0;
    double heat = 0;
    int looked = 0;
    for (int i = 0; i < hours.length; i += STRIDE) {
      int hour = hours[i];
      double outdoor = year.weather().dryBulb(hour);
      double bounded = Math.max(outdoor - FARTHEST, Math.min(outdoor + FARTHEST, celsius));
      double streamed =
          year.inflow(room, bounded, hour) * MoistAir.humidHeat(year.outdoorHumidityRatio(hour));
      flow += streamed;
      heat += streamed * outdoor;
      looked++;
    }
    drivers.inflow(room, flow / looked, flow > 0 ? heat / flow : 0);
  }
}
