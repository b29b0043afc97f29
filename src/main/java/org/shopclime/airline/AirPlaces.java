package org.shopclime.airline;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.AirBooks;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.leakage.AirBalance;
import org.shopclime.leakage.AirStream;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.FlueKind;

/** Answers where the compressor of a shop stays cool, spares the unit and keeps its line dry. */
public final class AirPlaces {

  /** Free areas of each grille for which the curve is told, ft². */
  private static final List<Double> AREAS = List.of(0.1, 0.25, 0.5, 1.0, 1.5, 2.0, 3.0);

  private static final double SQUARE_FOOT = Trade.FOOT * Trade.FOOT;
  private static final double LONG_DROP_LEG = 50 * Trade.FOOT;
  private static final double LEAST_LEAKAGE = 1e-6;

  /** Closets with vents; each could have any of the walls below. */
  private static final Set<Placement.Kind> VENTED =
      EnumSet.of(
          Placement.Kind.GRILLES_TO_ROOM,
          Placement.Kind.FAN_TO_ROOM,
          Placement.Kind.STACK_OUTDOORS,
          Placement.Kind.FAN_OUTDOORS,
          Placement.Kind.OUTDOOR_LOOP,
          Placement.Kind.OUTDOOR_LOOP_FAN);

  private static final List<PlacedShop.Walls> CLOSET_WALLS =
      List.of(PlacedShop.Walls.CORNER, PlacedShop.Walls.INSULATED_CORNER, PlacedShop.Walls.STAIR);

  private final PlaceQuestion asked;
  private final OwnedLine owned;

  /** Models of the shop with its place on the hot and on the cold day; many places share walls. */
  private final Map<PlacedShop.Walls, ShopModel> hot = new ConcurrentHashMap<>();

  private final Map<PlacedShop.Walls, ShopModel> cold = new ConcurrentHashMap<>();

  private final Map<PlacedShop.Walls, PlacedShop> shops = new EnumMap<>(PlacedShop.Walls.class);

  private final PlaceWatch watch;
  private final AtomicInteger done = new AtomicInteger();

  private AirPlaces(PlaceQuestion asked, OwnedLine owned, PlaceWatch watch) {
    this.asked = asked;
    this.owned = owned;
    this.watch = watch;
    for (PlacedShop.Walls walls : PlacedShop.Walls.values()) {
      PlacedShop.of(asked.shop(), owned, asked.room(), walls)
          .ifPresent(placed -> shops.put(walls, placed));
    }
  }

  /**
   * All usual places that the shop has, compared.
   *
   * @param asked shop, days and unit
   * @return the answer; none where the shop has no compressor
   * @throws org.shopclime.run.RoomTooHot if a room where people work gets hotter than 80 °C
   */
  public static Optional<AirlineAnswer> answer(PlaceQuestion asked) {
    return answer(asked, PlaceWatch.silent());
  }

  /**
   * All usual places that the shop has, compared, while someone watches.
   *
   * @param asked shop, days and unit
   * @param watch told how far it is, and asked whether it is still wanted
   * @return the answer; none where the shop has no compressor
   * @throws org.shopclime.run.RoomTooHot if a room where people work gets hotter than 80 °C
   * @throws java.util.concurrent.CancellationException if the watch no longer wants it
   */
  public static Optional<AirlineAnswer> answer(PlaceQuestion asked, PlaceWatch watch) {
    return OwnedLine.of(asked.shop()).map(owned -> new AirPlaces(asked, owned, watch).answer());
  }

  /** Counts a run that is done. */
  private <T> T counted(T found) {
    int runs = 2 * placements().size() + AREAS.size() + 2 * VENTED.size();
    watch.at((double) done.incrementAndGet() / runs);
    return found;
  }

  private void goOn() {
    if (watch.isCancelled()) {
      throw new CancellationException();
    }
  }

  /** A place with what was found of it before it is ranked. */
  private record Tried(
      Placement placement, PlaceRun run, PlaceRun.Found found, Candidate candidate) {}

  private List<Placement> placements() {
    return Placement.usual().stream()
        .map(each -> each.withIntake(owned.intake()))
        .map(each -> each.withOpenRise(asked.shop().air().openRoofRise()))
        .filter(each -> shops.containsKey(PlacedShop.walls(each.kind())))
        .toList();
  }

