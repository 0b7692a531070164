package sopwell.call;

import java.util.List;
import sopwell.Limits;
import sopwell.menu.Wishes;

/** What must hold of every reading, whatever was read. */
final class Readings {
    private Readings() {}

    /** Reads a text and looks at everything that came of it. */
    static Reading check(CallParser parser, String text) {
        Reading reading = parser.read(text);
        require(reading.equals(parser.read(text)), "the same text reads the same", text);
        spans(reading, text);
        reading.refusal().ifPresent(refusal -> refusal(refusal, text));
        int end = 0;
        for (CallLine line : reading.lines()) {
            require(line.quantity() >= 1, "quantities are at least 1", text);
            require(line.quantity() <= Limits.LINE_QUANTITY_MAX, "quantities are limited", text);
            require(line.column() > end, "lines stand one after another", text);
            end = line.column() + line.length() - 1;
            require(end <= text.length(), "lines stand in the text", text);
            boolean allowed =
                    Wishes.fault(parser.menu(), Wishes.asked(parser.menu(), line.selection()))
                            .isEmpty();
            require(allowed, "the menu allows what was read", text);
        }
        require(reading.lines().size() <= Limits.ORDER_LINES_MAX, "lines are limited", text);
        boolean ordered = reading.refusal().isPresent() || !reading.lines().isEmpty();
        require(ordered, "a call without refusal has lines", text);
        int column = reading.live().column();
        require(column >= 1 && column <= text.length() + 1, "live words have a place", text);
        return reading;
    }

    private static void spans(Reading reading, String text) {
        int end = 0;
        for (Span span : reading.spans()) {
            require(span.column() > end && span.length() > 0, "spans do not overlap", text);
            end = span.column() + span.length() - 1;
            require(end <= text.length(), "spans stand in the text", text);
        }
    }

    private static void refusal(CallRefusal refusal, String text) {
        place(refusal.column(), refusal.length(), text);
        require(refusal.suggestions().size() <= 3, "there are at most 3 suggestions", text);
        if (refusal.otherColumn() > 0) {
            place(refusal.otherColumn(), refusal.otherLength(), text);
            require(refusal.otherColumn() != refusal.column(), "a clash has two places", text);
        } else {
            require(refusal.otherLength() == 0, "no place has no length", text);
        }
        boolean quotes =
                switch (refusal.why()) {
                    case EMPTY, TOO_LONG, TOO_MANY_LINES -> false;
                    default -> true;
                };
        if (quotes) {
            int start = refusal.column() - 1;
            String typed = text.substring(start, start + refusal.length());
            require(List.of(typed).equals(refusal.args().subList(0, 1)), "typed is quoted", text);
        }
    }

    private static void place(int column, int length, String text) {
        boolean inside = column >= 1 && length >= 0 && column - 1 + length <= text.length();
        require(inside, "faults stand in the text", text);
    }

    private static void require(boolean holds, String law, String text) {
        if (!holds) {
            throw new AssertionError(law + ", but not in: " + quoted(text));
        }
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder();
        text.chars()
                .forEach(
                        c ->
                                out.append(
                                        c >= ' ' && c < 0x7f
                                                ? "" + (char) c
                                                : String.format("\\u%04x", c)));
        return out.toString();
    }
}
