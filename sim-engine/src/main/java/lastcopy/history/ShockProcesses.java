package lastcopy.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;

/** Compiles the Poisson processes of a layout. */
final class ShockProcesses {

  private final List<Copy> copies;
  private final String[] names;
  private final int[] sourceOf;
  private final boolean cards;
  private final List<ShockProcess> all = new ArrayList<>();

  private ShockProcesses(List<Copy> copies, String[] names, int[] sourceOf, boolean cards) {
    this.copies = copies;
    this.names = names;
    this.sourceOf = sourceOf;
    this.cards = cards;
  }

  /**
   * The shocks of a layout.
   *
   * @param copies its copies, each turn of a rotation as one
   * @param names theirs, each turn's its own: turns share no luck
   * @param sourceOf the copy that feeds each; −1 for the first
   * @param cards whether camera cards are kept
   */
  static ShockProcess[] of(
      List<Copy> copies, String[] names, int[] sourceOf, Desk desk, boolean cards) {
    ShockProcesses made = new ShockProcesses(copies, names, sourceOf, cards);
    made.places();
    made.boxes();
    made.desk(desk);
    made.copies();
    return made.all.toArray(new ShockProcess[0]);
  }

  private void places() {
    for (Place place : copies.stream().map(Copy::place).distinct().toList()) {
      for (Mishap mishap : place.mishaps()) {
        if (mishap.rate().strikes() && mishap.takes() > 0) {
          String words = mishap.id() + " struck at '" + place.id() + "'";
          add(
              ShockProcess.Kind.PLACE,
              SourceKey.of("place", place.id(), mishap.id()),
              mishap.rate().perHour(),
              visitors(place),
              mishap.takes(),
              cards && copies.get(0).place().equals(place),
              place.id(),
              words,
              Cause.family("place:" + mishap.id(), words));
        }
      }
    }
  }

  /** Copies that stand at a place, and rotated ones that visit their source there. */
  private int[] visitors(Place place) {
    return IntStream.range(0, copies.size())
        .filter(
            c ->
                copies.get(c).place().equals(place)
                    || (copies.get(c).rotation().isPresent()
                        && copies.get(sourceOf[c]).place().equals(place)))
        .toArray();
  }

  private void boxes() {
    for (Box box : copies.stream().flatMap(c -> c.box().stream()).distinct().toList()) {
      if (box.rate().strikes()) {
        String words = "the box '" + box.id() + "' took all drives in it";
        add(
            ShockProcess.Kind.BOX,
            SourceKey.of("box", box.id()),
            box.rate().perHour(),
            those(copy -> copy.box().equals(Optional.of(box))),
            1,
            false,
            "",
            words,
            Cause.family("box", words));
      }
    }
  }

  private void desk(Desk desk) {
    desk.deletion()
        .filter(deletion -> deletion.rate().strikes())
        .ifPresent(
            deletion ->
                add(
                    ShockProcess.Kind.DELETION,
                    SourceKey.of("desk", "deletion"),
                    deletion.rate().perHour(),
                    "footage was deleted by mistake",
                    Cause.family("desk:deletion", "footage was deleted by mistake")));
    desk.malware()
        .filter(malware -> malware.rate().strikes())
        .ifPresent(
            malware ->
                add(
                    ShockProcess.Kind.MALWARE,
                    SourceKey.of("desk", "malware"),
                    malware.rate().perHour(),
                    "malware struck",
                    Cause.family("desk:malware", "malware destroyed what it could reach")));
  }

  private void add(
      ShockProcess.Kind kind,
      long source,
      double perHour,
      String words,
      Map<Cause.Context, Cause> causes) {
    add(kind, source, perHour, those(copy -> true), 1, false, "", words, causes);
  }

  private void copies() {
    for (int c = 0; c < copies.size(); c++) {
      Copy copy = copies.get(c);
      int[] only = {c};
      if (copy.spoils().isPresent() && copy.spoils().get().rate().strikes()) {
        String words = "the copy '" + copy.id() + "' had become unusable and nobody knew";
        add(
            ShockProcess.Kind.SPOIL,
            SourceKey.of("spoils", names[c]),
            copy.spoils().get().rate().perHour(),
            only,
            1,
            false,
            "",
            words,
            Cause.family("spoils", words));
      }
      if (copy.feed().isPresent() && copy.feed().get().stops().strikes()) {
        add(
            ShockProcess.Kind.STOP,
            SourceKey.of("stops", names[c]),
            copy.feed().get().stops().perHour(),
            only,
            1,
            false,
            "",
            "the feed of '" + copy.id() + "' stopped",
            Map.of());
      }
    }
  }

  private int[] those(Predicate<Copy> which) {
    return IntStream.range(0, copies.size()).filter(c -> which.test(copies.get(c))).toArray();
  }

  private void add(
      ShockProcess.Kind kind,
      long source,
      double perHour,
      int[] struck,
      double takes,
      boolean strikesCards,
      String placeId,
      String words,
      Map<Cause.Context, Cause> causes) {
    long[] keys = new long[struck.length + 1];
    for (int i = 0; i < struck.length; i++) {
      keys[i] = SourceKey.with(source, SourceKey.of(names[struck[i]]));
    }
    keys[struck.length] = SourceKey.with(source, SourceKey.of("cards", ""));
    all.add(
        new ShockProcess(
            kind, source, perHour, struck, takes, keys, strikesCards, placeId, words, causes));
  }
}
