package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.backup.BackupLimits;
import sopwell.web.Reply;

/** The page about the backups and the box's clock. Thread-safe. */
final class BackupRoutes {
    private static final Logger LOGGER = Logger.getLogger(BackupRoutes.class.getName());
    private static final String PATH = "/settings/backup";

    private final PageContext context;
    private final PageHandling handling;

    BackupRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.handler(this::page));
        routes.post(PATH, handling.handler(ask -> make()));
    }

    /** The page says what came of it, and that it goes on when it takes long. */
    private Reply make() throws PageHandling.Interrupted {
        try {
            context.care()
                    .makeBackup()
                    .get()
                    .get(BackupLimits.BACKUP_WAIT_MILLIS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException goesOn) {
            LOGGER.log(Level.FINE, "a backup takes longer than a press", goesOn);
        } catch (ExecutionException fault) {
            throw new IllegalStateException(fault.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new PageHandling.Interrupted(stopped);
        }
        return PageHandling.redirect(PATH);
    }

    private Reply page(Ask ask) {
        BackupView view = BackupView.of(context, ask.screen().t());
        return PageHandling.html(
                200, context.pages().render("backup/page", Map.of("s", ask.screen(), "v", view)));
    }
}
