package org.shopclime.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.leakage.AirBalance;
import org.shopclime.leakage.AirCost;
import org.shopclime.leakage.AirStream;
import org.shopclime.leakage.DoorForce;
import org.shopclime.leakage.Flue;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorType;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.FlueKind;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;

/**
 * Makes the picture of a room's air from leaks, fans and doors, slot by slot through an hour.
 *
 * <p>Source: {@link AirBalance} in each slot; heat and water by {@link AirCost}, charged as the
 * lines of the load are ({@link AirOpenings}), which leaves the same sums.
 */
public final class AirBooks {

  private static final double LEAST_AREA = 1e-6;
  private static final double MOST_PRESSURE = 1e4;
  private static final double HANDLE = 0.07;
  private static final double WIDEST = 3;
  private static final double HIGHEST = 5;

  private final ShopModel model;
  private final Shop shop;
  private final int room;
  private final RoomAir air;
  private final List<DaySlots> runs;
  private final AirState indoors;

  AirBooks(ShopModel model, Shop shop, int room, List<DaySlots> runs) {
    this.model = model;
    this.shop = shop;
    this.room = room;
    this.air = model.skeleton().air().get(room);
    this.runs = runs;
    this.indoors =
        new AirState(model.setPoint(room), model.wishedHumidityRatio(room), model.pressure());
  }

  /** The picture in the working hour that costs most; of the hottest hour if nobody works. */
  AirBook make() {
    int best = -1;
    double most = 0;
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      boolean worked = model.working().mean((hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR) > 0;
      double cost = worked ? cost(total(hour), hour).total() : 0;
      if (worked && (best < 0 || cost > most)) {
        best = hour;
        most = cost;
      }
    }
    if (best < 0) {
      best = Profile.of(model::outdoor).peakHour();
    }
    return new AirBook(room, best, indoors.dryBulb(), model.outdoor(best), paths(best), suction());
  }

  private double total(int hour) {
    return model
        .streams()
        .total(
            room,
            indoors.dryBulb(),
            DayKind.WORKING,
            (hour - 1) * DaySlots.PER_HOUR,
            DaySlots.PER_HOUR);
  }

  private AirState outdoors(int hour) {
    return new AirState(model.outdoor(hour), model.outdoorHumidityRatio(hour), model.pressure());
  }

  /** What a mass flow of outdoor air brings, kg/s of dry air. */
  private AirCost cost(double mass, int hour) {
    return AirCost.of(mass / indoors.dryAirDensity(), indoors, outdoors(hour));
  }

  private List<AirPath> paths(int hour) {
    double density = model.streams().density(hour);
    double[] mass = new double[model.components().size()];
    int first = (hour - 1) * DaySlots.PER_HOUR;
    model.streams().split(room, indoors.dryBulb(), DayKind.WORKING, first, DaySlots.PER_HOUR, mass);
    double leak = mass[air.leakage().index()] / density;
    double leaksIn = 0;
    double leaksOut = 0;
    for (int slot = first; slot < first + DaySlots.PER_HOUR; slot++) {
      AirBalance balance = balance(leak, slot, false);
      leaksIn += balance.leaksIn() / DaySlots.PER_HOUR;
      leaksOut += balance.leaksOut() / DaySlots.PER_HOUR;
    }
    List<AirPath> paths = new ArrayList<>();
    paths.add(
        path(
            AirPath.Kind.LEAKS,
            air.leakage().name(),
            "",
            FanUse.OTHER,
            FanWay.BALANCED,
            new double[] {leaksIn, leaksIn, leaksOut, 0, 0},
            cost(mass[air.leakage().index()], hour)));
    for (int i = 0; i < air.fans().size(); i++) {
      Fan fan = air.fans().get(i).fan();
      double moved = fan.moved() * runs.get(i).mean(first, DaySlots.PER_HOUR);
      double exchanged = fan.exchanged() * runs.get(i).mean(first, DaySlots.PER_HOUR);
      boolean out = fan.way() == FanWay.OUT;
      paths.add(
          path(
              AirPath.Kind.FAN,
              fan.name(),
              place(i),
              fan.use(),
              fan.way(),
              new double[] {
                moved,
                out ? 0 : exchanged,
                fan.way() == FanWay.IN ? 0 : exchanged,
                out ? moved - exchanged : 0,
                fan.way() == FanWay.FILTERED_RETURN ? moved : 0
              },
              cost(mass[air.fans().get(i).component().index()], hour)));
    }
    for (RoomAir.DoorPlace door : air.doors()) {
      double flow = mass[door.component().index()] / density;
      paths.add(
          path(
              AirPath.Kind.DOOR,
              door.component().name(),
              "rooms[" + room + "]",
              FanUse.OTHER,
              FanWay.BALANCED,
              new double[] {flow, flow, flow, 0, 0},
              cost(mass[door.component().index()], hour)));
    }
    return paths;
  }

