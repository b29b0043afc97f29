package org.shopclime.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.shopclime.run.YearResult;
import org.shopclime.shop.Improvement;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Words;

/**
 * Finds which changes pay: each alone, and the best set that a budget buys. Sets are looked for
 * with the savings of single changes, which overlap; the most promising ones are then run whole,
 * and what is told of the chosen one comes from its own runs.
 */
final class Paying {

  /** Sets that are run whole before one is chosen. */
  private static final int RUN = 4;

  private static final Set<Improvement> FOAMS =
      Set.of(
          Improvement.HALF_INCH_IN_DOORS,
          Improvement.INCH_IN_DOORS,
          Improvement.INCH_AND_HALF_IN_DOORS);

  private final Shop shop;
  private final PriceBook prices;
  private final Function<Shop, YearResult> run;
  private final Function<YearResult, Double> hotWork;
  private final Outcome now;
  private final Steps steps;

  /**
   * A question.
   *
   * @param shop the shop
   * @param prices its prices
   * @param described its year
   * @param run runs the year of a changed shop
   * @param hotWork working hours that are hot in a year
   * @param steps told how far it is, from 0.7 on
   */
  Paying(
      Shop shop,
      PriceBook prices,
      YearResult described,
      Function<Shop, YearResult> run,
      Function<YearResult, Double> hotWork,
      Steps steps) {
    this.shop = shop;
    this.prices = prices;
    this.run = run;
    this.hotWork = hotWork;
    this.steps = steps;
    now = outcome(shop, described);
  }

  /** A shop and what its year costs. */
  private record Outcome(Shop shop, double cost, double electricity, double hotWorkHours) {}

  /** A priced change that the shop can take, and what it does alone. */
  private record Candidate(Prices.ChangePrice priced, Outcome after, Payback alone) {}

  private Outcome outcome(Shop of, YearResult year) {
    YearCost cost = prices.cost(year);
    return new Outcome(of, cost.total(), cost.electricity(), hotWork.apply(year));
  }

  private Outcome outcome(Shop of) {
    return outcome(of, run.apply(of));
  }

  private static Optional<Shop> changed(Shop before, Improvement change) {
    return Optional.ofNullable(Changes.of(before).get(Words.of(change)));
  }

  private static Payback payback(Prices.ChangePrice priced, Outcome before, Outcome after) {
    return new Payback(
        Words.of(priced.change()),
        priced.cost(),
        before.electricity() - after.electricity(),
        before.cost() - after.cost(),
        after.hotWorkHours());
  }

  /** Priced changes that leave the shop as it is, by their place in the list. */
  static List<Integer> idle(Shop shop) {
    List<Integer> idle = new ArrayList<>();
    List<Prices.ChangePrice> priced = shop.prices().changes();
    for (int i = 0; i < priced.size(); i++) {
      if (changed(shop, priced.get(i).change()).isEmpty()) {
        idle.add(i);
      }
    }
    return idle;
  }

  /** The year in money. */
  YearBill bill(YearBill plain) {
    List<Candidate> candidates = candidates();
    Comparator<Candidate> byGain =
        Comparator.comparingDouble(candidate -> -candidate.alone().gain(prices.outlook()));
    List<Candidate> sorted = candidates.stream().sorted(byGain).toList();
    return new YearBill(
        prices,
        plain.cost(),
        sorted.stream().map(Candidate::alone).toList(),
        shop.prices().budget().map(budget -> firstSteps(sorted, budget)),
        plain.toBuy(),
        plain.pumpSaving());
  }

  private List<Candidate> candidates() {
    List<Prices.ChangePrice> able =
        shop.prices().changes().stream()
            .filter(priced -> changed(shop, priced.change()).isPresent())
            .toList();
    return Batch.within(steps, "changes and what they save", 0.7, 0.85)
        .run(
            able,
            priced -> {
              Shop after = changed(shop, priced.change()).orElseThrow();
              Outcome then = outcome(after);
              return new Candidate(priced, then, payback(priced, now, then));
            })
        .stream()
        .map(Batch.Outcome::orThrow)
        .toList();
  }

  private FirstSteps firstSteps(List<Candidate> candidates, double budget) {
    List<List<Candidate>> promising =
        sets(candidates, 0, budget).stream()
            .filter(set -> !set.isEmpty())
            .sorted(Comparator.comparingDouble(set -> -gain(set)))
            .limit(RUN)
            .toList();
    return Batch.within(steps, "what to do first", 0.85, 0.95).run(promising, this::whole).stream()
        .map(Batch.Outcome::orThrow)
        .filter(whole -> whole.gain() > 0)
        .max(Comparator.comparingDouble(Whole::gain))
        .map(whole -> new FirstSteps(budget, walked(whole.order())))
        .orElse(new FirstSteps(budget, List.of()));
  }

  /** A set of changes made one after the other, and what all together gain over the years, $. */
  private record Whole(List<Candidate> order, double gain) {}

  private Whole whole(List<Candidate> set) {
    List<Candidate> order =
        set.stream()
            .sorted(
                Comparator.comparingDouble(each -> each.alone().years().orElse(Double.MAX_VALUE)))
            .toList();
    if (order.size() == 1) {
      return new Whole(order, gain(order));
    }
    Shop after = shop;
    double price = 0;
    for (Candidate next : order) {
      after = changed(after, next.priced().change()).orElse(after);
      price += next.priced().cost();
    }
    double saved = now.cost() - prices.cost(run.apply(after)).total();
    return new Whole(order, prices.outlook().worthOfAll(saved) - price);
  }

  private double gain(List<Candidate> set) {
    return set.stream().mapToDouble(each -> each.alone().gain(prices.outlook())).sum();
  }

  /** All sets of the candidates from one on that the money buys and that go together. */
  private List<List<Candidate>> sets(List<Candidate> candidates, int from, double money) {
    List<List<Candidate>> sets = new ArrayList<>();
    sets.add(List.of());
    for (int i = from; i < candidates.size(); i++) {
      Candidate first = candidates.get(i);
      if (first.priced().cost() <= money && first.alone().gain(prices.outlook()) > 0) {
        for (List<Candidate> rest : sets(candidates, i + 1, money - first.priced().cost())) {
          if (rest.stream().noneMatch(other -> excludes(first, other))) {
            List<Candidate> set = new ArrayList<>(List.of(first));
            set.addAll(rest);
            sets.add(set);
          }
        }
      }
    }
    return sets;
  }

  /** One foam in a door takes the place of another. */
  private static boolean excludes(Candidate one, Candidate other) {
    return FOAMS.contains(one.priced().change()) && FOAMS.contains(other.priced().change());
  }

  /** One change after the other, each run on top of those before. */
  private List<Payback> walked(List<Candidate> order) {
    List<Payback> walk = new ArrayList<>(List.of(order.get(0).alone()));
    Outcome before = order.get(0).after();
    for (Candidate next : order.subList(1, order.size())) {
      Optional<Shop> after = changed(before.shop(), next.priced().change());
      if (after.isPresent()) {
        Outcome then = outcome(after.get());
        walk.add(payback(next.priced(), before, then));
        before = then;
      }
    }
    return walk;
  }
}
