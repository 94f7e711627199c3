package lastcopy.oracle;

import static lastcopy.oracle.SmallStudios.AT_ONCE;
import static lastcopy.oracle.SmallStudios.deletes;
import static lastcopy.oracle.SmallStudios.eternal;
import static lastcopy.oracle.SmallStudios.even;
import static lastcopy.oracle.SmallStudios.mortal;
import static lastcopy.oracle.SmallStudios.onHand;
import static lastcopy.oracle.SmallStudios.studio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/**
 * Each cause is seen in a studio made for it, shares add up, and an id has one sentence.
 *
 * <p>Red if a context is mistaken for another, for example if the bins of what is behind are moved.
 */
class CauseIdsTest {

  private static final double NEVER = 1e9;

  @Test
  void eachCauseInAStudioMadeForIt() {
    Map<String, String> sentences = new LinkedHashMap<>();
    studios()
        .forEach(
            (id, made) -> {
              List<LayoutResult.CauseShare> causes =
                  ComparedMeans.resultOf(made, 1_000, 1).causes();
              assertThat(causes).extracting(LayoutResult.CauseShare::id).contains(id);
              assertThat(causes.stream().mapToDouble(c -> c.share().value()).sum())
                  .as(id)
                  .isCloseTo(1, within(1e-12));
              assertThat(causes.stream().mapToDouble(LayoutResult.CauseShare::shareOfBytes).sum())
                  .as(id)
                  .isCloseTo(1, within(1e-12));
              for (LayoutResult.CauseShare cause : causes) {
                assertThat(sentences.getOrDefault(cause.id(), cause.sentence()))
                    .isEqualTo(cause.sentence());
                sentences.put(cause.id(), cause.sentence());
              }
            });
    assertThat(sentences.values()).doesNotHaveDuplicates();
  }

  /** Where only one thing can happen it is the whole share. Red if a context is mistaken. */
  @Test
  void whereOnlyOneThingCanHappenItIsAll() {
    for (String id :
        List.of("drive", "drive+rebuild", "drive+behind:hours", "desk:deletion", "box")) {
      assertThat(ComparedMeans.resultOf(studios().get(id), 1_000, 1).causes())
          .extracting(LayoutResult.CauseShare::id)
          .containsExactly(id);
    }
  }

  private static Map<String, Studio> studios() {
    Map<String, Studio> all = new LinkedHashMap<>();
    Part main = Part.single("main", 500);
    all.put("drive", shooting(mortal()));
    all.put("drive+rebuild", kept(Part.set("main", Arrangement.MIRROR, 2, 300)));
    all.put(
        "drive+unseen",
        kept(
            Part.set("main", Arrangement.MIRROR, 2, 300).noticed(new Delay.Lawful(new Fixed(99)))));
    all.put("drive+spoilt", kept(main, nightly().spoils(300, 200)));
    all.put("drive+away", shooting(main, Part.single("far", 400).nightly("main", 2, AT_ONCE)));
    all.put("drive+behind:hours", behind(20));
    all.put("drive+behind:days", behind(150));
    all.put("drive+behind:weeks", behind(700));
    all.put("drive+behind:longer", behind(1_900));
    all.put("drive+cards", cards(30, mortal().arrives(new Fixed(40))));
    all.put(
        "drive+deleted",
        desk(
            deletes(200, 1, NEVER),
            eternal("main"),
            Part.single("far", 500).every("main", NEVER, NEVER, 1)));
    all.put("desk:deletion", desk(deletes(200, 1, 10), eternal("main")));
    all.put("desk:deletion+late", desk(deletes(200, 1, 60), eternal("main").keepsDeleted(20)));
    all.put("desk:malware", desk(malware(), eternal("main")));
    all.put("desk:malware+late", desk(malware(), eternal("main").keepsDeleted(20)));
    Place place = new Place("studio", List.of(new Mishap("fire", new Rate(1 / 300.0), 1)));
    all.put("place:fire", kept(eternal("main").at(place)));
    Box box = Box.of("b", new Rate(1 / 300.0));
    all.put("box", kept(eternal("main").in(box)));
    all.put("service", kept(Part.service("main", 300)));
    all.put("spoils", kept(eternal("main").spoils(300, 100)));
    Part mirror = Part.set("main", Arrangement.MIRROR, 2, 300).readErrors(1e-12);
    all.put("unreadable+rebuild", kept(mirror));
    all.put("unreadable+refill", kept(main, nightly().readErrors(1e-12)));
    all.put("defect+rebuild", kept(defects(Part.set("main", Arrangement.MIRROR, 2, 300))));
    all.put("defect+refill", kept(main, defects(nightly())));
    return all;
  }

  private static Part nightly() {
    return eternal("far").nightly("main", 2, AT_ONCE);
  }

  private static Part defects(Part part) {
    return part.defects(new Exponential(50), new Exponential(300));
  }

  private static Desk malware() {
    return new Desk(
        Optional.empty(), Optional.of(new Desk.Malware(new Rate(1 / 300.0), new Exponential(60))));
  }

  /** The far copy's runs are so far apart that some footage lags by so much. */
  private static Studio behind(double everyHours) {
    return studio(
        2_000,
        even(),
        Desk.QUIET,
        OptionalDouble.empty(),
        mortal(),
        eternal("far").every("main", everyHours, 2, AT_ONCE).restores(AT_ONCE));
  }

  private static Studio shooting(Part... parts) {
    return studio(2_000, even(), Desk.QUIET, OptionalDouble.empty(), parts);
  }

  private static Studio cards(double keep, Part... parts) {
    return studio(2_000, even(), Desk.QUIET, OptionalDouble.of(keep), parts);
  }

  private static Studio kept(Part... parts) {
    return desk(Desk.QUIET, parts);
  }

  private static Studio desk(Desk desk, Part... parts) {
    return studio(2_000, onHand(), desk, OptionalDouble.empty(), parts);
  }
}
