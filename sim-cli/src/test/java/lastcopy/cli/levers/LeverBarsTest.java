package lastcopy.cli.levers;

import static lastcopy.cli.levers.MadeLevers.DAYS_90;
import static lastcopy.cli.levers.MadeLevers.DRIVE;
import static lastcopy.cli.levers.MadeLevers.HALF;
import static lastcopy.cli.levers.MadeLevers.MIRROR;
import static lastcopy.cli.levers.MadeLevers.SPARE;
import static lastcopy.cli.levers.MadeLevers.base;
import static lastcopy.cli.levers.MadeLevers.effects;
import static lastcopy.cli.levers.MadeLevers.findings;
import static lastcopy.cli.levers.MadeLevers.free;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lastcopy.charts.ChartFiles;
import lastcopy.charts.LeversChart;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.effect.Effects;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is drawn of figures made by hand: so many of 1,000 as the page says, of the same sign. */
class LeverBarsTest {

  private static final OutOf THOUSAND = new OutOf(1_000);

  @TempDir private Path directory;

  private static LeverFindings assuming(LeverFindings of, AssumptionStudy study) {
    return new LeverFindings(
        of.study(), of.effects(), Optional.of(study), of.settings(), false, true);
  }

  private static AssumptionStudy waiting(double half, double twice) {
    Assumption wait =
        new Assumption("wait", "how long a wait is", 48, Assumption.Unit.HOURS, factor -> null);
    Effects moving =
        effects(
            base(true),
            List.of(),
            free("wait" + AssumptionStudy.HALF, half),
            free("wait" + AssumptionStudy.DOUBLE, twice));
    return new AssumptionStudy(
        List.of(wait), moving, Optional.empty(), Optional.empty(), List.of());
  }

  /** Forty of 1,000 fewer are a bar of 0.04 to the right; three more one to the left. */
  @Test
  void aBarIsWhatAChangeTakesOff() {
    LeverFindings findings =
        findings(free(DRIVE, -40), free(HALF, -9), free(SPARE, 0), free(MIRROR, 3));
    assertThat(LeverBars.changes(findings))
        .extracting(LeversChart.Bar::name, bar -> bar.values().get(0).value())
        .containsExactly(
            tuple("A second copy, on a drive elsewhere", 0.04),
            tuple("Half as much shot (no deed)", 0.009),
            tuple("A mirror of two drives", -0.003));
    Estimate drive = LeverBars.changes(findings).get(0).values().get(0);
    assertThat(drive.low()).isEqualTo(0.04 - 0.001);
    assertThat(drive.high()).isEqualTo(0.04 + 0.001);
  }

  /** At half three of 1,000 fewer, at double six more, each on its own side. */
  @Test
  void aNumberHasTwoBars() {
    LeverFindings findings = assuming(findings(), waiting(-3, 6));
    LeversChart.Bar only = LeverBars.numbers(findings, THOUSAND).get(0);
    assertThat(only.name()).isEqualTo("How long a wait is: 2 days");
    assertThat(only.values()).extracting(Estimate::value).containsExactly(-0.003, 0.006);
    assertThat(LeverBars.numbers(assuming(findings(), waiting(0, 0)), THOUSAND)).isEmpty();
    assertThat(LeverBars.numbers(findings(), THOUSAND)).isEmpty();
  }

  @Test
  void thePictureSaysWhatItIsOf() throws Exception {
    LeverFindings findings = assuming(findings(free(DAYS_90, -40)), waiting(-3, 6));
    assertThat(write(findings)).containsExactly("levers.svg", "assumptions.svg");
    String svg = Files.readString(directory.resolve("levers.svg"));
    assertThat(svg)
        .contains("Fewer of 1,000 studios that lose any footage")
        .contains("A: \"One drive\", within 5 years")
        .contains("in 95 % of such studies")
        .contains("Drawn 2026-01-02")
        .doesNotContain("UNFINISHED");
    assertThat(write(findings())).isEmpty();
  }

  private List<String> write(LeverFindings findings) throws Exception {
    return LeverBars.write(
            findings, THOUSAND, LocalDate.of(2026, 1, 2), directory, List.of(ChartFiles.Format.SVG))
        .stream()
        .map(file -> file.getFileName().toString())
        .toList();
  }
}
