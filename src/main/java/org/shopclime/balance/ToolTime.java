package org.shopclime.balance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.gain.AirToolFlow;
import org.shopclime.gain.CompressorDuty;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Gain;
import org.shopclime.shop.LineCompressor;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/**
 * How long the shop's compressor runs where its owner told the tools: what they draw decides then,
 * and not the part of the time told or guessed with its heat.
 *
 * <p>Taken in air of the wished temperature and humidity of the room it is listed in; hotter intake
 * air adds a few per cent. The same machine counts as in the comparison of places.
 *
 * @param machine the compressor
 * @param asked part of a working hour it would have to run, 0 or more; above 1 it cannot keep up
 */
public record ToolTime(LineCompressor machine, double asked) {

  /**
   * Part of a working hour it runs.
   *
   * @return 0 to 1
   */
  public double duty() {
    return Math.min(1, asked);
  }

  /**
   * How long tools make the compressor of a shop run.
   *
   * @param shop the shop
   * @param pressure of the air around, Pa
   * @return nothing where no tool is told or no compressor is there
   */
  public static Optional<ToolTime> of(Shop shop, double pressure) {
    if (!(shop.air().tools().together() > 0)) {
      return Optional.empty();
    }
    return LineCompressor.of(shop).map(machine -> of(shop, machine, pressure));
  }

  private static ToolTime of(Shop shop, LineCompressor listed, double pressure) {
    Room room = shop.rooms().get(listed.room());
    AirState intake = AirState.ofRelativeHumidity(room.setPoint(), room.wishedHumidity(), pressure);
    double asked =
        CompressorDuty.asked(
            standardAir(shop.air()), freeAir(listed.machine().power(), shop.air()), intake);
    return new ToolTime(listed, asked);
  }

  /**
   * The shop with its compressor running as long as its tools ask.
   *
   * @param shop the shop
   * @param pressure of the air around, Pa
   * @return the same where no tool is told
   */
  static Shop applied(Shop shop, double pressure) {
    return of(shop, pressure).map(time -> time.applied(shop)).orElse(shop);
  }

  private Shop applied(Shop shop) {
    List<Room> rooms = new ArrayList<>(shop.rooms());
    Room room = rooms.get(machine.room());
    List<Gain> gains = new ArrayList<>(room.gains());
    Gain.Compressor told = machine.machine();
    gains.set(
        machine.gain(),
        new Gain.Compressor(told.name(), told.power(), Span.known(duty()), told.when()));
    rooms.set(machine.room(), room.withGains(gains));
    return shop.withRooms(rooms);
  }

  /**
   * How long tools draw air.
   *
   * @param tools as told
   * @return seconds in a working hour of each tool that is used
   */
  public static Map<AirToolFlow, Double> seconds(CompressedAir.AirTools tools) {
    Map<AirToolFlow, Double> all = new EnumMap<>(AirToolFlow.class);
    all.put(AirToolFlow.BLAST_CABINET, tools.blastCabinet());
    all.put(AirToolFlow.BLAST_POT, tools.blastPot());
    all.put(AirToolFlow.SANDER, tools.sanding());
    all.put(AirToolFlow.SPRAY_GUN, tools.spraying());
    all.put(AirToolFlow.GRINDER, tools.grinding());
    all.put(AirToolFlow.IMPACT_WRENCH, tools.wrench());
    all.put(AirToolFlow.BLOW_GUN, tools.blowing());
    all.put(AirToolFlow.INFLATING, tools.inflating());
    all.values().removeIf(each -> !(each > 0));
    return all;
  }

  private static double standardAir(CompressedAir air) {
    return air.toolsDraw().likely()
        * seconds(air.tools()).entrySet().stream()
            .mapToDouble(each -> each.getKey().flow() * each.getValue() / 3600)
            .sum();
  }

  /**
   * Whether a machine compresses twice.
   *
   * @param power shaft power, W
   * @param air what is said of it
   * @return as told, or as usual for its power
   */
  public static boolean isTwoStage(double power, CompressedAir air) {
    return switch (air.stages()) {
      case SINGLE -> false;
      case TWO -> true;
      case UNKNOWN -> power >= CompressorDuty.TWO_STAGES_FROM;
    };
  }

  /**
   * Air a machine draws in while it runs.
   *
   * @param power shaft power, W
   * @param air what is said of it
   * @return m³/s of air as it is drawn in: as told, or as usual for power and stages
   */
  static double freeAir(double power, CompressedAir air) {
    double each =
        isTwoStage(power, air) ? CompressorDuty.TWO_STAGE_AIR : CompressorDuty.SINGLE_STAGE_AIR;
    return air.freeAir().orElse(each * power);
  }
}
