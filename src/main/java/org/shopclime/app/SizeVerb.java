package org.shopclime.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.ChartImage;
import org.shopclime.report.HtmlReport;
import org.shopclime.report.SizeJson;
import org.shopclime.report.SizeText;
import org.shopclime.run.RoomTooHot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "size",
    description = {
      "Is the cooling unit enough on the hot day, why, and what would change it?",
      "Prints one sentence, the facts behind it, where the heat comes from, and what single changes"
          + " would do."
    })
final class SizeVerb implements Callable<Integer> {

  private final Session session;

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
      description = "Also write a page to read and print (report.html) and its figures (CSV) here.")
  private Path report;

  @Option(
      names = "--units",
      paramLabel = "ip|si",
      converter = UnitsWord.class,
      description = "Units of text and report: ip (°F, BTU/h) or si (°C, W); else the file's own.")
  private UnitSystem units;

  SizeVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    return answer(session, Optional.ofNullable(file), Optional.ofNullable(report), json, units);
  }

  /** Answers for a file, or the usual example; writes a report where a folder is given. */
  static int answer(
      Session session,
      Optional<Path> file,
      Optional<Path> report,
      boolean json,
      UnitSystem wanted) {
    Optional<Session.Loaded> loaded = session.load(file);
    if (loaded.isEmpty()) {
      return Session.BAD_INPUT;
    }
    // The folder is tried first: nobody should wait for an answer that cannot be kept.
    Optional<Problem> closed = report.flatMap(Folders::problem);
    if (closed.isPresent()) {
      return session.refuse(closed.get());
    }
    Session.Loaded asked = loaded.get();
    UnitSystem units = wanted == null ? asked.shop().shop().units() : wanted;
    SizeAnswer answer;
    try {
      answer =
          new Sizing(asked.shop().shop(), asked.climates())
              .answer(asked.shop().warnings(), ToldProgress.onTerminal(session.err()));
    } catch (RoomTooHot hot) {
      return session.refuse(new Problem("rooms", hot.getMessage(), "a shop that can be worked in"));
    }
    session.out().print(json ? SizeJson.of(answer) + "\n" : SizeText.of(answer, units));
    session.out().flush();
    if (report.isPresent()) {
      try {
        Path page = HtmlReport.write(answer, units, report.get());
        // Standard output holds the JSON object and nothing else.
        PrintWriter told = json ? session.err() : session.out();
        if (!ChartImage.canDraw()) {
          told.println(HtmlReport.NO_CHARTS);
        }
        told.println("Report: " + page.toAbsolutePath());
      } catch (IOException e) {
        return session.refuse(
            new Problem(report.get().toString(), Folders.reason(e), Folders.TAKES));
      }
    }
    return Session.GOOD;
  }
}
