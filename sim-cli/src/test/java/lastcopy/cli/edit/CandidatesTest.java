package lastcopy.cli.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Layout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a file leaves open: numbers of layouts by hand, and each mistake with its place. */
class CandidatesTest {

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: A
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 24 GB}}
      drives: {d: {size: 8 TB, fails: 1..4 %/year, price: 100}, e: {size: 4 TB, fails: 2 %/year}}
      layouts:
        box:
          title: A box
          copies:
            main:
              drives: {one_of: [2 x d, 3 x d]}
              arrangement: mirror
              noticed: {one_of: [{checked_every: 30 days}, {use: 1 day, costs: {per_year: 12}}]}
            far:
              optional: true
              drives: 1 x d
              feed: {from: main, every: {one_of: [7 days, 1 day, 6 h]}, link: 20 Mbit/s}
        alone: {copies: {main: {drives: 1 x d}}}
      """;

  private static Candidates read(String text) throws ScenarioException {
    return Candidates.of(ScenarioTree.parse("a.yaml", text));
  }

  /** Two sets, two ways to notice, and no far copy or one fed in three ways: 2 x 2 x (1 + 3). */
  @Test
  void everyCombinationIsThereOnce() throws ScenarioException {
    Candidates open = read(STUDIO);

    assertThat(open.all()).hasSize(17).extracting(Candidate::id).doesNotHaveDuplicates();
    assertThat(open.all()).extracting(Candidate::choices).doesNotHaveDuplicates();
    assertThat(open.impossible()).isEmpty();
    assertThat(open.areOnlyLayouts()).isFalse();
    Candidate today = open.all().get(0);
    assertThat(today.id()).isEqualTo("box");
    assertThat(today.changes()).isEmpty();
    assertThat(today.layout().copies()).hasSize(1);
    assertThat(today.choices())
        .extracting(chosen -> chosen.key() + "=" + chosen.value())
        .containsExactly(
            "copies.main.drives=2 x d",
            "copies.main.noticed={checked_every: 30 days}",
            "copies.far=without");
    Candidate last = open.all().get(15);
    assertThat(last.id()).isEqualTo("box-16");
    assertThat(last.layout().title())
        .isEqualTo("A box: main 3 x d, main noticed 1 day, with far, far fed every 6 h");
    assertThat(last.layout().costs()).isEqualTo(new Costs(0, 12, 0));
    assertThat(open.all().get(16).id()).isEqualTo("alone");
  }

  /** As plain layouts in a file of their own they are what they were among the choices. */
  @Test
  void writtenAndReadTheyAreTheSame() throws ScenarioException {
    Candidates open = read(STUDIO);
    List<String> ids = open.all().stream().map(Candidate::id).toList();

    String page = open.withPlain(ids).page();
    List<Layout> again = ScenarioReader.parse("b.yaml", page).studio().layouts();
    assertThat(again).isEqualTo(open.layouts());
    assertThat(page).doesNotContain("one_of").doesNotContain("optional").doesNotContain("use:");
    assertThat(open.withPlain(List.of("alone", "box-3")).layouts())
        .containsExactly("alone", "box-3");
  }

  @Test
  void otherCommandsTakeWhatIsThereToday() throws ScenarioException {
    ScenarioTree tree = ScenarioTree.parse("a.yaml", STUDIO);
    assertThat(tree.scenario().studio().layouts())
        .isEqualTo(tree.today().scenario().studio().layouts())
        .extracting(Layout::id)
        .containsExactly("box", "alone");
    assertThat(tree.scenario().open().choices()).isEqualTo(4);
    assertThat(tree.scenario().open().layouts()).isEqualTo(17);
    assertThat(tree.today().page()).doesNotContain("one_of").contains("checked_every");
  }

  /** A range of an alternative that is not taken is no unknown of today's layouts. */
  @Test
  void onlyRangesOfTodayCount() throws ScenarioException {
    String text =
        STUDIO.replace(
            "arrangement: mirror",
            "arrangement: mirror\n        spoils: {one_of: [{rate: 1..2 %/year}, {rate: 3..4 %/year}]}");
    assertThat(ScenarioReader.parse("a.yaml", text).studios().unknowns()).hasSize(2);
  }

  /** A mirror needs two drives or more, one drive no arrangement. */
  @Test
  void whatDoesNotFitIsLeftOutWithItsReason() throws ScenarioException {
    Candidates open =
        read(
            STUDIO
                .replace("[2 x d, 3 x d]", "[1 x d, 2 x d]")
                .replace("arrangement: mirror", "arrangement: {one_of: [single, mirror]}"));
    assertThat(open.all()).hasSize(17);
    assertThat(open.impossible()).hasSize(16);
    assertThat(open.impossible().get(0).why()).contains("mirror");
    assertThat(open.impossible()).allSatisfy(each -> assertThat(each.why()).isNotEmpty());
  }

  @Test
  void idsStayApartFromThoseOfTheFile() throws ScenarioException {
    Candidates open = read(STUDIO.replace("alone:", "box-3:"));
    assertThat(open.all()).extracting(Candidate::id).doesNotHaveDuplicates().contains("box-c-2");
  }

  @Test
  void aFileWithoutChoicesIsItsLayouts() throws ScenarioException {
    Candidates plain =
        read(
            """
            lastcopy: 1
            studio: A
            years: 1
            footage: {ingest: 1 TB/year}
            drives: {d: {size: 8 TB, fails: 1 %/year}}
            layouts: {one: {copies: {main: {drives: 1 x d}}}}
            """);
    assertThat(plain.areOnlyLayouts()).isTrue();
    assertThat(plain.all()).hasSize(1);
    assertThat(plain.all().get(0).choices()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          [2 x d, 3 x d]            | [2 x d]              | 11:26: found one entry for 'one_of'; accepted: two entries or more, such as one_of: [7 days, 1 day].
          [2 x d, 3 x d]            | []                   | 11:26: found an empty list for 'one_of'; accepted: two entries or more, such as one_of: [7 days, 1 day].
          [2 x d, 3 x d]            | 2 x d                | 11:26: found '2 x d' for 'one_of'; accepted: two entries or more, such as one_of: [7 days, 1 day].
          [2 x d, 3 x d]            | [2 x d, 2  x d]      | 11:34: found an entry of 'one_of' a second time; accepted: each alternative once.
          [2 x d, 3 x d]            | [2 x d, 3 x f]       | 11:34: found 'f', which is no drive model; accepted: d, e. Did you mean 'd'?
          [2 x d, 3 x d]            | [2 x d, 1 x d]       | mirror
          {one_of: [2 x d, 3 x d]}  | {oneof: [2 x d, 3 x d]} | 11:18: found 'oneof' with a list; accepted: one_of: [7 days, 1 day]. Did you mean 'one_of'?
          optional: true            | optional: yes        | 15:19: found 'yes' for 'optional'; accepted: true; a copy that is always there says nothing.
          costs: {per_year: 12}}    | costs: EUR 12}       | 13:74: found 'EUR 12' for costs; accepted: keys with values
          per_year: 12              | per_year: EUR 12     | an amount with a currency
          {use: 1 day, costs: {per_year: 12}} | {use: 1 day} | 13:54: found an alternative without 'costs'; accepted: costs: {per_year: 12}.
          {use: 1 day, costs: {per_year: 12}} | {one_of: [1 day, 2 days]} | found 'one_of' within an alternative
          fails: 2 %/year           | fails: {one_of: [2 %/year, 3 %/year]} | 5:83: found 'one_of' outside of a layout; accepted: it below a layout.
          arrangement: mirror       | optional: true       | the first copy
          """)
  void aMistakeIsToldWithItsPlace(String right, String wrong, String message) {
    assertThat(STUDIO).contains(right);
    assertThatThrownBy(() -> read(STUDIO.replace(right, wrong)))
        .isInstanceOfSatisfying(
            ScenarioException.class,
            e ->
                assertThat(e.problems().stream().map(Problem::toString))
                    .anySatisfy(text -> assertThat(text).contains(message)));
  }

  /** 2^20 times what there is already: told, not computed. */
  @Test
  void millionsOfCombinationsAreRefused() {
    StringBuilder many = new StringBuilder("arrangement: mirror");
    String text = STUDIO;
    for (int i = 0; i < 20; i++) {
      many.append("\n      c")
          .append(i)
          .append(": {optional: true, drives: 1 x d, feed: {from: main, continuous: true}}");
    }
    assertThat(text).contains("[7 days, 1 day, 6 h]");
    String all = many.substring("arrangement: mirror".length());
    assertThatThrownBy(() -> read(text.replace("\n  alone:", all + "\n  alone:")))
        .hasMessageContaining("16,777,217 layouts to choose among")
        .hasMessageContaining("at most 20,000")
        .hasMessageContaining("among 3");
  }
}
