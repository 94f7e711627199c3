package lastcopy.cli.story;

import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lastcopy.cli.output.Spans;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Arrangement;
import lastcopy.story.MissingSafeguard;
import lastcopy.story.Moment;
import lastcopy.story.NearMiss;
import lastcopy.story.Story;
import lastcopy.words.ByteUnit;

/** The end of a story in words: what was lost and why, or how nearly, and what to make of it. */
final class StoryEnding {

  private static final List<String> CAUTIONS =
      List.of(
          "One simulated life, told to show how things go wrong; it is not a forecast. How often"
              + " it comes to that, compare says.",
          "It is a model: rates left to their defaults are assumptions.",
          "A copy counts only once restoring from it was tried.");

  private static final String NOTHING_HELD = " no drive and no service held anything any more.";

  private final Story story;
  private final StoryClock clock;
  private final StorySentences sentences;

  StoryEnding(Story story, StoryClock clock) {
    this.story = story;
    this.clock = clock;
    sentences = new StorySentences(story, clock);
  }

  static List<String> cautions() {
    return CAUTIONS;
  }

  /** The moment that the story is about: its largest loss, or the nearest it came to one. */
  int focus() {
    int focus = 0;
    double most = 0;
    for (int i = 0; i < story.moments().size(); i++) {
      Moment moment = story.moments().get(i);
      if (moment.kind() == Kind.LOST && moment.happening().bytes() > most) {
        focus = i;
        most = moment.happening().bytes();
      }
    }
    return most > 0 ? focus : story.peril().map(NearMiss::moment).orElse(0);
  }

  /** What was lost, in one sentence. */
  String outcome() {
    if (story.losses().isEmpty()) {
      return "Nothing was lost.";
    }
    int n = story.losses().size();
    double shoots = story.losses().stream().mapToDouble(Loss::shoots).sum();
    String times = n == 1 ? "" : ", in " + n + " losses";
    boolean everything = story.losses().stream().anyMatch(Loss::everything);
    return "Lost: "
        + ByteUnit.format(story.lostBytes())
        + " ("
        + ByteUnit.digits(shoots)
        + (shoots == 1 ? " shoot" : " shoots")
        + worth(shoots)
        + ")"
        + times
        + (everything ? "; " + (n == 1 ? "then" : "at one of them") + NOTHING_HELD : ".");
  }

  private String worth(double shoots) {
    OptionalDouble each = story.studio().footage().worthPerShoot();
    return each.isEmpty()
        ? ""
        : String.format(
            Locale.ROOT,
            ", worth %,.0f%s",
            shoots * each.getAsDouble(),
            story.studio().currency().map(label -> " " + label).orElse(""));
  }

  /** Why it was lost, or how nearly; and what would have saved it. */
  List<String> why() {
    List<String> lines = new ArrayList<>();
    if (story.losses().isEmpty()) {
      lines.add(peril().orElseGet(this::neverNear));
      return lines;
    }
    Moment loss = story.moments().get(focus());
    String which =
        story.losses().size() == 1 ? "" : " (the largest loss, " + clock.day(loss.hours()) + ")";
    lines.add("Why" + which + ": " + loss.happening().subject() + ".");
    Map<MissingSafeguard.Lack, List<MissingSafeguard>> alike =
        MissingSafeguard.of(story, focus()).stream()
            .collect(
                Collectors.groupingBy(
                    MissingSafeguard::lack,
                    () -> new EnumMap<>(MissingSafeguard.Lack.class),
                    toList()));
    alike.values().forEach(some -> lines.add(words(some)));
    return lines;
  }

  private String neverNear() {
    return story.copies().size() == 1
        ? "All of it stood in one copy only, all the time, and nothing took that."
        : "At no time did half of it or more stand in one copy only after something had failed.";
  }

  /** The id of the cause of the loss that matters most. */
  private String cause() {
    double hours = story.moments().get(focus()).hours();
    return story.losses().stream()
        .filter(loss -> loss.hours() == hours)
        .map(loss -> loss.cause().id())
        .findFirst()
        .orElse("");
  }