  private AirlineAnswer answer() {
    Baseline base = baseline();
    List<Tried> tried = placements().parallelStream().map(each -> counted(attempt(each))).toList();
    List<Ranking.Ranked> ranking = Ranking.of(tried.stream().map(Tried::candidate).toList());
    List<PlaceAnswer> places =
        ranking.parallelStream().map(each -> counted(tell(each, of(tried, each), base))).toList();
    Tried best = of(tried, ranking.get(0));
    return new AirlineAnswer(
        asked.shop(),
        asked.day(),
        owned.line(),
        owned.demand(),
        places,
        changes(best, owned.demand()),
        changes(best, owned.blasting()),
        curve(tried),
        closets(places, tried, base));
  }

  private static Tried of(List<Tried> tried, Ranking.Ranked ranked) {
    return tried.stream()
        .filter(each -> each.candidate().equals(ranked.place()))
        .findFirst()
        .orElseThrow();
  }

  private PlaceRun hot(Placement placement) {
    PlacedShop.Walls walls = PlacedShop.walls(placement.kind());
    return run(hotModel(walls), walls, placement, asked.cooling());
  }

  private ShopModel hotModel(PlacedShop.Walls walls) {
    ShopModel.Holding holding =
        asked.cooling().isPresent() ? ShopModel.Holding.HELD : ShopModel.Holding.FREE;
    return hot.computeIfAbsent(
        walls, each -> ShopModel.cooling(shops.get(each).shop(), asked.day(), holding));
  }

  private PlaceRun cold(Placement placement) {
    PlacedShop.Walls walls = PlacedShop.walls(placement.kind());
    ShopModel model =
        cold.computeIfAbsent(
            walls,
            each ->
                ShopModel.heating(
                    shops.get(each).shop(), asked.day(), asked.winterDesign(), asked.winterWind()));
    return run(model, walls, placement, Optional.empty());
  }

  private PlaceRun run(
      ShopModel model, PlacedShop.Walls walls, Placement placement, Optional<Cooling> cooling) {
    int place = shops.get(walls).place();
    return new PlaceRun(model, asked.room(), place, placement, owned, cooling);
  }

  /** What the work room needs without the compressor, held at its wished temperatures, W. */
  private record Baseline(Profile summer, Profile winter) {}

  private Baseline baseline() {
    Placement here = Placement.usual().get(0);
    PlaceRun hot = hot(here);
    PlaceRun cold = cold(here);
    return new Baseline(
        hot.held(hot.nothing(), setPoint()).room().plant(),
        cold.held(cold.nothing(), winterRoom()).room().plant());
  }

  private double setPoint() {
    return asked.shop().rooms().get(asked.room()).setPoint();
  }

  private double winterRoom() {
    return asked.shop().work().winterTemperature();
  }

  private Tried attempt(Placement placement) {
    goOn();
    PlaceRun run = hot(placement);
    PlaceRun.Found found = run.lived();
    LivedDay lived = found.lived().orElseThrow().lived();
    int wettest = run.wettestHour(found);
    LineResult line = run.line(owned.line(), owned.demand(), placement.intake(), found, wettest);
    Candidate candidate =
        new Candidate(
            PlaceNames.of(placement.kind()),
            Hazard.of(facts(placement, run, found)),
            found.place().air().at(run.peakHour(found)),
            AirCompressor.MOST_AMBIENT,
            lived.peakTemperature(),
            setPoint() + LivedDay.TOLERANCE,
            line.pressureDewPoint(),
            run.sites(found, wettest).coldest(),
            run.kilowattHours(found) + cooling(lived));
    return new Tried(placement, run, found, candidate);
  }

  private static double cooling(LivedDay lived) {
    return lived.trace().power().mean() * Profile.HOURS / 1000;
  }

  private Hazard.Facts facts(Placement placement, PlaceRun run, PlaceRun.Found found) {
    CompressedAir air = asked.shop().air();
    boolean apart = placement.kind().isApart();
    boolean fumes =
        air.fumes() == CompressedAir.YesNo.YES && (!apart || placement.intake() == Intake.ROOM);
    FlueKind burner = asked.shop().flue();
    boolean flame =
        (air.flame() == CompressedAir.YesNo.YES || burner == FlueKind.UNVENTED)
            && placement.kind() == Placement.Kind.IN_ROOM;
    return new Hazard.Facts(fumes, flame, AirBooks.flue(burner), suction(run.mostThrough(found)));
  }

