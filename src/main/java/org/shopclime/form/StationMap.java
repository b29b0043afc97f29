package org.shopclime.form;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shopclime.climate.Station;

/** Where each station lies on the map, and which one is meant by a point of it. */
final class StationMap {

  /**
   * A station on the map.
   *
   * @param station the station
   * @param x to the right, 0 to {@link MapFrame#WIDTH}
   * @param y downwards, 0 to {@link MapFrame#HEIGHT}
   */
  record Spot(Station station, double x, double y) {

    double distance(double otherX, double otherY) {
      return Point2D.distance(x, y, otherX, otherY);
    }
  }

  /**
   * The name of a state in the middle of its stations.
   *
   * @param state two letters
   * @param x to the right
   * @param y downwards
   */
  record Name(String state, double x, double y) {}

  private final List<Spot> spots;
  private final List<Name> names;

  StationMap(List<Station> stations) {
    spots =
        stations.stream()
            .map(
                station -> {
                  Point2D.Double at =
                      MapFrame.of(station.state())
                          .place(station.latitudeDeg(), station.longitudeDeg());
                  return new Spot(station, at.x, at.y);
                })
            .toList();
    names = names(spots);
  }

  /** Names of the lower 48 states, those with most stations first. */
  private static List<Name> names(List<Spot> spots) {
    Map<String, List<Spot>> byState = new TreeMap<>();
    for (Spot spot : spots) {
      if (MapFrame.of(spot.station().state()) == MapFrame.LOWER_48) {
        byState.computeIfAbsent(spot.station().state(), state -> new ArrayList<>()).add(spot);
      }
    }
    return byState.entrySet().stream()
        .sorted(Comparator.comparing(entry -> -entry.getValue().size()))
        .map(
            entry ->
                new Name(
                    entry.getKey(),
                    entry.getValue().stream().mapToDouble(Spot::x).average().orElseThrow(),
                    entry.getValue().stream().mapToDouble(Spot::y).average().orElseThrow()))
        .toList();
  }

  List<Spot> spots() {
    return spots;
  }

  List<Name> names() {
    return names;
  }

  /** The station nearest to a point of the map, if one lies within a distance on the map. */
  Optional<Spot> near(double x, double y, double tolerance) {
    return spots.stream()
        .filter(spot -> spot.distance(x, y) <= tolerance)
        .min(Comparator.comparingDouble(spot -> spot.distance(x, y)));
  }

  Optional<Spot> of(Station station) {
    return spots.stream().filter(spot -> spot.station().id().equals(station.id())).findFirst();
  }
}
