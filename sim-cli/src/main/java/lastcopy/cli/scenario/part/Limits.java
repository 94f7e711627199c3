package lastcopy.cli.scenario.part;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lastcopy.footage.ShootTable;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.words.YearWords;

/**
 * Holds what a studio would make the engine compute against what no studio needs, so that a slip of
 * the pen is told and not computed. Limits are on what is counted over the whole horizon.
 */
public final class Limits {
  static final int MOST_LAYOUTS = 200;
  static final int MOST_COPIES = 100;
  static final int MOST_DRIVES = 5_000;
  static final double MOST_SHOOTS = 200_000;

  /** Of all copies of all layouts: each has a record of its course in memory. */
  static final double MOST_SHOOTS_OF_COPIES = 1e6;

  /** Of one feed from the working copy; runs that find nothing cost nothing. */
  static final double MOST_RUNS = 1e7;

  /** Of one feed from another copy, where every run may find something. */
  static final double MOST_RUNS_BEHIND = 1e6;

  /** Visits of rotated drives are events, each. */
  static final double MOST_VISITS = 1e5;

  /** Failures, mishaps or slips of one kind in one history. */
  static final double MOST_EVENTS = 1e5;

  /** In one reading of all the footage: each costs a clip, one by one. */
  static final double MOST_UNREADABLE = 1e4;

  /** Beyond it a position in the footage would no longer be exact to a thousandth of a shoot. */
  private static final double FINEST = 1e-12;

  private static final double MOST_BYTES = 1e18;
  private static final double LEAST_VISIT_HOURS = 1 / Units.SECONDS_PER_HOUR;
  private static final int QUANTILES = 20;
  private static final double BITS = 8;

  private final Studio studio;
  private final List<Excess> found = new ArrayList<>();

  private Limits(Studio studio) {
    this.studio = studio;
  }

  /** Everything that is too much, in no order. */
  public static List<Excess> of(Studio studio) {
    Limits limits = new Limits(studio);
    limits.footage();
    limits.desk();
    limits.layouts();
    return limits.found;
  }

  private void footage() {
    Footage footage = studio.footage();
    double shoots = studio.horizonHours() / footage.shoots().everyHours();
    if (count(shoots, MOST_SHOOTS, "shoots", List.of("footage", "shoots"))) {
      return;
    }
    double first = footage.shoots().sizeBytes();
    double last = ShootTable.sizeAt(footage, studio.horizonHours());
    double total = total();
    if (!(total <= MOST_BYTES)) {
      excess(
          List.of("footage"),
          "footage of more than 1,000 PB by the end",
          "less of it, or less growth");
    } else if (Math.min(first, last) < 1 || Math.min(first, last) < total * FINEST) {
      excess(
          List.of("footage"),
          "shoots too small beside all the footage",
          "shoots of at least a byte, and of a millionth of a millionth of the footage");
    }
  }

  /** No less than all footage that there is by the end. */
  private double total() {
    Footage footage = studio.footage();
    double largest =
        Math.max(footage.shoots().sizeBytes(), ShootTable.sizeAt(footage, studio.horizonHours()));
    double shoots = studio.horizonHours() / footage.shoots().everyHours();
    return footage.onHandBytes() + largest * Math.max(1, shoots);
  }

  private void desk() {
    studio
        .desk()
        .deletion()
        .ifPresent(d -> events(d.rate(), "deletions", "desk", "deletion", "rate"));
    studio.desk().malware().ifPresent(m -> events(m.rate(), "attacks", "desk", "malware", "rate"));
  }

  private void layouts() {
    List<Layout> layouts = studio.layouts();
    count(layouts.size(), MOST_LAYOUTS, "layouts", List.of("layouts"));
    double shoots = studio.horizonHours() / studio.footage().shoots().everyHours();
    double copies = layouts.stream().mapToDouble(Limits::copies).sum();
    if (shoots * copies > MOST_SHOOTS_OF_COPIES && shoots <= MOST_SHOOTS) {
      excess(
          List.of("layouts"),
          number(copies) + " copies of " + number(shoots) + " shoots in all layouts",
          "fewer shoots, or fewer copies in a file: at most "
              + number(MOST_SHOOTS_OF_COPIES)
              + " shoots times copies");
    }
    layouts.forEach(this::layout);
  }

