/**
 * What all copies hold as long as nothing fails: the {@link
 * lastcopy.history.course.UndisturbedCourse}, recorded once for all histories where shoots are
 * even, reckoned in each where they come at random; when footage then stands in one copy only, and
 * how much is stored for how long.
 */
package lastcopy.history.course;
