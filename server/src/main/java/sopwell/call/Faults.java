package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import sopwell.Limits;
import sopwell.call.CallRefusal.Why;
import sopwell.call.Said.Choice;
import sopwell.call.Span.Role;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Size;

/** Finds what is wrong with one line of a call. Local to one call. */
final class Faults {
    private final Menu menu;
    private final Slips slips;
    private final Tokens tokens;
    private final Segment segment;
    private final Said said;
    private final int end;

    /**
     * @param end the next separator after the line, or the end of the text
     */
    Faults(CallParser parser, Tokens tokens, Segment segment, Said said, int end) {
        this.menu = parser.menu();
        this.slips = parser.slips();
        this.tokens = tokens;
        this.segment = segment;
        this.said = said;
        this.end = end;
    }

    /** The first fault in the order of {@link Why}, or null. */
    CallRefusal first() {
        if (said.unknown() != null) {
            return unknown();
        }
        if (said.items().size() > 1) {
            return two(Why.TWO_ITEMS, said.items(), true);
        }
        if (said.items().isEmpty()) {
            return noItem();
        }
        CallRefusal fault = quantity();
        if (fault == null && said.unfit() != null) {
            fault = unfit();
        }
        if (fault == null && said.sizes().size() > 1) {
            fault = sizeTwice();
        }
        if (fault == null && said.noWhat() != null) {
            fault = noWhat();
        }
        return fault == null ? choices() : fault;
    }

    private CallRefusal choices() {
        CallRefusal fault = wantedAndRefused();
        List<Choice> wanted = said.wanted();
        List<Group> groups = menu.groupsOf(said.item());
        for (int i = 0; fault == null && i < groups.size(); i++) {
            fault = clash(groups.get(i), inGroup(wanted, groups.get(i)));
        }
        for (int i = 0; fault == null && i < groups.size(); i++) {
            fault = tooMany(groups.get(i), inGroup(wanted, groups.get(i)));
        }
        Item item = said.item();
        boolean sizeMissing =
                !item.sizes().isEmpty() && item.defaultSize().isEmpty() && said.sizes().isEmpty();
        if (fault == null && sizeMissing) {
            fault = at(Why.SIZE_MISSING, itemPiece(), List.of(), sizeWords(item), null);
        }
        for (int i = 0; fault == null && i < groups.size(); i++) {
            fault = tooFew(groups.get(i), inGroup(wanted, groups.get(i)));
        }
        return fault;
    }

    private CallRefusal unknown() {
        Slips.Found found = slips.find(tokens, said.unknown().from(), end, said.item());
        int to = said.unknown().from() + found.tokens();
        Piece wider = new Piece(said.unknown().from(), to, null, null, false);
        return at(Why.UNKNOWN_WORD, wider, List.of(), found.texts(), null);
    }

    private CallRefusal noItem() {
        Piece first = segment.pieces().get(0);
        Piece last = segment.pieces().get(segment.pieces().size() - 1);
        Piece all = new Piece(first.from(), last.to(), null, null, false);
        List<String> items = new ArrayList<>();
        if (segment.pieces().stream().anyMatch(p -> !p.is(Role.QUANTITY) && !p.is(Role.SKIP))) {
            menu.items().stream()
                    .filter(item -> Live.takesAll(item, segment))
                    .limit(Slips.SUGGESTIONS_MAX)
                    .forEach(item -> items.add(item.words().get(0)));
        }
        return at(Why.NO_ITEM, all, List.of(), items, null);
    }

    private CallRefusal quantity() {
        for (Piece piece : said.quantities()) {
            int number = piece.meaning().number();
            if (number < 1 || number > Limits.LINE_QUANTITY_MAX) {
                List<String> limit = List.of("" + Limits.LINE_QUANTITY_MAX);
                return at(Why.QUANTITY_RANGE, piece, limit, List.of(), null);
            }
        }
        if (said.quantities().size() > 1) {
            return two(Why.QUANTITY_TWICE, said.quantities(), false);
        }
        Piece late = said.late();
        if (late != null) {
            List<String> item = List.of(itemPiece().typed(tokens));
            List<String> times = List.of("x" + late.meaning().number());
            return at(Why.QUANTITY_PLACE, late, item, times, itemPiece());
        }
        return null;
    }

    private CallRefusal unfit() {
        Piece unfit = said.unfit();
        List<String> instead = new ArrayList<>();
        if (unfit.is(Role.SIZE)) {
            instead.addAll(sizeWords(said.item()));
        }
        if (instead.isEmpty()) {
            menu.items().stream()
                    .filter(item -> unfit.phrase().about(item) != null)
                    .limit(Slips.SUGGESTIONS_MAX)
                    .forEach(item -> instead.add(item.words().get(0)));
        }
        List<String> item = List.of(itemPiece().typed(tokens));
        return at(Why.NOT_FOR_ITEM, unfit, item, instead, itemPiece());
    }

    private CallRefusal sizeTwice() {
        Piece first = said.sizes().get(0);
        for (Piece size : said.sizes()) {
            if (!size.meaning().id().equals(first.meaning().id())) {
                return two(Why.SIZE_TWICE, List.of(first, size), false);
            }
        }
        return null;
    }

