package org.shopclime.shop;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.shopclime.quantity.Kind;

/**
 * What a component of a shop record is, said once for the file reader and writer, the JSON Schema
 * and the form.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Say {

  /**
   * Short name shown before the field.
   *
   * @return words a shop owner uses
   */
  String label();

  /**
   * One sentence of help.
   *
   * @return what to enter and, where useful, what is usual
   */
  String help() default "";

  /**
   * What is measured, for numbers and {@link Span}s.
   *
   * @return the kind of quantity
   */
  Kind kind() default Kind.COUNT;

  /**
   * Least value taken.
   *
   * @return SI value
   */
  double min() default 0;

  /**
   * Greatest value taken.
   *
   * @return SI value
   */
  double max() default Double.MAX_VALUE;

  /**
   * Below this a warning stands beside the result.
   *
   * @return SI value
   */
  double usualMin() default Double.NEGATIVE_INFINITY;

  /**
   * Above this a warning stands beside the result.
   *
   * @return SI value
   */
  double usualMax() default Double.POSITIVE_INFINITY;

  /**
   * What an absent field means, written as in the file; empty: the field is required.
   *
   * @return text with its unit
   */
  String otherwise() default "";

  /**
   * Whether 0 stands for nothing said, so that a person sees an empty field.
   *
   * @return true if 0 is no figure
   */
  boolean zeroIsUnsaid() default false;

  /**
   * For a {@link Span}: what "don't know" means, as three texts low, likely, high; empty where it
   * may not be unknown.
   *
   * @return three texts or none
   */
  String[] unknown() default {};

  /**
   * For a {@link Span}: whether its low end is the kind one, with less to cool.
   *
   * @return true if low is kind
   */
  boolean lowIsKind() default true;
}
