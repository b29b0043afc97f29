package org.shopclime.climate;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * What a large table says of one station: its head and the rows that begin with the station's
 * number. They stand together, so nothing behind them is read.
 */
final class StationCut {

  private static final int CHUNK = 1 << 16;

  private final InputStream table;
  private final byte[] chunk = new byte[CHUNK];
  private int at;
  private int filled;

  private StationCut(InputStream table) {
    this.table = table;
  }

  /**
   * Cuts a table.
   *
   * @param table UTF-8; read as far as the station's last row
   * @param id number of the station
   * @return its comments and names of columns, and the station's rows; no row where it has none
   * @throws IOException if it cannot be read
   */
  static String of(InputStream table, String id) throws IOException {
    StationCut cut = new StationCut(table);
    ByteArrayOutputStream kept = new ByteArrayOutputStream(CHUNK);
    cut.head(kept);
    cut.rows((id + ",").getBytes(StandardCharsets.UTF_8), kept);
    return kept.toString(StandardCharsets.UTF_8);
  }

  /** Keeps all lines up to the first that is no comment and not empty, and that line. */
  private void head(ByteArrayOutputStream kept) throws IOException {
    boolean names = false;
    while (!names && more()) {
      byte first = chunk[at];
      names = first != '#' && first != '\n' && first != '\r';
      rest(kept);
    }
  }

  private void rows(byte[] beginning, ByteArrayOutputStream kept) throws IOException {
    boolean found = false;
    while (more()) {
      int same = 0;
      while (same < beginning.length && more() && chunk[at] == beginning[same]) {
        same++;
        at++;
      }
      if (same == beginning.length) {
        found = true;
        kept.write(beginning, 0, same);
        rest(kept);
      } else if (found) {
        return;
      } else {
        rest(null);
      }
    }
  }

  /** Goes behind the end of the line. */
  private void rest(ByteArrayOutputStream kept) throws IOException {
    boolean ended = false;
    while (!ended && more()) {
      int start = at;
      while (at < filled && chunk[at] != '\n') {
        at++;
      }
      if (at < filled) {
        at++;
        ended = true;
      }
      if (kept != null) {
        kept.write(chunk, start, at - start);
      }
    }
  }

  private boolean more() throws IOException {
    if (at == filled) {
      at = 0;
      filled = Math.max(0, table.read(chunk));
    }
    return filled > 0;
  }
}
