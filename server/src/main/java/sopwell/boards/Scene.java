package sopwell.boards;

import java.util.function.Function;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.kitchen.Schedule;
import sopwell.menu.Menu;
import sopwell.stock.Pans;

/**
 * What the boards of stations are drawn from at one moment. Belongs to the thread that owns the
 * kitchen, and is not kept: the kitchen goes on.
 *
 * @param menu the menu in force: its steps are the columns
 * @param menus the menu of a revision, for parts ordered from an earlier one
 * @param pans what is kept hot
 * @param schedule what is to be begun when
 * @param nowMs the stand's clock, milliseconds since 1970-01-01 UTC
 */
public record Scene(
        Menu menu,
        Function<String, Menu> menus,
        Kitchen kitchen,
        Pans pans,
        Schedule schedule,
        long nowMs) {
    /** The scene now, with its schedule made. */
    public static Scene of(
            Menu menu, Function<String, Menu> menus, Kitchen kitchen, Pans pans, long nowMs) {
        return new Scene(menu, menus, kitchen, pans, Schedule.of(kitchen, menu, nowMs), nowMs);
    }

    /** The menu that a part was ordered from. */
    Menu menuOf(Part part) {
        return menus.apply(part.making().menuRevision());
    }
}
