package org.shopclime.load;

import org.shopclime.air.MoistAir;
import org.shopclime.balance.Component;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;

/**
 * Heat and water that air streams and gains bring into a held room.
 *
 * <p>A stream brings sensible heat m (h(To, Wr) - h(Ti, Wr)) and latent heat m (h(To, Wo) - h(To,
 * Wr)), where Wr is the humidity ratio of the room at set point and wished humidity; signed.
 */
final class AirLoads {

  private static final Profile NOTHING = Profile.of(hour -> 0);

  private final ShopModel model;
  private final int room;
  private final double[][] flow;
  private final Profile sensiblePerFlow;
  private final Profile latentPerFlow;
  private final Profile sensibleOfRooms;
  private final Profile latentOfRooms;

  AirLoads(ShopModel model, int room, RoomAirLoads rooms) {
    this.model = model;
    this.room = room;
    sensibleOfRooms = rooms.sensible(room);
    latentOfRooms = rooms.latent(room);
    double reference = model.wishedHumidityRatio(room);
    double inside = MoistAir.enthalpy(model.setPoint(room), reference);
    sensiblePerFlow =
        Profile.of(hour -> MoistAir.enthalpy(model.outdoor(hour), reference) - inside);
    latentPerFlow =
        Profile.of(
            hour -> {
              double outdoor = model.outdoor(hour);
              return MoistAir.enthalpy(outdoor, model.outdoorHumidityRatio(hour))
                  - MoistAir.enthalpy(outdoor, reference);
            });
    flow = new double[25][];
    for (int hour = 1; hour <= 24; hour++) {
      flow[hour] = new double[model.components().size()];
      model
          .streams()
          .split(
              room,
              model.setPoint(room),
              DayKind.WORKING,
              (hour - 1) * DaySlots.PER_HOUR,
              DaySlots.PER_HOUR,
              flow[hour]);
    }
  }

  Profile sensible(int component) {
    return Profile.of(hour -> flow[hour][component] * sensiblePerFlow.at(hour));
  }

  Profile latent(int component) {
    return Profile.of(hour -> flow[hour][component] * latentPerFlow.at(hour))
        .plus(latentGain(component));
  }

  /** Sensible heat of all air together, that of outdoors from the total flow. */
  double sensibleTotal(int hour) {
    return totalFlow(hour) * sensiblePerFlow.at(hour) + sensibleOfRooms.at(hour);
  }

  /** Latent load of the room from its total air flow and all its gains. */
  Profile latentTotal() {
    Profile total =
        Profile.of(hour -> totalFlow(hour) * latentPerFlow.at(hour) + latentOfRooms.at(hour));
    for (Component component : model.components()) {
      if (component.room() == room) {
        total = total.plus(latentGain(component.index()));
      }
    }
    return total;
  }

  private double totalFlow(int hour) {
    return model
        .streams()
        .total(
            room,
            model.setPoint(room),
            DayKind.WORKING,
            (hour - 1) * DaySlots.PER_HOUR,
            DaySlots.PER_HOUR);
  }

  private Profile latentGain(int component) {
    Component of = model.components().get(component);
    return of.room() == room && !of.kind().isFace() && !of.kind().isAir()
        ? model.latentGain(component, DayKind.WORKING)
        : NOTHING;
  }
}
