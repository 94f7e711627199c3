package lastcopy.cli.levers.deed;

import java.util.List;

/** All levers, in the order in which they are looked at. */
public final class Catalogue {
  private static final List<Lever> ALL =
      List.of(
          new SeenAtOnce(),
          new LookedForTwiceAsOften(),
          new SpareOnTheShelf(),
          new Nightly(),
          new TwiceTheLink(),
          new KeptDeleted(30),
          new KeptDeleted(90),
          new InAnotherPlace(),
          new OutOfReach(),
          new OneMoreCopy(),
          new NewInsteadOfUsed(),
          new OtherBatches(),
          new MoreRedundancy(),
          new ReplacedEarlier(),
          new CardsKept(),
          new RestoreTried(),
          new Yardsticks());

  private Catalogue() {}

  /** What can be done with a layout, and what cannot. */
  public static Found of(LeverSubject subject) {
    Found found = new Found(subject);
    ALL.forEach(lever -> lever.find(subject, found));
    return found;
  }
}
