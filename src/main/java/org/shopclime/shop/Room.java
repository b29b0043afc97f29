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
 * @param cooling what cools the room through the year, where it is a cooled room
 * @param cooledWhen when that is on; "work": from start to end of work, breaks included
 * @param heating what heats the room through the year, where it is a cooled room
 * @param heatedTo temperature it is heated to, °C; absent: that of the shop
 * @param heatedWhen when that is on
 * @param setBack hours in which it is heated to less
 * @param sunInside how sun let in through its glass is followed
 * @param dehumidifier what dries its air, if anything does
 * @param winterAir how moist its air is in winter, for damp walls
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
    @Say(label = "Contents", otherwise = "{}") Contents contents,
    @Say(
            label = "Cooled in the year by",
            help = "For the year's run: the shop's unit, an ideal one that is always enough, none.",
            otherwise = "unit")
        RoomCooling cooling,
    @Say(label = "Cooled when", help = "For the year's run.", otherwise = "work")
        Schedule cooledWhen,
    @Say(
            label = "Heated in the year by",
            help = "For the year's run: an ideal heater that is always enough, or none.",
            otherwise = "ideal")
        RoomHeating heating,
    @Say(
            label = "Heated to",
            help = "For the year's run; leave empty for the shop's winter temperature.",
            kind = Kind.TEMPERATURE,
            min = 0,
            max = 35,
            usualMin = 5,
            usualMax = 24,
            otherwise = "none")
        Optional<Double> heatedTo,
    @Say(label = "Heated when", help = "For the year's run.", otherwise = "work")
        Schedule heatedWhen,
    @Say(
            label = "Set-back",
            help = "For the year's run: hours in which it is heated to less.",
            otherwise = "none")
        Optional<SetBack> setBack,
    @Say(
            label = "Sun inside",
            help =
                "Plain: direct sun on the floor; traced where it falls; or by shares of the faces.",
            otherwise = "plain")
        SunInsideWay sunInside,
    @Say(
            label = "Dehumidifier",
            help = "It gives its power and the heat of the water back to the room.",
            otherwise = "none")
        Optional<Drier> dehumidifier,
    @Say(label = "Air in winter", help = "For the look at damp walls only.", otherwise = "{}")
        WinterAir winterAir) {

  /** Copies the lists. */
  public Room {
    faces = List.copyOf(faces);
    fans = List.copyOf(fans);
    gains = List.copyOf(gains);
  }

  /**
   * A room that is cooled by the shop's unit and heated by what is enough, while work goes on.
   *
   * @param name what the owner calls it
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
  public Room(
      String name,
      RoomUse use,
      double floorArea,
      double height,
      Optional<Double> volume,
      double setPoint,
      double wishedHumidity,
      List<Face> faces,
      Leakage leakage,
      List<Fan> fans,
      List<Gain> gains,
      Contents contents) {
    this(
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
        contents,
        RoomCooling.UNIT,
        ScheduleText.work(),
        RoomHeating.IDEAL,
        Optional.empty(),
        ScheduleText.work(),
        Optional.empty(),
        SunInsideWay.PLAIN,
        Optional.empty(),
        WinterAir.unsaid());
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
    return (Room) ShopParts.with(this, "faces", faces);
  }

  /**
   * The same with other plants through the year.
   *
   * @param cooling what cools the room through the year
   * @param heating what heats the room through the year
   * @return the changed record
   */
  public Room withPlants(RoomCooling cooling, RoomHeating heating) {
    return (Room) ShopParts.with(ShopParts.with(this, "cooling", cooling), "heating", heating);
  }

  /**
   * The same with another leakage.
   *
   * @param leakage how leaky the room is to outdoors
   * @return the changed record
   */
  public Room withLeakage(Leakage leakage) {
    return (Room) ShopParts.with(this, "leakage", leakage);
  }

  /**
   * The same with another list of fans.
   *
   * @param fans fans
   * @return the changed record
   */
  public Room withFans(List<Fan> fans) {
    return (Room) ShopParts.with(this, "fans", fans);
  }

  /**
   * The same with another list of gains.
   *
   * @param gains what gives off heat here
   * @return the changed record
   */
  public Room withGains(List<Gain> gains) {
    return (Room) ShopParts.with(this, "gains", gains);
  }

  /**
   * The same with other air in winter.
   *
   * @param other how moist its air is
   * @return the changed record
   */
  public Room withWinterAir(WinterAir other) {
    return (Room) ShopParts.with(this, "winterAir", other);
  }

  /**
   * The same with another dehumidifier.
   *
   * @param drier what dries its air, if anything does
   * @return the changed record
   */
  public Room withDehumidifier(Optional<Drier> drier) {
    return (Room) ShopParts.with(this, "dehumidifier", drier);
  }
}
