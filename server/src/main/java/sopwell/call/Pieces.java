package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import sopwell.Limits;
import sopwell.call.Span.Role;
import sopwell.menu.Item;

/** Understands neighbouring tokens as pieces of a line. Local to one call. */
final class Pieces {
    /** Tokens that are fitted together anew; a line that makes sense has fewer. */
    private static final int REFIT_TOKENS_MAX = 64;

    private final Vocabulary vocabulary;
    private final Tokens tokens;

    Pieces(Vocabulary vocabulary, Tokens tokens) {
        this.vocabulary = vocabulary;
        this.tokens = tokens;
    }

    /**
     * The piece that starts at a token: the longest phrase, or an unknown word.
     *
     * @param refused whether it stands after "no", which takes one option before it takes a bundle:
     *     "no hot sweet" is sweet without hot
     */
    Piece piece(int at, int end, Item about, boolean refused) {
        int digits = quantityWidth(at, end);
        if (digits > 0) {
            return new Piece(at, at + digits, null, Meaning.number(number(at, digits)), true);
        }
        Phrase fitting = vocabulary.longestFitting(tokens, at, end, about);
        if (fitting != null && !isTorn(fitting, at, end, about)) {
            Phrase taken = refused ? oneOption(fitting, at, about) : fitting;
            return new Piece(at, at + taken.words(), taken, taken.about(about), true);
        }
        Phrase any = vocabulary.longest(tokens, at, end);
        if (any != null) {
            return new Piece(at, at + any.words(), any, any.anyhow(), false);
        }
        return new Piece(at, at + 1, null, null, false);
    }

    /** The longest beginning of a bundle's phrase that is an option, if there is one. */
    private Phrase oneOption(Phrase bundle, int at, Item about) {
        Phrase shorter = bundle;
        while (shorter != null && shorter.about(about).role() == Role.BUNDLE) {
            int words = shorter.words();
            shorter =
                    words > 1 ? vocabulary.longestFitting(tokens, at, at + words - 1, about) : null;
        }
        boolean option = shorter != null && shorter.about(about).role() == Role.OPTION;
        return option ? shorter : bundle;
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

    /**
     * Pieces of which as few as possible don't fit; among these, earlier phrases are as long as
     * they can be. Only for where the longest phrases leave something over: "sweet hot peppers" is
     * "sweet" and "hot peppers", though "sweet hot" would be longer than "sweet". An "and" inside
     * means nothing. None when there are too many tokens.
     */
    List<Piece> refit(int from, int end, Item about) {
        if (end - from > REFIT_TOKENS_MAX) {
            return List.of();
        }
        Piece[] best = new Piece[end - from];
        int[] misfits = new int[end - from + 1];
        for (int at = end - 1; at >= from; at--) {
            boolean refused = at > from && isNo(at - 1);
            Piece piece = piece(at, end, about, refused);
            int least = cost(piece, misfits, from);
            boolean shorter = piece.fits() && piece.phrase() != null;
            for (int to = piece.to() - 1; shorter && to > at; to--) {
                Piece other = piece(at, to, about, refused);
                if (cost(other, misfits, from) < least) {
                    piece = other;
                    least = cost(other, misfits, from);
                }
            }
            best[at - from] = meaningless(piece);
            misfits[at - from] = least;
        }
        List<Piece> pieces = new ArrayList<>();
        for (int at = from; at < end; at = best[at - from].to()) {
            pieces.add(best[at - from]);
        }
        return pieces;
    }

    private boolean isNo(int at) {
        Phrase phrase = vocabulary.longestFitting(tokens, at, at + 1, null);
        return phrase != null && phrase.about(null).role() == Role.NO;
    }

    private static int cost(Piece piece, int[] misfits, int from) {
        return misfits[piece.to() - from] + (piece.fits() ? 0 : 1);
    }

    private static Piece meaningless(Piece piece) {
        return piece.is(Role.SEPARATOR)
                ? new Piece(piece.from(), piece.to(), null, Meaning.of(Role.SKIP, ""), true)
                : piece;
    }
}
