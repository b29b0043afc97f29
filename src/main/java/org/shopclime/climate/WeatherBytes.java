package org.shopclime.climate;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.tukaani.xz.XZInputStream;

/** Opens a file, unpacking it when its first bytes say that it is packed. */
final class WeatherBytes {
  /** A full hourly file has 2 MB; one that unpacks to more than this is no weather file. */
  private static final long MOST_BYTES = 64L << 20;

  /** The strongest usual packing asks for 64 MB and a little. */
  private static final int XZ_MEMORY_KIB = 128 << 10;

  private static final int MAGIC = 4;

  private WeatherBytes() {}

  static InputStream open(Path file) throws IOException {
    InputStream raw = new BufferedInputStream(Files.newInputStream(file));
    try {
      return new Bounded(unpacked(raw));
    } catch (IOException | RuntimeException refused) {
      raw.close();
      throw refused;
    }
  }

  private static InputStream unpacked(InputStream raw) throws IOException {
    raw.mark(MAGIC);
    byte[] magic = raw.readNBytes(MAGIC);
    raw.reset();
    if (starts(magic, 0xFD, '7', 'z', 'X')) {
      return new XZInputStream(raw, XZ_MEMORY_KIB);
    }
    if (starts(magic, 0x1F, 0x8B)) {
      return new GZIPInputStream(raw);
    }
    if (starts(magic, 'P', 'K', 3, 4)) {
      return onlyCsv(new ZipInputStream(raw));
    }
    return raw;
  }

  private static InputStream onlyCsv(ZipInputStream zip) throws IOException {
    List<String> names = new ArrayList<>();
    byte[] table = {};
    for (ZipEntry entry = next(zip); entry != null; entry = next(zip)) {
      if (isCsv(entry.getName())) {
        names.add(entry.getName());
        table = names.size() == 1 ? new Bounded(zip).readAllBytes() : table;
      }
    }
    if (names.size() != 1) {
      throw new IOException(
          names.isEmpty()
              ? "no .csv inside the .zip"
              : names.size() + " .csv files inside the .zip, such as " + names.get(1));
    }
    return new ByteArrayInputStream(table);
  }

  private static ZipEntry next(ZipInputStream zip) throws IOException {
    try {
      return zip.getNextEntry();
    } catch (IllegalArgumentException noName) {
      throw new IOException("a name inside the .zip is no text", noName);
    }
  }

  /** Files that some systems add to a folder begin with a point. */
  private static boolean isCsv(String name) {
    String last = name.substring(name.lastIndexOf('/') + 1);
    return last.toLowerCase(Locale.ROOT).endsWith(".csv") && !last.startsWith(".");
  }

  private static boolean starts(byte[] bytes, int... magic) {
    for (int i = 0; i < magic.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != magic[i]) {
        return false;
      }
    }
    return true;
  }

  /** Ends the reading of what unpacks without end. */
  private static final class Bounded extends FilterInputStream {
    private long left = MOST_BYTES;

    Bounded(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int one = super.read();
      count(one < 0 ? 0 : 1);
      return one;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
      int got = super.read(into, offset, length);
      count(Math.max(0, got));
      return got;
    }

    private void count(int got) throws IOException {
      left -= got;
      if (left < 0) {
        throw new IOException("more than " + (MOST_BYTES >> 20) + " MB");
      }
    }
  }
}
