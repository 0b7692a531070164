package sopwell.storage;

import java.util.List;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.menu.MenuFault;

/**
 * What came of reading a menu: a menu, or everything that is wrong with it. Immutable.
 *
 * @param menu there when there are no faults
 * @param faults none when there is a menu
 */
public record MenuReading(Optional<Menu> menu, List<MenuFault> faults) {
    public MenuReading {
        faults = List.copyOf(faults);
    }
}
