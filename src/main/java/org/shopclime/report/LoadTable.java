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

  /** The U-factor's long unit stands in the heading or the notes. */
  private static String number(String shown) {
    return shown.substring(0, Math.max(shown.indexOf(' '), 0));
  }
}
