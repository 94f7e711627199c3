package lastcopy.cli.story;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastcopy.cli.output.JsonPage;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.story.Moment;
import lastcopy.story.Story;

/** A told history as JSON, format {@code lastcopy-story/1}; no number is rounded. */
final class StoryJson {

  private final JsonPage json;
  private final StoryClock clock;

  private StoryJson(JsonPage json, StoryClock clock) {
    this.json = json;
    this.clock = clock;
  }

  /**
   * Writes a story and a line end; leaves the stream open.
   *
   * @throws IOException if the stream cannot be written
   */
  static void write(
      Told told, Studio studio, Layout layout, long seed, StoryClock clock, OutputStream out)
      throws IOException {
    JsonPage.write(out, json -> new StoryJson(json, clock).document(told, studio, layout, seed));
  }

  private void document(Told told, Studio studio, Layout layout, long seed) throws IOException {
    JsonGenerator out = json.generator();
    out.writeStartObject();
    out.writeStringField("format", "lastcopy-story/1");
    out.writeStringField("scenario", studio.name());
    json.number("years", studio.years());
    out.writeStringField("layout", layout.id());
    out.writeNumberField("seed", seed);
    out.writeFieldName("history");
    if (told.story().isPresent()) {
      out.writeNumber(told.story().get().number());
    } else {
      out.writeNull();
    }
    out.writeStringField("selector", told.selector());
    out.writeNumberField("searched", told.searched());
    out.writeBooleanField("finished", told.finished());
    strings("how", told.how());
    json.number("weight", told.story().map(Story::weight).orElse(Double.NaN));
    out.writeBooleanField("biased", told.biased());
    chance(told.chance());
    strings("copies", told.story().map(Story::copies).orElse(List.of()));
    out.writeArrayFieldStart("events");
    if (told.story().isPresent()) {
      events(told.story().get());
    }
    out.writeEndArray();
    outcome(told.story());
    out.writeEndObject();
  }

  private void chance(Optional<Estimate> chance) throws IOException {
    if (chance.isEmpty()) {
      json.generator().writeNullField("chance");
      return;
    }
    json.generator().writeObjectFieldStart("chance");
    json.number("probability", chance.get().value());
    json.number("low", chance.get().low());
    json.number("high", chance.get().high());
    json.generator().writeEndObject();
  }

  private void strings(String field, Iterable<String> values) throws IOException {
    json.generator().writeArrayFieldStart(field);
    for (String value : values) {
      json.generator().writeString(value);
    }
    json.generator().writeEndArray();
  }

  private void events(Story story) throws IOException {
    StorySentences sentences = new StorySentences(story, clock);
    for (int i = 0; i < story.moments().size(); i++) {
      event(story.moments().get(i), sentences.of(i), story.copies());
    }
  }

  private void event(Moment moment, String sentence, List<String> names) throws IOException {
    Happening it = moment.happening();
    JsonGenerator out = json.generator();
    out.writeStartObject();
    json.number("hours", it.hours());
    Optional<String> date = clock.iso(it.hours());
    if (date.isPresent()) {
      out.writeStringField("date", date.get());
    }
    out.writeStringField("kind", it.kind().name().toLowerCase(Locale.ROOT));
    out.writeStringField("copy", it.copy() < 0 ? null : names.get(it.copy()));
    json.number("drive", it.drive() < 0 ? Double.NaN : it.drive());
    json.number("bytes", it.bytes());
    json.number("until", it.until());
    out.writeStringField("subject", it.subject());
    out.writeStringField("sentence", sentence);
    json.number("shot", moment.scene().shotBytes());
    json.number("lost", moment.scene().lostBytes());
    out.writeArrayFieldStart("held");
    for (double held : moment.scene().heldBytes()) {
      json.value(held);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void outcome(Optional<Story> told) throws IOException {
    JsonGenerator out = json.generator();
    if (told.isEmpty()) {
      out.writeNullField("outcome");
      return;
    }
    Story story = told.get();
    StoryEnding ending = new StoryEnding(story, clock);
    out.writeObjectFieldStart("outcome");
    out.writeBooleanField("lost", !story.losses().isEmpty());
    out.writeNumberField("loss_events", story.losses().size());
    json.number("bytes_lost", story.lostBytes());
    json.number("shoots_lost", story.losses().stream().mapToDouble(Loss::shoots).sum());
    out.writeBooleanField("everything_lost", story.losses().stream().anyMatch(Loss::everything));
    strings("causes", story.losses().stream().map(loss -> loss.cause().id()).toList());
    out.writeStringField("sentence", ending.outcome());
    strings("why", ending.why());
    out.writeEndObject();
  }
}
