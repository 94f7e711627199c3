package lastcopy.outlook;

import java.util.Locale;
import java.util.Optional;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Units;

/** Feeds that fall behind, miss a shoot by an instant, or stop unseen. */
final class FeedRules {

  private FeedRules() {}

  static void apply(Subject subject, CopyOutlook copy) {
    tooSlow(subject, copy);
    runAtShoot(subject, copy);
    stopsUnseen(subject, copy);
  }

  private static void tooSlow(Subject subject, CopyOutlook outlook) {
    outlook
        .feed()
        .filter(FeedOutlook::neverCatchesUp)
        .ifPresent(
            feed ->
                subject.warn(
                    "feed-too-slow",
                    outlook.copy().id(),
                    "Its feed never catches up: shoots bring more than the link carries%s; %.2f"
                        + " Mbit/s would keep up%s.",
                    feed.link().map(FeedRules::limits).orElse(""),
                    feed.megabitsNeeded(),
                    feed.link().map(FeedRules::orLonger).orElse("")));
  }

  /** Why a link carries less than it could, if it does. */
  private static String limits(LinkTime link) {
    String hours = link.hoursADay() < Units.HOURS_PER_DAY ? inHours(link.hoursADay()) : "";
    return link.feeds() > 1 ? hours + ", shared by " + link.feeds() + " feeds" : hours;
  }

  private static String inHours(double hoursADay) {
    return " in " + Subject.timeExactly(hoursADay) + " a day";
  }

  private static String orLonger(LinkTime link) {
    double hours =
        Math.ceil(Math.max(link.now().hoursADay(), link.inLastYear().hoursADay()) * 10) / 10;
    boolean longer = hours > link.hoursADay() && hours <= Units.HOURS_PER_DAY;
    return longer ? ", or " + Subject.timeExactly(hours) + " a day" : "";
  }

  private static void runAtShoot(Subject subject, CopyOutlook outlook) {
    Optional<Feed> feed =
        outlook.copy().feed().filter(f -> f.from().equals(subject.layout().workingCopy().id()));
    boolean even = subject.studio().footage().shoots().spacing() == Shoots.Spacing.EVEN;
    if (even
        && feed.map(Feed::schedule).orElse(null) instanceof Feed.Every every
        && meets(subject.shoots(), every)) {
      subject.warn(
          "run-at-shoot",
          outlook.copy().id(),
          "A run is due at the very instant of a shoot and does not carry it; better: at: %s.",
          betterAt(subject.shoots(), every));
    }
  }

  private static boolean meets(ShootTable shoots, Feed.Every every) {
    for (int k = 0; k < shoots.count(); k++) {
      double since = shoots.time(k) - every.atHours();
      double runs = Math.rint(since / every.everyHours());
      if (since >= 0 && every.atHours() + runs * every.everyHours() == shoots.time(k)) {
        return true;
      }
    }
    return false;
  }

  private static String betterAt(ShootTable shoots, Feed.Every every) {
    for (int hours = 1; hours < every.everyHours(); hours++) {
      double at = (every.atHours() + hours) % every.everyHours();
      if (!meets(shoots, new Feed.Every(every.everyHours(), at))) {
        return plain(at) + " h";
      }
    }
    return plain((every.atHours() + Math.min(1, every.everyHours()) / 2) * 60) + " min";
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
  }

  private static void stopsUnseen(Subject subject, CopyOutlook outlook) {
    outlook
        .copy()
        .feed()
        .filter(feed -> feed.stops().strikes() && feed.checkedEveryHours().isEmpty())
        .ifPresent(
            feed ->
                subject.warn(
                    "feed-unwatched",
                    outlook.copy().id(),
                    "Its feed stops about every %s and nobody looks whether it runs: from then on"
                        + " nothing new reaches the copy. Look, such as checked_every: 7 days.",
                    years(1 / feed.stops().perHour())));
  }

  private static String years(double hours) {
    return hours < Units.HOURS_PER_YEAR
        ? Subject.time(hours)
        : String.format(Locale.ROOT, "%.1f years", hours / Units.HOURS_PER_YEAR);
  }
}
