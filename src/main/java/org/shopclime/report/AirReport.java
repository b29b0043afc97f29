package org.shopclime.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.quantity.UnitSystem;

/**
 * Places for the compressor as a page to read, print and keep, with its figures as CSV beside it.
 */
public final class AirReport {

  /** Name of the page in its folder. */
  public static final String PAGE = "air.html";

  private AirReport() {}

  /**
   * Writes the page and its CSV files, each aside and then moved; other files in the folder stay.
   *
   * @param answer the answer
   * @param units system of units to show
   * @param folder where to; made if missing
   * @return the page: one HTML file that needs nothing from elsewhere
   * @throws IOException if the folder cannot be made or a file not written
   */
  public static Path write(AirlineAnswer answer, UnitSystem units, Path folder) throws IOException {
    return write(answer, units, folder, ChartImage.canDraw());
  }

  static Path write(AirlineAnswer answer, UnitSystem units, Path folder, boolean charts)
      throws IOException {
    Map<String, String> csv = new AirCsv(answer, units).files();
    String text = new AirPage(answer, units, charts).text(csv.keySet());
    return FileAside.report(folder, PAGE, text, csv);
  }
}
