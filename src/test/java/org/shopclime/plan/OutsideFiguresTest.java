package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.run.MadeShops.CLIMATES;
import static org.shopclime.run.MadeShops.btuh;
import static org.shopclime.run.MadeShops.celsius;
import static org.shopclime.run.MadeShops.fahrenheit;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.balance.ShopModel;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.run.MadeShops;
import org.shopclime.run.UnitSearch;
import org.shopclime.shop.Choice;
import org.shopclime.shop.Examples;
import org.shopclime.shop.ShellSize;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;
import org.shopclime.shop.Unknowns;
import org.shopclime.unit.RoomSizeGuide;

/**
 * Whole answers against figures from outside: sums by pencil, the buyers' rule by floor area, and
 * what owners of real shops report.
 */
class OutsideFiguresTest {

  private static final double FOOT = 0.3048;
  private static final String FINISHED = "Detached stud shop, R-13 walls, R-38 ceiling";
  private static final String ATTACHED = "Attached two-car garage, bare attic, steel door";
  private static final String POST_FRAME = "Post-frame metal shop with foil bubble wrap";

  private static Shop shop(
      String shell, double length, double width, double height, String station) {
    ShellSize size = new ShellSize(length * FOOT, width * FOOT, height * FOOT, 180);
    return MadeShops.preset(shell, "Hand tools and radio", station, 0, Optional.of(size));
  }

  /**
   * Winter loss by pencil: area times U-factor times difference, air, and the edge of the slab.
   * U-factors in BTU/(h ft2 °F): wall with R-13 in 2x4 at 16 in 0.089, ceiling with R-30 0.034
   * (ASHRAE 90.1, normative appendix A); one clear pane in aluminium 1.20, insulated steel door
   * 0.50 (common tables); the roll-up door of foam and 0.85 of films over 90 % of it, films
   * alone over the rest; attic taken as outdoors for so thick a ceiling; bare slab 0.73 BTU/(h ft
   * °F) over 96 ft (ASHRAE 90.1, Table A6.3). Air flow as the program has it.
   *
   * <p>Pencil 2,911 W (faces 1,410, air 760, edge 741), program 2,834 W. The program has less: the
   * published films take inner faces for as warm as the air, while air alone warms them by
   * convection here, so that the faces lose some 6 % less.
   */
  @Test
  void winterLossIsWhatAPencilFinds() {
    Shop foam = Examples.shop("insulated-foam-door");
    WinterAnswer winter = winter(foam);
    ShopModel model =
        ShopModel.heating(
            foam,
            MadeShops.day(foam),
            winter.design(),
            CLIMATES.find(MadeShops.MOBILE).orElseThrow().winter().wind());
    double door = 63 * (0.9 / (7.5 + 0.85) + 0.1 / 0.85);
    double walls = 4 * 24 * 9 - 63 - 3 * 6.75 - 2 * 9;
    double perFahrenheit = walls * 0.089 + 576 * 0.034 + 18 * 1.20 + 3 * 6.75 * 0.50 + door;
    double leak =
        model.streams().total(0, winter.indoor(), org.shopclime.balance.DayKind.IDLE, 0, 12)
            * 1006
            / (btuh(1) * 1.8);
    double difference = fahrenheit(winter.indoor()) - fahrenheit(winter.design());
    double edge = 0.73 * 4 * 24;
    double faces = perFahrenheit * difference;
    double pencil = btuh(faces + leak * difference + edge * difference);
    assertThat(winter.loss()).isLessThan(pencil);
    assertThat(winter.loss()).isCloseTo(pencil, withinPercentage(10));
    assertThat(winter.heater()).isGreaterThanOrEqualTo(winter.loss());
    assertThat(winter.heater()).isLessThan(2 * winter.loss());
    assertThat(winter(Examples.shop("insulated")).loss()).isGreaterThan(winter.loss());
    assertThat(winter(Examples.shop("bare-studs")).loss()).isGreaterThan(2 * winter.loss());
  }

  private static WinterAnswer winter(Shop shop) {
    return new Sizing(shop, CLIMATES).winter();
  }

  /**
   * An ordinary insulated room on an ordinary hot day needs a size within two of the buyers' rule
   * by floor area (room-size guidance of the U.S. Department of Energy's labelling programme,
   * {@link RoomSizeGuide}). Found: 8,000 to 10,000 BTU/h where the rule says 9,000 to 12,000.
   */
  @ParameterizedTest
  @CsvSource({
    "17.5, 20, 722230",
    "20, 20, 722230",
    "21.5, 21, 722230",
    "17.5, 20, 722430",
    "20, 20, 722430",
    "21.5, 21, 722430"
  })
  void sizesAreNearTheBuyersRule(double length, double width, String station) {
    Shop room = Unknowns.choose(shop(FINISHED, length, width, 8, station), Choice.LIKELY);
    double size =
        new UnitSearch(MadeShops.model(room), 0).smallestThatHolds(MadeShops::window).orElseThrow();
    double guide = RoomSizeGuide.btuhForArea(length * width * FOOT * FOOT);
    List<Double> sizes = Cooling.sizes();
    int above = (int) sizes.stream().filter(each -> each < btuh(guide) - 1).count();
    assertThat(sizes.indexOf(size)).isBetween(above - 2, above + 2);
  }

