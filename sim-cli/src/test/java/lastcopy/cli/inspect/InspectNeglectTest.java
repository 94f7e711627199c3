package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.cli.Written;
import lastcopy.experiment.LayoutResult;
import lastcopy.history.report.Happening;
import lastcopy.interval.Estimate;
import lastcopy.story.Moment;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;

/** The figures of warnings of what is never looked at, against what histories do. */
class InspectNeglectTest {

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 20
      footage: {on_hand: 2 TB, shoots: {every: 5 years, size: 1 kB}}
      drives:
        sound: {size: 8 TB, fails: 0 %/year}
        brief: {size: 8 TB, fails: {fixed: 7299 days}}
        frail: {size: 8 TB, fails: {mean: 900 h}}
      layouts:
        one:
          copies:
      """;

  private static double figure(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertThat(found.find()).as(text).isTrue();
    return Double.parseDouble(found.group(1));
  }

  /** The working copy fails for certain a day before the end: lost is what was spoilt by then. */
  @Test
  void soOftenACopyThatIsNeverTriedIsUnusable() {
    Written studio =
        Written.of(
            STUDIO
                + "      main: {drives: 1 x brief, noticed: 1 h, wait: 1 h}\n"
                + "      far: {drives: 1 x sound, spoils: {rate: 2 %/year}, restores_at: 1000 MB/s,"
                + " feed: {from: main, continuous: true, link: 100 MB/s}}\n");
    double said = figure(studio.warning("never-tried").text(), "chance of ([0-9]+) %") / 100;
    Estimate lost = studio.simulated(40_000).everythingLost();
    assertThat(said + 0.005).isGreaterThan(lost.low());
    assertThat(said - 0.005).isLessThan(lost.high());
  }

  /** Of nine such drives eight are left, of which the first fails after an eighth of 900 h. */
  @Test
  void soSoonTheNextDriveFails() {
    Written studio =
        Written.of(
            STUDIO
                + "      main: {drives: 9 x frail, arrangement: parity, rebuild: {fixed: 300 h},"
                + " noticed: 1 h, wait: 1 h}\n");
    String text = studio.warning("rebuild-too-slow").text();
    assertThat(figure(text, "takes ([0-9]+) h")).isEqualTo(300);
    assertThat(figure(text, "other ([0-9]+) drives")).isEqualTo(8);
    assertThat(figure(text, "after ([0-9]+) h")).isEqualTo(Math.rint(900 / 8.0));
  }

  /** Seed 59899 of the fuzzer: it took Infinity h, and there were other 1 drives. */
  @Test
  void aRebuildMayNeverEnd() {
    Written studio =
        Written.of(
            STUDIO
                + "      main: {drives: 2 x frail, arrangement: mirror, rebuild: 0 %/year,"
                + " noticed: 1 h, wait: 1 h}\n");
    assertThat(studio.warning("rebuild-too-slow").text())
        .startsWith("A rebuild never ends; the other drive fails after 900 h on average.");
  }

  /** From a failure until a new drive is there, which takes no time once somebody looks. */
  @Test
  void soLongAFailedDriveStaysUnseen() {
    Written studio =
        Written.of(
            STUDIO.replace("900 h", "40000 h")
                + "      main: {drives: 2 x frail, arrangement: mirror, rebuild: {fixed: 0 h},"
                + " noticed: {checked_every: 60 days}, wait: 0 h}\n");
    double said = figure(studio.warning("nobody-watches").text(), "for ([0-9]+) days on average");
    double sum = 0;
    int failures = 0;
    for (int k = 0; k < 2_000; k++) {
      Optional<Moment> first =
          studio.tell(k).moments().stream()
              .filter(moment -> moment.kind() == Happening.Kind.DRIVE_FAILED)
              .findFirst();
      if (first.isPresent()) {
        sum += first.get().happening().until() - first.get().hours();
        failures++;
      }
    }
    assertThat(failures).isGreaterThan(1_000);
    // Even over 60 days: 17.3 days to and fro, five standard errors, half a day of rounding.
    double error = 5 * 60 / Math.sqrt(12.0 * failures) + 0.5;
    assertThat(sum / failures / 24).isBetween(said - error, said + error);
  }

  /** The working copy is gone two months before the end and is filled again. */
  @Test
  void soManyDaysEverythingTakesToComeBack() {
    Written studio =
        Written.of(
            STUDIO.replace("7299", "7240")
                + "      main: {drives: 1 x brief, noticed: 1 h, wait: 1 h}\n"
                + "      far: {drives: 1 x sound, restores_at: 1 MB/s,"
                + " feed: {from: main, continuous: true, link: 100 MB/s}}\n");
    double said = figure(studio.warning("slow-restore").text(), "takes ([0-9]+) days");
    Story story = studio.tell(0);
    double began = Written.first(story, Happening.Kind.REFILL_STARTED, 1);
    double ended = Written.first(story, Happening.Kind.REFILLED, began);
    assertThat((ended - began) / 24).isBetween(said - 0.5, said + 0.5);
  }

  /** New footage that a fire takes, of what two drives in turn have not got yet. */
  @Test
  void soMuchNewFootageGoesBetweenSwaps() {
    Written studio =
        Written.of(
            STUDIO
                    .replace("{every: 5 years, size: 1 kB}", "{every: 1 day, size: 10 GB}")
                    .replace(
                        "drives:\n",
                        "places: {studio: {mishaps: {fire: {rate: 1 %/year}}}}\ndrives:\n")
                + "      main: {place: studio, drives: 1 x sound, noticed: 1 h, wait: 1 h}\n"
                + "      turn: {drives: 1 x sound, rotation: {drives: 2, every: 20 days},"
                + " feed: {from: main, visits: 24 h, link: 150 MB/s}}\n");
    String text = studio.warning("rotation-gap").text();
    double said = figure(text, "about ([0-9]+) GB of new footage") * 1e9;
    LayoutResult result = studio.simulated(60_000);
    double each = result.bytesLost().value() / result.lossEvents().value();
    double part = result.lossEvents().high() / result.lossEvents().value() - 1;
    assertThat(each).isBetween(said * (1 - 2 * part), said * (1 + 2 * part));
  }
}
