package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.law.Exponential;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.jfree.chart.JFreeChart;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Room by year: its numbers and its axis, not its pixels. */
class RoomChartTest {

  @TempDir Path directory;

  /** A quarter of a TB each quarter for 2 years, on 1 TB and on a second room. */
  private static RoomChart.Pictured sample(double otherBytes) {
    Shoots quarterly = new Shoots(2_190, 0.25e12, Shoots.Spacing.EVEN);
    Studio studio =
        Studio.builder("Reed Bank Films", 2)
            .footage(Footage.builder(quarterly).build())
            .layout(Layout.of("small", main(1e12)))
            .layout(Layout.of("other", main(otherBytes)))
            .build();
    List<Outlook> outlooks = Outlook.of(studio);
    RoomAndTime room = RoomAndTime.of(studio, outlooks, 0.8, OptionalDouble.empty());
    return new RoomChart.Pictured("Reed Bank Films", outlooks, room, LocalDate.of(2026, 3, 14));
  }

  private static Copy main(double bytes) {
    DriveModel model = DriveModel.builder("d" + bytes, bytes).fails(new Exponential(1e6)).build();
    return Copy.builder("main")
        .at(Place.of("studio"))
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
        .build();
  }

  /** Red if the line is drawn from shoot to shoot as a slope. */
  @Test
  void footageGoesUpInSteps() {
    YIntervalSeriesCollection data = RoomChart.dataset(sample(2e12));
    assertThat(data.getSeriesKey(0).toString()).isEqualTo("footage");
    assertThat(data.getXValue(0, 1)).isCloseTo(0.25, within(1e-9));
    assertThat(data.getYValue(0, 1)).isZero();
    assertThat(data.getXValue(0, 2)).isCloseTo(0.25, within(1e-9));
    assertThat(data.getYValue(0, 2)).isEqualTo(0.25e12);
    int last = data.getItemCount(0) - 1;
    assertThat(data.getXValue(0, last)).isEqualTo(2);
    assertThat(data.getYValue(0, last)).isEqualTo(2e12);
  }

  /** Red if a room is drawn to the brim. */
  @Test
  void eachRoomEndsAtItsLimitAndIsNamedThere() {
    YIntervalSeriesCollection data = RoomChart.dataset(sample(2e12));
    assertThat(data.getSeriesCount()).isEqualTo(3);
    assertThat(data.getYValue(1, 0)).isEqualTo(0.8e12);
    assertThat(data.getYValue(2, 1)).isEqualTo(1.6e12);
    JFreeChart chart = RoomChart.of(sample(2e12));
    assertThat(chart.getXYPlot().getRangeAxis().getUpperBound()).isCloseTo(2.16e12, within(1.0));
    LabelledPlot plot = (LabelledPlot) chart.getXYPlot();
    assertThat(plot.labels().get(1).lines()).containsExactly("80 % of 1 TB", "small.main");
  }

  /** A room of 100 TB would press two TB of footage to the floor. */
  @Test
  void aRoomFarAboveIsToldInWords() throws Exception {
    RoomChart.Pictured far = sample(100e12);
    assertThat(RoomChart.dataset(far).getSeriesCount()).isEqualTo(2);
    assertThat(RoomChart.of(far).getXYPlot().getRangeAxis().getUpperBound()).isLessThan(3e12);
    List<Path> written = RoomChartFiles.writeAll(far, directory, List.of(ChartFiles.Format.SVG));
    assertThat(Files.readString(written.get(0)))
        .contains("<title", "Far above the picture: 80 % of 100 TB (other.main).")
        .doesNotContain("DOCTYPE");
  }
}
