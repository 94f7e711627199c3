package lastcopy.cli.ask;

import java.util.Locale;
import java.util.stream.DoubleStream;
import lastcopy.scenario.Units;
import lastcopy.words.ByteUnit;

/** How much footage there will be, and how many drives it takes. */
final class RoomNeeded {

  /** As drives are sold, in TB (common practice). */
  private static final double[] SIZES = {1, 2, 4, 8, 12, 16, 20, 24};

  /** A drive is not filled to the brim (common practice). */
  private static final double FILL = 0.8;

  private RoomNeeded() {}

  /** Bytes shot in a year. */
  static double yearly(Answers answers) {
    return answers.whole("shoots") * answers.bytes("size");
  }

  /** Bytes by the end, at most: what is there now may have been thrown away by then. */
  static double byTheEnd(Answers answers) {
    double years = answers.whole("years");
    double kept =
        answers.is("keep", QuestionTable.FOR_GOOD)
            ? years
            : Math.min(years, answers.hours("keep") / Units.HOURS_PER_YEAR);
    return answers.bytes("on-hand") + yearly(answers) * kept;
  }

  /** A drive that all footage fits on, or the largest that is sold. */
  static String driveSize(Answers answers) {
    double needed = byTheEnd(answers) / FILL;
    double size =
        DoubleStream.of(SIZES)
            .filter(tb -> tb * Units.TB >= needed)
            .findFirst()
            .orElse(SIZES[SIZES.length - 1]);
    return String.format(Locale.ROOT, "%.0f TB", size);
  }

  /** Drives that all footage takes by the end, without any that stand in for others. */
  static int drives(Answers answers, double driveBytes) {
    return (int) Math.min(Integer.MAX_VALUE, Math.ceil(byTheEnd(answers) / driveBytes));
  }

  /** The same, at least one. */
  static int drives(Answers answers) {
    return Math.max(1, drives(answers, answers.bytes("drive-size")));
  }

  /** How many drives hold different footage, of so many in today's way of keeping it. */
  static int holding(Answers answers, int drives) {
    return switch (answers.text("main")) {
      case QuestionTable.MIRROR -> drives / 2;
      case QuestionTable.PARITY -> drives - 1;
      default -> drives;
    };
  }

  /** How many drives today's way of keeping footage has, if so many hold different footage. */
  static int inAll(Answers answers, int holding) {
    return switch (answers.text("main")) {
      case QuestionTable.MIRROR -> 2 * holding;
      case QuestionTable.PARITY -> Math.max(3, holding + 1);
      default -> holding;
    };
  }

  static String words(double bytes) {
    return ByteUnit.format(bytes);
  }
}
