package sopwell.web.pages;

import java.util.Optional;
import sopwell.call.CallParser;
import sopwell.orders.Told;

/**
 * What the counter's form says was told to the guest, as its page read and priced the call.
 * Immutable.
 *
 * @param parser reads the call: by the menu that the price was told by, or the one in force; null
 *     when the menu that was told by is not known here
 * @param told what was told; empty when the page told nothing by itself
 */
record ToldForm(CallParser parser, Optional<Told> told) {
    /** Reads the fields {@code told-menu}, {@code told-cents}, and {@code taken-at} in ms. */
    static ToldForm of(Ask ask, PageContext context) {
        String revision = ask.field("told-menu");
        if (revision.isEmpty()) {
            return new ToldForm(context.parser().get(), Optional.empty());
        }
        Optional<CallParser> parser = context.parserOf().apply(revision);
        Optional<Told> told =
                parser.map(
                        by ->
                                new Told(
                                        by.menu(),
                                        number(ask.field("told-cents")),
                                        number(ask.field("taken-at"))));
        return new ToldForm(parser.orElse(null), told);
    }

    private static long number(String written) {
        return written.matches("[0-9]{1,15}") ? Long.parseLong(written) : 0;
    }
}
