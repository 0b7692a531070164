package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.call.CallRefusal.Why;
import sopwell.call.Said.Choice;
import sopwell.call.Span.Role;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;

/**
 * Reads calls by the words of one menu. Immutable, thread-safe; building one takes longer than
 * reading many calls, so keep it as long as the menu.
 *
 * <p>How a call is read: commas, semicolons, line breaks and the menu's words for "and" part lines;
 * a line names one item; its size and modifiers stand before or after it in any order, the quantity
 * before it ("2", "2x", "two") or after it as "x2". The longest phrase of the menu wins, so "hot
 * and sweet" is one phrase and no two lines, unless it would leave a word over that a shorter one
 * doesn't; a slash keeps two words from being one phrase. "No" refuses the option after it, or all
 * of a bundle, and takes it out of a bundle that is wanted ("everything no onion"). An "and" before
 * modifiers alone goes on with the line ("dipped and hot"), unless that line refuses something: "no
 * hot and sweet" could mean either. Case, accents and white space don't matter. What is said twice
 * is said once. Empty lines are nothing, so a comma at the end does no harm.
 */
public final class CallParser {
    private final Menu menu;
    private final Vocabulary vocabulary;
    private final Slips slips;
    private final List<String> allItems;

    /** A parser for a menu without fault. */
    public CallParser(Menu menu) {
        this.menu = menu;
        vocabulary = new Vocabulary(menu);
        slips = new Slips(vocabulary);
        allItems = menu.items().stream().map(Item::id).toList();
    }

    /** The menu that calls are read by. */
    public Menu menu() {
        return menu;
    }

    Slips slips() {
        return slips;
    }

    /**
     * What a text was understood as; any text at all, never fails. Texts longer than {@link
     * Limits#CALL_CHARS_MAX} are refused unread.
     */
    public Reading read(String text) {
        int max = Limits.CALL_CHARS_MAX;
        if (text.length() > max) {
            CallRefusal refusal =
                    place(Why.TOO_LONG, max + 1, text.length() - max, List.of("" + max));
            LiveWords none = LiveWords.none(text.length() + 1);
            return new Reading(List.of(), Optional.of(refusal), List.of(), none);
        }
        return new Run(text).read();
    }

    private static CallRefusal place(Why why, int column, int length, List<String> args) {
        return new CallRefusal(why, column, length, args, List.of(), 0, 0);
    }

    /** One call being read. */
    private final class Run {
        private final int textLength;
        private final Tokens tokens;
        private final Segments segments;
        private final List<CallLine> lines = new ArrayList<>();
        private final List<Span> spans = new ArrayList<>();
        private CallRefusal refusal;
        private int count;
        private Segment last;
        private Said lastSaid;
        private boolean lastWhole;

        Run(String text) {
            textLength = text.length();
            tokens = Tokens.of(text);
            segments = new Segments(menu, vocabulary, tokens);
        }

        Reading read() {
            int at = 0;
            while (at < tokens.count()) {
                if (tokens.parts(at)) {
                    separator(at, at + 1);
                    at++;
                } else {
                    at = readPart(at);
                }
            }
            if (count == 0) {
                refusal = place(Why.EMPTY, 1, 0, List.of());
            }
            return new Reading(lines, Optional.ofNullable(refusal), spans, live());
        }

        /** Reads one line up to a comma or an "and" and gives the token after that. */
        private int readPart(int from) {
            int end = from;
            while (end < tokens.count() && !tokens.parts(end)) {
                end++;
            }
            Segment segment = segments.next(from, end);
            for (Piece piece : segment.pieces()) {
                spans.add(piece.span(tokens));
            }
            if (segment.saysSomething()) {
                readLine(segment, end);
            }
            int at = segment.end();
            if (at < end) {
                at = segments.andEnd(at, end);
                separator(segment.end(), at);
            }
            return at;
        }

        private void separator(int from, int to) {
            int start = tokens.start(from);
            spans.add(new Span(start + 1, tokens.end(to - 1) - start, Role.SEPARATOR, ""));
            last = null;
        }

        private void readLine(Segment segment, int end) {
            Said said = new Said(segment);
            count++;
            CallRefusal fault;
            if (count > Limits.ORDER_LINES_MAX) {
                fault = tooManyLines(segment);
            } else {
                fault = new Faults(CallParser.this, tokens, segment, said, end).first();
            }
            if (refusal == null && fault != null) {
                refusal = fault;
            }
            if (refusal == null) {
                lines.add(line(segment, said));
            }
            last = segment;
            lastSaid = said;
            lastWhole = fault == null && count < Limits.ORDER_LINES_MAX;
        }

        private CallRefusal tooManyLines(Segment segment) {
            int start = tokens.start(segment.pieces().get(0).from());
            int length = tokens.end(segment.end() - 1) - start;
            return place(
                    Why.TOO_MANY_LINES, start + 1, length, List.of("" + Limits.ORDER_LINES_MAX));
        }

        private CallLine line(Segment segment, Said said) {
            List<String> options = new ArrayList<>();
            for (Choice choice : said.wanted()) {
                options.add(choice.option());
            }
            List<String> emptied = new ArrayList<>(1);
            for (Piece none : said.nones()) {
                emptied.add(none.meaning().group());
            }
            List<String> refused = new ArrayList<>();
            for (Choice choice : said.refused()) {
                refused.add(choice.option());
            }
            String size = said.sizes().isEmpty() ? "" : said.sizes().get(0).meaning().id();
            Wish wish = new Wish(said.item().id(), size, options, emptied, refused);
            int quantity =
                    said.quantities().isEmpty() ? 1 : said.quantities().get(0).meaning().number();
            int start = tokens.start(segment.pieces().get(0).from());
            return new CallLine(
                    quantity,
                    Wishes.select(menu, wish),
                    start + 1,
                    tokens.end(segment.end() - 1) - start,
                    said.ids());
        }

        private LiveWords live() {
            if (last == null) {
                Live live = new Live(menu, textLength + 1);
                boolean full = count >= Limits.ORDER_LINES_MAX;
                return full ? LiveWords.none(textLength + 1) : live.fresh(allItems);
            }
            if (count > Limits.ORDER_LINES_MAX) {
                return LiveWords.none(textLength + 1);
            }
            Live live = new Live(menu, liveColumn());
            if (last.item() == null) {
                return live.withoutItem(last, lastSaid);
            }
            return live.about(lastSaid, lastWhole);
        }

        /** An unknown word at the very end is still being typed. */
        private int liveColumn() {
            Piece piece = last.pieces().get(last.pieces().size() - 1);
            boolean unfinished = piece.is(Role.UNKNOWN) && tokens.end(piece.to() - 1) == textLength;
            return unfinished ? tokens.start(piece.from()) + 1 : textLength + 1;
        }
    }
}
