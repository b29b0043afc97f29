package org.shopclime.balance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Station;
import org.shopclime.sun.AstronomicalDay;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.ClearSky;
import org.shopclime.sun.FaceSun;
import org.shopclime.sun.OverhangShade;
import org.shopclime.sun.PerezSky;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;

/**
 * Sun of a clear day on the outer faces: what each square metre takes in and, for glass, lets
 * through. Taken at the middle of each hour. Trees hold back direct sun only; overhangs and fins
 * also the light around the sun, as much of it as of the sun itself, and their share of sky and
 * ground.
 */
final class SunOnShop {

  /** Ozone, cm: 0.3 is the usual mid-latitude value (Bird and Hulstrom 1981). */
  private static final double OZONE = 0.3;

  private static final SunAngles NIGHT = new SunAngles(-90, 0);

  /**
   * Sun by the hour of the sundial that is surely down, degrees: the clock is off the sundial by 17
   * minutes (4.3 degrees) at most, refraction lifts by 0.6, declination by formula errs by 0.5.
   */
  private static final double SURELY_DOWN = -6;

  private final double[][] absorbed;
  private final double[][] absorbedInside;
  private final double[][] beam;
  private final double[][] diffuse;
  private final SunAngles[] suns;

  SunOnShop(int chains, int hours) {
    absorbed = new double[chains][hours];
    absorbedInside = new double[chains][hours];
    suns = new SunAngles[hours];
    beam = new double[chains][hours];
    diffuse = new double[chains][hours];
  }

  /** No sun. */
  static SunOnShop none(int chains) {
    return new SunOnShop(chains, Profile.HOURS);
  }

  /** Sun of a clear day. */
  static SunOnShop clear(List<Piece> pieces, HotDay day, double groundReflectance) {
    return clear(
        pieces, day, hour -> isNight(day, hour) ? NIGHT : sunOf(day, hour), groundReflectance);
  }

  /** Sun of a clear day that stands where it is told for each hour ending 1 to 24. */
  static SunOnShop clear(
      List<Piece> pieces, HotDay day, IntFunction<SunAngles> sun, double groundReflectance) {
    SunOnShop shop = new SunOnShop(pieces.size(), Profile.HOURS);
    shop.shine(pieces, day, sun, groundReflectance);
    return shop;
  }

  /** The same of which clouds let through a part, beam and scattered light alike. */
  static SunOnShop clouded(
      List<Piece> pieces, HotDay day, double groundReflectance, double letThrough) {
    SunOnShop shop = clear(pieces, day, groundReflectance);
    for (double[][] all :
        new double[][][] {shop.absorbed, shop.absorbedInside, shop.beam, shop.diffuse}) {
      for (double[] hours : all) {
        for (int hour = 0; hour < hours.length; hour++) {
          hours[hour] *= letThrough;
        }
      }
    }
    return shop;
  }

