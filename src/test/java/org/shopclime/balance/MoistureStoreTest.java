package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.layer;
import static org.shopclime.balance.TestShops.layers;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.wall;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.MoistAir;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;

/** Water in walls and wood, by hand. */
class MoistureStoreTest {

  /**
   * kg/m² for each unit of relative humidity, by the inner layer; from memory, as the class says.
   */
  @ParameterizedTest
  @CsvSource({
    "gypsum board, 0.09",
    "OSB, 0.25",
    "plywood, 0.25",
    "hardboard siding, 0.25",
    "MDF, 0.25",
    "particleboard, 0.25",
    "softwood, 0.25",
    "hardwood, 0.25",
    "concrete, 0.10",
    "brick, 0.10",
    "concrete block hollow, 0.10",
    "fiber-cement siding, 0.10",
    "cement board, 0.10",
    "stucco, 0.10",
    "lime plaster, 0.10",
    "sheet steel, 0",
    "XPS foam, 0",
    "foil bubble wrap, 0",
    "fiberglass batt, 0",
    "glass, 0",
    "vinyl siding, 0"
  })
  void holdsByInnerLayer(String material, double holds) {
    Room room =
        room(
            "Shop",
            RoomUse.COOLED,
            10,
            2.5,
            WISHED,
            wall("Wall", 0, 4, 2.5, layers(layer("sheet steel"), layer(material))));
    MoistureStore store = MoistureStore.of(room);
    assertThat(store.perRelativeHumidity()).isCloseTo(10 * holds, within(1e-9));
    assertThat(store.exchange()).isCloseTo(holds > 0 ? 10 * 3.16 / 1006 : 0, within(1e-9));
  }

  /** 125 kg of wood: 10 m²; 4 m² of inner wall: 8 m²; the floor counts for nothing. */
  @Test
  void contentsAndFloor() {
    Room room =
        TestShops.withContents(
            room(
                "Shop",
                RoomUse.COOLED,
                10,
                2.5,
                WISHED,
                TestShops.face(
                    "Floor", Part.FLOOR, "nothing", 0, 180, 4, 4, layers(layer("plywood"))),
                wall("Wall", 0, 4, 2.5, insulation(5))),
            500,
            125,
            4);
    MoistureStore store = MoistureStore.of(room);
    assertThat(store.perRelativeHumidity()).isCloseTo(10 * 0.25 + 8 * 0.09, within(1e-9));
    assertThat(store.exchange()).isCloseTo(18 * 3.16 / 1006, within(1e-9));
    ShopModel model = dark(shop(room), constant(35, 0));
    double saturated = MoistAir.saturationHumidityRatio(WISHED, TestShops.PRESSURE);
    assertThat(model.roomWater(0).store()).isCloseTo(3.22 / saturated, withinPercentage(1e-6));
    assertThat(model.roomWater(0).exchange()).isEqualTo(store.exchange());
    assertThat(model.roomWater(0).dryAir()).isCloseTo(25 * 1.1625, withinPercentage(0.1));
  }
}
