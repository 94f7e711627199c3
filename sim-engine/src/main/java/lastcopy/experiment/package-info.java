/**
 * What is asked of a simulation and what it answers: {@link lastcopy.experiment.Settings} says how
 * to simulate, {@link lastcopy.experiment.Progress} is told how it gets on and may stop it, and
 * {@link lastcopy.experiment.Comparison} holds what comes of it, a {@link
 * lastcopy.experiment.LayoutResult} for each layout, each figure with its interval. Records alone;
 * nothing here simulates.
 */
package lastcopy.experiment;
