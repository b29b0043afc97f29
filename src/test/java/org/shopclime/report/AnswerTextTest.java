package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.shopclime.report.Answers.JUDGED;
import static org.shopclime.report.Answers.band;
import static org.shopclime.report.Answers.day;
import static org.shopclime.report.Answers.known;
import static org.shopclime.report.Answers.withUnit;
import static org.shopclime.report.Answers.withoutUnit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.plan.Verdict;
import org.shopclime.plan.WinterAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.LivedDay;
import org.shopclime.run.PullDown;
import org.shopclime.shop.Place;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** What the sentences say; the hours of the days are standard time, an hour behind the wall's. */
class AnswerTextTest {

  private static final UnitSystem IP = UnitSystem.INCH_POUND;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static String sentence(SizeAnswer answer) {
    return AnswerText.sentence(answer, IP);
  }

  private static OptionalDouble some(double value) {
    return OptionalDouble.of(value);
  }

  @Test
  void holds() {
    LivedDay day = day(hour -> 78, JUDGED, hour -> 0.6);
    SizeAnswer answer = withUnit(day, Verdict.HOLDS, some(103.2), some(10000), band(78, 78.8));
    assertThat(sentence(answer))
        .isEqualTo(
            "Holds 78 °F all working day on a 100 °F day (78–79 °F); keeps up until about 103 °F"
                + " outside.");
    assertThat(AnswerText.heading(answer)).isEqualTo("Enough");
  }

  @Test
  void holdsUnlessTheUnknownIsUnkind() {
    LivedDay day = day(hour -> 78, JUDGED, hour -> 0.6);
    assertThat(sentence(withUnit(day, Verdict.HOLDS, NONE, some(12000), band(78, 82))))
        .isEqualTo(
            "Holds 78 °F all working day on a 100 °F day, but up to 82 °F if what you do not know"
                + " turns out badly; keeps up even in the greatest heat tried.");
  }

  @Test
  void justHolds() {
    LivedDay day = day(hour -> 78.4, JUDGED, hour -> JUDGED.contains(hour) ? 1 : 0);
    SizeAnswer answer = withUnit(day, Verdict.JUST_HOLDS, some(101), some(12000), known(78.4));
    assertThat(sentence(answer))
        .isEqualTo(
            "Just holds 78 °F on a 100 °F day; runs flat out 9 am to noon and 1 pm to 5 pm; keeps"
                + " up until about 101 °F outside.");
    assertThat(AnswerText.heading(answer)).isEqualTo("Just enough");
  }

  @Test
  void driftsInTheAfternoon() {
    LivedDay day = day(hour -> hour < 14 ? 78 : 66 + hour, JUDGED, hour -> 1);
    SizeAnswer answer = withUnit(day, Verdict.DRIFTS, some(96), some(15000), band(81, 84));
    assertThat(AnswerText.range(answer, UnitSystem.INCH_POUND))
        .startsWith("81–84 °F because not everything is known; what would narrow it most: ")
        .endsWith(".");
    assertThat(
            AnswerText.range(
                withUnit(day, Verdict.DRIFTS, some(96), some(15000), band(81, 81.2)),
                UnitSystem.INCH_POUND))
        .as("nothing to tell")
        .isEmpty();
    assertThat(sentence(answer))
        .isEqualTo(
            "Holds 78 °F until 2 pm, then drifts to 82 °F by 5 pm (81–84 °F) on a 100 °F day; keeps"
                + " up until about 96 °F outside; 15,000 BTU/h would hold 78 °F.");
    assertThat(AnswerText.heading(answer)).isEqualTo("Not quite enough");
  }

