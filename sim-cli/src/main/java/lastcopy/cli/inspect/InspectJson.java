package lastcopy.cli.inspect;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.cli.output.JsonPage;
import lastcopy.cli.output.UnknownWords;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.FeedOutlook;
import lastcopy.outlook.FirstPayments;
import lastcopy.outlook.LinkTime;
import lastcopy.outlook.Omissions;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Room;
import lastcopy.outlook.Route;
import lastcopy.outlook.Unpriced;
import lastcopy.outlook.Warning;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Priced;
import lastcopy.scenario.Studio;

/** What a scenario means, for other programs: format lastcopy-inspect/1. Nothing is rounded. */
public final class InspectJson {

  private final JsonPage page;
  private final JsonGenerator json;
  private final RoomJson room;

  private InspectJson(JsonPage page, RoomAndTime room) {
    this.page = page;
    this.room = new RoomJson(page, room);
    this.json = page.generator();
  }

  /**
   * Writes the outlooks of a studio, with the usual fill limit; leaves the stream open.
   *
   * @throws IOException if the stream fails
   */
  public static void write(
      Studio studio, List<Outlook> outlooks, List<String> defaults, OutputStream out)
      throws IOException {
    write(studio, outlooks, RoomAndTime.usual(studio, outlooks), defaults, out);
  }

  /**
   * Writes the outlooks of a studio; leaves the stream open.
   *
   * @throws IOException if the stream fails
   */
  public static void write(
      Studio studio,
      List<Outlook> outlooks,
      RoomAndTime room,
      List<String> defaults,
      OutputStream out)
      throws IOException {
    write(PossibleStudios.only(studio), outlooks, room, defaults, out);
  }

  static void write(
      PossibleStudios studios,
      List<Outlook> outlooks,
      RoomAndTime room,
      List<String> defaults,
      OutputStream out)
      throws IOException {
    JsonPage.write(out, page -> new InspectJson(page, room).document(studios, outlooks, defaults));
  }

  private void document(PossibleStudios studios, List<Outlook> outlooks, List<String> defaults)
      throws IOException {
    Studio studio = studios.central();
    json.writeStartObject();
    json.writeStringField("format", "lastcopy-inspect/1");
    json.writeStringField("scenario", studio.name());
    number("years", studio.years());
    page.omissions(Omissions.of(studio));
    page.unpriced(Unpriced.of(studio));
    UnknownWords.list(page, studios.unknowns());
    room.studio();
    json.writeArrayFieldStart("layouts");
    for (Outlook outlook : outlooks) {
      layout(studio, outlook);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("defaults");
    for (String line : defaults) {
      json.writeString(line);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void layout(Studio studio, Outlook outlook) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", outlook.layout().id());
    json.writeStringField("title", outlook.layout().title());
    json.writeArrayFieldStart("footage_by_year");
    for (Room.Year year : outlook.room()) {
      json.writeStartObject();
      number("years", year.years());
      number("bytes", year.footageBytes());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("copies");
    for (CopyOutlook copy : outlook.copies()) {
      copy(outlook, copy);
    }
    json.writeEndArray();
    room.layout(outlook.layout().id());
    if (Priced.in(studio)) {
      firstPayments(FirstPayments.of(outlook.layout(), studio.footage().onHandBytes()));
    }
    warnings(outlook.warnings());
    json.writeEndObject();
  }

  private void firstPayments(FirstPayments paid) throws IOException {
    json.writeObjectFieldStart("paid_at_the_start");
    number("total", paid.total());
    number("drives", paid.drives());
    number("boxes", paid.boxes());
    number("other", paid.other());
    json.writeEndObject();
  }

  private void copy(Outlook of, CopyOutlook outlook) throws IOException {
    String layout = of.layout().id();
    json.writeStartObject();
    json.writeStringField("id", outlook.copy().id());
    number("usable_bytes", outlook.usableBytes());
    number("fills_at_years", outlook.fillsAtYears());
    number("rebuild_hours", outlook.rebuildHours());
    number("refill_hours", outlook.refillHours());
    number("refill_by_hand_hours", outlook.byHandHours());
    feed(outlook.feed().orElse(null));
    json.writeArrayFieldStart("ways");
    for (int i = 0; i < outlook.ways().size(); i++) {
      json.writeStartObject();
      way(outlook.ways().get(i));
      room.way(layout, outlook.copy().id(), i);
      json.writeEndObject();
    }
    json.writeEndArray();
    room.comebacks(outlook.comebacks());
    room.copy(layout, outlook.copy().id());
    json.writeEndObject();
  }

  private void feed(FeedOutlook feed) throws IOException {
    if (feed == null) {
      json.writeNullField("first_fill_hours");
      json.writeNullField("lag_hours");
      json.writeNullField("never_catches_up");
      json.writeNullField("rate_needed");
      json.writeNullField("link_time");
      return;
    }
    number("first_fill_hours", feed.firstFillHours());
    json.writeObjectFieldStart("lag_hours");
    number("worst", feed.worstLagHours());
    number("mean", feed.meanLagHours());
    json.writeEndObject();
    json.writeBooleanField("never_catches_up", feed.neverCatchesUp());
    number("rate_needed", feed.rateNeeded());
    if (feed.link().isPresent()) {
      link(feed.link().get());
    } else {
      json.writeNullField("link_time");
    }
  }

  private void link(LinkTime link) throws IOException {
    json.writeObjectFieldStart("link_time");
    number("hours_a_day", link.hoursADay());
    json.writeNumberField("feeds", link.feeds());
    need("now", link.now());
    need("in_last_year", link.inLastYear());
    json.writeEndObject();
  }

  private void need(String when, LinkTime.Need need) throws IOException {
    json.writeObjectFieldStart(when);
    json.writeBooleanField("enough", need.enough());
    number("hours_a_day_needed", need.hoursADay());
    number("rate_needed", need.bytesPerSecond());
    json.writeEndObject();
  }

  private void way(Route way) throws IOException {
    json.writeStringField("way", way.kind().word());
    json.writeStringField("from", way.from());
    number("bytes_per_second", way.bytesPerSecond());
    json.writeStringField("slowest_part", way.slowest().name());
    number("slowest_part_bytes_per_second", way.slowest().bytesPerSecond());
  }

  private void warnings(List<Warning> warnings) throws IOException {
    json.writeArrayFieldStart("warnings");
    for (Warning warning : warnings) {
      json.writeStartObject();
      json.writeStringField("id", warning.id());
      json.writeStringField("copy", warning.copy());
      json.writeStringField("text", warning.text());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void number(String key, OptionalDouble value) throws IOException {
    page.number(key, value.orElse(Double.NaN));
  }

  private void number(String key, double value) throws IOException {
    page.number(key, value);
  }
}
