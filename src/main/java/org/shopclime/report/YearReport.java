package org.shopclime.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.UnitSystem;

/** A year's answer as a page to read, print and keep, with its months as CSV beside it. */
public final class YearReport {

  /** Name of the page in its folder. */
  public static final String PAGE = "year.html";

  static final String MONTHS = "year-months.csv";

  private YearReport() {}

  /**
   * Writes the page and its CSV file, each aside and then moved; other files in the folder stay.
   *
   * @param answer the answer
   * @param units system of units to show
   * @param folder where to; made if missing
   * @return the page: one HTML file that needs nothing from elsewhere
   * @throws IOException if the folder cannot be made or a file not written
   */
  public static Path write(YearAnswer answer, UnitSystem units, Path folder) throws IOException {
    return write(answer, units, folder, ChartImage.canDraw());
  }

  static Path write(YearAnswer answer, UnitSystem units, Path folder, boolean charts)
      throws IOException {
    String months = YearCsv.months(answer, units);
    String text = new YearPage(answer, units, charts).text();
    return FileAside.report(folder, PAGE, text, Map.of(MONTHS, months));
  }
}
