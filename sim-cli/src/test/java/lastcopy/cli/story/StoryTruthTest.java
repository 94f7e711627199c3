package lastcopy.cli.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lastcopy.cli.Written;
import lastcopy.cli.output.PageLook;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.story.MissingSafeguard;
import lastcopy.story.Moment;
import lastcopy.story.Stories;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences of told histories against what the engine then does and what copies then hold. */
class StoryTruthTest {

  private static final String HARSH =
      """
      lastcopy: 1
      studio: Harsh House
      years: 4
      footage: {on_hand: 2 TB, shoots: {per_year: 40, size: 60 GB, spacing: random}}
      places:
        studio: {mishaps: {fire: {rate: 20 %/year, takes: 0.6}}}
        home: {mishaps: {theft: {rate: 10 %/year}}}
      boxes: {bay: {rate: 10 %/year}}
      desk:
        deletion: {rate: 3 per year, size: 2 shoots, noticed: {mean: 20 days}}
        malware: {rate: 40 %/year, noticed: {mean: 5 days}}
      drives:
        d: {size: 8 TB, fails: {mean: 9000 h}}
        s: {size: 1 TB, fails: {mean: 9000 h}}
      layouts:
        set:
          cards: {keep: 7 days}
          copies:
            main: {place: studio, box: bay, drives: 2 x d, arrangement: mirror, wait: 2 days,
                   noticed: {checked_every: 30 days}, rebuild_reads: used, read_errors: 1e-13,
                   latent_defects: {mean: 2000 h}, scrub: {mean: 1000 h}}
            far: {place: home, drives: 1 x d, noticed: 1 day, wait: 3 days, keeps_deleted: for good,
                  feed: {from: main, every: 1 day, at: 2 h, link: 40 Mbit/s, stops: 1 per year,
                         checked_every: 30 days}, spoils: {rate: 0.7 per year, tried_every: 90 days}}
            cloud: {service: {loses: 20 %/year}, noticed: 1 day, wait: 1 day,
                    feed: {from: main, continuous: true, link: 10 Mbit/s}, restores_at: 20 MB/s}
        shelf:
          copies:
            main: {place: studio, drives: 4 x s, arrangement: shelf, noticed: 1 day, wait: 2 days}
        turns:
          copies:
            main: {place: studio, drives: 1 x d, noticed: 1 day, wait: 2 days,
                   spoils: {rate: 0.2 per year, tried_every: 90 days}}
            off: {place: home, drives: 1 x d, noticed: 1 day, wait: 2 days, keeps_deleted: 9 days,
                  rotation: {drives: 2, every: 7 days},
                  feed: {from: main, every: 7 days, at: 9 h, visits: 12 h}}
        pairs:
          copies:
            main: {place: home, drives: [3 x d, 3 x s], arrangement: pairs, noticed: 9 days,
                   wait: 9 days, read_errors: 1e-14}
        bare:
          copies:
            main: {place: studio, drives: 1 x d}
        unseen:
          copies:
            main: {drives: 2 x d, arrangement: mirror, noticed: {checked_every: 300 days}}
        hidden:
          copies:
            main: {place: studio, drives: 1 x d, noticed: 1 day, wait: 2 days}
            far: {drives: 1 x d, noticed: 1 day, keeps_deleted: for good, spoils: {rate: 2 per year},
                  feed: {from: main, continuous: true}}
      """;

  private static final int HISTORIES = 40;

  private static List<Story> stories() {
    Written harsh = Written.of(HARSH);
    List<Story> all = new ArrayList<>();
    for (Layout layout : harsh.studio().layouts()) {
      for (long number = 0; number < HISTORIES; number++) {
        all.add(new Stories(harsh.studio(), layout, 1).tell(number));
      }
    }
    return all;
  }

  /**
   * Copies keep what they say, only what came back is told as back, and what is promised comes. Red
   * if a copy that keeps nothing keeps it for good, or an empty copy holds everything again.
   */
  @Test
  void sentencesAgreeWithWhatCopiesHold() {
    for (Story story : stories()) {
      StoryClock clock = new StoryClock(Optional.empty(), story.studio().horizonHours());
      StorySentences sentences = new StorySentences(story, clock);
      for (int i = 0; i < story.moments().size(); i++) {
        Moment moment = story.moments().get(i);
        String sentence = sentences.of(i);
        assertThat(sentence).doesNotContain("NaN", "nfinit", "null", "no time", "  ");
        if (sentence.contains("old state")) {
          keeps(story, moment, sentence);
        }
        if (sentence.contains("holds again")) {
          Snapshot scene = moment.scene();
          int copy = moment.happening().copy();
          assertThat(scene.heldBytes()[copy]).isPositive();
          double others = 0;
          for (int c = 0; c < scene.heldBytes().length; c++) {
            others += c == copy ? 0 : scene.heldBytes()[c];
          }
          assertThat(others).isPositive();
        }
        promised(story, i);
      }
      String page =
          StoryTimeline.of(
              story,
              new StoryEnding(story, clock).focus(),
              new StoryText.Telling(clock, false, PageLook.PLAIN));
      assertThat(page.lines()).allMatch(line -> line.length() <= 80);
      // A line without a time stands below one of the same instant, never below a gap.
      assertThat(page).doesNotContainPattern("left out here[^\\n]*\\n {10}");
    }
  }

  private static void keeps(Story story, Moment moment, String sentence) {
    Copy copy = story.copy(moment.happening().copy());
    assertThat(sentence.contains("for good"))
        .isEqualTo(Double.isInfinite(copy.keepsDeletedHours()));
    assertThat(sentence.contains("keeps nothing")).isEqualTo(copy.keepsDeletedHours() == 0);
  }

