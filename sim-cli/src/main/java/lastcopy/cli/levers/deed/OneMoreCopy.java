package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.edit.Change;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;

/** A further copy, on drives elsewhere or at a service, fed every night. */
final class OneMoreCopy implements Lever {
  private static final String LINK = "20 Mbit/s";
  private static final int MOST_DRIVES = 50;

  /** What is further: its keys but for the feed, and what they take for granted. */
  private record Further(
      String id, String title, String keys, List<String> assumes, boolean isPriced) {}

  @Override
  public void find(LeverSubject subject, Found found) {
    String which = subject.layout().copies().size() == 1 ? "second" : "further";
    onDrives(subject, "A " + which + " copy, on a drive elsewhere", found);
    atAService(subject, "A " + which + " copy, at a service", found);
  }

  private static void onDrives(LeverSubject subject, String title, Found found) {
    String id = "one-more-copy-on-a-drive";
    Optional<DriveModel> model =
        subject.layout().copies().stream()
            .flatMap(copy -> copy.driveSet().stream())
            .map(set -> set.model(0))
            .findFirst();
    if (model.isEmpty()) {
      found.leaveOut(id, title, "the layout has no drives");
      return;
    }
    int drives = (int) Math.ceil(allFootage(subject) / model.get().sizeBytes());
    if (drives > MOST_DRIVES) {
      found.leaveOut(id, title, "all footage by the end would take " + drives + " such drives");
      return;
    }
    Elsewhere place = Elsewhere.than(subject, subject.layout().workingCopy().place().id());
    List<String> assumes = new ArrayList<>(place.assumes());
    assumes.add(subject.priceWords("The drive", model.get()));
    assumes.add("Failures there are seen within a day and replaced within two more.");
    String set =
        String.format(
            "drives: %d x %s, %snoticed: 1 day, wait: 2 days, restores_at: 100 MB/s",
            drives, model.get().id(), drives > 1 ? "arrangement: shelf, " : "");
    String keys = "place: " + place.name() + ", " + set;
    add(subject, new Further(id, title, keys, assumes, model.get().price().isPresent()), found);
  }

  private static void atAService(LeverSubject subject, String title, Found found) {
    Optional<String> known = serviceOfTheFile(subject);
    List<String> assumes = new ArrayList<>();
    assumes.add(
        known.isPresent()
            ? "The service is the one that the file has."
            : "The service loses an account with 0.2 %/year (an assumption) and has no price,"
                + " since the file has none.");
    String service = known.orElse("{loses: 0.2 %/year}");
    boolean priced = service.contains("price");
    String id = "one-more-copy-at-a-service";
    add(subject, new Further(id, title, "service: " + service, assumes, priced), found);
  }

  /** The first service of any layout. */
  private static Optional<String> serviceOfTheFile(LeverSubject subject) {
    return subject.studio().layouts().stream()
        .flatMap(
            layout ->
                layout.copies().stream()
                    .filter(copy -> copy.medium() instanceof Medium.Service)
                    .map(copy -> List.of("layouts", layout.id(), "copies", copy.id(), "service")))
        .findFirst()
        .flatMap(path -> subject.tree().text(path));
  }

  private static void add(LeverSubject subject, Further further, Found found) {
    Optional<String> link = linkOfTheFile(subject);
    List<String> all = new ArrayList<>(further.assumes);
    all.add(
        "It is fed every night over "
            + link.map(name -> "the link of the file, " + name)
                .orElse(LINK + ", an assumption since the file has no link")
            + ", and starts full.");
    String feed =
        String.format(
            "feed: {from: %s, every: 1 day, at: 2.5 h, link: %s}",
            subject.layout().workingCopy().id(), link.orElse(LINK));
    Change change =
        new Change(
            subject.path("copies", name(subject)), "", "{" + further.keys + ", " + feed + "}");
    found.add(new Deed(further.id, further.title, List.of(change), all, further.isPriced, false));
  }

  private static Optional<String> linkOfTheFile(LeverSubject subject) {
    return subject.studio().layouts().stream()
        .flatMap(
            layout ->
                layout.copies().stream()
                    .map(copy -> List.of("layouts", layout.id(), "copies", copy.id(), "feed")))
        .flatMap(path -> subject.tree().text(with(path, "link")).stream())
        .findFirst();
  }

  private static List<String> with(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return longer;
  }

  private static String name(LeverSubject subject) {
    List<String> taken = subject.layout().copies().stream().map(Copy::id).toList();
    String name = "further";
    while (taken.contains(name)) {
      name += "-more";
    }
    return name;
  }

  private static double allFootage(LeverSubject subject) {
    double horizon = subject.studio().horizonHours();
    return ShootTable.even(subject.studio().footage(), horizon).total(horizon);
  }
}
