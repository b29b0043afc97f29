package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/** Laws every plant keeps in any air: heat and water are neither made nor lost. */
class RoomPlantProperties {

  private static final Cycling FAN_ON = Cycling.usual().withFanRunningOn(FanRunsOn.usual(80));
  private static final RoomUnit MACHINE = RoomUnit.windowUnitByEer(3516.85, 3.2);
  private static final PortableUnit ONE_HOSE =
      PortableUnit.oneHose(new Rating(3516.85, 1300)).withCycling(FAN_ON);
  private static final PortableUnit TWO_HOSES = PortableUnit.twoHoses(new Rating(3516.85, 1300));
  private static final PortableUnit LEAKY = TWO_HOSES.withRoomAirPart(0.4).withHeatBack(0.1);
  private static final DuctlessHeatPump SINGLE =
      DuctlessHeatPump.usual(
              new Rating(3516.85, 1050), new Rating(3600, 1030), Compressor.singleSpeed())
          .withBackUp(1500);
  private static final DuctlessHeatPump VARIABLE =
      DuctlessHeatPump.usual(
              new Rating(3516.85, 1050), new Rating(3600, 1030), Compressor.variableSpeed())
          .withCycling(FAN_ON);

  private static final List<RoomPlant> COOLERS =
      List.of(
          new WindowUnit(MACHINE, Cycling.usual()),
          new WindowUnit(MACHINE.withAirflowFraction(0.6), FAN_ON),
          ONE_HOSE,
          TWO_HOSES,
          LEAKY,
          LEAKY.withDust(new DustBand(0.35).unkind()),
          SINGLE.cooling(),
          VARIABLE.cooling());
  private static final List<RoomPlant> HEATERS =
      List.of(
          SINGLE.heating(),
          VARIABLE.heating(),
          VARIABLE.withBackUp(1000).withLowestOutdoor(-5).heating(),
          VARIABLE.withColdRating(Rating.ofCop(3600, 2.4)).withLowestOutdoor(-30).heating(),
          new Heater(1500));
  private static final List<RoomPlant> OTHERS =
      List.of(
          EvaporativeCooler.usual(0.7, 250),
          new EvaporativeCooler(0.7, 250, 1, 0),
          Dehumidifier.ofLabel(23.7, 1.8));

  @Provide
  Arbitrary<RoomPlant> plants() {
    return Arbitraries.of(List.of(COOLERS, HEATERS, OTHERS)).flatMap(Arbitraries::of);
  }

  @Provide
  Arbitrary<RoomPlant> coolers() {
    return Arbitraries.of(COOLERS);
  }

  @Provide
  Arbitrary<RoomPlant> coolersAndHeaters() {
    return Arbitraries.of(List.of(COOLERS, HEATERS)).flatMap(Arbitraries::of);
  }

  /** Room and outdoors at one pressure. */
  record Airs(AirState room, AirState outdoor) {}

  @Provide
  Arbitrary<Airs> airs() {
    return airs(-25);
  }

  @Provide
  Arbitrary<Airs> summerAirs() {
    return airs(15);
  }

  private static Arbitrary<Airs> airs(double coldest) {
    return Combinators.combine(
            evenly(2, 45),
            evenly(0.03, 0.95),
            evenly(coldest, 50),
            evenly(0.03, 0.95),
            evenly(70000, 104000))
        .as(
            (room, roomHumidity, outdoor, outdoorHumidity, pressure) ->
                new Airs(
                    AirState.ofRelativeHumidity(room, roomHumidity, pressure),
                    AirState.ofRelativeHumidity(outdoor, outdoorHumidity, pressure)));
  }

  private static Arbitrary<Double> evenly(double least, double most) {
    return Arbitraries.doubles()
        .between(least, most)
        .ofScale(6)
        .withDistribution(RandomDistribution.uniform());
  }

