package org.shopclime.airline;

import java.util.List;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Shop;

/**
 * Where the compressor stays cool and the air line dry: all places of a shop on its hot day.
 *
 * @param shop the shop as described
 * @param day its hot day
 * @param line the machine and its line
 * @param demand what the tools take in a working hour
 * @param places all places, the best first, those excluded last
 * @param changes what parts added to the line of the best place change, the line as it is first;
 *     for a working hour as usual
 * @param blasting the same for an hour of nothing but the hungriest tool
 * @param ventCurve temperature of the corner closet with grilles to the room against the free area
 *     of each, rising area
 * @param closets closets by their vents, each in a corner with bare partitions, there with
 *     insulated ones, and under a stair, in the order of {@link Placement#usual}
 */
public record AirlineAnswer(
    Shop shop,
    HotDay day,
    AirLine line,
    AirDemand demand,
    List<PlaceAnswer> places,
    List<LineChange> changes,
    List<LineChange> blasting,
    List<VentPoint> ventCurve,
    List<ClosetWalls> closets) {

  /** Keeps copies. */
  public AirlineAnswer {
    places = List.copyOf(places);
    changes = List.copyOf(changes);
    blasting = List.copyOf(blasting);
    ventCurve = List.copyOf(ventCurve);
    closets = List.copyOf(closets);
  }
}
