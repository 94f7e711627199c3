package lastcopy.cli.levers;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import lastcopy.cli.edit.Change;
import lastcopy.cli.levers.deed.Deed;
import lastcopy.cli.levers.deed.NotPossible;
import lastcopy.cli.output.JsonPage;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.assumed.Flip;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/** Levers in the format lastcopy-levers/1. */
final class LeversJson {
  private final LeverFindings findings;
  private final JsonPage page;
  private final JsonGenerator json;

  private LeversJson(LeverFindings findings, JsonPage page) {
    this.findings = findings;
    this.page = page;
    json = page.generator();
  }

  static void write(LeverFindings findings, OutputStream out) throws IOException {
    JsonPage.write(out, page -> new LeversJson(findings, page).write());
  }

  private void write() throws IOException {
    Effects effects = findings.effects();
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-levers/1");
    json.writeStringField("scenario", findings.study().studio().name());
    json.writeStringField("layout", findings.study().layout().id());
    page.number("years", findings.study().studio().years());
    json.writeNumberField("seed", findings.settings().seed());
    page.number("confidence", findings.settings().confidence());
    json.writeStringField("differences_hold", "together");
    json.writeBooleanField("finished", findings.isFinished());
    json.writeStringField("method", effects.method().name().toLowerCase(Locale.ROOT));
    json.writeNumberField("histories", effects.histories());
    json.writeBooleanField("medians_of_ranges", findings.isMedian());
    json.writeObjectFieldStart("base");
    result(effects.base());
    json.writeEndObject();
    json.writeArrayFieldStart("levers");
    for (MeasuredEffect effect : effects.ranked()) {
      lever(effect);
    }
    json.writeEndArray();
    ties(effects);
    leftOut();
    if (findings.assumptions().isPresent()) {
      assumptions(findings.assumptions().get());
    }
    json.writeEndObject();
  }

  private void lever(MeasuredEffect effect) throws IOException {
    Deed deed = findings.deed(effect);
    json.writeStartObject();
    json.writeStringField("id", effect.id());
    json.writeStringField("title", deed.title());
    json.writeBooleanField("yardstick", deed.isYardstick());
    json.writeBooleanField("priced", deed.isPriced());
    json.writeArrayFieldStart("changes");
    for (Change change : deed.changes()) {
      json.writeStartObject();
      json.writeStringField("key", change.key());
      json.writeStringField("from", change.from());
      json.writeStringField("to", change.to());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("assumes");
    for (String sentence : deed.assumes()) {
      json.writeString(sentence);
    }
    json.writeEndArray();
    result(effect.result());
    page.estimate("difference", "value", effect.difference());
    page.estimate("bytes_difference", "value", effect.bytesDifference());
    optional("money_difference", effect.moneyDifference());
    optional("cost_difference", effect.costDifference());
    Optional<Double> perMoney = findings.perMoney(effect, 1);
    if (perMoney.isPresent()) {
      page.number("risk_removed_per_money", perMoney.get());
    }
    json.writeStringField("effect", effect.direction().id());
    json.writeEndObject();
  }

  private void result(LayoutResult result) throws IOException {
    page.estimate("any_loss", "probability", result.anyLoss());
    page.estimate("bytes_lost", "mean", result.bytesLost());
    if (result.moneyLost().isPresent()) {
      page.estimate("money_lost", "mean", result.moneyLost().get());
    }
    if (result.cost().isPresent()) {
      cost(result.cost().get());
    }
    json.writeArrayFieldStart("doubts");
    for (String doubt : result.doubts()) {
      json.writeString(doubt);
    }
    json.writeEndArray();
  }

  private void cost(Cost cost) throws IOException {
    json.writeObjectFieldStart("cost");
    page.values("total", cost.total());
    Optional<String> currency = findings.study().studio().currency();
    if (currency.isPresent()) {
      json.writeStringField("currency", currency.get());
    }
    json.writeEndObject();
  }

  private void optional(String field, Optional<Estimate> estimate) throws IOException {
    if (estimate.isPresent()) {
      page.estimate(field, "value", estimate.get());
    }
  }

  private void ties(Effects effects) throws IOException {
    json.writeArrayFieldStart("not_told_apart");
    for (Effects.Tie tie : effects.ties()) {
      json.writeStartObject();
      json.writeStringField("better", tie.better());
      json.writeStringField("worse", tie.worse());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void assumptions(AssumptionStudy study) throws IOException {
    json.writeArrayFieldStart("assumptions");
    for (AssumptionWords.Swing swing : new AssumptionWords(study, new OutOf(1_000)).swings()) {
      json.writeStartObject();
      number(swing.assumption());
      page.estimate("difference_at_half", "value", swing.half().difference());
      page.estimate("difference_at_double", "value", swing.twice().difference());
      json.writeStringField("effect_at_half", swing.half().direction().id());
      json.writeStringField("effect_at_double", swing.twice().direction().id());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("flips");
    if (study.first().isPresent() && study.second().isPresent()) {
      json.writeStringField("a", study.first().get().id());
      json.writeStringField("b", study.second().get().id());
    }
    json.writeArrayFieldStart("numbers");
    for (Flip flip : study.flips()) {
      json.writeStartObject();
      number(flip.assumption());
      json.writeBooleanField("looked_for", flip.isLooked());
      optional("factor", flip.factor());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void number(Assumption of) throws IOException {
    json.writeStringField("id", of.id());
    json.writeStringField("title", of.title());
    page.number("value", of.value());
    json.writeStringField("unit", of.unit().name().toLowerCase(Locale.ROOT));
  }

  private void leftOut() throws IOException {
    json.writeArrayFieldStart("left_out");
    for (NotPossible each : findings.study().found().leftOut()) {
      json.writeStartObject();
      json.writeStringField("id", each.id());
      json.writeStringField("title", each.title());
      json.writeStringField("why", each.why());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
