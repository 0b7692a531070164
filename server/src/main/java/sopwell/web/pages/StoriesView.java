package sopwell.web.pages;

import java.time.ZoneId;
import java.util.List;
import sopwell.mix.Names;
import sopwell.mix.OrderStory;
import sopwell.mix.OrderStory.Step;
import sopwell.mix.OrderStory.What;
import sopwell.web.T;

/**
 * What happened to the slowest orders of a day, in one language. Immutable.
 *
 * @param zone the stand's, for times of day
 */
public record StoriesView(T t, ZoneId zone, Names names, List<OrderStory> stories) {
    private static final double SECOND_MS = 1_000;

    public StoriesView {
        stories = List.copyOf(stories);
    }

    /** Which order it is, and how long its guest waited. */
    public String title(OrderStory story) {
        String number = Integer.toString(story.order().number());
        String who = story.order().name().isEmpty() ? number : number + " " + story.order().name();
        return t.of("story.title", who, t.minutes(story.waitedSeconds()));
    }

    /** When a step was, by the stand's clock. */
    public String time(Step step) {
        return t.time(step.atMs(), zone);
    }

    /** How long after the call a step was. */
    public String after(OrderStory story, Step step) {
        return t.minutes((step.atMs() - story.order().takenAtMs()) / SECOND_MS);
    }

    /** What happened. */
    public String sentence(OrderStory story, Step step) {
        if (step.what() == What.CALLED) {
            return t.of("story.CALLED", t.quote(story.order().quote()));
        }
        String station = step.station().isEmpty() ? "" : t.local(names.station(step.station()));
        String item = step.item().isEmpty() ? "" : t.local(names.item(step.item()));
        String why = step.why().map(reason -> t.under("remake", reason.name())).orElse("");
        String plain = t.under("story", step.what().name(), station, item, step.pieces(), why);
        String words = step.what() == What.CHANGED ? t.reason(step.words()) : step.words();
        return words.isEmpty() ? plain : t.of("story.words", plain, words);
    }
}
