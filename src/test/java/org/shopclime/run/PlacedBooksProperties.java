package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.air.AirState;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.leakage.VentStack;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/**
 * A machine in any room of any shop that is not cooled, with any air passing it: books of heat and
 * water close with the air between rooms, and so does the air itself.
 */
@AddLifecycleHook(MoreTries.class)
class PlacedBooksProperties {

  /** Air by the warmth of the place, or by a fan. */
  private record Drawn(
      boolean fromRoom, boolean toRoom, boolean stillFromRoom, VentStack vents, double fan)
      implements PlacedMachine.Passage {

    @Override
    public double dryAir(double celsius, AirState room, AirState outdoors, double use) {
      if (fan > 0) {
        return use * fan * (fromRoom ? room : outdoors).dryAirDensity();
      }
      double above = (toRoom ? room : outdoors).dryBulb();
      double flow = 1.1 * vents.stackFlow(celsius, above);
      return fromRoom != toRoom && celsius < above ? -flow : flow;
    }
  }

  private static Optional<PlacedMachine> machine(DrawnShop drawn, Shop shop) {
    List<Integer> places =
        java.util.stream.IntStream.range(1, shop.rooms().size())
            .filter(r -> shop.rooms().get(r).use() == RoomUse.FLOATING)
            .boxed()
            .toList();
    if (places.isEmpty()) {
      return Optional.empty();
    }
    DaySlots working = DaySlots.constant(drawn.between(0, 1));
    Profile heat = Profile.of(hour -> drawn.between(0, 500));
    Profile roomHeat = Profile.of(hour -> drawn.between(-100, 200));
    Profile water = Profile.of(hour -> drawn.between(-1e-5, 2e-5));
    Profile intake = Profile.of(hour -> drawn.between(0, 0.005));
    Profile supply =
        drawn.between(0, 1) < 0.5
            ? Profile.of(hour -> 0)
            : Profile.of(hour -> drawn.between(0, 0.02));
    double area = drawn.between(0.005, 0.3);
    return Optional.of(
        new PlacedMachine(
            0,
            drawn.any(places),
            new Drawn(
                drawn.between(0, 1) < 0.5,
                drawn.between(0, 1) < 0.5,
                drawn.between(0, 1) < 0.5,
                new VentStack(area, drawn.between(0.005, 0.3), drawn.between(0.5, 4)),
                drawn.between(0, 1) < 0.4 ? drawn.between(0.01, 0.2) : 0),
            -1,
            working,
            DaySlots.constant(drawn.between(0, 1) < 0.5 ? 0 : 0.5),
            heat,
            drawn.between(0, 1),
            roomHeat,
            water,
            intake,
            supply));
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void heatAndWaterAreKeptWithAirBetweenRooms(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop plain = drawn.shop();
    Shop shop = lot % 2 == 0 ? plain : drawn.opened(plain);
    Optional<PlacedMachine> machine = machine(drawn, shop);
    Assume.that(machine.isPresent());
    ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
    ShopDays days = new ShopDays(model).with(machine.get());
    Optional<Cooling> unit =
        drawn.between(0, 1) < 0.3
            ? Optional.empty()
            : Optional.of(MadeShops.unit(Cooling.Kind.WINDOW, drawn.between(1500, 12_000)));
    DayRunner runner = new DayRunner(days, unit, 0);
    if (unit.isEmpty() && drawn.between(0, 1) < 0.5) {
      runner.hold(drawn.between(15, 28));
    }
    runner.startSteady();
    try {
      for (DayKind kind : DayKind.values()) {
        DayBooks.closed(runner, kind, model.rooms());
      }
    } catch (RoomTooHot e) {
      Assume.that(false);
    }
  }

  /** What enters the place leaves it, and what the room loses by it comes in by its leaks. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void airIsKept(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    Optional<PlacedMachine> machine = machine(drawn, shop);
    Assume.that(machine.isPresent());
    ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
    PlaceAir air = new PlaceAir(model, machine.get());
    int place = machine.get().place();
    for (int hour = 1; hour <= 24; hour++) {
      air.begin(drawn.between(10, 90));
      double room = drawn.between(15, 45);
      int slot = (hour - 1) * DaySlots.PER_HOUR;
      air.flow(DayKind.WORKING, slot, 1, room, 0.008, new Drivers(model.network()));
      double drawnIn = machine.get().working().at(slot) * machine.get().intake().at(hour);
      double into = air.exchange(place) + air.outdoorAir(place);
      double toOutdoors = into - drawnIn - air.exchange(0);
      assertThat(toOutdoors).isGreaterThan(-1e-12);
      // Room: takes air in from outdoors and the place, gives to the place and outdoors.
      double through = air.through(0);
      double leaks = model.streams().total(0, room, DayKind.WORKING, slot, 1, through);
      assertThat(leaks).isGreaterThan(-1e-12);
      // What the machine draws is let out in the room.
      double out = leaks + air.exchange(0) + drawnIn - air.exchange(place);
      assertThat(out).as("air left for the leaks out").isGreaterThan(-1e-12);
      if (through > 0) {
        assertThat(leaks).isGreaterThan(through * (1 - 1e-12));
      }
      if (through == 0) {
        assertThat(leaks).isEqualTo(model.streams().total(0, room, DayKind.WORKING, slot, 1));
      }
    }
  }
}
