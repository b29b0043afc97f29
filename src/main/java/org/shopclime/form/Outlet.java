package org.shopclime.form;

import java.awt.Desktop;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AirReport;
import org.shopclime.report.HtmlReport;

/** The ways an answer leaves the window: a report in a folder, a printed sheet. */
final class Outlet {

  private static final List<String> WAIT =
      List.of("The whole answer is not there yet. Wait until nothing is grey, then try again.");

  private final Questions questions;
  private final StatusView status;

  Outlet(Questions questions, StatusView status) {
    this.questions = questions;
    this.status = status;
  }

  /** Writes the report and, where the places of the compressor are known, the page on them. */
  void report(
      Optional<SizeAnswer> answer,
      Optional<AirlineAnswer> air,
      UnitSystem units,
      Optional<Path> near) {
    if (answer.isEmpty()) {
      questions.problems("No report yet", WAIT);
      return;
    }
    questions
        .folderForReport(near)
        .ifPresent(
            folder ->
                Background.run(
                    () -> {
                      if (air.isPresent()) {
                        AirReport.write(air.get(), units, folder);
                      }
                      return show(HtmlReport.write(answer.get(), units, folder));
                    },
                    page -> status.idle("Report written: " + page),
                    failed ->
                        questions.problems(
                            "The report could not be written",
                            List.of(folder.toString(), failed))));
  }

  /** Opens the report in the browser, where there is one. */
  private static Path show(Path page) {
    if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
      try {
        Desktop.getDesktop().browse(page.toUri());
      } catch (IOException e) {
        return page; // the path is told in any case
      }
    }
    return page;
  }

  void print(Optional<PrintedAnswer> sheet) {
    if (sheet.isEmpty()) {
      questions.problems("Nothing to print yet", WAIT);
      return;
    }
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(sheet.get().title());
    job.setPrintable(sheet.get());
    if (!job.printDialog()) {
      return;
    }
    Background.run(
        () -> {
          try {
            job.print();
          } catch (PrinterException e) {
            throw new IOException(e.getMessage(), e);
          }
          return job;
        },
        done -> status.idle("Sent to the printer."),
        failed -> questions.problems("The sheet could not be printed", List.of(failed)));
  }
}
