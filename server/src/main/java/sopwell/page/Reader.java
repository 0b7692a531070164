package sopwell.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.teavm.jso.JSExport;
import sopwell.counter.CallViews;
import sopwell.counter.CashWords;
import sopwell.counter.Kit;
import sopwell.counter.ViewJson;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.money.CardNumber;
import sopwell.orders.Outs;

/** Reads and prices calls in the page, by one kit. Belongs to the page's thread. */
public final class Reader {
    private final Kit kit;
    private final CallViews views;

    private Reader(Kit kit) {
        this.kit = kit;
        this.views = kit.views();
    }

    /** A reader by a kit as the server writes it; another form of kit is a fault. */
    @JSExport
    public static Reader open(String written) {
        return new Reader(Kit.read(written));
    }

    /** Names the menu that is read by. */
    @JSExport
    public String revision() {
        return kit.menu().revision();
    }

    /**
     * What is shown of a text, as JSON.
     *
     * @param pressed whether it is to be placed now
     * @param outs what is out as it was last heard: each with how many are left and until when,
     *     {@code item:fries 0 1767225600000}, parted by semicolons
     * @param nowMs milliseconds since 1970-01-01 UTC in decimal digits
     */
    @JSExport
    public String read(String text, boolean pressed, String outs, String nowMs) {
        return ViewJson.write(
                CardNumber.isIn(text)
                        ? CallViews.withCard(kit.phrases())
                        : views.of(text, pressed, outs(outs), Long.parseLong(nowMs)));
    }

    private Outs outs(String written) {
        List<Shortage> known = new ArrayList<>();
        for (String one : written.split(";", -1)) {
            String[] parts = one.split(" ", -1);
            Optional<Out> out = parts.length == 3 ? Out.read(parts[0]) : Optional.empty();
            if (out.isPresent() && out.get().isOn(kit.menu())) {
                int left = Integer.parseInt(parts[1]);
                known.add(new Shortage(out.get(), left, Long.parseLong(parts[2])));
            }
        }
        return Outs.of(known);
    }

    /**
     * What is to be paid in cash for an amount, and what a guest may hand over, in cents; parted by
     * spaces.
     */
    @JSExport
    public String tenders(String dueCents) {
        return kit.cashWords().tendersCents(Long.parseLong(dueCents)).stream()
                .map(cents -> Long.toString(cents))
                .collect(Collectors.joining(" "));
    }

    /** Cents of an amount as it is typed, or nothing when it is none. */
    @JSExport
    public String cents(String typed) {
        OptionalLong cents = CashWords.cents(typed);
        return cents.isPresent() ? Long.toString(cents.getAsLong()) : "";
    }

    /** An amount of cents as it is typed into a field. */
    @JSExport
    public String typed(String cents) {
        return CashWords.typed(Long.parseLong(cents));
    }

    /** The notes and coins to give back, parted by semicolons. */
    @JSExport
    public String change(String dueCents, String givenCents) {
        List<String> pieces =
                kit.cashWords().change(Long.parseLong(dueCents), Long.parseLong(givenCents));
        return String.join(";", pieces);
    }

    /** Whether a text holds what looks like a card's number, which must never be kept. */
    @JSExport
    public boolean holdsCard(String text) {
        return CardNumber.isIn(text);
    }

    /** A text of the screen with what is handed in at its places. */
    @JSExport
    public String say(String key, String first, String second) {
        return kit.phrases().of(key, first, second);
    }

    /** Cents in decimal digits as money. */
    @JSExport
    public String money(String cents) {
        return kit.phrases().money(Long.parseLong(cents));
    }

    /** A wait as it is told to a guest. */
    @JSExport
    public String quote(int fromSeconds, int toSeconds) {
        return kit.phrases().wait(fromSeconds, toSeconds);
    }

    /** The compiler asks for a program; this one does nothing until it is called. */
    public static void main(String[] args) {}
}
