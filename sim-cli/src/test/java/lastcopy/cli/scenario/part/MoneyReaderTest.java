package lastcopy.cli.scenario.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import lastcopy.cli.scenario.Texts;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts of money, and what is said of those that cannot be. */
class MoneyReaderTest {

  private static String top(String keys) {
    return Texts.VALID.replace("footage:\n", keys + "\nfootage:\n");
  }

  @Test
  void whatIsLeftOutIsNotPriced() {
    Studio studio = Texts.studio(Texts.VALID);
    assertThat(studio.energyPerKwh()).isEmpty();
    assertThat(studio.work()).isEqualTo(Work.NONE);
    assertThat(studio.layouts().get(0).costs()).isEqualTo(Costs.NONE);
    assertThat(Texts.main(Texts.VALID).costs()).isEqualTo(Costs.NONE);
    assertThat(Texts.model(Texts.VALID).owned()).isFalse();
  }

  @Test
  void eachPartOfWorkMayBeLeftOut() {
    assertThat(Texts.studio(top("work: {price: 25.5 per hour}")).work())
        .isEqualTo(new Work(OptionalDouble.of(25.5), 0, 0, 0, 0));
    assertThat(Texts.studio(top("work: {look: 6 min}")).work())
        .isEqualTo(new Work(OptionalDouble.empty(), 0, 0, 0.1, 0));
  }

  /** All amounts of a file are in one currency; each mistake at its place. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          price: 180 USD | 11:29 | '180 USD', an amount with a currency; accepted: a number alone
          price: EUR 180 | 11:29 | 'EUR 180', an amount with a currency; accepted: a number alone
          price: $180    | 11:29 | '$180', an amount with a currency; accepted: a number alone
          price: 180 €   | 11:29 | an amount with a currency; accepted: a number alone
          price: -1      | 11:29 | '-1'; accepted: a number from 0 to 1000000000000
          price: 1e13    | 11:29 | '1e13'; accepted: a number from 0 to 1000000000000
          price: cheap   | 11:29 | 'cheap'; accepted: a number from 0 to 1000000000000
          price: 1..4    | 11:29 | a range only on a chance, a rate or a mean
          power: -6 W    | 11:29 | a power from 0 to 1000000 W
          power: 2e6 W   | 11:29 | a power from 0 to 1000000 W
          owned: maybe   | 11:29 | 'maybe'; accepted: false, true
          """)
  void ofADrive(String key, String place, String message) {
    assertThat(Texts.problems(Texts.VALID.replace("size: 8 TB,", "size: 8 TB, " + key + ",")))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:" + place + ": found ")
        .contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          energy: 0.3               | 4:9  | a price such as 0.30 per kWh
          energy: 0.3 EUR per kWh   | 4:9  | such as 0.30 per kWh: all amounts of a file are in one
          energy: 0.3 per kwh       | 4:9  | Did you mean 'per kWh'?
          energy: -1 per kWh        | 4:9  | a number from 0 to
          work: {price: 40}         | 4:15 | a price such as 40 per h
          work: {price: -4 per h}   | 4:15 | a number from 0 to
          work: {repair: -2 h}      | 4:16 | a time from 0 to a year
          work: {repair: 2 years}   | 4:16 | a time from 0 to a year
          work: {repairs: 2 h}      | 4:8  | 'repairs', which is no key of work
          """)
  void ofTheStudio(String keys, String place, String message) {
    assertThat(Texts.problems(top(keys)))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:" + place + ": found ")
        .contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          costs: {once: -1}        | a number from 0 to 1000000000000
          costs: {per_year: 1e300} | a number from 0 to 1000000000000
          costs: {monthly: 3}      | 'monthly', which is no key of costs
          costs: 60                | keys with values, such as once, per_year
          """)
  void ofACopy(String keys, String message) {
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, " + keys)))
        .singleElement()
        .asString()
        .contains(message);
  }

  @Test
  void whatALossCostsIsAnAmountToo() {
    String text =
        Texts.withFootage("{worth: 900 USD per shoot, shoots: {every: 1 day, size: 1 GB}}");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .contains(
            "'900 USD per shoot', an amount with a currency; accepted: an amount such as 900");
  }
}
