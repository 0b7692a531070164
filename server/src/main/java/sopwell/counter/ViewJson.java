package sopwell.counter;

import java.util.List;
import java.util.function.BiConsumer;

/** Writes views as JSON, for the scripts of the page. Stateless. */
public final class ViewJson {
    private ViewJson() {}

    /** One view as one JSON object; what it holds is named as in {@link CallView}. */
    public static String write(CallView view) {
        StringBuilder out = new StringBuilder(1_024);
        out.append("{\"lines\":");
        list(out, view.lines(), ViewJson::line);
        text(out.append(",\"subtotal\":"), view.subtotal());
        text(out.append(",\"tax\":"), view.tax());
        text(out.append(",\"total\":"), view.total());
        out.append(",\"totalCents\":").append(view.totalCents());
        out.append(",\"fault\":");
        if (view.fault().isPresent()) {
            fault(out, view.fault().get());
        } else {
            out.append("null");
        }
        out.append(",\"live\":");
        list(out, view.live(), ViewJson::text);
        out.append(",\"hasItem\":").append(view.hasItem());
        out.append(",\"placeable\":").append(view.placeable());
        return out.append('}').toString();
    }

    private static void line(StringBuilder out, CallView.Line line) {
        text(out.append("{\"text\":"), line.text());
        text(out.append(",\"each\":"), line.each());
        text(out.append(",\"price\":"), line.price());
        out.append('}');
    }

    private static void fault(StringBuilder out, CallView.Fault fault) {
        text(out.append("{\"sentence\":"), fault.sentence());
        out.append(",\"quiet\":").append(fault.quiet());
        out.append(",\"mirror\":");
        list(out, fault.mirror(), ViewJson::piece);
        out.append(",\"fixes\":");
        list(out, fault.fixes(), ViewJson::fix);
        out.append('}');
    }

    private static void piece(StringBuilder out, CallView.Piece piece) {
        text(out.append("{\"text\":"), piece.text());
        out.append(",\"marked\":").append(piece.marked()).append('}');
    }

    private static void fix(StringBuilder out, CallView.Fix fix) {
        text(out.append("{\"label\":"), fix.label());
        text(out.append(",\"text\":"), fix.text());
        out.append('}');
    }

    private static <E> void list(
            StringBuilder out, List<E> entries, BiConsumer<StringBuilder, E> each) {
        out.append('[');
        for (int at = 0; at < entries.size(); at++) {
            if (at > 0) {
                out.append(',');
            }
            each.accept(out, entries.get(at));
        }
        out.append(']');
    }

    private static void text(StringBuilder out, String text) {
        out.append('"');
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                String hex = Integer.toHexString(c);
                out.append("\\u").append("0000", 0, 4 - hex.length()).append(hex);
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