  @Property
  void heatAndWaterAreNeitherMadeNorLost(
      @ForAll("plants") RoomPlant plant,
      @ForAll("airs") Airs airs,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double demand) {
    RoomEffect effect = plant.at(airs.room(), airs.outdoor(), demand);
    assertClosed(effect, airs.room().dryBulb());
    assertClosed(effect.withInducedAirCounted(airs.room(), airs.outdoor()), airs.room().dryBulb());
    assertThat(effect.power()).isNotNegative().isFinite();
    assertThat(effect.runFraction()).isBetween(0.0, 1.0);
    assertThat(effect.inducedAir()).isNotNegative();
    assertThat(effect.suppliedAir()).isNotNegative();
  }

  /** The balances told in {@link RoomEffect}, with ASHRAE's enthalpy of vapour written out. */
  private static void assertClosed(RoomEffect effect, double t) {
    Elsewhere elsewhere = effect.elsewhere();
    double vapour = effect.water() * (2501000 + 1860 * t);
    double size =
        effect.power()
            + Math.abs(effect.sensible())
            + Math.abs(vapour)
            + Math.abs(elsewhere.heatOutdoors());
    assertThat(effect.sensible() + vapour + elsewhere.heatOutdoors() + elsewhere.heatPiped())
        .isCloseTo(effect.power(), within(1e-9 * size + 1e-12));
    double flow = Math.abs(effect.water()) + Math.abs(elsewhere.waterPiped());
    assertThat(effect.water() + elsewhere.waterOutdoors() + elsewhere.waterPiped())
        .isCloseTo(0, within(1e-9 * flow + 1e-15));
  }

  /** The air that passes an evaporative cooler, followed on its way, tells the same. */
  @Property
  void theSupplyOfWetPadsCarriesWhatTheEffectTells(@ForAll("summerAirs") Airs airs) {
    Assume.that(airs.outdoor().wetBulb() >= 0);
    EvaporativeCooler cooler = EvaporativeCooler.usual(0.7, 250);
    EvaporativeCooler.Supply supply = cooler.supply(airs.outdoor());
    RoomEffect effect = cooler.at(airs.room(), airs.outdoor(), 1);
    double wetBulb = airs.outdoor().wetBulb();
    double in = enthalpy(airs.outdoor()) + 250 / supply.dryAir();
    double evaporated = supply.air().humidityRatio() - airs.outdoor().humidityRatio();
    // an open vessel: air and water in, fan heat in, air out
    assertThat(enthalpy(supply.air()))
        .isCloseTo(in + evaporated * 4186 * wetBulb, within(1e-9 * Math.abs(in) + 1e-3));
    assertThat(effect.heatToRoom(airs.room().dryBulb()))
        .isCloseTo(
            supply.dryAir() * (enthalpy(supply.air()) - enthalpy(airs.room())), within(1e-6));
    assertThat(supply.waterUsed()).isCloseTo(1.2 * -effect.elsewhere().waterPiped(), within(1e-12));
    // never wetter than saturated
    assertThat(supply.air().humidityRatio())
        .isLessThanOrEqualTo(
            MoistAir.saturationHumidityRatio(supply.air().dryBulb(), supply.air().pressure())
                * (1 + 1e-9));
  }

  /** What comes out of the hose, followed as a stream, closes with the room. */
  @Property
  void theHoseCarriesWhatTheRoomLoses(@ForAll("airs") Airs airs) {
    AirState room = airs.room();
    for (PortableUnit unit : List.of(ONE_HOSE, TWO_HOSES)) {
      RoomEffect effect = unit.at(room, airs.outdoor(), 1);
      AirState in = unit.equals(ONE_HOSE) ? room : airs.outdoor();
      AirState out = unit.exhaust(room, airs.outdoor());
      double dryAir = 3516.85 * PortableUnit.USUAL_CONDENSER_AIRFLOW_PER_WATT * in.dryAirDensity();
      assertThat(effect.inducedAir()).isCloseTo(unit.equals(ONE_HOSE) ? dryAir : 0, within(1e-12));
      assertThat(dryAir * (enthalpy(out) - enthalpy(in)) + effect.heatToRoom(room.dryBulb()))
          .isCloseTo(effect.power(), within(1e-6));
      assertThat(dryAir * (out.humidityRatio() - in.humidityRatio()))
          .isCloseTo(-effect.water(), within(1e-12));
    }
  }

