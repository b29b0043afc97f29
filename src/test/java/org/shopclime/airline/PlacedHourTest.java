package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;

class PlacedHourTest {

  private static final AirLine LINE =
      AirLine.plain(AirCompressor.usual(5 * Ip.HORSEPOWER, Stages.TWO));
  private static final AirDemand BLASTING = AirDemand.of(AirTool.BLAST_CABINET.usedFor(45));
  private static final PlaceAround HOT = new PlaceAround(Ip.air(78, 50), Ip.air(98, 48));
  private static final double COLDEST = Ip.celsius(68);

  private static Map<Placement.Kind, PlacedHour> all() {
    Map<Placement.Kind, PlacedHour> hours = new EnumMap<>(Placement.Kind.class);
    for (Placement placement : Placement.usual()) {
      hours.put(placement.kind(), PlacedHour.pencil(placement, LINE, BLASTING, HOT, COLDEST));
    }
    return hours;
  }

  @Test
  void eachKindOnce() {
    assertThat(Placement.usual())
        .extracting(Placement::kind)
        .containsExactly(Placement.Kind.values());
  }

  /** Electricity and air in, heat, air and water out, in every place and with every intake. */
  @Test
  void nothingIsLostAnywhere() {
    for (Placement placement : Placement.usual()) {
      for (Intake intake : Intake.values()) {
        PlacedHour hour =
            PlacedHour.pencil(placement.withIntake(intake), LINE, BLASTING, HOT, COLDEST);
        LineResult line = hour.line();
        if (hour.closet().isEmpty() || hour.closet().get().celsius() > 120) {
          continue; // the source is held at what it gives at 120 °C, so its line is another
        }
        ClosetBalance closet = hour.closet().get();
        double warmed =
            intake == Intake.PLACE
                ? line.running().dryAir()
                    * MoistAir.humidHeat(closet.humidityRatio())
                    * (closet.celsius() - sourceCelsius(closet))
                : 0;
        assertThat(closet.toRoom() + closet.toOutdoors() + warmed)
            .as("%s, %s", placement.kind(), intake)
            .isCloseTo(line.heatAt(LineSite.PLACE), within(5000 * 1e-9));
        assertThat(line.energyMissing()).isCloseTo(0, within(5000 * 1e-9));
        assertThat(line.waterMissing()).isCloseTo(0, within(1e-12));
      }
    }
  }

  private static double sourceCelsius(ClosetBalance closet) {
    boolean outdoors = closet.draught().dryAir() > 0 && closet.draught().from() == Side.OUTDOORS;
    return (outdoors ? HOT.outdoors() : HOT.room()).dryBulb();
  }

