package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.DrierAnswer;
import org.shopclime.plan.DustAnswer;
import org.shopclime.plan.PadsAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.PullDown;
import org.shopclime.run.Trace;

/** The facts behind the answer's sentence. */
final class AnswerFacts {

  /** Relative humidity above which air is called clammy and mold may grow (EPA mold guidance). */
  private static final double CLAMMY = 0.6;

  private static final int LARGEST = 3;

  private final SizeAnswer answer;
  private final CoreAnswer core;
  private final UnitSystem units;
  private final WallClock clock;
  private final LivedDay day;

  AnswerFacts(SizeAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.core = answer.core();
    this.units = units;
    this.clock = new WallClock(answer.shop().work(), core.hotDay().date());
    this.day = core.unit().orElse(core.without());
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    boolean asked = !day.judged().isEmpty();
    if (asked) {
      air(lines);
      load(lines);
      ToolText.fact(answer.shop(), core.hotDay().pressure()).ifPresent(lines::add);
      band(lines);
      core.unit().ifPresent(unit -> lines.add(without()));
      answer.unit().ifPresent(unit -> unit(lines, unit));
      FloorAreaGuide.of(answer).map(guide -> guide.fact(answer, units)).ifPresent(lines::add);
      new WorkerText(answer).fact(units).ifPresent(lines::add);
      DustAnswer.of(answer).map(dust -> DustText.fact(dust, units)).ifPresent(lines::add);
    }
    DrierAnswer.of(answer).map(dry -> DrierText.fact(dry, units)).ifPresent(lines::add);
    SupplyText.fact(answer).ifPresent(lines::add);
    if (asked) {
      days(lines);
    } else {
      load(lines);
    }
    if (asked && answer.shop().place().typedPeak().isEmpty()) {
      lines.add(
          "The hot day is one of a typical year, and such years leave out the rarest heat: for the"
              + " day you fear, type its hottest hour with the place.");
    }
    if (answer.winter().loss() > 0) {
      lines.add(new WinterText(answer.winter(), units).fact());
    }
    return lines;
  }

  private void air(List<String> lines) {
    Trace trace = day.trace();
    int hour = day.peakHour();
    lines.add(
        "In the warmest working hour ("
            + clock.during(hour)
            + "): air "
            + temperature(trace.air().at(hour))
            + ", humidity "
            + Shown.percent(trace.relativeHumidity().at(hour))
            + ", dew point "
            + temperature(trace.dewPoint().at(hour))
            + "; with the warmth of walls and ceiling it feels like "
            + temperature(trace.operative().at(hour))
            + ".");
    int damp = 0;
    for (int judged : WallClock.lived(day.judged())) {
      double humidity = trace.relativeHumidity().at(judged);
      if (humidity > CLAMMY && (damp == 0 || humidity > trace.relativeHumidity().at(damp))) {
        damp = judged;
      }
    }
    if (damp > 0) {
      lines.add(
          "Clammy: "
              + Shown.percent(trace.relativeHumidity().at(damp))
              + " humidity at "
              + clock.end(damp)
              + ", dew point "
              + temperature(trace.dewPoint().at(damp))
              + ".");
    }
  }

  private void unit(List<String> lines, UnitAnswer unit) {
    double delivered = unit.deliveredSensible() + unit.deliveredLatent();
    PadsAnswer.of(answer.shop(), core)
        .ifPresent(pads -> lines.add(PadsText.fact(pads, unit.day().trace(), units)));
    if (delivered > 0 && unit.rated() > 0) {
      lines.add(
          PortableText.label(answer, units)
              + "; in that hour the unit can take out "
              + power(delivered)
              + ", of which "
              + power(unit.deliveredSensible())
              + " is heat and "
              + power(unit.deliveredLatent())
              + " moisture"
              + (delivered > unit.rated() ? "; a warm, damp room gives a coil more to do." : "."));
    }
    String flatOut = Telling.flatOutHours(unit.day().trace(), clock);
    double energy = 3600 * 24 * unit.day().trace().power().mean() / 3.6e6;
    lines.add(
        (flatOut.isEmpty() ? "It never runs flat out" : "It runs flat out " + flatOut)
            + " and uses about "
            + Math.round(energy)
            + " kWh that day."
            + CoilWater.told(answer.shop(), unit.day().trace(), units));
    unit.day().mostStarts().ifPresent(starts -> lines.add(starts(starts)));
    unit.fan().ifPresent(fan -> lines.add(FanText.fact(fan, units)));
    unit.pullDown().ifPresent(morning -> lines.add(morning(morning)));
    if (unit.day().holds()
        && answer.recommended().isPresent()
        && answer.recommended().getAsDouble() < unit.rated() - 1) {
      lines.add(
          "The smallest usual size that still holds is "
              + power(answer.recommended().getAsDouble())
              + ".");
    }
    PortableText.sizes(answer, units).ifPresent(lines::add);
  }

