package org.shopclime.report;

import java.util.List;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

/** A line of the load as texts for a table. */
final class LoadTable {

  private LoadTable() {}

  /** Name, heat, moisture, share, area, U-factor, drive, U-factor times area times drive. */
  static List<String> row(PeakLines.PeakLine line, boolean severalRooms, UnitSystem units) {
    boolean face = line.line().kind().isFace();
    String name = Shown.line(line.name());
    return List.of(
        severalRooms ? Shown.line(line.room()) + ": " + name : name,
        Shown.heat(line.sensible(), units),
        Shown.heat(line.latent(), units),
        Shown.percent(line.share()),
        face ? Quantities.show(Kind.AREA, line.line().area(), units) : "",
        face ? number(Quantities.show(Kind.U_FACTOR, line.line().uFactor(), units)) : "",
        face ? Shown.difference(line.drive(), units) : "",
        face ? Shown.heat(line.pencil(), units) : "");
  }

  /** What the columns mean. */
  static String note(UnitSystem units) {
    return "U-factor: heat through one unit of area for each degree, "
        + Quantities.unit(Kind.U_FACTOR, units).strip()
        + ". Drive: temperature behind the part less the wished one, sun left out. By pencil:"
        + " U-factor times area times drive. Sun adds to it; heat stored in walls and slab comes"
        + " later; and what a warm wall or ceiling radiates to cooler faces leaves the room there,"
        + " so that its line may be smaller than by pencil. A minus: it takes heat out of the room,"
        + " as a slab does while the ground is cooler. Rounded parts may miss the sum by one.";
  }

  /** The U-factor's long unit stands in the heading or the notes. */
  private static String number(String shown) {
    return shown.substring(0, Math.max(shown.indexOf(' '), 0));
  }
}
