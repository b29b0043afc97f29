package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * A room: the shop itself, an attic, a loft, a closet.
 *
 * @param name what the owner calls it; faces of other rooms refer to it
 * @param use held at its set point, or floating
 * @param floorArea floor area, m²
 * @param height mean height, m
 * @param volume volume of air, m³; absent: floor area times height
 * @param setPoint wished air temperature, °C
 * @param wishedHumidity wished relative humidity, 0 to 1
 * @param faces walls, roofs, ceilings, floors
 * @param leakage how leaky the room is to outdoors
 * @param fans fans that move air in or out
 * @param gains what gives off heat here
 * @param contents what must be cooled besides air and faces
 */
public record Room(
    @Say(label = "Name", help = "Other rooms' walls refer to it.") String name,
    @Say(label = "Use", help = "Cooled rooms are held at their wished temperature.") RoomUse use,
    @Say(label = "Floor area", kind = Kind.AREA, min = 0.5, max = 5000, usualMax = 500)
        double floorArea,
    @Say(label = "Height", kind = Kind.LENGTH, min = 0.2, max = 30, usualMax = 8) double height,
    @Say(
            label = "Volume",
            help = "Leave empty for floor area times height.",
            kind = Kind.VOLUME,
            min = 0.1,
            max = 100000,
            otherwise = "none")
        Optional<Double> volume,
    @Say(
            label = "Wished temperature",
            kind = Kind.TEMPERATURE,
            min = 5,
            max = 60,
            usualMin = 18,
            usualMax = 30,
            otherwise = "78 °F")
        double setPoint,
    @Say(
            label = "Wished humidity",
            help = "Relative humidity of the air that the load is reckoned to.",
            kind = Kind.FRACTION,
            min = 0.1,
            max = 0.9,
            otherwise = "50 %")
        double wishedHumidity,
    @Say(label = "Walls, roofs, ceilings, floors", otherwise = "[]") List<Face> faces,
    @Say(label = "Leakage") Leakage leakage,
    @Say(label = "Fans", otherwise = "[]") List<Fan> fans,
    @Say(label = "Heat from work", otherwise = "[]") List<Gain> gains,
    @Say(label = "Contents", otherwise = "{}") Contents contents) {

  /** Copies the lists. */
  public Room {
    faces = List.copyOf(faces);
    fans = List.copyOf(fans);
    gains = List.copyOf(gains);
  }

  /**
   * Volume of air.
   *
   * @return m³
   */
  public double airVolume() {
    return volume.orElse(floorArea * height);
  }

  /**
   * The same with another list of faces.
   *
   * @param faces walls, roofs, ceilings, floors
   * @return the changed record
   */
  public Room withFaces(List<Face> faces) {
    return new Room(
        name,
        use,
        floorArea,
        height,
        volume,
        setPoint,
        wishedHumidity,
        faces,
        leakage,
        fans,
        gains,
        contents);
  }

  /**
   * The same with another leakage.
   *
   * @param leakage how leaky the room is to outdoors
   * @return the changed record
   */
  public Room withLeakage(Leakage leakage) {
    return new Room(
        name,
        use,
        floorArea,
        height,
        volume,
        setPoint,
        wishedHumidity,
        faces,
        leakage,
        fans,
        gains,
        contents);
  }

  /**
   * The same with another list of fans.
   *
   * @param fans fans
   * @return the changed record
   */
  public Room withFans(List<Fan> fans) {
    return new Room(
        name,
        use,
        floorArea,
        height,
        volume,
        setPoint,
        wishedHumidity,
        faces,
        leakage,
        fans,
        gains,
        contents);
  }

  /**
   * The same with another list of gains.
   *
   * @param gains what gives off heat here
   * @return the changed record
   */
  public Room withGains(List<Gain> gains) {
    return new Room(
        name,
        use,
        floorArea,
        height,
        volume,
        setPoint,
        wishedHumidity,
        faces,
        leakage,
        fans,
        gains,
        contents);
  }
}
