package org.shopclime.app;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.shopclime.climate.Climates;
import org.shopclime.climate.PlaceSearch;
import org.shopclime.climate.PlacesFound;
import org.shopclime.climate.Station;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.PlaceList;
import org.shopclime.report.PlacesJson;
import org.shopclime.report.PlacesText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

@Command(
    name = PlacesVerb.NAME,
    description = {
      "Which weather stations are there for a place, and what is their climate?",
      "Takes a town, a state, the number of a station, or latitude and longitude with the west"
          + " negative."
    })
final class PlacesVerb implements Callable<Integer> {

  /** What an option that counts takes. */
  static final String TAKES_NUMBER = "a whole number from 1 up";

  static final String NAME = "places";

  private static final int USUAL_LIMIT = 10;
  private static final int LONGEST_SHOWN = 60;
  private static final double LOWEST = -500;
  private static final double HIGHEST = 6000;

  /** An option, unlike a number below nothing. */
  private static final Pattern OPTION = Pattern.compile("-(?![\\d.]).+");

  private final Session session;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "TEXT|LAT,LON",
      description = {
        "Such as: mobile; \"portland, or\"; TX; 722230; 30.7,-88.2; 30.7N 88.2W. Without quotes"
            + " several words are one text."
      })
  private List<String> words;

  @Option(
      names = "--limit",
      paramLabel = "N",
      description = "Show so many at most; without it 10, and all of a state.")
  private Integer limit;

  @Option(names = "--all", description = "Show all that fit, or every station by its distance.")
  private boolean all;

  @Option(
      names = "--elevation",
      paramLabel = "HEIGHT",
      description = "Height of your shop above the sea, such as \"1200 ft\", to compare with.")
  private String elevation;

  @Option(names = "--json", description = "One JSON object instead of text, for machines.")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "ip|si",
      converter = UnitsWord.class,
      description = "Units of the text: ip (°F, ft, mi), which is usual, or si (°C, m, km).")
  private UnitSystem units;

  PlacesVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    for (String word : words) {
      if (OPTION.matcher(word).matches()) {
        throw new UnmatchedArgumentException(spec.commandLine(), List.of(word));
      }
    }
    if (limit != null && limit < 1) {
      return session.refuse(new Problem(NAME + " --limit", "\"" + limit + "\"", TAKES_NUMBER));
    }
    if (limit != null && all) {
      return session.refuse(
          new Problem(
              NAME + " --limit", "\"" + limit + "\" beside --all", "one of the two, not both"));
    }
    if (units != null && json) {
      session.tellUnusedUnits(NAME);
    }
    OptionalDouble height = OptionalDouble.empty();
    if (elevation != null) {
      Reading reading = Quantities.read(Kind.LENGTH, elevation);
      if (reading instanceof Reading.Bad bad) {
        return session.refuse(bad.at(NAME + " --elevation"));
      }
      double metres = ((Reading.Good) reading).si();
      if (!(metres >= LOWEST && metres <= HIGHEST)) {
        return session.refuse(
            new Problem(
                NAME + " --elevation",
                "\"" + elevation + "\"",
                "a height above the sea of -1,640 to 19,685 ft (-500 to 6,000 m)"));
      }
      height = OptionalDouble.of(metres);
    }
    return show(height);
  }

  private int show(OptionalDouble height) {
    Climates climates = Climates.load();
    PlacesFound found = PlaceSearch.of(climates.stations(), String.join(" ", words));
    if (found instanceof PlacesFound.Nothing nothing) {
      return session.refuse(problem(nothing));
    }
    boolean everything = all || (limit == null && found instanceof PlacesFound.InState);
    PlaceList list =
        new PlaceList(
            found,
            found.places().stream()
                .limit(everything ? Long.MAX_VALUE : limit == null ? USUAL_LIMIT : limit)
                .map(
                    place ->
                        new PlaceList.Line(
                            place, climates.find(place.station().id()).orElseThrow()))
                .toList(),
            height);
    UnitSystem wanted = units == null ? UnitSystem.INCH_POUND : units;
    session.out().print(json ? PlacesJson.of(list) + "\n" : PlacesText.of(list, wanted));
    session.out().flush();
    return Session.GOOD;
  }

  private static Problem problem(PlacesFound.Nothing nothing) {
    String alike =
        nothing.alike().isEmpty()
            ? ""
            : "; spelt most alike: "
                + nothing.alike().stream().map(PlacesVerb::told).collect(Collectors.joining("; "));
    String found = nothing.found();
    if (found.length() > LONGEST_SHOWN) {
      found = found.substring(0, LONGEST_SHOWN) + "…\"";
    }
    return new Problem(NAME, found, nothing.takes() + alike);
  }

  private static String told(Station station) {
    return station.id() + " " + station.name() + ", " + station.state();
  }
}