  private static double copies(Layout layout) {
    return layout.copies().stream().mapToDouble(Limits::turns).sum();
  }

  private static int turns(Copy copy) {
    return copy.rotation().map(Copy.Rotation::turns).orElse(1);
  }

  private void layout(Layout layout) {
    List<String> path = List.of("layouts", layout.id(), "copies");
    count(copies(layout), MOST_COPIES, "copies", path);
    double drives =
        layout.copies().stream()
            .mapToDouble(copy -> turns(copy) * copy.driveSet().map(this::drives).orElse(0.0))
            .sum();
    String what = "drives in a layout, with those that shelves need for all footage";
    count(drives, MOST_DRIVES, what, path);
    openings(layout, path);
    String working = layout.workingCopy().id();
    layout.copies().forEach(copy -> copy(with(path, copy.id()), copy, working));
  }

  /** A run that goes on over years is in the record at each opening and closing of a link. */
  private void openings(Layout layout, List<String> path) {
    boolean hours =
        layout.copies().stream().anyMatch(c -> c.feed().flatMap(Feed::between).isPresent());
    double changes = hours ? 2 * studio.horizonHours() / Units.HOURS_PER_DAY : 0;
    String what = "copies times openings and closings of links";
    count(changes * copies(layout), MOST_SHOOTS_OF_COPIES, what, path);
  }

  /** A shelf has a drive more whenever the footage needs one. */
  private double drives(Medium.DriveSet set) {
    boolean grows = set.arrangement() == Arrangement.SHELF && found.isEmpty();
    double more = grows ? shotByTheEnd() - set.usableBytes() : 0;
    double last = set.model(set.drives()).sizeBytes();
    return set.drives() + Math.max(0, Math.ceil(more / last));
  }

  private double shotByTheEnd() {
    double horizon = studio.horizonHours();
    return ShootTable.even(studio.footage(), horizon).total(horizon);
  }

  private void copy(List<String> path, Copy copy, String working) {
    copy.place().mishaps().forEach(mishap -> mishap(copy, mishap));
    copy.box().ifPresent(box -> events(box.rate(), "mishaps", "boxes", box.id(), "rate"));
    copy.driveSet().ifPresent(set -> drives(path, set));
    if (copy.medium() instanceof Medium.Service service) {
      events(
          service.loses(), "losses", Stream.concat(path.stream(), Stream.of("service", "loses")));
    }
    copy.feed().ifPresent(feed -> feed(with(path, "feed"), feed, !feed.from().equals(working)));
    copy.rotation()
        .ifPresent(
            r -> every(r.everyHours(), MOST_VISITS, "visits", with(path, "rotation", "every")));
    copy.spoils().ifPresent(spoils -> spoils(with(path, "spoils"), spoils));
    looks(copy.repair().noticed(), with(path, "noticed"));
    if (!copy.repair().goneNoticed().equals(copy.repair().noticed())) {
      looks(copy.repair().goneNoticed(), with(path, "gone_noticed"));
    }
  }

  private void mishap(Copy copy, Mishap mishap) {
    events(mishap.rate(), "mishaps", "places", copy.place().id(), "mishaps", mishap.id(), "rate");
  }

  private void drives(List<String> path, Medium.DriveSet set) {
    for (DriveModel model : set.kinds()) {
      double life = mean(model.fails(), model.boughtAtHours());
      int drives = Collections.frequency(set.models(), model);
      lives(drives, life, "failures", List.of("drives", model.id(), "fails"));
    }
    unreadable(with(path, "read_errors"), set.readErrorsPerBit());
    set.latentDefects()
        .ifPresent(
            law -> lives(set.drives(), mean(law, 0), "defects", with(path, "latent_defects")));
    set.scrub().ifPresent(law -> every(mean(law, 0), MOST_RUNS, "scrubs", with(path, "scrub")));
    set.replaceAtHours()
        .ifPresent(age -> lives(set.drives(), age, "replacements", with(path, "replace_at")));
  }

