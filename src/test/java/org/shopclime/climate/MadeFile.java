package org.shopclime.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.air.MoistAir;
import org.shopclime.sun.SunPosition;

/** The lines of an hourly file made for a test; the first hour of the year is line 3. */
final class MadeFile {
  static final String STATION = "722230,\"MOBILE REGIONAL AP\",AL,-6.0,30.683,-88.250,66";
  static final String HEADS =
      "Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),TotCld (tenths),"
          + "OpqCld (tenths),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s),"
          + "Pwat (cm),AOD (unitless),Alb (unitless)";

  private static final Station PLACE =
      new Station("722230", "Mobile Regional AP", "AL", -6, 30.683, -88.25, 66);

  private static final List<String> LINES = made();

  private MadeFile() {}

  /** All lines, free to be changed. */
  static List<String> lines() {
    return new ArrayList<>(LINES);
  }

  private static List<String> made() {
    List<String> lines = new ArrayList<>(List.of(STATION, HEADS));
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      lines.add(row(hour));
    }
    return lines;
  }

  /**
   * Dry bulb and other columns tell the hour of the day, so that a shift would be seen. Of the sun
   * 500 W/m² come straight and 100 from the sky; the dew point lies 10 K below the dry bulb.
   */
  private static String row(int hour) {
    int day = WeatherYear.dayOf(hour);
    int ending = WeatherYear.hourEnding(hour);
    double height = Math.sin(Math.toRadians(altitude(day, ending - 0.5)));
    boolean up = height > 0;
    double dryBulb = ending + 0.5;
    return String.format(
        Locale.ROOT,
        "%02d/%02d/1999,%02d:00,%.0f,%d,%d,7,3,%.1f,%.1f,%.0f,1011,%d.2,2.5,0.120,0.18",
        WeatherYear.dateOf(day).getMonthValue(),
        WeatherYear.dateOf(day).getDayOfMonth(),
        ending,
        up ? 500 * height + 100 : 0,
        up ? 500 : 0,
        up ? 100 : 0,
        dryBulb,
        dryBulb - 10,
        100 * MoistAir.saturationPressure(dryBulb - 10) / MoistAir.saturationPressure(dryBulb),
        ending % 10);
  }

  private static double altitude(int day, double hour) {
    return SunPosition.atStandardTime(
            2025,
            day,
            hour,
            PLACE.timeZoneHours(),
            PLACE.latitudeDeg(),
            PLACE.longitudeDeg(),
            PLACE.elevationM())
        .altitudeDeg();
  }
}
