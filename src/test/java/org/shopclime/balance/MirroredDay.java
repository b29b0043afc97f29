package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.climate.HotDay;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Face;
import org.shopclime.shop.Shop;
import org.shopclime.sun.SunAngles;

/**
 * East and west exchanged. No place on earth has the mirrored sun at the same hour (time backwards
 * would be another day), so the sun of each hour is put to the other side of the meridian: as high,
 * its azimuth counted the other way round. All else of the day is without direction, so that a shop
 * mirrored likewise must not notice.
 */
public final class MirroredDay {

  private MirroredDay() {}

  /** A shop held on a clear day under the mirrored sun. */
  public static ShopModel model(Shop shop, HotDay day) {
    return ModelMaker.of(
        ShopOnDay.of(
            shop,
            day,
            Season.COOLING,
            pieces ->
                SunOnShop.clear(
                    pieces,
                    day,
                    hour -> mirrored(SunOnShop.sunOf(day, hour)),
                    shop.place().groundReflectance())),
        ShopModel.Holding.HELD);
  }

  private static SunAngles mirrored(SunAngles sun) {
    return new SunAngles(sun.altitudeDeg(), 360 - sun.azimuthDeg());
  }

  /** The shop as seen in a mirror. */
  public static Shop shop(Shop shop) {
    return DrawnShop.eachFace(shop, MirroredDay::face);
  }

  private static Face face(Face face) {
    List<Object> windows = new ArrayList<>();
    face.windows()
        .forEach(
            window ->
                windows.add(
                    DrawnShop.with(
                        window, "offset", face.width() - window.offset() - window.width())));
    return DrawnShop.with(face, "azimuth", (360 - face.azimuth()) % 360, "windows", windows);
  }
}
