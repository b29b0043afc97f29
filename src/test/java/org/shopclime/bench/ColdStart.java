package org.shopclime.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.report.SizeText;
import org.shopclime.shop.Examples;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/**
 * How long one command line takes from nothing, against a program that does nothing. Starts each
 * kind in turn, round after round, so that a busy machine slows all alike.
 */
public final class ColdStart {

  private static final int USUAL_ROUNDS = 11;
  private static final double NANOS = 1e6;
  private static final Path JAR = Path.of("target", "shopclime.jar");
  private static final Path ARCHIVE = Path.of("target", "shopclime.jsa");
  private static final String TESTS = Path.of("target", "test-classes").toString();

  private ColdStart() {}

  /** Does nothing. */
  public static final class Bare {

    private Bare() {}

    /**
     * Writes one line.
     *
     * @param args none
     */
    public static void main(String[] args) {
      System.out.println("0");
    }
  }

  /** What {@code size} does, with the time that the answer itself takes. */
  public static final class Answer {

    private Answer() {}

    /**
     * Writes the milliseconds of the answer alone.
     *
     * @param args none
     */
    public static void main(String[] args) {
      Climates climates = Climates.load();
      Stations stations =
          new Stations(station -> climates.find(station).isPresent(), station -> List.of());
      ShopReading reading = ShopFile.read(Examples.text(Examples.USUAL), stations);
      ShopReading.Good shop = (ShopReading.Good) reading;
      long start = System.nanoTime();
      SizeAnswer answer =
          new Sizing(shop.shop(), climates).answer(shop.warnings(), Progress.silent());
      long end = System.nanoTime();
      if (SizeText.of(answer, shop.shop().units()).isEmpty()) {
        throw new IllegalStateException("no answer");
      }
      System.out.println((end - start) / NANOS);
    }
  }

  /**
   * Runs the comparison from the project's folder.
   *
   * @param args the number of rounds; without it eleven
   * @throws IOException if a program cannot be started
   * @throws InterruptedException if broken off
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    if (!Files.exists(JAR) || !Files.exists(ARCHIVE)) {
      System.out.println("no " + JAR + " or " + ARCHIVE + ": mvn package makes both");
      return;
    }
    int rounds = args.length > 0 ? Integer.parseInt(args[0]) : USUAL_ROUNDS;
    List<Kind> kinds = kinds();
    double[][] whole = new double[kinds.size()][rounds];
    double[] inside = new double[rounds];
    for (int round = 0; round < rounds; round++) {
      for (int kind = 0; kind < kinds.size(); kind++) {
        long start = System.nanoTime();
        String said = run(kinds.get(kind).options());
        whole[kind][round] = (System.nanoTime() - start) / NANOS;
        if (kinds.get(kind).isTimed()) {
          inside[round] = Double.parseDouble(said.strip());
        }
      }
    }
    double bare = median(whole[0]);
    for (int kind = 0; kind < kinds.size(); kind++) {
      tell(kinds.get(kind).name(), median(whole[kind]), bare);
    }
    tell("  of which Sizing.answer", median(inside), bare);
  }

  /** A command line; the last words of a timed one are milliseconds. */
  private record Kind(String name, boolean isTimed, List<String> options) {}

  private static List<Kind> kinds() {
    String archive = "-XX:SharedArchiveFile=" + ARCHIVE;
    String light = "-XX:TieredStopAtLevel=1";
    String both = JAR + System.getProperty("path.separator") + TESTS;
    String jar = JAR.toString();
    return List.of(
        new Kind("bare JVM", false, List.of("-cp", TESTS, Bare.class.getName())),
        new Kind("size", false, List.of("-jar", jar, "size")),
        new Kind("size, archive", false, List.of(archive, "-jar", jar, "size")),
        new Kind("size, archive, light", false, List.of(archive, light, "-jar", jar, "size")),
        new Kind("year, archive, light", false, List.of(archive, light, "-jar", jar, "year")),
        new Kind(
            "places, archive, light",
            false,
            List.of(archive, light, "-jar", jar, "places", "mobile")),
        new Kind(
            "size without words, archive, light",
            true,
            List.of(archive, light, "-cp", both, Answer.class.getName())));
  }

  private static String run(List<String> options) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(options);
    Process process =
        new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IllegalStateException(words + " failed");
    }
    return said;
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static void tell(String name, double milliseconds, double bare) {
    System.out.println(
        String.format(
            Locale.ROOT, "%-36s %6.0f ms %6.1f times", name, milliseconds, milliseconds / bare));
  }
}
