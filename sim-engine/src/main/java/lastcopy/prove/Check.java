package lastcopy.prove;

import java.util.function.Supplier;

/**
 * One line of the proof: a figure of this program and what it is held against. It stores no figure
 * of its own but the printed one.
 *
 * @param topic the heading that it stands under
 * @param source where the reference comes from
 * @param what what the figure is, with its unit
 * @param reference what it is held against
 * @param figure how this program gets it
 */
public record Check(
    String topic, String source, String what, Supplier<Reference> reference, Figure figure) {}
