package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Audience;
import lastcopy.kernel.SimulationClock;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** Unreadable spots of drives: born, scrubbed and born again by hand, and their exact chance. */
class DefectsTest {

  private final Draws draws = new Draws(1);
  private Plan plan;
  private SimulationClock time;
  private Clocks clocks;
  private Defects defects;
  private final Audience audience = new Audience();

  private void start(Law spots, Law scrub) {
    DriveModel model = DriveModel.builder("m", 1e12).fails(new Exponential(1e4)).build();
    Medium set =
        Medium.DriveSet.builder(Arrangement.MIRROR, 2)
            .of(model)
            .latentDefects(spots)
            .scrub(scrub)
            .build();
    Footage footage =
        Footage.builder(new Shoots(1e9, 1, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(set).build());
    plan = Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout);
    time = new SimulationClock(plan.timers().priorities(), plan.horizon());
    clocks = new Clocks(plan, draws, time);
    defects = new Defects(plan, draws, time, clocks, new UnlikelyDraws(plan, clocks, audience));
    clear();
  }

  private void clear() {
    time.clear();
    clocks.clear();
    defects.clear();
  }

  /** Told of draws of the working copy's defects, the only channel. */
  private static final class Told extends lastcopy.simulate.count.LossLedger {
    private int risked;
    private int came;
    private double chance;

    @Override
    public void lost(lastcopy.history.report.Loss loss) {
      throw new AssertionError("nothing is lost");
    }

    @Override
    public void risked(int channel, double badly) {
      assertThat(channel).isZero();
      risked++;
      chance = Math.max(chance, badly);
    }

    @Override
    public void cameOutBadly(int channel) {
      assertThat(channel).isZero();
      came++;
    }
  }

  private void aliveAt(double hours, boolean alive) {
    time.passTo(hours);
    assertThat(defects.alive(0)).as("at %s h", hours).isEqualTo(alive);
  }

  /** Born 100 h after service begins or a scrub; scrubbed 30 h later. */
  @Test
  void oneAfterAnother() {
    start(new Fixed(100), new Fixed(30));
    draws.start(1);
    defects.begin(0, 0, 5);
    aliveAt(104, false);
    aliveAt(105, true);
    assertThat(defects.countMeeting(0)).isEqualTo(0);
    long first = defects.spot(0);
    aliveAt(134, true);
    assertThat(defects.countMeeting(0)).isEqualTo(1);
    aliveAt(135, false);
    aliveAt(234, false);
    aliveAt(235, true);
    assertThat(defects.countMeeting(0)).as("another defect").isEqualTo(0);
    assertThat(defects.spot(0)).isNotEqualTo(first);
    aliveAt(360, false); // scrubbed at 265, born at 365
    aliveAt(380, true);
    long third = defects.spot(0);
    defects.begin(0, 1, 400);
    aliveAt(499, false);
    aliveAt(500, true);
    assertThat(defects.spot(0)).isNotIn(first, third);
    time.passTo(510);
    defects.again(0);
    aliveAt(609, false);
    aliveAt(610, true);
    clear();
    defects.begin(0, 0, 5);
    aliveAt(105, true);
    assertThat(defects.spot(0)).as("the same history again").isEqualTo(first);
  }

  @Test
  void withoutAScrubItStays() {
    start(new Fixed(100), new lastcopy.law.Never());
    draws.start(1);
    defects.begin(0, 0, 0);
    aliveAt(99, false);
    aliveAt(8_000, true);
  }

