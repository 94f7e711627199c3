package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files with slips in them, by the thousand, through reading, {@code inspect}, {@code story} and a
 * short {@code compare}: a result in range, or messages with places, and nothing else. What it
 * found was mended; to see one again, {@code new Mutations(bases()).text(seed)}.
 */
class FuzzTest {

  private static final int AT_MOST_TOLD = 20;

  @TempDir Path folder;

  @Test
  @Timeout(900)
  void fiveThousandFilesCannotBreakIt() throws IOException {
    hold(0, 5_000);
  }

  @Test
  @Tag("slow")
  void aHundredThousandFilesCannotBreakIt() throws IOException {
    hold(5_000, 105_000);
  }

  /** Seed 8530: a service whose loss is so rare that the mean of hours until it is no number. */
  @Test
  void aRateBeyondAllNumbersIsNever() throws IOException {
    String text = ALL_KEYS.replace("loses: 0.01 %/year", "loses: 1e-308 %/year");
    assertThat(new Fuzzed(folder).problems(text)).isEmpty();
  }

  /** Seed 26656: more shoots on hand than there are whole numbers of 32 bits; none was hit. */
  @Test
  void shootsByTheMilliards() throws IOException {
    String text = ALL_KEYS.replace("size: 40 GB", "size: 40 B");
    assertThat(new Fuzzed(folder).problems(text)).isEmpty();
  }

  private void hold(long from, long to) throws IOException {
    Fuzzed fuzzed = new Fuzzed(folder);
    assertThat(broken(fuzzed, from, to)).isEmpty();
    // Otherwise little but the reader was tried.
    assertThat(fuzzed.valid()).isGreaterThan((int) ((to - from) / 20));
  }

  static List<String> broken(Fuzzed fuzzed, long from, long to) throws IOException {
    Mutations mutations = new Mutations(bases());
    List<String> broken = new ArrayList<>();
    for (long seed = from; seed < to && broken.size() < AT_MOST_TOLD; seed++) {
      for (String problem : fuzzed.problems(mutations.text(seed))) {
        broken.add("seed " + seed + ": " + problem);
      }
    }
    return broken;
  }

  static List<String> bases() throws IOException {
    List<String> texts = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("..", "scenarios"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        // Comments are most of a demo, and slips in them would be wasted.
        texts.add(Files.readString(file).replaceAll("(?m)\\s*#.*$", "").replaceAll("\n+", "\n"));
      }
    }
    texts.add(ALL_KEYS);
    return texts;
  }

  /** Every key of the format at least once. */
  private static final String ALL_KEYS =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 3
      currency: EUR
      energy: 0.30 per kWh
      work: {price: 40 per h, repair: 2 h, visit: 20 min, look: 5 min, trial: 1 h}
      footage:
        on_hand: 2 TB
        shoots: {every: 7 days, size: 40 GB, spacing: random}
        growth: 5 %/year
        keep_for: 2 years
        clip: 2 GB
        worth: 700 per shoot
      places:
        studio: {mishaps: {fire: {rate: 0.3 %/year}, theft: {rate: 0.1 per year, takes: 0.5}}}
      boxes:
        tower: {rate: 0.5 %/year, price: 250, power: 15 W, speed: 300 MB/s}
      uplinks:
        office: {speed: 200 Mbit/s, price: 40 per month}
      desk:
        deletion: {rate: 30 %/year, size: 1 shoots, noticed: {mean: 9 days}}
        malware: {rate: 2 %/year, noticed: {mean: 2 days}}
      drives:
        desk: {size: 8 TB, price: 180, power: 6 W, speed: 150 MB/s, fails: 20 %/year, age: 1 year, bought_at: 1 day, fails_off: 1 %/year}
        old: {size: 4 TB, price: 40, owned: true, fails: {by_age: [4 %/year, 9 %/year]}, age: {uniform: [1 year, 3 years]}}
        odd: {size: 6 TB, fails: {sum: [{weibull: {shape: 1.2, scale: 90000 h, location: 9 h}}, {typical: portable, level: low}]}}
      layouts:
        one:
          title: Everything at once
          costs: {once: 60, per_year: 24, per_month: 3}
          cards: {keep: 7 days}
          copies:
            main: {place: studio, box: tower, drives: 3 x desk, arrangement: parity, batch: {name: spring, spread: 0.5}, noticed: {checked_every: 30 days}, wait: 4 days, rebuild: 100 MB/s, rebuild_reads: used, daily_work_takes: 0.2, replace_at: 2 years, latent_defects: {mean: 9000 h}, scrub: 30 days, strain: 3, read_errors: 1e-15, gone_noticed: 1 day}
            far: {place: home, drives: 2 x old, arrangement: stripe, spoils: {rate: 2 %/year, tried_every: 90 days}, feed: {from: main, every: 1 day, at: 2 h, link: office, between: [20 h, 6 h], carried: {takes: 2 days, rate: 100 MB/s}, stops: 0.5 per year, checked_every: 30 days}, restores_at: 50 MB/s, keeps_deleted: 30 days, starts: empty}
            turn: {drives: 1 x odd, rotation: {drives: 2, every: 14 days}, reach: offline, feed: {from: main, visits: 12 h}}
            web: {service: {loses: 0.01 %/year, price: 5 per TB per month, retrieval: 20 per TB, restores_in: 2 days}, feed: {from: far, continuous: true, link: office}, keeps_deleted: for good, costs: {per_year: 12}}
        two:
          copies:
            main: {place: studio, drives: 2 x desk, arrangement: mirror, noticed: 1 day, wait: 2 days}
            web: {drives: 4 x old, arrangement: shelf, feed: {from: main, continuous: true, link: 100 Mbit/s, between: [8 h, 20 h]}}
        three:
          copies:
            main: {place: studio, drives: [2 x desk, 1 x old, 1 x odd], arrangement: pairs, strain: 2, noticed: 1 day, wait: 2 days}
            far: {drives: [1 x old, 1 x desk], arrangement: shelf, feed: {from: main, every: 1 day}}
        four:
          copies:
            main: {drives: {one_of: [2 x desk, {use: 3 x desk, costs: {once: 90}}]}, arrangement: mirror, noticed: {one_of: [1 day, {checked_every: 30 days}]}}
            far: {optional: true, drives: 1 x old, feed: {from: main, every: {one_of: [7 days, 1 day]}}}
      """;
}
