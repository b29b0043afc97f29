package org.shopclime.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AirReport;
import org.shopclime.report.AirlineAsk;
import org.shopclime.report.AirlineJson;
import org.shopclime.report.AirlineText;
import org.shopclime.report.AirlineWords;
import org.shopclime.report.ChartImage;
import org.shopclime.report.HtmlReport;
import org.shopclime.run.RoomTooHot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "airline",
    description = {
      "Where should the compressor stand, and how much water comes into its air line?",
      "Compares the usual places on the hot day: how hot each gets, what room and unit get"
          + " of its heat, and where water drops out."
    })
final class AirlineVerb implements Callable<Integer> {

  private final Session session;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "Shop file (JSON); without it the usual example.")
  private Path file;

  @Option(names = "--json", description = "One JSON object instead of text, for machines.")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "ip|si",
      converter = UnitsWord.class,
      description = "Units of the text: ip (°F, BTU/h) or si (°C, W); else the file's own.")
  private UnitSystem units;

  @Option(
      names = "--report",
      paramLabel = "DIR",
      description = "Also write a page to read and print (air.html) and its figures (CSV) here.")
  private Path report;

  AirlineVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Optional<Session.Loaded> loaded = session.load(Optional.ofNullable(file));
    List<Problem> problems = new ArrayList<>();
    Optional.ofNullable(report).flatMap(Folders::problem).ifPresent(problems::add);
    session.tell(problems);
    if (loaded.isEmpty() || !problems.isEmpty()) {
      return Session.BAD_INPUT;
    }
    Session.Loaded asked = loaded.get();
    Optional<AirlineAnswer> answer;
    try {
      answer = AirlineAsk.answer(asked.shop().shop(), asked.climates());
    } catch (RoomTooHot hot) {
      return session.refuse(new Problem("rooms", hot.getMessage(), "a shop that can be worked in"));
    }
    UnitSystem wanted = units == null ? asked.shop().shop().units() : units;
    String text =
        json
            ? AirlineJson.of(answer) + "\n"
            : answer
                .map(found -> AirlineText.of(found, wanted))
                .orElse(AirlineWords.NO_COMPRESSOR + "\n");
    session.out().print(text);
    session.out().flush();
    return answer.isEmpty() || report == null ? Session.GOOD : keep(answer.get(), wanted);
  }

  private int keep(AirlineAnswer answer, UnitSystem wanted) {
    // Standard output holds the JSON object and nothing else.
    PrintWriter told = json ? session.err() : session.out();
    try {
      Path page = AirReport.write(answer, wanted, report);
      if (!ChartImage.canDraw()) {
        told.println(HtmlReport.NO_CHARTS);
      }
      told.println("Report: " + page.toAbsolutePath());
      told.flush();
      return Session.GOOD;
    } catch (IOException e) {
      return session.refuse(new Problem(report.toString(), Folders.reason(e), Folders.TAKES));
    }
  }
}
