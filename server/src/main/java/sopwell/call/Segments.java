package sopwell.call;

import java.util.ArrayList;
import java.util.List;
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
    private final Pieces pieces;
    private int nextItemAt = -1;
    private int nextItemEnd = -1;

    Segments(Menu menu, Vocabulary vocabulary, Tokens tokens) {
        this.menu = menu;
        this.vocabulary = vocabulary;
        this.tokens = tokens;
        this.pieces = new Pieces(vocabulary, tokens);
    }

    /**
     * The line that starts at a token.
     *
     * @param end the next separator, or the end of the text
     */
    Segment next(int from, int end) {
        int at = nextItem(from, end);
        List<Segment> tried = new ArrayList<>(2);
        List<Item> items = new ArrayList<>(2);
        while (at < end
                && items.size() < CANDIDATES_MAX
                && (tried.isEmpty() || at < tried.get(0).end())) {
            Item item = itemAt(at, end);
            if (item != null && !items.contains(item)) {
                Segment segment = scan(from, end, item);
                if (segment.isClean(item)) {
                    return goOn(segment, end);
                }
                items.add(item);
                tried.add(segment);
            }
            at++;
        }
        if (tried.isEmpty()) {
            return scan(from, end, null);
        }
        List<Segment> refitted = new ArrayList<>(tried.size());
        for (int i = 0; i < tried.size(); i++) {
            refitted.add(refitted(tried.get(i), from, items.get(i)));
            if (refitted.get(i).isClean(items.get(i))) {
                return goOn(refitted.get(i), end);
            }
        }
        return items.get(0).equals(refitted.get(0).item())
                ? refitted.get(0)
                : scan(from, end, null);
    }

    /** The line with its pieces cut anew, if then fewer of them don't fit. */
    private Segment refitted(Segment segment, int from, Item item) {
        if (segment.misfits() == 0) {
            return segment;
        }
        List<Piece> cut = pieces.refit(from, segment.end(), item);
        Segment refitted = new Segment(cut, firstItem(cut), segment.end());
        boolean better = !cut.isEmpty() && refitted.misfits() < segment.misfits();
        return better && !refitted.isUnclear() ? refitted : segment;
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
            List<Piece> all = new ArrayList<>(whole.pieces());
            all.add(new Piece(and, from, null, Meaning.of(Role.SKIP, ""), true));
            all.addAll(more.pieces());
            whole = new Segment(all, whole.item(), more.end());
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
        List<Piece> found = new ArrayList<>();
        boolean refused = false;
        int at = from;
        while (at < end) {
            Piece piece = pieces.piece(at, end, about, refused);
            if (piece.is(Role.SEPARATOR)) {
                break;
            }
            refused = piece.is(Role.NO) || (refused && piece.is(Role.SKIP));
            found.add(piece);
            at = piece.to();
        }
        return new Segment(found, firstItem(found), at);
    }

    private Item firstItem(List<Piece> found) {
        for (Piece piece : found) {
            if (piece.is(Role.ITEM)) {
                return menu.item(piece.meaning().id());
            }
        }
        return null;
    }
}