  /** Suction of the work room with all of its fans and the place's draught, Pa. */
  private double suction(double through) {
    List<AirStream> running = new ArrayList<>();
    for (Fan fan : asked.shop().rooms().get(asked.room()).fans()) {
      if (fan.way() != FanWay.BALANCED) {
        AirStream.Way way = fan.way() == FanWay.OUT ? AirStream.Way.OUT : AirStream.Way.IN;
        running.add(new AirStream(AirStream.Use.OTHER, way, fan.moved(), 0, 60));
      }
    }
    running.add(AirStream.out(AirStream.Use.CLOSET_FAN, through, 60));
    double leakage = hotModel(PlacedShop.Walls.ROOM).leakageArea(asked.room());
    return AirBalance.of(Math.max(LEAST_LEAKAGE, leakage), 0, running).suction();
  }

  private PlaceAnswer tell(Ranking.Ranked ranked, Tried tried, Baseline base) {
    goOn();
    PlaceRun run = tried.run();
    PlaceRun.Found found = tried.found();
    Placement placement = tried.placement();
    LivedDay lived = found.lived().orElseThrow().lived();
    Set<Integer> hours = run.hours();
    Profile held = run.held(found.machine(), setPoint()).room().plant();
    Profile toRoom = Profile.of(hour -> base.summer().at(hour) - held.at(hour));
    int wettest = run.wettestHour(found);
    LineResult line = run.line(owned.line(), owned.demand(), placement.intake(), found, wettest);
    Profile duty =
        Profile.of(
            hour ->
                run.use(hour)
                    * run.line(owned.line(), owned.demand(), placement.intake(), found, hour)
                        .running()
                        .duty());
    double litres = 0;
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      litres +=
          run.use(hour)
              * run.line(owned.line(), owned.demand(), placement.intake(), found, hour)
                  .litresToDrain(1);
    }
    int peakHour = run.peakHour(found);
    return new PlaceAnswer(
        placement,
        ranked,
        found.place().air(),
        peakHour,
        duty,
        toRoom,
        most(run, toRoom::at),
        asked.cooling().isPresent() && lived.holds(),
        lived.peakTemperature(),
        lived.peakHour(),
        line.tankWater(),
        line.lineWater(),
        litres,
        line.pressureDewPoint(),
        run.sites(found, wettest).coldest(),
        run.kilowattHours(found),
        cooling(lived),
        winter(placement, base, hours),
        cautions(placement, run, found, peakHour, wettest));
  }

  /** What is out of line in the hottest hour, and what water does in the wettest. */
  private List<LineCaution> cautions(
      Placement placement, PlaceRun run, PlaceRun.Found found, int hottest, int wettest) {
    List<LineCaution> all = new ArrayList<>();
    for (LineCaution each : cautions(placement, run, found, hottest)) {
      if (!each.kind().isOfWater()) {
        all.add(each);
      }
    }
    for (LineCaution each : cautions(placement, run, found, wettest)) {
      if (each.kind().isOfWater()) {
        all.add(each);
      }
    }
    LineCaution.frost(placement.kind(), asked.winterDesign()).ifPresent(all::add);
    return all;
  }

  private List<LineCaution> cautions(
      Placement placement, PlaceRun run, PlaceRun.Found found, int hour) {
    return LineCaution.of(
        owned.line(),
        owned.demand(),
        run.sites(found, hour),
        run.line(owned.line(), owned.demand(), placement.intake(), found, hour));
  }

  private double winter(Placement placement, Baseline base, Set<Integer> hours) {
    PlaceRun run = cold(placement);
    Profile plant = run.held(winterRoom()).room().plant();
    return hours.stream()
        .mapToDouble(hour -> base.winter().at(hour) - plant.at(hour))
        .average()
        .orElse(0);
  }

  /** The line as it is, and with each part or intake that it has not already. */
  private List<LineChange> changes(Tried best, AirDemand demand) {
    AirLine line = owned.line();
    Intake intake = best.placement().intake();
    CompressedAir has = asked.shop().air();
    List<LineChange> all = new ArrayList<>();
    all.add(change(best, LineChange.Kind.AS_IT_IS, line, demand, intake));
    if (has.aftercooler() == CompressedAir.YesNo.NO) {
      AirLine cooled = line.with(OwnedLine.aftercooler());
      all.add(change(best, LineChange.Kind.AFTERCOOLER, cooled, demand, intake));
    }
    AirLine dropped = line.with(OwnedLine.dropLeg(LONG_DROP_LEG));
    all.add(change(best, LineChange.Kind.DROP_LEG, dropped, demand, intake));
    if (has.dryer() != CompressedAir.AirDryer.REFRIGERATED) {
      AirLine dried = line.with(OwnedLine.refrigerated(line.machine()));
      all.add(change(best, LineChange.Kind.REFRIGERATED_DRYER, dried, demand, intake));
    }
    if (has.dryer() != CompressedAir.AirDryer.DESICCANT) {
      AirLine dried = line.with(OwnedLine.desiccant());
      all.add(change(best, LineChange.Kind.DESICCANT_DRYER, dried, demand, intake));
    }
    if (intake != Intake.ROOM) {
      all.add(change(best, LineChange.Kind.ROOM_INTAKE, line, demand, Intake.ROOM));
    }
    if (intake != Intake.OUTDOORS) {
      all.add(change(best, LineChange.Kind.OUTDOOR_INTAKE, line, demand, Intake.OUTDOORS));
    }
    return all;
  }

  private LineChange change(
      Tried best, LineChange.Kind kind, AirLine line, AirDemand demand, Intake intake) {
    PlaceRun run = best.run();
    int hour = run.wettestHour(best.found());
    LineResult result = run.line(line, demand, intake, best.found(), hour);
    double hours = 0;
    for (int each = 1; each <= Profile.HOURS; each++) {
      hours += run.use(each);
    }
    return new LineChange(
        kind,
        result.tankWater(),
        result.lineWater(),
        result.dryerWater(),
        result.litresToDrain(Math.min(24, hours)),
        result.pressureDewPoint(),
        run.sites(best.found(), hour).coldest());
  }

  private List<ClosetWalls> closets(List<PlaceAnswer> places, List<Tried> tried, Baseline base) {
    Map<Placement.Kind, ClosetWalls.Case> told = new EnumMap<>(Placement.Kind.class);
    for (PlaceAnswer place : places) {
      told.put(
          place.placement().kind(),
          new ClosetWalls.Case(place.placePeak(), place.roomLoad(), place.indoorPeak()));
    }
    List<ClosetWalls> all = new ArrayList<>();
    all.add(
        new ClosetWalls(
            Placement.Kind.CLOSED_CLOSET,
            told.get(Placement.Kind.CLOSED_CLOSET),
            told.get(Placement.Kind.CLOSED_INSULATED_CLOSET),
            told.get(Placement.Kind.UNDER_STAIR)));
    all.addAll(
        tried.parallelStream()
            .filter(each -> VENTED.contains(each.placement().kind()))
            .map(each -> walls(each, told.get(each.placement().kind()), base))
            .toList());
    return all;
  }

  private ClosetWalls walls(Tried as, ClosetWalls.Case own, Baseline base) {
    Placement.Kind kind = as.placement().kind();
    List<ClosetWalls.Case> cases =
        CLOSET_WALLS.stream()
            .map(walls -> walls == PlacedShop.walls(kind) ? own : counted(within(walls, as, base)))
            .toList();
    return new ClosetWalls(kind, cases.get(0), cases.get(1), cases.get(2));
  }

  /** A place as tried, within other walls. */
  private ClosetWalls.Case within(PlacedShop.Walls walls, Tried as, Baseline base) {
    goOn();
    PlaceRun run = run(hotModel(walls), walls, as.placement(), asked.cooling());
    PlaceRun.Found found = run.lived(Optional.of(as.found()));
    Profile held = run.held(found.machine(), setPoint()).room().plant();
    return new ClosetWalls.Case(
        found.place().air().at(run.peakHour(found)),
        most(run, hour -> base.summer().at(hour) - held.at(hour)),
        found.lived().orElseThrow().lived().peakTemperature());
  }

  /** The most of a figure in the hours in which the machine is in use. */
  private static double most(PlaceRun run, IntToDoubleFunction figure) {
    return run.hours().stream().mapToDouble(figure::applyAsDouble).max().orElse(0);
  }

  private List<VentPoint> curve(List<Tried> tried) {
    Optional<PlaceRun.Found> near =
        tried.stream()
            .filter(each -> each.placement().kind() == Placement.Kind.GRILLES_TO_ROOM)
            .map(Tried::found)
            .findFirst();
    Placement grilles =
        Placement.usual().stream()
            .filter(each -> each.kind() == Placement.Kind.GRILLES_TO_ROOM)
            .findFirst()
            .orElseThrow()
            .withIntake(owned.intake());
    return AREAS.parallelStream()
        .map(
            feet -> {
              goOn();
              double area = feet * SQUARE_FOOT;
              Placement at =
                  grilles.withVenting(
                      Venting.openings(
                          Side.ROOM, Side.ROOM, area, grilles.venting().openings().height()));
              PlaceRun run = hot(at);
              PlaceRun.Found found = run.lived(near);
              return counted(new VentPoint(area, found.place().air().at(run.peakHour(found))));
            })
        .toList();
  }
}
