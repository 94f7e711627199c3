package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.cli.Written;
import lastcopy.interval.Estimate;
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
}
