package lastcopy.cli.levers;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.cli.edit.ScenarioTree;
import lastcopy.decide.effect.Alternative;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** A layout with all that could be changed about it, each as a layout of one file. */
class LeverStudyTest {

  private static LeverStudy study(String yaml) throws Exception {
    ScenarioTree tree = ScenarioTree.parse("a.yaml", yaml);
    Studio studio = tree.scenario().studio();
    return LeverStudy.of(tree, studio, studio.layouts().get(0));
  }

  /** What is no deed changes the studio, and is no layout of the file that is written. */
  @Test
  void aYardstickIsNoLayoutOfTheFile() throws Exception {
    LeverStudy study = study(MadeLevers.YAML);
    assertThat(study.whole().scenario().studio().layouts())
        .extracting(Layout::id)
        .startsWith("one")
        .contains(MadeLevers.DAYS_90, MadeLevers.MIRROR)
        .doesNotContain(MadeLevers.HALF);
    Alternative half =
        study.others().stream()
            .filter(each -> each.id().equals(MadeLevers.HALF))
            .findFirst()
            .orElseThrow();
    assertThat(half.layout().id()).isEqualTo("one");
    // 24 GB a shoot at half.
    assertThat(half.studio().footage().shoots().sizeBytes()).isEqualTo(12e9);
  }

  /** A layout that is called what a deed is called keeps its name. */
  @Test
  void aDeedOfTheNameOfTheLayoutHasAnotherOne() throws Exception {
    LeverStudy study = study(MadeLevers.YAML.replace("  one: {title", "  mirror: {title"));
    assertThat(study.base().id()).isEqualTo("mirror");
    assertThat(study.base().layout().copies().get(0).driveSet().orElseThrow().drives())
        .isEqualTo(1);
    assertThat(study.whole().scenario().studio().layouts())
        .extracting(Layout::id)
        .contains("mirror", "mirror-changed");
    assertThat(study.others())
        .filteredOn(each -> each.id().equals("mirror"))
        .singleElement()
        .satisfies(
            each ->
                assertThat(each.layout().copies().get(0).driveSet().orElseThrow().drives())
                    .isEqualTo(2));
  }
}
