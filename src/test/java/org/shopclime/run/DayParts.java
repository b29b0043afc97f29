package org.shopclime.run;

import java.util.Optional;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/** The parts of a step of a day, put together as a runner does, in steps of five minutes. */
record DayParts(
    ShopDays days,
    ModeMarch march,
    Drivers drivers,
    Driers driers,
    StepInflow outdoors,
    DayAir air,
    StepWater water,
    DayUnit unit) {

  /** Parts of a shop at rest on an idle day; its first room is told. */
  static DayParts of(ShopModel model, Optional<Cooling> cooling) {
    ShopDays days = new ShopDays(model);
    ModeMarch march = days.march();
    Drivers drivers = new Drivers(model.network());
    Moisture moisture = Moisture.of(model);
    Driers driers = new Driers(model.rooms(), model::drier);
    StepInflow outdoors = new StepInflow(drivers, model.rooms(), 0);
    DayAir air = new DayAir(days, march, drivers, moisture, outdoors, 0);
    StepWater water =
        new StepWater(
            moisture, march, outdoors, driers, 0, model.pressure(), air.place(), air.ways());
    Control control = new Control.Average(days.cycling(0));
    DayUnit unit = new DayUnit(model, cooling, 0, control, march, drivers, outdoors, air, water);
    days.drivers(DayKind.IDLE).fillMeans(drivers);
    air.startSteady();
    water.lasts(DaySlots.SECONDS);
    water.startMeans();
    return new DayParts(days, march, drivers, driers, outdoors, air, water, unit);
  }

  /** Looks at a step of a working day, without the unit. */
  void look(int slot) {
    days.drivers(DayKind.WORKING).fill(drivers, slot, 1);
    air.begin(DayKind.WORKING, slot, 1);
    march.look(drivers);
  }
}
