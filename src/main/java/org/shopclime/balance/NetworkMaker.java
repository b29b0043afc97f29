package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.air.MoistAir;
import org.shopclime.envelope.Films;
import org.shopclime.heat.End;
import org.shopclime.heat.Network;
import org.shopclime.shop.Room;

/** Gives the heat paths their end films at known mean temperatures, which makes the network. */
final class NetworkMaker {

  private final Skeleton skeleton;
  private final List<RadiantFactors> factors = new ArrayList<>();
  private final List<double[]> capacities = new ArrayList<>();
  private final List<double[]> conductances = new ArrayList<>();

  /** Areas of black faces that exchange as much, at the inner end and at one in another room. */
  private final List<Double> inner = new ArrayList<>();

  private final List<Double> outer = new ArrayList<>();

  NetworkMaker(Skeleton skeleton) {
    this.skeleton = skeleton;
    for (int room = 0; room < skeleton.rooms().size(); room++) {
      List<String> planes = new ArrayList<>();
      List<Double> areas = new ArrayList<>();
      for (Piece piece : skeleton.pieces()) {
        if (piece.room() == room) {
          planes.add(piece.inside().plane());
          areas.add(piece.area());
        }
        if (piece.outside() instanceof Piece.OtherRoom other && other.room() == room) {
          planes.add(other.side().plane());
          areas.add(piece.area());
        }
      }
      factors.add(new RadiantFactors(planes, areas));
    }
    for (Piece piece : skeleton.pieces()) {
      int count = piece.nodes().count();
      double[] capacity = new double[count];
      double[] conductance = new double[count - 1];
      for (int node = 0; node < count; node++) {
        capacity[node] = piece.nodes().capacity(node) * piece.area();
        if (node < count - 1) {
          conductance[node] = piece.nodes().conductance(node) * piece.area();
        }
      }
      capacities.add(capacity);
      conductances.add(conductance);
      inner.add(exchangeArea(piece.room(), piece.inside(), piece.area()));
      outer.add(
          piece.outside() instanceof Piece.OtherRoom other
              ? exchangeArea(other.room(), other.side(), piece.area())
              : 0);
    }
  }

  /**
   * The network; chain i is piece i, boundary i is what drives its outer end.
   *
   * @param at mean temperatures
   * @param pressure air pressure, Pa
   * @return network
   */
  Network make(Linearisation at, double pressure) {
    Network.Builder builder = Network.builder();
    for (Room room : skeleton.rooms()) {
      double density =
          MoistAir.dryAirDensity(
              room.setPoint(),
              MoistAir.humidityRatioFromRelativeHumidity(
                  room.setPoint(), room.wishedHumidity(), pressure),
              pressure);
      builder.room(room.airVolume() * density * MoistAir.humidHeat(0.01));
    }
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      builder.boundary();
    }
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      Piece piece = skeleton.pieces().get(chain);
      builder.chain(
          outer(chain, piece, at),
          capacities.get(chain),
          conductances.get(chain),
          side(
              piece.room(),
              piece.inside().convective() * piece.area(),
              inner.get(chain),
              at.right(chain),
              at));
    }
    return builder.build();
  }

  private End outer(int chain, Piece piece, Linearisation at) {
    if (piece.outside() instanceof Piece.Outdoors outdoors) {
      double film = outdoors.convective() + outerRadiative(outdoors, at.left(chain));
      return new End.Boundary(chain, film * piece.area());
    }
    if (piece.outside() instanceof Piece.Ground ground) {
      return new End.Boundary(chain, ground.conductance() * piece.area());
    }
    if (piece.outside() instanceof Piece.OtherRoom other) {
      return side(
          other.room(),
          other.side().convective() * piece.area(),
          outer.get(chain),
          at.left(chain),
          at);
    }
    return new End.Insulated();
  }

  /** Radiative film of an outer face, W/(m²·K). */
  static double outerRadiative(Piece.Outdoors outdoors, double faceCelsius) {
    return Films.radiative(outdoors.emittance(), faceCelsius);
  }

  private static End side(
      int room, double convective, double exchangeArea, double faceCelsius, Linearisation at) {
    double black = Films.radiative(1, (faceCelsius + at.star(room)) / 2);
    return new End.Room(room, convective, black * exchangeArea);
  }

  /** Area of a black face that would exchange as much with a room's radiant node, m². */
  double exchangeArea(int room, Piece.RoomSide side, double area) {
    return area
        / ((1 - side.emittance()) / side.emittance() + 1 / factors.get(room).of(side.plane()));
  }
}
