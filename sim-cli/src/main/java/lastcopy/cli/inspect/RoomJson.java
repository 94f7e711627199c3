package lastcopy.cli.inspect;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lastcopy.cli.output.JsonPage;
import lastcopy.outlook.Comeback;
import lastcopy.outlook.Route;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.DriveChoice;
import lastcopy.outlook.room.DriveDue;
import lastcopy.outlook.room.LayoutRoom;
import lastcopy.outlook.room.Offload;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.outlook.room.RoomNeed;
import lastcopy.outlook.room.Streams;
import lastcopy.outlook.room.WayLimit;

/** Fields of room and time in lastcopy-inspect/1. */
final class RoomJson {

  private static final double BITS = 8;

  private final JsonPage page;
  private final JsonGenerator json;
  private final RoomAndTime room;

  RoomJson(JsonPage page, RoomAndTime room) {
    this.page = page;
    this.json = page.generator();
    this.room = room;
  }

  /** Fields of the studio. */
  void studio() throws IOException {
    page.number("fill", room.fill());
    json.writeArrayFieldStart("room_by_year");
    for (RoomNeed need : room.needs()) {
      json.writeStartObject();
      page.number("years", need.years());
      page.number("most_bytes", need.mostBytes());
      page.number("room_bytes", need.roomBytes());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("drives_that_hold_it");
    for (DriveChoice choice : room.choices()) {
      json.writeStartObject();
      json.writeStringField("model", choice.model().id());
      page.number("size_bytes", choice.model().sizeBytes());
      json.writeStringField("arrangement", choice.arrangement().word());
      page.number("years", choice.years());
      drives("drives", choice.drives());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void drives(String field, OptionalInt drives) throws IOException {
    if (drives.isPresent()) {
      json.writeNumberField(field, drives.getAsInt());
    } else {
      json.writeNullField(field);
    }
  }

  /** Fields of a layout. */
  void layout(String id) throws IOException {
    LayoutRoom its = room.layout(id);
    offload(its.offload());
    streams(its.streams());
  }

  private void offload(Optional<Offload> offload) throws IOException {
    if (offload.isEmpty()) {
      json.writeNullField("offload");
      return;
    }
    json.writeObjectFieldStart("offload");
    part("slowest_part", offload.get().slowest());
    page.number("shoot_bytes_now", offload.get().shootNow());
    page.number("hours_now", offload.get().hoursNow());
    page.number("shoot_bytes_in_last_year", offload.get().shootInLastYear());
    page.number("hours_in_last_year", offload.get().hoursInLastYear());
    json.writeEndObject();
  }

  private void streams(Optional<Streams> streams) throws IOException {
    if (streams.isEmpty()) {
      json.writeNullField("streams");
      return;
    }
    Streams of = streams.get();
    json.writeObjectFieldStart("streams");
    page.number("bits_per_second", of.bytesPerSecond() * BITS);
    json.writeNumberField("count", of.count());
    part("slowest_part", of.slowest());
    json.writeNumberField("over_1_gigabit", of.over(1e9));
    json.writeNumberField("over_2_5_gigabit", of.over(2.5e9));
    json.writeNumberField("over_10_gigabit", of.over(1e10));
    json.writeEndObject();
  }

  /** Fields of a copy. */
  void copy(String layout, String id) throws IOException {
    CopyRoom copy = room.layout(layout).copy(id);
    json.writeArrayFieldStart("drives_due");
    for (DriveDue due : copy.dues()) {
      json.writeStartObject();
      page.number("years", due.years());
      drives("drives", due.drives());
      page.number("room_bytes", due.roomBytes());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Fields of a way. */
  void way(String layout, String copy, int index) throws IOException {
    WayLimit limit = room.layout(layout).copy(copy).limits().get(index);
    page.number("without_slowest_part_bytes_per_second", limit.without());
    if (limit.next().isPresent()) {
      json.writeStringField("then_slowest_part", limit.next().get().name());
    } else {
      json.writeNullField("then_slowest_part");
    }
  }

  /** The routes by which all footage comes back. */
  void comebacks(List<Comeback> routes) throws IOException {
    json.writeArrayFieldStart("back");
    for (Comeback route : routes) {
      json.writeStartObject();
      json.writeStringField("from", route.from());
      json.writeStringField("by", route.by().word());
      page.number("bytes_per_second", route.bytesPerSecond());
      page.number("hours_now", route.hoursNow());
      page.number("hours_at_end", route.hoursAtEnd());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void part(String field, Route.Part part) throws IOException {
    json.writeStringField(field, part.name());
    page.number(field + "_bytes_per_second", part.bytesPerSecond());
  }
}
