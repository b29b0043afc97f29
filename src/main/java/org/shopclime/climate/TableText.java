package org.shopclime.climate;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;

/**
 * The text of one shipped table: comment lines, a head line, rows that each stand on one line. A
 * row is cut into cells only when it is asked for, since most rows never are.
 */
final class TableText {
  private static final char COMMENT = '#';

  /** One row, its cells by the name of their column. */
  final class Row {
    private final int start;
    private final List<String> cells;

    private Row(int start, List<String> cells) {
      this.start = start;
      this.cells = cells;
    }

    String text(String column) {
      Integer place = places.get(column);
      if (place == null || place >= cells.size()) {
        throw new IllegalArgumentException("no column " + column);
      }
      return cells.get(place);
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    int whole(String column) {
      return Integer.parseInt(text(column));
    }

    /** Makes something of the row; where it cannot be made, the message names the line. */
    <T> T as(Function<Row, T> maker) {
      try {
        return maker.apply(this);
      } catch (IllegalArgumentException wrong) {
        throw new IllegalArgumentException(
            name + " table, line " + lineNumber() + ": " + wrong.getMessage(), wrong);
      }
    }

    /** Number of the line in the file, from 1. */
    private long lineNumber() {
      return 1 + whole.substring(0, start).chars().filter(sign -> sign == '\n').count();
    }
  }

  private final String name;
  private final String whole;
  private final Map<String, Integer> places = new HashMap<>();

  /** Where the lines of the rows start. */
  private final List<Integer> starts = new ArrayList<>();

  private TableText(String name, String whole) {
    this.name = name;
    this.whole = whole;
  }

  /** All rows of a table. */
  static TableText read(String name, String text) {
    TableText table = new TableText(name, text);
    for (int at = table.readHead(); at < text.length(); at = table.next(at)) {
      if (table.isRow(at)) {
        table.starts.add(at);
      }
    }
    return table;
  }

  /** The rows that begin with a station's number; they stand together. */
  static TableText ofStation(String name, String text, String id) {
    TableText table = new TableText(name, text);
    String beginning = id + ",";
    int first = text.indexOf("\n" + beginning, Math.max(table.readHead() - 1, 0));
    if (first >= 0) {
      for (int at = first + 1; text.startsWith(beginning, at); at = table.next(at)) {
        table.starts.add(at);
      }
    }
    return table;
  }

  /** Reads the names of the columns; gives where the line behind them starts. */
  private int readHead() {
    int at = 0;
    while (at < whole.length() && !isRow(at)) {
      at = next(at);
    }
    cells(line(at), -1).forEach(head -> places.put(head, places.size()));
    return next(at);
  }

  private boolean isRow(int start) {
    char first = whole.charAt(start);
    return first != COMMENT && first != '\n' && first != '\r';
  }

  /** Where the line behind this one starts; the end of the text if there is none. */
  private int next(int start) {
    int end = whole.indexOf('\n', start);
    return end < 0 ? whole.length() : end + 1;
  }

  private String line(int start) {
    return whole.substring(start, next(start)).stripTrailing();
  }

  int rows() {
    return starts.size();
  }

  /** The row of a station, counted from 0; nothing where it has none. */
  OptionalInt rowOf(String id) {
    String beginning = id + ",";
    return IntStream.range(0, rows())
        .filter(index -> whole.startsWith(beginning, starts.get(index)))
        .findFirst();
  }

  /** A row, counted from 0. */
  Row row(int index) {
    return beginning(index, -1);
  }

  /** A row of which only the first cells are wanted. */
  Row beginning(int index, int wanted) {
    int start = starts.get(index);
    return new Row(start, cells(line(start), wanted + 1));
  }

  private static List<String> cells(String line, int most) {
    if (line.indexOf('"') < 0) {
      return List.of(line.split(",", most == 0 ? -1 : most));
    }
    try (CSVParser parser = CSVFormat.DEFAULT.parse(new StringReader(line))) {
      return parser.iterator().next().toList();
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /**
   * Writes a table beside the place, then moves it there: a half-written table never stands.
   *
   * @param file where to; its folder is made if missing
   * @param comments lines of the commented head
   * @param heads names of the columns
   * @param rows rows of as many cells
   * @throws IOException if it cannot be written; what stood there then still stands
   */
  static void write(
      Path file, List<String> comments, List<String> heads, Iterator<? extends Iterable<?>> rows)
      throws IOException {
    Path place = file.toAbsolutePath();
    Files.createDirectories(place.getParent());
    Path aside = place.resolveSibling(place.getFileName() + ".part");
    CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();
    try {
      try (BufferedWriter text = Files.newBufferedWriter(aside, StandardCharsets.UTF_8);
          CSVPrinter printer = new CSVPrinter(text, format)) {
        for (String line : comments) {
          text.write(COMMENT + " " + line + "\n");
        }
        printer.printRecord(heads);
        while (rows.hasNext()) {
          printer.printRecord(rows.next());
        }
      }
      Files.move(aside, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  /** A figure with so many decimals; a negative nothing is written as nothing. */
  static String fixed(int decimals, double value) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }

  /** Name of one of several numbered columns. */
  static String numbered(String what, int number) {
    return what + (number < 10 ? "_0" : "_") + number;
  }
}
