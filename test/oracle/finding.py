"""From the joint chances to the answers of section 8 of docs/model.md."""
from decimal import Decimal
from fractions import Fraction

from months import month_index, month_text
from worlds import Maker

TWO_DATES = Fraction(3, 100)
APART = 120


def decimal(value):
    return Decimal(value.numerator) / Decimal(value.denominator)


def plogp(value):
    """p · log2 p, 0 for p = 0."""
    return decimal(value) * decimal(value).ln() / Decimal(2).ln() if value else Decimal(0)


def makers_of(case, garment):
    """The makers that are possible, each with the public books and its own."""
    axis = list(range(month_index(case["axis"]["from"]), month_index(case["axis"]["until"]) + 1))
    public = [book for book in case["books"] if book["kind"] == "public"]
    named = garment.get("maker") or []
    names = named if isinstance(named, list) else [named]
    if not names:
        return [Maker(None, public, garment, axis)]
    own = {book["book"]: book for book in case["books"] if book["kind"] == "maker"}
    return [Maker(name, public + ([own[name]] if name in own else []), garment, axis) for name in names]


def flat_prior(case, axis):
    weights = [Fraction(weight) for weight in case["prior"]] if "prior" in case else [Fraction(1)] * len(axis)
    return [weight / sum(weights) for weight in weights]


class Finding:
    """Everything about one garment, by enumeration."""

    def __init__(self, case, garment=None):
        self.case, self.garment = case, garment or case["garment"]
        self.makers = makers_of(case, self.garment)
        self.axis = self.makers[0].axis
        self.priors = [maker.prior(flat_prior(case, self.axis)) for maker in self.makers]
        self.joint = [[Fraction(0)] * len(self.axis) for _ in self.makers]
        self.marks, self.marks_by_ratio, self.pieces = {}, {}, {}
        for index in range(len(self.makers)):
            self.run(index)
        self.months = [sum(column) for column in zip(*self.joint)]
        self.total = sum(self.months)

    def run(self, index):
        maker, prior = self.makers[index], self.priors[index]
        worlds = list(maker.worlds())
        for place, t in enumerate(self.axis):
            for world in worlds if prior[place] else []:
                before = prior[place] * maker.case_chance(world, t) / len(self.makers)
                if not before:
                    continue
                here = Fraction(0)
                for chance, marks, pieces in maker.patterns(t, world):
                    here += chance
                    for names, found in ((marks, self.marks), (pieces, self.pieces)):
                        for name in names:
                            found[name] = found.get(name, 0) + before * chance
                self.joint[index][place] += before * here
                for clue in maker.clues:
                    likelihood = maker.likelihood(clue, t, world)
                    ratio = maker.stray_part(clue, t, world) / likelihood if likelihood else 0
                    self.marks_by_ratio[clue.id] = self.marks_by_ratio.get(clue.id, 0) + before * here * ratio

    def two_dates(self):
        """Chance that the look marks date from a month at least ten years before all others."""
        separate = Fraction(0)
        for maker, prior in zip(self.makers, self.priors):
            look = [name for name, clues in maker.groups.items() if clues[0].look]
            rest = [name for name, clues in maker.groups.items() if not clues[0].look]
            for name, clues in maker.groups.items():
                assert len({clue.look for clue in clues}) == 1, "a piece with marks of both sorts is not enumerated here"
            for world in maker.worlds():
                for place, t2 in enumerate(self.axis):
                    earlier = sum(prior[:max(0, place - APART + 1)])
                    if not prior[place] or not earlier:
                        continue
                    others = sum(chance for chance, _, _ in maker.patterns(t2, world, rest))
                    looks = Fraction(0)
                    for before in range(place - APART + 1):
                        if prior[before]:
                            looks += prior[before] * sum(chance for chance, _, _ in maker.patterns(self.axis[before], world, look))
                    separate += prior[place] * maker.case_chance(world, t2) * others * looks / earlier / len(self.makers)
        return TWO_DATES * separate / (TWO_DATES * separate + (1 - TWO_DATES) * self.total)

    def smallest_set(self, mass):
        """Months by falling probability, earlier first when equal, until the mass is reached; and whether the last one ties with one left out."""
        order = sorted(range(len(self.axis)), key=lambda place: (-self.months[place], place))
        chosen, held = [], Fraction(0)
        while held < mass * self.total:
            held += self.months[order[len(chosen)]]
            chosen.append(order[len(chosen)])
        left = order[len(chosen):]
        tie = bool(left) and self.months[left[0]] == self.months[chosen[-1]]
        return {"months": [month_text(self.axis[place]) for place in sorted(chosen)], "mass": float(held / self.total), "tie": tie}

    def bounds(self):
        held, earliest, latest = Fraction(0), None, None
        for t, chance in zip(self.axis, self.months):
            held += chance
            if earliest is None and held > self.total * Fraction(25, 1000):
                earliest = month_text(t)
            if latest is None and held >= self.total * Fraction(975, 1000):
                latest = month_text(t)
        return {"no earlier than": earliest, "no later than": latest}

    def outcomes(self, name):
        """Every way an unexamined mark can turn out."""
        found = []
        for maker in self.makers:
            if name == "label":
                found += list((maker.maker_book or {}).get("labels", {}).get("kinds", {})) + ["any other", "none"]
            elif name in maker.marks:
                book, mark = maker.marks[name]
                if mark["kind"] == "choice":
                    found += list(mark["values"]) + ["any other", "none"]
                elif mark["kind"] == "presence":
                    found += ["present", "absent"]
                elif mark["kind"] == "coded":
                    found += [("unread",), "none"]
                    for scheme in mark["schemes"]:
                        for t in self.axis:
                            found += [("printed", printed) for printed in maker.printer.texts((book["book"], scheme), book["schemes"][scheme], t)]
                else:
                    raise ValueError(f"the outcomes of {name} are not enumerated here")
        return list(dict.fromkeys(found))

    def expected_bits(self, name):
        """I(month; outcome), from the whole table of months and outcomes."""
        bits, total = Decimal(0), Fraction(0)
        for month in self.months:
            bits -= plogp(month / self.total)
        for outcome in self.outcomes(name):
            seen = Finding(self.case, {**self.garment, "saw": {**self.garment["saw"], name: as_seen(outcome)}})
            total += seen.total
            for month in seen.months:
                bits += plogp(month / self.total)
            bits -= plogp(seen.total / self.total)
        assert total == self.total, f"the outcomes of {name} do not sum to 1"
        return float(bits)

    def answer(self):
        found = {"id": self.case["id"], "posterior": [float(month / self.total) for month in self.months]}
        if len(self.makers) > 1:
            found["makers"] = {maker.name: float(sum(row) / self.total) for maker, row in zip(self.makers, self.joint)}
        found["stray"] = {name: float(chance / self.total) for name, chance in self.marks_by_ratio.items()}
        found["stray by pattern"] = {name: float(chance / self.total) for name, chance in self.marks.items()}
        found["stray pieces"] = {name: float(chance / self.total) for name, chance in self.pieces.items()}
        found["sets"] = {str(percent): self.smallest_set(Fraction(percent, 100)) for percent in (50, 90, 95)}
        found["bounds"] = self.bounds()
        ask = self.case.get("ask", {})
        if ask.get("two dates"):
            found["two dates"] = float(self.two_dates())
        if ask.get("next"):
            found["next"] = {name: self.expected_bits(name) for name in ask["next"]}
        return found


def as_seen(outcome):
    """An outcome as an entry of `saw`; a tuple passes through as the one value seen."""
    return {"either": {outcome: Fraction(1)}} if isinstance(outcome, tuple) else outcome
