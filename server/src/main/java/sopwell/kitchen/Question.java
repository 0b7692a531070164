package sopwell.kitchen;

import java.util.List;

/**
 * What a station wants to know of a part. With neither options nor text it asks whether the part is
 * right as it stands. Immutable.
 *
 * @param options the options of one modifier group that it asks about; perhaps none
 * @param text own words, or empty
 */
public record Question(List<String> options, String text) {
    public Question {
        options = List.copyOf(options);
    }
}
