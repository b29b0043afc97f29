package org.shopclime.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.HtmlReport;
import org.shopclime.report.SizeJson;
import org.shopclime.report.SizeText;
import org.shopclime.run.RoomTooHot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
    name = "size",
    description = {
      "Is the cooling unit enough on the hot day, why, and what would change it?",
      "Prints one sentence, the facts behind it, where the heat comes from, and what single changes"
          + " would do."
    })
final class SizeVerb implements Callable<Integer> {

  private final Session session;

  @Mixin private final AskedShop asked = new AskedShop();

  SizeVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (asked.hasUnusedUnits()) {
      session.tellUnusedUnits("size");
    }
    return answer(session, asked.file(), asked.report(), asked.json(), asked.units());
  }

  /** Answers for a file, or the usual example; writes a report where a folder is given. */
  static int answer(
      Session session,
      Optional<Path> file,
      Optional<Path> report,
      boolean json,
      Optional<UnitSystem> wanted) {
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
    UnitSystem units = wanted.orElse(asked.shop().shop().units());
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
    return report.isEmpty()
        ? Session.GOOD
        : session.keep(report.get(), json, folder -> HtmlReport.write(answer, units, folder));
  }
}