  private String starts(LivedDay.Starts most) {
    String told =
        "From "
            + clock.during(most.hour()).replaceFirst("^from ", "")
            + " it starts about "
            + Math.round(most.starts())
            + " times, "
            + Math.max(1, Math.round(most.minutes()))
            + " min each";
    if (!most.tooMany()) {
      return told + ".";
    }
    return told
        + (answer.isTooBig() ? ": it is too big for this shop" : "")
        + ". Short runs wear the compressor, cost power and leave the air damp, more so if the fan"
        + " runs on between them; "
        + (answer.isTooBig() ? "the smaller size that holds" : "a unit of variable speed")
        + " does better.";
  }

  private String morning(PullDown morning) {
    String held = temperature(day.setPoint() + LivedDay.TOLERANCE);
    String start =
        "After days off the room is at " + temperature(morning.start()) + " when work starts";
    String down =
        morning.minutes().isEmpty()
            ? "the unit, switched on then, has it at " + held + " at no time before work ends"
            : morning.minutes().getAsInt() == 0
                ? "it need not be brought down"
                : "the unit, switched on then, has it at "
                    + held
                    + " after "
                    + Shown.duration(morning.minutes().getAsInt());
    String on =
        morning.lead().isEmpty()
            ? "even on since midnight it does not hold the first hour of work"
            : morning.lead().getAsInt() == 0
                ? "the first hour of work is held"
                : "for the first hour of work to be held, switch it on "
                    + Shown.duration(morning.lead().getAsInt())
                    + " before";
    return start
        + "; "
        + down
        + "; "
        + on
        + "."
        + morning.soaked().map(soaked -> " " + soaked(soaked, held)).orElse("");
  }

  /** A shop come to on the afternoon of a day off. */
  private String soaked(PullDown.Soaked soaked, String held) {
    return "Come to it on a day off at its hottest, "
        + temperature(soaked.start())
        + " from "
        + clock.during(soaked.hour())
        + ", and switch the unit on: it "
        + (soaked.minutes().isEmpty()
            ? "is not at " + held + " before the day ends."
            : "is at "
                + held
                + " after "
                + Shown.duration(soaked.minutes().getAsInt())
                + ", if no work goes on.");
  }

  private void load(List<String> lines) {
    PeakLines peak = PeakLines.of(core.load());
    List<String> largest =
        peak.sorted().stream()
            .filter(line -> line.share() > 0)
            .limit(LARGEST)
            .map(line -> Shown.line(line.name()) + " " + Shown.percent(line.share()))
            .toList();
    if (!largest.isEmpty()) {
      lines.add(
          "To stay at "
              + temperature(day.setPoint())
              + " all day, "
              + power(peak.total())
              + " must be taken out from "
              + clock.during(peak.hour())
              + ", of which "
              + power(peak.latent())
              + " is moisture. The largest parts: "
              + Shown.row(largest)
              + ".");
    }
  }

  private void band(List<String> lines) {
    answer
        .band()
        .decidedBy()
        .ifPresent(
            what ->
                lines.add(
                    "With what you do not know the warmest hour lies between "
                        + temperature(answer.band().low())
                        + " and "
                        + temperature(answer.band().high())
                        + "; what would narrow it most: "
                        + Shown.line(
                            what.substring(0, 1).toLowerCase(Locale.ROOT) + what.substring(1))
                        + "."));
  }

  private void days(List<String> lines) {
    lines.add(
        day.firstDay()
            ? "All this is for the first working day after days off, the worse one: the shop starts"
                + " warm."
            : "All this is for a working day that follows others like it; the first one after days off"
                + " is no worse.");
  }

  private String without() {
    LivedDay without = core.without();
    return "With the unit off: "
        + temperature(without.peakTemperature())
        + " by "
        + clock.end(without.peakHour())
        + ".";
  }

  private String power(double watts) {
    return Shown.power(watts, units);
  }

  private String temperature(double celsius) {
    return Shown.temperature(celsius, units);
  }
}
