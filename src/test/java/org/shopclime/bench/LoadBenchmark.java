package org.shopclime.bench;

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
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.load.PeakLoad;
import org.shopclime.load.ShopLoad;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The load of the insulated example by all its lines, in ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LoadBenchmark {

  private Shop shop;
  private HotDay day;
  private ShopModel model;

  /** Reads the shop and its day. */
  @Setup
  public void read() {
    shop = Examples.shop("insulated");
    day = DesignDays.hotDay(Climates.load().find("722230").orElseThrow(), Level.P1);
    model = ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
  }

  /**
   * From the shop to its network.
   *
   * @return the model
   */
  @Benchmark
  public ShopModel model() {
    return ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
  }

  /**
   * From the network to the lines.
   *
   * @return the load
   */
  @Benchmark
  public ShopLoad load() {
    return PeakLoad.of(model);
  }
}
