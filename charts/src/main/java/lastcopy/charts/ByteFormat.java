package lastcopy.charts;

import lastcopy.words.ByteUnit;

/** Ticks in bytes with their decimal unit, such as {@code 100 GB}. */
final class ByteFormat extends Ticks {

  private static final long serialVersionUID = 1L;

  @Override
  String label(double number) {
    return ByteUnit.format(number);
  }
}
