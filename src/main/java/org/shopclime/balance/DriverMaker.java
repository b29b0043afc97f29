package org.shopclime.balance;

import java.util.List;
import java.util.function.IntPredicate;

/** Turns weather, sun and gains of a shop's day into what drives its network. */
final class DriverMaker {

  private final ShopOnDay shop;
  private final List<Piece> pieces;
  private final Linearisation at;

  /**
   * For one shop and day.
   *
   * @param shop shop and day
   * @param at mean temperatures of the faces, from which their sky is told
   */
  DriverMaker(ShopOnDay shop, Linearisation at) {
    this.shop = shop;
    this.pieces = shop.skeleton().pieces();
    this.at = at;
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
  DayDrivers drivers(DayKind kind, IntPredicate counts, double reference) {
    DayDrivers drivers = new DayDrivers(pieces.size(), shop.skeleton().rooms().size());
    for (int chain = 0; chain < pieces.size(); chain++) {
      if (counts.test(pieces.get(chain).component().index())) {
        drive(drivers, chain, reference);
      }
    }
    shop.gains().addHeat(drivers, kind, counts);
    return drivers;
  }

  private void drive(DayDrivers drivers, int chain, double reference) {
    Piece piece = pieces.get(chain);
    double below =
        piece.outside() instanceof Piece.Ground ground
            ? Surroundings.below(ground, shop.day().ground(), shop.day().date().getDayOfYear())
            : 0;
    for (int hour = 0; hour < Profile.HOURS; hour++) {
      if (piece.outside() instanceof Piece.Outdoors outdoors) {
        double before = shop.sky().before(outdoors, at.left(chain), hour + 1);
        drivers.boundary(chain, hour, before - reference);
        shop.sun().put(chain, hour, drivers);
      } else if (piece.outside() instanceof Piece.Ground) {
        drivers.boundary(chain, hour, below - reference);
      }
    }
  }
}
