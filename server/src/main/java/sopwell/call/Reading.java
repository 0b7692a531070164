package sopwell.call;

import java.util.List;
import java.util.Optional;

/**
 * What a call's text was understood as. Immutable.
 *
 * @param lines the lines, or with a refusal those before the fault
 * @param refusal the first fault, if there is one; then nothing may be ordered from this text
 * @param spans what each piece of the whole text was understood as, in the order of the text; white
 *     space between them belongs to none
 * @param live what may be said next
 */
public record Reading(
        List<CallLine> lines, Optional<CallRefusal> refusal, List<Span> spans, LiveWords live) {
    public Reading {
        lines = List.copyOf(lines);
        spans = List.copyOf(spans);
    }

    /** The lines without their places in the text. */
    public List<Counted> counted() {
        return lines.stream().map(CallLine::counted).toList();
    }
}
