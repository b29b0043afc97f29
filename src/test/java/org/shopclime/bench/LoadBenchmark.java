package org.shopclime.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.load.PeakLoad;
import org.shopclime.load.ShopLoad;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/**
 * The load of the insulated example by all its lines, in ms, beside one day of its network marched
 * in steps of a quarter of an hour, against which it can be told on any machine.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LoadBenchmark {

  private Shop shop;
  private HotDay day;
  private ShopModel model;
  private March march;
  private Drivers drivers;
  private DayDrivers drive;

  /** Reads the shop and its day. */
  @Setup
  public void read() {
    shop = Examples.shop("insulated");
    day = DesignDays.hotDay(Climates.load().find("722230").orElseThrow(), Level.P1);
    model = ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
    march = new March(model.network(), 900);
    drivers = new Drivers(model.network());
    drive = model.drivers(DayKind.WORKING, component -> true, 0);
    drivers.hold(0, model.setPoint(0));
  }

  /**
   * One day of the network, marched.
   *
   * @return plant heat of its last step
   */
  @Benchmark
  public double marchedDay() {
    for (int slot = 0; slot < DaySlots.COUNT; slot += 3) {
      drive.fill(drivers, slot, 3);
      march.step(drivers);
    }
    return march.plant(0);
  }

  /**
   * From the network to the totals.
   *
   * @return the load without lines
   */
  @Benchmark
  public ShopLoad totals() {
    return PeakLoad.totals(model);
  }

  /**
   * A change of the shop: its model and the load by all lines.
   *
   * @return the load
   */
  @Benchmark
  public ShopLoad changed() {
    return PeakLoad.of(ShopModel.cooling(shop, day, ShopModel.Holding.HELD));
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
