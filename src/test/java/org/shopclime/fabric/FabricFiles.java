package org.shopclime.fabric;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/**
 * Writes the shop files of the building fabric cases of ANSI/ASHRAE Standard 140-2020. The files
 * differ in a line or two and the shop file knows no inheritance, so they are made from one base;
 * they are committed and read like any other shop file. To make them anew, run {@link #main} from
 * the project's folder; a test fails when they are behind.
 *
 * <p>Source of the inputs: ANSI/ASHRAE Standard 140-2020; films, glass and sky as in {@code
 * CHOICES.md} beside the files.
 */
public final class FabricFiles {

  /** Where the files are. */
  static final Path FOLDER = Path.of("src/test/resources/org/shopclime/fabric");

  private static final String PLASTER =
      "{'material': 'plasterboard', 'thickness': '%s', 'conductivity': '0.16 W/mK',"
          + " 'density': '950 kg/m3', 'specificHeat': '840 J/kgK'}";
  private static final String QUILT =
      "{'material': 'fibreglass quilt', 'thickness': '%s', 'conductivity': '0.04 W/mK',"
          + " 'density': '12 kg/m3', 'specificHeat': '840 J/kgK'}";
  private static final String WOOD =
      "{'material': '%s', 'thickness': '%s', 'conductivity': '0.14 W/mK',"
          + " 'density': '530 kg/m3', 'specificHeat': '900 J/kgK'}";
  private static final String CONCRETE =
      "{'material': '%s', 'thickness': '%s', 'conductivity': '%s',"
          + " 'density': '1400 kg/m3', 'specificHeat': '1000 J/kgK'}";
  private static final String FOAM =
      "{'material': 'foam', 'thickness': '0.0615 m', 'conductivity': '0.04 W/mK',"
          + " 'density': '10 kg/m3', 'specificHeat': '1400 J/kgK'}";
  private static final String TIMBER =
      "{'material': 'timber', 'thickness': '0.025 m', 'conductivity': '0.14 W/mK',"
          + " 'density': '650 kg/m3', 'specificHeat': '1200 J/kgK'}";
  private static final String BARE =
      "{'material': 'insulation without mass', 'thickness': '%s', 'conductivity': '0.04 W/mK',"
          + " 'density': '0 kg/m3'}";

  private static final String TWO_PANES =
      "{'name': 'two clear panes', 'uFactor': '2.72 W/m2K', 'shgc': '0.76', 'panes':"
          + " {'count': 2, 'thickness': '3.048 mm', 'conductivity': '1 W/mK',"
          + " 'transmittance': '0.836', 'reflectance': '0.075', 'gap': '12 mm'}}";
  private static final String ONE_PANE =
      "{'name': 'one clear pane', 'uFactor': '5.8 W/m2K', 'shgc': '0.86', 'panes':"
          + " {'count': 1, 'thickness': '3.048 mm', 'conductivity': '1 W/mK',"
          + " 'transmittance': '0.836', 'reflectance': '0.075'}}";

  private static final String HELD =
      "'use': 'cooled', 'setPoint': '27 °C', 'cooling': 'ideal', 'cooledWhen': 'always',"
          + " 'heating': 'ideal', 'heatedTo': '20 °C', 'heatedWhen': 'always'";
  private static final String ALIKE = HELD.replace("27 °C", "20 °C");
  private static final String SET_BACK =
      HELD
          + ", 'setBack': {'temperature': '10 °C', 'when': 'daily 0:00-7:00, 23:00-24:00',"
          + " 'rise': '1 h'}";
  private static final String VENTED =
      "'use': 'cooled', 'setPoint': '27 °C', 'cooling': 'ideal', 'cooledWhen':"
          + " 'daily 7:00-18:00', 'heating': 'none'";
  private static final String FREE = "'use': 'floating'";
  private static final String NIGHT_FAN =
      ", 'fans': [{'name': 'Night fan', 'way': 'balanced', 'flow': '1703.16 m3/h',"
          + " 'when': 'daily 0:00-7:00, 18:00-24:00'}]";

  private static final String LEAKS = leaks("0.5 /h");
  private static final String TIGHT = leaks("0 /h");
  private static final String GAIN =
      ", 'gains': [{'kind': 'other', 'name': 'Gain', 'power': '200 W', 'radiantFraction': '60 %',"
          + " 'when': 'always'}]";

  private FabricFiles() {}

  /** Weight of walls and floor. */
  private enum Mass {
    LIGHT,
    HEAVY;

    String wall() {
      String inner =
          this == LIGHT
              ? QUILT.formatted("0.066 m") + ", " + PLASTER.formatted("0.012 m")
              : FOAM + ", " + CONCRETE.formatted("concrete block", "0.1 m", "0.51 W/mK");
      return layers(WOOD.formatted("wood siding", "0.009 m") + ", " + inner);
    }

    String floor() {
      return this == LIGHT
          ? layers(BARE.formatted("1.003 m") + ", " + TIMBER)
          : layers(
              BARE.formatted("1.007 m")
                  + ", "
                  + CONCRETE.formatted("concrete slab", "0.08 m", "1.13 W/mK"));
    }

