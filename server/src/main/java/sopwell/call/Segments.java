package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import sopwell.Limits;
import sopwell.call.Span.Role;
import sopwell.menu.Item;
import sopwell.menu.Menu;

/**
 * Cuts the tokens of one call into lines and these into pieces. Local to one call.
 *
 * <p>What a phrase means depends on the item ("small" of a cup is not "small" of a sandwich), and
 * which phrase is the longest one depends on it too. So the line is read once for the first item
 * that it mentions; only if that doesn't work out, for the others; and if none does, the first
 * reading stands and shows what is wrong. Words that the item doesn't take are looked up among
 * everybody's, so that they can be told from words that nobody knows.
 */
final class Segments {
    /** Items that a line is tried for; more are mentioned only where commas are missing. */
    private static final int CANDIDATES_MAX = 8;

    private final Menu menu;
    private final Vocabulary vocabulary;
    private final Tokens tokens;
    private int nextItemAt = -1;
    private int nextItemEnd = -1;

    Segments(Menu menu, Vocabulary vocabulary, Tokens tokens) {
        this.menu = menu;
        this.vocabulary = vocabulary;
        this.tokens = tokens;
    }

    /**
     * The line that starts at a token.
     *
     * @param end the next separator, or the end of the text
     */
    Segment next(int from, int end) {
        int at = nextItem(from, end);
        Segment first = null;
        List<Item> tried = new ArrayList<>(2);
        while (at < end && tried.size() < CANDIDATES_MAX && (first == null || at < first.end())) {
            Item item = itemAt(at, end);
            if (item != null && !tried.contains(item)) {
                tried.add(item);
                Segment segment = scan(from, end, item);
                if (segment.isClean(item)) {
                    return goOn(segment, end);
                }
                first = first == null ? segment : first;
            }
            at++;
        }
        boolean stands = first != null && first.item() != null;
        return stands && first.item().equals(tried.get(0)) ? first : scan(from, end, null);
    }

    /**
     * The line together with what an "and" adds to it: after "hot dog mustard and", "onion" alone
     * is no line of its own. Not after a refusal, where "no mustard and onion" could mean either.
     */
    private Segment goOn(Segment segment, int end) {
        Segment whole = segment;
        while (whole.end() < end) {
            int and = whole.end();
            int from = andEnd(and, end);
            Segment more = scan(from, end, whole.item());
            if (!more.isMoreOf(whole)) {
                return whole;
            }
            List<Piece> pieces = new ArrayList<>(whole.pieces());
            pieces.add(new Piece(and, from, null, Meaning.of(Role.SKIP, ""), true));
            pieces.addAll(more.pieces());
            whole = new Segment(pieces, whole.item(), more.end());
        }
        return whole;
    }

    /** Where the "and" that stands at a token ends. */
    int andEnd(int at, int end) {
        return at + vocabulary.longestFitting(tokens, at, end, null).words();
    }

    private int nextItem(int from, int end) {
        if (nextItemEnd == end && nextItemAt >= from) {
            return nextItemAt;
        }
        int at = from;
        while (at < end && itemAt(at, end) == null) {
            at++;
        }
        nextItemAt = at;
        nextItemEnd = end;
        return at;
    }

    private Item itemAt(int at, int end) {
        Phrase phrase = vocabulary.longestFitting(tokens, at, end, null);
        return phrase != null && phrase.isItem() ? menu.item(phrase.about(null).id()) : null;
    }

    private Segment scan(int from, int end, Item about) {
        List<Piece> pieces = new ArrayList<>();
        Item item = null;
        int at = from;
        while (at < end) {
            Piece piece = piece(at, end, about);
            if (piece.is(Role.SEPARATOR)) {
                break;
            }
            if (item == null && piece.is(Role.ITEM)) {
                item = menu.item(piece.meaning().id());
            }
            pieces.add(piece);
            at = piece.to();
        }
        return new Segment(pieces, item, at);
    }

    private Piece piece(int at, int end, Item about) {
        int digits = quantityWidth(at, end);
        if (digits > 0) {
            return new Piece(at, at + digits, null, Meaning.number(number(at, digits)), true);
        }
        Phrase fitting = vocabulary.longestFitting(tokens, at, end, about);
        if (fitting != null && !isTorn(fitting, at, end, about)) {
            return new Piece(at, at + fitting.words(), fitting, fitting.about(about), true);
        }
        Phrase any = vocabulary.longest(tokens, at, end);
        if (any != null) {
            return new Piece(at, at + any.words(), any, any.anyhow(), false);
        }
        return new Piece(at, at + 1, null, null, false);
    }

    /**
     * Whether a small word is only the beginning of a phrase that the item doesn't take: "no
     * peppers" of fries is a choice that fries don't have, and not "no" and an unknown word.
     */
    private boolean isTorn(Phrase fitting, int at, int end, Item about) {
        int next = at + fitting.words();
        return fitting.isSmall()
                && next < end
                && !tokens.cut(next)
                && vocabulary.longestFitting(tokens, next, end, about) == null
                && vocabulary.longest(tokens, at, end).words() > fitting.words();
    }

    /**
     * How many tokens a quantity in digits takes here ("2", "2x", "2 x", "x2"), or 0. After a
     * number "x" is never a word of the menu: it would be taken for "times" by whoever reads the
     * call.
     */
    private int quantityWidth(int at, int end) {
        boolean more = at + 1 < end && !tokens.cut(at + 1);
        if (tokens.digits(at)) {
            return more && isTimes(at + 1) ? 2 : 1;
        }
        boolean before =
                more
                        && isTimes(at)
                        && tokens.digits(at + 1)
                        && (tokens.touch(at) || !vocabulary.knows(tokens.word(at)));
        return before ? 2 : 0;
    }

    private boolean isTimes(int at) {
        String word = tokens.word(at);
        return word.equals("x") || word.equals("\u00d7");
    }

    /** The number's value, or just something too large. */
    private int number(int at, int width) {
        String digits = tokens.word(tokens.digits(at) ? at : at + width - 1);
        int value = 0;
        for (int i = 0; i < digits.length() && value <= Limits.LINE_QUANTITY_MAX; i++) {
            value = value * 10 + digits.charAt(i) - '0';
        }
        return value;
    }
}
