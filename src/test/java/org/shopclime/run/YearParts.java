package org.shopclime.run;

import java.util.Optional;
import org.shopclime.balance.ShopYear;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/** The parts of a step of a year, put together as the step does, in one of its networks. */
record YearParts(
    ShopYear year,
    ModeMarch march,
    Drivers drivers,
    StepInflow outdoors,
    YearAir air,
    StepWater water,
    YearUnit unit,
    YearPlants plants) {

  private static final double HOUR = 3600;
  private static final double FINE = 300;

  /**
   * Parts that stand at one temperature at the beginning of an hour.
   *
   * @param year the year
   * @param owned the unit, if any
   * @param hour the hour
   * @param celsius where the march stands
   */
  static YearParts of(ShopYear year, Optional<Cooling> owned, int hour, double celsius) {
    int network = year.networkOf(hour);
    ModeMarch march = new ModeMarch(year.network(network), HOUR, FINE, HOUR - FINE, HOUR / 4);
    Drivers drivers = new Drivers(year.network(network));
    int cooled = owned.isPresent() ? 0 : -1;
    StepInflow outdoors = new StepInflow(drivers, year.rooms(), cooled);
    YearAir air = new YearAir(year, march, drivers, outdoors);
    StepWater water =
        new StepWater(
            Moisture.of(year, hour),
            march,
            outdoors,
            new Driers(year.rooms(), year::drier),
            cooled,
            year.pressure(),
            Optional.empty(),
            air.ways());
    YearUnit unit = new YearUnit(owned, cooled, march, drivers, outdoors, water, year.pressure());
    YearPlants plants = new YearPlants(year, march, drivers, unit, water.passes());
    march.choose(YearRun.WHOLE);
    march.start(celsius);
    air.nextHour(hour);
    unit.nextHour(hour);
    year.fill(drivers, hour);
    year.radiate(drivers, hour, new double[2 * year.network(network).chains()]);
    for (int room = 0; room < year.rooms(); room++) {
      plants.gain(room, year.airGain(room, hour));
      water.gain(room, year.latentGain(room, hour));
    }
    return new YearParts(year, march, drivers, outdoors, air, water, unit, plants);
  }

  /** Looks at a step of an hour or of five minutes; false if a plant starts or stops in an hour. */
  boolean look(int hour, boolean fine) {
    march.choose(fine ? YearRun.FINE : YearRun.WHOLE);
    water.lasts(fine ? FINE : HOUR);
    unit.begin(!fine);
    air.begin(!fine);
    plants.begin(hour, 1, fine);
    plants.release();
    plants.holdAsBefore();
    march.look(drivers);
    return plants.controlInThisHumidity();
  }
}
