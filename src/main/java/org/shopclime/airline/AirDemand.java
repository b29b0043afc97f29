package org.shopclime.airline;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Air that tools take in one hour, used one after the other by one person.
 *
 * @param tools each tool with its use; none is no demand
 */
public record AirDemand(List<ToolUse> tools) {

  /** Keeps a copy. */
  public AirDemand {
    tools = List.copyOf(tools);
  }

  /**
   * Demand of tools.
   *
   * @param tools each tool with its use
   * @return their demand
   */
  public static AirDemand of(ToolUse... tools) {
    return new AirDemand(List.of(tools));
  }

  /**
   * Dry air in the mean of the hour.
   *
   * @return kg/s
   */
  public double mean() {
    return tools.stream().mapToDouble(ToolUse::mean).sum();
  }

  /**
   * Dry air while the hungriest tool draws: what the line must cool at once.
   *
   * @return kg/s; 0 without tools
   */
  public double drawing() {
    return hungriest().map(ToolUse::drawing).orElse(0.0);
  }

  /**
   * Highest pressure a tool wants.
   *
   * @return Pa above the air around; 0 without tools
   */
  public double pressure() {
    return tools.stream().mapToDouble(ToolUse::pressure).max().orElse(0);
  }

  /**
   * The stress case: the hungriest tool held for a time and nothing else, as in hours of blasting.
   *
   * @param minutesPerHour minutes it draws, 0 to 60
   * @return that demand; none without tools
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public AirDemand stress(double minutesPerHour) {
    return new AirDemand(
        hungriest()
            .map(tool -> new ToolUse(tool.flow(), tool.pressure(), minutesPerHour))
            .map(List::of)
            .orElse(List.of()));
  }

  private Optional<ToolUse> hungriest() {
    return tools.stream().max(Comparator.comparingDouble(ToolUse::drawing));
  }
}
