package org.shopclime.unit;

import java.util.Set;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/**
 * What a plant does to its room, mean over time, and where all of it goes.
 *
 * <p>Convention, that of {@link Delivered} with the sign of the room: air that passes through the
 * plant and comes back gives the room sensible heat m cp (t leaving - t room), cp being that of the
 * leaving humidity ratio, and water m (W leaving - W room), which carries the enthalpy of vapour at
 * room temperature. With r the room, the balances are
 *
 * <ul>
 *   <li>energy: power = sensible + water h_g(t_r) + heatOutdoors + heatPiped,
 *   <li>water: 0 = water + waterOutdoors + waterPiped.
 * </ul>
 *
 * <p>Induced air is beside them: room air that the plant throws out and that outdoor air replaces
 * through the leaks, at the states the caller knows. {@link #withInducedAirCounted} puts it in, and
 * the balances hold as before.
 *
 * @param sensible sensible heat to the room, W; negative cools
 * @param water water vapour to the room, kg/s; negative dries
 * @param inducedAir outdoor air drawn in through leaks because the plant throws room air out, dry
 *     air, kg/s, 0 or more; not yet in the two above
 * @param suppliedAir outdoor air brought into the room by the plant and already in the two above,
 *     dry air, kg/s, 0 or more; as much room air leaves
 * @param power electric power drawn, W, 0 or more
 * @param runFraction part of the time it runs, 0 to 1
 * @param elsewhere where the rest goes
 * @param limits what was asked beyond the tested range of its curves, or stops it
 */
public record RoomEffect(
    double sensible,
    double water,
    double inducedAir,
    double suppliedAir,
    double power,
    double runFraction,
    Elsewhere elsewhere,
    Set<Limit> limits) {

  /** Copies the limits. */
  public RoomEffect {
    limits = Limit.frozen(limits);
  }

  /** All power becomes sensible heat in the room. */
  static RoomEffect heatOfPower(double power, double runFraction, int limitBits) {
    return new RoomEffect(
        power, 0, 0, 0, power, runFraction, Elsewhere.NOTHING, Limit.setOf(limitBits));
  }

  /**
   * A coil that cools the room and a condenser outdoors, running on and off. Condensate goes
   * outdoors, its heat inside the total.
   */
  static RoomEffect ofCoil(
      Delivered flatOut, double load, Cycling cycling, double ratedLatent, AirState room) {
    double run = cycling.runFraction(load);
    double kept = cycling.latentKept(run, flatOut.latent() / ratedLatent, room);
    double condensate = load * flatOut.condensate() * kept;
    double total = load * flatOut.total();
    double fanHeat = (1 - run) * cycling.fanPowerBetweenRuns();
    return new RoomEffect(
        condensate * Saturation.vapourEnthalpy(room.dryBulb()) + fanHeat - total,
        -condensate,
        0,
        0,
        run * flatOut.power() + fanHeat,
        run,
        new Elsewhere(run * flatOut.power() + total, condensate, 0, 0),
        flatOut.limits());
  }

  /**
   * Enthalpy the room gains: sensible heat and that of the vapour.
   *
   * @param roomDryBulb °C
   * @return W; negative cools
   */
  public double heatToRoom(double roomDryBulb) {
    return sensible + water * Saturation.vapourEnthalpy(roomDryBulb);
  }

  /**
   * The same effect with the induced air charged to the plant: outdoor air in, as much room air
   * out. For a caller that does not let it in with its other air.
   *
   * @param room air of the room
   * @param outdoor outdoor air
   * @return the effect, with no induced air left and more supplied
   */
  public RoomEffect withInducedAirCounted(AirState room, AirState outdoor) {
    double sensibleHeat =
        inducedAir
            * MoistAir.humidHeat(outdoor.humidityRatio())
            * (outdoor.dryBulb() - room.dryBulb());
    double vapour = inducedAir * (outdoor.humidityRatio() - room.humidityRatio());
    double enthalpy = sensibleHeat + vapour * Saturation.vapourEnthalpy(room.dryBulb());
    return new RoomEffect(
        sensible + sensibleHeat,
        water + vapour,
        0,
        suppliedAir + inducedAir,
        power,
        runFraction,
        new Elsewhere(
            elsewhere.heatOutdoors() - enthalpy,
            elsewhere.waterOutdoors() - vapour,
            elsewhere.waterPiped(),
            elsewhere.heatPiped()),
        limits);
  }
}
