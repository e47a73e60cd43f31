"""One maker, every case, every stray pattern: the joint chance of a garment and a month (sections 6 and 7 of docs/model.md)."""
from decimal import Decimal, getcontext
from fractions import Fraction
from itertools import product

from characters import typed
from clues import free_rows_clue, label_clue, mark_clue, rows_of
from codes import CodeList, possible_figures
from marks import other_weight, seen_list, value_shares
from months import month_index
from rows import CODES, RowReader
from schemes import Printer

getcontext().prec = 60


def conditions(node):
    """Every `when` below a node of a book."""
    if isinstance(node, dict):
        for key, below in node.items():
            if key == "when":
                yield below
            else:
                yield from conditions(below)
    elif isinstance(node, list):
        for below in node:
            yield from conditions(below)


def listed(values):
    return values if isinstance(values, list) else [values]


def power(value, temper):
    """value ** temper, to 60 figures when the temper is not 1."""
    if temper == 1 or value == 0:
        return value
    base = Decimal(value.numerator) / Decimal(value.denominator)
    return Fraction(base ** (Decimal(temper.numerator) / Decimal(temper.denominator)))


class Maker:
    """A garment under one maker's book (or none) beside the public ones."""

    def __init__(self, name, books, garment, axis):
        self.name, self.books, self.axis = name, books, axis
        self.saw, self.printer = garment["saw"], Printer(axis)
        self.maker_book = next((book for book in books if book["kind"] == "maker"), None)
        self.months = [t for t in axis if self.covered(t)]
        self.marks = {key: (book, mark) for book in books for key, mark in book.get("marks", {}).items()}
        self.pieces = {key: piece for book in books for key, piece in book.get("pieces", {}).items()}
        self.seen = {key: seen_list(seen) for key, seen in self.saw.items() if key not in ("label", "rows") and key in self.marks}
        self.kept = {}
        self.find_cases(garment)
        self.find_clues()

    def find_cases(self, garment):
        """Which cases the marks in view tell apart."""
        spoken = [self.marks[key][1] for key in self.seen]
        for book, mark in [self.marks[key] for key in self.seen]:
            spoken += [book["schemes"][scheme] for scheme in mark.get("schemes", [])]
        has_label = "label" in self.saw or "rows" in self.saw
        if self.maker_book and has_label:
            spoken += [self.maker_book.get("labels", {}), self.maker_book.get("schemes", {})]
        subjects = {subject for when in conditions(spoken) for subject in when}
        known = self.saw.get("label")
        outside_label = {subject for when in conditions([self.marks[key][1] for key in self.seen]) for subject in when}

        self.fixed = {"type": garment.get("type"), "market": garment.get("market")}
        markets = {key: weight for book in self.books for key, weight in book.get("markets", {}).items()}
        self.markets = [(self.fixed["market"], Fraction(1))]
        if self.fixed["market"] is None and "market" in subjects and markets:
            self.markets = [(key, Fraction(weight) / sum(markets.values())) for key, weight in markets.items()]

        self.types = [(self.fixed["type"], Fraction(1))]
        if self.fixed["type"] is None and "type" in subjects:
            told = {value for when in conditions(spoken) for value in listed(when.get("type", []))}
            self.types = [(value, Fraction(1, len(told) + 1)) for value in [*sorted(told), "any other"]]

        self.label_hidden = "label" in outside_label and not isinstance(known, str)
        if self.label_hidden and has_label:
            raise ValueError("rules on the label kind with an uncertain label are not enumerated here")
        self.fixed["label"] = known if isinstance(known, str) else None

        repeats = {sort: [] for sort in CODES}
        for key, seen in self.seen.items():
            if self.marks[key][1]["kind"] == "repeat":
                repeats[self.marks[key][1]["of"]] += [typed(value) for value, _ in seen if value != "none"]
        self.tied = [sort for sort in CODES if repeats[sort] or sort in subjects]
        self.codes = {sort: CodeList((self.maker_book or {}).get(field), {text for span in repeats[sort] for text in possible_figures(span)})
                      for sort, field in CODES.items()}

    def find_clues(self):
        clues = []
        for key, seen in self.seen.items():
            book, mark = self.marks[key]
            clues.append(mark_clue(self.books, book, key, mark, seen, self.printer))
        book, rows = self.maker_book, rows_of(self.saw)
        if book and ("label" in self.saw or rows is not None):
            reader = RowReader(book, rows or [], self.tied, self.codes, self.printer)
            if "labels" in book:
                clues.append(label_clue(self.books, book, self.saw, reader, self.codes))
            elif rows is not None:
                clues.append(free_rows_clue(book, reader, self.codes))
        self.clues = [clue for clue in clues if clue]
        self.groups = {}
        for clue in self.clues:
            self.groups.setdefault(clue.piece if clue.piece in self.pieces else ("alone", clue.id), []).append(clue)

    def worlds(self):
        """Every case: market, codes, label kind."""
        kinds = [self.fixed["label"]]
        if self.label_hidden:
            kinds = list(self.maker_book["labels"]["kinds"]) + ["any other"]
        for (market, _), (sort_of_garment, _), kind in product(self.markets, self.types, kinds):
            for values in product(*[self.codes[sort].values() for sort in self.tied]):
                yield {**self.fixed, "market": market, "type": sort_of_garment, "label": kind, **dict(zip(self.tied, values))}

    def case_chance(self, world, t):
        """P(case | month)."""
        chance = dict(self.markets)[world["market"]] * dict(self.types)[world["type"]]
        if self.label_hidden:
            shares, other = value_shares(self.maker_book["labels"]["kinds"], other_weight(self.maker_book["labels"]), t, world)
            chance *= shares.get(world["label"], other)
        return chance * self.codes_chance(world, t)

    def codes_chance(self, world, t):
        chance = Fraction(1)
        for sort in self.tied:
            chance *= self.codes[sort].joint(world[sort], t)
        return chance

    def key(self, world):
        return tuple(world.get(subject) for subject in ("market", "type", "label", "plant", "lot", "fabric"))

    def keep(self, key, work):
        if key not in self.kept:
            self.kept[key] = work()
        return self.kept[key]

    def own(self, clue, t, world):
        return self.keep(("own", clue.id, t, self.key(world)), lambda: clue.chance(t, world))

    def average(self, name, work, world, redraw, months):
        """Flat average over months; with `redraw` the codes are drawn anew in each month."""
        def total():
            if not redraw:
                return sum(work(t, world) for t in months) / len(months)
            others = [dict(zip(self.tied, values)) for values in product(*[self.codes[sort].values() for sort in self.tied])]
            chance = Fraction(0)
            for t in months:
                for other in others:
                    there = {**world, **other}
                    share = self.codes_chance(there, t)
                    chance += share * work(t, there) if share else 0
            return chance / len(months)
        case = {**world, **{sort: None for sort in self.tied}} if redraw else world
        return self.keep((name, self.key(case)), total)

    def base(self, clue, world):
        months = self.axis if clue.public else self.months
        return self.average(("base", clue.id), lambda t, there: self.own(clue, t, there), world, clue.shows_code, months)

    def stray_part(self, clue, t, world):
        """What a mark adds to L by being stray."""
        if clue.misjudged:
            return self.keep(("misjudged", clue.id, t, self.key(world)), lambda: clue.misjudged(t, world, self.months))
        return clue.stray * self.base(clue, world)

    def likelihood(self, clue, t, world):
        """L of a mark: its own, or stray."""
        return (1 - clue.stray) * self.own(clue, t, world) + self.stray_part(clue, t, world)

    def mark_patterns(self, clue, t, world):
        """[(chance, stray marks)] of one mark: as made, and stray. A tempered mark has one pattern."""
        if clue.temper != 1:
            return [(power(self.likelihood(clue, t, world), clue.temper), ())]
        return [((1 - clue.stray) * self.own(clue, t, world), ()), (self.stray_part(clue, t, world), (clue.id,))]

    def together(self, clues, t, world):
        """[(chance, stray marks)] of several marks, every pattern."""
        found = []
        for combination in product(*[self.mark_patterns(clue, t, world) for clue in clues]):
            chance, strays = Fraction(1), ()
            for factor, names in combination:
                chance *= factor
                strays += names
            found.append((chance, strays))
        return found

    def group_patterns(self, name, t, world):
        """[(chance, stray marks, stray pieces)] of the marks on one piece, or of a mark alone."""
        clues = self.groups[name]
        if isinstance(name, tuple):
            return [(chance, strays, ()) for chance, strays in self.together(clues, t, world)]
        rate = Fraction(self.pieces[name]["stray"])
        as_made = [((1 - rate) * chance, strays, ()) for chance, strays in self.together(clues, t, world)]
        redraw = any(clue.shows_code for clue in clues)
        elsewhere = []
        for index in range(len(as_made)):
            mean = self.average(("piece", name, index), lambda s, there: self.together(clues, s, there)[index][0], world, redraw, self.months)
            elsewhere.append((rate * mean, as_made[index][1], (name,)))
        return as_made + elsewhere

    def patterns(self, t, world, names=None):
        """Every stray pattern of the garment."""
        names = list(self.groups) if names is None else names
        for combination in product(*[self.group_patterns(name, t, world) for name in names]):
            chance, marks, pieces = Fraction(1), (), ()
            for factor, some_marks, some_pieces in combination:
                chance *= factor
                marks += some_marks
                pieces += some_pieces
            yield chance, marks, pieces

    def covered(self, t):
        """Whether the maker's book, if there is one, covers a month."""
        covers = self.maker_book["covers"] if self.maker_book else {}
        first, last = covers.get("from"), covers.get("until")
        return (not first or month_index(first) <= t) and (not last or t <= month_index(last))

    def prior(self, flat):
        """This maker's own prior by month: `flat` (or the owner's) over the months that its book covers."""
        weights = [weight if self.covered(t) else Fraction(0) for weight, t in zip(flat, self.axis)]
        total = sum(weights)
        return [weight / total for weight in weights] if total else weights
