package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.call.CallLine;
import sopwell.call.Reading;
import sopwell.call.Span;
import sopwell.counter.CallView.Fault;
import sopwell.counter.CallView.Fix;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.orders.Refusal;

/** Points in a call at what is out, and offers what is near it. Stateless. */
final class Shortfall {
    private Shortfall() {}

    /**
     * What the counter says of a call that asks for too much.
     *
     * @param refusal names what is out first, and after its numbers what is near
     */
    static Fault of(String text, Reading reading, Refusal refusal, Menu menu, Phrases t) {
        List<Out> named = refusal.args().stream().map(Out::read).flatMap(Optional::stream).toList();
        Out out = named.get(0);
        CallLine line =
                reading.lines().stream()
                        .filter(one -> out.isIn(one.selection()))
                        .findFirst()
                        .orElseThrow();
        Optional<Span> said =
                reading.spans().stream()
                        .filter(span -> span.column() >= line.column())
                        .filter(span -> span.column() < line.column() + line.length())
                        .filter(span -> says(span, out))
                        .findFirst();
        List<Fix> fixes = new ArrayList<>();
        for (Out near : named.subList(1, named.size())) {
            fixes.add(
                    new Fix(
                            OutWords.name(near, menu, t),
                            with(text, line, said, word(near, menu))));
        }
        int column = said.map(Span::column).orElse(line.column());
        int length = said.map(Span::length).orElse(line.length());
        return new Fault(
                OutWords.sentence(refusal, menu, t),
                false,
                Fixes.mirror(text, column, length),
                fixes);
    }

    private static boolean says(Span span, Out out) {
        return switch (out.kind()) {
            case ITEM -> span.role() == Span.Role.ITEM && span.id().equals(out.item());
            case SIZE -> span.role() == Span.Role.SIZE && span.id().equals(out.id());
            case OPTION -> span.role() == Span.Role.OPTION && span.id().equals(out.id());
        };
    }

    /** The text with another word where it was said, or after the line when the house chose. */
    private static String with(String text, CallLine line, Optional<Span> said, String word) {
        int from = said.map(Span::column).orElse(line.column() + line.length()) - 1;
        int to = from + said.map(Span::length).orElse(0);
        String before = text.substring(0, from);
        boolean apart = said.isEmpty() && !before.endsWith(" ");
        return before + (apart ? " " : "") + word + text.substring(to);
    }

    private static String word(Out out, Menu menu) {
        return switch (out.kind()) {
            case ITEM -> menu.item(out.item()).words().get(0);
            case OPTION -> menu.option(out.id()).words().get(0);
            case SIZE -> menu.item(out.item()).size(out.id()).orElseThrow().words().get(0);
        };
    }
}
