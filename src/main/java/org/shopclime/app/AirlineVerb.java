package org.shopclime.app;

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
import org.shopclime.run.RoomTooHot;
import org.shopclime.shop.Shop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
    name = "airline",
    description = {
      "Where should the compressor stand, and how much water comes into its air line?",
      "Compares the usual places on the hot day: how hot each gets, what room and unit get"
          + " of its heat, and where water drops out."
    })
final class AirlineVerb implements Callable<Integer> {

  private final Session session;

  @Mixin private final AskedShop asked = new AskedShop();

  AirlineVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (asked.hasUnusedUnits()) {
      session.tellUnusedUnits("airline");
    }
    Optional<Session.Loaded> loaded = session.load(asked.file());
    List<Problem> problems = new ArrayList<>();
    asked.report().flatMap(Folders::problem).ifPresent(problems::add);
    session.tell(problems);
    if (loaded.isEmpty() || !problems.isEmpty()) {
      return Session.BAD_INPUT;
    }
    Shop shop = loaded.get().shop().shop();
    Optional<AirlineAnswer> answer;
    try {
      answer =
          AirlineAsk.answer(
              shop,
              loaded.get().climates(),
              new ToldPlaces(ToldProgress.onTerminal(session.err())));
    } catch (RoomTooHot hot) {
      return session.refuse(new Problem("rooms", hot.getMessage(), "a shop that can be worked in"));
    }
    UnitSystem units = asked.units().orElse(shop.units());
    String text =
        asked.json()
            ? AirlineJson.of(answer) + "\n"
            : answer
                .map(found -> AirlineText.of(found, units))
                .orElse(AirlineWords.NO_COMPRESSOR + "\n");
    session.out().print(text);
    session.out().flush();
    if (answer.isEmpty() && asked.report().isPresent()) {
      session.told(asked.json()).println("No report: there is nothing to compare.");
      return Session.GOOD;
    }
    return asked.report().isEmpty()
        ? Session.GOOD
        : session.keep(
            asked.report().get(),
            asked.json(),
            folder -> AirReport.write(answer.get(), units, folder));
  }
}
