package org.shopclime.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shopclime.climate.WeatherFile;
import org.shopclime.climate.WeatherReading;
import org.shopclime.plan.Progress;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.Yearly;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.YearCsv;
import org.shopclime.report.YearJson;
import org.shopclime.report.YearReport;
import org.shopclime.report.YearText;
import org.shopclime.run.RoomTooHot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "year",
    description = {
      "What does a typical year take, month by month, and how warm does the shop get?",
      "Runs the typical year of the shop's station, or a file of hours that you have."
    })
final class YearVerb implements Callable<Integer> {

  private static final String OUT = "a file that can be written, in a folder that is there";

  private final Session session;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "Shop file (JSON); without it the usual example. Its station must be known.")
  private Path file;

  @Option(
      names = "--weather",
      paramLabel = "TMY3.csv",
      description = {
        "Hours of a typical year (TMY3, plain or packed). Sun, ground and air are then those of the"
            + " file's station, and peaks are told."
      })
  private Path weather;

  @Option(
      names = "--hourly",
      paramLabel = "OUT.csv",
      description = "Also write the 8,760 hours of air, heat and power here.")
  private Path hourly;

  @Option(names = "--json", description = "One JSON object instead of text, for machines.")
  private boolean json;

  @Option(
      names = "--report",
      paramLabel = "DIR",
      description =
          "Also write a page to read and print (year.html) and its months (year-months.csv) here.")
  private Path report;

  @Option(
      names = "--units",
      paramLabel = "ip|si",
      converter = UnitsWord.class,
      description = "Units of text, report and hours: ip (°F) or si (°C); else the file's own.")
  private UnitSystem units;

  YearVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (units != null && json && report == null && hourly == null) {
      session.tellUnusedUnits("year");
    }
    Optional<Session.Loaded> loaded = session.load(Optional.ofNullable(file));
    Optional<WeatherReading> reading = Optional.ofNullable(weather).map(WeatherFile::read);
    List<Problem> problems = new ArrayList<>();
    if (reading.isPresent() && reading.get() instanceof WeatherReading.Bad bad) {
      problems.addAll(bad.problems());
    }
    // Places to write to are tried first: nobody should wait for an answer that cannot be kept.
    Optional.ofNullable(hourly).flatMap(this::fileProblem).ifPresent(problems::add);
    Optional.ofNullable(report).flatMap(Folders::problem).ifPresent(problems::add);
    session.tell(problems);
    if (loaded.isEmpty() || !problems.isEmpty()) {
      return Session.BAD_INPUT;
    }
    try {
      return answer(loaded.get(), reading.map(good -> (WeatherReading.Good) good));
    } catch (RoomTooHot hot) {
      return session.refuse(new Problem("rooms", hot.getMessage(), "a shop that can be worked in"));
    }
  }

  private int answer(Session.Loaded asked, Optional<WeatherReading.Good> hours) {
    UnitSystem wanted = units == null ? asked.shop().shop().units() : units;
    Progress progress = ToldProgress.onTerminal(session.err());
    Yearly yearly = new Yearly(asked.shop().shop(), asked.climates());
    Optional<YearAnswer> found =
        hours.isPresent()
            ? Optional.of(
                yearly.ofHours(
                    String.valueOf(weather.getFileName()),
                    hours.get(),
                    asked.shop().warnings(),
                    progress))
            : yearly.ofDayTypes(asked.shop().warnings(), progress);
    if (found.isEmpty()) {
      return session.refuse(
          new Problem(
              "place.station",
              "a station without a typical year",
              "a station with one, or hours by --weather"));
    }
    YearAnswer answer = found.get();
    YearText.ofWeather(answer, wanted)
        .forEach(note -> session.err().println(Session.oneLine("Weather: " + note)));
    session.out().print(json ? YearJson.of(answer) + "\n" : YearText.of(answer, wanted));
    session.out().flush();
    return keep(answer, wanted);
  }

  private int keep(YearAnswer answer, UnitSystem wanted) {
    if (hourly != null) {
      try {
        YearCsv.writeHours(answer, wanted, hourly);
        session.told(json).println("Hours: " + hourly.toAbsolutePath());
      } catch (IOException e) {
        return session.refuse(new Problem(hourly.toString(), Folders.reason(e), OUT));
      }
    }
    return report == null
        ? Session.GOOD
        : session.keep(report, json, folder -> YearReport.write(answer, wanted, folder));
  }

  private Optional<Problem> fileProblem(Path out) {
    return fileFault(out).map(fault -> new Problem(out.toString(), fault, OUT));
  }

  private Optional<String> fileFault(Path out) {
    Path target = out.toAbsolutePath();
    Path folder = target.getParent();
    if (folder == null || Files.isDirectory(target)) {
      return Optional.of("a folder");
    }
    if (!Files.isDirectory(folder)) {
      return Optional.of("no folder " + folder);
    }
    if (Files.isSymbolicLink(target)) { // such as /dev/stdout: moving onto it would replace it
      return Optional.of("a link to another file");
    }
    if (Files.exists(target) && !(Files.isRegularFile(target) && Files.isWritable(target))) {
      return Optional.of("something that cannot be written over");
    }
    if (isSame(target, file)) {
      return Optional.of("the shop file itself");
    }
    if (isSame(target, weather)) {
      return Optional.of("the weather file itself");
    }
    return Folders.trial(folder);
  }

  private static boolean isSame(Path out, Path input) {
    try {
      return input != null && Files.exists(out) && Files.isSameFile(out, input);
    } catch (IOException unreadable) {
      return false;
    }
  }
}
