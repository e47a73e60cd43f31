"""Every way to cut printed rows into fields, and every way the rows can stand (section 5 of docs/model.md)."""
from fractions import Fraction
from itertools import combinations, permutations
from math import comb, perm

from characters import FIGURES, SEPARATORS, boundary, cell_among, cell_noise, cut, inside, read, with_boundaries

CODES = {"plant": "plants", "lot": "lots", "fabric": "fabrics"}
WIDTHS = {"size": (2, 2), "inspector": (1, 2), "other": (1, 4)}


def with_separators(fields):
    """Layout fields as (field, what the layout puts before it)."""
    found, before = [], "joined"
    for field in fields:
        if isinstance(field, str) and field in SEPARATORS:
            before = field
        else:
            found.append((field, before))
            before = "joined"
    return found


def fixed_chance(field, span, widths):
    """Chance of a span for a field that knows nothing of months."""
    if isinstance(field, dict):
        return read(span, with_boundaries(list(field["text"].upper())))
    least, most = widths[field]
    if not least <= len(span[0]) <= most:
        return Fraction(0)
    chance = inside(span[1]) / (most - least + 1)
    for cell in span[0]:
        chance *= cell_among(cell, FIGURES)
    return chance


def layout_cuts(span, fields, widths):
    """Every segmentation of a row by a layout row: [(chance of all that is fixed, ((field, span), ...))]."""
    found, fields = [], with_separators(fields)
    length = len(span[0])

    def go(at, index, chance, parts):
        if chance == 0:
            return
        if index == len(fields):
            if at == length:
                found.append((chance, tuple(parts)))
            return
        field, before = fields[index]
        between = boundary(span[1][at - 1], before) if 0 < at < length else 1
        for end in range(at + 1, length + 1):
            part = cut(span, at, end)
            if isinstance(field, str) and (field == "date" or field in CODES):
                go(end, index + 1, chance * between, parts + [(field, part)])
            else:
                go(end, index + 1, chance * between * fixed_chance(field, part, widths), parts)

    go(0, 0, Fraction(1), [])
    return found


def free_cuts(span, plants):
    """Every segmentation of a row by the free layout, in the same form."""
    there, missing, found = Fraction(4, 10), Fraction(6, 10), []
    if plants:
        structures = [(missing * missing, []), (there * missing, ["date"]), (there * missing, ["plant"]),
                      (there * there / 2, ["date", "plant"]), (there * there / 2, ["plant", "date"])]
    else:
        structures = [(missing, []), (there, ["date"])]
    length = len(span[0])

    def between(at, noise_before, noise_after):
        if not 0 < at < length:
            return 1
        return boundary(span[1][at - 1], "noise")

    def noise(start, end):
        chance = Fraction(1, 2) ** (end - start + 1)
        for index in range(start, end):
            chance *= cell_noise(span[0][index])
            if index > start:
                chance *= boundary(span[1][index - 1], "noise")
        return chance

    def go(at, fields, chance, parts):
        for end in range(at, length + 1):
            run = noise(at, end)
            if end > at:
                run *= between(at, False, True)
            if not fields:
                if end == length:
                    found.append((chance * run, tuple(parts)))
                continue
            for stop in range(end + 1, length + 1):
                edge = between(end, end > at, False)
                go(stop, fields[1:], chance * run * edge, parts + [(fields[0], cut(span, end, stop))])

    for chance, fields in structures:
        go(0, fields, chance, [])
    return found


class RowReader:
    """
    Reads the rows of a garment with one maker's book.

    `tied` are the sorts of code (plant, lot, fabric) that other marks speak of too: what the rows show of them stays
    apart in the answers; all other codes are drawn and summed right away.
    """

    def __init__(self, book, rows, tied, code_lists, printer):
        self.rows, self.tied, self.codes, self.printer = rows, tied, code_lists, printer
        self.has_plants = bool(book.get("plants"))
        self.extra = Fraction((book.get("labels") or {}).get("extra", Fraction(5, 100)))
        figures = book.get("fields") or {}
        self.widths = {field: tuple(figures[field]["figures"]) if field in figures else WIDTHS[field] for field in WIDTHS}
        self.cuts, self.drawn, self.kept = {}, {}, {}

    def cuts_of(self, index, layout_row):
        """Segmentations of row `index` by a layout row, or by the free layout (None)."""
        key = (index, id(layout_row) if layout_row else None)
        if key not in self.cuts:
            span, at = self.rows[index]
            if layout_row:
                moved = Fraction(5, 100) if at and layout_row.get("at") and at != layout_row["at"] else 1
                self.cuts[key] = [(moved * chance, parts) for chance, parts in layout_cuts(span, layout_row["fields"], self.widths)]
            else:
                self.cuts[key] = free_cuts(span, self.has_plants)
        return self.cuts[key]

    def draw(self, sort, span, t):
        if (sort, span, t) not in self.drawn:
            self.drawn[sort, span, t] = self.codes[sort].draw(span, t)
        return self.drawn[sort, span, t]

    def show(self, shown, sort, span, chance, t):
        """One more place that shows a code: the first is tied to the garment's code, others draw their own."""
        if sort in self.tied:
            place = self.tied.index(sort)
            if shown[place] is None:
                return shown[:place] + (span,) + shown[place + 1:], chance
        return shown, chance * self.draw(sort, span, t)

    def row(self, index, layout_row, schemes, t):
        """{what is shown of the tied codes: chance} of one row."""
        found = {}
        for chance, parts in self.cuts_of(index, layout_row):
            shown = (None,) * len(self.tied)
            for field, span in parts:
                if field == "date":
                    chance = chance * self.printer.date(schemes, t, span)
                else:
                    shown, chance = self.show(shown, field, span, chance, t)
                if chance == 0:
                    break
            if chance:
                found[shown] = found.get(shown, 0) + chance
        return found

    def stand(self, sources, schemes, t, read_rows):
        """The rows when each comes from the layout row (or None) at its place in `sources`."""
        total = {(None,) * len(self.tied): Fraction(1)}
        for index, source in enumerate(sources):
            key = (index, id(source) if source else None)
            if key not in read_rows:
                read_rows[key] = self.row(index, source, schemes, t)
            grown = {}
            for shown, chance in total.items():
                for more, factor in read_rows[key].items():
                    joined, product = shown, chance * factor
                    for sort, span in zip(self.tied, more):
                        if span is not None:
                            joined, product = self.show(joined, sort, span, product, t)
                    grown[joined] = grown.get(joined, 0) + product
            total = grown
        return total

    def all_rows(self, layout, schemes, t):
        """All rows of a garment by a layout (a list of layout rows, may be empty): {shown: chance}."""
        count, found, read_rows = len(self.rows), {}, {}
        for printed in range(min(len(layout), count) + 1):
            number = (1 - self.extra) * self.extra ** (count - printed)
            for chosen in combinations(range(len(layout)), printed):
                chance = number
                for index, layout_row in enumerate(layout):
                    share = Fraction(layout_row["share"])
                    chance *= share if index in chosen else 1 - share
                for places in permutations(range(count), printed):
                    weight = Fraction(1, 10) / perm(count, printed)
                    if list(places) == sorted(places):
                        weight += Fraction(9, 10) / comb(count, printed)
                    sources = [None] * count
                    for place, index in zip(places, chosen):
                        sources[place] = layout[index]
                    for shown, factor in self.stand(sources, schemes, t, read_rows).items():
                        found[shown] = found.get(shown, 0) + chance * weight * factor
        return found
