package org.shopclime.airline;

/**
 * Temperatures around the line in one hour. They come from the pencil closet of this room or, hour
 * by hour, from a run of the whole shop.
 *
 * @param place air where the compressor stands, °C, -50 to 150
 * @param room air of the work room, °C, -50 to 80
 * @param coldest coldest stretch of the line, °C, -50 to 80
 */
public record LineSurroundings(double place, double room, double coldest) {

  /** Refuses what is outside the ranges above. */
  public LineSurroundings {
    Check.within("temperature of the place, °C,", place, -50, 150);
    Check.within("temperature of the room, °C,", room, -50, 80);
    Check.within("coldest stretch, °C,", coldest, -50, 80);
  }

  /**
   * Temperature at a site.
   *
   * @param site where
   * @return °C
   */
  public double at(LineSite site) {
    return switch (site) {
      case PLACE -> place;
      case ROOM -> room;
      case COLDEST -> coldest;
    };
  }
}
