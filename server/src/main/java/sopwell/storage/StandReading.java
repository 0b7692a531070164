package sopwell.storage;

import java.util.List;
import java.util.Optional;
import sopwell.menu.MenuFault;
import sopwell.orders.StandSettings;

/**
 * What came of reading a stand's settings: the settings, or everything that is wrong with them.
 * Immutable.
 *
 * @param settings there when there are no faults
 * @param backup where backups go and how long they are kept
 * @param privacy how long people's names are kept
 * @param faults none when there are settings; a fault's place is a JSON Pointer into the file
 */
public record StandReading(
        Optional<StandSettings> settings,
        BackupRule backup,
        PrivacyRule privacy,
        List<MenuFault> faults) {
    public StandReading {
        faults = List.copyOf(faults);
    }
}
