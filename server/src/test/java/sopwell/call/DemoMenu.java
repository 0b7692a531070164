package sopwell.call;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import sopwell.menu.Menu;
import sopwell.storage.MenuReader;

/** The demo stand's menu. */
final class DemoMenu {
    private DemoMenu() {}

    static Menu read() {
        try (InputStream in = DemoMenu.class.getResourceAsStream("/demo/menu.json")) {
            return MenuReader.read(in.readAllBytes()).menu().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
