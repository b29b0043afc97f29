package org.shopclime.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceWatch;
import org.shopclime.climate.Climates;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.Stations;
import org.shopclime.shop.Warning;

/** Real answers, each reckoned once for equal shops, so that tests stay short. */
final class Remembering implements Answering {

  private final Answering real;
  private final Map<Shop, CoreAnswer> quick = new ConcurrentHashMap<>();
  private final Map<Shop, SizeAnswer> whole = new ConcurrentHashMap<>();

  Remembering(Climates climates) {
    this.real = Answering.of(climates);
  }

  @Override
  public ShopCheck.Findings check(Shop shop) {
    return real.check(shop);
  }

  @Override
  public CoreAnswer quick(Shop shop) {
    return quick.computeIfAbsent(shop, real::quick);
  }

  @Override
  public SizeAnswer whole(Shop shop, List<Warning> found, Progress progress) {
    SizeAnswer known = whole.get(shop);
    if (known == null) {
      known = real.whole(shop, found, progress);
      whole.put(shop, known);
    }
    return known;
  }

  @Override
  public Optional<AirlineAnswer> air(Shop shop, PlaceWatch watch) {
    return real.air(shop, watch);
  }

  @Override
  public Stations stations() {
    return real.stations();
  }
}
