package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.climate.StationClimate;
import org.shopclime.run.Cooling;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;
import org.shopclime.shop.Span;

/**
 * What a unit may have to cope with: the work with and without compressor and oven, its own dust,
 * the hottest and the most humid day. Those that a shop does not know are left out.
 */
final class Scenarios {

  /**
   * Airflow that dust leaves where the owner told nothing worse: one third is lost, as in the
   * published case of a blocked coil (a public trade article on coil fouling).
   */
  private static final double DUSTY = 2 / 3.0;

  /** Names of the cases of dust; both ends of what is published. */
  static final String DUSTY_AT_BEST = "dusty coil and filter, at best";

  static final String DUSTY_AT_WORST = "dusty coil and filter, at worst";

  /** Name of the case without the dust of the description. */
  static final String BRUSHED = "coil and filter brushed clean";

  /** Name of the case without the room's dehumidifier. */
  static final String DRIER_OFF = "dehumidifier off";

  /** Peaks nearer than this are told as one day, K. */
  private static final double SAME_DAY = 0.05;

  private Scenarios() {}

  /**
   * A shop on a day.
   *
   * @param name in the owner's words
   * @param shop the shop then
   * @param day the day, where it is not the hot day of the shop's place
   * @param dust what lost airflow comes with
   */
  record Case(String name, Shop shop, Optional<HotDay> day, Cooling.Dust dust) {

    Case(String name, Shop shop, Optional<HotDay> day) {
      this(name, shop, day, Cooling.Dust.LESS_AIR);
    }
  }

  /**
   * The cases of a shop.
   *
   * @param shop the shop
   * @param day its hot day
   * @param climates climate tables
   * @return cases, the easiest work first, then dust, then days
   */
  static List<Case> of(Shop shop, HotDay day, Climates climates) {
    List<Case> cases = new ArrayList<>(work(shop));
    shop.unit()
        .filter(unit -> !unit.isEvaporative())
        .ifPresent(unit -> cases.addAll(dust(shop, unit.airflow())));
    if (shop.rooms().stream().anyMatch(room -> room.dehumidifier().isPresent())) {
      cases.add(new Case(DRIER_OFF, withoutDriers(shop), Optional.empty()));
    }
    StationClimate climate = HotDays.climate(shop.place(), climates);
    HotDay hottest = DesignDays.hotDay(climate, Level.HOTTEST);
    if (Math.abs(hottest.peak() - day.peak()) > SAME_DAY) {
      cases.add(new Case("hottest day of a typical year", shop, Optional.of(hottest)));
    }
    cases.add(new Case("most humid day", shop, Optional.of(DesignDays.humidDay(climate))));
    return cases;
  }

  /** The shop without its dehumidifiers. */
  static Shop withoutDriers(Shop shop) {
    return shop.withRooms(
        shop.rooms().stream().map(room -> room.withDehumidifier(Optional.empty())).toList());
  }

  private static List<Case> dust(Shop shop, Span airflow) {
    List<Case> cases = new ArrayList<>();
    if (airflow.likely() < 1) {
      cases.add(new Case(BRUSHED, shop.withUnit(airflow(shop, 1)), Optional.empty()));
    }
    Shop dusty = shop.withUnit(airflow(shop, dusty(airflow)));
    cases.add(new Case(DUSTY_AT_BEST, dusty, Optional.empty()));
    cases.add(new Case(DUSTY_AT_WORST, dusty, Optional.empty(), Cooling.Dust.DIRTY_COIL));
    return cases;
  }

  private static Optional<CoolingUnit> airflow(Shop shop, double left) {
    return shop.unit().map(unit -> unit.withAirflow(Span.known(left)));
  }

  private static List<Case> work(Shop shop) {
    Optional<Shop> noOven = without(shop, Gain.Oven.class);
    Optional<Shop> noCompressor = without(noOven.orElse(shop), Gain.Compressor.class);
    List<Case> cases = new ArrayList<>();
    cases.add(new Case("work", noCompressor.orElse(noOven.orElse(shop)), Optional.empty()));
    if (noCompressor.isPresent()) {
      cases.add(new Case("work + compressor", noOven.orElse(shop), Optional.empty()));
    }
    if (noOven.isPresent()) {
      cases.add(
          new Case(
              noCompressor.isPresent() ? "work + compressor + oven" : "work + oven",
              shop,
              Optional.empty()));
    }
    return cases;
  }

  /** The shop without gains of a kind; nothing if it has none. */
  private static Optional<Shop> without(Shop shop, Class<? extends Gain> kind) {
    boolean has =
        shop.rooms().stream()
            .flatMap(room -> room.gains().stream())
            .anyMatch(gain -> kind.isInstance(gain));
    return has ? Optional.of(ShopEdit.withoutGains(shop, kind)) : Optional.empty();
  }

  /**
   * Airflow that dust is taken to leave: the worst of an owner who does not know it; a third lost
   * of one who does.
   */
  static double dusty(Span airflow) {
    boolean unsure = airflow.low() < airflow.likely();
    return unsure ? airflow.low() : Math.min(airflow.likely(), DUSTY);
  }
}
