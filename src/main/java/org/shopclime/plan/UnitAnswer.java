package org.shopclime.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.run.LivedDay;
import org.shopclime.run.PullDown;

/**
 * What the shop's own unit does on the hot day.
 *
 * @param rated rated capacity, W
 * @param deliveredSensible sensible heat it can take out at the hour of the highest room
 *     temperature, W
 * @param deliveredLatent latent heat it can take out then, W
 * @param day the day with the unit
 * @param keepsUpTo highest outdoor peak at which it holds, °C; empty with {@code limitReason} told
 * @param limitReason why there is no such peak
 * @param verdict in one word
 * @param pullDown the morning of the first working day; nothing if nobody ever works
 * @param fan what its fan does that runs on while the compressor rests; nothing where it stops
 */
public record UnitAnswer(
    double rated,
    double deliveredSensible,
    double deliveredLatent,
    LivedDay day,
    OptionalDouble keepsUpTo,
    Optional<String> limitReason,
    Verdict verdict,
    Optional<PullDown> pullDown,
    Optional<FanAnswer> fan) {}
