package org.shopclime.airline;

import java.util.List;
import java.util.Optional;
import org.shopclime.balance.ToolTime;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Gain;
import org.shopclime.shop.LineCompressor;
import org.shopclime.shop.Shop;

/**
 * The compressor of a shop with its line and tools, from the owner's words; what is not said is
 * usual.
 *
 * <p>Source: two stages from 5 hp on, tools at 90 psi: common practice. Without a word on tools,
 * air is asked for as the machine delivers it in the part of the time it is said to run.
 *
 * @param room index of the room it is listed in
 * @param gain as it is listed
 * @param line the machine and its line
 * @param demand what the tools take in a working hour
 * @param blasting an hour of nothing but the hungriest tool, held all the time; a blast cabinet
 *     where no tools are said
 * @param coldest coldest stretch where the owner set it, °C
 * @param intake where it draws
 */
record OwnedLine(
    int room,
    Gain.Compressor gain,
    AirLine line,
    AirDemand demand,
    AirDemand blasting,
    Optional<Double> coldest,
    Intake intake) {

  private static final double TOOL_PRESSURE = 90 * Trade.PSI;
  private static final double PIPE = 0.75 * Trade.INCH;

  /** The first compressor among the gains of the shop; none where there is none to reckon. */
  static Optional<OwnedLine> of(Shop shop) {
    return LineCompressor.of(shop).map(each -> of(each.room(), each.machine(), shop.air()));
  }

  private static OwnedLine of(int room, Gain.Compressor gain, CompressedAir air) {
    AirCompressor machine = machine(gain.power(), air);
    List<ToolUse> tools = tools(air);
    AirDemand demand =
        tools.isEmpty()
            ? AirDemand.of(
                new ToolUse(
                    machine.freeAir(),
                    Math.min(TOOL_PRESSURE, machine.tankPressure()),
                    60 * gain.duty().likely()))
            : new AirDemand(tools);
    AirDemand blasting =
        (tools.isEmpty() ? AirDemand.of(AirTool.BLAST_CABINET.usual()) : demand).stress(60);
    Intake intake = Intake.valueOf(air.intake().name());
    return new OwnedLine(room, gain, line(machine, air), demand, blasting, air.coldest(), intake);
  }

  private static AirCompressor machine(double power, CompressedAir air) {
    Stages stages = ToolTime.isTwoStage(power, air) ? Stages.TWO : Stages.SINGLE;
    AirCompressor usual = AirCompressor.usual(power, stages);
    return new AirCompressor(
        power,
        stages,
        air.freeAir().orElse(usual.freeAir()),
        air.pressure().orElse(usual.tankPressure()),
        air.tank().orElse(usual.tankVolume()));
  }

  private static AirLine line(AirCompressor machine, CompressedAir air) {
    AirLine line = AirLine.plain(machine);
    if (air.aftercooler() == CompressedAir.YesNo.YES) {
      line = line.with(aftercooler());
    }
    if (air.dropLeg() > 0) {
      line = line.with(dropLeg(air.dropLeg()));
    }
    return switch (air.dryer()) {
      case NONE -> line;
      case REFRIGERATED -> line.with(refrigerated(machine));
      case DESICCANT -> line.with(desiccant());
    };
  }

  /** A usual cooler beside the machine. */
  static Aftercooler aftercooler() {
    return new Aftercooler(Aftercooler.USUAL_APPROACH, LineSite.PLACE);
  }

  /** Bare pipe of 3/4 in on a wall of the work room. */
  static PipeRun dropLeg(double length) {
    return new PipeRun(length, PIPE, PipeRun.BARE_METAL, LineSite.ROOM);
  }

  /** A dryer for all that the machine delivers, in the work room. */
  static RefrigeratedDryer refrigerated(AirCompressor machine) {
    return RefrigeratedDryer.usual(machine.freeAir(), LineSite.ROOM);
  }

  /** Two towers in the work room. */
  static Desiccant desiccant() {
    return new Desiccant(Desiccant.USUAL_DEW_POINT, Desiccant.USUAL_PURGE, LineSite.ROOM);
  }

  private static List<ToolUse> tools(CompressedAir air) {
    double draw = air.toolsDraw().likely();
    return ToolTime.seconds(air.tools()).entrySet().stream()
        .map(each -> AirTool.valueOf(each.getKey().name()).usedFor(each.getValue() / 60))
        .map(use -> new ToolUse(draw * use.flow(), use.pressure(), use.minutesPerHour()))
        .toList();
  }
}
