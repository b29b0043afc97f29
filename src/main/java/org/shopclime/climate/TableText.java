package org.shopclime.climate;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
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
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;

/**
 * The text of one shipped table: comment lines, a head line, rows that each stand on one line. A
 * row is cut into cells only when it is asked for, since most rows never are.
 */
final class TableText {
  private static final char COMMENT = '#';

  /** A line and its number in the file, from 1. */
  private record Line(int number, String text) {}

  /** One row, its cells by the name of their column. */
  final class Row {
    private final Line line;
    private final List<String> cells;

    private Row(Line line, List<String> cells) {
      this.line = line;
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
            name + " table, line " + line.number() + ": " + wrong.getMessage(), wrong);
      }
    }
  }

  private final String name;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Line> lines = new ArrayList<>();

  private TableText(String name) {
    this.name = name;
  }

  /** All rows of a table. */
  static TableText read(String name, Reader text) throws IOException {
    return read(name, text, "");
  }

  /** The rows that begin with a station's number; they stand together. */
  static TableText ofStation(String name, Reader text, String id) throws IOException {
    return read(name, text, id + ",");
  }

  private static TableText read(String name, Reader text, String beginning) throws IOException {
    TableText table = new TableText(name);
    BufferedReader reader = new BufferedReader(text);
    int number = 0;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      number++;
      if (line.isEmpty() || line.charAt(0) == COMMENT) {
        continue;
      }
      if (table.places.isEmpty()) {
        List<String> heads = cells(line, -1);
        heads.forEach(head -> table.places.put(head, table.places.size()));
      } else if (line.startsWith(beginning)) {
        table.lines.add(new Line(number, line));
      } else if (!table.lines.isEmpty()) {
        break;
      }
    }
    return table;
  }

  int rows() {
    return lines.size();
  }

  /** A row, counted from 0. */
  Row row(int index) {
    return beginning(index, -1);
  }

  /** A row of which only the first cells are wanted. */
  Row beginning(int index, int wanted) {
    Line line = lines.get(index);
    return new Row(line, cells(line.text(), wanted + 1));
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
    return String.format(Locale.ROOT, "%s_%02d", what, number);
  }
}