  @Test
  void whatEachPlaceDoes() {
    Map<Placement.Kind, PlacedHour> hours = all();
    PlacedHour room = hours.get(Placement.Kind.IN_ROOM);
    assertThat(room.place()).isEqualTo(HOT.room());
    assertThat(room.roomHeat()).isBetween(2000.0, 2800.0);
    assertThat(celsius(hours, Placement.Kind.CLOSED_CLOSET)).isGreaterThan(100);
    assertThat(celsius(hours, Placement.Kind.CLOSED_INSULATED_CLOSET))
        .isGreaterThan(celsius(hours, Placement.Kind.CLOSED_CLOSET));
    assertThat(celsius(hours, Placement.Kind.GRILLES_TO_ROOM)).isBetween(45.0, 58.0);
    assertThat(celsius(hours, Placement.Kind.FAN_TO_ROOM)).isBetween(38.0, 50.0);
    assertThat(hours.get(Placement.Kind.FAN_TO_ROOM).roomHeat()).isGreaterThan(2000);
    assertThat(celsius(hours, Placement.Kind.OUTDOOR_LOOP)).isBetween(50.0, 72.0);
    assertThat(celsius(hours, Placement.Kind.OUTDOOR_LOOP_FAN)).isBetween(44.0, 54.0);
    // By pencil: faces 3.3 W/K over 24 K, 79 W; hot air 0.0051 kg/s over some 48 K, 250 W; its
    // water
    // drops in the room too, 0.08 g/s, 200 W; the air leaves the tool cooler than the room, -30 W.
    assertThat(hours.get(Placement.Kind.OUTDOOR_LOOP_FAN).roomHeat()).isBetween(400.0, 550.0);
    PlacedHour fanOut = hours.get(Placement.Kind.FAN_OUTDOORS);
    assertThat(fanOut.roomHeat()).isLessThan(0.25 * fanOut.line().heatAt(LineSite.PLACE));
    assertThat(fanOut.closet().orElseThrow().makeUpHeat(HOT))
        .as("the air it takes costs more than the heat it carries off")
        .isGreaterThan(fanOut.line().heatAt(LineSite.PLACE));
    assertThat(celsius(hours, Placement.Kind.LOFT)).isGreaterThan(55);
    // Outdoors and 2 K; by pencil 0.0051 kg/s of air come in 2 K warmer than that at 36.7 °C.
    PlacedHour open = hours.get(Placement.Kind.OPEN_ROOF);
    assertThat(open.place().dryBulb()).isCloseTo(HOT.outdoors().dryBulb() + 2, within(1e-9));
    assertThat(open.closet().orElseThrow().toRoom()).isZero();
    // Twice the rise: as much heat goes off with about half of the air.
    Placement near = Placement.usual().get(Placement.usual().size() - 1).withOpenRise(4);
    PlacedHour warmer = PlacedHour.pencil(near, LINE, BLASTING, HOT, COLDEST);
    assertThat(warmer.place().dryBulb()).isCloseTo(HOT.outdoors().dryBulb() + 4, within(1e-9));
    double drift = open.closet().orElseThrow().draught().dryAir();
    assertThat(warmer.closet().orElseThrow().draught().dryAir())
        .isBetween(0.45 * drift, 0.55 * drift);
    assertThat(open.roomHeat()).isLessThan(hours.get(Placement.Kind.LEAN_TO).roomHeat());
    // By pencil: 40.9 W/K to 46.7 °C, vents 117 W/K to 36.7 °C, 2400 W: 54.3 °C.
    assertThat(celsius(hours, Placement.Kind.LEAN_TO)).isCloseTo(54.3, within(2.0));
  }

  /** Air of the room makes less water than air from outdoors, wherever the machine stands. */
  @Test
  void intakeDecidesTheWaterPlaceWhereItDrops() {
    Placement loop =
        Placement.usual().stream()
            .filter(each -> each.kind() == Placement.Kind.OUTDOOR_LOOP_FAN)
            .findFirst()
            .orElseThrow();
    PlacedHour own = PlacedHour.pencil(loop, LINE, BLASTING, HOT, COLDEST);
    PlacedHour led = PlacedHour.pencil(loop.withIntake(Intake.ROOM), LINE, BLASTING, HOT, COLDEST);
    double ownWater = own.line().tankWater() + own.line().lineWater();
    double ledWater = led.line().tankWater() + led.line().lineWater();
    assertThat(ledWater / ownWater).isBetween(0.3, 0.6);
    PlacedHour inRoom = PlacedHour.pencil(Placement.usual().get(0), LINE, BLASTING, HOT, COLDEST);
    assertThat(inRoom.line().tankWater() + inRoom.line().lineWater())
        .isCloseTo(ledWater, within(1e-6));
    assertThat(inRoom.line().lineWater()).isLessThan(led.line().lineWater());
  }

  /** A run of the whole shop can give the place's air; with the pencil's own it tells the same. */
  @Test
  void knownPlaceTellsTheSameLine() {
    Placement loop =
        new Placement(
            Placement.Kind.OUTDOOR_LOOP,
            Optional.of(Closet.corner(Closet.INSULATED_PARTITION)),
            Venting.fan(Side.OUTDOORS, Side.OUTDOORS, 0.15),
            Intake.PLACE,
            2);
    PlacedHour pencil = PlacedHour.pencil(loop, LINE, BLASTING, HOT, COLDEST);
    PlacedHour known = PlacedHour.known(pencil.place(), Intake.PLACE, LINE, BLASTING, HOT, COLDEST);
    assertThat(known.line()).isEqualTo(pencil.line());
    assertThat(known.closet()).isEmpty();
  }

  private static double celsius(Map<Placement.Kind, PlacedHour> hours, Placement.Kind kind) {
    return hours.get(kind).closet().orElseThrow().celsius();
  }
}
