package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.load.ShopLoad;

/**
 * The lines of a load in the hour in which all of it is greatest.
 *
 * @param hour hour ending 1 to 24, local standard time
 * @param lines lines of all cooled rooms, in order
 * @param sensible sensible load of all cooled rooms, W
 * @param latent latent load, W
 */
record PeakLines(int hour, List<PeakLine> lines, double sensible, double latent) {

  PeakLines {
    lines = List.copyOf(lines);
  }

  /**
   * One line in that hour.
   *
   * @param room name of its room
   * @param line the line
   * @param hour hour ending 1 to 24
   * @param share part of the total load, 1; 0 where there is no load
   */
  record PeakLine(String room, Line line, int hour, double share) {

    String name() {
      return line.name();
    }

    double drive() {
      return line.drive().at(hour);
    }

    double sensible() {
      return line.sensible().at(hour);
    }

    double latent() {
      return line.latent().at(hour);
    }

    double total() {
      return sensible() + latent();
    }

    double pencil() {
      return line.pencil(hour);
    }
  }

  static PeakLines of(ShopLoad load) {
    int hour = load.peakHour();
    double sensible = 0;
    double latent = 0;
    for (RoomLoad room : load.rooms()) {
      sensible += room.sensible().at(hour);
      latent += room.latent().at(hour);
    }
    double total = sensible + latent;
    List<PeakLine> lines = new ArrayList<>();
    for (RoomLoad room : load.rooms()) {
      for (Line line : room.lines()) {
        double heat = line.sensible().at(hour) + line.latent().at(hour);
        lines.add(new PeakLine(room.name(), line, hour, total == 0 ? 0 : heat / total));
      }
    }
    return new PeakLines(hour, lines, sensible, latent);
  }

  double total() {
    return sensible + latent;
  }

  /** The lines, greatest total first. */
  List<PeakLine> sorted() {
    return lines.stream()
        .sorted((one, other) -> Double.compare(other.total(), one.total()))
        .toList();
  }

  /** Whether lines of several rooms are among them, so that each must name its room. */
  boolean severalRooms() {
    return lines.stream().map(PeakLine::room).distinct().count() > 1;
  }
}
