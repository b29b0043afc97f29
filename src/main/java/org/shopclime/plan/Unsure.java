package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.HotDay;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.Choice;
import org.shopclime.shop.Shop;
import org.shopclime.shop.SpanPlace;
import org.shopclime.shop.Unknowns;

/** What the owner does not know, and what it does to the highest room temperature. */
final class Unsure {

  /** A swing below this is none, K (0.2 °F). */
  private static final double NOTHING = 0.2 / 1.8;

  private final Shop shop;
  private final HotDay day;

  Unsure(Shop shop, HotDay day) {
    this.shop = shop;
    this.day = day;
  }

  /**
   * The band over all unknowns, and the one that moves the answer most when it alone goes from its
   * kind to its unkind end, the others likely.
   *
   * @param likely peak with all of them likely, °C
   * @param steps told how far it is
   * @param from part of the whole at the start
   * @param to part of the whole at the end
   * @return band; it holds the likely peak
   */
  Band band(double likely, Steps steps, double from, double to) {
    List<SpanPlace> unknowns = Unknowns.of(shop);
    if (unknowns.isEmpty()) {
      return new Band(likely, likely, Optional.empty());
    }
    int last = 2 * unknowns.size();
    double[] peaks =
        Batch.within(steps, "what is not known", from, to)
            .run(
                IntStream.rangeClosed(0, last + 1).boxed().toList(),
                run -> {
                  Choice choice = run % 2 == 0 ? Choice.KIND : Choice.UNKIND;
                  return peak(
                      run >= last
                          ? Unknowns.choose(shop, choice)
                          : Unknowns.chooseOne(shop, unknowns.get(run / 2), choice));
                })
            .stream()
            .mapToDouble(Batch.Outcome::orThrow)
            .toArray();
    int most = 0;
    for (int i = 1; i < unknowns.size(); i++) {
      if (swing(peaks, i) > swing(peaks, most)) {
        most = i;
      }
    }
    SpanPlace place = unknowns.get(most);
    return new Band(
        Math.min(likely, Math.min(peaks[last], peaks[last + 1])),
        Math.max(likely, Math.max(peaks[last], peaks[last + 1])),
        swing(peaks, most) < NOTHING
            ? Optional.empty()
            : Optional.of(place.label() + " (" + place.of() + ")"));
  }

  private static double swing(double[] peaks, int unknown) {
    return Math.abs(peaks[2 * unknown + 1] - peaks[2 * unknown]);
  }

  private double peak(Shop chosen) {
    Optional<Cooling> cooling = Sizing.cooling(chosen);
    if (cooling.isEmpty()) {
      return Sizing.withoutUnit(chosen, day).peakTemperature();
    }
    ShopModel model = ShopModel.cooling(chosen, day, ShopModel.Holding.HELD);
    return LivedDay.of(model, cooling, Sizing.room(chosen)).peakTemperature();
  }
}