  /**
   * What owners report of shops like these (public forums and blogs, no instrument but a
   * thermometer): good for sign and ranking, not for degrees. Builds and weather are filled in with
   * what is usual.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // 24,000 BTU/h cannot keep up under foil bubble on steel, 28x36 ft, hot south
    "A2 metal 28x36, 36, 28, 10, post-frame, 722430, 97, 24000, 82, 95",
    // 25,000 BTU/h satisfies in a well insulated 27x32 ft shop, Gulf coast
    "A3 insulated 27x32, 32, 27, 10, finished, 722230, 95, 25000, 77, 79",
    // two units of 5,000 cool 650 ft2, plains
    "A4 650 ft2, 26, 25, 9, finished, 724500, 95, 10000, 77, 81",
    // 6,400 BTU/h: comfortable, not cold, 360 ft2, well insulated, 90 °F
    "A5 360 ft2, 20, 18, 8, finished, 725300, 90, 6400, 77, 81",
    // 25,000 BTU/h cools a 24x30 ft shop nicely
    "A1 insulated 24x30, 30, 24, 10, finished, 725300, 92, 25000, 77, 79"
  })
  void ownersReportsOfUnits(
      String name,
      double length,
      double width,
      double height,
      String shell,
      String station,
      double peak,
      double capacity,
      double low,
      double high) {
    String preset = shell.equals("finished") ? FINISHED : POST_FRAME;
    Shop shop = MadeShops.typed(shop(preset, length, width, height, station), celsius(peak));
    LivedDay day =
        LivedDay.of(MadeShops.model(shop), Optional.of(MadeShops.window(btuh(capacity))), 0);
    assertThat(fahrenheit(day.peakTemperature())).isBetween(low, high);
  }

  /**
   * Left shut, garages and metal shops get hotter than the day (owners' reports: above 120 °F on a
   * 110 °F day in Phoenix, 110 to 112 °F in Houston in July). The bands are wide, and the lower
   * ends lie below the reports, which do not tell what else gave off heat (a hot car, a freezer),
   * and whose thermometers hang high.
   */
  @Test
  void ownersReportsOfShutShops() {
    double phoenix = shut(MadeShops.typed(shop(ATTACHED, 22, 22, 9, MadeShops.PHOENIX), 43.3));
    assertThat(phoenix).isBetween(110.5, 130.0);
    double houston = shut(MadeShops.typed(shop(POST_FRAME, 30, 24, 10, MadeShops.HOUSTON), 36.7));
    assertThat(houston).isBetween(103.0, 118.0);
    double garage = shut(MadeShops.typed(shop(ATTACHED, 22, 22, 9, MadeShops.HOUSTON), 36.7));
    assertThat(garage).isBetween(100.0, houston);
    // Insulation does not make a shut shop hotter than bare studs do, and steadies it.
    double finished = shut(MadeShops.typed(shop(FINISHED, 24, 24, 9, MadeShops.HOUSTON), 36.7));
    assertThat(finished).isLessThan(garage);
  }

  private static double shut(Shop shop) {
    Shop idle =
        shop.withRooms(shop.rooms().stream().map(room -> room.withGains(List.of())).toList());
    ShopModel model = ShopModel.cooling(idle, MadeShops.day(idle), ShopModel.Holding.FREE);
    return fahrenheit(LivedDay.of(model, Optional.empty(), 0).peakTemperature());
  }

  /**
   * Owners' reports: foam in the door and insulation help; a compressor in the room costs about
   * what it draws. Ranking only.
   */
  @Test
  void whatHelpsRanksAsOwnersSay() {
    Shop bare = Examples.shop("bare-studs");
    double before = peak(bare);
    double ceiling = peak(ShopEdit.ceilingsFilled(bare, 30 / 5.678));
    double walls = peak(ShopEdit.wallsFilled(bare));
    double windows = peak(ShopEdit.windowsShaded(bare));
    assertThat(ceiling).isLessThan(walls);
    assertThat(walls).isLessThan(windows);
    assertThat(windows).isLessThan(before);
  }

  private static double peak(Shop shop) {
    return LivedDay.of(
            ShopModel.cooling(shop, HotDays.of(shop.place(), CLIMATES), ShopModel.Holding.HELD),
            Sizing.cooling(shop),
            0)
        .peakTemperature();
  }
}
