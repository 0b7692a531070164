package sopwell;

import java.io.PrintStream;
import java.util.Optional;
import java.util.logging.ConsoleHandler;
import java.util.logging.Handler;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Lines;
import sopwell.journal.Told;

/**
 * Where a stand that serves writes what happens: lines on standard error, and in plain form where
 * it listens on standard output. Belongs to the start-up thread.
 */
final class Journal {
    private static final Logger LOGGER = Logger.getLogger(Journal.class.getName());

    private final Lines.Form form;
    private final PrintStream out;

    private Journal(Lines.Form form, PrintStream out) {
        this.form = form;
        this.out = out;
    }

    /** From now on all lines of the process look so, those of libraries and broken threads too. */
    static Journal begin(Lines.Form form, PrintStream out) {
        LogManager.getLogManager().reset();
        Handler handler = new ConsoleHandler();
        handler.setFormatter(new Lines(form));
        handler.setFilter(Lines::isWorth);
        Logger.getLogger("").addHandler(handler);
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, fault) -> Told.of(Happening.THREAD_BROKE).fault(fault).to(LOGGER));
        return new Journal(form, out);
    }

    /** The stand does not start: what is still to be said of it, nothing when a line says it. */
    StartRefused refused(String why) {
        if (form == Lines.Form.plain) {
            return new StartRefused(why);
        }
        Told.of(Happening.START_REFUSED).own("why", why).to(LOGGER);
        return new StartRefused("");
    }

    /** The stand takes requests. */
    void listening(String address, Optional<String> fingerprint) {
        if (form == Lines.Form.json) {
            Told told = Told.of(Happening.LISTENING).own("address", address);
            fingerprint.ifPresent(print -> told.own("fingerprint", print));
            told.own("version", Version.NUMBER).to(LOGGER);
            return;
        }
        out.println("listening on " + address);
        fingerprint.ifPresent(
                print -> {
                    out.println("each tablet must trust the stand once, here:");
                    out.println("  " + address + "/trust");
                    out.println("the page must show this SHA-256 fingerprint:");
                    out.println("  " + print);
                });
    }
}
