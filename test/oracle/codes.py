"""Plant, lot and fabric codes: which one a garment carries, and how a span reads against it (section 5 of docs/model.md)."""
from fractions import Fraction
from itertools import product

from characters import FIGURES, cell_among, cell_given, inside, plain, read
from months import height


def figures_chance(span):
    """A span as figures, each 1/10."""
    cells, between = span
    chance = inside(between)
    for cell in cells:
        chance *= cell_among(cell, FIGURES)
    return chance


def possible_figures(span):
    """Every string of figures that the span could be."""
    options = [[x for x in FIGURES if cell_given(cell, x)] for cell in span[0]]
    return ["".join(choice) for choice in product(*options)]


class CodeList:
    """
    The codes of one sort. A garment's code is ("listed", code), ("unlisted", figures) for the figures in `apart`,
    or ("rest",): an unlisted code that is none of those.
    """

    def __init__(self, entry, apart=()):
        entry = entry or {}
        self.codes = entry.get("codes", {})
        self.unlisted = Fraction(entry.get("unlisted", 1))
        self.periods = entry.get("widths", [])
        self.prefix = entry.get("prefix")
        self.apart = tuple(sorted(apart))

    def shares(self, t):
        weights = {code: Fraction(known.get("weight", 1)) * height(known["window"], t) for code, known in self.codes.items()}
        total = sum(weights.values()) + self.unlisted
        if total == 0:
            return {code: Fraction(0) for code in weights}, Fraction(0)
        return {code: weight / total for code, weight in weights.items()}, self.unlisted / total

    def width(self, t, figures):
        heights = [height(period["window"], t) for period in self.periods]
        total = sum(h * sum(period["shares"].values()) for h, period in zip(heights, self.periods))
        if total == 0:
            return Fraction(1, 4) if 1 <= figures <= 4 else Fraction(0)
        return sum(h * period["shares"].get(str(figures), 0) for h, period in zip(heights, self.periods)) / total

    def read(self, span, code):
        """Chance of a span in a row when the code is known: as it is, or behind a prefix."""
        bare = read(span, plain(code))
        if not self.prefix:
            return bare
        share, extra = self.prefix["share"], self.prefix["figures"]
        behind = read(span, (("figure",) * extra + tuple(code), ("",) * (extra + len(code) - 1)))
        return (1 - share) * bare + share * behind

    def unlisted_read(self, span, t):
        """Chance of a span when the code is an unlisted one."""
        length, figures = len(span[0]), figures_chance(span)
        if not self.prefix:
            return self.width(t, length) * figures
        share, extra = self.prefix["share"], self.prefix["figures"]
        return ((1 - share) * self.width(t, length) + share * self.width(t, length - extra)) * figures

    def draw(self, span, t):
        """Chance of a span when the code is drawn anew."""
        shares, unlisted = self.shares(t)
        total = unlisted * self.unlisted_read(span, t)
        for code, share in shares.items():
            total += share * self.read(span, code) if share else 0
        return total

    def values(self):
        return [("listed", code) for code in self.codes] + [("unlisted", figures) for figures in self.apart] + [("rest",)]

    def joint(self, value, t, span=None):
        """Chance that the garment's code is `value` and that a row shows it as `span` (None: no row shows it)."""
        shares, unlisted = self.shares(t)
        if value[0] == "listed":
            return shares[value[1]] * (self.read(span, value[1]) if span else 1)
        if value[0] == "unlisted":
            chance = unlisted * self.width(t, len(value[1])) / 10 ** len(value[1])
            return chance * (self.read(span, value[1]) if span else 1)
        total = unlisted * (self.unlisted_read(span, t) if span else 1)
        return total - sum(self.joint(("unlisted", figures), t, span) for figures in self.apart)


def repeat_read(seen, value):
    """Chance of what a repeat mark shows when the garment's code is `value`; every figure string it could be is told apart."""
    return Fraction(0) if value == ("rest",) else read(seen, plain(value[1]))

