package lastcopy.story;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lastcopy.footage.ShootTable;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;

/**
 * Something but for which a loss would not have been, as far as it can be read from a told history.
 *
 * @param lack what was missing
 * @param copy the copy that it is about, an index into the copies of the story; −1 if none
 * @param hours how long it had been so, or by how much it came too late; NaN if not known
 */
public record MissingSafeguard(Lack lack, int copy, double hours) {

  /** What was missing. */
  public enum Lack {
    /** There is no other copy in the layout. */
    NO_OTHER_COPY,
    /** Every other copy was struck at the same instant. */
    STRUCK_TOGETHER,
    /** No copy kept what was deleted or destroyed at the desk, not even for a while. */
    NOTHING_KEPT,
    /** A drive of the same set was down, for so long. */
    DRIVE_DOWN,
    /** Another copy had no hardware, for so long. */
    OTHER_GONE,
    /** Another copy was not yet full again, so long after it went. */
    OTHER_NOT_FULL,
    /** Another copy had not received it, though it had been shot so long before. */
    OTHER_BEHIND,
    /** It had been deleted or destroyed on another copy so long before, and nobody had noticed. */
    OTHER_DELETED,
    /** The feed of another copy had stopped unseen, so long before. */
    FEED_STOPPED,
    /** Another copy had been unusable unseen, for so long. */
    OTHER_SPOILT,
    /**
     * The last copy dropped what had been deleted so long before it would have been noticed; for
     * ever, if it never would have been.
     */
    DROPPED_TOO_SOON,
    /** Bits could not be read where no redundancy was left. */
    UNREADABLE,
    /** Spots that had become unreadable unseen were met where no redundancy was left. */
    DEFECT,
    /** The camera cards that alone still held it were formatted. */
    CARDS_FORMATTED
  }

  /** From this share of everything on a copy is taken for full, whatever a rounding says. */
  private static final double FULL = 1 - 1e-9;

  /**
   * What was missing at the loss that is moment {@code at} of a story; possibly nothing is known.
   */
  public static List<MissingSafeguard> of(Story story, int at) {
    List<MissingSafeguard> all = new ArrayList<>();
    List<Moment> before = story.moments().subList(0, at);
    Moment loss = story.moments().get(at);
    String cause = causeOf(story, loss);
    boolean desk = cause.startsWith("desk:");
    boolean spots = cause.startsWith("unreadable") || cause.startsWith("defect");
    boolean struck = before.stream().anyMatch(m -> strikes(m, loss));
    notByStrike(story, before, loss, all);
    int copies = story.copies().size();
    int struckCopies = 0;
    for (int c = 0; c < copies; c++) {
      int copy = c;
      if (before.stream().anyMatch(m -> strikes(m, loss) && copyOf(m) == copy)) {
        struckCopies++;
        if (cause.endsWith("+rebuild") || cause.endsWith("+unseen")) {
          driveDown(story, before, loss, c, all);
        }
      } else if (struck || (desk && c > 0 && wasMissing(cause) && !hit(story, before, loss, c))) {
        other(story, before, loss, c, all);
      }
    }
    if (copies == 1 && !desk && !spots) {
      all.add(new MissingSafeguard(Lack.NO_OTHER_COPY, -1, Double.NaN));
    } else if (copies > 1 && struckCopies == copies) {
      all.add(new MissingSafeguard(Lack.STRUCK_TOGETHER, -1, Double.NaN));
    }
    return all;
  }

  /** Whether a cause says that some other copy did not have it. */
  private static boolean wasMissing(String cause) {
    return cause.contains("+behind") || cause.endsWith("+away") || cause.endsWith("+spoilt");
  }

  /** Whether what happened at the desk destroyed it on a copy at the instant of the loss. */
  private static boolean hit(Story story, List<Moment> before, Moment loss, int copy) {
    boolean kept = story.copy(copy).keepsDeletedHours() > 0;
    boolean emptied = !kept && loss.scene().heldBytes()[copy] == 0;
    return before.stream()
        .filter(m -> m.hours() == loss.hours())
        .anyMatch(
            m ->
                (m.kind() == Kind.DELETION_ARRIVED && copyOf(m) == copy)
                    || (m.kind() == Kind.MALWARE && emptied));
  }

