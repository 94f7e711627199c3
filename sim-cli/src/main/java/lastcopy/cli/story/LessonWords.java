package lastcopy.cli.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Numbers;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.words.OutOf;
import lastcopy.words.YearWords;

/** What a lesson says, each sentence only where it is true. */
final class LessonWords {

  private static final List<String> CAUTIONS =
      List.of(
          "The lives are simulated, and chosen to show how things go wrong; none is a forecast."
              + " How often it comes to that, the squares and lastcopy compare say.",
          "It is a model: rates left to their defaults are assumptions.",
          "A copy counts only once restoring from it was tried.");

  private LessonWords() {}

  /** What to beware of. */
  static List<String> cautions() {
    return CAUTIONS;
  }

  /** The chance of any loss, in studios. */
  static String chance(Estimate chance, double years) {
    OutOf outOf = OutOf.showing(chance.seen() ? chance.value() : chance.high());
    return String.format(
        Locale.ROOT,
        "Of %s like this one, %s lose footage within %s (95 %% interval).",
        outOf.words(),
        Numbers.studios(chance, outOf),
        horizon(years));
  }

  /** What a class sees of it in the studios that it draws. */
  static String seen(ClassDraw draw, Estimate chance) {
    String these =
        "The squares are the first "
            + Numbers.fixed(ClassDraw.STUDIOS, 0)
            + " simulated studios of the seed, none left out: ";
    String found =
        draw.count() == 0
            ? "none of them loses footage."
            : draw.count() == 1
                ? "1 of them loses footage."
                : draw.count() + " of them lose footage.";
    return chance.seen() && chance.value() * ClassDraw.STUDIOS < 1
        ? these
            + found
            + String.format(
                Locale.ROOT,
                " On average one loses footage in %,d.",
                Math.round(1 / chance.value()))
        : these + found;
  }

  /** What to point at, as far as it holds for this layout. */
  static List<String> pointAt(Studio studio, Layout layout) {
    List<String> points = new ArrayList<>();
    if (isOnePlace(layout)) {
      points.add("Every copy stands in one place: whatever takes that place takes them all.");
    }
    if (layout.copies().stream().anyMatch(LessonWords::isRedundant)) {
      points.add(
          "Drives that stand in for each other are one copy: they stop a failed drive, and"
              + " neither a deletion nor what strikes the place.");
    }
    if (studio.desk().deletion().isPresent() && !keepsDeleted(layout)) {
      points.add("No copy keeps what was deleted: a deletion by mistake is final.");
    }
    if (layout.copies().stream().anyMatch(copy -> copy.feed().isPresent())) {
      points.add(
          "A second copy is behind the first: what was shot since its last run is not there.");
    }
    return points;
  }

  static boolean isOnePlace(Layout layout) {
    return layout.copies().stream().map(copy -> copy.place().id()).distinct().count() == 1;
  }

  private static boolean isRedundant(Copy copy) {
    return copy.driveSet()
        .map(set -> set.arrangement())
        .filter(
            how ->
                how == Arrangement.MIRROR
                    || how == Arrangement.PAIRS
                    || how == Arrangement.PARITY
                    || how == Arrangement.DOUBLE_PARITY)
        .isPresent();
  }

  private static boolean keepsDeleted(Layout layout) {
    return layout.copies().stream().anyMatch(copy -> copy.keepsDeletedHours() > 0);
  }

  static String horizon(double years) {
    return YearWords.of(years);
  }

  /** What stands above so many lives, from one to three: a near miss or a loss may be missing. */
  static String heading(int lives) {
    return List.of("One life", "Two lives", "Three lives").get(lives - 1);
  }
}
