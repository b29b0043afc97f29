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
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.Change;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;

/**
 * The figures behind charts and tables as CSV (RFC 4180) with one heading line; every heading of a
 * quantity ends in its unit. Hours are hour-ending 1 to 24, local standard time, as in the JSON.
 */
final class SizeCsv {

  private static final int HOURS = 24;

  private final SizeAnswer answer;
  private final UnitSystem units;
  private final String degree;
  private final String heat;

  SizeCsv(SizeAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    this.degree = units == UnitSystem.SI ? "C" : "F";
    this.heat = units == UnitSystem.SI ? "W" : "Btuh";
  }

  /** File names and their texts. */
  Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    files.put("hours.csv", hours());
    files.put("components.csv", components());
    files.put("changes.csv", changes());
    return files;
  }

  private String hours() {
    CoreAnswer core = answer.core();
    WallClock clock = new WallClock(answer.shop().work(), core.hotDay().date());
    LivedDay day = core.unit().orElse(core.without());
    Trace trace = day.trace();
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "hour",
            "wallClockEnd",
            "outdoor" + degree,
            "indoor" + degree,
            "operative" + degree,
            "dewPoint" + degree,
            "relativeHumidity",
            "withoutUnit" + degree,
            "loadSensible" + heat,
            "loadLatent" + heat,
            "takenSensible" + heat,
            "takenLatent" + heat,
            "canTakeSensible" + heat,
            "canTakeLatent" + heat,
            "running",
            "powerW"));
    for (int hour = 1; hour <= HOURS; hour++) {
      double sensible = 0;
      double latent = 0;
      for (RoomLoad load : core.load().rooms()) {
        sensible += load.sensible().at(hour);
        latent += load.latent().at(hour);
      }
      rows.add(
          List.of(
              hour,
              clock.end(hour),
              temperature(core.hotDay().dryBulb().at(hour)),
              temperature(trace.air().at(hour)),
              temperature(trace.operative().at(hour)),
              temperature(trace.dewPoint().at(hour)),
              fraction(trace.relativeHumidity().at(hour)),
              temperature(core.without().trace().air().at(hour)),
              flow(sensible),
              flow(latent),
              flow(trace.sensible().at(hour)),
              flow(trace.latent().at(hour)),
              flow(trace.canGive().at(hour)),
              flow(trace.canGiveLatent().at(hour)),
              fraction(trace.running().at(hour)),
              number(trace.power().at(hour))));
    }
    return text(rows);
  }

  private String components() {
    boolean si = units == UnitSystem.SI;
    PeakLines peak = PeakLines.of(answer.core().load());
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "name",
            "kind",
            "room",
            si ? "areaM2" : "areaFt2",
            si ? "uFactorWM2K" : "uFactorBtuhFt2F",
            si ? "driveK" : "driveF",
            "share",
            "sensible" + heat,
            "latent" + heat,
            "pencil" + heat));
    for (PeakLines.PeakLine line : peak.lines()) {
      double area = line.line().area();
      double uFactor = line.line().uFactor();
      rows.add(
          List.of(
              line.name(),
              line.line().kind().word(),
              line.room(),
              number(si ? area : Units.squareFeet(area)),
              fraction(si ? uFactor : Units.uFactorIp(uFactor)),
              number(si ? line.drive() : Units.fahrenheitDifference(line.drive())),
              fraction(line.share()),
              flow(line.sensible()),
              flow(line.latent()),
              flow(line.pencil())));
    }
    return text(rows);
  }

  private String changes() {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "name",
            "peakSensible" + heat,
            "peakLatent" + heat,
            "indoorPeak" + degree,
            "recommended" + heat,
            "holds"));
    for (Change change : answer.changes()) {
      rows.add(
          List.of(
              change.name(),
              flow(change.peakSensible()),
              flow(change.peakLatent()),
              temperature(change.indoorPeak()),
              change.recommended().isPresent() ? flow(change.recommended().getAsDouble()) : "",
              change.holds()));
    }
    return text(rows);
  }

  private String temperature(double celsius) {
    return number(Shown.degrees(celsius, units));
  }

  private String flow(double watts) {
    return number(Shown.flow(watts, units));
  }

  private static String number(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.2f", value + 0.0) : "";
  }

  private static String fraction(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.4f", value + 0.0) : "";
  }

  private static String text(List<List<Object>> rows) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecords(rows);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }
}