  private static void notByStrike(
      Story story, List<Moment> before, Moment loss, List<MissingSafeguard> all) {
    String cause = causeOf(story, loss);
    if (cause.startsWith("desk:") && cause.endsWith("+late")) {
      all.add(new MissingSafeguard(Lack.DROPPED_TOO_SOON, -1, late(before, loss)));
    } else if (cause.equals("desk:deletion") || cause.equals("desk:malware")) {
      all.add(new MissingSafeguard(Lack.NOTHING_KEPT, -1, Double.NaN));
    } else if (cause.startsWith("unreadable")) {
      all.add(new MissingSafeguard(Lack.UNREADABLE, -1, Double.NaN));
    } else if (cause.startsWith("defect")) {
      all.add(new MissingSafeguard(Lack.DEFECT, -1, Double.NaN));
    } else if (cause.endsWith("+cards")) {
      all.add(new MissingSafeguard(Lack.CARDS_FORMATTED, -1, Double.NaN));
    } else if (cause.startsWith("spoils")) {
      spoiltBefore(before, loss, all);
    }
  }

  /** How long after the loss it would have been noticed; not known if several are unnoticed. */
  private static double late(List<Moment> before, Moment loss) {
    List<Moment> unnoticed =
        before.stream()
            .filter(m -> m.kind() == Kind.DELETED || m.kind() == Kind.MALWARE)
            .filter(m -> m.happening().until() > loss.hours())
            .toList();
    return unnoticed.size() == 1 ? unnoticed.get(0).happening().until() - loss.hours() : Double.NaN;
  }

  /** What is offloaded to a copy that is unusable unseen stands nowhere. */
  private static void spoiltBefore(List<Moment> before, Moment loss, List<MissingSafeguard> all) {
    Moment spoilt = open(before, 0, Kind.SPOILT, Kind.SPOIL_FOUND, Kind.COPY_GONE);
    if (spoilt != null && spoilt.hours() < loss.hours()) {
      all.add(new MissingSafeguard(Lack.OTHER_SPOILT, 0, loss.hours() - spoilt.hours()));
    }
  }

  /** A copy goes at the instant of the loss, or a drive of a shelf with what is on it. */
  private static boolean strikes(Moment moment, Moment loss) {
    return isAt(moment, loss, Kind.COPY_GONE)
        || isAt(moment, loss, Kind.SPOILT)
        || (isAt(moment, loss, Kind.DRIVE_FAILED) && moment.happening().bytes() > 0);
  }

  private static void driveDown(
      Story story, List<Moment> before, Moment loss, int copy, List<MissingSafeguard> all) {
    int partner = partnerOfTheLast(story, before, loss, copy);
    Moment failed =
        last(
            before,
            m ->
                m.kind() == Kind.DRIVE_FAILED
                    && copyOf(m) == copy
                    && m.hours() < loss.hours()
                    && (partner < 0 || m.happening().drive() == partner));
    if (failed == null) {
      return;
    }
    int drive = failed.happening().drive();
    Predicate<Moment> ended =
        m -> {
          boolean ready = m.kind() == Kind.DRIVE_READY && m.happening().drive() == drive;
          boolean gone = m.kind() == Kind.COPY_GONE && m.hours() < loss.hours();
          return copyOf(m) == copy && (ready || gone);
        };
    if (since(before, failed).noneMatch(ended)) {
      all.add(new MissingSafeguard(Lack.DRIVE_DOWN, copy, loss.hours() - failed.hours()));
    }
  }

  /** Of pairs the drive whose absence mattered: the partner of the one that went; else −1. */
  private static int partnerOfTheLast(Story story, List<Moment> before, Moment loss, int copy) {
    Moment gone = last(before, m -> isAt(m, loss, Kind.COPY_GONE) && copyOf(m) == copy);
    return gone == null ? -1 : story.otherOfPair(gone.happening());
  }

