package lastcopy.cli.advise;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.edit.Candidate;
import lastcopy.cli.edit.Impossible;
import lastcopy.cli.output.JsonPage;
import lastcopy.decide.Advice;
import lastcopy.outlook.Omissions;
import lastcopy.outlook.Unpriced;

/** An advice in the format lastcopy-advice/1. */
final class AdviceJson {

  private final AdviceFindings findings;
  private final JsonPage page;
  private final JsonGenerator json;

  private AdviceJson(AdviceFindings findings, JsonPage page) {
    this.findings = findings;
    this.page = page;
    json = page.generator();
  }

  static void write(AdviceFindings findings, OutputStream out) throws IOException {
    JsonPage.write(out, page -> new AdviceJson(findings, page).write());
  }

  private void write() throws IOException {
    Advice advice = findings.advice();
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-advice/1");
    json.writeStringField("scenario", findings.question().studio().name());
    page.number("years", findings.question().studio().years());
    json.writeNumberField("seed", findings.settings().seed());
    optional("target", findings.question().target());
    optional("budget", findings.question().budget());
    page.number("chance_of_a_wrong_pick", advice.wrongPick());
    json.writeBooleanField("finished", advice.finished());
    json.writeBooleanField("medians_of_ranges", findings.isMedian());
    json.writeObjectFieldStart("counted");
    json.writeNumberField("candidates", advice.candidates().size());
    json.writeNumberField("impossible", findings.candidates().impossible().size());
    json.writeNumberField("simulated_to_the_end", findings.toTheEnd());
    json.writeEndObject();
    id("cheapest_under_target", advice.cheapestUnderTarget());
    id("safest_under_budget", advice.safestWithinBudget());
    json.writeArrayFieldStart("candidates");
    for (Advice.Candidate each : advice.candidates()) {
      candidate(each);
    }
    json.writeEndArray();
    ids("front", advice.front());
    steps("steps", advice.steps());
    steps("from_today", advice.fromToday());
    open(advice.openQuestions());
    json.writeArrayFieldStart("impossible");
    for (Impossible each : findings.candidates().impossible()) {
      json.writeStartObject();
      json.writeStringField("layout", each.from());
      choices(each.choices());
      json.writeStringField("why", each.why());
      json.writeEndObject();
    }
    json.writeEndArray();
    page.omissions(Omissions.of(findings.candidates().studio()));
    page.unpriced(Unpriced.of(findings.candidates().studio()));
    json.writeEndObject();
  }

  private void optional(String field, OptionalDouble value) throws IOException {
    page.number(field, value.orElse(Double.NaN));
  }

  private void id(String field, Optional<String> id) throws IOException {
    json.writeFieldName(field);
    if (id.isPresent()) {
      json.writeString(id.get());
    } else {
      json.writeNull();
    }
  }

  private void ids(String field, List<String> ids) throws IOException {
    json.writeArrayFieldStart(field);
    for (String id : ids) {
      json.writeString(id);
    }
    json.writeEndArray();
  }

  private void candidate(Advice.Candidate figures) throws IOException {
    Candidate of = findings.candidate(figures.id());
    json.writeStartObject();
    json.writeStringField("id", figures.id());
    json.writeStringField("layout", of.from());
    json.writeStringField("title", of.layout().title());
    choices(of.choices());
    page.estimate("any_loss", "probability", figures.anyLoss());
    if (figures.cost().isPresent()) {
      page.estimate("cost", "total", figures.cost().get());
    }
    json.writeNumberField("histories", figures.histories());
    json.writeStringField("method", figures.biased() ? "rare" : "plain");
    json.writeBooleanField("left_early", figures.beaten());
    json.writeBooleanField("on_front", figures.onFront());
    json.writeEndObject();
  }

  private void choices(List<Candidate.Chosen> choices) throws IOException {
    json.writeObjectFieldStart("choices");
    for (Candidate.Chosen each : choices) {
      json.writeStringField(each.key(), each.value());
    }
    json.writeEndObject();
  }

  private void steps(String field, List<Advice.NextStep> steps) throws IOException {
    json.writeArrayFieldStart(field);
    for (Advice.NextStep step : steps) {
      json.writeStartObject();
      json.writeStringField("from", step.from());
      json.writeStringField("to", step.to());
      if (step.costDifference().isPresent()) {
        page.estimate("cost_difference", "value", step.costDifference().get());
      }
      page.estimate("difference", "value", step.difference());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void open(List<Advice.OpenQuestion> open) throws IOException {
    json.writeArrayFieldStart("open");
    for (Advice.OpenQuestion each : open) {
      json.writeStartObject();
      json.writeStringField("about", each.about().name().toLowerCase(Locale.ROOT));
      json.writeStringField("candidate", each.candidate());
      json.writeStringField("against", each.against());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
