package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.law.Exponential;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.LinkTime;
import lastcopy.outlook.Route;
import lastcopy.outlook.room.CopyRoom;
import lastcopy.outlook.room.DriveDue;
import lastcopy.outlook.room.Offload;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.outlook.room.RoomNeed;
import lastcopy.outlook.room.Streams;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words of {@code inspect}, of facts made by hand. */
class InspectWordsTest {

  private static final RoomAndTime ROOM =
      new RoomAndTime(
          0.8,
          List.of(),
          List.of(new RoomNeed(1, 4e12, 5e12), new RoomNeed(5, 9.6e12, 12e12)),
          List.of(),
          List.of());

  private static LinkTime.Need need(boolean enough, double hours, double bytesPerSecond) {
    return new LinkTime.Need(enough, hours, bytesPerSecond);
  }

  /** Tenths of hours and hundredths of Mbit/s are rounded up, since less would not do. */
  @Test
  void whetherTheTimeOfALinkIsLongEnough() {
    LinkTime.Need now = need(true, 5.21, 1e6);
    LinkTime.Need little = need(true, 8, 1e6);
    assertThat(LinkWords.of(new LinkTime(10, 1, now, little)))
        .isEqualTo("needs 5.3 of its 10 h a day now, 8 in the last year: long enough");
    assertThat(LinkWords.of(new LinkTime(9.5, 2, now, little)))
        .isEqualTo(
            "needs 5.3 of its 9.5 h a day now, 8 in the last year, shared by 2 feeds: long enough");
    LinkTime.Need short12 = need(false, 12, 1_000_100);
    assertThat(LinkWords.of(new LinkTime(10, 1, now, short12)))
        .endsWith(": too short in the last year; 12 h a day, or 8.01 Mbit/s, would do");
    assertThat(LinkWords.of(new LinkTime(10, 1, short12, now)))
        .endsWith(": too short now; 12 h a day, or 8.01 Mbit/s, would do");
    LinkTime.Need short24 = need(false, 24, 2e6);
    assertThat(LinkWords.of(new LinkTime(10, 1, short12, short24)))
        .endsWith(": too short; 24 h a day, or 16.00 Mbit/s, would do");
    assertThat(LinkWords.of(new LinkTime(10, 1, short12, need(false, 24.1, 2e6))))
        .as("no day is that long")
        .endsWith(": too short; 16.00 Mbit/s, would do");
  }

  @Test
  void howLongAnOffloadTakes() {
    Route.Part drive = new Route.Part("drive d", 2e7);
    String checked = " at 20 MB/s (drive d), if cards are as fast; as long again to check it";
    assertThat(RoomWords.offload(new Offload(drive, 1.8e10, 0.25, 1.8e10, 0.25)))
        .isEqualTo("15 min for 18 GB" + checked);
    assertThat(RoomWords.offload(new Offload(drive, 1.8e10, 0.25, 7.2e10, 1)))
        .isEqualTo("15 min for 18 GB now, 1 h for 72 GB in the last year" + checked);
  }

  /** 25 MB/s each; Ethernet frames with timestamps carry 117.7, 294 and 1,177 MB/s (IEEE 802.3). */
  @Test
  void howManyEditAtOnce() {
    String seek = "; fewer where hard disks seek between them";
    assertThat(RoomWords.streams(new Streams(25e6, new Route.Part("drive d", 80e6))))
        .isEqualTo(
            "3 of 200 Mbit/s at once: drive d does 80 MB/s, and a network of 1 Gbit/s is enough"
                + seek);
    assertThat(RoomWords.streams(new Streams(25e6, new Route.Part("box b", 1e9))))
        .isEqualTo(
            "40 of 200 Mbit/s at once: box b does 1,000 MB/s; by a network of 1 Gbit/s 4, of 2.5"
                + " Gbit/s 11"
                + seek);
  }

  private static CopyOutlook outlook(Arrangement arrangement, OptionalDouble fills) {
    DriveModel model = DriveModel.builder("m", 8e12).fails(new Exponential(9)).build();
    Copy copy =
        Copy.builder("main")
            .on(
                Medium.DriveSet.builder(arrangement, arrangement == Arrangement.SINGLE ? 1 : 2)
                    .of(model)
                    .build())
            .build();
    OptionalDouble none = OptionalDouble.empty();
    return new CopyOutlook(
        copy,
        OptionalDouble.of(8e12),
        fills,
        none,
        none,
        none,
        Optional.empty(),
        List.of(),
        List.of());
  }

