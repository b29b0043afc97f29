package org.shopclime.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** The answer as a page to read, print and keep, with its figures as CSV beside it. */
public final class HtmlReport {

  /** Name of the page in its folder. */
  public static final String PAGE = "report.html";

  /** What stands where charts cannot be drawn. */
  public static final String NO_CHARTS =
      "Charts are left out: this computer has no font that Java can draw with.";

  private HtmlReport() {}

  /**
   * Writes the page and its CSV files. Each file is written aside and then moved, so that one that
   * stood there before is never half overwritten; other files in the folder stay.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @param folder where to; made if missing
   * @return the page: one HTML file that needs nothing from elsewhere
   * @throws IOException if the folder cannot be made or a file not written
   */
  public static Path write(SizeAnswer answer, UnitSystem units, Path folder) throws IOException {
    return write(answer, units, folder, ChartImage.canDraw());
  }

  static Path write(SizeAnswer answer, UnitSystem units, Path folder, boolean charts)
      throws IOException {
    Map<String, String> csv = new SizeCsv(answer, units).files();
    String text = new SizePage(answer, units, charts).text(csv.keySet());
    return FileAside.report(folder, PAGE, text, csv);
  }
}
