package lastcopy.oracle;

import java.util.Map;
import org.junit.jupiter.api.Test;

class OracleComparisonTest {
  @Test
  void x() {
    int n = Integer.getInteger("oracle.n", 2000);
    String only = System.getProperty("oracle.only", "");
    Harsh.all()
        .forEach(
            (name, studio) -> {
              if (!name.contains(only)) return;
              try {
                long t0 = System.nanoTime();
                Map<String, Figures.Mean> mine = Figures.ofOracle(studio, n, 1);
                long t1 = System.nanoTime();
                System.out.printf("%n== %s  oracle %.2f s%n", name, (t1 - t0) / 1e9);
                Map<String, Figures.Mean> theirs;
                try {
                  theirs = Figures.ofEngine(studio, 10L * n);
                } catch (UnsupportedOperationException e) {
                  theirs = mine;
                  System.out.println("  engine: " + e.getMessage());
                }
                System.out.printf(" engine %.2f s%n", (System.nanoTime() - t1) / 1e9);
                for (String k : mine.keySet()) {
                  Figures.Mean a = mine.get(k), b = theirs.get(k);
                  double z = (a.value() - b.value()) / Math.hypot(a.error(), b.error());
                  System.out.printf(
                      "  %-16s oracle %.5g ± %.2g engine %.5g ± %.2g  z %.1f%s%n",
                      k,
                      a.value(),
                      a.error(),
                      b.value(),
                      b.error(),
                      z,
                      Math.abs(z) > 3.5 ? "   <<<<" : "");
                }
              } catch (RuntimeException e) {
                System.out.println("FAILED " + name);
                e.printStackTrace(System.out);
              }
            });
  }
}