  private static String room(CopyOutlook outlook, boolean all, DriveDue... dues) {
    return RoomWords.room(outlook, new CopyRoom("main", List.of(dues), List.of()), ROOM, all);
  }

  private static DriveDue due(double years, int drives) {
    return new DriveDue(years, OptionalInt.of(drives), 9e12);
  }

  @Test
  void whenACopyIsFullAndWhatItTakesThen() {
    CopyOutlook enough = outlook(Arrangement.SINGLE, OptionalDouble.empty());
    CopyOutlook full = outlook(Arrangement.SINGLE, OptionalDouble.of(2.5));
    assertThat(room(enough, false)).isEqualTo("8 TB usable, enough to the end");
    assertThat(room(full, false)).isEqualTo("8 TB usable, full after 2.5 years");
    assertThat(room(full, false, due(1, 3), due(3, 5)))
        .isEqualTo(
            "8 TB usable, 80 % full after 1 year, full after 2.5 years; then 3 drives, by the end 5"
                + " drives");
    assertThat(room(enough, false, due(1.5, 3), due(3, 3)))
        .isEqualTo("8 TB usable, 80 % full after 1.5 years but enough to the end; then 3 drives");
    DriveDue larger = new DriveDue(3, OptionalInt.empty(), 9e12);
    String then = "; then larger drives, 12 TB to the end";
    assertThat(room(full, false, larger)).endsWith(then);
    assertThat(room(full, false, due(1, 3), larger)).endsWith(then);
    CopyOutlook service =
        new CopyOutlook(
            enough.copy(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            List.of(),
            List.of());
    assertThat(room(service, false)).isEqualTo("as much as is paid for");
  }

  @Test
  void aShelfTakesOneDriveAfterTheOther() {
    CopyOutlook shelf = outlook(Arrangement.SHELF, OptionalDouble.of(2.5));
    String due = "8 TB usable, full after 2.5 years; the next drive is due after ";
    DriveDue[] four =
        DoubleStream.of(1, 1.5, 2, 3.5).mapToObj(y -> due(y, 1)).toArray(DriveDue[]::new);
    assertThat(room(shelf, false, four)).isEqualTo(due + "1, 1.5, 2 years (1 more by the end)");
    assertThat(room(shelf, true, four)).isEqualTo(due + "1, 1.5, 2, 3.5 years");
    assertThat(room(shelf, false, due(1, 1))).isEqualTo(due + "1 year");
    assertThat(room(shelf, false, due(1, 1), due(2, 1), due(3, 1)))
        .isEqualTo(due + "1, 2, 3 years");
  }

  @ParameterizedTest
  @CsvSource({
    "Infinity, never done",
    "0, 0 h",
    "0.00016, less than 1 min",
    "0.25, 15 min",
    "1, 1 h",
    "71.9, 71.9 h",
    "72, 3 days",
    "84, 3.5 days"
  })
  void timesAreToldInMinutesHoursOrDays(double hours, String words) {
    assertThat(InspectLines.time(hours)).isEqualTo(words);
    assertThat(InspectLines.time(OptionalDouble.of(hours))).isEqualTo(words);
  }

  @Test
  void amountsAndShares() {
    assertThat(InspectLines.bytes(0)).isEqualTo("0 GB");
    assertThat(InspectLines.bytes(5)).isEqualTo("5 B");
    assertThat(InspectLines.megabytes(2.5e6)).isEqualTo("2.5 MB/s");
    assertThat(InspectLines.percent(0.8)).isEqualTo("80 %");
    assertThat(InspectLines.percent(0.125)).isEqualTo("12.5 %");
    assertThat(InspectLines.years(1)).isEqualTo("1 year");
  }

  private static String table(int indent, List<List<String>> rows) {
    InspectLines lines = new InspectLines(new PageLook(60, false, false));
    lines.table(indent, rows);
    return lines.written();
  }

  /** 24 letters at most of each column; the widest gives way to 14 of the last one. */
  @Test
  void columnsAreAsWideAsWhatStandsInThem() {
    assertThat(table(2, List.of(List.of("way", "does", "by"), List.of("feed", "1 MB/s", "link"))))
        .isEqualTo("  way   does    by\n  feed  1 MB/s  link\n");
    String long25 = "abcdefghijklmnopqrstuvwxy";
    assertThat(table(0, List.of(List.of("a", "b"), List.of(long25, "c"))))
        .isEqualTo("a" + " ".repeat(25) + "b\nabcdefghijklmnopqrstuvw~  c\n");
    // 60 less two gaps and 14 are 42 for both; the first of the widest gives way.
    String last = "fourteen chars and more";
    assertThat(table(0, List.of(List.of(long25, long25, last))))
        .isEqualTo(
            "abcdefghijklmnopqrst~  abcdefghijklmnopqrst~  fourteen chars\n"
                + " ".repeat(46)
                + "and more\n");
  }

  @Test
  void aNameFitsBesideItsNumbers() {
    InspectLines lines = new InspectLines(new PageLook(60, false, false));
    assertThat(lines.fits(24, 30)).isTrue();
    assertThat(lines.fits(25, 30)).as("longer than any column").isFalse();
    assertThat(lines.fits(10, 50)).isTrue();
    assertThat(lines.fits(11, 50)).as("no room").isFalse();
  }

  private static List<Default> defaults(String key, String value, String origin, String... where) {
    return List.of(where).stream().map(w -> new Default(w, key, value, origin)).toList();
  }

  private static List<Default> both(List<Default> one, List<Default> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }

  @Test
  void eachDefaultByItself() {
    assertThat(DefaultLines.each(defaults("wait", "0 h", "format default", "layouts.a.main")))
        .containsExactly("layouts.a.main: wait: 0 h (format default)");
  }

  /** What matters comes first, in the order of its weight; typical values before all else. */
  @Test
  void whatMattersForTheResultComesFirst() {
    List<Default> some =
        both(
            both(
                defaults("fill", "1 MB", "format default", "drives.d", "drives.e"),
                defaults("wait", "0 h", "assumption", "layouts.a.main")),
            both(
                defaults("noticed", "0 h", "format default", "layouts.a.main", "layouts.a.far"),
                defaults("fails", "hard-disk, central", Default.TYPICAL, "drives.d")));
    assertThat(DefaultLines.grouped(some, 2))
        .containsExactly(
            "fails: hard-disk, central (a typical value, so an assumption; lastcopy rates has its"
                + " source): d",
            "noticed: 0 h (a failure is seen at once): every copy",
            "wait: 0 h (a new drive is there at once, an assumption): a.main",
            "besides: fill: 1 MB (d, e)");
    assertThat(DefaultLines.grouped(List.of(), 2)).isEmpty();
    assertThat(
            DefaultLines.grouped(
                both(
                    defaults("x", "1", "assumption", "desk"),
                    defaults("y", "2", "format default", "desk")),
                2))
        .containsExactly("besides: x: 1, an assumption (desk); y: 2 (desk)");
  }

  private static String where(int copies, String... sections) {
    String line =
        DefaultLines.grouped(defaults("x", "1", "format default", sections), copies).get(0);
    return line.substring("besides: x: 1 (".length(), line.length() - 1);
  }

  /** Three are named, more are counted; each section once. */
  @Test
  void manySectionsAreCounted() {
    String[] four = IntStream.range(0, 4).mapToObj(i -> "layouts.a.c" + i).toArray(String[]::new);
    assertThat(where(4, four)).isEqualTo("every copy");
    assertThat(where(5, four)).isEqualTo("4 of 5 copies");
    assertThat(where(5, four[0], four[1], four[2], four[2])).isEqualTo("a.c0, a.c1, a.c2");
    assertThat(where(3, "drives.d", "drives.e", "drives.f")).isEqualTo("d, e, f");
    assertThat(where(4, "drives.d", "drives.e", "drives.f", "drives.g")).isEqualTo("4 sections");
    String fire = "places.p.mishaps.";
    assertThat(where(1, fire + "a")).isEqualTo("p.a");
    assertThat(where(1, fire + "a", fire + "b", fire + "c", fire + "d")).isEqualTo("4 mishaps");
  }
}