  @Test
  void driftsFromTheFirstHourOn() {
    LivedDay day = day(hour -> hour == 11 || hour == 13 ? 78 : 80 + hour / 10.0, JUDGED, hour -> 1);
    assertThat(sentence(withUnit(day, Verdict.DRIFTS, some(96), NONE, known(81.6))))
        .isEqualTo(
            "Holds 78 °F only from 11 am to noon and 1 pm to 2 pm; reaches 82 °F by 5 pm on a"
                + " 100 °F day; keeps up until about 96 °F outside; no usual size up to 36,000"
                + " BTU/h would hold 78 °F: insulate first.");
  }

  @Test
  void neverCatchesUp() {
    LivedDay day = day(hour -> 70 + hour, JUDGED, hour -> 1);
    SizeAnswer answer = withUnit(day, Verdict.NEVER_CATCHES_UP, NONE, some(24000), band(80, 93));
    assertThat(sentence(answer))
        .isEqualTo(
            "Never catches up on a 100 °F day: 86 °F by 5 pm (80–93 °F) where you wish 78 °F; does"
                + " not keep up even on the coolest day tried; 24,000 BTU/h would hold 78 °F.");
    assertThat(AnswerText.heading(answer)).isEqualTo("Not enough");
  }

  @Test
  void withoutUnitAndBearableInTheMorning() {
    // what it feels like is 2 °F above the air here; work begins in the hour ending 8
    LivedDay day = day(hour -> 78 + hour, JUDGED, hour -> 0);
    SizeAnswer answer = withoutUnit(day, some(24000), band(90, 99));
    assertThat(sentence(answer))
        .isEqualTo(
            "Without cooling the room reaches 94 °F by 5 pm (90–99 °F) on a 100 °F day; bearable"
                + " (feels below 90 °F) until 10 am; 24,000 BTU/h would hold 78 °F.");
    assertThat(AnswerText.heading(answer)).isEqualTo("No cooling unit");
  }

  @Test
  void withoutUnitNeverOrAlwaysBearable() {
    LivedDay hot = day(hour -> 95, JUDGED, hour -> 0);
    assertThat(sentence(withoutUnit(hot, some(24000), known(95))))
        .contains("; it feels hotter than 90 °F from the first working hour on; ");
    LivedDay mild = day(hour -> 80, JUDGED, hour -> 0);
    assertThat(sentence(withoutUnit(mild, some(5000), known(80))))
        .contains("; bearable (feels below 90 °F) in all working hours; ");
  }

  @Test
  void withoutWorkingHoursNothingIsAsked() {
    LivedDay idle = day(hour -> hour == 16 ? 95 : 90, Set.of(), hour -> 0);
    SizeAnswer answer = withoutUnit(idle, NONE, known(90));
    assertThat(sentence(answer))
        .isEqualTo(
            "No working hours are given, so nothing is asked of any unit; the room is hottest by"
                + " 5 pm with 95 °F.");
    assertThat(AnswerText.heading(answer)).isEqualTo("No working hours");
    assertThat(AnswerText.quickSentence(answer.core(), answer.shop(), IP))
        .startsWith("No working hours");
  }

  @Test
  void siShowsTenthsOfDegrees() {
    LivedDay day = day(hour -> 70 + hour, JUDGED, hour -> 1);
    assertThat(
            AnswerText.sentence(
                withUnit(day, Verdict.NEVER_CATCHES_UP, some(90), some(24000), band(80, 93)),
                UnitSystem.SI))
        .isEqualTo(
            "Never catches up on a 37.8 °C day: 30 °C by 5 pm (26.7–33.9 °C) where you wish"
                + " 25.6 °C; keeps up until about 32.2 °C outside; 7,030 W would hold 25.6 °C.");
  }

