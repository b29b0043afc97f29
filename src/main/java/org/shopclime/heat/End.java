package org.shopclime.heat;

/** What the outermost node (face) of a chain sees on its free side. */
public sealed interface End permits End.Boundary, End.Room, End.Insulated {

  /**
   * The face is tied to a driven temperature.
   *
   * @param index number of the boundary, as {@link Network.Builder#boundary()} gave it, 0 or more
   * @param conductance from the face to the driven temperature, W/K, above 0 and finite
   */
  record Boundary(int index, double conductance) implements End {

    /** Refuses an index below 0 and a conductance that is not above 0 and finite. */
    public Boundary {
      Check.index("boundary", index);
      Check.positive("conductance of a boundary end, W/K", conductance);
    }
  }

  /**
   * The face looks into a room: by convection at its air, by radiation at its star node, to which
   * all radiating faces of that room are tied.
   *
   * @param index number of the room, as {@link Network.Builder#room} gave it, 0 or more
   * @param convective from the face to the room air, W/K, 0 or more and finite
   * @param radiant from the face to the star node of the room, W/K, 0 or more and finite; not both
   *     may be 0
   */
  record Room(int index, double convective, double radiant) implements End {

    /** Refuses an index below 0, a negative or infinite conductance, and two that are both 0. */
    public Room {
      Check.index("room", index);
      Check.notNegative("convective conductance of a room end, W/K", convective);
      Check.notNegative("radiant conductance of a room end, W/K", radiant);
      Check.positive("sum of the conductances of a room end, W/K", convective + radiant);
    }
  }

  /** Nothing leaves the face: a plane of symmetry, or the middle of a thing in the room. */
  record Insulated() implements End {}
}
