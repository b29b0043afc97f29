package org.shopclime.balance;

import org.shopclime.gain.CompressorGain;
import org.shopclime.gain.HeatGain;
import org.shopclime.gain.LightGain;
import org.shopclime.gain.MotorGain;
import org.shopclime.gain.OvenBox;
import org.shopclime.gain.PeopleGain;
import org.shopclime.shop.Gain;

/** Heat of one of the owner's gains while it is fully on. */
final class GainHeat {

  private GainHeat() {}

  /**
   * Heat given off while on.
   *
   * @param gain the owner's gain; spans are taken at their likely value
   * @param roomCelsius air temperature that people and ovens give it off to, °C
   * @return heat
   */
  static HeatGain fullOn(Gain gain, double roomCelsius) {
    if (gain instanceof Gain.People people) {
      return PeopleGain.at(
          PeopleGain.Activity.valueOf(people.activity().name()), people.count(), roomCelsius);
    }
    if (gain instanceof Gain.Lights lights) {
      return LightGain.of(
          LightGain.Lamp.valueOf(lights.type().name()), lights.count(), lights.watts());
    }
    if (gain instanceof Gain.Motor motor) {
      return MotorGain.motorAndMachineInRoom(motor.power(), motor.load(), motor.use().likely());
    }
    if (gain instanceof Gain.Compressor compressor) {
      return CompressorGain.inRoom(compressor.power(), compressor.duty().likely());
    }
    if (gain instanceof Gain.Oven oven) {
      return box(oven).inRoom(roomCelsius, oven.exhaust());
    }
    if (gain instanceof Gain.WorkFan fan) {
      // its own stream carries off the motor's heat, and what moves comes to rest in the room
      return new HeatGain(fan.power(), 0, 0);
    }
    Gain.Other other = (Gain.Other) gain;
    double radiant = other.power() * other.radiantFraction();
    return new HeatGain(other.power() - radiant, radiant, other.moisture());
  }

  /** The insulated box of an oven, its span at the likely value. */
  static OvenBox box(Gain.Oven oven) {
    return new OvenBox(
        oven.width(),
        oven.depth(),
        oven.height(),
        oven.insulation().likely(),
        oven.temperature(),
        oven.heater(),
        oven.parts());
  }

  /** The line a gain makes. */
  static ComponentKind kind(Gain gain) {
    if (gain instanceof Gain.People) {
      return ComponentKind.PEOPLE;
    }
    if (gain instanceof Gain.Lights) {
      return ComponentKind.LIGHTS;
    }
    if (gain instanceof Gain.Motor || gain instanceof Gain.WorkFan) {
      return ComponentKind.MOTOR;
    }
    if (gain instanceof Gain.Compressor) {
      return ComponentKind.COMPRESSOR;
    }
    if (gain instanceof Gain.Oven) {
      return ComponentKind.OVEN;
    }
    return ComponentKind.OTHER;
  }
}
