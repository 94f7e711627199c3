package lastcopy.cli.advise;

import static lastcopy.cli.advise.MadeAdvice.BEST;
import static lastcopy.cli.advise.MadeAdvice.MIRROR;
import static lastcopy.cli.advise.MadeAdvice.USUAL;
import static lastcopy.cli.advise.MadeAdvice.WORST;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.decide.Advice;
import lastcopy.decide.Advice.About;
import org.junit.jupiter.api.Test;

/** Each field of the JSON has the figure that it is named for. */
class AdviceJsonTest {

  private final MadeAdvice made = new MadeAdvice();

  private JsonNode json() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    AdviceJson.write(made.findings(), out);
    return new ObjectMapper().readTree(out.toByteArray());
  }

  private static JsonNode tree(String json) throws IOException {
    return new ObjectMapper().readTree(json.replace('\'', '"'));
  }

  @Test
  void theHeadSaysWhatWasAskedAndAnswered() throws IOException {
    made.target = OptionalDouble.of(0.25);
    made.underTarget = Optional.of(USUAL);
    made.median = true;
    made.candidates.set(3, MadeAdvice.neverLookedAt(made.candidates.get(3)));
    made.front = List.of(WORST, USUAL, BEST);
    JsonNode page = json();
    assertThat(page.get("scenario").asText()).isEqualTo("Lone Drives");
    assertThat(page.get("seed").asLong()).isEqualTo(7);
    assertThat(page.get("target").asDouble()).isEqualTo(0.25);
    assertThat(page.get("budget").isNull()).isTrue();
    assertThat(page.get("finished").asBoolean()).isTrue();
    assertThat(page.get("medians_of_ranges").asBoolean()).isTrue();
    assertThat(page.get("counted"))
        .isEqualTo(tree("{'candidates': 4, 'impossible': 4, 'simulated_to_the_end': 3}"));
    assertThat(page.get("cheapest_under_target").asText()).isEqualTo(USUAL);
    assertThat(page.get("safest_under_budget").isNull()).isTrue();
    assertThat(page.get("front")).isEqualTo(tree("['one', 'one-3', 'one-5']"));
    made.finished = false;
    made.median = false;
    made.withinBudget = Optional.of(BEST);
    assertThat(json().get("finished").asBoolean()).isFalse();
    assertThat(json().get("medians_of_ranges").asBoolean()).isFalse();
    assertThat(json().get("safest_under_budget").asText()).isEqualTo(BEST);
  }

  @Test
  void aCandidateHasItsFigures() throws IOException {
    made.candidates.set(1, MadeAdvice.leftEarly(made.candidates.get(1)));
    made.candidates.set(
        3,
        new Advice.Candidate(
            MIRROR, seen(0.25, 0.125), Optional.empty(), 2_048, true, false, false));
    JsonNode usual = json().at("/candidates/1");
    assertThat(usual.get("id").asText()).isEqualTo(USUAL);
    assertThat(usual.get("layout").asText()).isEqualTo("one");
    assertThat(usual.get("title").asText()).isEqualTo("A drive: main 1 x usual");
    assertThat(usual.at("/any_loss/probability").asDouble()).isEqualTo(0.185);
    assertThat(usual.at("/cost/total").asDouble()).isEqualTo(200);
    assertThat(usual.get("histories").asLong()).isEqualTo(4_096);
    assertThat(usual.get("method").asText()).isEqualTo("plain");
    assertThat(usual.get("left_early").asBoolean()).isTrue();
    assertThat(usual.get("on_front").asBoolean()).isFalse();
    JsonNode mirror = json().at("/candidates/3");
    assertThat(mirror.get("choices"))
        .isEqualTo(tree("{'copies.main.drives': '2 x best', 'copies.main.arrangement': 'mirror'}"));
    assertThat(mirror.has("cost")).isFalse();
    assertThat(mirror.get("method").asText()).isEqualTo("rare");
    assertThat(mirror.get("left_early").asBoolean()).isFalse();
    assertThat(json().at("/candidates/0/on_front").asBoolean()).isTrue();
  }

  @Test
  void stepsAndWhatIsOpenHaveTheirEnds() throws IOException {
    made.step(seen(160, 2), seen(-0.25, 0.125)).open(About.BUDGET, MIRROR, BEST);
    made.steps.add(new Advice.NextStep(USUAL, BEST, Optional.empty(), seen(-0.5, 0.125)));
    JsonNode page = json();
    assertThat(page.get("steps")).isEqualTo(page.get("from_today")).hasSize(2);
    JsonNode step = page.at("/steps/0");
    assertThat(step.get("from").asText() + step.get("to").asText()).isEqualTo(WORST + USUAL);
    assertThat(step.at("/cost_difference/value").asDouble()).isEqualTo(160);
    assertThat(step.at("/difference/value").asDouble()).isEqualTo(-0.25);
    assertThat(step.at("/difference/high").asDouble()).isEqualTo(-0.125);
    assertThat(page.at("/steps/1").has("cost_difference")).isFalse();
    assertThat(page.get("open"))
        .isEqualTo(tree("[{'about': 'budget', 'candidate': 'one-8', 'against': 'one-5'}]"));
  }

  @Test
  void whatIsNoLayoutAndWhatIsNotCountedIsListed() throws IOException {
    JsonNode page = json();
    assertThat(page.get("impossible")).hasSize(4);
    assertThat(page.at("/impossible/0/layout").asText()).isEqualTo("one");
    assertThat(page.at("/impossible/0/choices"))
        .isEqualTo(
            tree("{'copies.main.drives': '1 x worst', 'copies.main.arrangement': 'mirror'}"));
    assertThat(page.at("/impossible/0/why").asText()).endsWith("at least 2 drives for mirror");
    assertThat(page.get("not_counted").toString()).contains("malware");
    assertThat(page.get("not_priced").toString()).contains("time");
  }
}
