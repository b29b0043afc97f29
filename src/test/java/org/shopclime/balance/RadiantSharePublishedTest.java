package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.gain.MotorGain;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.shop.Face;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;

/** Which part of a gain reaches faces before it warms the air. */
class RadiantSharePublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/balance/radiant-share.csv", useHeadersInDisplayName = true)
  void isAsPrinted(String id, String gain, double share, double tolerance) {
    double found = Map.of("motor", MotorGain.RADIANT_SHARE, "sun", sun()).get(gain);
    assertThat(found).as("%s, %s", id, gain).isCloseTo(share, within(tolerance));
  }

  /** Of the heat the drivers of a sunny box put in through its window, what is not put on air. */
  private static double sun() {
    Room box =
        TestShops.box("Shop", RoomUse.COOLED, TestShops.insulation(13), TestShops.insulation(13));
    List<Face> faces = new ArrayList<>(box.faces());
    faces.replaceAll(
        face ->
            face.name().equals("South")
                ? face.withWindows(List.of(TestShops.window("Window", 2, 1, 2.8, 0.6)))
                : face);
    ShopModel model = TestShops.sunny(TestShops.shop(box.withFaces(faces)), TestShops.swinging());
    DayDrivers sunny = model.drivers(DayKind.WORKING, component -> true, 0);
    double inside = sunHeat(model, sunny);
    double air = 0;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      air += sunny.airGain(0, slot) / DaySlots.COUNT;
    }
    assertThat(inside).isGreaterThan(20);
    return 1 - air / (inside + air);
  }

  /**
   * Plant heat that goes when the sun of the day is taken from all inner faces, mean of the day, W.
   */
  private static double sunHeat(ShopModel model, DayDrivers sunny) {
    Drivers drivers = new Drivers(model.network());
    sunny.fillMeans(drivers);
    drivers.hold(0, TestShops.WISHED);
    March march = new March(model.network(), 900);
    march.startSteady(drivers);
    double with = march.plant(0);
    for (int chain = 0; chain < model.network().chains(); chain++) {
      drivers.rightSource(chain, 0);
    }
    march.startSteady(drivers);
    return march.plant(0) - with;
  }
}
