package org.shopclime.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shopclime.climate.Aerosol;
import org.shopclime.climate.AerosolSource;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DayType;
import org.shopclime.climate.DegreeDays;
import org.shopclime.climate.GroundTemperature;
import org.shopclime.climate.HotPoint;
import org.shopclime.climate.Hours;
import org.shopclime.climate.HumidPoint;
import org.shopclime.climate.Level;
import org.shopclime.climate.Months;
import org.shopclime.climate.Station;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYear;
import org.shopclime.climate.Winter;

/** Weather made for a test: month number plus fifth in °C, five below and above. */
final class MadeWeather {

  static final Station STATION =
      new Station("722230", "Mobile Regional AP", "AL", -6, 30.683, -88.25, 66.1416);

  private MadeWeather() {}

  static StationClimate climate() {
    Map<Level, HotPoint> levels = new EnumMap<>(Level.class);
    levels.put(Level.HOTTEST, new HotPoint(38, 25, 6));
    levels.put(Level.P0_4, new HotPoint(36, 24.5, 7));
    levels.put(Level.P1, new HotPoint(35, 25, 8));
    levels.put(Level.P2, new HotPoint(33, 23.5, 7));
    return new StationClimate(
        STATION,
        101_325,
        levels,
        10,
        8,
        Hours.from(hour -> Math.abs(hour - 12) / 12.0),
        new HumidPoint(25, 30, 9, 35, 8),
        new Winter(-5, -6, 3),
        Hours.from(hour -> 3),
        4,
        new Aerosol(Months.from(month -> 0.1), new AerosolSource.Own()),
        Months.from(month -> 2),
        Months.from(month -> month),
        new GroundTemperature(19, 9, 15),
        new DegreeDays(900, 1400));
  }

  /** Sun of month m: 10 m W/m² as mean over 24 hours. */
  static TypicalYear year() {
    List<DayType> types = new ArrayList<>();
    for (int month = 1; month <= Months.COUNT; month++) {
      for (int fifth = 1; fifth <= DayType.FIFTHS; fifth++) {
        double mean = month + fifth;
        types.add(
            new DayType(
                month,
                fifth,
                6,
                mean,
                mean - 5,
                mean + 5,
                10,
                mean - 7,
                10.0 * month,
                100,
                0.5,
                3,
                DayType.Spread.NONE));
      }
    }
    TypicalYear shipped = Climates.load().typicalYear(STATION).orElseThrow();
    return new TypicalYear(STATION, types, shipped.courses(), shipped.sequence());
  }
}
