package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

class HelpTest {

  /** Figures in help are round in both systems, so they part by as much as rounding does. */
  private static final double ROUND = 0.16;

  private static final Pattern PAIR = Pattern.compile("\\{([^{}|]*)\\|([^{}|]*)\\}");

  /** Units that only one of the systems has. */
  private static final Map<UnitSystem, Pattern> FOREIGN =
      Map.of(
          UnitSystem.INCH_POUND,
          Pattern.compile("\\d (°C|m|mm|m²|kg|m/s|m³/h|L/s|W/\\(m|kW|K|W/m)\\b"),
          UnitSystem.SI,
          Pattern.compile("\\d (°F|ft|in|ft²|lb|mph|cfm|hp|BTU/h|/in)\\b"));

  /** Every record that a shop is made of. */
  private static List<ShopParts.Entry> entries() {
    List<ShopParts.Entry> entries = new ArrayList<>();
    Deque<Class<?>> open = new ArrayDeque<>(List.of(Shop.class));
    Set<Class<?>> seen = new HashSet<>();
    while (!open.isEmpty()) {
      Class<?> type = open.pop();
      if (!seen.add(type)) {
        continue;
      }
      if (type.isSealed()) {
        open.addAll(ShopParts.kinds(type));
      } else if (type.isRecord() && type != Span.class && type != Schedule.class) {
        for (ShopParts.Entry entry : ShopParts.of(type)) {
          entries.add(entry);
          open.add(entry.held());
        }
      }
    }
    return entries;
  }

  @Test
  void onlyTheReadersSystemIsShown() {
    String help = "Such as {101 °F|38 °C}; {16 or 24 in|400 or 600 mm} apart.";
    assertThat(Help.in(help, UnitSystem.INCH_POUND))
        .isEqualTo("Such as 101 °F; 16 or 24 in apart.");
    assertThat(Help.in(help, UnitSystem.SI)).isEqualTo("Such as 38 °C; 400 or 600 mm apart.");
    assertThat(Help.in("No figure.", UnitSystem.SI)).isEqualTo("No figure.");
  }

  @Test
  void noHelpSpeaksInUnitsTheFieldsDoNotShow() {
    List<String> faults = new ArrayList<>();
    assertThat(entries()).hasSizeGreaterThan(150);
    for (ShopParts.Entry entry : entries()) {
      for (UnitSystem units : UnitSystem.values()) {
        String help = Help.in(entry.say().help(), units);
        if (FOREIGN.get(units).matcher(help).find() || help.matches(".*[{}|].*")) {
          faults.add(units + " " + entry.name() + ": " + help);
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  /** Where both sides of a pair are quantities of the field's kind, they mean the same. */
  @Test
  void bothSystemsSayTheSame() {
    List<String> faults = new ArrayList<>();
    int read = 0;
    for (ShopParts.Entry entry : entries()) {
      Matcher pair = PAIR.matcher(entry.say().help());
      while (pair.find()) {
        boolean apart = pair.group(2).endsWith(" K"); // so many degrees less than another
        Kind kind = apart ? Kind.TEMPERATURE_DIFFERENCE : entry.say().kind();
        if (Quantities.read(kind, pair.group(1)) instanceof Reading.Good ours
            && Quantities.read(kind, pair.group(2)) instanceof Reading.Good theirs) {
          read++;
          double far = kind == Kind.TEMPERATURE ? 0.5 : ROUND * Math.abs(ours.si());
          if (Math.abs(ours.si() - theirs.si()) > far) {
            faults.add(entry.name() + ": " + pair.group());
          }
        }
      }
    }
    assertThat(read).isGreaterThanOrEqualTo(5);
    assertThat(faults).isEmpty();
  }
}
