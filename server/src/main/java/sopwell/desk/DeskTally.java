package sopwell.desk;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.LongAdder;
import sopwell.orders.OrderCommand;

/** What became of commands, counted. Thread-safe. */
public final class DeskTally {
    private final LongAdder turnedAway = new LongAdder();
    private final LongAdder failed = new LongAdder();
    private final Map<Answer.Outcome, LongAdder> orders = new EnumMap<>(Answer.Outcome.class);
    private final Map<Answer.Outcome, LongAdder> commands = new EnumMap<>(Answer.Outcome.class);

    DeskTally() {
        for (Answer.Outcome outcome : Answer.Outcome.values()) {
            orders.put(outcome, new LongAdder());
            commands.put(outcome, new LongAdder());
        }
    }

    /** Commands that found the queue full. */
    public long turnedAway() {
        return turnedAway.sum();
    }

    /** Commands that a fault came between, so that nobody knows whether they were kept. */
    public long failed() {
        return failed.sum();
    }

    /** What became of orders that were to be placed. */
    public Map<String, Long> orders() {
        return words(orders);
    }

    /** What became of all commands, those among them. */
    public Map<String, Long> commands() {
        return words(commands);
    }

    void turnAway() {
        turnedAway.increment();
    }

    void count(StandCommand command, Answer answer, Throwable fault) {
        if (fault != null) {
            failed.increment();
            return;
        }
        commands.get(answer.outcome()).increment();
        if (isOrder(command)) {
            orders.get(answer.outcome()).increment();
        }
    }

    private static boolean isOrder(StandCommand command) {
        StandCommand bare = command instanceof StandCommand.By by ? by.command() : command;
        return bare instanceof StandCommand.ForOrders order
                && order.command() instanceof OrderCommand.Place;
    }

    private static Map<String, Long> words(Map<Answer.Outcome, LongAdder> counts) {
        Map<String, Long> words = new TreeMap<>();
        counts.forEach((outcome, count) -> words.put(word(outcome), count.sum()));
        return words;
    }

    private static String word(Answer.Outcome outcome) {
        return switch (outcome) {
            case DONE -> "done";
            case REPEATED -> "repeated";
            case REFUSED -> "refused";
            case KEY_REUSED -> "key-reused";
        };
    }
}
