package org.shopclime.form;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.Improvement;
import org.shopclime.shop.Prices;

/** A list with one more element, which fits those that stand in it as far as it can. */
final class NextElement {

  /** Where a tier ends that had no end, counted from where it begins, kWh. */
  private static final double TIER = 500;

  private NextElement() {}

  /**
   * A longer list.
   *
   * @param list as it stands
   * @param type class of its elements
   */
  static List<Object> appended(List<?> list, Class<?> type) {
    List<Object> longer = new ArrayList<>(list);
    if (type == Electricity.Tier.class) {
      endLast(longer);
    }
    longer.add(fitting(list, Starts.of(type)));
    return longer;
  }

  /** Another tier can only follow one that has an end. */
  private static void endLast(List<Object> tiers) {
    double reached = 0;
    for (int i = 0; i < tiers.size(); i++) {
      Electricity.Tier tier = (Electricity.Tier) tiers.get(i);
      if (tier.upTo().isEmpty()) {
        Optional<Double> end = Optional.of(reached + TIER);
        tiers.set(i, new Electricity.Tier(tier.price(), end, tier.from(), tier.to()));
        return;
      }
      reached = tier.upTo().get();
    }
  }

  private static Object fitting(List<?> list, Object usual) {
    if (usual instanceof Prices.ChangePrice price) {
      return Arrays.stream(Improvement.values())
          .filter(each -> list.stream().noneMatch(at -> ((Prices.ChangePrice) at).change() == each))
          .findFirst()
          .filter(each -> !list.isEmpty())
          .<Object>map(each -> new Prices.ChangePrice(each, price.cost()))
          .orElse(usual);
    }
    if (usual instanceof Electricity.PricedHours hours && !list.isEmpty()) {
      return new Electricity.PricedHours(
          hours.price(), hours.when(), Month.OCTOBER, Month.MAY); // the other half of the year
    }
    return usual;
  }
}
