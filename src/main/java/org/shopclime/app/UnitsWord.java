package org.shopclime.app;

import java.util.Locale;
import org.shopclime.quantity.UnitSystem;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads "ip" or "si". */
final class UnitsWord implements ITypeConverter<UnitSystem> {

  @Override
  public UnitSystem convert(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "ip" -> UnitSystem.INCH_POUND;
      case "si" -> UnitSystem.SI;
      default -> throw new TypeConversionException("takes ip or si");
    };
  }
}