  /** Sun on level ground on a clear day, mean of 24 hours, W/m². */
  static double clearGlobal(HotDay day, double groundReflectance) {
    double sum = 0;
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      if (!isNight(day, hour)) {
        double altitude = sunOf(day, hour).altitudeDeg();
        if (altitude > 0) {
          sum += sky(day, altitude, groundReflectance).globalHorizontal();
        }
      }
    }
    return sum / Profile.HOURS;
  }

  private static ClearSky sky(HotDay day, double altitudeDeg, double groundReflectance) {
    return BirdClearSky.at(
        altitudeDeg,
        day.date().getDayOfYear(),
        day.pressure(),
        OZONE,
        day.waterCm(),
        day.aerosol(),
        groundReflectance);
  }

  /** Where the sun stands in the middle of an hour ending 1 to 24. */
  static SunAngles sunOf(HotDay day, int hour) {
    Station station = day.station();
    return SunPosition.atStandardTime(
        day.date().getYear(),
        day.date().getDayOfYear(),
        hour - 0.5,
        station.timeZoneHours(),
        station.latitudeDeg(),
        station.longitudeDeg(),
        station.elevationM());
  }

  /** Whether the sun is down for certain, which costs far less to tell than where it stands. */
  private static boolean isNight(HotDay day, int hour) {
    Station station = day.station();
    double solar = hour - 0.5 - station.timeZoneHours() + station.longitudeDeg() / 15;
    return new AstronomicalDay(day.date().getDayOfYear())
            .sunAt(station.latitudeDeg(), solar)
            .altitudeDeg()
        < SURELY_DOWN;
  }

  private void shine(
      List<Piece> pieces, HotDay day, IntFunction<SunAngles> sunOfHour, double groundReflectance) {
    int dayOfYear = day.date().getDayOfYear();
    for (int hour = 1; hour <= 24; hour++) {
      SunAngles sun = sunOfHour.apply(hour);
      if (sun.isUp()) {
        ClearSky sky = sky(day, sun.altitudeDeg(), groundReflectance);
        place(hour - 1, sun);
        Map<Direction, FaceSun> faces = new HashMap<>();
        for (int chain = 0; chain < pieces.size(); chain++) {
          if (isAsBefore(pieces, chain)) {
            copy(chain - 1, chain, hour - 1);
          } else if (pieces.get(chain).outside() instanceof Piece.Outdoors outdoors) {
            FaceSun face =
                faces.computeIfAbsent(
                    new Direction(outdoors.tilt(), outdoors.azimuth()),
                    key ->
                        PerezSky.on(
                            outdoors.tilt(),
                            outdoors.azimuth(),
                            sun,
                            sky.directNormal(),
                            sky.diffuseHorizontal(),
                            dayOfYear,
                            groundReflectance));
            add(chain, hour - 1, pieces.get(chain), outdoors, sun, face, 1);
          }
        }
      }
    }
  }

  /**
   * Which way a face looks, in degrees. Compared by hand: what a record does by itself is linked at
   * run time, which takes longer than all the comparing.
   */
  private record Direction(double tilt, double azimuth) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Direction direction
          && Double.compare(tilt, direction.tilt) == 0
          && Double.compare(azimuth, direction.azimuth) == 0;
    }

    @Override
    public int hashCode() {
      return 31 * Double.hashCode(tilt) + Double.hashCode(azimuth);
    }
  }

  /** Whether a path is one more through the face of the path before it. */
  private static boolean isAsBefore(List<Piece> pieces, int chain) {
    return chain > 0
        && pieces.get(chain).outside() == pieces.get(chain - 1).outside()
        && pieces.get(chain).pane().isEmpty()
        && pieces.get(chain - 1).pane().isEmpty();
  }

  private void copy(int from, int to, int hour) {
    absorbed[to][hour] = absorbed[from][hour];
  }

  /**
   * Adds what one square metre of an outdoor path takes in and lets through in a part of an hour.
   *
   * @param weight length of that part, as a share of the time in which the sun is up
   */
  void add(
      int chain,
      int hour,
      Piece piece,
      Piece.Outdoors outdoors,
      SunAngles sun,
      FaceSun face,
      double weight) {
    Piece.Shade shade = outdoors.shade();
    double lit = 1;
    if (shade.boards().isPresent()) {
      lit = OverhangShade.sunlitFraction(sun, outdoors.azimuth(), shade.boards().get());
    }
    double direct = face.beam() * lit * shade.letThrough();
    double scattered =
        face.around() * lit
            + (face.sky() - face.around()) * shade.sky()
            + face.ground() * shade.ground();
    if (piece.pane().isPresent()) {
      Piece.Pane pane = piece.pane().get();
      double ofBeam = pane.letThrough() * direct * pane.optics().absorptance(face.incidenceDeg());
      double ofSky = pane.letThrough() * scattered * pane.optics().diffuseAbsorptance();
      absorbed[chain][hour] += weight * (ofBeam + ofSky);
      absorbedInside[chain][hour] += weight * ofSky * pane.optics().diffuseInnerShare();
      if (ofBeam > 0) {
        absorbedInside[chain][hour] +=
            weight * ofBeam * pane.optics().innerShare(face.incidenceDeg());
      }
      beam[chain][hour] +=
          weight * pane.letThrough() * direct * pane.optics().transmittance(face.incidenceDeg());
      diffuse[chain][hour] +=
          weight * pane.letThrough() * scattered * pane.optics().diffuseTransmittance();
    } else {
      absorbed[chain][hour] += weight * outdoors.absorptance() * (direct + scattered);
    }
  }

  /** Tells where the sun stands in an hour, for following its beam inside. */
  void place(int hour, SunAngles sun) {
    suns[hour] = sun;
  }

  /** Part of what glass takes in that acts at its inner face, W/m². */
  double absorbedInside(int chain, int hour) {
    return absorbedInside[chain][hour];
  }

  /** Where the sun stands in an hour in which there is any. */
  SunAngles sun(int hour) {
    return suns[hour];
  }

  /** Sun taken in by an outer face or by glass, W/m², by chain and hour (0 = hour ending 1). */
  double absorbed(int chain, int hour) {
    return absorbed[chain][hour];
  }

  /** Direct sun let through by glass, W/m². */
  double beam(int chain, int hour) {
    return beam[chain][hour];
  }

  /** Scattered sun let through by glass, W/m². */
  double diffuse(int chain, int hour) {
    return diffuse[chain][hour];
  }
}
