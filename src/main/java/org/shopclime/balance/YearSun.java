package org.shopclime.balance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shopclime.shop.Room;
import org.shopclime.sun.FaceSun;
import org.shopclime.sun.PerezSky;
import org.shopclime.sun.SunAngles;

/** Sun of every hour of a year on the outer faces of a shop, and its sums. */
final class YearSun {

  private static final double KILOWATTS = 1e-3;

  private final List<Piece> pieces;
  private final SunOnShop onShop;
  private final Map<String, double[]> incident = new LinkedHashMap<>();
  private final double[] transmitted;

  /**
   * Sun of a year.
   *
   * @param pieces heat paths
   * @param weather the year
   * @param groundReflectance part of the sun the ground throws back
   */
  YearSun(List<Piece> pieces, YearWeather weather, double groundReflectance) {
    this.pieces = pieces;
    onShop = new SunOnShop(pieces.size(), YearWeather.HOURS);
    transmitted = new double[pieces.size()];
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      if (weather.direct(hour) + weather.diffuse(hour) > 0) {
        shine(hour, weather, groundReflectance);
      }
    }
  }

  private void shine(int hour, YearWeather weather, double groundReflectance) {
    List<SunAngles> suns = weather.suns(hour);
    if (suns.isEmpty()) { // light while the sun is down
      shine(hour, weather, groundReflectance, weather.sun(hour), 1);
    }
    for (SunAngles sun : suns) {
      shine(hour, weather, groundReflectance, sun, 1.0 / suns.size());
    }
    onShop.place(hour, weather.sun(hour));
    for (int chain = 0; chain < pieces.size(); chain++) {
      transmitted[chain] += (onShop.beam(chain, hour) + onShop.diffuse(chain, hour)) * KILOWATTS;
    }
  }

  private void shine(
      int hour, YearWeather weather, double groundReflectance, SunAngles sun, double weight) {
    Map<String, FaceSun> faces = new LinkedHashMap<>();
    for (int chain = 0; chain < pieces.size(); chain++) {
      if (pieces.get(chain).outside() instanceof Piece.Outdoors outdoors) {
        FaceSun face =
            faces.computeIfAbsent(
                key(outdoors),
                key ->
                    PerezSky.on(
                        outdoors.tilt(),
                        outdoors.azimuth(),
                        sun,
                        weather.direct(hour),
                        weather.diffuse(hour),
                        hour / Profile.HOURS + 1,
                        groundReflectance));
        onShop.add(chain, hour, pieces.get(chain), outdoors, sun, face, weight);
      }
    }
    faces.forEach(
        (key, face) ->
            incident.computeIfAbsent(key, none -> new double[1])[0] +=
                weight * face.total() * KILOWATTS);
  }

  private static String key(Piece.Outdoors outdoors) {
    return outdoors.tilt() + " " + outdoors.azimuth();
  }

  SunOnShop onShop() {
    return onShop;
  }

  /** Sun on each outdoor face, window and door, in the owner's order. */
  List<SurfaceSun> surfaces(List<Room> rooms) {
    Map<String, SurfaceSun> found = new LinkedHashMap<>();
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      if (piece.outside() instanceof Piece.Outdoors outdoors) {
        String name = piece.component().name();
        double through = piece.pane().isPresent() ? transmitted(chain) : 0;
        found.putIfAbsent(
            piece.room() + name,
            new SurfaceSun(name, rooms.get(piece.room()).name(), incident(outdoors), through));
      }
    }
    return List.copyOf(found.values());
  }

  /** Sun on a square metre of an outdoor path through the year, shade left out, kWh/m². */
  double incident(Piece.Outdoors outdoors) {
    double[] sum = incident.get(key(outdoors));
    return sum == null ? 0 : sum[0];
  }

  /** Sun let through by a square metre of glass through the year, kWh/m². */
  double transmitted(int chain) {
    return transmitted[chain];
  }
}