  @Property
  void moreDemandNeverDoesLess(
      @ForAll("coolersAndHeaters") RoomPlant plant,
      @ForAll("airs") Airs airs,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double one,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double other) {
    RoomEffect less = plant.at(airs.room(), airs.outdoor(), Math.min(one, other));
    RoomEffect more = plant.at(airs.room(), airs.outdoor(), Math.max(one, other));
    double sign = HEATERS.contains(plant) ? 1 : -1;
    // heat and vapour together: in hot air near saturation a coil takes little but water
    double t = airs.room().dryBulb();
    assertThat(sign * more.heatToRoom(t)).isGreaterThanOrEqualTo(sign * less.heatToRoom(t) - 1e-9);
    assertThat(more.power()).isGreaterThanOrEqualTo(less.power() - 1e-9);
  }

  @Property
  void aDemandIsFoundForWhatIsWished(
      @ForAll("coolersAndHeaters") RoomPlant plant,
      @ForAll("airs") Airs airs,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double part) {
    double full = plant.at(airs.room(), airs.outdoor(), 1).sensible();
    double off = plant.at(airs.room(), airs.outdoor(), 0).sensible();
    double wished = off + part * (full - off);
    double demand = plant.demandFor(wished, airs.room(), airs.outdoor());
    assertThat(demand).isBetween(0.0, 1.0);
    assertThat(plant.at(airs.room(), airs.outdoor(), demand).sensible())
        .isCloseTo(wished, within(1e-6));
    assertThat(plant.demandFor(off - (full - off), airs.room(), airs.outdoor())).isZero();
    if (full != off) {
      assertThat(plant.demandFor(full + (full - off), airs.room(), airs.outdoor())).isEqualTo(1);
    }
  }

  @Property
  void hotterOutdoorsHelpsNoCooler(
      @ForAll("coolers") RoomPlant plant,
      @ForAll @Scale(6) @DoubleRange(min = 20, max = 30) double room,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 0.7) double humidity,
      @ForAll @Scale(6) @DoubleRange(min = 24, max = 44) double outdoor) {
    AirState inside = AirState.ofRelativeHumidity(room, humidity, 101325);
    RoomEffect cooler = plant.at(inside, new AirState(outdoor, 0.012, 101325), 1);
    RoomEffect hotter = plant.at(inside, new AirState(outdoor + 1, 0.012, 101325), 1);
    assertThat(hotter.heatToRoom(room)).isGreaterThanOrEqualTo(cooler.heatToRoom(room) - 1e-9);
    assertThat(hotter.power()).isGreaterThanOrEqualTo(cooler.power() - 1e-9);
  }

  @Property
  void warmerOutdoorsNeverHarmsAHeatPumpBeyondItsFrost(
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 25) double room,
      @ForAll @Scale(6) @DoubleRange(min = -20, max = 17) double outdoor) {
    AirState inside = AirState.ofRelativeHumidity(room, 0.4, 101325);
    for (DuctlessHeatPump pump : List.of(SINGLE.withBackUp(0), VARIABLE)) {
      RoomPlant plant = pump.withLowestOutdoor(-30).heating();
      RoomEffect cold = plant.at(inside, AirState.ofRelativeHumidity(outdoor, 0.7, 101325), 1);
      RoomEffect mild =
          plant.at(inside, AirState.ofRelativeHumidity(outdoor + 0.5, 0.7, 101325), 1);
      // from 17 to 35 °F frost takes a tenth while the curve gives a fifth: it rises all the same
      assertThat(mild.sensible()).isGreaterThan(cold.sensible());
      assertThat(mild.sensible() / mild.power())
          .isGreaterThan(cold.sensible() / cold.power() * 0.995);
      assertThat(cold.elsewhere().heatOutdoors()).isNegative();
    }
  }

  private static double enthalpy(AirState air) {
    return 1006 * air.dryBulb() + air.humidityRatio() * (2501000 + 1860 * air.dryBulb());
  }
}
