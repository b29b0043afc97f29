package org.shopclime.bench;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.HotDays;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The usual example (2 rooms, 36 chains, 450 temperatures), in ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SizeBenchmark {

  private Climates climates;
  private Shop shop;
  private ShopModel model;
  private Optional<Cooling> cooling;

  /** Reads the example. */
  @Setup
  public void read() {
    climates = Climates.load();
    shop = Examples.shop(Examples.USUAL);
    model = ShopModel.cooling(shop, HotDays.of(shop.place(), climates), ShopModel.Holding.HELD);
    cooling = Optional.of(Cooling.window(0, 3516.85, 3.19, Cooling.Label.CEER, 1));
  }

  /**
   * The whole answer.
   *
   * @return answer
   */
  @Benchmark
  public SizeAnswer answer() {
    return new Sizing(shop, climates).answer(List.of(), Progress.silent());
  }

  /**
   * Loads by component and the days with and without the unit.
   *
   * @return answer
   */
  @Benchmark
  public CoreAnswer core() {
    return new Sizing(shop, climates).core();
  }

  /**
   * One lived day, idle cycle included.
   *
   * @return the day
   */
  @Benchmark
  public LivedDay livedDay() {
    return LivedDay.of(model, cooling, 0);
  }

  /**
   * The network of a shop on its day.
   *
   * @return model
   */
  @Benchmark
  public ShopModel model() {
    return ShopModel.cooling(shop, HotDays.of(shop.place(), climates), ShopModel.Holding.HELD);
  }
}
