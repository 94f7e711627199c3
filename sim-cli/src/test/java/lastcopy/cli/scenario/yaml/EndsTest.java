package lastcopy.cli.scenario.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.scenario.Texts;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** What is just short enough, shallow enough or near enough, and what is just beyond. */
class EndsTest {

  private static final String SIXTY = "x".repeat(60);
  private static final Node LEAF = new ScalarNode(Tag.STR, "x", ScalarStyle.PLAIN);

  @Test
  void aQuoteOfSixtyLettersIsWhole() {
    assertThat(Nodes.quote(SIXTY)).isEqualTo("'" + SIXTY + "'");
    assertThat(Nodes.quote(SIXTY + "y")).isEqualTo("'" + SIXTY + "...'");
    assertThat(Nodes.quote("a \n b")).isEqualTo("'a b'");
  }

  @Test
  void aWordOfSixtyLettersIsLookedFor() {
    assertThat(Spelling.nearest(SIXTY, List.of(SIXTY + "y"))).isEqualTo(SIXTY + "y");
    assertThat(Spelling.nearest(SIXTY + "y", List.of(SIXTY + "z"))).isEmpty();
  }

  /** Six words are all named; of seven, five, and it is said that there are two more. */
  @Test
  void aFewWordsAreAllNamed() {
    List<String> six = List.of("a", "b", "c", "d", "e", "f");
    assertThat(Spelling.few("", six)).isEqualTo("a, b, c, d, e, f");
    assertThat(Spelling.few("g", List.of("a", "b", "c", "d", "e", "f", "g")))
        .isEqualTo("g, a, b, c, d or one of 2 more (lastcopy inspect --schema lists them)");
  }

  private static boolean holds(Node node) {
    Notes notes = new Notes("a.yaml");
    boolean holds = new TreeCheck(notes).holds(node);
    assertThat(notes.hasProblems()).isEqualTo(!holds);
    return holds;
  }

  private static Node list(List<Node> of) {
    return new SequenceNode(Tag.SEQ, of, FlowStyle.FLOW);
  }

  private static Node nested(int levels) {
    Node node = LEAF;
    for (int i = 0; i < levels; i++) {
      node = list(List.of(node));
    }
    return node;
  }

  @Test
  void sixtyLevelsWithAliasesWrittenOutAreRead() {
    assertThat(holds(nested(60))).isTrue();
    assertThat(holds(nested(61))).isFalse();
  }

  /** The list itself counts as one of 100,000. */
  @Test
  void aHundredThousandValuesAreRead() {
    assertThat(holds(list(Collections.nCopies(99_999, LEAF)))).isTrue();
    assertThat(holds(list(Collections.nCopies(100_000, LEAF)))).isFalse();
  }

  /** A list whose values are no ranges is passed on the way to one. */
  @Test
  void aRangeStandsBehindAList() {
    String text =
        Texts.VALID.replace(
            "  desk: {size: 8 TB, fails: 2 %/year}",
            "  old: {size: 8 TB, fails: {by_age: [2 %/year, 4 %/year]}}\n"
                + "  desk: {size: 8 TB, fails: {by_age: [2 %/year, 1..4 %/year]}}");
    assertThat(Texts.scenario(text).studios().unknowns())
        .singleElement()
        .satisfies(one -> assertThat(one.key()).isEqualTo("drives.desk.fails.by_age.2"));
  }

  /** What a record refuses is told where it stands, unless a mistake told already explains it. */
  @Test
  void whatDoesNotFitTogetherIsToldOnce() {
    Notes notes = new Notes("a.yaml");
    assertThat(notes.build(LEAF, () -> 1)).hasValue(1);
    assertThat(notes.build(LEAF, EndsTest::refused)).isEqualTo(Optional.empty());
    assertThat(notes.build(LEAF, EndsTest::refused)).isEqualTo(Optional.empty());
    assertThat(notes.problems())
        .extracting(Problem::toString)
        .containsExactly(
            "a.yaml:1:1: found values that do not fit together; accepted: at least two.");
    assertThat(notes.count()).isEqualTo(1);
  }

  private static Integer refused() {
    throw new IllegalArgumentException("at least two");
  }
}
