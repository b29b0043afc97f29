package org.shopclime.balance;

import java.util.List;
import org.shopclime.gain.HeatGain;

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
    for (Skeleton.GainPlace place : shop.skeleton().gains()) {
      HeatGain heat = shop.gains().fullOn(place);
      DaySlots slots = shop.gains().slots(place, kind);
      to.gain(
          place.component().index(),
          place.component().room(),
          slots.times(heat.convective()),
          slots.times(heat.radiant()));
    }
  }
}
