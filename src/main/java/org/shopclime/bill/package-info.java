/**
 * Tariffs, fuels, prices with source and date, the cost of a year, payback.
 *
 * <p><b>Answers:</b> what does a year of kilowatt-hours cost on this tariff, on top of what is used
 * anyway; what does heat cost by another fuel; when has a dearer thing paid for itself?<br>
 * <b>May touch:</b> quantity.<br>
 * <b>Units:</b> US dollars, kWh, $/kWh, kW: those of every power bill (1 kWh is 3.6 MJ).<br>
 * <b>Source:</b> prices as the table beside this room tells each; present worth as in NIST Handbook
 * 135; heat of fuels as each method names it.<br>
 * <b>Limits:</b> no taxes, riders and fuel surcharges unless they are in the price; months are
 * those of the calendar, not of the meter reader; tiers and hours of use are not combined.<br>
 * <b>Checked by:</b> PricePublishedTest, WorthPublishedTest, FuelPublishedTest, TariffTest (pencil
 * arithmetic), TariffProperties.
 */
package org.shopclime.bill;
