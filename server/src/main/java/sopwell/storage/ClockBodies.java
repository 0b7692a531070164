package sopwell.storage;

import java.io.IOException;
import sopwell.stock.larder.LarderEvent.ClockMeasured;
import sopwell.stock.larder.LarderEvent.ClockStarted;
import sopwell.stock.larder.LarderEvent.ClockStopped;
import sopwell.stock.larder.LarderEvent.StockCarried;
import sopwell.stock.larder.TimeClock;
import sopwell.stock.safety.Temperature;

/** The written form of the clocks of food that is held by time alone, version 1. Stateless. */
final class ClockBodies {
    private ClockBodies() {}

    static void started(BodyWriter body, ClockStarted started) throws IOException {
        body.text("clock", started.clock());
        body.text("what", started.what());
        body.flag("longer", started.isLonger());
        body.number("hundredthsF", started.temperature().hundredthsF());
    }

    static ClockStarted started(BodyReader body) throws IOException {
        return new ClockStarted(
                body.text("clock"),
                body.text("what"),
                body.flag("longer"),
                new Temperature(body.whole("hundredthsF")));
    }

    static void measured(BodyWriter body, ClockMeasured measured) throws IOException {
        body.text("clock", measured.clock());
        body.number("hundredthsF", measured.temperature().hundredthsF());
    }

    static ClockMeasured measured(BodyReader body) throws IOException {
        return new ClockMeasured(body.text("clock"), new Temperature(body.whole("hundredthsF")));
    }

    static void stopped(BodyWriter body, ClockStopped stopped) throws IOException {
        body.text("clock", stopped.clock());
        body.flag("discarded", stopped.isDiscarded());
    }

    static ClockStopped stopped(BodyReader body) throws IOException {
        return new ClockStopped(body.text("clock"), body.flag("discarded"));
    }

    /** A day that opens with no clock says nothing of them. */
    static void carried(BodyWriter body, StockCarried carried) throws IOException {
        if (!carried.clocks().isEmpty()) {
            body.objects("clocks", carried.clocks(), ClockBodies::clock);
        }
        body.numberIfAny("clocksStarted", carried.clocksStarted());
    }

    private static void clock(BodyWriter body, TimeClock clock) throws IOException {
        body.text("clock", clock.id());
        body.text("what", clock.what());
        body.flag("longer", clock.isLonger());
        body.number("startedAtMs", clock.startedAtMs());
        body.objects("readings", clock.readings(), LarderBodies::reading);
    }

    static TimeClock clock(BodyReader body) throws IOException {
        return new TimeClock(
                body.text("clock"),
                body.text("what"),
                body.flag("longer"),
                body.number("startedAtMs"),
                body.objects("readings", LarderBodies::reading));
    }
}
