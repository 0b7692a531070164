package sopwell.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import sopwell.desk.StandCommand;

/** Everything that people do in a day, as often as chance will have it. Belongs to one thread. */
final class Deeds {
    private static final int RUSH_OF_TEN = 4;

    private final Counter counter;
    private final World world;
    private final List<Supplier<StandCommand>> usual = new ArrayList<>();
    private final Guests guests;

    Deeds(World world) {
        this.world = world;
        this.guests = new Guests(world);
        Hands hands = new Hands(world);
        Cooks cooks = new Cooks(world);
        counter = new Counter(world);
        often(14, guests::place);
        often(2, guests::mistype);
        often(2, guests::told);
        often(6, guests::change);
        often(1, guests::voidOrder);
        often(1, guests::discount);
        often(8, hands::start);
        often(24, hands::up);
        often(5, hands::seen);
        often(2, hands::bringBack);
        often(12, hands::hand);
        often(3, hands::handBack);
        often(3, hands::call);
        often(2, hands::countBags);
        often(1, hands::setHands);
        often(3, hands::have);
        often(2, hands::remake);
        often(2, hands::refill);
        often(1, cooks::keepPlan);
        often(2, cooks::count);
        often(1, cooks::waste);
        often(1, cooks::deliver);
        often(1, cooks::cleanSlicer);
        often(1, cooks::start);
        often(2, cooks::move);
        often(2, cooks::measure);
        often(1, cooks::gave);
        often(1, cooks::discard);
        often(1, cooks::useUp);
        often(3, cooks::clock);
        often(3, hands::ask);
        often(3, hands::answer);
        often(9, counter::pay);
        often(5, counter::refund);
        often(2, counter::openTill);
        often(3, counter::move);
        often(1, counter::closeTill);
        often(2, counter::print);
        often(1, counter::mark);
        often(1, counter::lift);
        often(1, counter::liftDue);
        often(1, counter::adopt);
        often(1, counter::adoptRecipes);
        often(1, counter::openDay);
        often(1, counter::closeDay);
        often(1, counter::reopenDay);
        often(1, counter::cutDay);
    }

    /** What is done next, or null when there is nobody to do it to. */
    StandCommand next(boolean rush) {
        if (world.shown().orders().closedAtMs() > 0 && world.oneIn(2)) {
            return counter.reopenDay();
        }
        if (world.shown().orders().isDayOpen()
                && world.shown().orders().all().isEmpty()
                && world.oneIn(3)) {
            return counter.closeDay();
        }
        boolean order = rush && world.random.nextInt(10) < RUSH_OF_TEN;
        return order ? guests.place() : world.any(usual).get();
    }

    private void often(int weight, Supplier<StandCommand> deed) {
        for (int i = 0; i < weight; i++) {
            usual.add(deed);
        }
    }
}
