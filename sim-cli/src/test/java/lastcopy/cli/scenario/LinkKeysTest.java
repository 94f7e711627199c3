package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Links as the file states them, and what is said of slips in them. */
class LinkKeysTest {

  private static String fed(String keys) {
    return Texts.withFar("drives: 1 x desk, feed: {from: main, every: 1 day, " + keys + "}")
        .replace(
            "drives:\n",
            "uplinks:\n  office: {speed: 20 Mbit/s}\n  home: {speed: 1 MB/s}\ndrives:\n");
  }

  private static Feed feed(String keys) {
    return Texts.far(fed(keys)).feed().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "20 h, 6 h, 20, 6, 10",
    "0 h, 24 h, 0, 24, 24",
    "24 h, 90 min, 0, 1.5, 1.5",
    "8 h, 18 h, 8, 18, 10",
    "20 h, 0 h, 20, 0, 4",
    "20 h, 1 day, 20, 24, 4",
  })
  void hoursOfTheDay(String opens, String closes, double from, double to, double length) {
    DailyHours hours = feed("between: [" + opens + ", " + closes + "]").between().orElseThrow();
    assertThat(hours).isEqualTo(new DailyHours(from, to));
    assertThat(hours.length()).isEqualTo(length);
    assertThat(hours.always()).isEqualTo(length == 24);
  }

  @Test
  void anUplinkIsNamedWhereARateMayStand() {
    assertThat(feed("link: office").bytesPerSecond()).hasValue(2.5e6);
    assertThat(feed("link: office").uplink().orElseThrow().id()).isEqualTo("office");
    assertThat(feed("link: 2 MB/s").uplink()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          link: ofice                  | found 'ofice', which is no rate and no uplink; accepted: a rate such as 20 Mbit/s or 110 MB/s (bit/s, kbit/s, Mbit/s, Gbit/s, B/s, kB/s, MB/s, GB/s), or an uplink of this file: office, home. Did you mean 'office'?
          link: 20 Mbps                | Did you mean 'Mbit/s'?
          between: [6 h, 6 h]          | found hours that end when they begin; accepted: two different hours of the day, from 0 h to 24 h, such as [20 h, 6 h]; [0 h, 24 h] is always.
          between: [24 h, 0 h]         | found hours that end when they begin
          between: [20 h]              | found not two hours of a day
          between: [20 h, 30 h]        | found not two hours of a day
          between: 20 h                | such as [20 h, 6 h]
          between: [20, 6 h]           | found '20', a number without a unit
          between: [-1 h, 6 h]         | found '-1 h'
          carried: {rate: 100 MB/s}    | found carried without 'takes'; accepted: takes: 2 days.
          carried: {takes: 2 days}     | found carried without 'rate'; accepted: rate: 100 MB/s.
          carried: {takes: 2 days, rate: 0 MB/s} | a number above 0
          carried: {takes: 2 days, rat: 1 MB/s, rate: 1 MB/s} | Did you mean 'rate'?
          betwen: [20 h, 6 h]          | Did you mean 'between'?
          """)
  void aSlipIsTold(String keys, String message) {
    assertThat(Texts.problems(fed(keys))).singleElement().asString().contains(message);
  }

  @Test
  void drivesThatTakeTurnsUseNoUplinkAndNobodyCarriesThemTwice() {
    String turns = "drives: 1 x desk, rotation: {drives: 2, every: 7 days}, feed: {from: main, ";
    String text = fed("visits: 3 h");
    assertThat(
            Texts.problems(
                text.replace("drives: 1 x desk, feed: {from: main, every: 1 day, ", turns)))
        .isEmpty();
    String both = fed("link: office, carried: {takes: 1 h, rate: 1 MB/s}");
    assertThat(
            Texts.problems(
                both.replace("drives: 1 x desk, feed: {from: main, every: 1 day, ", turns)))
        .hasSize(2)
        .anySatisfy(p -> assertThat(p).contains("found 'link' of an uplink beside 'rotation'"))
        .anySatisfy(p -> assertThat(p).contains("found 'carried' beside 'rotation'"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {speed: 20 Mbit/s, price: 40}          | a price such as 40 per month
          {price: 40 per month}                  | found an uplink without 'speed'; accepted: speed: 20 Mbit/s.
          {speed: 20 Mbit/s, cost: 40 per month} | found 'cost', which is no key of an uplink
          """)
  void slipsOfAnUplink(String uplink, String message) {
    String text = fed("visits: 1 h").replace("{speed: 20 Mbit/s}", uplink);
    assertThat(Texts.problems(text)).singleElement().asString().contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          retrieval: 20             | a price such as 20 per TB
          restores_in: -1 h         | found '-1 h'
          restors_in: 2 days        | Did you mean 'restores_in'?
          """)
  void slipsOfAService(String keys, String message) {
    String text =
        Texts.withFar("service: {loses: 1 %/year, " + keys + "}, feed: {from: main, every: 1 day}");
    assertThat(Texts.problems(text)).singleElement().asString().contains(message);
  }
}