  private static void other(
      Story story, List<Moment> before, Moment loss, int copy, List<MissingSafeguard> all) {
    Snapshot scene = loss.scene();
    Moment went = last(before, m -> went(m) && copyOf(m) == copy);
    Moment spoilt = open(before, copy, Kind.SPOILT, Kind.SPOIL_FOUND, Kind.COPY_GONE);
    Moment stopped = open(before, copy, Kind.FEED_STOPPED, Kind.FEED_SEEN, Kind.COPY_GONE);
    if (causeOf(story, loss).endsWith("+deleted")) {
      all.add(new MissingSafeguard(Lack.OTHER_DELETED, copy, deletedBefore(before, loss)));
    } else if (spoilt != null) {
      all.add(new MissingSafeguard(Lack.OTHER_SPOILT, copy, loss.hours() - spoilt.hours()));
    } else if (scene.gone()[copy]) {
      double hours = went == null ? Double.NaN : loss.hours() - went.hours();
      all.add(new MissingSafeguard(Lack.OTHER_GONE, copy, hours));
    } else if (notFullSince(before, went, copy) && causeOf(story, loss).contains("+away")) {
      all.add(new MissingSafeguard(Lack.OTHER_NOT_FULL, copy, loss.hours() - went.hours()));
    } else if (stopped != null) {
      all.add(new MissingSafeguard(Lack.FEED_STOPPED, copy, loss.hours() - stopped.hours()));
    } else if (causeOf(story, loss).contains("+behind")) {
      all.add(new MissingSafeguard(Lack.OTHER_BEHIND, copy, behind(story, loss)));
    }
  }

  /** How long before its loss it was deleted; not known if several deletions are unnoticed. */
  private static double deletedBefore(List<Moment> before, Moment loss) {
    List<Moment> unnoticed =
        before.stream()
            .filter(m -> m.kind() == Kind.DELETED || m.kind() == Kind.MALWARE)
            .filter(m -> m.hours() < loss.hours() && m.happening().until() > loss.hours())
            .toList();
    return unnoticed.size() == 1 ? loss.hours() - unnoticed.get(0).hours() : Double.NaN;
  }

  private static boolean went(Moment moment) {
    return moment.kind() == Kind.COPY_GONE
        || (moment.kind() == Kind.DRIVE_FAILED && moment.happening().bytes() > 0);
  }

  /** Struck, and not seen to hold everything since then. */
  private static boolean notFullSince(List<Moment> before, Moment went, int copy) {
    return went != null
        && since(before, went)
            .map(Moment::scene)
            .noneMatch(s -> s.heldBytes()[copy] >= (s.shotBytes() - s.lostBytes()) * FULL);
  }

  private static String causeOf(Story story, Moment loss) {
    return story.losses().stream()
        .filter(l -> l.hours() == loss.hours())
        .map(l -> l.cause().id())
        .findFirst()
        .orElse("");
  }

  /** How long before its loss the oldest of it was shot, if what was lost was the newest. */
  private static double behind(Story story, Moment loss) {
    Footage footage = story.studio().footage();
    if (footage.shoots().spacing() == Shoots.Spacing.RANDOM) {
      return Double.NaN;
    }
    ShootTable table = ShootTable.even(footage, story.studio().horizonHours());
    // A rounding error below the start of a shoot would give the one before it.
    double oldest = table.total(loss.hours()) - loss.happening().bytes() * (1 - 1e-6);
    return oldest < table.onHand()
        ? loss.hours()
        : loss.hours() - table.time(table.shootOf(oldest));
  }

  /** The last moment of a kind about a copy, unless one of the kinds that end it came since. */
  private static Moment open(List<Moment> before, int copy, Kind kind, Kind... ends) {
    Moment began = last(before, m -> m.kind() == kind && copyOf(m) == copy);
    boolean ended =
        began != null
            && since(before, began)
                .anyMatch(m -> copyOf(m) == copy && List.of(ends).contains(m.kind()));
    return ended ? null : began;
  }

  private static Stream<Moment> since(List<Moment> moments, Moment from) {
    return moments.stream().skip(moments.indexOf(from) + 1L);
  }

  private static Moment last(List<Moment> moments, Predicate<Moment> wanted) {
    return moments.stream().filter(wanted).reduce((first, second) -> second).orElse(null);
  }

  private static boolean isAt(Moment moment, Moment other, Kind kind) {
    return moment.kind() == kind && moment.hours() == other.hours();
  }

  private static int copyOf(Moment moment) {
    return moment.happening().copy();
  }
}
