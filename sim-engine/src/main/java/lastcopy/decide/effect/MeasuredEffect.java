package lastcopy.decide.effect;

import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;

/**
 * What a change does to a layout. Differences are those of the changed layout less the layout as it
 * is: below 0 is less loss, or less money.
 *
 * @param id of the alternative
 * @param result what the changed layout loses and costs
 * @param difference of the chance of any loss; holds together with those of all others
 * @param bytesDifference of the expected bytes lost; the same
 * @param moneyDifference of the expected money lost; the same; empty where a shoot has no worth
 * @param costDifference of what it costs, by itself; empty where nothing is priced
 * @param direction of the chance of any loss
 */
public record MeasuredEffect(
    String id,
    LayoutResult result,
    Estimate difference,
    Estimate bytesDifference,
    Optional<Estimate> moneyDifference,
    Optional<Estimate> costDifference,
    Direction direction) {}
