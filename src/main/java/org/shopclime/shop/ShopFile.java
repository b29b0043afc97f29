package org.shopclime.shop;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;

/** The shop file: one JSON document (RFC 8259) that a person can read and edit. */
public final class ShopFile {

  /** Field that holds the version of the file. */
  public static final String VERSION_FIELD = "shopclime";

  /** Version written, and the newest that is read. */
  public static final int VERSION = 1;

  /** What makes a document of version i + 1 one of version i + 2; version 1 is the first. */
  private static final List<UnaryOperator<ObjectNode>> UPGRADES = List.of();

  /** A shop file is some 10 kB; far larger ones are something else. */
  private static final long LARGEST = 10_000_000;

  private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'.*");

  private ShopFile() {}

  /**
   * Reads and checks a shop.
   *
   * @param text JSON
   * @param stations look-up of weather stations
   * @return the shop with its warnings, or every problem found; nothing is thrown whatever the text
   */
  public static ShopReading read(String text, Stations stations) {
    JsonNode root;
    try {
      root = JsonTree.read(text.startsWith("\ufeff") ? text.substring(1) : text);
    } catch (JsonProcessingException e) {
      return bad(other(text).orElseGet(() -> damage(e)));
    }
    if (!(root instanceof ObjectNode object)) {
      String found = root.isMissingNode() ? "nothing" : ShopReader.shown(root);
      return bad(new Problem("file", found, "a shop as one JSON object in curly brackets"));
    }
    JsonNode version = object.path(VERSION_FIELD);
    if (!version.canConvertToInt() || version.intValue() < 1 || !version.isIntegralNumber()) {
      String found = version.isMissingNode() ? "nothing" : ShopReader.shown(version);
      String takes = "the version of the file, a whole number such as " + VERSION;
      return bad(new Problem(VERSION_FIELD, found, takes));
    }
    if (version.intValue() > VERSION) {
      String takes = "versions up to " + VERSION + "; a newer Shopclime wrote this file";
      return bad(new Problem(VERSION_FIELD, version.toString(), takes));
    }
    for (int from = version.intValue(); from < VERSION; from++) {
      object = UPGRADES.get(from - 1).apply(object);
    }
    UnitSystem units =
        Words.read(UnitSystem.class, object.path("units").asText()).orElse(UnitSystem.INCH_POUND);
    ShopReader reader = new ShopReader(units);
    Shop shop = reader.read("", object, Shop.class);
    ShopCheck.Findings findings = ShopCheck.check(shop, stations);
    List<Problem> problems = new ArrayList<>(reader.problems());
    findings.problems().stream()
        .filter(found -> reader.problems().stream().noneMatch(known -> touches(known, found)))
        .forEach(problems::add);
    return problems.isEmpty()
        ? new ShopReading.Good(shop, findings.warnings())
        : new ShopReading.Bad(problems);
  }

  /**
   * Reads and checks a shop.
   *
   * @param file file in UTF-8
   * @param stations look-up of weather stations
   * @return the shop with its warnings, or every problem found; nothing is thrown whatever the file
   */
  public static ShopReading read(Path file, Stations stations) {
    String takes = "a shop file that can be read";
    try {
      if (Files.isDirectory(file)) {
        return bad(new Problem(file.toString(), "a folder", takes));
      }
      if (Files.size(file) > LARGEST) {
        return bad(new Problem(file.toString(), Files.size(file) + " bytes", takes));
      }
      ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
      return read(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString(), stations);
    } catch (NoSuchFileException e) {
      return bad(new Problem(file.toString(), "no file", takes));
    } catch (CharacterCodingException e) {
      return bad(new Problem(file.toString(), "bytes that are not UTF-8 text", takes));
    } catch (IOException e) {
      return bad(new Problem(file.toString(), "a file that cannot be opened", takes));
    }
  }

  /**
   * Writes a shop as text: quantities in the shop's units, each in the shortest form that reads
   * back to the same number; fields as they would be if absent are left out.
   *
   * @param shop shop
   * @return JSON that {@link #read(String, Stations)} takes back as an equal shop
   */
  public static String write(Shop shop) {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    object.put(VERSION_FIELD, VERSION);
    new ShopWriter(shop.units()).add(shop, object);
    return JsonText.of(object);
  }

  /**
   * Saves a shop. The file is written beside its place and then moved there, so that what stood
   * there before is never left half overwritten.
   *
   * @param shop shop
   * @param file where to
   * @throws IOException if it cannot be written; what stood there is then as it was
   */
  public static void save(Shop shop, Path file) throws IOException {
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path aside = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    try {
      Files.writeString(aside, write(shop), StandardOpenOption.CREATE_NEW);
      try {
        Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  private static ShopReading bad(Problem problem) {
    return new ShopReading.Bad(List.of(problem));
  }

  /** Whether a finding stands at, in or around a place that could not be read. */
  private static boolean touches(Problem unread, Problem found) {
    String kind = ".kind";
    String place = unread.path();
    String around =
        place.endsWith(kind) ? place.substring(0, place.length() - kind.length()) : place;
    return place.startsWith(found.path())
        || found.path().startsWith(around)
        || (found.path().endsWith(".behind") && unread.path().endsWith(".name"));
  }

  /** What a text is that was never a shop file. */
  private static Optional<Problem> other(String text) {
    String begin = text.startsWith("\ufeff") ? text.substring(1).strip() : text.strip();
    if (begin.startsWith("//") || begin.startsWith("#") || begin.startsWith("/*")) {
      return Optional.of(
          new Problem("file", "a remark", "no remarks; the field \"note\" of the shop holds them"));
    }
    if (begin.matches("(?s)\\{\\s*[\u201c\u201d\u2018\u2019'].*")) {
      return Optional.of(
          new Problem(
              "file", "curly or single quotes, as a word processor makes them", "plain \" quotes"));
    }
    if (begin.isEmpty() || "{[\"".indexOf(begin.charAt(0)) >= 0) {
      return Optional.empty();
    }
    String first = begin.lines().findFirst().orElse("").strip();
    String shown = first.substring(0, Math.min(first.length(), 40)).replaceAll("\\p{Cntrl}", " ");
    return Optional.of(
        new Problem(
            "file",
            "no JSON but a text that begins \"" + shown + "\"",
            "a shop file, which begins with a curly bracket; the verb example prints one"));
  }

  private static Problem damage(JsonProcessingException e) {
    JsonLocation place = e.getLocation();
    String path =
        place == null ? "file" : "line " + place.getLineNr() + ", column " + place.getColumnNr();
    String message = e.getOriginalMessage();
    Matcher duplicate = DUPLICATE.matcher(message == null ? "" : message);
    if (duplicate.matches()) {
      return new Problem(path, "\"" + duplicate.group(1) + "\" a second time", "each field once");
    }
    return new Problem(
        path,
        "damaged JSON",
        "a whole JSON document; look here or just before for a missing comma, quote or bracket");
  }
}
