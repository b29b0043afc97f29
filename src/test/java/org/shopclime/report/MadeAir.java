package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.airline.AirCompressor;
import org.shopclime.airline.AirDemand;
import org.shopclime.airline.AirLine;
import org.shopclime.airline.AirTool;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.Candidate;
import org.shopclime.airline.ClosetWalls;
import org.shopclime.airline.Hazard;
import org.shopclime.airline.LineCaution;
import org.shopclime.airline.LineChange;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.PlaceNames;
import org.shopclime.airline.Placement;
import org.shopclime.airline.Ranking;
import org.shopclime.airline.Stages;
import org.shopclime.airline.VentPoint;
import org.shopclime.balance.Profile;
import org.shopclime.climate.Climates;
import org.shopclime.plan.HotDays;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** An answer on the compressor's places with figures that are known, made without reckoning. */
public final class MadeAir {

  /** Hottest working hour of each kind of place, °F, in their order. */
  static final List<Double> PEAKS =
      List.of(
          83.0, 206.0, 240.0, 236.0, 112.0, 103.0, 124.0, 102.0, 128.0, 113.0, 119.0, 142.0, 131.0);

  private static final int PEAK_HOUR = 16;

  private MadeAir() {}

  /**
   * The example shop with fumes in its room and a flue that is drawn upon.
   *
   * @return the answer
   */
  public static AirlineAnswer answer() {
    return answer(true);
  }

  /**
   * The example shop.
   *
   * @param hazards whether some places are excluded
   * @return the answer
   */
  public static AirlineAnswer answer(boolean hazards) {
    Shop shop = Examples.shop(Examples.USUAL);
    List<Candidate> candidates = new ArrayList<>();
    for (Placement placement : Placement.usual()) {
      candidates.add(candidate(placement.kind(), hazards));
    }
    List<PlaceAnswer> places = new ArrayList<>();
    for (Ranking.Ranked ranked : Ranking.of(candidates)) {
      Placement placement =
          Placement.usual().stream()
              .filter(each -> PlaceNames.of(each.kind()).equals(ranked.place().name()))
              .findFirst()
              .orElseThrow();
      places.add(place(placement, ranked));
    }
    AirCompressor machine = AirCompressor.usual(Units.wattsFromHorsepower(5), Stages.TWO);
    return new AirlineAnswer(
        shop,
        HotDays.of(shop.place(), Climates.load()),
        AirLine.plain(machine),
        AirDemand.of(AirTool.SANDER.usual()),
        places,
        changes(1),
        changes(2),
        List.of(
            new VentPoint(0.1 * 0.09290304, Units.celsius(166)),
            new VentPoint(0.5 * 0.09290304, Units.celsius(125)),
            new VentPoint(1 * 0.09290304, Units.celsius(112)),
            new VentPoint(2 * 0.09290304, Units.celsius(103)),
            new VentPoint(3 * 0.09290304, Units.celsius(98))),
        List.of(
            walls(Placement.Kind.CLOSED_CLOSET, 206, 240, 2500, 1600),
            walls(Placement.Kind.GRILLES_TO_ROOM, 112, 113, 4400, 4390),
            walls(Placement.Kind.OUTDOOR_LOOP, 127, 128, 900, 520)));
  }

  private static ClosetWalls walls(
      Placement.Kind kind, double bare, double insulated, double bareLoad, double insulatedLoad) {
    return new ClosetWalls(
        kind,
        new ClosetWalls.Case(Units.celsius(bare), Units.wattsFromBtuh(bareLoad), Units.celsius(80)),
        new ClosetWalls.Case(
            Units.celsius(insulated), Units.wattsFromBtuh(insulatedLoad), Units.celsius(79)),
        new ClosetWalls.Case(
            Units.celsius(bare + 6), Units.wattsFromBtuh(bareLoad + 300), Units.celsius(81)));
  }

  private static double peak(Placement.Kind kind) {
    return PEAKS.get(List.of(Placement.Kind.values()).indexOf(kind));
  }

  private static Candidate candidate(Placement.Kind kind, boolean hazards) {
    List<Hazard> found = new ArrayList<>();
    if (hazards && kind == Placement.Kind.IN_ROOM) {
      found.add(Hazard.FUMES);
      found.add(Hazard.FLAME);
    }
    if (hazards && kind == Placement.Kind.FAN_OUTDOORS) {
      found.add(Hazard.SHOP_UNDER_SUCTION);
    }
    return new Candidate(
        PlaceNames.of(kind),
        found,
        Units.celsius(peak(kind)),
        AirCompressor.MOST_AMBIENT,
        Units.celsius(79),
        Units.celsius(80),
        Units.celsius(peak(kind) + 15),
        Units.celsius(67),
        20 + peak(kind) / 100);
  }

  private static PlaceAnswer place(Placement placement, Ranking.Ranked ranked) {
    double peak = ranked.place().placePeak();
    Profile air = Profile.of(hour -> peak - Math.abs(hour - PEAK_HOUR));
    boolean hot = peak > AirCompressor.MOST_AMBIENT;
    return new PlaceAnswer(
        placement,
        ranked,
        air,
        PEAK_HOUR,
        Profile.of(hour -> 0.3),
        Profile.of(hour -> 1000.0),
        1000,
        true,
        Units.celsius(79),
        15,
        58,
        98,
        1.1,
        ranked.place().pressureDewPoint(),
        ranked.place().coldest(),
        10.5,
        10.5,
        -500,
        hot
            ? List.of(new LineCaution(LineCaution.Kind.HOT_PLACE, peak, AirCompressor.MOST_AMBIENT))
            : List.of());
  }

  /** Water of a tank of 100 g/h at once, and a line of 50 g/h; the day has eight hours. */
  private static List<LineChange> changes(int times) {
    List<LineChange> all = new ArrayList<>();
    for (LineChange.Kind kind : LineChange.Kind.values()) {
      boolean dryer =
          kind == LineChange.Kind.REFRIGERATED_DRYER || kind == LineChange.Kind.DESICCANT_DRYER;
      double tank = 100 * times;
      double line = dryer ? 0 : 50 * times;
      double dried = dryer ? 60 * times : 0;
      // What a desiccant takes out is blown off, not drained.
      double drained = kind == LineChange.Kind.DESICCANT_DRYER ? 0 : dried;
      double litres = 8 * (tank + line + drained) / 1000;
      all.add(new LineChange(kind, tank, line, dried, litres, dryer ? 3 : 40, 19));
    }
    return all;
  }

  /** A place of an answer by its kind. */
  static PlaceAnswer place(AirlineAnswer answer, Placement.Kind kind) {
    return new AirReasons(answer, UnitSystem.INCH_POUND).place(kind).orElseThrow();
  }
}
