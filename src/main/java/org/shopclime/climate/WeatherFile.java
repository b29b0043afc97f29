package org.shopclime.climate;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.shopclime.quantity.Problem;

/**
 * Reads an hourly file of a typical meteorological year, third collection (TMY3), in its full form
 * of 68 columns or any form that keeps the two head lines and the columns needed.
 *
 * <p>Source: Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156 (2008), section
 * 1.3.
 */
public final class WeatherFile {
  private static final String TAKES =
      "a TMY3 hourly file: CSV, plain or packed as .xz, .gz or .zip, such as 722230TYA.CSV";

  private WeatherFile() {}

  /**
   * Reads one file. Columns are found by their head, so their order does not matter and others are
   * passed over. Packed files are known by their first bytes, not by their names.
   *
   * @param file the file
   * @return the year, with what was filled, or all that is wrong (at most twenty problems are told,
   *     then their number)
   */
  public static WeatherReading read(Path file) {
    String name = String.valueOf(file.getFileName());
    if (!Files.exists(file)) {
      return bad(name, "no such file");
    }
    if (!Files.isRegularFile(file)) {
      return bad(name, "a folder or device");
    }
    try (InputStream bytes = WeatherBytes.open(file)) {
      return new WeatherRows(name).read(new StringReader(decoded(bytes.readAllBytes())));
    } catch (IOException refused) {
      return bad(name, refusal(refused));
    } catch (UncheckedIOException refused) {
      return bad(name, refusal(refused.getCause()));
    }
  }

  /** Text as UTF-8, or where it is none as Latin 1, in which older systems write names. */
  private static String decoded(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException other) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  private static String refusal(IOException refused) {
    return refused instanceof EOFException
        ? "a packed file that is cut off"
        : "a file that cannot be read ("
            + String.valueOf(refused.getMessage()).replaceAll("\\p{Cntrl}+", " ")
            + ")";
  }

  private static WeatherReading bad(String name, String found) {
    return new WeatherReading.Bad(List.of(new Problem(name, found, TAKES)));
  }
}
