package org.shopclime.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.plan.Verdict;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.Shop;

/** The answer in one sentence, and the facts behind it, in a shop owner's words. */
public final class AnswerText {

  /**
   * Operative temperature from which work is no longer called bearable, °C: 90 °F. A figure of ours
   * to have one word for a warm day; no limit of any authority.
   */
  public static final double BEARABLE = Units.celsius(90);

  private static final String NO_HOURS = "No working hours";
  private static final String NO_UNIT = "No cooling unit";

  private AnswerText() {}

  /**
   * The answer in one sentence. Times are by the clock on the wall.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return such as "Holds 78 °F until 2 pm, then drifts to 82 °F by 5 pm …"
   */
  public static String sentence(SizeAnswer answer, UnitSystem units) {
    CoreAnswer core = answer.core();
    Telling telling =
        new Telling(core, answer.shop(), units, Optional.of(answer.band()), verdict(answer));
    if (telling.nothingAsked()) {
      return telling.nothing();
    }
    StringBuilder text = new StringBuilder(telling.opening());
    answer.unit().ifPresent(unit -> text.append(telling.keepsUpTo(unit)));
    if (!core.unit().map(LivedDay::holds).orElse(false)) {
      text.append("; ").append(wouldHold(answer.recommended(), telling));
    }
    return text.append('.').toString();
  }

  /**
   * The part of the answer that is known at once, before sizes and unknowns are searched.
   *
   * @param core heart of the answer
   * @param shop the shop asked about
   * @param units system of units to show
   * @return one sentence
   */
  public static String quickSentence(CoreAnswer core, Shop shop, UnitSystem units) {
    Telling telling =
        new Telling(core, shop, units, Optional.empty(), core.unit().map(Verdict::quick));
    return telling.nothingAsked() ? telling.nothing() : telling.opening() + ".";
  }

  /**
   * The facts behind the sentence, each a sentence of its own.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return one line for each fact
   */
  public static List<String> facts(SizeAnswer answer, UnitSystem units) {
    return new AnswerFacts(answer, units).lines();
  }

  /**
   * What the range in the sentence stands for, and what would narrow it.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return such as "79–89 °F because not everything is known; …"; empty without a range
   */
  public static String range(SizeAnswer answer, UnitSystem units) {
    String range = Shown.range(answer.band().low(), answer.band().high(), units);
    if (!range.contains("–") || nothingAsked(answer.core())) {
      return "";
    }
    return answer
        .band()
        .decidedBy()
        .map(
            what ->
                range
                    + " because not everything is known; what would narrow it most: "
                    + Character.toLowerCase(what.charAt(0))
                    + Shown.line(what.substring(1))
                    + ".")
        .orElse("");
  }

  /**
   * The verdict in two or three words, for a heading.
   *
   * @param answer the whole answer
   * @return such as "Just enough"
   */
  public static String heading(SizeAnswer answer) {
    return nothingAsked(answer.core())
        ? NO_HOURS
        : verdict(answer).map(AnswerText::words).orElse(NO_UNIT);
  }

  /**
   * The verdict that is known at once, in two or three words.
   *
   * @param core heart of the answer
   * @return such as "Just enough"
   */
  public static String quickHeading(CoreAnswer core) {
    return nothingAsked(core)
        ? NO_HOURS
        : core.unit().map(Verdict::quick).map(AnswerText::words).orElse(NO_UNIT);
  }

  private static boolean nothingAsked(CoreAnswer core) {
    return core.unit().orElse(core.without()).judged().isEmpty();
  }

  private static String words(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "Enough";
      case JUST_HOLDS -> "Just enough";
      case DRIFTS -> "Not quite enough";
      case NEVER_CATCHES_UP -> "Not enough";
    };
  }

  private static Optional<Verdict> verdict(SizeAnswer answer) {
    return answer.unit().map(UnitAnswer::verdict);
  }

  private static String wouldHold(OptionalDouble recommended, Telling telling) {
    if (recommended.isPresent()) {
      return telling.power(recommended.getAsDouble()) + " would hold " + telling.wished();
    }
    List<Double> sizes = Cooling.sizes();
    return "no usual size up to "
        + telling.power(sizes.get(sizes.size() - 1))
        + " would hold "
        + telling.wished()
        + ": insulate first";
  }
}