  private Optional<String> peril() {
    return story
        .peril()
        .map(
            p ->
                String.format(
                    Locale.ROOT,
                    "The nearest it came: from %s, for %s, %s stood on %s only, and %s there would"
                        + " have lost it.%s",
                    clock.day(story.moments().get(p.moment()).hours()),
                    Spans.span(p.hours()),
                    ByteUnit.format(p.bytes()),
                    sentences.name(p.copy()),
                    failures(p),
                    escape(p)));
  }

  /** Of pairs not any failure would do, but that of the other drive of one pair. */
  private String failures(NearMiss peril) {
    boolean pairs =
        story
            .copy(peril.copy())
            .driveSet()
            .filter(set -> set.arrangement() == Arrangement.PAIRS && set.drives() > 2)
            .isPresent();
    String of = pairs ? peril.failures() == 1 ? " (of the partner)" : " (of one pair)" : "";
    return (peril.failures() == 1 ? "one more failure" : peril.failures() + " more failures") + of;
  }

  private String escape(NearMiss peril) {
    return Double.isInfinite(peril.escapedBy())
        ? ""
        : String.format(
            " %s was struck %s after that was over.",
            sentences.name(peril.copy()), Spans.span(peril.escapedBy()));
  }

  /** What was missing in one way, at one copy or at several. */
  private String words(List<MissingSafeguard> alike) {
    String copy =
        alike.stream().map(h -> sentences.name(h.copy())).collect(Collectors.joining(" and "));
    MissingSafeguard missing = alike.get(0);
    boolean known = Double.isFinite(missing.hours());
    String span = known ? Spans.span(missing.hours()) : "some time";
    return switch (missing.lack()) {
      case NO_OTHER_COPY ->
          "There was no other copy: one in another place, up to date, would have kept it.";
      case STRUCK_TOGETHER ->
          "All copies went at the same instant: one "
              + (cause().startsWith("box") ? "outside of that box" : "in another place")
              + ", up to date, would have kept it.";
      case NOTHING_KEPT ->
          cause().startsWith("desk:malware")
              ? "Malware reached every copy and none keeps old versions: one out of its reach, up to"
                  + " date, would have kept it."
              : "No copy keeps what is deleted: one that does, until somebody notices, would have"
                  + " kept it.";
      case DRIVE_DOWN ->
          "Another drive of "
              + copy
              + " had been down for "
              + span
              + ": had it been seen,"
              + " replaced and rebuilt sooner, nothing would have been lost.";
      case OTHER_GONE ->
          "Gone at the time: " + copy + ", for " + span + ". Back and full, it would have kept it.";
      case OTHER_NOT_FULL ->
          "Not full again at the time: " + copy + ", which had been struck " + span + " before.";
      case OTHER_BEHIND ->
          "Behind at the time: "
              + copy
              + (known ? ", though it had been shot " + span + " before" : "")
              + (cause().startsWith("desk:")
                  ? "."
                  : ". Fed sooner or faster, it would have been kept there.");
      case OTHER_DELETED ->
          "Deleted or destroyed at the time: on "
              + copy
              + (known ? ", " + span + " before" : "")
              + ", and nobody had noticed. Noticed sooner, it would have been put back.";
      case FEED_STOPPED ->
          "The feed of " + copy + " had stopped " + span + " before, and nobody had looked.";
      case OTHER_SPOILT ->
          copy
              + " had been unusable for "
              + span
              + ", and nobody knew: a restore that is tried"
              + " shows it.";
      case DROPPED_TOO_SOON ->
          missing.hours() == Double.POSITIVE_INFINITY
              ? "Nobody would ever have noticed: only a copy that keeps deleted footage for good"
                  + " would have kept it."
              : known
                  ? "The last copy dropped it "
                      + span
                      + " before anybody would have noticed: a copy"
                      + " that keeps deleted footage that much longer would have kept it."
                  : "No copy kept it until somebody noticed: one that keeps deleted footage longer"
                      + " would have.";
      case UNREADABLE -> "No other copy held what could not be read: one would have helped out.";
      case DEFECT ->
          "No other copy held what could not be read: one would have helped out, and a scrub"
              + " before might have found it.";
      case CARDS_FORMATTED -> "Cards that are kept longer would have held it.";
    };
  }
}
