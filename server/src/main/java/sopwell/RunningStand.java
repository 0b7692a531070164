package sopwell;

import jakarta.servlet.ServletException;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongSupplier;
import java.util.logging.Logger;
import sopwell.access.Access;
import sopwell.backup.Backups;
import sopwell.demo.DemoLunch;
import sopwell.demo.History;
import sopwell.desk.Answer;
import sopwell.desk.DayBook;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.StandClock;
import sopwell.desk.StandCommand;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.EventLog;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.orders.StandSettings;
import sopwell.stock.recipes.RecipeBook;
import sopwell.storage.BackupRule;
import sopwell.storage.DataFolder;
import sopwell.storage.LogCheck;
import sopwell.storage.LogLimits;
import sopwell.storage.SqliteLog;
import sopwell.storage.TallyFile;
import sopwell.web.Care;
import sopwell.web.Gate;
import sopwell.web.Server;
import sopwell.web.Vitals;
import sopwell.web.api.JsonFrames;
import sopwell.web.live.BoardHub;
import sopwell.web.live.FrameWriter;
import sopwell.web.pages.Trust;

/**
 * A stand that is open for requests: everything is made here, in the order in which it needs each
 * other, and closed the other way round. Thread-safe.
 */
final class RunningStand implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(RunningStand.class.getName());

    private final StandClock clock;
    private final DataFolder folder;
    private final StandAccess access;
    private final SqliteLog log;
    private final TallyFile tallies;
    private final Backups backups;
    private final DiskWatch disk;
    private final Desk desk;
    private final Follower follower;
    private final Server server;
    private final StandRoutes routes;
    private final StandMetrics metrics;
    private final DayTicks dayTicks;
    private final String host;
    private final Transport transport;
    private final ScheduledExecutorService ticks =
            Executors.newSingleThreadScheduledExecutor(task -> new Thread(task, "ticks"));
    private final Future<?> cuts;
    private final Future<?> clockLooks;
    private final Future<?> renewals;
    private final BookKeeping keeping;
    private final PlanKeeping planKeeping;
    private final LogChecking checking;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final AtomicBoolean closing = new AtomicBoolean();

    /**
     * The clocks of a server.
     *
     * @param wall what time it is
     * @param nanos a clock that never jumps, in nanoseconds
     * @param upMillis for how long the box is up, in milliseconds
     */
    record Clocks(InstantSource wall, LongSupplier nanos, LongSupplier upMillis) {
        /** Those of a box that never sleeps. */
        Clocks(InstantSource wall, LongSupplier nanos) {
            this(wall, nanos, () -> TimeUnit.NANOSECONDS.toMillis(nanos.getAsLong()));
        }
    }

    /**
     * What a stand's folder says.
     *
     * @param recipes those to begin with, at the first start only: then the log has the book
     */
    private record Founding(
            StandSettings settings,
            BackupRule backup,
            Menu menu,
            Optional<RecipeBook> recipes,
            StandAccess access,
            DiskWatch.Disk disk) {}

    private RunningStand(
            DataFolder folder,
            Config.Serve asked,
            Founding founding,
            Transport transport,
            Clocks clocks)
            throws StartRefused {
        StandSettings settings = founding.settings();
        this.folder = folder;
        this.access = founding.access();
        this.host = asked.host;
        this.log = folder.openLog(settings.stand());
        LogCheck check = folder.checkOf(settings.stand());
        long last = log.lastSeq();
        Runnable newest = () -> check.newest(last, LogLimits.START_CHECK_EVENTS);
        this.tallies = folder.openTallies(settings.stand());
        if (last == 0) {
            newest.run();
            invent(asked.startWith, founding, clocks.wall().millis());
        }
        this.clock = DayTicks.clock(clocks, log);
        this.follower =
                Ahead.whileChecking(newest, () -> new Follower(log, settings), Follower::close);
        this.disk = new DiskWatch(founding.disk(), log, clocks.nanos());
        Meters meters = new Meters(clocks.nanos());
        EventLog timed = new TimedLog(log, meters);
        this.desk = new Desk(timed, settings, clock, follower::follow, disk.guard());
        adopt(founding.menu());
        founding.recipes().ifPresent(this::adopt);
        this.transport = transport;
        BoardHub hub = new BoardHub(follower, log.epoch(), clock, clocks.nanos());
        DayBook book = new DayBook(log, settings, tallies.shelves());
        this.backups =
                new Backups(
                        new Backups.Source(folder, log, settings, founding.backup()),
                        clock,
                        clocks.nanos());
        hub.tellSeen(backups::seen);
        this.checking = new LogChecking(check, log::lastSeq, clock);
        this.routes = routes(hub, book, clocks.nanos(), settings);
        Server.Place place = transport.place(asked).behind(gate(clocks.wall()), meters);
        this.server = server(place, routes, hub);
        this.metrics = metrics(meters, hub);
        listen(asked);
        this.dayTicks = new DayTicks(desk, follower, clock, log::lastSeq);
        this.keeping = new BookKeeping(book);
        backups.start();
        this.clockLooks = watchDays();
        this.renewals = watchCertificate();
        this.planKeeping = new PlanKeeping(follower, desk, routes.plans(), settings.zone());
        this.cuts =
                ticks.scheduleWithFixedDelay(this::tick, 1, Limits.TICK_SECONDS, TimeUnit.SECONDS);
    }

    private static Server server(Server.Place place, StandRoutes routes, BoardHub hub) {
        Map<Lang, FrameWriter> html = new EnumMap<>(Lang.class);
        for (Lang lang : Lang.values()) {
            html.put(lang, routes.html(lang));
        }
        try {
            return new Server(place, routes::add, hub, new JsonFrames(), html);
        } catch (ServletException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private Future<?> watchCertificate() {
        return ticks.scheduleWithFixedDelay(
                () -> transport.renew(clock.instant()),
                Limits.CERTIFICATE_SECONDS,
                Limits.CERTIFICATE_SECONDS,
                TimeUnit.SECONDS);
    }

    /**
     * Starts a stand.
     *
     * @throws StartRefused when the folder or the address can't be used as they are
     */
    static RunningStand start(Config.Serve asked, Clocks clocks, DiskWatch.Disk disk)
            throws StartRefused {
        DataFolder folder = DataFolder.open(asked.data);
        StandFolder.refuseHalfRestored(folder);
        StandFolder.fillIfEmpty(folder, asked.startWith);
        StandSettings settings = StandFolder.settings(folder);
        if (asked.acceptLoss) {
            folder.acceptLoss(settings.stand())
                    .ifPresent(
                            lost -> Told.of(Happening.LOSS_ACCEPTED).own("lost", lost).to(LOGGER));
        }
        Menu menu = StandFolder.menu(folder);
        Optional<RecipeBook> recipes =
                folder.hasLog() ? Optional.empty() : StandFolder.recipes(folder, menu);
        StandAccess access = StandAccess.start(folder, asked, clocks.wall());
        return new RunningStand(
                folder,
                asked,
                new Founding(settings, StandFolder.backup(folder), menu, recipes, access, disk),
                Transport.of(asked, settings, folder, clocks.wall().instant()),
                clocks);
    }

    /** Passwords are fresh by the clock by which they were typed. */
    private Gate gate(InstantSource wall) {
        return new Gate(
                access.access(),
                wall,
                order -> follower.ask(stand -> stand.till().of(order).keptCents() > 0));
    }

    /** Backups are told of a day's closing, and the clock whether a day is open. */
    private Future<?> watchDays() {
        boolean open = follower.ask(stand -> stand.orders().isDayOpen()).join();
        Closings closings = new Closings(open, backups::dayClosed);
        follower.watch(closings);
        clock.during(closings::isDayOpen);
        return ticks.scheduleWithFixedDelay(
                clock::look,
                Limits.CLOCK_LOOK_SECONDS,
                Limits.CLOCK_LOOK_SECONDS,
                TimeUnit.SECONDS);
    }

    private StandRoutes routes(
            BoardHub hub, DayBook book, LongSupplier nanos, StandSettings settings)
            throws StartRefused {
        return new StandRoutes(
                new StandRoutes.Running(
                        log,
                        desk,
                        follower,
                        hub,
                        book,
                        access.access(),
                        nanos,
                        new Care(backups::state, backups::makeNow, clock::state, disk::state),
                        vitals(),
                        StandFolder.privacy(folder)),
                settings,
                clock,
                transport::trust);
    }

    private Vitals vitals() {
        return new Vitals(
                Version.NUMBER, DataFolder.schema(), checking::found, () -> metrics.scrape());
    }

    private StandMetrics metrics(Meters meters, BoardHub hub) {
        return new StandMetrics(
                new StandMetrics.Sources(
                        meters,
                        access.signIns(),
                        folder,
                        desk,
                        follower,
                        hub,
                        server.cuts(),
                        backups::state,
                        clock::state,
                        checking::found,
                        disk::state),
                clock);
    }

    /** Where a browser finds it. */
    String address() {
        return transport.scheme()
                + "://"
                + (host.contains(":") ? "[" + host + "]" : host)
                + ":"
                + server.port();
    }

    /** How a tablet is told whom to trust, when it must be told. */
    Optional<String> fingerprint() {
        return transport.trust().map(Trust::fingerprint);
    }

    Access access() {
        return access.access();
    }

    Set<String> routes() {
        return server.routes();
    }

    /** The log's last place. */
    long seq() {
        return log.lastSeq();
    }

    void awaitClosed() throws InterruptedException {
        closed.await();
    }

    /** The network first, the log last. */
    @Override
    public void close() {
        if (!closing.compareAndSet(false, true)) {
            return;
        }
        cuts.cancel(false);
        clockLooks.cancel(false);
        renewals.cancel(false);
        ticks.shutdown();
        keeping.close();
        backups.close();
        checking.close();
        server.close();
        closeInner();
        closed.countDown();
    }

    /** What there is without the network. */
    private void closeInner() {
        access.close();
        routes.close();
        disk.close();
        desk.close();
        follower.close();
        tallies.close();
        try {
            log.close();
        } finally {
            folder.close();
        }
        Told.of(Happening.STOPPED).to(LOGGER);
    }

    /** Fills an empty log with what was asked for, for the demo. */
    private void invent(Config.StartWith with, Founding founding, long boxMs) {
        StandSettings settings = founding.settings();
        Menu menu = founding.menu();
        RecipeBook recipes = founding.recipes().orElseGet(RecipeBook::empty);
        long nowMs = Math.max(boxMs, BuiltAt.millis());
        switch (with) {
            case demo -> {
                LocalDate last = DemoLunch.date(settings, nowMs).minusDays(1);
                History.Days weeks = History.eightWeeks(settings, menu, last);
                History.play(log, tallies.shelves(), weeks, (days, orders) -> {});
                DemoLunch.play(log, settings, menu, recipes, nowMs);
            }
            case lunch -> DemoLunch.play(log, settings, menu, recipes, nowMs);
            case menu, nothing -> {}
        }
    }

    private void listen(Config.Serve asked) throws StartRefused {
        try {
            server.start();
        } catch (RuntimeException taken) {
            checking.close();
            backups.close();
            closeInner();
            throw new StartRefused(
                    "Can't listen on "
                            + asked.host
                            + " port "
                            + asked.port
                            + ": "
                            + Optional.ofNullable(taken.getCause()).orElse(taken).getMessage()
                            + ". Choose another with --port, or 0 for any free one.");
        }
    }

    /** The stand's own keys hold a space, as no program's may; known ones ask for nothing. */
    private void adopt(Menu menu) {
        String key = "menu " + menu.revision() + " " + log.lastSeq();
        desk.submit(key, key, new StandCommand.AdoptMenu(menu)).join();
        follower.ask(stand -> stand.menu().revision()).join();
    }

    private void adopt(RecipeBook book) {
        String key = "recipes " + book.revision() + " " + log.lastSeq();
        String none = RecipeBook.empty().revision();
        desk.submit(key, key, new StandCommand.AdoptRecipes(book, none)).join();
    }

    /** A tick that fails must not be the last: the disk may be well again at the next. */
    private void tick() {
        try {
            dayTicks.look();
            access.access().tick();
            CompletableFuture<Optional<Answer>> unused = planKeeping.look();
        } catch (RuntimeException fault) {
            Told.of(Happening.TICK_FAILED).fault(fault).to(LOGGER);
        }
    }
}