  /** Looked at twice, with a hazard that rises: (500/10,000)² by then, and none is found before. */
  @Test
  void whatWasNotThereMayStillCome() {
    start(new Weibull(2, 1e4, 0), new lastcopy.law.Never());
    double[][] factors = new double[plan.groups().count()][2 * Levels.of(plan).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    clocks.bias(Bias.of(factors), null);
    int many = 20_000;
    double first = 0;
    double second = 0;
    double squares = 0;
    for (int history = 0; history < many; history++) {
      draws.start(history);
      clear();
      defects.begin(0, 0, 0);
      time.passTo(200);
      first += defects.alive(0) ? clocks.weight() : 0;
      time.passTo(500);
      double weight = defects.alive(0) ? clocks.weight() : 0;
      second += weight;
      squares += weight * weight;
    }
    assertThat(first / many).isCloseTo(4e-4, within(4e-5));
    double error = Math.sqrt(squares) / many;
    assertThat(second / many).isCloseTo(-Math.expm1(-.0025), within(5 * error));
    assertThat(error).isLessThan(1e-4);
  }

  /**
   * One that comes at λ an hour and goes at μ is there at t with λ/(λ + μ)·(1 − exp(−(λ + μ)t)), as
   * any two-state chain (Ross, Introduction to Probability Models, 10th ed. 2010, 6.4). The
   * weighted share of biased histories is that, within five standard errors, and far more than it
   * have one.
   */
  @Test
  void aBiasMakesThemCommonerAndKeepsTheirChance() {
    start(new Exponential(1e6), new Exponential(200));
    double[][] factors = new double[plan.groups().count()][2 * Levels.of(plan).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    clocks.bias(Bias.of(factors), null);
    Told told = new Told();
    audience.counts(told);
    int many = 20_000;
    int alive = 0;
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (int history = 0; history < many; history++) {
      draws.start(history);
      clear();
      defects.begin(0, 0, 0);
      time.passTo(500);
      boolean one = defects.alive(0);
      double weight = clocks.weight();
      double places = clocks.likelihood().statistics().places();
      assertThat(places).isCloseTo(Math.log(weight), within(1e-9));
      weights += weight;
      alive += one ? 1 : 0;
      sum += one ? weight : 0;
      squares += one ? weight * weight : 0;
    }
    double exact = 200 / (1e6 + 200) * -Math.expm1(-(1e-6 + 1 / 200.0) * 500);
    assertThat(sum / many).isCloseTo(exact, within(5 * Math.sqrt(squares) / many));
    assertThat(weights / many).isCloseTo(1, within(.02));
    assertThat(told.risked).as("once, and again after a scrub").isBetween(many, many + many / 10);
    assertThat(told.came).isEqualTo(alive);
    // the hazards of three halvings and what is left, 1, 1/2, 1/4 and 1/8 of each
    assertThat(told.chance).isCloseTo(2.531e-4, within(1e-7));
    // The hazard is to be 0.0856, 0.3 over two drives and the 1.752 failures of a year, where each
    // halving of the chance that no scrub has come counts half: 338 times its own at first. Left of
    // it by scrubs, over 138.6 h each but the last: (100·338 + 50·170 + 25·85 + 9·43)·1e-6 =
    // 0.0448.
    assertThat(alive / (double) many).as("of %s", exact).isBetween(.037, .052);
  }

  /** The first of a drive, the second after a scrub, a third after its copy was gone. */
  @Test
  void noSpotIsWhereOneWasBefore() {
    start(new Fixed(100), new Fixed(30));
    draws.start(1);
    defects.begin(0, 0, 0);
    aliveAt(100, true);
    long first = defects.spot(0);
    aliveAt(130, false);
    defects.again(0);
    aliveAt(230, true);
    assertThat(defects.spot(0)).isNotEqualTo(first);
  }

  @Test
  void aDriveThatDoesNotServeInAHistoryHasNone() {
    start(new Fixed(100), new lastcopy.law.Never());
    draws.start(1);
    defects.begin(0, 0, 0);
    aliveAt(100, true);
    clear();
    aliveAt(200, false);
  }

  private void biasOfOne() {
    double[][] factors = new double[plan.groups().count()][2 * Levels.of(plan).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    clocks.bias(Bias.of(factors), null);
    clear();
  }

  private double budget(int count) {
    LatentDefect of = new LatentDefect(plan.slot(0), plan.copy(0).set());
    of.count = count;
    return draws.budget(of.key(Draws.DEFECT));
  }

  /**
   * Where a bias raises nothing, spots come as they fall: one after another, 300 h times a budget
   * after the last was scrubbed, and only looked for at 2,000 h.
   */
  @Test
  void whatIsNotRaisedComesAsItFalls() {
    start(new Exponential(300), new Fixed(30));
    biasOfOne();
    int found = 0;
    for (int history = 0; history < 300; history++) {
      draws.start(history);
      clear();
      clocks.endBias();
      defects.begin(0, 0, 0);
      double born = 300 * budget(0);
      for (int count = 1; born + 30 <= 2_000; count++) {
        born += 30 + 300 * budget(count);
      }
      aliveAt(2_000, born <= 2_000);
      found += born <= 2_000 ? 1 : 0;
    }
    assertThat(found).as("300 times 30/330").isBetween(5, 60);
  }

  /** (t/10,000)² of a drive that serves from 100 h on, looked at halfway, scrubbed after 30 h. */
  @Test
  void aSpotComesByTheAgeOfItsDrive() {
    start(new Weibull(2, 1e4, 0), new Fixed(30));
    biasOfOne();
    long history = 0;
    do {
      draws.start(history++);
    } while (budget(0) < .1 || budget(0) > .5);
    clocks.endBias();
    defects.begin(0, 0, 100);
    double born = 100 + 1e4 * Math.sqrt(budget(0));
    aliveAt(born / 2, false);
    aliveAt(born + 20, true);
    aliveAt(born + 31, false);
    clear();
    clocks.endBias();
    defects.begin(0, 0, 100);
    aliveAt(born - 1, false);
    aliveAt(born + 1, true);
  }

  /** Half the scrubs have come within 200·ln 2 h. */
  private static final double HALF = 200 * Math.log(2);

  /** 0.3 spots, by two drives and the 2·8,760/10,000 failures of a year. */
  private static double wanted(double year) {
    return .3 / 2 / (2 * year / 1e4);
  }

  private void noneWith(double hazardPerHour, double... looks) {
    start(new Exponential(1 / hazardPerHour), new Exponential(200));
    biasOfOne();
    for (long history = 0; ; history++) {
      draws.start(history);
      clear();
      defects.begin(0, 0, 0);
      boolean none = true;
      for (double at : looks) {
        time.passTo(at);
        none &= !defects.alive(0);
      }
      if (none) {
        return;
      }
    }
  }

  /**
   * By a hazard of 1e-6 an hour as many as are wanted would be there in the mean, by what scrubs
   * leave of the last half-life all, of the one before half, and so on: where none has come, its
   * likelihood ratio is the exponential of what was added.
   */
  @Test
  void theHazardIsRaisedToWhatIsWanted() {
    noneWith(1e-6, 500);
    double left = 1e-6 * (HALF * (1 + .5 + .25) + (500 - 3 * HALF) / 8);
    double first = Math.exp(wanted(plan.horizon()) - left);
    assertThat(clocks.weight()).isCloseTo(first, within(1e-12));
    noneWith(1e-6, 500, 700);
    double more = 1e-6 * (HALF + (200 - HALF) / 2);
    double second = Math.exp(wanted(plan.horizon()) - more);
    assertThat(clocks.weight()).isCloseTo(first * second, within(1e-12));
  }

  /** Raised by 2.4 times itself: halved twice and no more, as the next half would be below it. */
  @Test
  void theRaiseIsHalvedUntilItIsLessThanTheHazard() {
    noneWith(1e-4, 500);
    double left = 1e-4 * (HALF * (1 + .5 + .25) + (500 - 3 * HALF) / 8);
    double raise = wanted(plan.horizon()) / left - 1;
    assertThat(raise).isBetween(2.0, 4.0);
    double added = raise * 1e-4 * (HALF + HALF / 2 + (500 - 2 * HALF) / 4);
    assertThat(clocks.weight()).isCloseTo(Math.exp(added), within(1e-12));
  }

  @Test
  void whatComesForCertainIsNotRaised() {
    start(new Fixed(100), new Fixed(30));
    biasOfOne();
    draws.start(1);
    defects.begin(0, 0, 0);
    aliveAt(50, false);
    assertThat(clocks.weight()).isEqualTo(1);
    aliveAt(100, true);
    assertThat(clocks.weight()).isEqualTo(1);
  }
}
