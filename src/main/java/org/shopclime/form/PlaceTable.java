package org.shopclime.form;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.ClimateFacts;

/** The stations found, as the list of the picker shows them. */
final class PlaceTable extends AbstractTableModel {

  private static final long serialVersionUID = 1L;

  private static final List<String> HEADS = List.of("Station", "State", "Away", "Elevation");

  private final UnitSystem units;
  private transient List<PlaceFinder.Row> rows = List.of();

  PlaceTable(UnitSystem units) {
    this.units = units;
  }

  void show(PlaceFinder.Found found) {
    rows = found.rows();
    fireTableDataChanged();
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return HEADS.size();
  }

  @Override
  public String getColumnName(int column) {
    return HEADS.get(column);
  }

  @Override
  public Object getValueAt(int row, int column) {
    PlaceFinder.Row at = rows.get(row);
    return switch (column) {
      case 0 -> at.station().name();
      case 1 -> at.station().state();
      case 2 -> at.km().isPresent() ? ClimateFacts.distance(at.km().getAsDouble(), units) : "";
      default -> ClimateFacts.height(at.station().elevationM(), units);
    };
  }
}
