package org.shopclime.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The lines of an hourly file made for a test; the first hour of the year is line 3. */
final class MadeFile {
  static final String STATION = "722230,\"MOBILE REGIONAL AP\",AL,-6.0,30.683,-88.250,66";
  static final String HEADS =
      "Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),TotCld (tenths),"
          + "OpqCld (tenths),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s),"
          + "Pwat (cm),AOD (unitless),Alb (unitless)";

  private MadeFile() {}

  static List<String> lines() {
    List<String> lines = new ArrayList<>(List.of(STATION, HEADS));
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      lines.add(row(hour));
    }
    return lines;
  }

  /** Dry bulb and other columns tell the hour of the day, so that a shift would be seen. */
  static String row(int hour) {
    int day = WeatherYear.dayOf(hour);
    int ending = WeatherYear.hourEnding(hour);
    return String.format(
        Locale.ROOT,
        "%02d/%02d/1999,%02d:00,%d,500,100,7,3,%d.5,10.0,55,1011,%d.2,2.5,0.120,0.18",
        WeatherYear.dateOf(day).getMonthValue(),
        WeatherYear.dateOf(day).getDayOfMonth(),
        ending,
        day,
        ending,
        ending % 10);
  }
}
