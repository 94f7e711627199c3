package lastcopy.cli.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files with mistakes: all are told with their place, nothing is guessed and nothing written. */
class RecordsFileTest {

  private static final Pattern TOLD =
      Pattern.compile(
          "(lastcopy: )?\\S*records\\.csv:[1-9]\\d*:[1-9]\\d*: found .+; accepted: .+"
              + "|\\.\\.\\. and [0-9,]+ more like these",
          Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void allMistakesAreToldWithTheirPlaces() throws IOException {
    FitRun run =
        FitRun.of(
            folder,
            """
            entry,exit,failed,last_seen_running,note
            0,100,1,,fine
            0,"abc",1,,
            50,40,maybe,,"a, b"
            0,100,0,90,
            10,100,1,5,
            0,100
            -3,100,1,,
            0,1e9,1,,
            """,
            "--json",
            folder.resolve("out.json").toString());
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("out.json")).doesNotExist();
    assertThat(run.err().replace(folder + "/", "").replace("lastcopy: ", ""))
        .isEqualTo(
            """
            records.csv:3:3: found 'abc'; accepted: an age in hours from 0 to 200 years, such as\
             1234.5.
            records.csv:4:7: found 'maybe'; accepted: 1 or yes, 0 or no.
            records.csv:5:9: found '90' beside a drive that still runs; accepted: nothing there.
            records.csv:6:10: found '5', outside of its record; accepted: a time from when its\
             record begins until it was found failed.
            records.csv:7:1: found 2 cells; accepted: 5, as in the header.
            records.csv:8:1: found '-3'; accepted: an age in hours from 0 to 200 years, such as\
             1234.5.
            records.csv:9:3: found '1e9'; accepted: an age in hours from 0 to 200 years, such as\
             1234.5.
            """);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2020-01-01,2020-02-30,no | 2:12 | '2020-02-30'",
        "2020-01-01,2027-01-01,no | 2:12 | '2027-01-01'",
        "2020-01-01,03/04/2021,no | 2:12 | '03/04/2021'",
        "2020-01-01,2020-01-01,no | 2:12 | not after its record begins",
        "2021-01-01,2020-01-01,no | 2:12 | not after its record begins",
        "1949-12-31,2020-01-01,no | 2:1 | '1949-12-31'",
        "20-01-01,2020-01-01,no | 2:1 | '20-01-01'",
      })
  void wrongDatesAreTold(String line, String place, String found) throws IOException {
    FitRun run = FitRun.of(folder, "in_service,until,failed\n" + line + "\n");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("records.csv:" + place + ": found ").contains(found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "exit;failed | cells parted by semicolons or tabs",
        "exit,faild | Did you mean 'failed'?",
        "exit | no column 'failed'",
        "exit,failed,exit | the column 'exit' twice",
        "in_service,until,failed,entry | ages beside dates",
        "exit,failed,model,group | both model and group",
        "exit,failed | no records",
        "'' | no records",
      })
  void wrongHeadersAreTold(String header, String found) throws IOException {
    FitRun run = FitRun.of(folder, header + "\n");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains(found);
  }

  /** Spreadsheets write a mark at the start, other line ends, quotes, spaces and empty lines. */
  @Test
  void whatSpreadsheetsWriteIsRead() throws IOException {
    FitRun plain = FitRun.of(folder, "exit,failed\n10,1\n20,0\n", "--json", "-");
    FitRun sheet =
        FitRun.of(
            folder, "\uFEFF\"Exit\", failed \r\n\r\n\"10\",YES\r\n 20 ,no\r\n", "--json", "-");
    assertThat(sheet.err()).isEmpty();
    assertThat(sheet.json()).isEqualTo(plain.json());
  }

  @Test
  void atMostFiftyAreShown() throws IOException {
    FitRun run = FitRun.of(folder, "exit,failed\n" + "x,1\n".repeat(1_000));
    assertThat(run.err().lines()).hasSize(51);
    assertThat(run.err()).endsWith("... and 950 more like these\n");
  }

  @Test
  void tooManyGroupsAreAColumnOfAnotherMeaning() throws IOException {
    StringBuilder records = new StringBuilder("exit,failed,model\n");
    for (int i = 0; i < 60; i++) {
      records.append("10,1,serial").append(i).append('\n');
    }
    FitRun run = FitRun.of(folder, records.toString());
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("records.csv:52:6: found one more group 'serial50'");
    FitRun none = FitRun.of(folder, "exit,failed,model\n10,1,\n");
    assertThat(none.err()).contains("records.csv:2:6: found no name");
  }

  @Test
  void lettersOfAnotherCodeAreTold() throws IOException {
    Path file = folder.resolve("records.csv");
    Files.write(file, "exit,failed,model\n10,1,Gerät\n".getBytes(StandardCharsets.ISO_8859_1));
    FitRun run = FitRun.ofFile(file);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("letters that are not UTF-8");
  }

  /** Slips anywhere give a result, or mistakes with their places, and nothing else. */
  @Test
  void slipsAnywhereAreToldOrRead() throws IOException {
    String demo = Files.readString(Path.of("..", "scenarios", "records-of-a-studio.csv"));
    Random random = new Random(7);
    String slips = ",,\"\n\r;-0123456789abyesno \t\u202e.e+";
    int read = 0;
    for (int i = 0; i < 400; i++) {
      StringBuilder text = new StringBuilder(demo);
      for (int slip = 0; slip <= random.nextInt(3); slip++) {
        char c = slips.charAt(random.nextInt(slips.length()));
        int at = random.nextInt(text.length());
        if (random.nextBoolean()) {
          text.setCharAt(at, c);
        } else {
          text.insert(at, c);
        }
      }
      FitRun run = FitRun.of(folder, text.toString());
      assertThat(run.status()).as(run.err()).isIn(0, 3);
      read += run.status() == 0 ? 1 : 0;
      if (run.status() == 3) {
        assertThat(run.err().lines()).as(run.err()).allMatch(l -> TOLD.matcher(l).matches());
      }
    }
    assertThat(read).isBetween(5, 395);
  }
}
