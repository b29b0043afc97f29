package org.shopclime.load;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.PartSink;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Waves;

/** What drives the network of a shop through its working day, component by component, in waves. */
final class Parts implements PartSink {

  private static final int SLOTS = DaySlots.COUNT / Waves.STEPS;

  /** Share of √3 (2 t - 1), t from 0 to 1 through a half hour, in each of its slots. */
  private static final double[] TILT = new double[SLOTS];

  static {
    for (int slot = 0; slot < TILT.length; slot++) {
      TILT[slot] = Math.sqrt(3) * ((2 * slot + 1.0) / TILT.length - 1) / TILT.length;
    }
  }

  private final List<List<Part>> byComponent = new ArrayList<>();

  Parts(ShopModel model) {
    for (int component = 0; component < model.components().size(); component++) {
      byComponent.add(new ArrayList<>());
    }
    model.tell(DayKind.WORKING, this);
  }

  /** What one component does. */
  List<Part> of(int component) {
    return byComponent.get(component);
  }

  @Override
  public void boundary(int component, int chain, Profile celsius) {
    Waves waves = Waves.ofHours(celsius.toArray());
    add(component, (to, reference) -> to.boundary(chain, waves, reference));
  }

  @Override
  public void left(int component, int chain, Profile watts) {
    Waves waves = Waves.ofHours(watts.toArray());
    add(component, (to, reference) -> to.left(chain, waves));
  }

  @Override
  public void right(int component, int chain, Profile watts) {
    Waves waves = Waves.ofHours(watts.toArray());
    add(component, (to, reference) -> to.right(chain, waves));
  }

  @Override
  public void faces(int component, double[] shares, Profile watts) {
    Waves waves = Waves.ofHours(watts.toArray());
    add(component, (to, reference) -> to.faces(shares, waves));
  }

  @Override
  public void gain(int component, int room, double[] convective, double[] radiant) {
    Waves air = mean(convective);
    Waves airTilt = tilt(convective);
    Waves star = mean(radiant);
    Waves starTilt = tilt(radiant);
    add(
        component,
        (to, reference) -> {
          to.air(room, air, airTilt);
          to.star(room, star, starTilt);
        });
  }

  private void add(int component, Part part) {
    byComponent.get(component).add(part);
  }

  private static Waves mean(double[] slots) {
    double[] steps = new double[Waves.STEPS];
    for (int slot = 0; slot < slots.length; slot++) {
      steps[slot / SLOTS] += slots[slot] / SLOTS;
    }
    return Waves.of(steps);
  }

  private static Waves tilt(double[] slots) {
    double[] steps = new double[Waves.STEPS];
    for (int slot = 0; slot < slots.length; slot++) {
      steps[slot / SLOTS] += slots[slot] * TILT[slot % SLOTS];
    }
    return Waves.of(steps);
  }
}
