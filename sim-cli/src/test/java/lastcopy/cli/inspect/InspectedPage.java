package lastcopy.cli.inspect;

import java.util.List;
import java.util.Optional;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.PossibleStudios;

/** The plain page of a scenario, without its defaults. */
final class InspectedPage {

  private InspectedPage() {}

  static String of(String scenario, boolean all) throws ScenarioException {
    PossibleStudios studios = ScenarioReader.parse("quay.yaml", scenario).studios();
    List<Outlook> outlooks = Outlook.of(studios.central());
    return InspectText.render(
        studios,
        outlooks,
        RoomAndTime.usual(studios.central(), outlooks),
        List.of(),
        Optional.empty(),
        all,
        PageLook.PLAIN);
  }
}
