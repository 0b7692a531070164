package sopwell.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sopwell.desk.Replay;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.mix.HalfHours;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.WaitSummary;
import sopwell.mix.WaitTally;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.mix.WaitTally.PartWait;
import sopwell.mix.Waits;
import sopwell.orders.OrderEvent;

/** The waits of simulated days, against the raw events read by code of another kind. */
class WaitLawsTest {
    private static final int SEEDS = 6;
    private static final int STEPS = 250;
    private static final int UNKNOWN = WaitTally.UNKNOWN;

    /** What the raw events say of an order; edits of any kind make it one that is not compared. */
    private static final class Raw {
        private final long placedMs;
        private long handedMs;
        private boolean gone;
        private boolean edited;
        private final Map<PartId, Long> tapped = new HashMap<>();
        private final Map<PartId, Long> up = new LinkedHashMap<>();

        Raw(long placedMs) {
            this.placedMs = placedMs;
        }

        int seconds(Long atMs) {
            return atMs == null || atMs == 0
                    ? UNKNOWN
                    : (int) Math.ceil((atMs - placedMs) / 1000.0);
        }
    }

    @Test
    void everyWaitIsWhatTheEventsSayAndPercentilesAreThoseOfAPlainSort() {
        int compared = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            try (Store store = Store.memory()) {
                EventLog log = new DaySim(seed, store).play(STEPS).log();
                for (Map.Entry<LocalDate, Map<String, Raw>> day : read(log).entrySet()) {
                    compared += compare("seed " + seed, log, day.getKey(), day.getValue());
                }
            }
        }
        assertTrue(compared > 100, "too little was compared: " + compared);
    }

    private static int compare(String at, EventLog log, LocalDate date, Map<String, Raw> raw) {
        Stand stand = Replay.day(log, Script.SETTINGS, date).orElseThrow();
        WaitTally tally =
                WaitTally.of(date, stand.orders(), stand.kitchen(), Script.SETTINGS.zone());
        List<Raw> counted = raw.values().stream().filter(one -> !one.gone).toList();
        assertEquals(counted.size(), tally.orders().size(), at);
        List<OrderWait> plain = new ArrayList<>();
        List<Integer> handed = new ArrayList<>();
        for (int i = 0; i < counted.size(); i++) {
            Raw one = counted.get(i);
            OrderWait wait = tally.orders().get(i);
            if (!one.edited && !wait.staff()) {
                assertEquals(one.seconds(one.handedMs), wait.toHanded(), at);
                assertEquals(told(one), told(wait), at);
                plain.add(wait);
                handed.add(wait.toHanded());
            }
        }
        handed.removeIf(wait -> wait == UNKNOWN);
        Waits waits =
                Waits.of(
                        new Period(date, date, 0, HalfHours.END_MAX),
                        List.of(new WaitTally(date, plain)),
                        360,
                        new Names(List.of(Script.demoMenu())));
        Collections.sort(handed);
        WaitSummary summary = waits.guests().toHanded();
        assertEquals(handed.size(), summary.measured(), at);
        assertEquals(at(handed, 50), summary.medianSeconds(), 1e-6, at);
        assertEquals(at(handed, 90), summary.ninetiethSeconds(), 1e-6, at);
        return plain.size();
    }

    /** The definition written out: place p (N + 1), between neighbours, not outside the values. */
    private static double at(List<Integer> sorted, int percent) {
        if (sorted.isEmpty()) {
            return 0;
        }
        int hundredths = percent * (sorted.size() + 1);
        int below = hundredths / 100;
        if (below < 1 || below >= sorted.size()) {
            return sorted.get(below < 1 ? 0 : sorted.size() - 1);
        }
        double part = (hundredths % 100) / 100.0;
        return sorted.get(below - 1) + part * (sorted.get(below) - sorted.get(below - 1));
    }

    private static List<String> told(Raw raw) {
        return raw.up.keySet().stream()
                .map(
                        part ->
                                part.station()
                                        + " "
                                        + raw.seconds(raw.tapped.get(part))
                                        + " "
                                        + raw.seconds(raw.up.get(part))
                                        + " "
                                        + raw.seconds(raw.handedMs))
                .sorted()
                .toList();
    }

    private static List<String> told(OrderWait wait) {
        return wait.parts().stream()
                .filter(part -> part.toUp() != UNKNOWN)
                .map(WaitLawsTest::told)
                .sorted()
                .toList();
    }

    private static String told(PartWait part) {
        return part.station() + " " + part.toStarted() + " " + part.toUp() + " " + part.toHanded();
    }

    private static Map<LocalDate, Map<String, Raw>> read(EventLog log) {
        Map<LocalDate, Map<String, Raw>> days = new LinkedHashMap<>();
        Map<String, Raw> all = new HashMap<>();
        LocalDate[] open = new LocalDate[1];
        log.read(
                1,
                log.lastSeq(),
                recorded -> {
                    if (recorded.event() instanceof OrderEvent.DayOpened opened) {
                        open[0] = opened.date();
                        days.computeIfAbsent(opened.date(), d -> new LinkedHashMap<>());
                    } else if (recorded.event() instanceof OrderEvent.OrderPlaced placed) {
                        Raw raw = new Raw(recorded.atMs());
                        all.put(placed.order(), raw);
                        days.get(open[0]).put(placed.order(), raw);
                    } else {
                        read(recorded, all);
                    }
                });
        return days;
    }

    private static void read(Recorded recorded, Map<String, Raw> all) {
        Event event = recorded.event();
        if (event instanceof OrderEvent.OrderHanded handed) {
            all.get(handed.order()).handedMs = recorded.atMs();
        } else if (event instanceof OrderEvent.OrderBroughtBack back) {
            all.get(back.order()).handedMs = 0;
        } else if (event instanceof OrderEvent.OrderVoided voided) {
            all.get(voided.order()).gone = true;
        } else if (event instanceof OrderEvent.OrderChanged changed) {
            all.get(changed.order()).edited = true;
        } else if (event instanceof OrderEvent.OrderTold told) {
            all.get(told.order()).edited = true;
        } else if (event instanceof KitchenEvent.PartStarted started) {
            all.get(started.part().order()).tapped.putIfAbsent(started.part(), recorded.atMs());
        } else if (event instanceof KitchenEvent.PartUp up) {
            all.get(up.part().order()).up.put(up.part(), recorded.atMs());
        } else if (event instanceof KitchenEvent.PartBroughtBack back) {
            all.get(back.part().order()).up.remove(back.part());
        } else if (event instanceof KitchenEvent.PartRemade remade) {
            all.get(remade.part().order()).up.remove(remade.part());
        }
    }
}