  /** A drive is whole, or a copy has hardware, when the sentence of its failure says so. */
  private static void promised(Story story, int index) {
    Moment moment = story.moments().get(index);
    double until = moment.happening().until();
    boolean drive = moment.kind() == Kind.DRIVE_FAILED;
    if (!(drive || moment.kind() == Kind.COPY_GONE) || !(until < story.studio().horizonHours())) {
      return;
    }
    int copy = moment.happening().copy();
    Kind end = drive ? Kind.DRIVE_READY : Kind.COPY_BACK;
    assertThat(story.moments().subList(index + 1, story.moments().size()))
        .filteredOn(m -> m.happening().copy() == copy)
        .anyMatch(
            m ->
                (m.kind() == end && Math.abs(m.hours() - until) < 1e-6)
                    || (drive && m.kind() == Kind.COPY_GONE && m.hours() <= until));
  }

  /** Each advice where it is true, and not where it would be false. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drive                   | 'There was no other copy'     | 'All copies went'
          drive+behind            | 'Behind at the time'          | 'had been unusable'
          drive+spoilt            | 'had been unusable'           | 'Behind at the time'
          drive+away              | 'at the time: '               | 'Behind at the time'
          drive+unseen            | 'had it been seen'            | 'Behind at the time'
          drive+rebuild           | 'Another drive of main had been down for' | 'Behind at the time'
          place:fire              | ''                            | 'had it been seen'
          desk:malware+behind     | 'Behind at the time'          | 'dropped it'
          desk:deletion+late      | 'No copy kept it until somebody noticed ; The last copy dropped it' | 'Behind at the time'
          """)
  void adviceFitsItsCause(String cause, String there, String notThere) {
    int seen = 0;
    for (Story story : stories()) {
      StoryEnding ending =
          new StoryEnding(story, new StoryClock(Optional.empty(), story.studio().horizonHours()));
      double at = story.moments().get(ending.focus()).hours();
      boolean fits =
          story.losses().stream()
              .filter(loss -> loss.hours() == at)
              .map(loss -> loss.cause().id())
              .anyMatch(id -> id.equals(cause) || (cause.contains("+") && id.startsWith(cause)));
      boolean several = story.layout().copies().size() > 1;
      if (fits && (cause.contains("+") || !several || !cause.equals("drive"))) {
        seen++;
        String why = String.join(" ", ending.why());
        assertThat(List.of(there.split(" ; "))).anyMatch(why::contains);
        assertThat(why).doesNotContain(notThere);
      }
    }
    assertThat(seen).as(cause).isPositive();
  }

  /**
   * What is said of a pair that lost both: the drive that is named as its other was down, since
   * when the advice says. Red if another pair's drive that is down is taken for it.
   */
  @Test
  void theOtherOfThePairWasDown() {
    Written harsh = Written.of(HARSH);
    Layout pairs =
        harsh.studio().layouts().stream().filter(l -> l.id().equals("pairs")).findFirst().get();
    int seen = 0;
    int more = 0;
    for (long number = 0; number < 4 * HISTORIES; number++) {
      Story story = new Stories(harsh.studio(), pairs, 1).tell(number);
      Map<Integer, Double> down = new TreeMap<>();
      for (int i = 0; i < story.moments().size(); i++) {
        Moment moment = story.moments().get(i);
        int drive = moment.happening().drive();
        if (moment.kind() == Kind.DRIVE_FAILED) {
          down.put(drive, moment.hours());
        } else if (moment.kind() == Kind.DRIVE_READY) {
          down.remove(drive);
        } else if (moment.kind() == Kind.COPY_GONE) {
          if (drive >= 0) {
            seen++;
            more += down.size() > 1 ? 1 : 0;
            bothOfOnePair(story, i, down);
          }
          down.clear();
        }
      }
    }
    assertThat(seen).isGreaterThan(20);
    assertThat(more).as("with a drive of another pair down too").isPositive();
  }

  private static void bothOfOnePair(Story story, int gone, Map<Integer, Double> down) {
    Moment moment = story.moments().get(gone);
    int drive = moment.happening().drive();
    int partner = drive % 2 == 0 ? drive + 1 : drive - 1;
    assertThat(down).containsKey(partner);
    StoryClock clock = new StoryClock(Optional.empty(), story.studio().horizonHours());
    assertThat(new StorySentences(story, clock).of(gone))
        .matches("Drive %d of main .*fails while drive %d, .*".formatted(drive + 1, partner + 1));
    Moment next = story.moments().get(gone + 1);
    if (next.kind() == Kind.LOST && next.hours() == moment.hours()) {
      double hours = moment.hours() - down.get(partner);
      assertThat(MissingSafeguard.of(story, gone + 1))
          .filteredOn(lack -> lack.lack() == MissingSafeguard.Lack.DRIVE_DOWN)
          .singleElement()
          .satisfies(lack -> assertThat(lack.hours()).isCloseTo(hours, within(1e-6)));
    }
  }

  /** One drive has nothing to come back from, and a shelf neither. */
  @Test
  void nothingComesBackWhereThereIsNoOtherCopy() {
    for (Story story : stories()) {
      boolean alone = story.layout().copies().size() == 1;
      StorySentences sentences =
          new StorySentences(
              story, new StoryClock(Optional.empty(), story.studio().horizonHours()));
      for (int i = 0; i < story.moments().size(); i++) {
        if (story.moments().get(i).kind() == Kind.REFILLED && alone) {
          // Shoots that were made while there was no drive for them wait on their cards.
          assertThat(sentences.of(i))
              .isIn(
                  "Nothing comes back to main: there is no other copy.",
                  "main takes what camera cards still held.");
        }
      }
    }
  }
}
