package org.shopclime.airline;

import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/**
 * A compressor in a place for one steady hour: its line, the place, and who gets the heat.
 *
 * <p>Place and machine depend on each other: a hot place thins the air drawn in, warms the tank and
 * the air that leaves. {@link #pencil} solves both together in the pencil closet; {@link #known}
 * takes the place's air from elsewhere, such as a run of the whole shop.
 *
 * @param place air where the machine stands
 * @param closet balance of the place; none in the room or where its air was given
 * @param line the air line
 * @param around air on both sides
 */
public record PlacedHour(
    AirState place, Optional<ClosetBalance> closet, LineResult line, PlaceAround around) {

  private static final double SOURCE_ONLY_BELOW = 150;

  /**
   * The hour in the pencil closet.
   *
   * @param placement the place
   * @param airLine machine and line
   * @param demand what the tools take
   * @param around air on both sides
   * @param coldest coldest stretch of the line, °C, -50 to 80
   * @return the hour
   */
  public static PlacedHour pencil(
      Placement placement, AirLine airLine, AirDemand demand, PlaceAround around, double coldest) {
    if (placement.kind() == Placement.Kind.OPEN_ROOF) {
      return outdoors(placement, airLine, demand, around, coldest);
    }
    if (placement.closet().isEmpty()) {
      return known(around.room(), placement.intake(), airLine, demand, around, coldest);
    }
    ClosetBalance balance =
        ClosetBalance.of(
            placement.closet().get(),
            placement.venting(),
            around,
            celsius -> {
              AirState source = source(placement, celsius, around);
              AirState place = source.withDryBulb(celsius);
              LineResult line = run(place, placement.intake(), airLine, demand, around, coldest);
              return heatInto(line, placement.intake(), source, celsius);
            });
    AirState air =
        new AirState(
            Math.min(balance.celsius(), SOURCE_ONLY_BELOW),
            balance.humidityRatio(),
            around.room().pressure());
    LineResult line = run(air, placement.intake(), airLine, demand, around, coldest);
    return new PlacedHour(air, Optional.of(balance), line, around);
  }

  /** Under an open roof all heat of the place goes off with the air that drifts by. */
  private static PlacedHour outdoors(
      Placement placement, AirLine airLine, AirDemand demand, PlaceAround around, double coldest) {
    AirState outdoors = around.outdoors();
    AirState air = outdoors.withDryBulb(outdoors.dryBulb() + placement.openRise());
    LineResult line = run(air, placement.intake(), airLine, demand, around, coldest);
    double heat = heatInto(line, placement.intake(), outdoors, air.dryBulb());
    double drift = heat / (MoistAir.humidHeat(outdoors.humidityRatio()) * placement.openRise());
    ClosetBalance balance =
        new ClosetBalance(
            air.dryBulb(),
            air.humidityRatio(),
            heat,
            0,
            0,
            heat,
            new Venting.Draught(Side.OUTDOORS, Side.OUTDOORS, drift));
    return new PlacedHour(air, Optional.of(balance), line, around);
  }

  /**
   * The hour in a place whose air is known.
   *
   * @param place air where the machine stands
   * @param intake where it draws its air
   * @param airLine machine and line
   * @param demand what the tools take
   * @param around air on both sides
   * @param coldest coldest stretch of the line, °C, -50 to 80
   * @return the hour; its heat at the place is {@code line().heatAt(LineSite.PLACE)}
   */
  public static PlacedHour known(
      AirState place,
      Intake intake,
      AirLine airLine,
      AirDemand demand,
      PlaceAround around,
      double coldest) {
    LineResult line = run(place, intake, airLine, demand, around, coldest);
    return new PlacedHour(place, Optional.empty(), line, around);
  }

  /**
   * Heat that reaches the work room: from the place, from pipes in it, and with the air that leaves
   * the tool, against air of the room. Make-up air is counted apart.
   *
   * @return sensible heat, W, either sign
   */
  public double roomHeat() {
    double fromPlace =
        closet.map(ClosetBalance::toRoom).orElseGet(() -> line.heatAt(LineSite.PLACE));
    return fromPlace
        + line.heatAt(LineSite.ROOM)
        + line.heatAt(LineSite.COLDEST)
        + line.toolAir()
            * MoistAir.humidHeat(line.tool().humidityRatio())
            * (line.tool().celsius() - around.room().dryBulb());
  }

  /** Air that comes into the place of a placement at a temperature. */
  private static AirState source(Placement placement, double celsius, PlaceAround around) {
    Venting.Draught draught = placement.venting().draught(celsius, around);
    boolean towardsRoom = placement.closet().map(walls -> walls.roomArea() > 0).orElse(true);
    Side still = towardsRoom ? Side.ROOM : Side.OUTDOORS;
    return around.at(draught.dryAir() > 0 ? draught.from() : still);
  }

  /** Heat into the place, less what air on its way to the intake takes out of it. */
  private static double heatInto(LineResult line, Intake intake, AirState source, double celsius) {
    double heat = line.heatAt(LineSite.PLACE);
    if (intake != Intake.PLACE) {
      return heat;
    }
    return heat
        - line.running().dryAir()
            * MoistAir.humidHeat(source.humidityRatio())
            * (celsius - source.dryBulb());
  }

  private static LineResult run(
      AirState place,
      Intake intake,
      AirLine airLine,
      AirDemand demand,
      PlaceAround around,
      double coldest) {
    LineSurroundings sites =
        new LineSurroundings(place.dryBulb(), around.room().dryBulb(), coldest);
    return airLine.run(intake.of(place, around), demand, sites);
  }
}
