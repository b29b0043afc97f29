package org.shopclime.shop;

import java.util.List;
import org.shopclime.quantity.Kind;

/**
 * A door in a face, with foam boards laid into it.
 *
 * @param name what the owner calls it
 * @param type how it opens
 * @param width width, m
 * @param height height, m
 * @param leaf what the bare door is, by name in the door tables
 * @param boards foam boards stacked in it, outside to inside
 * @param coverage part of the door's area the boards cover, 0 to 1
 * @param seal state of its seals
 * @param openMinutes time open in each hour that {@code openWhen} marks, s, 0 to 3600
 * @param openWhen hours in which it is opened
 * @param screen what hangs or blows in the doorway while it is open
 * @param absorptance part of the sun the outside takes in, 0 to 1
 */
public record Door(
    @Say(label = "Name") String name,
    @Say(label = "Type") DoorType type,
    @Say(label = "Width", kind = Kind.LENGTH, min = 0.3, max = 20) double width,
    @Say(label = "Height", kind = Kind.LENGTH, min = 0.3, max = 12) double height,
    @Say(label = "Bare door", help = "Such as sheet steel, solid wood.") String leaf,
    @Say(label = "Foam boards", help = "A usual cavity takes {1 1/2 in|38 mm}.", otherwise = "[]")
        List<Board> boards,
    @Say(
            label = "Area covered by boards",
            help = "Of the leaf; rails, hinges and edges stay bare.",
            kind = Kind.FRACTION,
            min = 0.1,
            max = 1,
            otherwise = "90 %",
            unknown = {"75 %", "90 %", "97 %"},
            lowIsKind = false)
        Span coverage,
    @Say(label = "Seals", otherwise = "worn") Seal seal,
    @Say(label = "Minutes open an hour", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
        double openMinutes,
    @Say(label = "Opened when", otherwise = "work") Schedule openWhen,
    @Say(
            label = "In the doorway",
            help =
                "What one passes through while it is open: plastic strips, or an air door (a fan that"
                    + " blows down across it).",
            otherwise = "nothing")
        DoorScreen screen,
    @Say(
            label = "Sun taken in",
            help = "White 25 %, light 40 %, medium 60 %, dark 85 %, black or old steel 90 %.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "60 %",
            unknown = {"30 %", "60 %", "90 %"})
        Span absorptance) {

  /** Copies the list. */
  public Door {
    boards = List.copyOf(boards);
  }

  /**
   * Area.
   *
   * @return m²
   */
  public double area() {
    return width * height;
  }

  /**
   * Length of the gap around it.
   *
   * @return m
   */
  public double perimeter() {
    return 2 * (width + height);
  }

  /**
   * The same with another stack of boards.
   *
   * @param boards foam boards, outside to inside
   * @return the changed record
   */
  public Door withBoards(List<Board> boards) {
    return new Door(
        name,
        type,
        width,
        height,
        leaf,
        boards,
        coverage,
        seal,
        openMinutes,
        openWhen,
        screen,
        absorptance);
  }

  /**
   * The same with another state of its seals.
   *
   * @param seal state of its seals
   * @return the changed record
   */
  public Door withSeal(Seal seal) {
    return new Door(
        name,
        type,
        width,
        height,
        leaf,
        boards,
        coverage,
        seal,
        openMinutes,
        openWhen,
        screen,
        absorptance);
  }

  /**
   * The same with something else in the doorway.
   *
   * @param other what hangs or blows in it
   * @return the changed record
   */
  public Door withScreen(DoorScreen other) {
    return new Door(
        name,
        type,
        width,
        height,
        leaf,
        boards,
        coverage,
        seal,
        openMinutes,
        openWhen,
        other,
        absorptance);
  }

  /**
   * Whether it is a big door that is opened with nothing in the doorway.
   *
   * @return false of entry doors
   */
  public boolean opensWide() {
    return type != DoorType.ENTRY && openMinutes > 0 && screen == DoorScreen.NOTHING;
  }
}
