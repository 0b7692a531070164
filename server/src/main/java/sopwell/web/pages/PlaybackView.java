package sopwell.web.pages;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.web.T;
import sopwell.web.live.BoardHub;
import sopwell.web.past.PastDay;

/**
 * A day that is played back, in one language. Immutable.
 *
 * @param zone the stand's, for times of day
 * @param board which board is shown
 * @param at which moment, in seconds since the day's opening
 */
public record PlaybackView(T t, ZoneId zone, PastDay day, String board, int at) {
    private static final int MINUTE = 60;
    private static final int HOURS_MARKED_MAX = 8;

    /** The least height of the curve, so that a quiet day looks quiet: ten minutes. */
    private static final int HEIGHT_SECONDS_MIN = 600;

    /** A board that can be chosen. */
    public record Tab(String board, String name) {}

    /** An hour under the curve, and how far to the right it stands. */
    public record Hour(String left, String time) {}

    /** The day's stations, and the pass. */
    public List<Tab> tabs() {
        List<Tab> tabs = new ArrayList<>();
        day.stations().forEach(s -> tabs.add(new Tab(s.id(), t.local(s.name()))));
        tabs.add(new Tab(BoardHub.PASS, t.get("pass.title")));
        return tabs;
    }

    /** Where the same day is with another board, at the same moment. */
    public String address(String other) {
        return address(other, at);
    }

    /** Where the same board is at another moment. */
    public String jump(int second) {
        return address(board, second);
    }

    private String address(String which, int second) {
        return "/playback/" + day.date() + "?board=" + which + "&at=" + second;
    }

    /** The curve's width: one for each second, never nothing. */
    public int width() {
        return Math.max(1, day.seconds());
    }

    /** The curve's height, in seconds of wait. */
    public int height() {
        int most = HEIGHT_SECONDS_MIN;
        for (PastDay.Minute minute : day.minutes()) {
            most = Math.max(most, minute.oldestSeconds());
        }
        return most;
    }

    /** How long the longest wait on the curve was, in whole minutes. */
    public int heightMinutes() {
        return height() / MINUTE;
    }

    /** The curve's corners, from left to right, as an outline that is closed at the bottom. */
    public String outline() {
        int height = height();
        StringBuilder points = new StringBuilder("0," + height);
        for (int minute = 0; minute < day.minutes().size(); minute++) {
            int right = Math.min(width(), minute * MINUTE);
            int up = height - day.minutes().get(minute).oldestSeconds();
            points.append(' ').append(right).append(',').append(up);
        }
        return points.append(' ').append(width()).append(',').append(height).toString();
    }

    /** The full hours of the stand's clock, or every second or third one of a long day. */
    public List<Hour> hours() {
        Instant from = Instant.ofEpochMilli(day.fromMs());
        ZonedDateTime hour = from.atZone(zone).truncatedTo(ChronoUnit.HOURS).plusHours(1);
        int step = 1 + day.seconds() / (HOURS_MARKED_MAX * MINUTE * MINUTE);
        List<Hour> hours = new ArrayList<>();
        while (Duration.between(from, hour.toInstant()).toSeconds() < day.seconds()) {
            double share = (double) Duration.between(from, hour.toInstant()).toSeconds() / width();
            hours.add(
                    new Hour(
                            String.format(Locale.ROOT, "%.2f%%", 100 * share),
                            t.time(hour.toInstant().toEpochMilli(), zone)));
            hour = hour.plusHours(step);
        }
        return hours;
    }

    /** The time of day so many seconds after the opening. */
    public String time(int second) {
        return t.time(day.fromMs() + second * 1000L, zone);
    }

    /** What the curve shows, in words. */
    public String described() {
        String peak =
                day.peak()
                        .map(p -> t.of("playback.curve.peak", p.waiting(), time(p.atSecond())))
                        .orElse(t.get("playback.curve.none"));
        return t.get("playback.curve") + " " + peak;
    }
}
