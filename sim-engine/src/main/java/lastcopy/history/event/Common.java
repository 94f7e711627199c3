package lastcopy.history.event;

import lastcopy.history.state.HistoryState;

/**
 * What every mechanism needs that takes footage away.
 *
 * @param state how things stand
 * @param tracker told before anything disturbs the undisturbed course
 * @param rule told what struck and what was removed
 * @param narrator told what happens
 * @param spending told what is paid for
 */
public record Common(
    HistoryState state,
    CourseTracker tracker,
    LossRule rule,
    Narrator narrator,
    Spending spending) {}
