package lastcopy.history.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lastcopy.history.report.Cause;
import lastcopy.law.Law;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;

/** Compiles the processes of shocks of a layout. */
final class ShockProcesses {

  private final CopyPlan[] copies;
  private final boolean cards;
  private final List<ShockProcess> all = new ArrayList<>();

  private ShockProcesses(CopyPlan[] copies, boolean cards) {
    this.copies = copies;
    this.cards = cards;
  }

  /**
   * The shocks of a layout.
   *
   * @param copies its copies; turns of a rotation share no luck
   * @param cards whether camera cards are kept
   */
  static List<ShockProcess> of(CopyPlan[] copies, Desk desk, boolean cards) {
    ShockProcesses made = new ShockProcesses(copies, cards);
    made.places();
    made.boxes();
    made.desk(desk);
    made.copies();
    return made.all;
  }

  private void places() {
    for (Place place : Arrays.stream(copies).map(c -> c.stated().place()).distinct().toList()) {
      for (Mishap mishap : place.mishaps()) {
        if (mishap.rate().strikes() && mishap.takes() > 0) {
          mishap(place, mishap);
        }
      }
    }
  }

  private void mishap(Place place, Mishap mishap) {
    long source = SourceKey.of("place", place.id(), mishap.id());
    int[] there = those(copy -> mayBeAt(place, copy));
    String words = mishap.id() + " struck at '" + place.id() + "'";
    all.add(
        new ShockProcess(
            all.size(),
            ShockProcess.Kind.PLACE,
            source,
            mishap.rate().perHour(),
            there,
            mishap.takes(),
            takesKeys(source, there),
            cards && copies[0].stated().place().equals(place),
            place.id(),
            null,
            words,
            Cause.family("place:" + mishap.id(), words)));
  }

  /** Whether a copy stands at a place, or visits its source there. */
  private boolean mayBeAt(Place place, CopyPlan copy) {
    return copy.stated().place().equals(place)
        || (copy.rotates() && copies[copy.way().source()].stated().place().equals(place));
  }

  private void boxes() {
    List<Box> boxes =
        Arrays.stream(copies).flatMap(c -> c.stated().box().stream()).distinct().toList();
    for (Box box : boxes) {
      String words = "the box '" + box.id() + "' took all drives in it";
      add(
          ShockProcess.Kind.BOX,
          SourceKey.of("box", box.id()),
          box.rate(),
          those(copy -> copy.stated().box().equals(Optional.of(box))),
          null,
          words,
          Cause.family("box", words));
    }
  }

  private void desk(Desk desk) {
    desk.deletion()
        .ifPresent(
            deletion ->
                add(
                    ShockProcess.Kind.DELETION,
                    SourceKey.of("desk", "deletion"),
                    deletion.rate(),
                    those(copy -> true),
                    deletion.noticed(),
                    "footage was deleted by mistake",
                    Cause.family("desk:deletion", "footage was deleted by mistake")));
    desk.malware()
        .ifPresent(
            malware ->
                add(
                    ShockProcess.Kind.MALWARE,
                    SourceKey.of("desk", "malware"),
                    malware.rate(),
                    those(copy -> true),
                    malware.noticed(),
                    "malware struck",
                    Cause.family("desk:malware", "malware destroyed what it could reach")));
  }

  private void copies() {
    for (CopyPlan copy : copies) {
      Copy stated = copy.stated();
      int[] only = {copy.index()};
      String words = "the copy '" + stated.id() + "' had become unusable and nobody knew";
      add(
          ShockProcess.Kind.SPOIL,
          SourceKey.of("spoils", copy.name()),
          stated.spoils().map(Copy.Spoils::rate).orElse(Rate.NONE),
          only,
          null,
          words,
          Cause.family("spoils", words));
      add(
          ShockProcess.Kind.STOP,
          SourceKey.of("stops", copy.name()),
          stated.feed().map(feed -> feed.stops()).orElse(Rate.NONE),
          only,
          null,
          "the feed of '" + stated.id() + "' stopped",
          Map.of());
    }
  }

  private int[] those(Predicate<CopyPlan> which) {
    return Arrays.stream(copies).filter(which).mapToInt(CopyPlan::index).toArray();
  }

  /** What strikes surely takes each copy that it strikes, but no camera cards. */
  private void add(
      ShockProcess.Kind kind,
      long source,
      Rate rate,
      int[] struck,
      Law noticed,
      String words,
      Map<Cause.Context, Cause> causes) {
    if (rate.strikes()) {
      long[] keys = takesKeys(source, struck);
      all.add(
          new ShockProcess(
              all.size(),
              kind,
              source,
              rate.perHour(),
              struck,
              1,
              keys,
              false,
              "",
              noticed,
              words,
              causes));
    }
  }

  private long[] takesKeys(long source, int[] struck) {
    long[] keys = new long[struck.length + 1];
    for (int i = 0; i < struck.length; i++) {
      keys[i] = SourceKey.with(source, SourceKey.of(copies[struck[i]].name()));
    }
    keys[struck.length] = SourceKey.with(source, SourceKey.of("cards", ""));
    return keys;
  }
}
