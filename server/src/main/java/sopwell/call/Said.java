package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import sopwell.call.Span.Role;
import sopwell.menu.Item;

/**
 * What one line of a call says, sorted by role, before it is judged. Local to one call. Words that
 * mean nothing are gone; words that are unknown or that the item doesn't take are only kept as
 * faults.
 */
final class Said {
    /**
     * One option wanted or refused, by itself or in a bundle.
     *
     * @param piece the words that said it
     */
    record Choice(Piece piece, String option, String group) {}

    private final Item item;
    private final List<Piece> items = new ArrayList<>(1);
    private final List<Piece> quantities = new ArrayList<>(1);
    private final List<Piece> sizes = new ArrayList<>(1);
    private final List<Piece> bundles = new ArrayList<>(1);
    private final List<Piece> nones = new ArrayList<>(1);
    private final List<Choice> alone = new ArrayList<>();
    private final List<Choice> refused = new ArrayList<>(2);
    private final List<String> ids = new ArrayList<>();
    private Piece late;
    private Piece unknown;
    private Piece unfit;
    private Piece no;
    private Piece noWhat;
    private Piece afterNoWhat;
    private boolean openNo;

    Said(Segment segment) {
        item = segment.item();
        for (Piece piece : segment.pieces()) {
            if (!piece.is(Role.SKIP)) {
                add(piece);
            }
        }
        if (no != null) {
            openNo = true;
            dangling(no, null);
        }
    }

    Item item() {
        return item;
    }

    List<Piece> items() {
        return items;
    }

    List<Piece> quantities() {
        return quantities;
    }

    List<Piece> sizes() {
        return sizes;
    }

    /** Bundles of at least one option. */
    List<Piece> bundles() {
        return bundles;
    }

    /** Bundles that say "none" of their group. */
    List<Piece> nones() {
        return nones;
    }

    /** Options wanted by their own words. */
    List<Choice> alone() {
        return alone;
    }

    List<Choice> refused() {
        return refused;
    }

    /** Sizes, options and bundles in the order in which they were said. */
    List<String> ids() {
        return ids;
    }

    /** The first bare number after the item, or null. */
    Piece late() {
        return late;
    }

    /** The first unknown word, or null. */
    Piece unknown() {
        return unknown;
    }

    /** The first word that the item doesn't take, or null; means nothing without an item. */
    Piece unfit() {
        return unfit;
    }

    /** The first "no" that refuses nothing, or null. */
    Piece noWhat() {
        return noWhat;
    }

    /** What follows that "no", or null. */
    Piece afterNoWhat() {
        return afterNoWhat;
    }

    /** Whether the line ends with "no", perhaps with an unknown word after it. */
    boolean openNo() {
        return openNo;
    }

    boolean refuses(String option) {
        for (Choice choice : refused) {
            if (choice.option().equals(option)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The options wanted, each once, in the order said: bundles opened, what is refused left out.
     */
    List<Choice> wanted() {
        if (bundles.isEmpty()) {
            return alone;
        }
        List<Choice> all = new ArrayList<>(alone);
        for (Piece bundle : bundles) {
            for (String option : bundle.meaning().options()) {
                if (!refuses(option) && find(all, option) == null) {
                    all.add(new Choice(bundle, option, bundle.meaning().group()));
                }
            }
        }
        all.sort((a, b) -> Integer.compare(a.piece().from(), b.piece().from()));
        return all;
    }

    /** The choice of an option among some, or null. */
    static Choice find(List<Choice> choices, String option) {
        for (Choice choice : choices) {
            if (choice.option().equals(option)) {
                return choice;
            }
        }
        return null;
    }

    private void add(Piece piece) {
        Piece before = no;
        no = null;
        openNo = false;
        Role role = piece.role();
        boolean choice = role == Role.OPTION || role == Role.BUNDLE;
        if (role == Role.UNKNOWN) {
            unknown = unknown == null ? piece : unknown;
            openNo = before != null;
            return;
        }
        if (before != null && (!choice || piece.meaning().none())) {
            dangling(before, piece);
        }
        if (!piece.fits()) {
            unfit = unfit == null ? piece : unfit;
        } else if (choice) {
            choose(piece, before != null);
        } else {
            note(piece, role);
        }
    }

    private void note(Piece piece, Role role) {
        if (role == Role.NO) {
            no = piece;
        } else if (role == Role.ITEM) {
            items.add(piece);
        } else if (role == Role.SIZE) {
            sizes.add(piece);
            ids.add(piece.meaning().id());
        } else if (role == Role.QUANTITY) {
            quantities.add(piece);
            if (late == null && !items.isEmpty() && piece.bareNumber()) {
                late = piece;
            }
        }
    }

    private void choose(Piece piece, boolean isRefused) {
        Meaning meaning = piece.meaning();
        ids.add(meaning.id());
        if (meaning.none()) {
            nones.add(piece);
        } else if (meaning.role() == Role.BUNDLE && !isRefused) {
            bundles.add(piece);
        } else {
            List<Choice> choices = isRefused ? refused : alone;
            for (String option : meaning.options()) {
                if (find(choices, option) == null) {
                    choices.add(new Choice(piece, option, meaning.group()));
                }
            }
        }
    }

    private void dangling(Piece theNo, Piece follower) {
        if (noWhat == null) {
            noWhat = theNo;
            afterNoWhat = follower;
        }
    }
}
