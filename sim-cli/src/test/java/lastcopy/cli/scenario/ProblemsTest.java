package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a wrong scenario says, word by word. */
class ProblemsTest {

  @Test
  void theSmallScenarioIsValid() {
    assertThat(Texts.problems(Texts.VALID)).isEmpty();
  }

  @Test
  void allProblemsComeAtOnceInTheOrderOfTheFile() {
    String text =
        Texts.VALID
            .replace("years: 5", "years: -5")
            .replace("96 GB", "96 Gb")
            .replace("1 %/year}}}", "1 %}}}")
            .replace("place: studio", "plaice: studio")
            .replace("1 x desk, feed", "1 x dsk, feed");
    assertThat(Texts.problems(text))
        .containsExactly(
            "demo.yaml:3:8: found '-5'; accepted: a number above 0 and at most 1000.",
            "demo.yaml:5:33: found '96 Gb' with the unknown unit 'Gb'; accepted: a size such as 96"
                + " GB or 2 TiB (B, kB, MB, GB, TB, PB, KiB, MiB, GiB, TiB). Did you mean 'GB'?",
            "demo.yaml:7:35: found '1 %' with the unknown unit '%'; accepted: a chance such as 2"
                + " %/year, or a rate such as 0.02 per year. Did you mean '%/year'?",
            "demo.yaml:15:14: found 'plaice', which is no key of a copy; accepted: place, service,"
                + " noticed, replace_at, wait or one of 21 more (lastcopy inspect --schema lists"
                + " them). Did you mean 'place'?",
            "demo.yaml:16:21: found 'dsk', which is no drive model; accepted: desk."
                + " Did you mean 'desk'?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          noticed: 2 dayz      | Did you mean 'day'?
          noticd: 2 days       | Did you mean 'noticed'?
          restores_at: 20 Mbps | Did you mean 'Mbit/s'?
          restores_at: 20 MB   | Did you mean 'MB/s'?
          arrangement: miror   | Did you mean 'mirror'?
          box: towr            | Did you mean 'tower'?
          reach: offlin        | Did you mean 'offline'?
          starts: ful          | Did you mean 'full'?
          place: studo         | Did you mean 'studio'?
          rebuild-reads: used  | Did you mean 'rebuild_reads'?
          """)
  void aSlipBringsTheWordThatWasMeant(String keys, String suggestion) {
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, " + keys)))
        .singleElement()
        .asString()
        .endsWith(suggestion);
  }

  /** A rate by the month is taken, but not in %: what is suggested is taken and means the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 % per month       | 0.02 per month
          2 %/month           | 0.02 per month
          0.5 percent per day | 0.005 per day
          3 % / week          | 0.03 per week
          2 % per yr          | %/year
          2 per yr            | per year
          """)
  void aShareOfAMonthIsNotTakenForARate(String rate, String meant) {
    assertThat(Texts.problems(Texts.VALID.replace("1 %/year}}}", rate + "}}}")))
        .singleElement()
        .asString()
        .endsWith("Did you mean '" + meant + "'?");
    String whole = meant.matches("[0-9].*") ? meant : "2 " + meant;
    assertThat(Texts.problems(Texts.VALID.replace("1 %/year}}}", whole + "}}}"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drives: 0 x desk                          | from 1 to 1000 drives
          drives: 99999999999 x desk                | a number and a model, such as 2 x desk-8tb
          drives: 2 x desk                          | found 2 drives without 'arrangement'
          drives: 2 x desk, arrangement: single     | accepted: 1 drive for single
          drives: 1 x desk, arrangement: mirror     | at least 2 drives for mirror
          place: studio                             | found a copy without 'drives' or 'service'
          drives: 1 x desk, service: {loses: 0 %/year} | found 'drives' beside 'service'
          service: {}                               | accepted: loses: 0.2 %/year, which counts the account itself
          drives: 2 x desk                          | found 2 drives without 'arrangement'; accepted: arrangement: mirror
          drives: 1 x desk, wait: 4                 | found '4', a number without a unit
          drives: 1 x desk, wait: -4 h              | accepted: a time such as 6 h
          drives: 1 x desk, noticed: never          | Did you mean '0 %/year'?
          drives: 1 x desk, spares: 1               | accepted: wait: 0 h, which is what a spare on the shelf means
          drives: 1 x desk, wait: {}                | found no law
          drives: 1 x desk, wait: {mean: 2 h, fixed: 2 h} | found several laws: mean, fixed
          drives: 1 x desk, noticed: {checked_every: 0 days} | a number above 0
          drives: 1 x desk, noticed: {checked_every: 1 day, mean: 1 h} | 'mean' beside 'checked_every'
          drives: 1 x desk, daily_work_takes: 1     | a number from 0 to below 1
          drives: 1 x desk, rebuild: 4 h, daily_work_takes: 0.5 | beside a law for 'rebuild'
          drives: 1 x desk, keeps_deleted: for ever | a time such as 6 h
          drives: 1 x desk, restores_at: 0 MB/s     | a number above 0
          drives: 1 x desk, feed: {from: far, every: 1 day} | the first copy, which is the working copy
          drives: {desk: 1}                         | found a mapping
          drives: [], arrangement: mirror           | found an empty list
          drives: [1 x desk, 2 desk], arrangement: mirror | demo.yaml:15:33: found '2 desk'
          drives: [1 x desk, [1 x desk]], arrangement: mirror | found a list
          drives: [1 x desk, 1 x dsk], arrangement: mirror | Did you mean 'desk'?
          drives: [1 x desk, 1 x desk]              | found 2 drives without 'arrangement'; accepted: arrangement: mirror, pairs
          drives: [600 x desk, 500 x desk], arrangement: mirror | found 1100 drives in all
          drives: 3 x desk, arrangement: pairs      | accepted: an even number of drives for pairs
          drives: 1 x desk, arrangement: pairs      | accepted: an even number of drives for pairs
          drives:                                   | found nothing
          drives: 1 x desk, wait: 1e999 h           | found '1e999 h'
          """)
  void theFirstCopySaysWhatIsWrong(String keys, String message) {
    assertThat(Texts.problems(Texts.withMain(keys))).singleElement().asString().contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drives: 1 x desk                                 | found the copy 'far' without 'feed'
          drives: 1 x desk, feed: {every: 1 day}           | found a feed without 'from'
          drives: 2 x desk, rotation: {drives: 2, every: 7 days}, feed: {from: main, every: 7 days} | accepted: drives: 1 x a model, since 'drives' is what each turn of 'rotation' consists of
          drives: 1 x desk, feed: {from: main}             | without 'every' or 'continuous'
          drives: 1 x desk, feed: {from: mian, every: 1 h} | Did you mean 'main'?
          drives: 1 x desk, feed: {from: far, every: 1 h}  | which is this copy itself
          drives: 1 x desk, feed: {from: main, every: 1 h, continuous: true} | found 'every' beside 'continuous'
          drives: 1 x desk, feed: {from: main, continuous: maybe, every: 1 h} | accepted: false, true
          """)
  void theSecondCopySaysWhatIsWrong(String keys, String message) {
    assertThat(Texts.problems(Texts.withFar(keys))).singleElement().asString().contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          size: 0 TB, fails: 2 %/year        | a number above 0
          size: 8, fails: 2 %/year           | found '8', a number without a unit
          fails: 2 %/year                    | found a drive model without 'size'
          size: 8 TB                         | found a drive model without 'fails'
          size: 8 TB, fails: 100 %/year      | a chance from 0 to below 100 %/year
          size: 8 TB, fails: -1 per year     | a rate of at least 0 per year
          size: 8 TB, fails: 0 days          | accepted: a life above 0
          size: 8 TB, fails: {weibull: {shape: 1.1}} | found weibull without 'scale'
          size: 8 TB, fails: {uniform: [3 days, 1 day]} | ends in the wrong order
          size: 8 TB, fails: {by_age: []}    | found an empty list
          size: 8 TB, fails: {by_age: [1 %/year, 2]} | found '2', a number without a unit
          size: 8 TB, fails: {sum: [2 %/year, soon]} | found 'soon'
          size: 8 TB, fails: {mean: 0 h}     | a number above 0
          size: 8 TB, fails: 0.03            | Did you mean '3 %/year'?
          size: 8 TB, fails: 0.03            | accepted: a law such as 2 %/year
          size: 8 TB, fails: never           | Did you mean '0 %/year'?
          """)
  void aDriveSaysWhatIsWrong(String drive, String message) {
    assertThat(Texts.problems(Texts.withDrive(drive))).singleElement().asString().contains(message);
  }

  /** A decimal comma begins a new key; a delay that is a bare number is no chance of a year. */
  @Test
  void aCommaIsNoPointAndADelayNoChance() {
    assertThat(Texts.problems(Texts.withDrive("size: 8 TB, fails: 1,5 %/year")))
        .anyMatch(p -> p.toString().contains("accepted: a number with a point, such as 1.5 %/year"))
        .noneMatch(p -> p.toString().contains("which is no key"));
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, wait: 0.5")))
        .singleElement()
        .asString()
        .doesNotContain("Did you mean");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          on_hand: 1 TB                                | found neither 'shoots' and 'ingest'
          shoots: {size: 1 GB}                         | found neither 'every' and 'per_year'
          shoots: {every: 1 day, per_year: 4, size: 1 GB} | found both 'every' and 'per_year'
          shoots: {every: 1 day}                       | found shoots without 'size'
          ingest: 5 TB                                 | Did you mean 'TB/year'?
          shoots: {every: 1 day, size: 1 GB, spacing: randm} | Did you mean 'random'?
          """)
  void footageSaysWhatIsWrong(String keys, String message) {
    assertThat(Texts.problems(Texts.withFootage(keys)))
        .singleElement()
        .asString()
        .contains(message);
  }

  /** A section of few keys lists them all. */
  @Test
  void anUnknownKeyAmongFewListsThemAll() {
    assertThat(
            Texts.problems(
                Texts.VALID.replace("rate: 1 %/year}\ndrives", "odds: 1 %/year}\ndrives")))
        .singleElement()
        .asString()
        .endsWith("'odds', which is no key of a box; accepted: rate, price, power," + " speed.");
  }

  /** A box with its drives stands in one place. */
  @Test
  void aBoxInTwoPlacesIsAProblemAtTheSecond() {
    String text =
        Texts.withMain("place: studio, box: tower, drives: 1 x desk")
            .replace("far: {", "far: {place: home, box: tower, ");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:16:31: found the box 'tower' in the place 'home', and with copy")
        .contains("'main' in the place 'studio'; accepted: one place for all copies in a box");
    assertThat(Texts.problems(text.replace("place: home", "place: studio"))).isEmpty();
    assertThat(Texts.problems(text.replace("place: home, ", "")))
        .singleElement()
        .asString()
        .contains("in a place of its own ('place' is left out)");
  }

  @Test
  void footageOnHandIsSomewhere() {
    String text =
        Texts.withMain("drives: 1 x desk, starts: empty")
            .replace("far: {", "far: {starts: empty, ")
            .replace("footage:\n", "footage:\n  on_hand: 1 TB\n");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .contains("where no copy holds the footage on hand");
  }

  @Test
  void aCircleOfFeedsIsOneProblemAtItsSource() {
    String text =
        Texts.withFar("drives: 1 x desk, feed: {from: third, every: 1 day}")
            + "      third: {drives: 1 x desk, feed: {from: far, every: 1 day}}\n";
    assertThat(Texts.problems(text))
        .containsExactly(
            "demo.yaml:16:44: found feeds in a circle: far from third from far; accepted: feeds"
                + " that lead back to the first copy, main.");
  }

  @Test
  void placesOfASeriesAndNewPlacesNeedNoEntry() {
    String text = Texts.VALID.replace("  studio: {mishaps", "  studio-1: {mishaps");
    assertThat(Texts.problems(text.replace("place: studio", "place: studio-2"))).isEmpty();
    assertThat(Texts.problems(text.replace("place: studio", "place: bank box"))).isEmpty();
  }

  @Test
  void missingSectionsAreNamed() {
    assertThat(Texts.problems("lastcopy: 2\n"))
        .contains(
            "demo.yaml:1:11: found format '2'; accepted: 1.",
            "demo.yaml:1:1: found a scenario without 'studio'; accepted: studio: Harbour Lane"
                + " Films.")
        .hasSize(5);
  }
}
