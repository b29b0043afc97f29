package org.shopclime.envelope;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The table of building materials, {@code materials.csv} beside this class.
 *
 * <p>Source: handbook values, named row by row in the table (building-material table of the ASHRAE
 * Handbook - Fundamentals; California Joint Appendix 4; for vapour ISO 10456, Tables 3 and 4).
 * Error: real products spread by about 10 %, foams and batts more when wet, old or badly laid; in
 * vapour by half and more, wood and boards pass several times as much when damp.
 */
public final class Materials {

  private static final Pattern SEMICOLON = Pattern.compile(";");

  private static final List<Material> ALL;
  private static final Map<String, Material> BY_KEY;

  /** Every name that is taken, second names included. */
  private static final List<String> NAMES;

  static {
    List<Material> all = new ArrayList<>();
    List<String> names = new ArrayList<>();
    Map<String, Material> byKey = new LinkedHashMap<>();
    for (CSVRecord row : rows()) {
      Material material = material(row);
      all.add(material);
      List<String> called = new ArrayList<>(List.of(material.name()));
      SEMICOLON.splitAsStream(row.get("also")).filter(name -> !name.isBlank()).forEach(called::add);
      for (String name : called) {
        names.add(name);
        if (byKey.put(Names.key(name), material) != null) {
          throw new IllegalStateException("materials.csv holds " + name + " twice");
        }
      }
    }
    ALL = List.copyOf(all);
    NAMES = List.copyOf(names);
    BY_KEY = Map.copyOf(byKey);
  }

  private Materials() {}

  /**
   * A material by name; case, spaces and the two spellings of aluminium do not matter.
   *
   * @param name name or second name, such as "drywall" for gypsum board
   * @return the material, or empty if there is none of that name
   */
  public static Optional<Material> find(String name) {
    return Optional.ofNullable(BY_KEY.get(Names.key(name)));
  }

  /**
   * All materials in the order of the table.
   *
   * @return an unmodifiable list
   */
  public static List<Material> all() {
    return ALL;
  }

  /**
   * Names most like one that was not found.
   *
   * @param name what was typed
   * @return three names, most alike first
   */
  public static List<String> nearest(String name) {
    return Names.nearest(name, NAMES);
  }

  private static List<CSVRecord> rows() {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .get();
    try (InputStream in = Materials.class.getResourceAsStream("materials.csv")) {
      if (in == null) {
        throw new IllegalStateException("materials.csv is missing beside " + Materials.class);
      }
      try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        return format.parse(reader).getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("materials.csv cannot be read", e);
    }
  }

  private static Material material(CSVRecord row) {
    double thickness = number(row, "thickness_mm") / 1000;
    OptionalDouble fixed =
        row.get("resistance").isBlank()
            ? OptionalDouble.empty()
            : OptionalDouble.of(number(row, "resistance"));
    double conductivity =
        fixed.isPresent() ? thickness / fixed.getAsDouble() : number(row, "conductivity");
    return new Material(
        row.get("name"),
        thickness,
        conductivity,
        fixed,
        number(row, "density"),
        number(row, "specific_heat"),
        number(row, "absorptance"),
        vapour(row),
        row.get("source"),
        row.get("status"));
  }

  private static VapourFigure vapour(CSVRecord row) {
    boolean fixed = !row.get("sd").isBlank();
    return new VapourFigure(
        fixed ? 1 : number(row, "mu"),
        fixed ? OptionalDouble.of(number(row, "sd")) : OptionalDouble.empty(),
        row.get("vapour_source"));
  }

  private static double number(CSVRecord row, String column) {
    try {
      return Double.parseDouble(row.get(column));
    } catch (NumberFormatException e) {
      throw new IllegalStateException(
          "materials.csv, " + row.get(0) + ", " + column + ": " + row.get(column), e);
    }
  }
}
