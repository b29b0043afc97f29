package org.shopclime.app;

import java.nio.file.Path;
import java.util.Optional;
import org.shopclime.quantity.UnitSystem;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Words that verbs share which answer for one shop: which one, and how the answer is told. */
final class AskedShop {

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "Shop file (JSON); without it the usual example.")
  private Path file;

  @Option(names = "--json", description = "One JSON object instead of text, for machines.")
  private boolean json;

  @Option(
      names = "--report",
      paramLabel = "DIR",
      description = "Also write a page to read and print and its figures (CSV) here.")
  private Path report;

  @Option(
      names = "--units",
      paramLabel = "ip|si",
      converter = UnitsWord.class,
      description = "Units of text and report: ip (°F, BTU/h) or si (°C, W); else the file's own.")
  private UnitSystem units;

  /** The shop file; none for the usual example. */
  Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /** Whether one JSON object is wanted. */
  boolean json() {
    return json;
  }

  /** Folder for a report; none where it is not asked for. */
  Optional<Path> report() {
    return Optional.ofNullable(report);
  }

  /** Whether units are asked for but nothing is told in them. */
  boolean hasUnusedUnits() {
    return units != null && json && report == null;
  }

  /** Units asked for; none for the file's own. */
  Optional<UnitSystem> units() {
    return Optional.ofNullable(units);
  }
}
