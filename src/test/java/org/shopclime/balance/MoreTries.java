package org.shopclime.balance;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Lets a long run raise the tries of properties that say their own, in the same measure as all
 * others: {@code -Dshopclime.tries=2000} gives ten times as many.
 */
public final class MoreTries implements AroundPropertyHook {

  /** Tries of a property that says none, in the gate. */
  private static final int USUAL = 200;

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    int all = Integer.getInteger("jqwik.tries.default", USUAL);
    context
        .attributes()
        .tries()
        .ifPresent(own -> context.attributes().setTries(Math.max(1, own * all / USUAL)));
    return property.execute();
  }
}