  @Test
  void theQuickSentenceHasNoBandAndNoSearch() {
    LivedDay drifting = day(hour -> hour < 14 ? 78 : 66 + hour, JUDGED, hour -> 1);
    assertThat(quick(drifting))
        .isEqualTo("Holds 78 °F until 2 pm, then drifts to 82 °F by 5 pm on a 100 °F day.");
    assertThat(quick(day(hour -> 78, JUDGED, hour -> 0.5)))
        .isEqualTo("Holds 78 °F all working day on a 100 °F day.");
    assertThat(quick(day(hour -> 78, JUDGED, hour -> hour > 12 && hour < 16 ? 1 : 0.5)))
        .isEqualTo("Just holds 78 °F on a 100 °F day; runs flat out 1 pm to 4 pm.");
    assertThat(quick(day(hour -> 78, JUDGED, hour -> hour > 12 && hour < 15 ? 1 : 0.5)))
        .startsWith("Holds 78 °F all working day");
    assertThat(quick(day(hour -> 90, JUDGED, hour -> 1)))
        .isEqualTo("Never catches up on a 100 °F day: 90 °F by 10 am where you wish 78 °F.");
  }

  private static String quick(LivedDay day) {
    return AnswerText.quickSentence(
        Answers.core(Optional.of(day), Answers.usualWithout(), Answers.usualLines()),
        Answers.SHOP,
        IP);
  }

  @Test
  void factsWithUnit() {
    LivedDay day =
        day(hour -> hour < 14 ? 78 : 66 + hour, JUDGED, hour -> JUDGED.contains(hour) ? 1 : 0);
    SizeAnswer answer = withUnit(day, Verdict.DRIFTS, some(96), some(15000), band(81, 84));
    assertThat(AnswerText.facts(answer, IP))
        .containsExactly(
            "In the warmest working hour (4 to 5 pm): air 82 °F, humidity 50 %, dew point 62 °F;"
                + " with the warmth of walls and ceiling it feels like 84 °F.",
            "To stay at 78 °F all day, 9,600 BTU/h must be taken out from 3 to 4 pm, of which"
                + " 3,400 BTU/h is moisture. The largest parts: Leakage 52 %, West wall 42 % and"
                + " People 9 %.",
            "With what you do not know the warmest hour lies between 81 °F and 84 °F; what would"
                + " narrow it most: part of the time running (Compressor).",
            "With the unit off: 100 °F by 5 pm.",
            "The label says 12,000 BTU/h; in that hour the unit can take out 12,000 BTU/h, of which"
                + " 9,000 BTU/h is heat and 3,000 BTU/h moisture.",
            "It runs flat out 9 am to noon and 1 pm to 5 pm and uses about 7 kWh that day. About 19"
                + " pints of water come off its coil: a bucket under its drain tells, unless it blows the water out.",
            "After days off the room is at 90 °F when work starts; the unit, switched on then, has"
                + " it at 79 °F after 1 h 25 min; for the first hour of work to be held, switch it"
                + " on 1 h 10 min before.",
            "The published guide by floor area says 14,000 BTU/h for 576 ft² (15,400 BTU/h in much"
                + " sun), where 15,000 BTU/h is the smallest usual size that holds here: it is meant"
                + " for rooms of a home and knows neither your walls and weather nor your work.",
            "Heat on the worker at its worst: heat index 83 °F from 4 to 5 pm, wet-bulb globe 74 °F from"
                + " 4 to 5 pm; with the unit off, heat index 118 °F from 4 to 5 pm, wet-bulb globe 90 °F"
                + " from 4 to 5 pm (air moving at 0.67"
                + " mph). A fan that moves 4.5 mph past the bench would take 1 °F off the wet-bulb"
                + " globe figure. Estimates, not a measurement and not a medical verdict: go by OSHA"
                + " and NIOSH guidance on heat and ask your physician.",
            "All this is for the first working day after days off, the worse one: the shop starts"
                + " warm.",
            "In winter, at 29 °F outside and 65 °F inside, 9,500 BTU/h is lost; an electric heater"
                + " of 3,000 W covers it. In the station's typical year 99 % of the hours are"
                + " warmer than 31 °F; typical years leave out the coldest spells, so 2.3 °F is taken"
                + " off. If you know a colder night, type it.");
  }

