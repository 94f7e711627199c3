package lastcopy.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Supplier;
import lastcopy.law.Exponential;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds and what fails, by hand; that all of the list hold is a test of the command. */
class ProofTest {

  private static final Proof PROOF = new Proof(1, 2);

  /** A figure agrees with a printed one if it rounds to it. */
  @ParameterizedTest
  @CsvSource({
    "0.0333, .03334, true",
    "0.0333, .03336, false",
    "8.2e5, 818182, true",
    "820000, 818182, false",
    "32.0, 31.963, true",
    "32.00, 31.963, false",
    "1.50, 1.505, true",
    "0, .4, true",
    "0, .6, false"
  })
  void printedValuesSayHowPreciseTheyAre(String printed, double ours, boolean holds) {
    assertThat(holds(() -> Reference.published(printed), ours)).isEqualTo(holds);
  }

  @Test
  void exactValuesAllowOnlyRounding() {
    assertThat(holds(() -> Reference.exact(1e-6), 1.0000000005e-6)).isTrue();
    assertThat(holds(() -> Reference.exact(1e-6), 1.00000001e-6)).isFalse();
  }

  /** Without the deviation that an approximation is known for, something is wrong too. */
  @ParameterizedTest
  @CsvSource({"99, true", "100, false", "97, false"})
  void approximationsDeviateByWhatIsExpected(double ours, boolean holds) {
    Supplier<Reference> reference = () -> Reference.approximation("100", -0.02, -0.005);
    assertThat(holds(reference, ours)).isEqualTo(holds);
  }

  /**
   * A drive of 10,000 h over a year loses in 1 − e^(−.876) = .58356 of histories; with 50,000 of
   * them an error of 3 % is 8 standard errors. The interval shown is that of 95 %: half width 1.96
   * √(p(1−p)/n) = .0043.
   */
  @ParameterizedTest
  @CsvSource({".58356, true", ".602, false", ".566, false"})
  void theEngineIsHeldAgainstItsReference(String printed, boolean holds) {
    Topic topic =
        new Topic("t")
            .engine(
                "w",
                () -> Reference.published(printed),
                () -> Rig.single(new Exponential(10_000)).over(1));
    Finding finding = PROOF.of(topic.checks()).get(0);
    assertThat(finding.holds()).isEqualTo(holds);
    assertThat(finding.ours().high() - finding.ours().low()).isCloseTo(.0086, within(.0001));
    assertThat(finding.from()).isLessThan(finding.ours().low());
    assertThat(finding.to()).isGreaterThan(finding.ours().high());
  }

  @Test
  void everyCheckHasItsSource() {
    assertThat(Checks.all())
        .allSatisfy(check -> assertThat(check.source()).isNotBlank())
        .doesNotHaveDuplicates();
  }

  private static boolean holds(Supplier<Reference> reference, double ours) {
    Check check = new Check("t", "s", "w", reference, new Figure.Computed(() -> ours));
    return Proof.holds(PROOF.of(List.of(check)));
  }
}
