package lastcopy.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * Published records in the test resources; the first line of each file says where they are from.
 */
final class DataSets {

  private DataSets() {}

  static Records of(String name) {
    return new Records(
        rows(name).stream()
            .map(
                row ->
                    new LifeRecord(
                        Double.parseDouble(row[0]),
                        Double.parseDouble(row[1]),
                        Double.parseDouble(row[2]),
                        row[3].equals("1")))
            .toList());
  }

  /** The cells below the header. */
  static List<String[]> rows(String name) {
    try (InputStream in = DataSets.class.getResourceAsStream(name + ".csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Failures at known ages, all watched from new. */
  static Records failures(double... ages) {
    return new Records(Arrays.stream(ages).mapToObj(age -> LifeRecord.failedAt(0, age)).toList());
  }
}