  @Test
  void morningsAreToldInWords() {
    assertThat(morning(OptionalInt.empty(), OptionalInt.empty()))
        .isEqualTo(
            "After days off the room is at 88 °F when work starts; the unit, switched on then, has"
                + " it at 79 °F at no time before work ends; even on since midnight it does not"
                + " hold the first hour of work.");
    assertThat(morning(OptionalInt.of(0), OptionalInt.of(0)))
        .endsWith("; it need not be brought down; the first hour of work is held.");
    assertThat(morning(OptionalInt.of(55), OptionalInt.of(120)))
        .endsWith(" after 55 min; for the first hour of work to be held, switch it on 2 h before.");
  }

  private static String morning(OptionalInt minutes, OptionalInt lead) {
    SizeAnswer usual = Answers.example();
    UnitAnswer own = usual.unit().orElseThrow();
    UnitAnswer unit =
        new UnitAnswer(
            own.rated(),
            own.deliveredSensible(),
            own.deliveredLatent(),
            own.day(),
            own.keepsUpTo(),
            own.limitReason(),
            own.verdict(),
            Optional.of(new PullDown(Units.celsius(88), minutes, lead)),
            own.fan());
    SizeAnswer answer =
        new SizeAnswer(
            usual.shop(),
            usual.core(),
            Optional.of(unit),
            usual.recommended(),
            usual.band(),
            usual.changes(),
            usual.scenarios(),
            usual.winter(),
            usual.warnings());
    return AnswerText.facts(answer, IP).stream()
        .filter(fact -> fact.startsWith("After days off"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theColdThatTheOwnerSetIsCalledThat() {
    WinterAnswer typed =
        new WinterAnswer(Units.celsius(10), OptionalDouble.empty(), Units.celsius(65), 3000, 3500);
    assertThat(new WinterText(typed, IP).fact())
        .startsWith("In winter, at 10 °F outside")
        .endsWith("That cold is the one you set.");
  }

  @Test
  void aHotDayOfTheStationIsSaidToBeTypical() {
    SizeAnswer typed =
        withoutUnit(day(hour -> 78 + hour, JUDGED, hour -> 0), some(24000), band(90, 99));
    assertThat(AnswerText.facts(typed, IP)).noneMatch(fact -> fact.contains("rarest heat"));
    Shop shop = Answers.SHOP;
    SizeAnswer station =
        Answers.named(
            typed,
            shop.withPlace((Place) ShopParts.with(shop.place(), "typedPeak", Optional.empty())));
    assertThat(AnswerText.facts(station, IP))
        .contains(
            "The hot day is one of a typical year, and such years leave out the rarest heat: for"
                + " the day you fear, type its hottest hour with the place.");
  }

  @Test
  void factsOfDampDaysAndSpareCapacity() {
    LivedDay damp =
        new LivedDay(
            Answers.trace(hour -> 78, hour -> hour == 10 ? 0.65 : 0.6, hour -> 0.5),
            false,
            JUDGED,
            Units.celsius(78),
            Set.of());
    SizeAnswer answer = withUnit(damp, Verdict.HOLDS, some(110), some(8000), known(78));
    assertThat(AnswerText.facts(answer, IP))
        .contains(
            "Clammy: 65 % humidity at 11 am, dew point 62 °F.",
            "It never runs flat out and uses about 12 kWh that day. About 32 pints of water come off"
                + " its coil: a bucket under its drain tells, unless it blows the water out.",
            "The smallest usual size that still holds is 8,000 BTU/h.",
            "All this is for a working day that follows others like it; the first one after days"
                + " off is no worse.")
        .noneMatch(fact -> fact.contains("do not know"));
  }

  @Test
  void factsWithoutUnitSayNothingOfOne() {
    SizeAnswer answer =
        withoutUnit(day(hour -> 78 + hour, JUDGED, hour -> 0), some(24000), band(90, 99));
    assertThat(AnswerText.facts(answer, IP))
        .noneMatch(fact -> fact.contains("unit") || fact.contains("flat out"));
  }
}
