package sopwell;

import io.undertow.server.RoutingHandler;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import sopwell.access.Access;
import sopwell.call.CallParser;
import sopwell.desk.AuditTrail;
import sopwell.desk.DayBook;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.MenuShelf;
import sopwell.desk.NameErasing;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.log.EventLog;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.mix.Names;
import sopwell.orders.StandSettings;
import sopwell.storage.MenuWriter;
import sopwell.storage.PrivacyRule;
import sopwell.storage.RecipeReader;
import sopwell.storage.RecipeWriter;
import sopwell.till.DayReport;
import sopwell.web.Care;
import sopwell.web.PastPreps;
import sopwell.web.PrepPlans;
import sopwell.web.RecipeDocs;
import sopwell.web.Tallies;
import sopwell.web.Texts;
import sopwell.web.Vitals;
import sopwell.web.api.ApiContext;
import sopwell.web.api.ApiRoutes;
import sopwell.web.live.BoardHub;
import sopwell.web.live.FrameWriter;
import sopwell.web.pages.Assets;
import sopwell.web.pages.HtmlFrames;
import sopwell.web.pages.PageContext;
import sopwell.web.pages.PageRoutes;
import sopwell.web.pages.Pages;
import sopwell.web.pages.Trust;
import sopwell.web.past.PastDays;

/** Hands the web what it needs to answer. Thread-safe. */
final class StandRoutes implements AutoCloseable {
    private static final int KEY_BYTES = 16;

    private final EventLog log;
    private final StandSettings settings;
    private final Desk desk;
    private final Follower follower;
    private final BoardHub hub;
    private final MenuShelf menus;
    private final DayBook book;
    private final Access access;
    private final LongSupplier nanos;
    private final Care care;
    private final Vitals vitals;
    private final PastDays past;
    private final NameErasing erasing;
    private final NameKeeping names;
    private final PrepPlans plans;
    private final PastPreps pastPreps;
    private final RecipeDocs recipes =
            new RecipeDocs(
                    book -> RecipeWriter.tree(book.parts()).toString(),
                    RecipeReader::read,
                    RecipeWriter::book);
    private final InstantSource clock;
    private final Supplier<Optional<Trust>> trust;
    private final Texts texts = Texts.load();
    private final Pages pages;
    private final SecureRandom random = new SecureRandom();
    private final AtomicReference<CallParser> parser = new AtomicReference<>();

    /** The running pieces of a stand that answer. */
    record Running(
            EventLog log,
            Desk desk,
            Follower follower,
            BoardHub hub,
            DayBook book,
            Access access,
            LongSupplier nanos,
            Care care,
            Vitals vitals,
            PrivacyRule privacy) {}

    StandRoutes(
            Running running,
            StandSettings settings,
            InstantSource clock,
            Supplier<Optional<Trust>> trust) {
        this.log = running.log();
        this.settings = settings;
        this.desk = running.desk();
        this.follower = running.follower();
        this.hub = running.hub();
        this.menus = new MenuShelf(log);
        this.book = running.book();
        this.access = running.access();
        this.nanos = running.nanos();
        this.care = running.care();
        this.vitals = running.vitals();
        this.past = new PastDays(log, settings);
        this.erasing =
                new NameErasing(
                        log,
                        desk::submit,
                        book::doubt,
                        date -> {
                            past.forget(date);
                            book.recount(date);
                        });
        NameKeeping.Time time =
                new NameKeeping.Time(care.clock(), settings.zone(), BuiltAt.millis());
        this.names = new NameKeeping(log, erasing, access, running.privacy(), time);
        this.plans = new PrepPlans(log, follower, book, settings, clock);
        this.pastPreps = new PastPreps(log, follower, book, settings, clock);
        this.clock = clock;
        this.trust = trust;
        this.pages = new Pages(follower::menu, settings.zone());
    }

    void add(RoutingHandler routes) {
        Tallies tallies = new Tallies(follower, book, settings, this::names);
        PageRoutes.add(
                routes,
                new PageContext(
                        desk,
                        follower,
                        texts,
                        settings,
                        clock,
                        Assets.load(),
                        pages,
                        hub::board,
                        () -> parser(follower.menu()),
                        this::parserOf,
                        tallies,
                        date -> askDay(date, s -> DayReport.of(s.orders(), s.till())),
                        past,
                        recipes,
                        plans,
                        care,
                        trust,
                        pastPreps,
                        this::newKey,
                        new AuditTrail(log, settings),
                        access,
                        nanos,
                        erasing,
                        names::state));
        ApiRoutes.add(
                routes,
                new ApiContext(
                        desk,
                        follower,
                        hub,
                        texts,
                        settings,
                        menus,
                        this::parser,
                        menu -> MenuWriter.tree(menu.parts()).toString(),
                        recipes,
                        plans,
                        clock,
                        new ApiContext.DayQuestions() {
                            @Override
                            public <A> CompletableFuture<Optional<A>> ask(
                                    LocalDate date, Function<Stand, A> question) {
                                return askDay(date, question);
                            }
                        },
                        care,
                        tallies,
                        vitals));
    }

    /** What is prepared when, also for the stand itself. */
    PrepPlans plans() {
        return plans;
    }

    /** Ends what is still being read for somebody. */
    @Override
    public void close() {
        names.close();
        past.close();
        plans.close();
        pastPreps.close();
    }

    FrameWriter html(Lang lang) {
        return new HtmlFrames(pages, texts.in(lang));
    }

    /** A key that nobody has used or can guess; in letters, so that it never looks like a card. */
    private String newKey() {
        byte[] bytes = new byte[KEY_BYTES];
        random.nextBytes(bytes);
        StringBuilder key = new StringBuilder();
        for (byte one : bytes) {
            key.append((char) ('a' + (one >> 4 & 15))).append((char) ('a' + (one & 15)));
        }
        return key.toString();
    }

    /** Kept until the menu changes: building one takes longer than using it. */
    private CallParser parser(Menu menu) {
        CallParser known = parser.get();
        if (known == null || !known.menu().revision().equals(menu.revision())) {
            known = new CallParser(menu);
            parser.set(known);
        }
        return known;
    }

    /** The menu in force, then those before it: what is no longer sold keeps its name. */
    private Names names() {
        List<Menu> known = new ArrayList<>();
        Optional.ofNullable(follower.menu()).ifPresent(known::add);
        known.addAll(menus.newestFirst());
        return new Names(known);
    }

    private Optional<CallParser> parserOf(String revision) {
        Menu now = follower.menu();
        return now != null && now.revision().equals(revision)
                ? Optional.of(parser(now))
                : menus.menu(revision).map(CallParser::new);
    }

    /** The newest day is at hand; an older one is read from the log, off the waiting threads. */
    private <A> CompletableFuture<Optional<A>> askDay(LocalDate date, Function<Stand, A> question) {
        return follower.ask(
                        stand ->
                                stand.orders()
                                        .date()
                                        .filter(date::equals)
                                        .map(d -> question.apply(stand)))
                .thenApplyAsync(
                        found ->
                                found.isPresent()
                                        ? found
                                        : Replay.day(log, settings, date).map(question));
    }
}
