package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.edit.Change;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;

/** New drives where used ones stand. */
final class NewInsteadOfUsed implements Lever {
  private static final String ID = "new-instead-of-used";
  private static final String TITLE = "New drives instead of used ones";
  private static final Law NEW = new Fixed(0);

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      if (copy.medium() instanceof Medium.DriveSet set
          && set.kinds().size() == 1
          && isUsed(set.model(0))) {
        deeds.add(deed(subject, copy, set));
      }
    }
    found.addOr(deeds, ID, TITLE, "no copy has drives of one model that have an age");
  }

  private static boolean isUsed(DriveModel model) {
    return !model.age().equals(NEW) || model.boughtAtHours() > 0;
  }

  private static Deed deed(LeverSubject subject, Copy copy, Medium.DriveSet set) {
    DriveModel used = set.model(0);
    Optional<DriveModel> known = newOfTheFile(subject, used);
    List<Change> changes = new ArrayList<>();
    String name = known.map(DriveModel::id).orElse(used.id() + "-new");
    if (known.isEmpty()) {
      changes.add(new Change(List.of("drives", name), "", asNew(subject, used)));
    }
    changes.add(subject.change(copy, "drives", set.drives() + " x " + name));
    String assumes =
        known.isPresent()
            ? subject.priceWords("Each new drive", known.get())
            : "The new drives are the same model at age 0, at the price of the used one: the file"
                + " has no new one of that size.";
    return new Deed(
        subject.id(ID, copy),
        subject.title(TITLE, copy),
        changes,
        List.of(assumes),
        known.isPresent() && known.get().price().isPresent(),
        false);
  }

  private static Optional<DriveModel> newOfTheFile(LeverSubject subject, DriveModel used) {
    return subject.studio().layouts().stream()
        .flatMap(layout -> layout.copies().stream())
        .flatMap(copy -> copy.driveSet().stream())
        .flatMap(set -> set.kinds().stream())
        .filter(model -> !isUsed(model) && model.sizeBytes() == used.sizeBytes())
        .findFirst();
  }

  /** The model as it stands in the file, without its age. */
  private static String asNew(LeverSubject subject, DriveModel used) {
    List<String> parts = new ArrayList<>();
    List<String> path = List.of("drives", used.id());
    for (String key : subject.tree().keys(path)) {
      if (!key.equals("age") && !key.equals("bought_at")) {
        List<String> of = List.of("drives", used.id(), key);
        parts.add(key + ": " + subject.tree().text(of).orElse(""));
      }
    }
    return "{" + String.join(", ", parts) + "}";
  }
}
