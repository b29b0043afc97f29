package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.ClosetWalls;
import org.shopclime.airline.LineChange;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/**
 * The answer on places for the compressor for machines: one JSON object (RFC 8259). Every key of a
 * quantity ends in its unit; hours are hour-ending 1 to 24, local standard time; what there is not
 * is null.
 */
public final class AirlineJson {

  private static final int DECIMALS = 2;
  private static final int FINE = 4;

  private AirlineJson() {}

  /**
   * The whole answer as one JSON object, on several lines.
   *
   * @param answer the answer; none where the shop has no compressor
   * @return JSON; figures rounded to 0.01
   */
  public static String of(Optional<AirlineAnswer> answer) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    if (answer.isEmpty()) {
      root.put("answer", AirlineWords.NO_COMPRESSOR).putArray("placements");
      return root.toPrettyString();
    }
    AirlineAnswer found = answer.get();
    AirlineWords words = new AirlineWords(found, UnitSystem.INCH_POUND);
    root.put("shop", found.shop().name());
    SizeJson.place(root, found.day().station());
    root.put("answer", words.sentence());
    ArrayNode placements = root.putArray("placements");
    AirReasons reasons = new AirReasons(found, UnitSystem.INCH_POUND);
    found.places().forEach(place -> placement(placements.addObject(), place, reasons));
    changes(root.putArray("changes"), found.changes());
    changes(root.putArray("blasting"), found.blasting());
    ArrayNode curve = root.putArray("ventCurve");
    found
        .ventCurve()
        .forEach(
            point ->
                curve
                    .addObject()
                    .put("areaFt2", figure(Units.squareFeet(point.area())))
                    .put("placePeakF", fahrenheit(point.celsius())));
    ArrayNode closets = root.putArray("closetWalls");
    for (ClosetWalls closet : found.closets()) {
      ObjectNode each = closets.addObject().put("kind", word(closet.kind()));
      walls(each.putObject("bare"), closet.bare());
      walls(each.putObject("insulated"), closet.insulated());
      walls(each.putObject("stair"), closet.stair());
    }
    ArrayNode cautions = root.putArray("cautions");
    words.cautions().forEach(cautions::add);
    ArrayNode limits = root.putArray("limits");
    words.limits().forEach(limits::add);
    return root.toPrettyString();
  }

  private static void placement(ObjectNode to, PlaceAnswer place, AirReasons reasons) {
    to.put("name", place.ranked().place().name())
        .put("kind", word(place.placement().kind()))
        .put("rank", place.ranked().rank().orElse(null))
        .put("reason", reasons.reason(place))
        .put("criterion", word(place.ranked().reason().criterion()))
        .put("placePeakF", fahrenheit(place.placePeak()))
        .put("placePeakHour", place.peakHour())
        .put("roomLoadBtuh", figure(Units.btuh(place.roomLoad())))
        .put("holds", place.holds())
        .put("indoorPeakF", fahrenheit(place.indoorPeak()))
        .put("indoorPeakHour", place.indoorPeakHour())
        .put("tankWaterGramsPerHour", figure(place.tankWater()))
        .put("lineWaterGramsPerHour", figure(place.lineWater()))
        .put("pressureDewPointF", fahrenheit(place.pressureDewPoint()))
        .put("coldestStretchF", fahrenheit(place.coldestStretch()))
        .put("drainedLiters", figure(place.litresToDrain()))
        .put("compressorKwh", figure(place.compressorKilowattHours()))
        .put("coolingKwh", figure(place.coolingKilowattHours()))
        .put("winterHeatBtuh", figure(Units.btuh(place.winterHeat())));
    ArrayNode hazards = to.putArray("hazards");
    place.ranked().place().hazards().forEach(hazard -> hazards.add(word(hazard)));
    ArrayNode cautions = to.putArray("cautions");
    place.cautions().forEach(caution -> cautions.add(word(caution.kind())));
    hours(to, "placeF", hour -> Units.fahrenheit(place.air().at(hour)), DECIMALS);
    hours(to, "duty", place.duty()::at, FINE);
    hours(to, "toRoomBtuh", hour -> Units.btuh(place.toRoom().at(hour)), DECIMALS);
  }

  private static void walls(ObjectNode to, ClosetWalls.Case found) {
    to.put("placePeakF", fahrenheit(found.placePeak()))
        .put("roomLoadBtuh", figure(Units.btuh(found.roomLoad())))
        .put("indoorPeakF", fahrenheit(found.indoorPeak()));
  }

  private static void changes(ArrayNode to, List<LineChange> changes) {
    for (LineChange change : changes) {
      to.addObject()
          .put("kind", word(change.kind()))
          .put("name", AirlineWords.change(change.kind()))
          .put("tankWaterGramsPerHour", figure(change.tankWater()))
          .put("lineWaterGramsPerHour", figure(change.lineWater()))
          .put("dryerWaterGramsPerHour", figure(change.dryerWater()))
          .put("drainedLiters", figure(change.litresToDrain()))
          .put("pressureDewPointF", fahrenheit(change.pressureDewPoint()))
          .put("coldestStretchF", fahrenheit(change.coldestStretch()));
    }
  }

  private static void hours(
      ObjectNode parent, String key, IntToDoubleFunction valueOfHour, int decimals) {
    ArrayNode array = parent.putArray(key);
    for (int hour = 1; hour <= 24; hour++) {
      array.add(SizeJson.rounded(valueOfHour.applyAsDouble(hour), decimals));
    }
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static BigDecimal fahrenheit(double celsius) {
    return SizeJson.rounded(Units.fahrenheit(celsius), DECIMALS);
  }

  private static BigDecimal figure(double value) {
    return SizeJson.rounded(value, DECIMALS);
  }
}
