package org.shopclime.load;

import org.shopclime.balance.Component;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Driven;
import org.shopclime.heat.RepeatingNetwork;
import org.shopclime.heat.Waves;

/**
 * The day that repeats, cooled rooms held, floating rooms with frozen air flows, and what the plant
 * of each cooled room must do: of everything at once, solved forward, and of some components alone,
 * by the answers of each room to single drives.
 */
final class HeldDay {

  private static final Waves NOTHING = new Waves();

  private final ShopModel model;
  private final Parts parts;
  private final FloatingAir floating;
  private final RepeatingNetwork.Answer[] answers;
  private final RepeatingNetwork.Answer[] floatingAnswers;
  private final RepeatingNetwork.Solution everything;

  HeldDay(ShopModel model) {
    this.model = model;
    parts = new Parts(model);
    floating = new FloatingAir(model);
    boolean[] held = new boolean[model.rooms()];
    for (int room = 0; room < held.length; room++) {
      held[room] = model.isCooled(room);
    }
    RepeatingNetwork network =
        new RepeatingNetwork(model.network(), held, floating.constantFlows());
    answers = new RepeatingNetwork.Answer[held.length];
    for (int room = 0; room < held.length; room++) {
      answers[room] = network.answer(room);
    }
    floatingAnswers = new RepeatingNetwork.Answer[floating.count()];
    for (int i = 0; i < floatingAnswers.length; i++) {
      floatingAnswers[i] = answers[floating.room(i)];
    }
    everything = everything(network);
  }

  private RepeatingNetwork.Solution everything(RepeatingNetwork network) {
    RepeatingNetwork.Day day = network.day();
    boolean[] counts = new boolean[model.rooms()];
    for (Component component : model.components()) {
      for (Part part : parts.of(component.index())) {
        part.drive(day, 0);
      }
    }
    for (int room = 0; room < model.rooms(); room++) {
      day.hold(room, model.setPoint(room));
    }
    if (floating.count() == 0) {
      return day.solve();
    }
    for (int i = 0; i < floating.count(); i++) {
      floating.drive(day, i, 0);
      counts[floating.room(i)] = true;
    }
    RepeatingNetwork.Solution constant = day.solve();
    double[][] still = new double[floating.count()][];
    for (int i = 0; i < still.length; i++) {
      still[i] = constant.air(floating.room(i)).steps();
    }
    floating.freeze(network, floatingAnswers, still);
    double[] there = new double[model.rooms()];
    for (int room = 0; room < there.length; room++) {
      there[room] = model.setPoint(room);
    }
    double[][] heat = floating.heat(still, counts, 0, there);
    for (int i = 0; i < heat.length; i++) {
      day.air(floating.room(i), Waves.of(heat[i]), NOTHING);
    }
    return day.solve();
  }

  /** Plant heat of a cooled room with everything on, W. */
  Profile plant(int room) {
    return profile(everything.plant(room));
  }

  /** Air of a room with everything on, °C. */
  Profile air(int room) {
    return profile(everything.air(room));
  }

  /** The same by the half hour. */
  double[] steps(int room) {
    return everything.air(room).steps();
  }

  /** Mean heat out of a boundary into the network with everything on, W. */
  double boundaryHeat(int boundary) {
    return everything.boundaryHeat(boundary);
  }

  /** Air between rooms as it flows with everything on. */
  RoomsAir between() {
    return floating.between();
  }

  /** Flow of outdoor air into a room of the shop in a half hour, W/K; 0 for cooled ones. */
  double flow(int room, int step) {
    for (int i = 0; i < floating.count(); i++) {
      if (floating.room(i) == room) {
        return floating.flow(i, step);
      }
    }
    return 0;
  }

  /**
   * Plant heat of a cooled room under some of the drives, all else at its set point.
   *
   * @param room index of the room
   * @param lineOf line of each component
   * @param line the line that counts; -1 - other for that of another cooled room
   * @return W
   */
  Profile plant(int room, int[] lineOf, int line) {
    double reference = model.setPoint(room);
    RepeatingNetwork.Sum plant = answers[room].sum();
    RepeatingNetwork.Sum[] air = new RepeatingNetwork.Sum[floating.count()];
    for (int i = 0; i < air.length; i++) {
      air[i] = floatingAnswers[i].sum();
    }
    drive(plant, lineOf, line, reference);
    for (RepeatingNetwork.Sum each : air) {
      drive(each, lineOf, line, reference);
    }
    if (air.length > 0) {
      double[][] still = new double[air.length][];
      for (int i = 0; i < air.length; i++) {
        still[i] = air[i].result().steps();
      }
      double[] there = new double[model.rooms()];
      if (line < 0) {
        there[-1 - line] = model.setPoint(-1 - line) - reference;
      }
      double[][] heat = floating.heat(still, airCounts(lineOf, line), reference, there);
      for (int i = 0; i < heat.length; i++) {
        plant.air(floating.room(i), Waves.of(heat[i]), NOTHING);
      }
    }
    return profile(plant.result());
  }

  private void drive(Driven to, int[] lineOf, int line, double reference) {
    for (int component = 0; component < lineOf.length; component++) {
      if (lineOf[component] == line) {
        for (Part part : parts.of(component)) {
          part.drive(to, reference);
        }
      }
    }
    if (line < 0) {
      int other = -1 - line;
      to.hold(other, model.setPoint(other) - reference);
    }
    boolean[] counts = airCounts(lineOf, line);
    for (int i = 0; i < floating.count(); i++) {
      if (counts[floating.room(i)]) {
        floating.drive(to, i, reference);
      }
    }
  }

  /** All lines of a floating room count in one line, so any of them tells where its air counts. */
  private boolean[] airCounts(int[] lineOf, int line) {
    boolean[] counts = new boolean[model.rooms()];
    for (Component component : model.components()) {
      counts[component.room()] = lineOf[component.index()] == line;
    }
    return counts;
  }

  private static Profile profile(Waves waves) {
    double[] hours = waves.hours();
    return Profile.of(hour -> hours[hour - 1]);
  }
}
