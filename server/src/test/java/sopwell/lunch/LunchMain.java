package sopwell.lunch;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;
import sopwell.desk.Script;
import sopwell.kitchen.Schedule;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Menu;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;

/**
 * Many simulated lunches, with what they come to beside its aim: {@code LunchMain [days] [first
 * seed]}.
 */
public final class LunchMain {
    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

    private LunchMain() {}

    /** Has so many lunches under each policy. */
    public static void main(String[] args) {
        int days = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 10_000;
        Figures oldest = Figures.of(Season.all(Truth.lunch(), false, seed, days));
        Figures starts = Figures.of(Season.all(Truth.lunch(), true, seed, days));
        say("oldest first   %s", oldest);
        say("by start times %s", starts);
        say(
                "fries and dogs %.1f %% younger (aim 50), median wait %+.1f %% (aim at most +2)",
                100 * (1 - starts.ageSeconds() / oldest.ageSeconds()),
                100 * (starts.medianSeconds() / oldest.medianSeconds() - 1));
        say(
                "within the quote %.1f %% (aim 75 to 85), width %.2f of a fixed range (aim 0.60)",
                100 * starts.within(), starts.widthSeconds() / starts.fixedSeconds());
        for (double taps : new double[] {1, 0.9, 0.7, 0}) {
            Leavings leavings = Leavings.of(taps, seed, Math.max(1, days / 2));
            say("%.0f %% of starts tapped: %s", 100 * taps, leavings);
            say("    third to twentieth order after: %s", Figures.of(leavings.after()));
        }
        speed();
    }

    private static void speed() {
        Script script = new Script();
        for (int n = 0; n < 30; n++) {
            script.place(n % 3 == 0 ? "combo, fries" : "2 beef, fries");
        }
        Menu menu = script.menu();
        Asked asked = script.asked("beef dipped").get(0);
        List<OrderLine> lines = List.of(OrderLine.priced(menu, 1, asked));
        int rounds = 20_000;
        long blackHole = 0;
        for (int pass = 0; pass < 3; pass++) {
            long from = CPU.getCurrentThreadCpuTime();
            for (int n = 0; n < rounds; n++) {
                blackHole +=
                        WaitQuote.quote(script.stand().kitchen(), menu, lines, script.nowMs() + n)
                                .toSeconds();
            }
            long quoted = CPU.getCurrentThreadCpuTime();
            for (int n = 0; n < rounds; n++) {
                blackHole +=
                        Schedule.of(script.stand().kitchen(), menu, script.nowMs() + n)
                                .loads("line")
                                .size();
            }
            long done = CPU.getCurrentThreadCpuTime();
            say(
                    "70 open parts: quote %.1f µs (aim 100), schedule %.1f µs of processor (%d)",
                    (quoted - from) / 1e3 / rounds, (done - quoted) / 1e3 / rounds, blackHole % 10);
        }
    }

    private static void say(String format, Object... args) {
        System.out.println(String.format(Locale.ROOT, format, args));
    }
}
