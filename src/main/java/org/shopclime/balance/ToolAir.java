package org.shopclime.balance;

import java.util.Optional;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.LineCompressor;
import org.shopclime.shop.Shop;

/**
 * Air that the shop's compressor draws in somewhere and that its tools let out in the room where
 * people work: what enters a room beside its leaks and fans, by the balance of air.
 *
 * <p>Drawn from outdoors it is charged as the same air from a fan would be: heat and water it
 * brings stay in the room but for what is drained from the tank, and water that condenses there
 * leaves its heat behind, so that the sum of both is kept. Air drawn from the room itself and let
 * out there again is no exchange.
 *
 * <p>Limits: air drawn from a loft or another room comes in as outdoor air, which takes its place
 * there; the drier air that leaves a tank is not told in the load, but in the comparison of places.
 *
 * @param flow while the machine runs, m³/s of air as drawn in
 * @param duty part of its hours in which it runs, 0 to 1
 * @param from index of the room it is drawn from; -1 from outdoors
 * @param room index of the room in which it is let out
 * @param machine the compressor
 */
public record ToolAir(double flow, double duty, int from, int room, LineCompressor machine) {

  /** Name of the line of the load. */
  static final String NAME = "Compressed air";

  private static final int OUTDOORS = -1;

  /**
   * Air of a shop's tools.
   *
   * @param shop a shop that passed its checks, whose compressor runs as long as its tools ask
   * @return nothing where no compressor runs
   */
  static Optional<ToolAir> of(Shop shop) {
    return LineCompressor.of(shop).map(machine -> of(shop, machine)).filter(air -> air.duty > 0);
  }

  /**
   * The same of a shop whose tools may decide how long its compressor runs.
   *
   * @param shop a shop that passed its checks
   * @param pressure of the air around, Pa
   * @return nothing where no compressor runs
   */
  public static Optional<ToolAir> of(Shop shop, double pressure) {
    return of(ToolTime.applied(shop, pressure));
  }

  private static ToolAir of(Shop shop, LineCompressor listed) {
    CompressedAir air = shop.air();
    int room = shop.unitRoom();
    int from =
        switch (air.intake()) {
          case PLACE -> listed.room();
          case ROOM -> room;
          case OUTDOORS -> OUTDOORS;
        };
    double flow = ToolTime.freeAir(listed.machine().power(), air);
    return new ToolAir(flow, listed.machine().duty().likely(), from, room, listed);
  }

  /**
   * Whether it comes from elsewhere than where it is let out.
   *
   * @return false where the room only lends it
   */
  public boolean isExchange() {
    return from != room;
  }

  /**
   * The mean through its hours.
   *
   * @return m³/s of air as drawn in
   */
  public double mean() {
    return flow * duty;
  }

  /**
   * The fan that would move the same air, if any is moved into or out of a room; steadily, as the
   * tank evens out when the machine runs and the tools are as likely on while it rests.
   */
  Optional<Fan> fan(int of) {
    if (!isExchange() || (of != room && of != from)) {
      return Optional.empty();
    }
    FanWay way = of == room ? FanWay.IN : FanWay.OUT;
    return Optional.of(new Fan(NAME, way, mean(), machine.machine().when()));
  }
}
