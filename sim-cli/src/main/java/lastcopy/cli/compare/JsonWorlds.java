package lastcopy.cli.compare;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.output.JsonPage;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;

/** What is not known, as fields of a comparison in JSON; none where all is known. */
final class JsonWorlds {

  private final JsonPage page;
  private final JsonGenerator json;
  private final Optional<Worlds> worlds;

  JsonWorlds(JsonPage page, Optional<Worlds> worlds) {
    this.page = page;
    this.json = page.generator();
    this.worlds = worlds;
  }

  /** The field {@code worlds} of a layout. */
  void layout(String id) throws IOException {
    Optional<Worlds.OfLayout> of = worlds.flatMap(all -> all.layout(id));
    if (of.isEmpty()) {
      return;
    }
    json.writeObjectFieldStart("worlds");
    json.writeNumberField("count", of.get().count());
    spread("any_loss", of.get().anyLoss());
    spread("bytes_lost", of.get().bytesLost());
    if (of.get().cost().isPresent()) {
      spread("cost", of.get().cost().get());
    }
    json.writeArrayFieldStart("curve");
    for (Worlds.CurvePoint point : of.get().curve()) {
      json.writeStartObject();
      page.number("years", point.years());
      page.number("p5", point.p5());
      page.number("p50", point.p50());
      page.number("p95", point.p95());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void spread(String field, Worlds.Spread spread) throws IOException {
    json.writeObjectFieldStart(field);
    page.number("mean", spread.mean().value());
    page.number("low", spread.mean().low());
    page.number("high", spread.mean().high());
    Optional<Worlds.Percentiles> all = spread.percentiles();
    percentile("p5", all.map(Worlds.Percentiles::p5));
    percentile("p50", all.map(Worlds.Percentiles::p50));
    percentile("p95", all.map(Worlds.Percentiles::p95));
    json.writeEndObject();
  }

  /** With how far the simulation knows it; null where nothing can be said. */
  private void percentile(String field, Optional<Estimate> percentile) throws IOException {
    page.number(field, percentile.map(Estimate::value).orElse(Double.NaN));
    page.number(field + "_low", percentile.map(Estimate::low).orElse(Double.NaN));
    page.number(field + "_high", percentile.map(Estimate::high).orElse(Double.NaN));
  }

  /** The field {@code worlds} of a pair. */
  void pair(String a, String b) throws IOException {
    List<Worlds.OfPair> found =
        worlds.map(Worlds::pairs).orElse(List.of()).stream()
            .filter(pair -> pair.a().equals(a) && pair.b().equals(b))
            .toList();
    for (Worlds.OfPair pair : found) {
      json.writeObjectFieldStart("worlds");
      json.writeObjectFieldStart("a_loses_less");
      share(pair.aLosesLess());
      json.writeEndObject();
      percentile("ratio_p5", Optional.of(pair.ratio().p5()));
      percentile("ratio_p50", Optional.of(pair.ratio().p50()));
      percentile("ratio_p95", Optional.of(pair.ratio().p95()));
      json.writeEndObject();
    }
  }

  private void share(Estimate share) throws IOException {
    page.number("share", share.value());
    page.number("low", share.low());
    page.number("high", share.high());
  }

  /** The field {@code unknowns} of the comparison. */
  void unknowns() throws IOException {
    if (worlds.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("unknowns");
    for (Worlds.OfUnknown unknown : worlds.get().unknowns()) {
      json.writeStartObject();
      json.writeStringField("key", unknown.key());
      page.number("from", unknown.from());
      page.number("to", unknown.to());
      json.writeStringField("unit", unknown.unit());
      json.writeArrayFieldStart("shares");
      for (Worlds.Share share : unknown.shares()) {
        json.writeStartObject();
        json.writeStringField("layout", share.layout());
        share(share.share());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
