package sopwell.money;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds what looks like the number of a payment card, so that none is ever taken in: 13 to 19
 * digits (ISO/IEC 7812-1 allows up to 19; the shortest in use have 13) whose last one is right by
 * the formula of ISO/IEC 7812-1 annex B, which is Luhn's. Stateless.
 *
 * <p>Spaces and dashes between digits don't matter. Where there are several groups of digits, any
 * row of whole groups counts, so that a number is found beside its expiry date or code. One in ten
 * innocent numbers of that length is taken for a card's: a stand has no use for any.
 */
public final class CardNumber {
    private static final int DIGITS_MIN = 13;
    private static final int DIGITS_MAX = 19;
    private static final String HIDDEN = "…";

    private CardNumber() {}

    /** A row of digits without anything between. */
    private record Group(int from, int to, String digits) {}

    /** Whether a text holds what looks like a card's number. */
    public static boolean isIn(String text) {
        return !places(text).isEmpty();
    }

    /** A text without what looks like a card's number; a text without any is itself. */
    public static String hidden(String text) {
        List<int[]> places = places(text);
        if (places.isEmpty()) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        int at = 0;
        for (int[] place : places) {
            if (place[0] >= at) {
                shown.append(text, at, place[0]).append(HIDDEN);
            }
            at = Math.max(at, place[1]);
        }
        return shown.append(text, at, text.length()).toString();
    }

    /** Where card numbers begin and end, in the order of their beginnings. */
    private static List<int[]> places(String text) {
        List<int[]> places = new ArrayList<>();
        if (text.length() < DIGITS_MIN) {
            return places;
        }
        List<Group> row = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            int point = text.codePointAt(at);
            if (Character.digit(point, 10) >= 0) {
                Group group = group(text, at);
                row.add(group);
                at = group.to();
            } else {
                if (!isBetween(point)) {
                    look(row, places);
                    row.clear();
                }
                at += Character.charCount(point);
            }
        }
        look(row, places);
        return places;
    }

    private static Group group(String text, int from) {
        StringBuilder digits = new StringBuilder();
        int at = from;
        while (at < text.length()) {
            int digit = Character.digit(text.codePointAt(at), 10);
            if (digit < 0) {
                break;
            }
            digits.append((char) ('0' + digit));
            at += Character.charCount(text.codePointAt(at));
        }
        return new Group(from, at, digits.toString());
    }

    private static boolean isBetween(int point) {
        int type = Character.getType(point);
        return Character.isWhitespace(point)
                || type == Character.SPACE_SEPARATOR
                || type == Character.DASH_PUNCTUATION
                || type == Character.FORMAT
                || point == 0x2212;
    }

    private static void look(List<Group> row, List<int[]> places) {
        for (int first = 0; first < row.size(); first++) {
            StringBuilder digits = new StringBuilder();
            for (int last = first; last < row.size(); last++) {
                digits.append(row.get(last).digits());
                if (digits.length() > DIGITS_MAX) {
                    break;
                }
                if (digits.length() >= DIGITS_MIN && isRight(digits)) {
                    places.add(new int[] {row.get(first).from(), row.get(last).to()});
                }
            }
        }
    }

    /** From the right, every second digit counts twice, its own digits added; all make tens. */
    private static boolean isRight(CharSequence digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(digits.length() - 1 - i) - '0';
            int counted = i % 2 == 0 ? digit : 2 * digit;
            sum += counted > 9 ? counted - 9 : counted;
        }
        return sum % 10 == 0;
    }
}
