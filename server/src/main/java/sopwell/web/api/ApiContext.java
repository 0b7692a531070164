package sopwell.web.api;

import java.time.InstantSource;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.call.CallParser;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.MenuShelf;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.orders.StandSettings;
import sopwell.web.Care;
import sopwell.web.PrepPlans;
import sopwell.web.RecipeDocs;
import sopwell.web.Tallies;
import sopwell.web.Texts;
import sopwell.web.Vitals;
import sopwell.web.live.BoardHub;

/**
 * What the program interface works with. Immutable.
 *
 * @param parser the parser of the menu in force, kept per revision
 * @param menuJson writes a menu as JSON
 * @param recipes books of recipes as documents
 * @param plans what to prepare
 * @param day counts something on a business day, off the I/O threads; empty when the date never had
 *     one
 * @param care backups and the box's clock
 * @param tallies what was sold on any days, and how long guests waited
 * @param vitals what a program that watches over the stand is told
 */
public record ApiContext(
        Desk desk,
        Follower follower,
        BoardHub hub,
        Texts texts,
        StandSettings settings,
        MenuShelf menus,
        Function<Menu, CallParser> parser,
        Function<Menu, String> menuJson,
        RecipeDocs recipes,
        PrepPlans plans,
        InstantSource clock,
        DayQuestions day,
        Care care,
        Tallies tallies,
        Vitals vitals) {

    /** Asks about a business day, today or long ago. Thread-safe. */
    public interface DayQuestions {
        /** The answer on that day's stand, or empty when the date never had a business day. */
        <A> CompletableFuture<Optional<A>> ask(LocalDate date, Function<Stand, A> question);
    }
}