    private CallRefusal noWhat() {
        Piece after = said.afterNoWhat();
        List<String> typed = List.of(after == null ? "" : after.typed(tokens));
        List<String> words = new ArrayList<>();
        for (Group group : menu.groupsOf(said.item())) {
            // Where something must be chosen, a refusal alone would only be the next fault.
            if (group.chooseMin() == 0) {
                words.addAll(optionWords(group, option -> !said.refuses(option)));
            }
        }
        return at(Why.NO_WHAT, said.noWhat(), typed, limited(words), after);
    }

    private CallRefusal wantedAndRefused() {
        CallRefusal found = null;
        for (Choice refused : said.refused()) {
            Choice wanted = Said.find(said.alone(), refused.option());
            if (wanted != null && found == null) {
                found = later(Why.WANTED_AND_REFUSED, wanted.piece(), refused.piece(), List.of());
            }
        }
        for (Piece bundle : said.bundles()) {
            List<String> options = bundle.meaning().options();
            if (found == null && options.stream().allMatch(said::refuses)) {
                Piece refused = Said.find(said.refused(), options.get(0)).piece();
                found = later(Why.WANTED_AND_REFUSED, bundle, refused, List.of());
            }
        }
        return found;
    }

    private CallRefusal clash(Group group, List<Choice> wanted) {
        Piece none = none(group);
        if (none != null && !wanted.isEmpty()) {
            return later(Why.CLASH, none, wanted.get(0).piece(), List.of(group.id()));
        }
        if (group.chooseMax() == 1 && wanted.size() > 1) {
            Piece first = wanted.get(0).piece();
            return later(Why.CLASH, first, wanted.get(1).piece(), List.of(group.id()));
        }
        return null;
    }

    private CallRefusal tooMany(Group group, List<Choice> wanted) {
        int max = group.chooseMax();
        if (wanted.size() <= max) {
            return null;
        }
        Piece excess = wanted.get(max).piece();
        return later(Why.TOO_MANY, wanted.get(0).piece(), excess, List.of(group.id(), "" + max));
    }

    private CallRefusal tooFew(Group group, List<Choice> wanted) {
        Piece none = none(group);
        Piece place = none == null ? itemPiece() : none;
        long chosen = wanted.size();
        if (wanted.isEmpty() && none == null) {
            chosen = group.defaults().stream().filter(option -> !said.refuses(option)).count();
        }
        if (chosen >= group.chooseMin()) {
            return null;
        }
        for (Choice refused : said.refused()) {
            place = refused.group().equals(group.id()) ? refused.piece() : place;
        }
        List<String> words =
                optionWords(group, o -> !said.refuses(o) && Said.find(wanted, o) == null);
        List<String> args = List.of(group.id(), "" + group.chooseMin());
        return at(Why.TOO_FEW, place, args, limited(words), null);
    }

    private Piece none(Group group) {
        for (Piece none : said.nones()) {
            if (none.meaning().group().equals(group.id())) {
                return none;
            }
        }
        return null;
    }

    private Piece itemPiece() {
        return said.items().get(0);
    }

    private static List<Choice> inGroup(List<Choice> choices, Group group) {
        List<Choice> found = new ArrayList<>(choices.size());
        for (Choice choice : choices) {
            if (choice.group().equals(group.id())) {
                found.add(choice);
            }
        }
        return found;
    }

    private static List<String> optionWords(Group group, Predicate<String> which) {
        return group.options().stream()
                .filter(option -> which.test(option.id()))
                .map(option -> option.words().get(0))
                .toList();
    }

    private static List<String> sizeWords(Item item) {
        return limited(item.sizes().stream().map((Size size) -> size.words().get(0)).toList());
    }

    private static List<String> limited(List<String> words) {
        return words.subList(0, Math.min(words.size(), Slips.SUGGESTIONS_MAX));
    }

    private CallRefusal two(Why why, List<Piece> pieces, boolean comma) {
        Piece second = pieces.get(1);
        List<String> parted = comma ? List.of(", " + second.typed(tokens)) : List.of();
        return at(why, second, List.of(pieces.get(0).typed(tokens)), parted, pieces.get(0));
    }

    /** A fault of two places, of which the later is the one to look at. */
    private CallRefusal later(Why why, Piece one, Piece two, List<String> more) {
        boolean inOrder = one.from() <= two.from();
        Piece first = inOrder ? one : two;
        Piece second = inOrder ? two : one;
        List<String> args = new ArrayList<>();
        args.add(first.typed(tokens));
        args.addAll(more);
        return at(why, second, args, List.of(), first);
    }

    private CallRefusal at(
            Why why, Piece place, List<String> more, List<String> suggestions, Piece other) {
        Span here = place.span(tokens);
        List<String> args = new ArrayList<>();
        args.add(place.typed(tokens));
        args.addAll(more);
        Span there = other == null ? null : other.span(tokens);
        return new CallRefusal(
                why,
                here.column(),
                here.length(),
                args,
                suggestions,
                there == null ? 0 : there.column(),
                there == null ? 0 : there.length());
    }
}
