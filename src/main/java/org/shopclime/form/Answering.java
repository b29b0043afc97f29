package org.shopclime.form;

import java.util.List;
import java.util.Optional;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceWatch;
import org.shopclime.climate.Climates;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.plan.Yearly;
import org.shopclime.report.AirlineAsk;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.Stations;
import org.shopclime.shop.Warning;

/** Where the form has its answers from; everything here takes time and stays off its thread. */
interface Answering {

  /** What must be mended in a shop, and what is unusual. */
  ShopCheck.Findings check(Shop shop);

  /** The heart of the answer. */
  CoreAnswer quick(Shop shop);

  /** The whole answer. */
  SizeAnswer whole(Shop shop, List<Warning> found, Progress progress);

  /** The unit left on, set back, on demand; nothing where that is not known. */
  default Optional<HabitAnswer> habits(Shop shop) {
    return Optional.empty();
  }

  /** Where the compressor could stand; none where the shop has none. */
  Optional<AirlineAnswer> air(Shop shop, PlaceWatch watch);

  /** Look-up of stations for files. */
  Stations stations();

  /** Answers from the climate tables. */
  static Answering of(Climates climates) {
    Stations stations =
        new Stations(
            text -> climates.find(text).isPresent(),
            text ->
                climates.suggestions(text).stream()
                    .map(climate -> KnownNames.name(climate.station()))
                    .toList());
    return new Answering() {
      @Override
      public ShopCheck.Findings check(Shop shop) {
        return ShopCheck.check(shop, stations);
      }

      @Override
      public CoreAnswer quick(Shop shop) {
        return new Sizing(shop, climates).core();
      }

      @Override
      public SizeAnswer whole(Shop shop, List<Warning> found, Progress progress) {
        return new Sizing(shop, climates).answer(found, progress);
      }

      @Override
      public Optional<HabitAnswer> habits(Shop shop) {
        return new Yearly(shop, climates).habits(Progress.silent());
      }

      @Override
      public Optional<AirlineAnswer> air(Shop shop, PlaceWatch watch) {
        return AirlineAsk.answer(shop, climates, watch);
      }

      @Override
      public Stations stations() {
        return stations;
      }
    };
  }
}
