package org.shopclime.balance;

import org.shopclime.envelope.Films;
import org.shopclime.envelope.HeatFlow;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Part;

/** Which published film stands at which face in a season. */
final class SeasonFilms {

  private final Season season;

  SeasonFilms(Season season) {
    this.season = season;
  }

  /**
   * Direction in which heat usually passes a part.
   *
   * @param part wall, roof, ceiling or floor
   * @param toGround whether ground lies behind it
   * @return direction
   */
  HeatFlow flow(Part part, boolean toGround) {
    boolean cooling = season == Season.COOLING;
    return switch (part) {
      case WALL -> HeatFlow.HORIZONTAL;
      case ROOF, CEILING -> cooling ? HeatFlow.DOWN : HeatFlow.UP;
      case FLOOR -> cooling && !toGround ? HeatFlow.UP : HeatFlow.DOWN;
    };
  }

  /** Convective film inside, W/(m²·K), sloped faces between level and upright. */
  double inside(Part part, boolean toGround, double tilt) {
    HeatFlow flow = flow(part, toGround);
    return part == Part.FLOOR || part == Part.CEILING
        ? Films.interiorConvective(flow)
        : Films.interiorConvective(tilt, season);
  }

  /** Combined film resistance inside, m²·K/W, as printed, by the same rule of slopes. */
  double insideResistance(Part part, boolean toGround, double tilt) {
    return part == Part.FLOOR || part == Part.CEILING
        ? Films.interiorResistance(flow(part, toGround))
        : Films.interiorResistance(tilt, season);
  }

  /** Convective film outside, W/(m²·K). */
  double outside() {
    return Films.exteriorConvective(season);
  }

  /** Combined film resistance outside, m²·K/W, as printed. */
  double outsideResistance() {
    return Films.exteriorResistance(season);
  }
}
