package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampRoom;
import org.shopclime.plan.DampAnswer;
import org.shopclime.plan.DampWords;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.HumidityClass;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Words;

/** Damp in the walls, in sentences: what was found, what was taken, what is left out. */
public final class DampText {

  private DampText() {}

  /**
   * Everything there is to say.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return one line for each; none if the walls were not looked at
   */
  public static List<String> lines(SizeAnswer answer, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    if (answer.damp().isPresent() && !answer.damp().get().findings().isEmpty()) {
      lines.addAll(found(answer.damp().get()));
      lines.add(taken(answer.shop(), answer.damp().get(), units));
      lines.add(DampWords.LIMITS);
    }
    return lines;
  }

  /** What was found, like faces together. */
  static List<String> found(DampAnswer damp) {
    List<String> lines = new ArrayList<>();
    List<String> nothing = new ArrayList<>();
    for (List<DampFinding> alike : damp.alike()) {
      String way = DampWords.way(alike.get(0).path().way());
      String names =
          Shown.row(
              alike.stream()
                  .map(each -> Shown.line(each.path().component().name()))
                  .distinct()
                  .toList());
      String place = way.isEmpty() ? names : names + " (" + way + ")";
      if (alike.get(0).kind() == DampFinding.Kind.NONE) {
        nothing.add(place);
      } else {
        lines.add(place + ": " + Shown.line(DampWords.sentence(alike.get(0))));
      }
    }
    if (!nothing.isEmpty()) {
      lines.add(String.join("; ", nothing) + ": " + DampWords.NONE + ".");
    }
    return lines;
  }

  /** What was taken of moisture in winter. */
  private static String moisture(Room room) {
    HumidityClass moisture = room.winterAir().moisture();
    String byClass =
        "vapor of up to "
            + Math.round(DampRoom.excess(moisture))
            + " Pa above outdoors (ISO 13788, "
            + Words.of(moisture)
            + (moisture == HumidityClass.CLASS_2 ? ": offices and shops" : "")
            + "; a burner without a flue, wet work or drying wood makes far more)";
    return room.winterAir()
        .humidity()
        .map(
            told ->
                "the humidity of "
                    + Shown.percent(told)
                    + " you typed while it is heated, else "
                    + byClass)
        .orElse(byClass);
  }

  /** What was taken of the air on both sides. */
  static String taken(Shop shop, DampAnswer damp, UnitSystem units) {
    Room room =
        shop.rooms().stream()
            .filter(each -> each.use() == RoomUse.COOLED)
            .findFirst()
            .orElseThrow();
    double winter = room.heatedTo().orElse(shop.work().winterTemperature());
    boolean months = damp.walls().times().size() > 2;
    return "Taken: the room day and night at "
        + Shown.temperature(room.setPoint(), units)
        + " and "
        + Shown.percent(room.wishedHumidity())
        + " humidity on the hot and the humid day"
        + (months
            ? " and in months whose mean is as warm as that; heated to "
                + Shown.temperature(winter, units)
                + " in colder months, with "
                + moisture(room)
                + "; else as outdoors."
            : "; the climate tables have no months for this place.")
        + " An attic holds as much vapor as outdoors.";
  }
}
