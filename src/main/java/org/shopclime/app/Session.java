package org.shopclime.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shopclime.climate.Climates;
import org.shopclime.climate.StationClimate;
import org.shopclime.quantity.Problem;
import org.shopclime.report.ChartImage;
import org.shopclime.report.HtmlReport;
import org.shopclime.shop.Examples;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/**
 * What the verbs share: where text goes, how problems are told, how a shop is read.
 *
 * @param out standard output
 * @param err standard error
 * @param form opens the window
 */
record Session(PrintWriter out, PrintWriter err, FormLauncher form) {

  /** All went well. */
  static final int GOOD = 0;

  /** Something in the input cannot be taken. */
  static final int BAD_INPUT = 2;

  /** A shop with the climates it was checked against. */
  record Loaded(ShopReading.Good shop, Climates climates) {}

  /** Reads a shop file, or the usual example; tells every problem. */
  Optional<Loaded> load(Optional<Path> file) {
    if (file.isPresent() && file.get().toString().isEmpty()) {
      refuse(new Problem("FILE", "\"\"", "a shop file that can be read"));
      return Optional.empty();
    }
    Climates climates = Climates.load();
    Stations stations =
        new Stations(
            station -> climates.find(station).isPresent(),
            station ->
                climates.suggestions(station).stream()
                    .map(StationClimate::station)
                    .map(found -> found.name() + ", " + found.state())
                    .toList());
    ShopReading reading =
        file.map(path -> ShopFile.read(path, stations))
            .orElseGet(() -> ShopFile.read(Examples.text(Examples.USUAL), stations));
    if (reading instanceof ShopReading.Good good) {
      return Optional.of(new Loaded(good, climates));
    }
    tell(((ShopReading.Bad) reading).problems());
    return Optional.empty();
  }

  /** Writes a report into its folder. */
  interface Writer {

    /** Writes it and tells its page. */
    Path write(Path folder) throws IOException;
  }

  /**
   * Keeps the report of an answer and tells where.
   *
   * @param folder where it is kept
   * @param json whether the answer was told as JSON
   * @param writer writes it
   * @return exit code
   */
  int keep(Path folder, boolean json, Writer writer) {
    try {
      Path page = writer.write(folder);
      PrintWriter told = told(json);
      if (!ChartImage.canDraw()) {
        told.println(HtmlReport.NO_CHARTS);
      }
      told.println("Report: " + page.toAbsolutePath());
      told.flush();
      return GOOD;
    } catch (IOException e) {
      return refuse(new Problem(folder.toString(), Folders.reason(e), Folders.TAKES));
    }
  }

  /** Where files that were written are told: beside a JSON object standard output holds nothing. */
  PrintWriter told(boolean json) {
    return json ? err : out;
  }

  int refuse(Problem problem) {
    tell(List.of(problem));
    return BAD_INPUT;
  }

  /** Says that units asked for change nothing where only a JSON object is told. */
  void tellUnusedUnits(String verb) {
    err.println(verb + " --units: changes nothing beside --json, whose keys end in their units");
  }

  /** A line for each problem. */
  void tell(List<Problem> problems) {
    problems.forEach(problem -> err.println(oneLine(problem.sentence())));
  }

  /** Whatever a message holds, it stays on its line. */
  static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ").strip();
  }
}
