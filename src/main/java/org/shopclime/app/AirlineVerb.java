package org.shopclime.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AirlineAsk;
import org.shopclime.report.AirlineJson;
import org.shopclime.report.AirlineText;
import org.shopclime.report.AirlineWords;
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

  AirlineVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Optional<Session.Loaded> loaded = session.load(Optional.ofNullable(file));
    if (loaded.isEmpty()) {
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
    return Session.GOOD;
  }
}
