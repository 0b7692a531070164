package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import sopwell.call.CallParser;
import sopwell.call.CallRefusal;
import sopwell.call.Span;
import sopwell.counter.CallView.Fix;
import sopwell.counter.CallView.Piece;

/** What one tap could do about a call that can't be read, and where to point. Stateless. */
final class Fixes {
    private Fixes() {}

    /** The line of the call that a refusal is about, cut at the places that it names. */
    static List<Piece> mirror(String text, CallRefusal refusal) {
        boolean[] marked = new boolean[text.length()];
        mark(marked, refusal.column(), refusal.length());
        mark(marked, refusal.otherColumn(), refusal.otherLength());
        return mirror(text, marked, place(refusal), refusal.column() - 1 + refusal.length());
    }

    /** The line of the call around one place. */
    static List<Piece> mirror(String text, int column, int length) {
        boolean[] marked = new boolean[text.length()];
        mark(marked, column, length);
        return mirror(text, marked, column - 1, column - 1 + length);
    }

    private static List<Piece> mirror(String text, boolean[] marked, int start, int end) {
        int first = text.lastIndexOf(',', Math.max(0, start - 1)) + 1;
        int next = text.indexOf(',', Math.max(0, end - 1));
        int last = next < 0 ? text.length() : next;
        List<Piece> pieces = new ArrayList<>();
        if (first > 0) {
            pieces.add(new Piece("… ", false));
        }
        int from = first;
        for (int at = first + 1; at <= last; at++) {
            if (at == last || marked[at] != marked[from]) {
                pieces.add(new Piece(text.substring(from, at), marked[from]));
                from = at;
            }
        }
        return pieces;
    }

    private static int place(CallRefusal refusal) {
        return refusal.otherColumn() == 0
                ? refusal.column() - 1
                : Math.min(refusal.column(), refusal.otherColumn()) - 1;
    }

    private static void mark(boolean[] marked, int column, int length) {
        for (int at = Math.max(0, column - 1); at < column - 1 + length; at++) {
            if (at < marked.length) {
                marked[at] = true;
            }
        }
    }

    /** The texts that would be right, the likeliest first. */
    static List<Fix> of(String text, CallRefusal refusal, CallParser parser, Phrases t) {
        List<Fix> fixes = new ArrayList<>();
        switch (refusal.why()) {
            case UNKNOWN_WORD, TWO_ITEMS, QUANTITY_PLACE ->
                    refusal.suggestions().forEach(s -> fixes.add(replace(text, refusal, s)));
            case NOT_FOR_ITEM ->
                    refusal.suggestions()
                            .forEach(s -> fixes.add(forItem(text, refusal, s, parser)));
            case NO_ITEM, NO_WHAT, SIZE_MISSING, TOO_FEW ->
                    refusal.suggestions().forEach(s -> fixes.add(add(text, refusal, s)));
            case SIZE_TWICE, QUANTITY_TWICE, WANTED_AND_REFUSED, CLASH ->
                    keepOne(text, refusal, t, fixes);
            case TOO_MANY ->
                    fixes.add(
                            new Fix(
                                    t.of("counter.without", typed(text, refusal)),
                                    cut(text, refusal.column(), refusal.length())));
            case TOO_LONG, EMPTY, TOO_MANY_LINES, QUANTITY_RANGE -> {}
        }
        return fixes;
    }

    private static Fix replace(String text, CallRefusal refusal, String by) {
        int from = refusal.column() - 1;
        return new Fix(by, text.substring(0, from) + by + text.substring(from + refusal.length()));
    }

    private static Fix add(String text, CallRefusal refusal, String more) {
        int at = Math.min(text.length(), refusal.column() - 1 + refusal.length());
        String rest = text.substring(at);
        return new Fix(more, trimmedEnd(text.substring(0, at)) + " " + more + rest);
    }

    /** A size stands in for the word at fault, another item for the item that can't take it. */
    private static Fix forItem(String text, CallRefusal refusal, String by, CallParser parser) {
        boolean item = parser.read(by).spans().stream().anyMatch(s -> s.role() == Span.Role.ITEM);
        if (!item || refusal.otherColumn() == 0) {
            return replace(text, refusal, by);
        }
        int from = refusal.otherColumn() - 1;
        String after = text.substring(from + refusal.otherLength());
        return new Fix(by, text.substring(0, from) + by + after);
    }

    private static void keepOne(String text, CallRefusal refusal, Phrases t, List<Fix> fixes) {
        int other = refusal.otherColumn() - 1;
        if (other < 0) {
            return;
        }
        String first = text.substring(other, other + refusal.otherLength());
        fixes.add(
                new Fix(
                        t.of("counter.keep", first),
                        cut(text, refusal.column(), refusal.length())));
        fixes.add(
                new Fix(
                        t.of("counter.keep", typed(text, refusal)),
                        cut(text, refusal.otherColumn(), refusal.otherLength())));
    }

    private static String typed(String text, CallRefusal refusal) {
        int from = refusal.column() - 1;
        return text.substring(from, Math.min(text.length(), from + refusal.length()));
    }

    private static String cut(String text, int column, int length) {
        String before = trimmedEnd(text.substring(0, column - 1));
        String after = trimmedStart(text.substring(column - 1 + length));
        boolean glued = before.isEmpty() || after.isEmpty() || after.startsWith(",");
        return before + (glued ? "" : " ") + after;
    }

    /**
     * Java and the browser's Java differ over which spaces strip takes away, so it is said here.
     */
    private static String trimmedEnd(String text) {
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) <= ' ') {
            end--;
        }
        return text.substring(0, end);
    }

    private static String trimmedStart(String text) {
        int start = 0;
        while (start < text.length() && text.charAt(start) <= ' ') {
            start++;
        }
        return text.substring(start);
    }
}
