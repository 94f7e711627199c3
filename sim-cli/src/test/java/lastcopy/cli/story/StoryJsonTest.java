package lastcopy.cli.story;

import static lastcopy.cli.story.MadeStory.loss;
import static lastcopy.cli.story.MadeStory.moment;
import static lastcopy.cli.story.MadeStory.story;
import static lastcopy.cli.story.MadeStory.studio;
import static lastcopy.cli.story.MadeStory.with;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;

/** A told story as another program reads it, field by field, of facts made by hand. */
class StoryJsonTest {

  private static final Studio STUDIO = studio(Shoots.Spacing.EVEN).layout(with("far")).build();

  private static JsonNode json(Told told, Optional<LocalDate> start) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StoryClock clock = new StoryClock(start, STUDIO.horizonHours());
    StoryJson.write(told, STUDIO, STUDIO.layouts().get(0), 7, clock, out);
    return new ObjectMapper().readTree(out.toByteArray());
  }

  private static JsonNode read(String json) throws IOException {
    return new ObjectMapper().readTree(json.replace('\'', '"'));
  }

  @Test
  void aLossWithItsEventsAndItsReason() throws IOException {
    Story story =
        story(
            STUDIO,
            List.of(
                moment(new Happening(Kind.DRIVE_FAILED, 25.5, 1, 0, 5e9, 30, "why"), 100, 40.25),
                moment(
                    new Happening(Kind.LOST, 48, -1, -1, 5, Double.NaN, "a drive failed"), -1, 0)),
            List.of(loss(48, 5, 0.5, true, "drive"), loss(48, 2, 1, false, "box")));
    Told told =
        new Told(
            Optional.of(story),
            "first-loss",
            12,
            List.of("A", "B"),
            true,
            Optional.of(new Estimate(0.25, 0.125, 0.5, true)));
    JsonNode json = json(told, Optional.of(LocalDate.of(2026, 1, 1)));
    assertThat(json)
        .isEqualTo(
            read(
                """
                {'format': 'lastcopy-story/1', 'scenario': 's', 'years': 1, 'layout': 'l',
                 'seed': 7, 'history': 0, 'selector': 'first-loss', 'searched': 12,
                 'finished': true, 'how': ['A', 'B'], 'weight': 1, 'biased': true,
                 'chance': {'probability': 0.25, 'low': 0.125, 'high': 0.5},
                 'copies': ['main', 'far'],
                 'events': [
                   {'hours': 25.5, 'date': '2026-01-02T01:30:00', 'kind': 'drive_failed',
                    'copy': 'far', 'drive': 0, 'bytes': 5000000000, 'until': 30, 'subject': 'why',
                    'sentence': 'The drive of far fails with the 5 GB on it. It should be replaced and whole again in 4.5 hours.',
                    'shot': 100, 'lost': 0, 'held': [100, 40.25]},
                   {'hours': 48, 'date': '2026-01-03T00:00:00', 'kind': 'lost',
                    'copy': null, 'drive': null, 'bytes': 5, 'until': null,
                    'subject': 'a drive failed',
                    'sentence': 'LOST FOR GOOD: 5 B. Why: a drive failed.',
                    'shot': 100, 'lost': 0, 'held': [0, 0]}],
                 'outcome': {'lost': true, 'loss_events': 2, 'bytes_lost': 7, 'shoots_lost': 1.5,
                   'everything_lost': true, 'causes': ['drive', 'box'],
                   'sentence': 'Lost: 7 B (1.5 shoots), in 2 losses; at one of them no drive and no service held anything any more.',
                   'why': ['Why (the largest loss, 3 Jan 2026): a drive failed.']}}
                """));
  }

  @Test
  void aStoryWithoutADateOrALoss() throws IOException {
    Story story = story(STUDIO, List.of(moment(Kind.COPY_BACK, 5, 0, 0, 0, 0)), List.of());
    Told told = new Told(Optional.of(story), "typical", 3, List.of(), true);
    JsonNode json = json(told, Optional.empty());
    assertThat(json.get("biased").asBoolean()).isFalse();
    assertThat(json.get("chance").isNull()).isTrue();
    assertThat(json.at("/events/0").has("date")).isFalse();
    assertThat(json.at("/events/0/copy").asText()).as("the first").isEqualTo("main");
    assertThat(json.get("outcome"))
        .isEqualTo(
            read(
                """
                {'lost': false, 'loss_events': 0, 'bytes_lost': 0, 'shoots_lost': 0,
                 'everything_lost': false, 'causes': [], 'sentence': 'Nothing was lost.',
                 'why': ['At no time did half of it or more stand in one copy only after something had failed.']}
                """));
  }

  @Test
  void aSearchWithoutAStory() throws IOException {
    Told told = new Told(Optional.empty(), "first-loss", 9, List.of("None."), false);
    assertThat(json(told, Optional.empty()))
        .isEqualTo(
            read(
                """
                {'format': 'lastcopy-story/1', 'scenario': 's', 'years': 1, 'layout': 'l',
                 'seed': 7, 'history': null, 'selector': 'first-loss', 'searched': 9,
                 'finished': false, 'how': ['None.'], 'weight': null, 'biased': false,
                 'chance': null, 'copies': [], 'events': [], 'outcome': null}
                """));
  }
}
