package org.shopclime.report;

import java.util.Optional;
import org.shopclime.airline.AirPlaces;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceQuestion;
import org.shopclime.airline.PlaceWatch;
import org.shopclime.climate.Climates;
import org.shopclime.plan.HotDays;
import org.shopclime.plan.Sizing;
import org.shopclime.shop.Shop;

/** Asks for the places of a compressor on the days that a shop is judged on. */
public final class AirlineAsk {

  private AirlineAsk() {}

  /**
   * The places of a shop's compressor, compared.
   *
   * @param shop a shop that passed its checks
   * @param climates climate tables
   * @return the answer; none where the shop has no compressor
   * @throws org.shopclime.run.RoomTooHot if a room where people work gets hotter than 80 °C
   */
  public static Optional<AirlineAnswer> answer(Shop shop, Climates climates) {
    return answer(shop, climates, PlaceWatch.silent());
  }

  /**
   * The places of a shop's compressor, compared while someone watches.
   *
   * @param shop a shop that passed its checks
   * @param climates climate tables
   * @param watch told how far it is, and asked whether it is still wanted
   * @return the answer; none where the shop has no compressor
   * @throws org.shopclime.run.RoomTooHot if a room where people work gets hotter than 80 °C
   * @throws java.util.concurrent.CancellationException if the watch no longer wants it
   */
  public static Optional<AirlineAnswer> answer(Shop shop, Climates climates, PlaceWatch watch) {
    return AirPlaces.answer(
        new PlaceQuestion(
            shop,
            HotDays.of(shop.place(), climates),
            Sizing.cooling(shop),
            Sizing.room(shop),
            new Sizing(shop, climates).winter().design(),
            HotDays.climate(shop.place(), climates).winter().wind()),
        watch);
  }
}
