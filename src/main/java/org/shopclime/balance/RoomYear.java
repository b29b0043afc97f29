package org.shopclime.balance;

import java.util.Arrays;
import org.shopclime.gain.HeatGain;
import org.shopclime.shop.Room;
import org.shopclime.shop.SetBack;
import org.shopclime.shop.Shop;

/** Gains and plant hours of one room on each of the fourteen days a year is made of. */
final class RoomYear {

  private final double[][] convective = new double[YearWeek.PLANS][Profile.HOURS];
  private final double[][] radiant = new double[YearWeek.PLANS][Profile.HOURS];
  private final double[][] moisture = new double[YearWeek.PLANS][Profile.HOURS];
  private final double[][] working = new double[YearWeek.PLANS][Profile.HOURS];
  private final boolean[][] cooling = new boolean[YearWeek.PLANS][Profile.HOURS];
  private final boolean[][] heating = new boolean[YearWeek.PLANS][Profile.HOURS];
  private final double[][] heatedTo = new double[YearWeek.PLANS][DaySlots.COUNT];

  RoomYear(Shop shop, Skeleton skeleton, int room, YearWeek week) {
    Room owner = skeleton.rooms().get(room);
    for (int plan = 0; plan < YearWeek.PLANS; plan++) {
      for (Skeleton.GainPlace place : skeleton.gains()) {
        if (place.component().room() == room) {
          DaySlots when = week.slots(place.gain().when(), plan);
          GainCourse course = GainCourse.of(place.gain(), owner.setPoint(), when);
          HeatGain heat = course.full();
          for (int hour = 0; hour < Profile.HOURS; hour++) {
            double on = mean(course.convective(), hour);
            convective[plan][hour] += heat.convective() * on;
            radiant[plan][hour] += heat.radiant() * mean(course.radiant(), hour);
            moisture[plan][hour] += heat.moisture() * on;
          }
        }
      }
      DaySlots work = week.slots(shop.work().hours(), plan);
      DaySlots cooled = week.plant(owner.cooledWhen(), plan);
      DaySlots heated = week.plant(owner.heatedWhen(), plan);
      for (int hour = 0; hour < Profile.HOURS; hour++) {
        working[plan][hour] = mean(work, hour);
        cooling[plan][hour] = mean(cooled, hour) >= 0.5;
        heating[plan][hour] = mean(heated, hour) >= 0.5;
      }
      double usual = owner.heatedTo().orElse(shop.work().winterTemperature());
      Arrays.fill(heatedTo[plan], usual);
      if (owner.setBack().isPresent()) {
        setBack(owner.setBack().get(), usual, week, plan);
      }
    }
  }

  /** The set point at the end of each slot; a rise may run past midnight, as the day repeats. */
  private void setBack(SetBack told, double usual, YearWeek week, int plan) {
    DaySlots back = week.slots(told.when(), plan);
    if (back.hours() == 0) {
      return;
    }
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      int since = 0;
      while (back.at(Math.floorMod(slot - since, DaySlots.COUNT)) == 0) {
        since++;
      }
      double seconds = since * DaySlots.SECONDS;
      double risen = since == 0 ? 0 : seconds < told.rise() ? seconds / told.rise() : 1;
      heatedTo[plan][slot] = told.temperature() + risen * (usual - told.temperature());
    }
  }

  private static double mean(DaySlots slots, int hour) {
    return slots.mean(hour * DaySlots.PER_HOUR, DaySlots.PER_HOUR);
  }

  /** Convective heat of gains, W. */
  double convective(int plan, int hour) {
    return convective[plan][hour];
  }

  /** Radiant heat of gains, W. */
  double radiant(int plan, int hour) {
    return radiant[plan][hour];
  }

  /** Water given off, kg/s. */
  double moisture(int plan, int hour) {
    return moisture[plan][hour];
  }

  /** Part of the hour that is worked. */
  double working(int plan, int hour) {
    return working[plan][hour];
  }

  boolean coolingOn(int plan, int hour) {
    return cooling[plan][hour];
  }

  boolean heatingOn(int plan, int hour) {
    return heating[plan][hour];
  }

  /** Temperature it is heated to at the end of a slot of the day, °C. */
  double heatedTo(int plan, int slot) {
    return heatedTo[plan][slot];
  }
}
