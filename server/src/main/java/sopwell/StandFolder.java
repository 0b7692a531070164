package sopwell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.menu.MenuFault;
import sopwell.orders.StandSettings;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeReading;
import sopwell.storage.BackupRule;
import sopwell.storage.DataFolder;
import sopwell.storage.MenuReader;
import sopwell.storage.MenuReading;
import sopwell.storage.PrivacyRule;
import sopwell.storage.RecipeReader;
import sopwell.storage.StandFile;
import sopwell.storage.StandReading;
import sopwell.web.RecipeFaults;
import sopwell.web.Texts;

/** Fills a data folder for the first time and reads what it holds. Stateless. */
final class StandFolder {
    private StandFolder() {}

    /** Puts the demo's settings, menu and recipes into an empty folder, unless told otherwise. */
    static void fillIfEmpty(DataFolder folder, Config.StartWith with) {
        boolean empty = folder.stand().isEmpty() && folder.menu().isEmpty() && !folder.hasLog();
        if (empty && with != Config.StartWith.nothing) {
            folder.putStand(resource("/demo/stand.json"));
            folder.putMenu(resource("/demo/menu.json"));
            folder.putRecipes(resource("/demo/recipes.json"));
        }
    }

    static StandSettings settings(DataFolder folder) throws StartRefused {
        return read(folder).settings().orElseThrow();
    }

    /** Where backups go and how long they are kept. */
    static BackupRule backup(DataFolder folder) throws StartRefused {
        return read(folder).backup();
    }

    /** How long people's names are kept. */
    static PrivacyRule privacy(DataFolder folder) throws StartRefused {
        return read(folder).privacy();
    }

    /** A folder that is half one stand and half another is no stand. */
    static void refuseHalfRestored(DataFolder folder) throws StartRefused {
        if (folder.isHalfRestored()) {
            throw new StartRefused(
                    "A restore into "
                            + folder.path()
                            + " was cut short. Do it again: sopwell restore --from FILE --data "
                            + folder.path()
                            + " --replace");
        }
    }

    private static StandReading read(DataFolder folder) throws StartRefused {
        byte[] json = folder.stand().orElseThrow(() -> missing(folder, "stand.json"));
        StandReading reading = StandFile.read(json);
        if (!reading.faults().isEmpty()) {
            throw faults("stand.json", reading.faults());
        }
        return reading;
    }

    static Menu menu(DataFolder folder) throws StartRefused {
        byte[] json = folder.menu().orElseThrow(() -> missing(folder, "menu.json"));
        MenuReading reading = MenuReader.read(json);
        if (!reading.faults().isEmpty()) {
            throw faults("menu.json", reading.faults());
        }
        return reading.menu().orElseThrow();
    }

    /** The recipes to begin with, when there are any; checked beside the menu. */
    static Optional<RecipeBook> recipes(DataFolder folder, Menu menu) throws StartRefused {
        Optional<byte[]> json = folder.recipes();
        if (json.isEmpty()) {
            return Optional.empty();
        }
        RecipeReading reading = RecipeReader.read(json.get(), menu);
        List<MenuFault> faults = new ArrayList<>(reading.form());
        faults.addAll(RecipeFaults.told(reading.faults(), Texts.load().in(Lang.EN)));
        if (!faults.isEmpty()) {
            throw faults("recipes.json", faults);
        }
        return reading.book();
    }

    private static StartRefused missing(DataFolder folder, String file) {
        return new StartRefused(
                "There is no "
                        + file
                        + " in "
                        + folder.path()
                        + ". Put one there, or start an empty folder with --start-with menu.");
    }

    static StartRefused faults(String file, List<MenuFault> faults) {
        String listed =
                faults.stream()
                        .map(f -> "  " + f.place() + ": " + f.wrong() + " " + f.right())
                        .collect(Collectors.joining("\n"));
        return new StartRefused(
                file + " has " + faults.size() + " fault(s); nothing was changed:\n" + listed);
    }

    private static byte[] resource(String name) {
        try (InputStream in = StandFolder.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
