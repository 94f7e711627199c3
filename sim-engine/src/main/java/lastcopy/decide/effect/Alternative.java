package lastcopy.decide.effect;

import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * A layout in a studio, as it is or with a change.
 *
 * @param id unique among those that are measured together
 * @param studio what the layout stands in; a change may be one of the studio
 * @param layout what is simulated
 */
public record Alternative(String id, Studio studio, Layout layout) {}
