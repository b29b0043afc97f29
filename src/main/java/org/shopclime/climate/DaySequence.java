package org.shopclime.climate;

import java.time.YearMonth;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * In which order the days of a year followed each other, as ranks only: which day of its month was
 * the coldest, which of its type was the sunniest and swung the widest. It lets types follow each
 * other as weather does, so that walls meet warm and cold spells of the right length.
 *
 * <p>Written as one word a month, a character a day: 0 to 9, then A to U.
 */
public final class DaySequence {

  /** Days of the year. */
  public static final int DAYS = WeatherYear.COUNT / Hours.COUNT;

  private static final int RADIX = 36;

  private final int[] warmth;
  private final int[] sun;
  private final int[] swing;

  private DaySequence(int[] warmth, int[] sun, int[] swing) {
    this.warmth = warmth;
    this.sun = sun;
    this.swing = swing;
  }

  /** Takes ranks of 365 days each: in the month, in the type, in the type. */
  static DaySequence of(int[] warmth, int[] sun, int[] swing) {
    DaySequence sequence = new DaySequence(warmth.clone(), sun.clone(), swing.clone());
    sequence.check();
    return sequence;
  }

  /** Reads what {@link #words} wrote: twelve words of each kind. */
  static DaySequence read(List<String> warmth, List<String> sun, List<String> swing) {
    return of(ranks(warmth), ranks(sun), ranks(swing));
  }

  private static int[] ranks(List<String> words) {
    int[] ranks =
        words.stream().flatMapToInt(String::chars).map(c -> Character.digit(c, RADIX)).toArray();
    if (words.size() != Months.COUNT || ranks.length != DAYS) {
      throw new IllegalArgumentException(
          ranks.length + " days in " + words.size() + " months; takes 365 in 12");
    }
    return ranks;
  }

  private void check() {
    int first = 0;
    for (int month = 1; month <= Months.COUNT; month++) {
      int days = days(month);
      BitSet seen = new BitSet();
      BitSet sunny = new BitSet();
      BitSet wide = new BitSet();
      for (int day = first; day < first + days; day++) {
        int fifth = fifth(days, Guard.within("rank of a day", warmth[day], 0, days - 1));
        seen.set(warmth[day]);
        int inType = DayTypes.end(days, fifth) - DayTypes.end(days, fifth - 1);
        sunny.set(fifth * RADIX + Guard.within("rank in sun", sun[day], 0, inType - 1));
        wide.set(fifth * RADIX + Guard.within("rank in swing", swing[day], 0, inType - 1));
      }
      if (seen.cardinality() != days || sunny.cardinality() != days || wide.cardinality() != days) {
        throw new IllegalArgumentException("a rank twice in month " + month);
      }
      first += days;
    }
  }

  private static int days(int month) {
    return YearMonth.of(WeatherYear.COMMON_YEAR, month).lengthOfMonth();
  }

  /** Fifth of the day of a rank in a month of so many days, 1 to 5. */
  static int fifth(int days, int rank) {
    int fifth = 1;
    while (rank >= DayTypes.end(days, fifth)) {
      fifth++;
    }
    return fifth;
  }

  /**
   * Rank of a day in warmth.
   *
   * @param day day of the year from 0
   * @return among the days of its month, 0 the coldest
   */
  public int warmth(int day) {
    return warmth[day];
  }

  /**
   * Rank of a day in sun.
   *
   * @param day day of the year from 0
   * @return among the days of its type, 0 the dullest
   */
  public int sun(int day) {
    return sun[day];
  }

  /**
   * Rank of a day in swing of temperature.
   *
   * @param day day of the year from 0
   * @return among the days of its type, 0 the one that swings least
   */
  public int swing(int day) {
    return swing[day];
  }

  /** Ranks in warmth, a word a month. */
  List<String> warmthWords() {
    return words(warmth);
  }

  /** Ranks in sun, a word a month. */
  List<String> sunWords() {
    return words(sun);
  }

  /** Ranks in swing, a word a month. */
  List<String> swingWords() {
    return words(swing);
  }

  private static List<String> words(int[] ranks) {
    String all =
        Arrays.stream(ranks)
            .mapToObj(rank -> Integer.toString(rank, RADIX).toUpperCase(Locale.ROOT))
            .collect(Collectors.joining());
    return IntStream.rangeClosed(1, Months.COUNT)
        .mapToObj(month -> YearMonth.of(WeatherYear.COMMON_YEAR, month))
        .map(month -> month.atDay(1).getDayOfYear() - 1)
        .map(
            first ->
                all.substring(first, first + days(WeatherYear.dateOf(first + 1).getMonthValue())))
        .toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DaySequence that
        && Arrays.equals(warmth, that.warmth)
        && Arrays.equals(sun, that.sun)
        && Arrays.equals(swing, that.swing);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(warmth) + Arrays.hashCode(sun) + Arrays.hashCode(swing);
  }

  @Override
  public String toString() {
    return "warmth " + String.join(" ", warmthWords());
  }
}
