package org.shopclime.climate;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.shopclime.quantity.Problem;

/** The reading of one file's text: station line, heads, rows; gathers every problem on its way. */
final class WeatherRows {
  private static final String DATE = "Date (MM/DD/YYYY)";
  private static final String TIME = "Time (HH:MM)";
  private static final Pattern DATE_FORM = Pattern.compile("(\\d{1,2})/(\\d{1,2})/\\d{4}");
  private static final Pattern TIME_FORM = Pattern.compile("(\\d{1,2}):(\\d{2})");
  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9.]+");
  private static final int MOST_TOLD = 20;
  private static final int STATION_FIELDS = 7;

  private final String name;
  private final List<Problem> problems = new ArrayList<>();
  private int untold;
  private int cells;

  WeatherRows(String name) {
    this.name = name;
  }

  WeatherReading read(Reader text) throws IOException {
    try (CSVParser parser = CSVFormat.DEFAULT.parse(text)) {
      Iterator<CSVRecord> rows = parser.iterator();
      Station station = rows.hasNext() ? station(rows.next()) : null;
      if (station == null) {
        return refusal("what is not the head line of a station");
      }
      if (!rows.hasNext()) {
        return refusal("a file of one line");
      }
      Map<String, Integer> places = places(rows.next());
      if (!problems.isEmpty()) {
        return bad();
      }
      Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);
      for (WeatherColumn column : WeatherColumn.values()) {
        values.put(column, new double[WeatherYear.COUNT]);
      }
      int hours = 0;
      while (rows.hasNext()) {
        CSVRecord row = rows.next();
        if (row.stream().allMatch(String::isBlank)) {
          continue;
        }
        hours++;
        if (hours <= WeatherYear.COUNT) {
          readHour(row, parser.getCurrentLineNumber(), hours, places, values);
        }
      }
      if (hours != WeatherYear.COUNT) {
        problem(name, hours + " hours", WeatherYear.COUNT + " hours, a whole year");
      }
      return problems.isEmpty() && untold == 0 ? judged(station, values) : bad();
    }
  }

  /** The year with its gaps filled, or what speaks against it. */
  private WeatherReading judged(Station station, Map<WeatherColumn, double[]> values) {
    WeatherGaps gaps = new WeatherGaps(values);
    for (String gap : gaps.tooMany()) {
      problem(name, gap, WeatherGaps.takes());
    }
    if (!problems.isEmpty()) {
      return bad();
    }
    WeatherYear year = new WeatherYear(station, values);
    WeatherSense sense = new WeatherSense(year);
    for (WeatherSense.Doubt doubt : sense.doubts()) {
      problem(name, doubt.found(), doubt.takes());
    }
    List<String> notes = new ArrayList<>(gaps.notes());
    notes.addAll(sense.notes());
    return problems.isEmpty() ? new WeatherReading.Good(year, notes) : bad();
  }

  /** The station of the first line, or null where the line is no station's. */
  private Station station(CSVRecord line) {
    if (line.size() < STATION_FIELDS || !plain(line.get(0)).matches("\\d{5,6}")) {
      return null;
    }
    try {
      return new Station(
          plain(line.get(0)),
          StationName.readable(line.get(1)),
          line.get(2).strip(),
          Double.parseDouble(line.get(3).strip()),
          Double.parseDouble(line.get(4).strip()),
          Double.parseDouble(line.get(5).strip()),
          Double.parseDouble(line.get(6).strip()));
    } catch (IllegalArgumentException outside) {
      problem(
          "line 1", quoted(outside.getMessage()), "time zone, latitude, longitude and elevation");
      return null;
    }
  }

  private Map<String, Integer> places(CSVRecord heads) {
    cells = heads.size();
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < heads.size(); i++) {
      places.putIfAbsent(key(heads.get(i)), i);
    }
    List<String> needed = new ArrayList<>(List.of(DATE, TIME));
    for (WeatherColumn column : WeatherColumn.values()) {
      needed.add(column.header());
    }
    for (String header : needed) {
      if (!places.containsKey(key(header))) {
        problem("line 2", "no column " + quoted(header), "a column headed " + quoted(header));
      }
    }
    return places;
  }

  private void readHour(
      CSVRecord row,
      long line,
      int hour,
      Map<String, Integer> places,
      Map<WeatherColumn, double[]> values) {
    if (row.size() != cells) {
      problem("line " + line, row.size() + " cells", cells + " cells, one for each head");
      return;
    }
    checkMoment(cell(row, places, DATE), cell(row, places, TIME), line, hour);
    for (WeatherColumn column : WeatherColumn.values()) {
      String written = cell(row, places, column.header());
      double value = number(written);
      if (Double.isNaN(value) && !written.isEmpty()) {
        problem("line " + line + ", column " + column.header(), quoted(written), column.range());
      }
      values.get(column)[hour - 1] = column.takes(value) ? column.si(value) : Double.NaN;
    }
  }

  private void checkMoment(String date, String time, long line, int hour) {
    LocalDate day = WeatherYear.dateOf(WeatherYear.dayOf(hour));
    int ending = WeatherYear.hourEnding(hour);
    Matcher onDay = DATE_FORM.matcher(date);
    Matcher atTime = TIME_FORM.matcher(time);
    boolean isMoment =
        onDay.matches()
            && atTime.matches()
            && (isAt(onDay, atTime, day, ending)
                || (ending == Hours.COUNT && isAt(onDay, atTime, day.plusDays(1), 0)));
    if (!isMoment) {
      problem(
          "line " + line,
          quoted(date + " " + time),
          String.format(
              Locale.ROOT,
              "the hour %02d/%02d %02d:00 of a year without a leap day",
              day.getMonthValue(),
              day.getDayOfMonth(),
              ending));
    }
  }

  private static boolean isAt(Matcher onDay, Matcher atTime, LocalDate day, int hour) {
    return Integer.parseInt(onDay.group(1)) == day.getMonthValue()
        && Integer.parseInt(onDay.group(2)) == day.getDayOfMonth()
        && Integer.parseInt(atTime.group(1)) == hour
        && Integer.parseInt(atTime.group(2)) == 0;
  }

  private static String cell(CSVRecord row, Map<String, Integer> places, String header) {
    return row.get(places.get(key(header))).strip();
  }

  private static double number(String written) {
    if (!NUMBER.matcher(written).matches()) {
      return Double.NaN;
    }
    try {
      return Double.parseDouble(written);
    } catch (NumberFormatException none) {
      return Double.NaN;
    }
  }

  private static String key(String header) {
    return plain(header).toLowerCase(Locale.ROOT);
  }

  /** Without a byte-order mark and blanks around. */
  private static String plain(String text) {
    return text.replace("\uFEFF", "").strip();
  }

  private static String quoted(String text) {
    return '"' + (text.length() > 40 ? text.substring(0, 40) + "..." : text) + '"';
  }

  private void problem(String path, String found, String takes) {
    if (problems.size() < MOST_TOLD) {
      problems.add(new Problem(path.equals(name) ? name : name + ", " + path, found, takes));
    } else {
      untold++;
    }
  }

  private WeatherReading refusal(String found) {
    if (problems.isEmpty()) {
      problem(
          "line 1",
          found,
          "a TMY3 hourly file, whose first line names the station, such as"
              + " 722230,\"MOBILE REGIONAL AP\",AL,-6.0,30.683,-88.250,66");
    }
    return bad();
  }

  private WeatherReading bad() {
    if (untold > 0) {
      problems.add(new Problem(name, untold + " more such problems", "none"));
    }
    return new WeatherReading.Bad(problems);
  }
}