  /** Flows: moved, in, out, led, returned. */
  private static AirPath path(
      AirPath.Kind kind,
      String name,
      String place,
      FanUse use,
      FanWay way,
      double[] flows,
      AirCost cost) {
    return new AirPath(
        kind,
        name,
        place,
        use,
        way,
        flows[0],
        flows[1],
        flows[2],
        flows[3],
        flows[4],
        cost.sensible(),
        cost.latent(),
        cost.water());
  }

  /** Fans of the file come first, then the vents of its ovens, then compressed air. */
  private String place(int fan) {
    int told = shop.rooms().get(room).fans().size();
    if (fan < told) {
      return "rooms[" + room + "].fans[" + fan + "]";
    }
    return air.fans()
        .get(fan)
        .oven()
        .map(oven -> shop.rooms().get(room).gains().indexOf(oven))
        .map(gain -> "rooms[" + room + "].gains[" + gain + "].batches")
        .orElse("air.intake");
  }

  /**
   * Unbalanced fans and leaks in a slot; with every fan that runs at its whole flow, or its mean.
   */
  private AirBalance balance(double leak, int slot, boolean whole) {
    List<AirStream> running = new ArrayList<>();
    for (int i = 0; i < air.fans().size(); i++) {
      Fan fan = air.fans().get(i).fan();
      double runs = this.runs.get(i).at(slot);
      double part = whole ? (runs > 0 ? 1 : 0) : runs;
      if (fan.way() == FanWay.OUT || fan.way() == FanWay.IN) {
        running.add(
            new AirStream(
                AirStream.Use.OTHER,
                fan.way() == FanWay.OUT ? AirStream.Way.OUT : AirStream.Way.IN,
                fan.moved() * part,
                fan.ledToHood(),
                60));
      }
    }
    return AirBalance.of(Math.max(LEAST_AREA, air.leakageArea()), leak, running);
  }

  private AirSuction suction() {
    double worst = 0;
    int at = -1;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      double suction = balance(0, slot, true).suction();
      if (suction > worst) {
        worst = suction;
        at = slot;
      }
    }
    Flue flue = flue(shop.flue());
    if (at < 0) {
      return new AirSuction(0, 1, List.of(), "", Optional.empty(), flue.limit());
    }
    List<Integer> drawing = new ArrayList<>();
    for (int i = 0; i < air.fans().size(); i++) {
      Fan fan = air.fans().get(i).fan();
      if (fan.way() == FanWay.OUT && fan.exchanged() > 0 && runs.get(i).at(at) > 0) {
        drawing.add(i);
      }
    }
    drawing.sort(
        Comparator.comparingDouble((Integer i) -> air.fans().get(i).fan().exchanged()).reversed());
    boolean told = air.leakageArea() > LEAST_AREA;
    double pascals = Math.min(MOST_PRESSURE, worst);
    return new AirSuction(
        told ? pascals : Double.NaN,
        at / DaySlots.PER_HOUR + 1,
        drawing.stream().map(i -> air.fans().get(i).fan().name()).toList(),
        place(drawing.get(0)),
        told ? hardest(pascals) : Optional.empty(),
        flue.limit());
  }

  private Optional<AirSuction.HardDoor> hardest(double pascals) {
    Room owner = shop.rooms().get(room);
    Optional<AirSuction.HardDoor> hardest = Optional.empty();
    for (Face face : owner.faces()) {
      for (Door door : face.doors()) {
        if (door.type() == DoorType.ENTRY
            && face.behind().toLowerCase(Locale.ROOT).equals("outdoors")) {
          double newtons =
              DoorForce.at(
                  pascals,
                  Math.min(WIDEST, door.width()),
                  Math.min(HIGHEST, door.height()),
                  HANDLE,
                  0);
          if (hardest.isEmpty() || newtons > hardest.get().newtons()) {
            hardest = Optional.of(new AirSuction.HardDoor(door.name(), newtons, DoorForce.LIMIT));
          }
        }
      }
    }
    return hardest;
  }

  /**
   * How much suction a burner's flue stands.
   *
   * @param kind the burner
   * @return its flue
   */
  public static Flue flue(FlueKind kind) {
    return switch (kind) {
      // Without a flue there is none to draw backward; its own caution says it should not be.
      case NONE, UNVENTED -> Flue.NONE;
      case WATER_HEATER -> Flue.WATER_HEATER_ALONE;
      case SHARED_CHIMNEY -> Flue.NATURAL_DRAFT_SHARED;
      case CHIMNEY -> Flue.NATURAL_DRAFT;
      case FAN_ASSISTED -> Flue.FAN_ASSISTED;
      case SEALED -> Flue.SEALED;
    };
  }
}
