/**
 * Heat and moisture given off by people, lights, motors, oven, compressor.
 *
 * <p><b>Answers:</b> how much heat, radiant, convective and latent, does this give off?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> W, kg/s, fractions.<br>
 * <b>Source:</b> ASHRAE Handbook - Fundamentals, nonresidential load chapter (people, lights,
 * motors); energy balance (oven, compressor, tools); each class names its table.<br>
 * <b>Limits:</b> means over an hour; people at 75 °F; motors at full-load efficiency of older
 * types; no flames; heating up only of an oven's batch.<br>
 * <b>Checked by:</b> {@code PeopleGainPublishedTest}, {@code MotorGainPublishedTest}, {@code
 * LightGainPublishedTest}, {@code CompressorGainPublishedTest}, {@code OvenBoxPublishedTest},
 * {@code ElectricGainPublishedTest}, {@code OvenBatchTest}.
 */
package org.shopclime.gain;
