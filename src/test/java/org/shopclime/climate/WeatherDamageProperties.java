package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.shopclime.quantity.Problem;
import org.tukaani.xz.LZMA2Options;
import org.tukaani.xz.XZOutputStream;

/**
 * Whatever is done to a file, reading it ends in a year or a refusal; and a year without a note is
 * the file's own. One damage cannot be found: a cell that becomes another possible number, near
 * enough to its neighbours. It may then change its own figure and no other.
 */
class WeatherDamageProperties {
  private static final List<String> LINES = MadeFile.lines();
  private static final WeatherYear WHOLE = whole();

  /** What can happen to a text; each changes one place, chosen by the number. */
  private enum Damage {
    CELL {
      @Override
      void to(List<String> lines, Random at) {
        int line = 2 + at.nextInt(lines.size() - 2);
        String[] cells = lines.get(line).split(",", -1);
        List<String> others =
            List.of("", "-9900", "9999", "x", "-5", "61", "0", "5", "1e3", "NaN", "0,5", "\"", " ");
        cells[at.nextInt(cells.length)] = others.get(at.nextInt(others.size()));
        lines.set(line, String.join(",", cells));
      }
    },
    DROPPED {
      @Override
      void to(List<String> lines, Random at) {
        lines.remove(at.nextInt(lines.size()));
      }
    },
    DOUBLED {
      @Override
      void to(List<String> lines, Random at) {
        int line = at.nextInt(lines.size());
        lines.add(line, lines.get(line));
      }
    },
    SWAPPED {
      @Override
      void to(List<String> lines, Random at) {
        Collections.swap(lines, at.nextInt(lines.size()), at.nextInt(lines.size()));
      }
    },
    REPLACED {
      @Override
      void to(List<String> lines, Random at) {
        lines.set(at.nextInt(lines.size()), lines.get(at.nextInt(lines.size())));
      }
    },
    CUT {
      @Override
      void to(List<String> lines, Random at) {
        int line = at.nextInt(lines.size());
        lines.set(line, lines.get(line).substring(0, at.nextInt(lines.get(line).length())));
        lines.subList(line + 1, lines.size()).clear();
      }
    },
    LETTER {
      @Override
      void to(List<String> lines, Random at) {
        int line = at.nextInt(10) == 0 ? at.nextInt(2) : at.nextInt(lines.size());
        StringBuilder text = new StringBuilder(lines.get(line));
        text.setCharAt(at.nextInt(text.length()), (char) (1 + at.nextInt(255)));
        lines.set(line, text.toString());
      }
    };

    abstract void to(List<String> lines, Random at);
  }

  private static WeatherYear whole() {
    return ((WeatherReading.Good) read(LINES)).year();
  }

  private static WeatherReading read(List<String> lines) {
    try {
      return new WeatherRows("made.csv").read(new StringReader(String.join("\n", lines)));
    } catch (IOException refused) {
      return new WeatherReading.Bad(List.of(new Problem("made.csv", "damage", "none")));
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aDamagedTextIsNeverAWrongYearInSilence(@ForAll Damage damage, @ForAll long place) {
    List<String> lines = new ArrayList<>(LINES);
    damage.to(lines, new Random(place));
    Path file = write(String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1));
    WeatherReading reading = WeatherFile.read(file);
    if (reading instanceof WeatherReading.Good good && good.notes().isEmpty()) {
      assertThat(lines.stream().filter(line -> !line.isBlank()))
          .as("every line still there, after %s", damage)
          .hasSameSizeAs(LINES);
      onlyWrittenCellsDiffer(good.year(), lines);
    }
  }

  /** A figure differs only where its own cell was written anew, and is what is written there. */
  private static void onlyWrittenCellsDiffer(WeatherYear year, List<String> lines) {
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      List<String> written = Arrays.asList(lines.get(hour + 1).split(",", -1));
      List<String> was = Arrays.asList(LINES.get(hour + 1).split(",", -1));
      for (WeatherColumn column : WeatherColumn.values()) {
        double figure = year.at(column, hour);
        if (figure != WHOLE.at(column, hour)) {
          int place = Arrays.asList(MadeFile.HEADS.split(",")).indexOf(column.header());
          assertThat(written.get(place)).isNotEqualTo(was.get(place));
          assertThat(column.si(Double.parseDouble(written.get(place)))).isEqualTo(figure);
        }
      }
    }
  }

  /** How a file may be packed. */
  private enum Packing {
    GZ {
      @Override
      OutputStream around(OutputStream out) throws IOException {
        return new GZIPOutputStream(out);
      }
    },
    XZ {
      @Override
      OutputStream around(OutputStream out) throws IOException {
        return new XZOutputStream(out, new LZMA2Options(1));
      }
    },
    ZIP {
      @Override
      OutputStream around(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        zip.putNextEntry(new ZipEntry("722230TYA.CSV"));
        return zip;
      }
    };

    abstract OutputStream around(OutputStream out) throws IOException;

    byte[] packed() {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (OutputStream out = around(bytes)) {
        out.write(String.join("\n", LINES).getBytes(StandardCharsets.UTF_8));
      } catch (IOException impossible) {
        throw new IllegalStateException(impossible);
      }
      return bytes.toByteArray();
    }
  }

  private static final Map<Packing, byte[]> PACKED =
      Arrays.stream(Packing.values())
          .collect(Collectors.toMap(packing -> packing, Packing::packed));

  /** Checksums find it, or it does not matter, as in a name or a date. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aDamagedPackedFileIsRefusedOrWhole(
      @ForAll Packing packing, @ForAll long place, @ForAll boolean cut) {
    Random at = new Random(place);
    byte[] bytes = PACKED.get(packing).clone();
    if (cut) {
      bytes = Arrays.copyOf(bytes, at.nextInt(bytes.length));
    } else {
      // Heads lie at the beginning and the end.
      int where = at.nextInt(3);
      int room = where == 0 ? bytes.length : 60;
      int index = at.nextInt(room) + (where == 1 ? bytes.length - room : 0);
      bytes[index] ^= (byte) (1 << at.nextInt(8));
    }
    WeatherReading reading = WeatherFile.read(write(bytes));
    if (reading instanceof WeatherReading.Good good && good.notes().isEmpty()) {
      onlyWrittenCellsDiffer(good.year(), LINES);
    }
  }

  private static Path write(byte[] bytes) {
    try {
      Path file = Files.createTempFile("damaged", ".csv");
      file.toFile().deleteOnExit();
      return Files.write(file, bytes);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
