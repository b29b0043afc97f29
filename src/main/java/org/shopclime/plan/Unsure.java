package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  private static final List<Choice> ENDS = List.of(Choice.KIND, Choice.UNKIND);

  private final Shop shop;
  private final HotDay day;
  private final List<SpanPlace> unknowns;

  Unsure(Shop shop, HotDay day) {
    this.shop = shop;
    this.day = day;
    this.unknowns = Unknowns.of(shop);
  }

  /**
   * Highest room temperatures to be found: for each unknown that with it alone at its kind end and
   * at its unkind one, the others likely; then those with all at their kind ends and all at their
   * unkind ones. None where all is known.
   */
  List<Later<Double>> peaks() {
    List<Later<Double>> peaks = new ArrayList<>();
    for (SpanPlace unknown : unknowns) {
      for (Choice choice : ENDS) {
        peaks.add(new Later<>(() -> peak(Unknowns.chooseOne(shop, unknown, choice))));
      }
    }
    for (Choice choice : unknowns.isEmpty() ? List.<Choice>of() : ENDS) {
      peaks.add(new Later<>(() -> peak(Unknowns.choose(shop, choice))));
    }
    return peaks;
  }

  /**
   * The band over all unknowns, and the one that moves the answer most when it alone goes from its
   * kind to its unkind end, the others likely.
   *
   * @param likely peak with all of them likely, °C
   * @param peaks those of {@link #peaks}, °C
   * @return band; it holds the likely peak
   */
  Band band(double likely, List<Double> peaks) {
    if (unknowns.isEmpty()) {
      return new Band(likely, likely, Optional.empty());
    }
    int last = 2 * unknowns.size();
    int most = 0;
    for (int i = 1; i < unknowns.size(); i++) {
      if (swing(peaks, i) > swing(peaks, most)) {
        most = i;
      }
    }
    SpanPlace place = unknowns.get(most);
    return new Band(
        Math.min(likely, Math.min(peaks.get(last), peaks.get(last + 1))),
        Math.max(likely, Math.max(peaks.get(last), peaks.get(last + 1))),
        swing(peaks, most) < NOTHING
            ? Optional.empty()
            : Optional.of(
                place.of().isEmpty() ? place.label() : place.label() + " (" + place.of() + ")"));
  }

  private static double swing(List<Double> peaks, int unknown) {
    return Math.abs(peaks.get(2 * unknown + 1) - peaks.get(2 * unknown));
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
