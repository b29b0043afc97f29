package org.shopclime.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shopclime.balance.OvenBook;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.shop.Gain;
import org.shopclime.shop.OvenEdit;
import org.shopclime.shop.Shop;

/**
 * The curing ovens of a shop on its hot day, and what would change their heat.
 *
 * @param ovens each oven
 * @param variants the shop run again with all ovens used another way; none draws less air than now
 */
public record OvenAnswer(List<Oven> ovens, List<Change> variants) {

  /** Cured when work is over. */
  public static final String AFTER_WORK = "cured after work";

  /** A hood, what it takes replaced through the leaks. */
  public static final String HOOD = "hood vented outdoors, its air drawn in through the leaks";

  /** A hood with its own make-up air. */
  public static final String HOOD_LED = "hood vented outdoors, 80 % of its air led to it";

  /** Copies the lists. */
  public OvenAnswer {
    ovens = List.copyOf(ovens);
    variants = List.copyOf(variants);
  }

  /**
   * An oven on a working day.
   *
   * @param name line name
   * @param place where it stands in the shop file
   * @param room index of its room
   * @param heat what stays in the room, sensible, W by the hour
   * @param book its batches; nothing if it is held hot
   */
  public record Oven(String name, String place, int room, Profile heat, Optional<OvenBook> book) {}

  /** The ovens of a shop; nothing without one. */
  static List<Oven> ovens(Shop shop, ShopModel model) {
    List<Oven> ovens = new ArrayList<>();
    for (int room = 0; room < shop.rooms().size(); room++) {
      List<Gain> gains = shop.rooms().get(room).gains();
      for (int i = 0; i < gains.size(); i++) {
        if (gains.get(i) instanceof Gain.Oven oven) {
          int in = room;
          ovens.add(
              new Oven(
                  oven.name(),
                  "rooms[" + room + "].gains[" + i + "]",
                  room,
                  model.sensibleGain(room, i),
                  oven.batches().map(batches -> model.ovenBook(in, oven))));
        }
      }
    }
    return ovens;
  }

  /** The same shop with its ovens used another way, by name. */
  static Map<String, Shop> ways(Shop shop) {
    Map<String, Shop> ways = new LinkedHashMap<>();
    OvenEdit.afterWork(shop).ifPresent(after -> ways.put(AFTER_WORK, after));
    OvenEdit.hooded(shop, 0).ifPresent(after -> ways.put(HOOD, after));
    OvenEdit.hooded(shop, OvenEdit.LED).ifPresent(after -> ways.put(HOOD_LED, after));
    return ways;
  }
}
