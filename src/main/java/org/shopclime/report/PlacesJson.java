package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.shopclime.climate.ClimateKind;
import org.shopclime.climate.HotPoint;
import org.shopclime.climate.Level;
import org.shopclime.climate.Station;
import org.shopclime.climate.StationClimate;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/**
 * Places that were found, for machines: one JSON object (RFC 8259) in inch-pound units. Every key
 * of a quantity ends in its unit.
 */
public final class PlacesJson {

  private static final int DECIMALS = 2;
  private static final int JANUARY = 1;
  private static final int JULY = 7;

  private PlacesJson() {}

  /**
   * The places as one JSON object, on several lines.
   *
   * @param list the places
   * @return JSON; figures rounded to 0.01, latitude and longitude as in the table; what there is
   *     not is null
   */
  public static String of(PlaceList list) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode places = root.putArray("places");
    for (PlaceList.Line one : list.shown()) {
      place(places.addObject(), one, list);
    }
    root.put("found", list.found().places().size());
    ArrayNode warnings = root.putArray("warnings");
    for (String warning : list.warnings(UnitSystem.INCH_POUND)) {
      warnings.addObject().put("path", "places[0]").put("text", warning);
    }
    return root.toPrettyString();
  }

  private static void place(ObjectNode node, PlaceList.Line one, PlaceList list) {
    Station station = one.place().station();
    StationClimate climate = one.climate();
    HotPoint hot = climate.at(Level.P1);
    node.put("id", station.id())
        .put("name", station.name())
        .put("state", station.state())
        .put("latitudeDeg", station.latitudeDeg())
        .put("longitudeDeg", station.longitudeDeg())
        .put("distanceMi", rounded(Units.miles(one.place().distanceKm() * 1000)))
        .put("elevationFt", rounded(Units.feet(station.elevationM())));
    node.put(
        "elevationAboveShopFt",
        list.elevation().isPresent()
            ? rounded(Units.feet(station.elevationM() - list.elevation().getAsDouble()))
            : null);
    node.put("climate", ClimateKind.of(climate).words())
        .put("hotDryBulb1PercentF", temperature(hot.dryBulb()))
        .put("hotWetBulb1PercentF", temperature(hot.wetBulb()))
        .put("hotDewPoint1PercentF", temperature(ClimateKind.hotDewPoint(climate)))
        .put("coldDryBulb99PercentF", temperature(climate.winter().dryBulb99()))
        .put("julyMeanF", temperature(climate.monthDryBulb().at(JULY)))
        .put("januaryMeanF", temperature(climate.monthDryBulb().at(JANUARY)));
  }

  private static BigDecimal temperature(double celsius) {
    return rounded(Units.fahrenheit(celsius));
  }

  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }
}
