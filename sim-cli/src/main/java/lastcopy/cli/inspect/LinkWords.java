package lastcopy.cli.inspect;

import lastcopy.cli.output.Numbers;
import lastcopy.outlook.LinkTime;
import lastcopy.scenario.Units;

/** Says whether the time of a link is long enough for what is shot, and what would be. */
final class LinkWords {

  private LinkWords() {}

  /** One line: what it needs of its hours now and in the last year, and what would do. */
  static String of(LinkTime link) {
    return "needs "
        + hours(link.now().hoursADay())
        + " of its "
        + hours(link.hoursADay())
        + " h a day now, "
        + hours(link.inLastYear().hoursADay())
        + " in the last year"
        + (link.feeds() > 1 ? ", shared by " + link.feeds() + " feeds" : "")
        + ": "
        + verdict(link);
  }

  private static String verdict(LinkTime link) {
    if (link.now().enough() && link.inLastYear().enough()) {
      return "long enough";
    }
    boolean now = !link.now().enough();
    boolean atEnd = !link.inLastYear().enough();
    String when = now && atEnd ? "too short" : now ? "too short now" : "too short in the last year";
    LinkTime.Need most =
        link.now().hoursADay() > link.inLastYear().hoursADay() ? link.now() : link.inLastYear();
    boolean longer = most.hoursADay() <= Units.HOURS_PER_DAY;
    return when
        + "; "
        + (longer ? hours(most.hoursADay()) + " h a day, or " : "")
        + Numbers.fixed(most.megabits(), 2)
        + " Mbit/s, would do";
  }

  /** To tenths, rounded up: rounded down they would not do. */
  private static String hours(double hours) {
    double tenths = Math.ceil(hours * 10 - 1e-9);
    return tenths % 10 == 0 ? Numbers.fixed(tenths / 10, 0) : Numbers.fixed(tenths / 10, 1);
  }
}
