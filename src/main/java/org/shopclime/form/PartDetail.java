package org.shopclime.form;

import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Door;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Place;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Room;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Window;
import org.shopclime.shop.Words;
import org.shopclime.shop.Work;

/** A few figures beside the name of a part, so that it is found again in the tree. */
final class PartDetail {

  private static final int LONGEST = 18;

  private PartDetail() {}

  static String of(Record record, UnitSystem units) {
    if (record instanceof Place place) {
      return cut(place.station(), LONGEST - 4); // its name in the tree is longer
    }
    if (record instanceof Work work) {
      return cut(ScheduleText.write(work.hours()), LONGEST);
    }
    if (record instanceof CoolingUnit unit) {
      return unit.pads()
          .filter(pads -> unit.isEvaporative())
          .map(pads -> Quantities.show(Kind.AIR_FLOW, pads.airflow(), units))
          .orElseGet(
              () ->
                  unit.capacity() > 0
                      ? Quantities.show(Kind.POWER, unit.capacity(), units)
                          + (unit.isAdjusted() ? " SACC" : "")
                      : "not set");
    }
    if (record instanceof Prices prices) {
      return prices.electricity() instanceof Electricity.Flat flat
          ? FormText.figure(Kind.ENERGY_PRICE, flat.price(), units)
          : ShopParts.kind(prices.electricity().getClass());
    }
    if (record instanceof CompressedAir air) {
      return air.tank().map(tank -> FormText.figure(Kind.VOLUME, tank, units)).orElse("");
    }
    if (record instanceof Room room) {
      return Words.of(room.use()) + ", " + Quantities.show(Kind.AREA, room.floorArea(), units);
    }
    if (record instanceof Face face) {
      return size(face.width(), face.height(), units);
    }
    if (record instanceof Window window) {
      return size(window.width(), window.height(), units);
    }
    if (record instanceof Door door) {
      return size(door.width(), door.height(), units);
    }
    if (record instanceof Fan fan) {
      return Quantities.show(Kind.AIR_FLOW, fan.moved(), units) + " " + Words.of(fan.way());
    }
    if (record instanceof Gain.People people) {
      return Quantities.show(Kind.COUNT, people.count(), units);
    }
    if (record instanceof Gain.Lights lights) {
      return Quantities.show(Kind.COUNT, lights.count(), units)
          + " × "
          + FormText.figure(Kind.POWER, lights.watts(), units);
    }
    if (record instanceof Gain.Motor motor) {
      return FormText.figure(Kind.POWER, motor.power(), units);
    }
    if (record instanceof Gain.Compressor compressor) {
      return FormText.figure(Kind.POWER, compressor.power(), units);
    }
    if (record instanceof Gain.Oven oven) {
      return Quantities.show(Kind.TEMPERATURE, oven.temperature(), units);
    }
    if (record instanceof Gain.WorkFan fan) {
      return FormText.figure(Kind.POWER, fan.power(), units);
    }
    if (record instanceof Gain.Other other) {
      return FormText.figure(Kind.POWER, other.power(), units);
    }
    return "";
  }

  /** As many whole words as there is room for; of one long word what fits. */
  private static String cut(String text, int longest) {
    if (text.length() <= longest) {
      return text;
    }
    int end = text.lastIndexOf(' ', longest);
    return text.substring(0, end > 0 ? end : longest).replaceAll("[,;\\s]+$", "") + "…";
  }

  private static String size(double width, double height, UnitSystem units) {
    String across = Quantities.show(Kind.LENGTH, width, units);
    String up = Quantities.show(Kind.LENGTH, height, units);
    String unit = up.substring(up.lastIndexOf(' ') + 1);
    // one unit for both, as there is little room in the tree
    String first = across.endsWith(" " + unit) ? across.replace(" " + unit, "") : across;
    return first + " × " + up;
  }
}
