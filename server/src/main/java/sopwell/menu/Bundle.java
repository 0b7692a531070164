package sopwell.menu;

import java.util.List;

/**
 * A word for several options of a group at once ("both", "everything"), or for none of them.
 * Immutable.
 *
 * @param options the options it stands for, perhaps none
 */
public record Bundle(String id, LocalText name, List<String> words, List<String> options) {
    public Bundle {
        words = List.copyOf(words);
        options = List.copyOf(options);
    }
}