    static String roof() {
      return layers(
          WOOD.formatted("roof deck", "0.019 m")
              + ", "
              + QUILT.formatted("0.1118 m")
              + ", "
              + PLASTER.formatted("0.01 m"));
    }
  }

  /** What opaque faces take in of the sun: outside, inside. */
  private record Paint(String outside, String inside) {
    static final Paint USUAL = new Paint("0.6", "0.6");

    String text() {
      return "'absorptance': '" + outside + "', 'absorptanceInside': '" + inside + "'";
    }
  }

  private static String layers(String layers) {
    return "{'kind': 'layers', 'layers': [" + layers + "]}";
  }

  private static String leaks(String changes) {
    return ", 'leakage': {'kind': 'air changes', 'airChanges': '" + changes + "'}";
  }

  private static String wall(String name, int azimuth, String width, Mass mass, Paint paint) {
    return wall(name, azimuth, width, mass, paint, "");
  }

  private static String wall(
      String name, int azimuth, String width, Mass mass, Paint paint, String more) {
    return ("{'name': '%s', 'part': 'wall', 'azimuth': '%d deg', 'width': '%s', 'height': '2.7 m',"
            + " 'build': %s, %s, 'filmOutside': '11.9 W/m2K', 'filmInside': '2.2 W/m2K'%s}")
        .formatted(name, azimuth, width, mass.wall(), paint.text(), more);
  }

  private static String roof(String width, String depth, Paint paint) {
    return ("{'name': 'Roof', 'part': 'roof', 'tilt': '0 deg', 'width': '%s', 'height': '%s',"
            + " 'build': %s, %s, 'filmOutside': '14.4 W/m2K', 'filmInside': '1.8 W/m2K'}")
        .formatted(width, depth, Mass.roof(), paint.text());
  }

  private static String floor(String width, String depth, Mass mass, Paint paint) {
    return ("{'name': 'Floor', 'part': 'floor', 'tilt': '180 deg', 'behind': 'ground',"
            + " 'groundTemperature': '10 °C', 'width': '%s', 'height': '%s', 'build': %s, %s,"
            + " 'filmInside': '2.2 W/m2K'}")
        .formatted(width, depth, mass.floor(), paint.text());
  }

  private static String window(String name, String offset, String glass, String more) {
    return ("{'name': '%s', 'width': '3 m', 'height': '2 m', 'offset': '%s', 'sill': '0.2 m',"
            + " 'glass': %s, 'filmOutside': '8 W/m2K', 'filmInside': '2.4 W/m2K'%s}")
        .formatted(name, offset, glass, more);
  }

  private static String south(String glass, String more) {
    return ", 'windows': ["
        + window("South window, west", "0.5 m", glass, more)
        + ", "
        + window("South window, east", "4.5 m", glass, more)
        + "]";
  }

  private static String room(
      String name, String depth, String plant, String air, String way, String... faces) {
    double floor = 8 * Double.parseDouble(depth.replace(" m", ""));
    return ("{'name': '%s', %s, 'floorArea': '%s m2', 'height': '2.7 m', 'sunInside': '%s',"
            + " 'contents': {'iron': '0 kg', 'wood': '0 kg'}%s, 'faces': [%s]}")
        .formatted(name, plant, floor, way, air, String.join(", ", faces));
  }

  private static String shop(String name, String note, String... rooms) {
    return ("{'shopclime': 1, 'name': 'Fabric case %s', 'note': '%s', 'units': 'SI',"
            + " 'place': {'station': '725650', 'groundReflectance': '0.2', 'shelter': 'open',"
            + " 'airDensity': '1.0156 kg/m3'},"
            + " 'work': {'hours': 'daily 0:00-24:00', 'clock': 'standard',"
            + " 'winterTemperature': '20 °C'}, 'rooms': [%s]}")
        .formatted(name, note, String.join(", ", rooms));
  }

  /** A box of one room: openings of its south wall, eave of it, of its east and west walls. */
  private static String box(
      Mass mass, Paint paint, String plant, String air, String south, String side) {
    String glazed = side.isEmpty() ? "" : ", 'windows': [%s]";
    return room(
        "Room",
        "6 m",
        plant,
        air,
        "traced",
        wall("North wall", 0, "8 m", mass, paint),
        wall(
            "East wall",
            90,
            "6 m",
            mass,
            paint,
            glazed.formatted(window("East window", "1.5 m", TWO_PANES, side.strip()))),
        wall("South wall", 180, "8 m", mass, paint, south),
        wall(
            "West wall",
            270,
            "6 m",
            mass,
            paint,
            glazed.formatted(window("West window", "1.5 m", TWO_PANES, side.strip()))),
        roof("8 m", "6 m", paint),
        floor("8 m", "6 m", mass, paint));
  }

