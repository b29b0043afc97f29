package org.shopclime.airline;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.air.AirState;

/**
 * A compressor and the parts its air passes on the way to the tool.
 *
 * <p>Dry air goes through whole (but for purge), vapour until a part is too cold to hold it. So how
 * much water there is follows the vapour of the air drawn in; temperatures only decide where it
 * drops out.
 *
 * @param machine the compressor
 * @param parts in the order in which the air meets them
 */
public record AirLine(AirCompressor machine, List<LinePart> parts) {

  /** Keeps a copy. */
  public AirLine {
    parts = List.copyOf(parts);
  }

  /**
   * The usual line: tube, tank, a hose or pipe as cold as its coldest stretch.
   *
   * @param machine the compressor
   * @return its line
   */
  public static AirLine plain(AirCompressor machine) {
    return new AirLine(
        machine, List.of(DischargeTube.USUAL, AirTank.of(machine), new ColdStretch()));
  }

  /**
   * This line with a part put in before the coldest stretch, or at the end where there is none.
   *
   * @param part drop leg or dryer
   * @return the longer line
   */
  public AirLine with(LinePart part) {
    return insert(part, ColdStretch.class);
  }

  /**
   * This line with a cooler before the tank, or at the end where there is none.
   *
   * @param cooler the cooler
   * @return the longer line
   */
  public AirLine with(Aftercooler cooler) {
    return insert(cooler, AirTank.class);
  }

  /**
   * One hour of it.
   *
   * @param intake air drawn in, -50 to 150 °C
   * @param demand what the tools take
   * @param around temperatures around the line
   * @return heat, air and water of the hour
   */
  public LineResult run(AirState intake, AirDemand demand, LineSurroundings around) {
    double kept =
        parts.stream().mapToDouble(part -> 1 - part.purgeShare()).reduce(1, (a, b) -> a * b);
    AirCompressor.Running running = machine.running(demand.mean() / kept, intake);
    LineFlow flow = new LineFlow(running.dryAir(), demand.drawing() / kept);
    LineAir drawn = new LineAir(intake.dryBulb(), intake.pressure(), intake.humidityRatio());
    LineAir air =
        new LineAir(
            machine.dischargeCelsius(intake),
            machine.tankPressureAbsolute(intake),
            intake.humidityRatio());
    double pumpHeat = running.electricWatts() - flow.mean() * (air.enthalpy() - drawn.enthalpy());
    List<LineStep> steps = new ArrayList<>();
    for (LinePart part : parts) {
      LineStep step = part.pass(air, flow, around);
      steps.add(step);
      air = step.out();
      flow = flow.less(part.purgeShare());
    }
    return new LineResult(
        running, drawn, pumpHeat, steps, air.letDownTo(intake.pressure()), flow.mean());
  }

  private AirLine insert(LinePart part, Class<? extends LinePart> before) {
    List<LinePart> longer = new ArrayList<>(parts);
    int at = 0;
    while (at < longer.size() && !before.isInstance(longer.get(at))) {
      at++;
    }
    longer.add(at, part);
    return new AirLine(machine, longer);
  }
}
