package lastcopy.cli.fit;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import lastcopy.cli.output.JsonPage;
import lastcopy.fit.ExponentialFit;
import lastcopy.fit.Fitted;
import lastcopy.fit.LogRank;
import lastcopy.fit.LognormalFit;
import lastcopy.fit.Piece;
import lastcopy.fit.PiecewiseFit;
import lastcopy.fit.PlotPoint;
import lastcopy.fit.Step;
import lastcopy.fit.WeibullFit;
import lastcopy.interval.Estimate;

/**
 * What records say for other programs: format lastcopy-fit/1. Nothing is rounded; null stands for
 * what the records do not bound, or do not give.
 */
final class FitJson {

  private final JsonPage page;
  private final JsonGenerator json;

  private FitJson(JsonPage page) {
    this.page = page;
    this.json = page.generator();
  }

  /**
   * Writes the result; leaves the stream open.
   *
   * @throws IOException if the stream fails
   */
  static void write(FitResult result, OutputStream out) throws IOException {
    JsonPage.write(out, page -> new FitJson(page).document(result));
  }

  private void document(FitResult result) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-fit/1");
    json.writeStringField("unit", result.unit().name());
    page.number("confidence", result.confidence());
    json.writeArrayFieldStart("groups");
    group(result.all());
    for (GroupFit group : result.groups()) {
      group(group);
    }
    json.writeEndArray();
    if (result.comparison().isPresent()) {
      comparison(result, result.comparison().get());
    }
    json.writeEndObject();
  }

  private void group(GroupFit group) throws IOException {
    Fitted fitted = group.fitted();
    json.writeStartObject();
    json.writeStringField("group", group.name());
    json.writeNumberField("records", fitted.lives().records());
    json.writeNumberField("failures", fitted.lives().failures());
    page.number("time_at_risk", fitted.lives().timeAtRisk());
    json.writeBooleanField("found_at_checks", fitted.lives().between());
    json.writeBooleanField("late_entries", fitted.lives().enteredLate());
    json.writeObjectFieldStart("rate");
    page.number("value", fitted.rate().value());
    page.number("low", fitted.rate().low());
    page.number("high", fitted.rate().high());
    json.writeEndObject();
    weibull(fitted.weibull());
    exponential(fitted.exponential());
    lognormal(fitted.lognormal());
    piecewise(fitted.piecewise());
    curve(fitted);
    typical(group.typical(), fitted.rate());
    line(group.line());
    json.writeEndObject();
  }

  private void weibull(Optional<WeibullFit> fitted) throws IOException {
    if (started("weibull", fitted)) {
      WeibullFit fit = fitted.orElseThrow();
      page.number("shape", fit.shape().value());
      page.number("scale", fit.scale().value());
      page.number("log_likelihood", fit.logLikelihood());
      page.number("aic", fit.aic());
      page.number("shape_low", fit.shape().low());
      page.number("shape_high", fit.shape().high());
      page.number("scale_low", fit.scale().low());
      page.number("scale_high", fit.scale().high());
      page.number("ln_shape_standard_error", fit.logShapeError());
      page.number("ln_scale_standard_error", fit.logScaleError());
      page.number("mean", fit.mean());
      json.writeEndObject();
    }
  }

  private void exponential(Optional<ExponentialFit> fitted) throws IOException {
    if (started("exponential", fitted)) {
      ExponentialFit fit = fitted.orElseThrow();
      page.number("mean", fit.mean().value());
      page.number("log_likelihood", fit.logLikelihood());
      page.number("aic", fit.aic());
      page.number("mean_low", fit.mean().low());
      page.number("mean_high", fit.mean().high());
      page.number("mean_standard_error", fit.meanError());
      json.writeEndObject();
    }
  }

  private void lognormal(Optional<LognormalFit> fitted) throws IOException {
    if (started("lognormal", fitted)) {
      LognormalFit fit = fitted.orElseThrow();
      page.number("median", fit.median().value());
      page.number("sigma", fit.sigma().value());
      page.number("log_likelihood", fit.logLikelihood());
      page.number("aic", fit.aic());
      page.number("median_low", fit.median().low());
      page.number("median_high", fit.median().high());
      page.number("sigma_low", fit.sigma().low());
      page.number("sigma_high", fit.sigma().high());
      page.number("ln_median_standard_error", fit.logMedianError());
      page.number("ln_sigma_standard_error", fit.logSigmaError());
      json.writeEndObject();
    }
  }

  private void piecewise(Optional<PiecewiseFit> fitted) throws IOException {
    if (started("piecewise", fitted)) {
      PiecewiseFit fit = fitted.orElseThrow();
      page.number("log_likelihood", fit.logLikelihood());
      page.number("aic", fit.aic());
      json.writeArrayFieldStart("pieces");
      for (Piece piece : fit.pieces()) {
        json.writeStartObject();
        page.number("from", piece.from());
        page.number("to", piece.to());
        page.number("time_at_risk", piece.timeAtRisk());
        page.number("failures", piece.failures());
        page.number("hazard", piece.hazard().value());
        page.number("hazard_low", piece.hazard().low());
        page.number("hazard_high", piece.hazard().high());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
  }

  private boolean started(String field, Optional<?> fitted) throws IOException {
    if (fitted.isEmpty()) {
      json.writeNullField(field);
      return false;
    }
    json.writeObjectFieldStart(field);
    return true;
  }

  private void curve(Fitted fitted) throws IOException {
    json.writeStringField(
        "survival_estimate", fitted.lives().between() ? "turnbull" : "kaplan-meier");
    json.writeArrayFieldStart("survival");
    for (Step step : fitted.steps()) {
      json.writeStartObject();
      if (fitted.lives().between()) {
        page.number("from", step.from());
      }
      page.number("age", step.age());
      page.number("at_risk", step.atRisk());
      page.number("failures", step.failures());
      page.number("survival", step.survival());
      page.number("standard_error", step.error());
      page.number("low", step.low());
      page.number("high", step.high());
      page.number("cumulative_hazard", step.cumulativeHazard());
      page.number("cumulative_hazard_standard_error", step.hazardError());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("probability_plot");
    for (PlotPoint point : fitted.plot()) {
      json.writeStartObject();
      page.number("age", point.age());
      page.number("failed", point.failed());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void typical(Optional<TypicalShare> given, Estimate rate) throws IOException {
    if (started("typical", given)) {
      TypicalShare share = given.orElseThrow();
      json.writeStringField("kind", share.kind().id());
      json.writeBooleanField("too_far_to_help", share.apart(rate));
      page.number("failures_low", share.low());
      page.number("failures_central", share.central());
      page.number("failures_cautious", share.cautious());
      page.number("prior_events", share.prior().events());
      page.number("prior_time", share.prior().time());
      page.number("posterior_rate", share.posterior().mean());
      page.number("posterior_rate_p5", share.posterior().percentile(0.05));
      page.number("posterior_rate_p95", share.posterior().percentile(0.95));
      json.writeEndObject();
    }
  }

  private void line(Optional<FailsLine> given) throws IOException {
    if (given.isEmpty()) {
      json.writeNullField("fails");
    } else {
      json.writeStringField("fails", given.get().law());
      json.writeStringField("fails_range", given.get().range());
      json.writeStringField("why", given.get().why());
    }
  }

  private void comparison(FitResult result, LogRank test) throws IOException {
    json.writeObjectFieldStart("comparison");
    json.writeStringField("test", "log-rank");
    page.number("chi_square", test.chiSquare());
    json.writeNumberField("degrees_of_freedom", test.degreesOfFreedom());
    page.number("p", test.p());
    json.writeArrayFieldStart("groups");
    for (int i = 0; i < result.groups().size(); i++) {
      json.writeStartObject();
      json.writeStringField("group", result.groups().get(i).name());
      page.number("observed", test.observed().get(i));
      page.number("expected", test.expected().get(i));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
