package sopwell.storage;

import java.io.IOException;
import sopwell.menu.Faults;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.menu.MenuParts;

/** The written form of menu events, version 1. Stateless. */
final class MenuBodies {
    private MenuBodies() {}

    static void write(BodyWriter body, MenuEvent event) throws IOException {
        switch (event.kind()) {
            case ADOPTED -> {
                Menu menu = ((MenuEvent.MenuAdopted) event).menu();
                body.text("revision", menu.revision());
                body.raw("menu", MenuWriter.tree(menu.parts()).toString());
            }
        }
    }

    static MenuEvent read(BodyReader body, MenuEvent.Kind kind) throws IOException {
        return switch (kind) {
            case ADOPTED -> {
                String revision = body.text("revision");
                Faults faults = new Faults();
                MenuParts parts =
                        MenuReader.trusted(JsonTree.rest(body.inner("menu"), faults), faults);
                body.afterInner();
                if (!faults.isEmpty()) {
                    throw new BodyReader.Unreadable("the menu: " + faults.found().get(0));
                }
                yield new MenuEvent.MenuAdopted(new Menu(revision, parts));
            }
        };
    }
}