  private void unreadable(List<String> path, double perBit) {
    double bits = BITS * total();
    if (!(bits * perBit <= MOST_UNREADABLE)) {
      excess(
          path,
          number(bits * perBit) + " unreadable bits in one reading of all the footage",
          "a chance such as 1e-15, and at most " + number(MOST_UNREADABLE) + " such bits");
    }
  }

  private void feed(List<String> path, Feed feed, boolean behind) {
    if (feed.schedule() instanceof Feed.Every every) {
      double most = behind ? MOST_RUNS_BEHIND : MOST_RUNS;
      every(every.everyHours(), most, "runs", with(path, "every"));
    }
    looks(feed.checkedEveryHours(), with(path, "checked_every"));
    events(feed.stops(), "stops", with(path, "stops").stream());
    if (feed.visitHours() < LEAST_VISIT_HOURS) {
      excess(with(path, "visits"), "a visit of less than a second", "a visit of at least 1 s");
    }
  }

  private void spoils(List<String> path, Copy.Spoils spoils) {
    events(spoils.rate(), "times that a copy is unusable", with(path, "rate").stream());
    looks(spoils.triedEveryHours(), with(path, "tried_every"));
  }

  private void looks(Delay delay, List<String> path) {
    if (delay instanceof Delay.Looks looks) {
      looks(OptionalDouble.of(looks.periodHours()), path);
    }
  }

  private void looks(OptionalDouble period, List<String> path) {
    period.ifPresent(hours -> every(hours, MOST_RUNS, "looks", path));
  }

  private void events(Rate rate, String what, String... path) {
    events(rate, what, Stream.of(path));
  }

  private void events(Rate rate, String what, Stream<String> path) {
    double most = MOST_EVENTS / studio.years();
    double perYear = rate.perHour() * Units.HOURS_PER_YEAR;
    if (!(perYear <= most)) {
      excess(
          path.toList(),
          number(perYear * studio.years()) + " " + what + over(),
          "at most " + number(MOST_EVENTS) + ", which is " + number(most) + " per year");
    }
  }

  private void lives(int drives, double hours, String what, List<String> path) {
    double many = drives * studio.horizonHours() / hours;
    if (!(many <= MOST_EVENTS)) {
      double least = drives * studio.horizonHours() / MOST_EVENTS;
      String of = drives == 1 ? "" : " of " + drives + " drives";
      excess(
          path,
          number(many) + " " + what + of + over(),
          "at most " + number(MOST_EVENTS) + ", which is " + number(least) + " h a drive or more");
    }
  }

  private void every(double hours, double most, String what, List<String> path) {
    double many = studio.horizonHours() / hours;
    if (!(many <= most)) {
      double least = studio.horizonHours() / most * Units.SECONDS_PER_HOUR;
      excess(
          path,
          number(many) + " " + what + over(),
          "at most " + number(most) + ", which is one every " + number(least) + " s");
    }
  }

  private boolean count(double many, double most, String what, List<String> path) {
    if (!(many <= most)) {
      excess(path, number(many) + " " + what, "at most " + number(most));
      return true;
    }
    return false;
  }

  /** What a law leaves on average at an age, from a few quantiles; infinite if some never end. */
  private static double mean(Law law, double age) {
    double sum = 0;
    for (int i = 0; i < QUANTILES; i++) {
      sum += law.remaining(age, -StrictMath.log1p(-(i + 0.5) / QUANTILES));
    }
    return sum / QUANTILES;
  }

  private String over() {
    return " in " + YearWords.of(studio.years());
  }

  private void excess(List<String> path, String what, String accepted) {
    Excess excess = new Excess(path, what, accepted);
    if (!found.contains(excess)) {
      found.add(excess);
    }
  }

  private static List<String> with(List<String> path, String... keys) {
    return Stream.concat(path.stream(), Stream.of(keys)).toList();
  }

  /** Whole where it can be, else to three digits. */
  private static String number(double value) {
    if (!(value < 1e15)) {
      return "far too many";
    }
    return value >= 100
        ? String.format(Locale.ROOT, "%,.0f", value)
        : new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
