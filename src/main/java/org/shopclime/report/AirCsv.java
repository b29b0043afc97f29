package org.shopclime.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.ClosetWalls;
import org.shopclime.airline.LineChange;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.VentPoint;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/**
 * Places for the compressor as CSV (RFC 4180) with one heading line; every heading of a quantity
 * ends in its unit. Water is in grams and litres in both systems. Hours are hour-ending 1 to 24,
 * local standard time.
 */
final class AirCsv {

  private static final int HOURS = 24;

  private final AirlineAnswer answer;
  private final UnitSystem units;
  private final String degree;
  private final String heat;

  AirCsv(AirlineAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    degree = units == UnitSystem.SI ? "C" : "F";
    heat = units == UnitSystem.SI ? "W" : "Btuh";
  }

  /** File names and their texts. */
  Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    files.put("air-places.csv", places());
    files.put("air-hours.csv", hours());
    files.put("air-line.csv", line());
    files.put("air-vents.csv", vents());
    files.put("air-closets.csv", closets());
    return files;
  }

  private String places() {
    AirReasons reasons = new AirReasons(answer, units);
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "rank",
            "place",
            "placePeak" + degree,
            "placePeakHour",
            "roomLoad" + heat,
            "indoorPeak" + degree,
            "holds",
            "tankWaterGramsPerHour",
            "lineWaterGramsPerHour",
            "drainedLiters",
            "pressureDewPoint" + degree,
            "coldestStretch" + degree,
            "compressorKwh",
            "coolingKwh",
            "winterHeat" + heat,
            "why"));
    for (PlaceAnswer place : answer.places()) {
      rows.add(
          List.of(
              place.ranked().rank().map(String::valueOf).orElse(""),
              Shown.line(place.ranked().place().name()),
              temperature(place.placePeak()),
              place.peakHour(),
              flow(place.roomLoad()),
              temperature(place.indoorPeak()),
              answer.shop().unit().isEmpty() ? "" : place.holds(),
              number(place.tankWater()),
              number(place.lineWater()),
              number(place.litresToDrain()),
              temperature(place.pressureDewPoint()),
              temperature(place.coldestStretch()),
              number(place.compressorKilowattHours()),
              number(place.coolingKilowattHours()),
              flow(place.winterHeat()),
              reasons.why(place)));
    }
    return text(rows);
  }

  private String hours() {
    List<List<Object>> rows = new ArrayList<>();
    List<Object> head = new ArrayList<>(List.of("hour", "outdoor" + degree));
    answer
        .places()
        .forEach(place -> head.add(Shown.line(place.ranked().place().name()) + ": air" + degree));
    rows.add(head);
    for (int hour = 1; hour <= HOURS; hour++) {
      List<Object> row = new ArrayList<>();
      row.add(hour);
      row.add(temperature(answer.day().dryBulb().at(hour)));
      for (PlaceAnswer place : answer.places()) {
        row.add(temperature(place.air().at(hour)));
      }
      rows.add(row);
    }
    return text(rows);
  }

  private String line() {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "day",
            "with",
            "tankWaterGramsPerHour",
            "lineWaterGramsPerHour",
            "dryerWaterGramsPerHour",
            "drainedLiters",
            "pressureDewPoint" + degree,
            "coldestStretch" + degree));
    answer.changes().forEach(change -> rows.add(row("usual", change)));
    answer.blasting().forEach(change -> rows.add(row("blasting", change)));
    return text(rows);
  }

  private List<Object> row(String day, LineChange change) {
    return List.of(
        day,
        AirlineWords.change(change.kind()),
        number(change.tankWater()),
        number(change.lineWater()),
        number(change.dryerWater()),
        number(change.litresToDrain()),
        temperature(change.pressureDewPoint()),
        temperature(change.coldestStretch()));
  }

  private String vents() {
    boolean si = units == UnitSystem.SI;
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of(si ? "areaM2" : "areaFt2", "placePeak" + degree));
    for (VentPoint point : answer.ventCurve()) {
      double area = si ? point.area() : Units.squareFeet(point.area());
      rows.add(List.of(String.format(Locale.ROOT, "%.4f", area), temperature(point.celsius())));
    }
    return text(rows);
  }

  private String closets() {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "closet",
            "partitions",
            "placePeak" + degree,
            "roomLoad" + heat,
            "indoorPeak" + degree));
    for (ClosetWalls closet : answer.closets()) {
      rows.add(row(closet, "bare", closet.bare()));
      rows.add(row(closet, "R-13", closet.insulated()));
      rows.add(row(closet, "stair", closet.stair()));
    }
    return text(rows);
  }

  private List<Object> row(ClosetWalls closet, String walls, ClosetWalls.Case found) {
    return List.of(
        AirTable.brief(closet.kind()),
        walls,
        temperature(found.placePeak()),
        flow(found.roomLoad()),
        temperature(found.indoorPeak()));
  }

  private static String text(List<List<Object>> rows) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      for (List<Object> row : rows) {
        printer.printRecord(row);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private String temperature(double celsius) {
    return number(Shown.degrees(celsius, units));
  }

  private String flow(double watts) {
    return number(Shown.flow(watts, units));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value + 0.0);
  }
}
