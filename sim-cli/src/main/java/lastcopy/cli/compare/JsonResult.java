package lastcopy.cli.compare;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.output.JsonPage;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.interval.Estimate;

/** A comparison as JSON, format {@code lastcopy-result/1}; no number is rounded. */
public final class JsonResult {

  private final JsonPage page;
  private final JsonGenerator json;
  private final Remarks remarks;
  private final JsonWorlds worlds;

  private JsonResult(JsonPage page, Comparison result, Remarks remarks) {
    this.page = page;
    this.remarks = remarks;
    worlds = new JsonWorlds(page, result.worlds());
    this.json = page.generator();
  }

  /**
   * Writes a comparison and a line end; leaves the stream open.
   *
   * @param remarks what is not counted and what is assumed
   * @throws IOException if the stream cannot be written
   */
  public static void write(Comparison result, Remarks remarks, OutputStream out)
      throws IOException {
    JsonPage.write(out, page -> new JsonResult(page, result, remarks).comparison(result));
  }

  private void comparison(Comparison result) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-result/1");
    json.writeStringField("scenario", result.studio());
    number("years", result.years());
    json.writeNumberField("seed", result.seed());
    number("confidence", result.confidence());
    json.writeBooleanField("finished", result.finished());
    page.omissions(remarks.omissions());
    page.unpriced(remarks.unpriced());
    worlds.unknowns();
    json.writeArrayFieldStart("layouts");
    for (LayoutResult layout : result.layouts()) {
      layout(layout, result.currency());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("comparisons");
    for (Comparison.Pair pair : result.pairs()) {
      pair(pair);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void layout(LayoutResult layout, Optional<String> currency) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", layout.id());
    json.writeStringField("title", layout.title());
    json.writeNumberField("histories", layout.histories());
    json.writeStringField("method", layout.method().name().toLowerCase(Locale.ROOT));
    json.writeBooleanField("precision_reached", layout.precisionReached());
    number("effective_histories", layout.effectiveHistories());
    number("largest_weight_share", layout.largestWeightShare());
    json.writeBooleanField("trusted", layout.trusted());
    sentences("doubts", layout.doubts());
    sentences("notes", layout.notes());
    sentences("assumed", remarks.assumed(layout.id()));
    chancesAndMeans(layout);
    points("curve", "years", layout.curve());
    points("exceedance", "bytes", layout.exceedanceBytes());
    points("exceedance_shoots", "shoots", layout.exceedanceShoots());
    if (!layout.exceedanceMoney().isEmpty()) {
      points("exceedance_money", "money", layout.exceedanceMoney());
    }
    causes(layout.causes());
    exposure(layout.exposure());
    recoveries(layout.recoveries());
    if (layout.cost().isPresent()) {
      cost(layout.cost().get(), currency);
    }
    worlds.layout(layout.id());
    json.writeEndObject();
  }

  private void sentences(String field, List<String> sentences) throws IOException {
    json.writeArrayFieldStart(field);
    for (String sentence : sentences) {
      json.writeString(sentence);
    }
    json.writeEndArray();
  }

  private void chancesAndMeans(LayoutResult layout) throws IOException {
    page.estimate("any_loss", "probability", layout.anyLoss());
    page.estimate("everything_lost", "probability", layout.everythingLost());
    page.estimate("loss_events", "mean", layout.lossEvents());
    page.estimate("bytes_lost", "mean", layout.bytesLost());
    page.estimate("shoots_lost", "mean", layout.shootsLost());
    page.estimate("shoots_hit", "mean", layout.shootsHit());
    if (layout.moneyLost().isPresent()) {
      page.estimate("money_lost", "mean", layout.moneyLost().get());
    }
  }

  private void points(String field, String at, List<Point> points) throws IOException {
    json.writeArrayFieldStart(field);
    for (Point point : points) {
      json.writeStartObject();
      number(at, point.at());
      page.values("probability", point.chance());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void causes(List<CauseShare> causes) throws IOException {
    json.writeArrayFieldStart("causes");
    for (CauseShare cause : causes) {
      json.writeStartObject();
      json.writeStringField("id", cause.id());
      json.writeStringField("cause", cause.sentence());
      page.values("share", cause.share());
      number("share_of_bytes", cause.shareOfBytes());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void exposure(Exposure exposure) throws IOException {
    json.writeObjectFieldStart("exposure");
    withEnds("single_copy_days_per_year", exposure.singleCopyDays());
    withEnds("no_redundancy_days_per_year", exposure.noRedundancyDays());
    number("largest_single_copy_bytes", exposure.largestSingleCopyBytes().value());
    number("no_working_copy_days_per_year", exposure.noWorkingCopyDays().value());
    number("refilling_days_per_year", exposure.refillingDays().value());
    json.writeEndObject();
  }

  private void recoveries(List<Recovery> recoveries) throws IOException {
    json.writeArrayFieldStart("recovery");
    for (Recovery recovery : recoveries) {
      json.writeStartObject();
      json.writeStringField("cause", recovery.id());
      json.writeStringField("sentence", recovery.sentence());
      json.writeNumberField("seen", recovery.seen());
      page.estimate("work_hours", "mean", recovery.workHours());
      if (recovery.wholeHours().isPresent()) {
        page.estimate("whole_hours", "mean", recovery.wholeHours().get());
      } else {
        json.writeNullField("whole_hours");
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void cost(Cost cost, Optional<String> currency) throws IOException {
    json.writeObjectFieldStart("cost");
    page.values("total", cost.total());
    if (currency.isPresent()) {
      json.writeStringField("currency", currency.get());
    }
    number("p5", cost.p5());
    number("p50", cost.p50());
    number("p95", cost.p95());
    json.writeObjectFieldStart("by_kind");
    for (Cost.Part part : cost.byKind()) {
      number(part.kind(), part.mean());
    }
    json.writeEndObject();
    json.writeArrayFieldStart("by_year");
    for (double year : cost.byYear()) {
      page.value(year);
    }
    json.writeEndArray();
    json.writeNumberField("histories", cost.histories());
    json.writeEndObject();
  }

  private void withEnds(String field, Estimate estimate) throws IOException {
    number(field, estimate.value());
    number(field + "_low", estimate.low());
    number(field + "_high", estimate.high());
  }

  private void pair(Comparison.Pair pair) throws IOException {
    json.writeStartObject();
    json.writeStringField("a", pair.a());
    json.writeStringField("b", pair.b());
    number("ratio", pair.ratio());
    number("low", pair.ratioLow());
    number("high", pair.ratioHigh());
    number("difference", pair.difference().value());
    number("difference_low", pair.difference().low());
    number("difference_high", pair.difference().high());
    json.writeNumberField("paired_histories", pair.pairedHistories());
    if (pair.costDifference().isPresent()) {
      withEnds("cost_difference", pair.costDifference().get());
    }
    worlds.pair(pair.a(), pair.b());
    json.writeEndObject();
  }

  private void number(String field, OptionalDouble value) throws IOException {
    number(field, value.orElse(Double.NaN));
  }

  private void number(String field, double value) throws IOException {
    page.number(field, value);
  }
}
