package sopwell.crash;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything that was asked of a stand and seen of it through all its lives, and whether one stand
 * that never died could have said the same. Thread-safe.
 */
final class History {
    private final List<Sent> sent = new ArrayList<>();
    private final Map<String, Sight> sights = new HashMap<>();

    /**
     * An order as it is called on the stand.
     *
     * @param id the stand's own name for it
     * @param number the guest's
     */
    record Named(String id, int number) {}

    /**
     * One sending of a request for an order. A request that is sent again is another sending under
     * the same key. The times are of one clock that never jumps.
     *
     * @param fromNanos when it was sent
     * @param toNanos when the answer was there, or when it was given up
     * @param status of the answer; 0 when there was none, so that what became of it is unknown
     * @param order what was answered, or null without an order
     */
    record Sent(long fromNanos, long toNanos, String key, int status, Named order) {
        private boolean isDone() {
            return status >= 200 && status < 300;
        }

        private boolean isRefused() {
            return status >= 400 && status < 500;
        }
    }

    /** The first time that a screen showed an order. */
    record Sight(long atNanos, Named order) {}

    synchronized void add(Sent one) {
        sent.add(one);
    }

    /** A screen shows an order; only the first time is kept, and each number it shows. */
    synchronized void saw(Sight sight) {
        sights.putIfAbsent(sight.order().id() + " " + sight.order().number(), sight);
    }

    /** How many sendings there were. */
    synchronized int sendings() {
        return sent.size();
    }

    /** How many keys were refused and never kept. */
    synchronized long refused() {
        return sent.stream().filter(Sent::isRefused).map(Sent::key).distinct().count();
    }

    /**
     * Holds it against what is left in the end.
     *
     * @param left the number of each order that is there
     * @return what can't be, in sentences; none when all is well
     */
    synchronized List<String> wrong(Map<String, Integer> left) {
        List<String> wrong = new ArrayList<>();
        Map<String, Named> done = done(wrong);
        Map<String, String> keyOf = new HashMap<>();
        Map<Integer, String> keyOfNumber = new HashMap<>();
        done.forEach(
                (key, order) -> {
                    refuse(wrong, keyOf.put(order.id(), key) != null, "two keys got", order);
                    boolean taken = keyOfNumber.put(order.number(), key) != null;
                    refuse(wrong, taken, "two keys got the number of", order);
                    Integer number = left.get(order.id());
                    refuse(wrong, number == null, "answered and lost:", order);
                    boolean other = number != null && number != order.number();
                    refuse(wrong, other, "there under the number " + number + ":", order);
                });
        left.forEach(
                (id, number) -> {
                    Named order = new Named(id, number);
                    refuse(wrong, !keyOf.containsKey(id), "there, and nobody got it:", order);
                });
        for (Sent one : sent) {
            boolean kept = one.isRefused() && done.containsKey(one.key());
            refuse(wrong, kept, "refused and kept:", done.get(one.key()));
        }
        Map<String, Long> asked = asked();
        for (Sight sight : sights.values()) {
            Integer number = left.get(sight.order().id());
            boolean ghost = number == null || number != sight.order().number();
            refuse(wrong, ghost, "a screen saw what is not there:", sight.order());
            Long from = asked.get(keyOf.getOrDefault(sight.order().id(), ""));
            boolean early = from != null && sight.atNanos() < from;
            refuse(wrong, early, "a screen saw it before it was asked for:", sight.order());
        }
        inTurn(wrong, done, asked);
        return wrong;
    }

    /** What each key got; a key that got two answers is wrong. */
    private Map<String, Named> done(List<String> wrong) {
        Map<String, Named> done = new HashMap<>();
        for (Sent one : sent) {
            if (one.isDone()) {
                Named before = done.putIfAbsent(one.key(), one.order());
                boolean differs = before != null && !before.equals(one.order());
                refuse(wrong, differs, "one key got " + before + " and then", one.order());
            }
        }
        return done;
    }

    /** When each key was first sent. */
    private Map<String, Long> asked() {
        Map<String, Long> asked = new HashMap<>();
        sent.forEach(one -> asked.merge(one.key(), one.fromNanos(), Math::min));
        return asked;
    }

    /** What was first asked for after another was answered has a later number than that one. */
    private void inTurn(List<String> wrong, Map<String, Named> done, Map<String, Long> asked) {
        List<Sent> answers =
                sent.stream()
                        .filter(Sent::isDone)
                        .sorted(Comparator.comparingLong(Sent::toNanos))
                        .toList();
        List<String> keys =
                done.keySet().stream().sorted(Comparator.comparingLong(asked::get)).toList();
        int next = 0;
        int highest = 0;
        for (String key : keys) {
            while (next < answers.size() && answers.get(next).toNanos() < asked.get(key)) {
                highest = Math.max(highest, answers.get(next++).order().number());
            }
            boolean early = done.get(key).number() <= highest;
            refuse(wrong, early, "asked for after " + highest + " was answered:", done.get(key));
        }
    }

    /** The keys that were kept, to be looked up on the stand. */
    synchronized Set<String> orders() {
        Set<String> orders = new HashSet<>();
        sent.stream().filter(Sent::isDone).forEach(one -> orders.add(one.order().id()));
        sights.values().forEach(sight -> orders.add(sight.order().id()));
        return orders;
    }

    private static void refuse(List<String> wrong, boolean isWrong, String what, Named order) {
        if (isWrong) {
            wrong.add(what + " " + order);
        }
    }
}
