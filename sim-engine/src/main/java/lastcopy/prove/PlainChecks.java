package lastcopy.prove;

import java.util.function.DoubleSupplier;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.law.Weibull;
import lastcopy.outlook.Ethernet;
import lastcopy.random.KeyedRandom;
import lastcopy.scenario.Units;

/** Laws, intervals, the generator and links: what everything else rests on. */
final class PlainChecks {

  private PlainChecks() {}

  static Topic laws() {
    Weibull life = new Weibull(1.12, 461_386, 0);
    Weibull restore = new Weibull(2, 12, 6);
    Weibull scrub = new Weibull(3, 168, 6);
    return new Topic("Laws of Elerath, Pecht, DSN 2007")
        .from("values of the stated laws, from R, scipy or mpmath")
        .printed("mean life, h", "442625.54", life::mean)
        .printed("fails within a year", ".01172986", () -> failsBy(life, 8_760))
        .printed("fails within 10 years", ".14405034", () -> failsBy(life, 87_600))
        .printed("mean restore, h", "16.63472", restore::mean)
        .printed("mean scrub, h", "156.02056", scrub::mean);
  }

  private static double failsBy(Weibull life, double hours) {
    return -Math.expm1(-life.cumulativeHazard(hours));
  }

  static Topic intervals() {
    Topic topic =
        new Topic("Intervals for a share")
            .from("cases of Newcombe, Statistics in Medicine 17:857, 1998; exact 95 %");
    ends(topic, 81, 263, ".252737", ".367622");
    ends(topic, 15, 148, ".057844", ".161650");
    ends(topic, 1, 29, ".000873", ".177644");
    DoubleSupplier none = () -> of(0, 1_000).high();
    return topic
        .from("no event in n: exact one-sided, 1 - .05^(1/n)")
        .printed("0 of 1,000, at most", ".00299125", none)
        .from("rule of three, 3/n: Hanley, Lippman-Hand, JAMA 1983")
        .approximation(
            "0 of 1,000, at most", () -> Reference.approximation(".003", -0.004, -0.002), none);
  }

  private static void ends(Topic topic, long successes, long n, String low, String high) {
    String what = successes + " of " + n;
    topic
        .printed(what + ", lower end", low, () -> of(successes, n).low())
        .printed(what + ", upper end", high, () -> of(successes, n).high());
  }

  private static Estimate of(long successes, long n) {
    return Proportions.of(successes, n, 0.95);
  }

  static Topic random() {
    KeyedRandom random = new KeyedRandom(1_234_567);
    return new Topic("Random numbers")
        .from("SplitMix64 with seed 1234567, reference outputs, to 53 bits")
        .printed("first output", "6457827717110365317", () -> output(random, 0))
        .printed("second output", "3203168211198807973", () -> output(random, 1))
        .printed("third output", "9817491932198370423", () -> output(random, 2));
  }

  private static double output(KeyedRandom random, int index) {
    return Double.parseDouble(Long.toUnsignedString(random.historyKey(index)));
  }

  static Topic links() {
    return new Topic("Links")
        .from("frame of IEEE 802.3: 1,538 bytes on the wire carry 1,460")
        .printed("Gigabit, MB/s", "118.7", () -> Ethernet.ceiling(1e9) / Units.MB)
        .from("the same with timestamps: 1,448")
        .printed("Gigabit, MB/s", "117.7", () -> timestamped(1e9))
        .printed("2.5 Gbit/s, MB/s", "294", () -> timestamped(2.5e9))
        .printed("10 Gbit/s, MB/s", "1177", () -> timestamped(1e10));
  }

  private static double timestamped(double bitsPerSecond) {
    return Ethernet.ceilingWithTimestamps(bitsPerSecond) / Units.MB;
  }
}
