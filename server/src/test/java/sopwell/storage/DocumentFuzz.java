package sopwell.storage;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import sopwell.menu.Menu;
import sopwell.stock.recipes.RecipeReading;

/** Any bytes as a menu and as a book of recipes: read, or refused with faults that say why. */
public final class DocumentFuzz {
    private static final Menu MENU = menu();

    private DocumentFuzz() {}

    /** One document. */
    public static void fuzzerTestOneInput(byte[] data) {
        MenuReading menu = MenuReader.read(data);
        if (menu.menu().isPresent() != menu.faults().isEmpty()) {
            throw new AssertionError("a menu and faults, or neither: " + menu.faults());
        }
        RecipeReading recipes = RecipeReader.read(data, MENU);
        boolean faulty = !recipes.form().isEmpty() || !recipes.faults().isEmpty();
        if (recipes.book().isPresent() == faulty) {
            throw new AssertionError("a book and faults, or neither");
        }
    }

    private static Menu menu() {
        try (InputStream in = DocumentFuzz.class.getResourceAsStream("/demo/menu.json")) {
            return MenuReader.read(in.readAllBytes()).menu().orElseThrow();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
