package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shopclime.quantity.UnitSystem;

/** The words of the file and the form for the constants of the shop's enums. */
public final class Words {

  private static final Map<Enum<?>, String> SPECIAL =
      Map.ofEntries(
          Map.entry(HotDayLevel.P0_4, "0.4 %"),
          Map.entry(HotDayLevel.P1, "1 %"),
          Map.entry(HotDayLevel.P2, "2 %"),
          Map.entry(DoorType.ROLL_UP, "roll-up"),
          Map.entry(DoorType.SIDE_HINGED, "side-hinged"),
          Map.entry(Member.TWO_BY_FOUR, "2x4"),
          Map.entry(Member.TWO_BY_SIX, "2x6"),
          Map.entry(Member.TWO_BY_EIGHT, "2x8"),
          Map.entry(Member.TWO_BY_TEN, "2x10"),
          Map.entry(Leakage.Grade.UNKNOWN, Words.UNKNOWN),
          Map.entry(Supply.Wire.UNKNOWN, Words.UNKNOWN),
          Map.entry(Supply.Wire.AWG_14, "14 AWG"),
          Map.entry(Supply.Wire.AWG_12, "12 AWG"),
          Map.entry(Supply.Wire.AWG_10, "10 AWG"),
          Map.entry(Supply.Sharing.UNKNOWN, Words.UNKNOWN),
          Map.entry(CompressedAir.PumpStages.UNKNOWN, Words.UNKNOWN),
          Map.entry(Improvement.HALF_INCH_IN_DOORS, "1/2 in foam in the doors"),
          Map.entry(Improvement.INCH_IN_DOORS, "1 in foam in the doors"),
          Map.entry(Improvement.INCH_AND_HALF_IN_DOORS, "1 1/2 in foam in the doors"),
          Map.entry(Improvement.STRIPS_IN_OPEN_DOOR, "strips in the open door"),
          Map.entry(Improvement.CEILING_FILLED, "ceiling filled to R-30"),
          Map.entry(Improvement.COMPRESSOR_OUT, "compressor out of the room"),
          Map.entry(Gain.Lamp.LED, "LED"),
          Map.entry(CapacityLabel.SACC, "SACC"),
          Map.entry(EfficiencyLabel.EER, "EER"),
          Map.entry(EfficiencyLabel.CEER, "CEER"),
          Map.entry(EfficiencyLabel.SEER2, "SEER2"),
          Map.entry(UnitSystem.INCH_POUND, "inch-pound"),
          Map.entry(UnitSystem.SI, "SI"));

  /** What an owner writes where a figure is not known. */
  public static final String UNKNOWN = "don't know";

  private Words() {}

  /**
   * The word for a constant.
   *
   * @param constant constant of an enum
   * @return such as {@code "roll-up"} or {@code "light bench work"}
   */
  public static String of(Enum<?> constant) {
    String special = SPECIAL.get(constant);
    return special != null ? special : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * All words of an enum.
   *
   * @param type the enum
   * @return words in the order of the constants
   */
  public static List<String> all(Class<?> type) {
    List<String> words = new ArrayList<>();
    for (Object constant : type.getEnumConstants()) {
      words.add(of((Enum<?>) constant));
    }
    return List.copyOf(words);
  }

  /**
   * The constant of a word. Capitals, hyphens and spaces make no difference.
   *
   * @param type the enum
   * @param word word as typed
   * @param <E> the enum
   * @return the constant, or nothing if no constant has that word
   */
  public static <E> Optional<E> read(Class<E> type, String word) {
    for (E constant : type.getEnumConstants()) {
      if (plain(of((Enum<?>) constant)).equals(plain(word))) {
        return Optional.of(constant);
      }
    }
    return Optional.empty();
  }

  /**
   * Whether a text says that a figure is not known.
   *
   * @param text text as typed
   * @return true for "don't know", "unknown" and the like
   */
  public static boolean isUnknown(String text) {
    String plain = plain(text).replace("'", "").replace("\u2019", "");
    return plain.equals("dontknow") || plain.equals("unknown") || plain.equals("?");
  }

  /**
   * The word for a kind of build, gain or leakage.
   *
   * @param type record of a sealed interface
   * @return its name in lower-case words, such as {@code "blower door"}
   */
  static String kind(Class<?> type) {
    StringBuilder word = new StringBuilder();
    String name = type.getSimpleName();
    for (int i = 0; i < name.length(); i++) {
      char letter = name.charAt(i);
      if (Character.isUpperCase(letter) && i > 0) {
        word.append(' ');
      }
      word.append(Character.toLowerCase(letter));
    }
    return word.toString();
  }

  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    for (char letter : text.toLowerCase(Locale.ROOT).toCharArray()) {
      if (!Character.isWhitespace(letter) && letter != '-' && letter != '_') {
        plain.append(letter);
      }
    }
    return plain.toString();
  }
}
