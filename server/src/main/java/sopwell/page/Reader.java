package sopwell.page;

import org.teavm.jso.JSExport;
import sopwell.counter.CallViews;
import sopwell.counter.Kit;
import sopwell.counter.ViewJson;

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
     */
    @JSExport
    public String read(String text, boolean pressed) {
        return ViewJson.write(views.of(text, pressed));
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
