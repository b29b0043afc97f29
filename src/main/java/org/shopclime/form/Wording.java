package org.shopclime.form;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Say;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.ShopParts;

/** How a value that is typed as text is written and read. */
interface Wording {

  /** Times that cannot be longer are told in minutes, s. */
  double HOUR = 3600;

  /**
   * What became of a text.
   *
   * @param value what was meant; nothing if the text cannot be taken
   * @param complaint why not
   */
  record Read(Optional<Object> value, String complaint) {

    static Read of(Object value) {
      return new Read(Optional.of(value), "");
    }

    static Read refused(String complaint) {
      return new Read(Optional.empty(), complaint);
    }
  }

  String write(Object value, UnitSystem units);

  /**
   * Reads a text.
   *
   * @param text what was typed
   * @param stood what stood in the field before; a bare number takes its unit
   * @param units system in which a complaint names bounds
   */
  Read read(String text, String stood, UnitSystem units);

  /**
   * The same, but what is written is put in other words.
   *
   * @param words other words for a text, which mean the same when read
   */
  default Wording shown(UnaryOperator<String> words) {
    Wording same = this;
    return new Wording() {
      @Override
      public String write(Object value, UnitSystem units) {
        return words.apply(same.write(value, units));
      }

      @Override
      public Read read(String text, String stood, UnitSystem units) {
        return same.read(text, stood, units);
      }
    };
  }

  /** The wording for a component that is typed as text. */
  static Wording of(ShopParts.Entry entry) {
    if (entry.type() == Schedule.class) {
      return schedule();
    }
    if (entry.type() == String.class) {
      return text(entry.say().otherwise().isEmpty() || entry.name().equals("name"));
    }
    Wording number = number(entry.say());
    return entry.type() == Optional.class ? optional(number) : number;
  }

  static Wording number(Say say) {
    return new Wording() {
      @Override
      public String write(Object value, UnitSystem units) {
        double si = (Double) value;
        if (si == 0 && say.zeroIsUnsaid()) {
          return "";
        }
        return say.kind() == Kind.DURATION && say.max() <= HOUR
            ? FormText.minutes(si, units)
            : FormText.figure(say.kind(), si, units);
      }

      @Override
      public Read read(String text, String stood, UnitSystem units) {
        if (text.isBlank() && say.zeroIsUnsaid()) {
          return Read.of(0.0);
        }
        Reading reading = ShopParts.read(say, FormText.withUnit(text, stood), units);
        return reading instanceof Reading.Good good
            ? Read.of(good.si())
            : Read.refused(((Reading.Bad) reading).sentence());
      }
    };
  }

  private static Wording optional(Wording number) {
    return new Wording() {
      @Override
      public String write(Object value, UnitSystem units) {
        return ((Optional<?>) value).map(held -> number.write(held, units)).orElse("");
      }

      @Override
      public Read read(String text, String stood, UnitSystem units) {
        if (text.isBlank() || text.strip().equalsIgnoreCase("none")) {
          return Read.of(Optional.empty());
        }
        Read read = number.read(text, stood, units);
        return read.value().isPresent() ? Read.of(read.value()) : read;
      }
    };
  }

  private static Wording text(boolean needed) {
    return new Wording() {
      @Override
      public String write(Object value, UnitSystem units) {
        return (String) value;
      }

      @Override
      public Read read(String text, String stood, UnitSystem units) {
        return needed && text.isBlank()
            ? Read.refused("found nothing; takes a name, such as \"West wall\"")
            : Read.of(text.strip());
      }
    };
  }

  private static Wording schedule() {
    return new Wording() {
      @Override
      public String write(Object value, UnitSystem units) {
        return ScheduleText.write((Schedule) value);
      }

      @Override
      public Read read(String text, String stood, UnitSystem units) {
        return ScheduleText.read(text)
            .map(Read::of)
            .orElseGet(
                () ->
                    Read.refused(
                        (text.isBlank() ? "found nothing" : "found \"" + text.strip() + "\"")
                            + "; takes "
                            + ScheduleText.takes(text)));
      }
    };
  }
}
