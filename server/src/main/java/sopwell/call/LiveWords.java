package sopwell.call;

import java.util.List;

/**
 * What may be said next, at the end of a call's text. Immutable.
 *
 * <p>A live word never makes the text wrong at that word: it is known, the item takes it, and it
 * clashes with nothing. A word that is still being typed counts as not yet said.
 *
 * @param column where the next word would stand: after the text, or where the unfinished word
 *     starts; from 1, in UTF-16 units of the text as typed
 * @param item the item that the last line is about, or empty when none was said yet
 * @param items ids of items; none once the line has its item, because a comma must come first
 * @param sizes ids of the item's sizes, unless one was said
 * @param options ids of options that the item takes, were not said and clash with nothing said;
 *     after "no", the options that can still be refused
 * @param bundles ids of bundles, by the same rule; none after "no"
 * @param quantity whether a quantity may be said
 * @param no whether "no" may be said
 * @param separator whether a new line may be begun
 */
public record LiveWords(
        int column,
        String item,
        List<String> items,
        List<String> sizes,
        List<String> options,
        List<String> bundles,
        boolean quantity,
        boolean no,
        boolean separator) {
    public LiveWords {
        items = List.copyOf(items);
        sizes = List.copyOf(sizes);
        options = List.copyOf(options);
        bundles = List.copyOf(bundles);
    }

    /** Nothing may follow. */
    static LiveWords none(int column) {
        return new LiveWords(
                column, "", List.of(), List.of(), List.of(), List.of(), false, false, false);
    }
}
