package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.envelope.DoorLeaves;
import org.shopclime.envelope.GlassTable;
import org.shopclime.envelope.Material;
import org.shopclime.envelope.Materials;
import org.shopclime.shop.Board;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Glass;
import org.shopclime.shop.Place;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** The names that a text field of the form offers, where what it takes is a name. */
final class KnownNames {

  private final List<String> stations;
  private final Map<String, String> byNumber;
  private final Optional<Climates> climates;

  private KnownNames(Map<String, String> byNumber, Optional<Climates> climates) {
    this.climates = climates;
    this.stations = byNumber.values().stream().sorted().toList();
    this.byNumber = Map.copyOf(byNumber);
  }

  static KnownNames withoutStations() {
    return new KnownNames(Map.of(), Optional.empty());
  }

  static KnownNames of(Climates climates) {
    return new KnownNames(
        climates.stations().stream()
            .collect(Collectors.toMap(Station::id, KnownNames::name, (one, other) -> one)),
        Optional.of(climates));
  }

  /** The tables the stations are from, once they are read. */
  Optional<Climates> climates() {
    return climates;
  }

  /** Name and state, which the tables find again. */
  static String name(Station station) {
    return station.name() + ", " + station.state();
  }

  List<String> stations() {
    return stations;
  }

  /** The name of a station that is given by its number; any other text as it is. */
  String spelled(String station) {
    return byNumber.getOrDefault(station.strip(), station);
  }

  /** A shop whose station is called by its name, to be shown. */
  Shop spelled(Shop shop) {
    Record place = ShopParts.with(shop.place(), "station", spelled(shop.place().station()));
    return (Shop) ShopParts.with(shop, "place", place);
  }

  static boolean areOffered(Class<?> record, String component) {
    return (record == Place.class && component.equals("station"))
        || (record == Face.class && component.equals("behind"))
        || (record == CoolingUnit.class && component.equals("room"))
        || (record == Door.class && component.equals("leaf"))
        || (record == BuildLayer.class && component.equals("material"))
        || (record == Board.class && component.equals("material"))
        || (record == Glass.class && component.equals("name"));
  }

  List<String> of(Class<?> record, Shop shop, ShopPath path) {
    if (record == Place.class) {
      return stations;
    }
    if (record == Door.class) {
      return DoorLeaves.names();
    }
    if (record == Glass.class) {
      return GlassTable.names();
    }
    if (record == BuildLayer.class || record == Board.class) {
      return Materials.all().stream()
          .map(Material::name)
          .filter(name -> record != Board.class || name.toLowerCase(Locale.ROOT).contains("foam"))
          .toList();
    }
    List<String> names = new ArrayList<>();
    if (record == Face.class) {
      names.addAll(List.of("outdoors", "ground", "nothing"));
    }
    String own = path.steps().isEmpty() ? "" : path.steps().get(0).toString();
    for (int i = 0; i < shop.rooms().size(); i++) {
      Room room = shop.rooms().get(i);
      if (!own.equals("rooms[" + i + "]")) {
        names.add(room.name());
      }
    }
    return names;
  }
}
