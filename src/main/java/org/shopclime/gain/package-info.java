/**
 * Heat and moisture given off by people, lights, motors, oven, compressor.
 *
 * <p><b>Answers:</b> how much heat, radiant, convective and latent, does this give off?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> W, kg/s, fractions.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.gain;
