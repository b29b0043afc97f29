package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.AirState;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.leakage.VentStack;
import org.shopclime.shop.Shop;

/** Air that follows the warmth of a place is found in steps of five minutes as in short ones. */
class PlacedStepsTest {

  private static final Profile NONE = Profile.of(hour -> 0);

  private record Vents(boolean toRoom, VentStack openings) implements PlacedMachine.Passage {

    @Override
    public double dryAir(double celsius, AirState room, AirState outdoors, double use) {
      double above = (toRoom ? room : outdoors).dryBulb();
      double flow = 1.1 * openings.stackFlow(celsius, above);
      return !toRoom && celsius < above ? -flow : flow;
    }

    @Override
    public boolean fromRoom() {
      return true;
    }

    @Override
    public boolean stillFromRoom() {
      return true;
    }
  }

  private static List<RoomHours> run(ShopDays days, int parts) {
    List<RoomHours> told = new ArrayList<>();
    DayRunner runner =
        new DayRunner(days, Optional.of(MadeShops.unit(Cooling.Kind.WINDOW, 3500)), 0, parts);
    runner.startSteady();
    runner.run(DayKind.IDLE);
    runner.run(DayKind.WORKING);
    told.addAll(runner.rooms());
    return told;
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void shortStepsTellTheSame(boolean toRoom) {
    Shop shop = MadeShops.example("insulated", MadeShops.MOBILE);
    ShopModel model = MadeShops.model(shop);
    PlacedMachine machine =
        new PlacedMachine(
            0,
            1,
            new Vents(toRoom, new VentStack(0.1, 0.1, 2)),
            -1,
            model.working(),
            DaySlots.constant(0),
            Profile.of(hour -> 1500),
            0.25,
            NONE,
            NONE,
            Profile.of(hour -> 0.002),
            NONE);
    ShopDays days = new ShopDays(model).with(machine);
    List<RoomHours> usual = run(days, 1);
    List<RoomHours> fine = run(days, 6);
    for (int room = 0; room < 2; room++) {
      for (int hour = 1; hour <= Profile.HOURS; hour++) {
        assertThat(usual.get(room).air().at(hour))
            .as("room " + room + " at " + hour)
            .isCloseTo(fine.get(room).air().at(hour), within(0.1));
        assertThat(usual.get(room).water().at(hour))
            .isCloseTo(fine.get(room).water().at(hour), within(1e-4));
      }
    }
  }
}