  private static String sunspace() {
    String common =
        ("{'name': 'Common wall', 'part': 'wall', 'behind': 'Sunspace', 'azimuth': '180 deg',"
                + " 'width': '8 m', 'height': '2.7 m', 'build': %s, %s,"
                + " 'filmOutside': '2.2 W/m2K', 'filmInside': '2.2 W/m2K'}")
            .formatted(
                layers(CONCRETE.formatted("concrete block", "0.2 m", "0.51 W/mK")),
                Paint.USUAL.text());
    Mass light = Mass.LIGHT;
    Mass heavy = Mass.HEAVY;
    Paint paint = Paint.USUAL;
    String back =
        room(
            "Back room",
            "6 m",
            HELD,
            LEAKS + GAIN,
            "plain",
            wall("North wall", 0, "8 m", light, paint),
            wall("East wall", 90, "6 m", light, paint),
            wall("West wall", 270, "6 m", light, paint),
            common,
            roof("8 m", "6 m", paint),
            floor("8 m", "6 m", light, paint));
    String sun =
        room(
            "Sunspace",
            "2 m",
            FREE,
            LEAKS,
            "traced",
            wall("Sunspace east wall", 90, "2 m", heavy, paint),
            wall("Sunspace south wall", 180, "8 m", heavy, paint, south(TWO_PANES, "")),
            wall("Sunspace west wall", 270, "2 m", heavy, paint),
            roof("8 m", "2 m", paint),
            floor("8 m", "2 m", heavy, paint));
    return shop("960", "A heated and cooled back room behind a sunspace.", back, sun);
  }

  /** All cases: name and text of the file. */
  static Map<String, String> all() {
    Map<String, String> files = new LinkedHashMap<>();
    String eave = ", 'overhang': {'depth': '1 m', 'gap': '0 m'}";
    String bare = " ";
    String shaded =
        ", 'overhang': {'depth': '1 m', 'gap': '0.5 m'},"
            + " 'fins': {'depth': '1 m', 'above': '0.5 m', 'below': '0.2 m'}";
    for (Mass mass : Mass.values()) {
      String hundred = mass == Mass.LIGHT ? "6" : "9";
      String weight = mass == Mass.LIGHT ? "Light walls and floor" : "Heavy walls and floor";
      String south = south(TWO_PANES, "");
      String air = LEAKS + GAIN;
      Paint usual = Paint.USUAL;
      put(files, hundred + "00", weight + ".", box(mass, usual, HELD, air, south, ""));
      put(
          files,
          hundred + "10",
          weight + "; a south eave.",
          box(mass, usual, HELD, air, south + eave, ""));
      put(
          files,
          hundred + "20",
          weight + "; east and west windows.",
          box(mass, usual, HELD, air, "", bare));
      put(
          files,
          hundred + "30",
          weight + "; east and west windows with overhang and fins.",
          box(mass, usual, HELD, air, "", shaded));
      put(
          files,
          hundred + "40",
          weight + "; set-back.",
          box(mass, usual, SET_BACK, air, south, ""));
      put(
          files,
          hundred + "50",
          weight + "; night fan, cooling by day, no heating.",
          box(mass, usual, VENTED, air + NIGHT_FAN, south, ""));
      put(files, hundred + "00FF", weight + "; free.", box(mass, usual, FREE, air, south, ""));
      put(
          files,
          hundred + "50FF",
          weight + "; free, night fan.",
          box(mass, usual, FREE, air + NIGHT_FAN, south, ""));
      put(
          files,
          hundred + "85",
          weight + "; one set point.",
          box(mass, usual, ALIKE, air, south, ""));
    }
    put(
        files,
        "670",
        "Light walls and floor; single panes.",
        box(Mass.LIGHT, Paint.USUAL, HELD, LEAKS + GAIN, south(ONE_PANE, ""), ""));
    String panel =
        ", 'emittanceOutside': '0.9', 'emittanceInside': '0.9',"
            + " 'spandrel': {'absorptance': '0.1', 'absorptanceInside': '0.1'}";
    put(
        files,
        "220",
        "Opaque panels for windows, pale, no leaks, no gains, one set point.",
        box(Mass.LIGHT, new Paint("0.1", "0.1"), ALIKE, TIGHT, south(TWO_PANES, panel), ""));
    put(
        files,
        "270",
        "As 220 with windows, dark inside.",
        box(Mass.LIGHT, new Paint("0.1", "0.9"), ALIKE, TIGHT, south(TWO_PANES, ""), ""));
    files.put("960", written(sunspace()));
    return files;
  }

  private static void put(Map<String, String> files, String name, String note, String room) {
    files.put(name, written(shop(name, note, room)));
  }

  /** The text as the program itself writes it. */
  private static String written(String text) {
    ShopReading reading = ShopFile.read(text.replace('\'', '"'), Stations.any());
    if (reading instanceof ShopReading.Good good) {
      return ShopFile.write(good.shop());
    }
    throw new IllegalStateException(reading + "\n" + text);
  }

  /**
   * Writes all files.
   *
   * @param args none
   * @throws IOException if they cannot be written
   */
  public static void main(String[] args) throws IOException {
    for (Map.Entry<String, String> file : all().entrySet()) {
      Files.writeString(FOLDER.resolve(file.getKey() + ".json"), file.getValue());
    }
  }
}
