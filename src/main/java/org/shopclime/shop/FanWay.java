package org.shopclime.shop;

/** Which way a fan moves air. */
public enum FanWay {
  /** Room air out; make-up air comes in by the leaks. */
  OUT,
  /** Outdoor air in; room air leaves by the leaks. */
  IN,
  /** As much in as out. */
  BALANCED,
  /** Room air through a filter and back. */
  FILTERED_RETURN
}
