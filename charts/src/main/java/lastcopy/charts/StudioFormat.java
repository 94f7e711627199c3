package lastcopy.charts;

import lastcopy.words.ByteUnit;

/** Ticks in studios: grouped, with decimals only where they are needed. */
final class StudioFormat extends Ticks {

  private static final long serialVersionUID = 1L;

  @Override
  String label(double number) {
    return ByteUnit.digits(number);
  }
}
