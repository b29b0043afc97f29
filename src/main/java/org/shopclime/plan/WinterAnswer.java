package org.shopclime.plan;

/**
 * Heat lost in the cold.
 *
 * @param design outdoor temperature passed in 99 % of the hours of a year, °C
 * @param indoor temperature held, °C
 * @param loss steady loss without sun and work, W
 * @param heater smallest usual electric heater that covers it, W
 */
public record WinterAnswer(double design, double indoor, double loss, double heater) {}
