package org.shopclime.leakage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shopclime.quantity.Range;

/**
 * The air of a shop in one moment: what comes in where, what goes out where, and the pressure that
 * makes. In and out are equal.
 *
 * <p>Source: leaks and fans combine as {@link OutdoorAir} says; the pressure is that which drives
 * the excess of the fans through the leaks, {@link BlowerDoor#pressure}.
 *
 * <p>Limits: flows of fans are those in place and do not give way to suction; all air is counted at
 * one density. Pressures of wind and stack come on top.
 *
 * @param leaksIn outdoor air by leaks, m³/s
 * @param fansIn outdoor air by fans into the room, m³/s
 * @param fansOut room air by fans to outdoors, m³/s
 * @param leaksOut room air by leaks, m³/s
 * @param pressure of the room against outdoors, Pa; below 0 is suction
 */
public record AirBalance(
    double leaksIn, double fansIn, double fansOut, double leaksOut, double pressure) {

  /**
   * The balance with some things running at once.
   *
   * @param leakageArea effective leakage area at 4 Pa, m², 1e-6 to 1000
   * @param leakFlow air that leaks in with fans off, m³/s, 0 to 1000
   * @param running what runs
   * @return the balance
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static AirBalance of(double leakageArea, double leakFlow, List<AirStream> running) {
    double out = running.stream().mapToDouble(AirStream::fromRoom).sum();
    double in = running.stream().mapToDouble(AirStream::intoRoom).sum();
    double whole = OutdoorAir.of(leakFlow, out, in).total();
    double pressure = Math.copySign(BlowerDoor.pressure(leakageArea, Math.abs(in - out)), in - out);
    return new AirBalance(Math.max(0, whole - in), in, out, Math.max(0, whole - out), pressure);
  }

  /**
   * All outdoor air that the room gets.
   *
   * @return m³/s
   */
  public double outdoorAir() {
    return leaksIn + fansIn;
  }

  /**
   * Suction of the room.
   *
   * @return Pa below outdoors; below 0 where it is above
   */
  public double suction() {
    return -pressure;
  }

  /**
   * In less out: nothing but rounding.
   *
   * @return m³/s
   */
  public double missing() {
    return leaksIn + fansIn - fansOut - leaksOut;
  }

  /**
   * Outdoor air in the mean of an hour. Things are taken to run together as far as their minutes
   * allow: the shortest falls within the next longer and so on, which is what one dusty job does.
   *
   * @param leakageArea effective leakage area at 4 Pa, m², 1e-6 to 1000
   * @param leakFlow air that leaks in with fans off, m³/s, 0 to 1000
   * @param streams all that moves air in that hour
   * @return m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double meanOutdoorAir(
      double leakageArea, double leakFlow, List<AirStream> streams) {
    Range.check("leak flow, m³/s,", leakFlow, 0, 1000);
    List<AirStream> longest = new ArrayList<>(streams);
    longest.sort(Comparator.comparingDouble(AirStream::minutesPerHour).reversed());
    double sum = 0;
    double before = 60;
    for (int count = 0; count <= longest.size(); count++) {
      double after = count < longest.size() ? longest.get(count).minutesPerHour() : 0;
      sum += (before - after) * of(leakageArea, leakFlow, longest.subList(0, count)).outdoorAir();
      before = after;
    }
    return sum / 60;
  }
}
