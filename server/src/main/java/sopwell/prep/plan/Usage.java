package sopwell.prep.plan;

import java.util.Arrays;

/** How many slots of one resource are taken when. Not thread-safe: for one plan. */
final class Usage {
    private static final int ROOM = 16;

    /** The minutes at which the number changes, in order, and by how many it does. */
    private long[] minutes = new long[ROOM];

    private int[] changes = new int[ROOM];
    private int count;

    /** From a minute on, so many more are taken, or fewer. */
    void change(long minute, int slots) {
        int found = Arrays.binarySearch(minutes, 0, count, minute);
        if (found >= 0) {
            changes[found] += slots;
            if (changes[found] == 0) {
                count--;
                move(found + 1, found, count - found);
            }
            return;
        }
        if (count == minutes.length) {
            minutes = Arrays.copyOf(minutes, 2 * count);
            changes = Arrays.copyOf(changes, 2 * count);
        }
        int at = -found - 1;
        move(at, at + 1, count - at);
        minutes[at] = minute;
        changes[at] = slots;
        count++;
    }

    private void move(int from, int to, int length) {
        System.arraycopy(minutes, from, minutes, to, length);
        System.arraycopy(changes, from, changes, to, length);
    }

    /** The first time between two minutes during which more than this many are taken. */
    long[] above(int most, long from, long until) {
        int used = 0;
        long began = from;
        boolean isAbove = false;
        for (int i = 0; i < count; i++) {
            used += changes[i];
            if (used > most && !isAbove) {
                began = minutes[i];
            } else if (used <= most && isAbove && minutes[i] > from) {
                return began < until ? new long[] {began, minutes[i]} : new long[] {from, until};
            }
            isAbove = used > most;
        }
        return new long[] {from, until};
    }

    /** Starts after which no more than this many are taken for so many minutes. */
    Spans whileAtMost(int most, long length) {
        Spans.Joined full = new Spans.Joined(count / 2);
        int used = 0;
        for (int i = 0; i < count; i++) {
            if (used > most) {
                full.and(minutes[i - 1] - length + 1, minutes[i] - 1);
            }
            used += changes[i];
        }
        return full.spans().outside();
    }
}
