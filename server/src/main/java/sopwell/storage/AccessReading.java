package sopwell.storage;

import java.util.List;
import java.util.Optional;
import sopwell.access.AccessState;
import sopwell.menu.MenuFault;

/**
 * What came of reading who may do what: that, or everything that is wrong with it. Immutable.
 *
 * @param state there when there are no faults
 */
public record AccessReading(Optional<AccessState> state, List<MenuFault> faults) {
    public AccessReading {
        faults = List.copyOf(faults);
    }
}
