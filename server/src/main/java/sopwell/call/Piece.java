package sopwell.call;

import sopwell.call.Span.Role;

/**
 * Some neighbouring tokens that were understood as one, or one that was not understood. Immutable.
 *
 * @param from the first token
 * @param to the token after the last
 * @param phrase the phrase of the menu, or null for digits and for what is unknown
 * @param meaning what it means, or null when it is unknown
 * @param fits whether the line's item takes it
 */
record Piece(int from, int to, Phrase phrase, Meaning meaning, boolean fits) {
    Role role() {
        return meaning == null ? Role.UNKNOWN : meaning.role();
    }

    boolean is(Role role) {
        return role() == role;
    }

    /** Whether it is a number without "x", which could be the next line's. */
    boolean bareNumber() {
        return is(Role.QUANTITY) && (phrase != null || to - from == 1);
    }

    /** The place in the text, as spans give it. */
    Span span(Tokens tokens) {
        int start = tokens.start(from);
        String id = meaning == null ? "" : meaning.id();
        return new Span(start + 1, tokens.end(to - 1) - start, role(), id);
    }

    /** The words as they were typed. */
    String typed(Tokens tokens) {
        return tokens.typed(from, to);
    }
}
