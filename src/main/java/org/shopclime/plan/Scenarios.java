package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.climate.StationClimate;
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

  private Scenarios() {}

  /**
   * A shop on a day.
   *
   * @param name in the owner's words
   * @param shop the shop then
   * @param day the day, where it is not the hot day of the shop's place
   */
  record Case(String name, Shop shop, Optional<HotDay> day) {}

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
        .map(CoolingUnit::airflow)
        .map(Scenarios::dusty)
        .ifPresent(
            airflow ->
                cases.add(
                    new Case(
                        "dusty coil and filter",
                        shop.withUnit(shop.unit().map(unit -> unit.withAirflow(airflow))),
                        Optional.empty())));
    StationClimate climate = HotDays.climate(shop.place(), climates);
    HotDay hottest = DesignDays.hotDay(climate, Level.HOTTEST);
    if (hottest.peak() > day.peak()) {
      cases.add(new Case("hottest day of a typical year", shop, Optional.of(hottest)));
    }
    cases.add(new Case("most humid day", shop, Optional.of(DesignDays.humidDay(climate))));
    return cases;
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

  /** The worst airflow of an owner who does not know it; a third lost of one who does. */
  private static Span dusty(Span airflow) {
    boolean unsure = airflow.low() < airflow.likely();
    return Span.known(unsure ? airflow.low() : Math.min(airflow.likely(), DUSTY));
  }
}
