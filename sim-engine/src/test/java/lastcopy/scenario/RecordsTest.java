package lastcopy.scenario;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import org.junit.jupiter.api.Test;

/** What a studio cannot be is refused by its records, so by whatever makes them. */
class RecordsTest {

  private static final Box TOWER = Box.of("tower", Rate.NONE);

  private static CopyBuilder copy(String id) {
    return Copy.builder(id).on(Medium.Service.losing(Rate.NONE));
  }

  private static CopyBuilder fed(String id) {
    return copy(id).fed(Feed.from("main").continuous().build());
  }

  @Test
  void aBoxStandsInOnePlace() {
    Copy main = copy("main").at(Place.of("studio")).in(TOWER).build();
    Layout.of("one", main, fed("far").at(Place.of("studio")).in(TOWER).build());
    Copy elsewhere = fed("far").at(Place.of("home")).in(TOWER).build();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Layout.of("two", main, elsewhere))
        .withMessage("the box tower of layout two stands in one place, not in studio and home");
  }

  @Test
  void whatIsRequiredIsNamed() {
    assertThatNullPointerException()
        .isThrownBy(() -> Copy.builder("main").build())
        .withMessage("medium must not be null");
    assertThatNullPointerException()
        .isThrownBy(() -> Feed.from("main").build())
        .withMessage("schedule must not be null");
    assertThatNullPointerException()
        .isThrownBy(() -> DriveModel.builder("desk", 1).build())
        .withMessage("fails must not be null");
    assertThatNullPointerException()
        .isThrownBy(() -> Medium.DriveSet.builder(Arrangement.SINGLE, 1).build())
        .withMessage("model must not be null");
    assertThatNullPointerException()
        .isThrownBy(() -> Studio.builder("Small", 1).build())
        .withMessage("footage must not be null");
    assertThatNullPointerException().isThrownBy(() -> Footage.builder(null).build());
  }

  @Test
  void nothingThatARecordHoldsMayBeMissing() {
    Copy whole = copy("main").build();
    assertThatNullPointerException().isThrownBy(() -> copy("main").at(null));
    assertThatNullPointerException()
        .isThrownBy(() -> new Copy.Repair(Delay.none(), null, new Fixed(0)));
    assertThatNullPointerException()
        .isThrownBy(
            () ->
                new Copy(
                    "main",
                    whole.place(),
                    whole.box(),
                    whole.medium(),
                    whole.repair(),
                    whole.feed(),
                    OptionalDouble.empty(),
                    0,
                    whole.reach(),
                    true,
                    Optional.empty(),
                    null,
                    whole.costs(),
                    whole.leftOut()))
        .withMessage("rotation must not be null");
  }
}
