package org.shopclime.balance;

import java.util.List;

/**
 * The air of a room in the working hour of the hot day in which outdoor air costs most. What enters
 * from outdoors and what leaves is equal.
 *
 * @param room index of the room
 * @param hour hour ending 1 to 24
 * @param indoor room air, held at its set point, °C
 * @param outdoor outdoor air, °C
 * @param paths leaks first, then fans, then doors
 * @param suction when fans draw hardest
 */
public record AirBook(
    int room, int hour, double indoor, double outdoor, List<AirPath> paths, AirSuction suction) {

  /** Copies the list. */
  public AirBook {
    paths = List.copyOf(paths);
  }

  /**
   * Outdoor air into the room.
   *
   * @return m³/s
   */
  public double in() {
    return paths.stream().mapToDouble(AirPath::in).sum();
  }

  /**
   * Room air to outdoors.
   *
   * @return m³/s
   */
  public double out() {
    return paths.stream().mapToDouble(AirPath::out).sum();
  }

  /**
   * Sensible heat of all outdoor air.
   *
   * @return W, either sign
   */
  public double sensible() {
    return paths.stream().mapToDouble(AirPath::sensible).sum();
  }

  /**
   * Latent heat of all outdoor air.
   *
   * @return W, either sign
   */
  public double latent() {
    return paths.stream().mapToDouble(AirPath::latent).sum();
  }

  /**
   * Water that outdoor air brings.
   *
   * @return kg/s, either sign
   */
  public double water() {
    return paths.stream().mapToDouble(AirPath::water).sum();
  }

  /**
   * Heat and moisture of all outdoor air.
   *
   * @return W, either sign
   */
  public double total() {
    return sensible() + latent();
  }

  /**
   * Heat and moisture charged to fans alone.
   *
   * @return W, either sign
   */
  public double byFans() {
    return paths.stream()
        .filter(path -> path.kind() == AirPath.Kind.FAN)
        .mapToDouble(AirPath::total)
        .sum();
  }
}
