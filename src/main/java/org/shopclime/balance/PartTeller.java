package org.shopclime.balance;

import java.util.List;

/** Tells what drives the network of a shop through its day, component by component. */
final class PartTeller {

  private final ShopOnDay shop;
  private final List<Piece> pieces;
  private final Linearisation at;

  /**
   * For one shop and day.
   *
   * @param shop shop and day
   * @param at mean temperatures of the faces, from which their sky is told
   */
  PartTeller(ShopOnDay shop, Linearisation at) {
    this.shop = shop;
    this.pieces = shop.skeleton().pieces();
    this.at = at;
  }

  /** Tells all of a day. */
  void tell(DayKind kind, PartSink to) {
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      int component = piece.component().index();
      if (piece.outside() instanceof Piece.Outdoors outdoors) {
        double mean = at.left(chain);
        to.boundary(component, chain, Profile.of(hour -> shop.sky().before(outdoors, mean, hour)));
        shop.sun().tell(chain, to);
      } else if (piece.outside() instanceof Piece.Ground ground) {
        double below =
            Surroundings.below(ground, shop.day().ground(), shop.day().date().getDayOfYear());
        to.boundary(component, chain, Profile.of(hour -> below));
      }
    }
    for (int i = 0; i < shop.skeleton().gains().size(); i++) {
      Component component = shop.skeleton().gains().get(i).component();
      GainCourse course = shop.gains().course(i, kind);
      to.gain(
          component.index(),
          component.room(),
          course.convective().times(course.full().convective()),
          course.radiant().times(course.full().radiant()));
    }
  }
}
