"""What a garment shows, as clues: each has a chance by month and case, a stray rate and perhaps a piece."""
from dataclasses import dataclass
from fractions import Fraction
from typing import Callable

from characters import typed, typed_cells
from marks import fits, lost, other_weight, seen_chance, seen_list, serial_unread, stray, value_shares


@dataclass
class Clue:
    id: str
    stray: Fraction
    piece: str
    look: bool
    temper: Fraction
    shows_code: bool  # a stray one shows a code of its own
    chance: Callable  # (month, case) -> Fraction
    public: bool = False  # from a public book: its average runs over the whole axis
    misjudged: Callable = None  # (month, case, months) -> Fraction: the stray part, where it is not the average of `chance`


def row_of(row):
    """A typed row as (span, where it stands)."""
    if isinstance(row, dict):
        span = typed_cells(row["cells"]) if "cells" in row else typed(str(row["text"]))
        return span, row.get("at")
    return typed(str(row)), None


def rows_of(saw):
    if "rows" not in saw:
        return None
    rows = saw["rows"] if isinstance(saw["rows"], list) else [saw["rows"]]
    return [row_of(row) for row in rows]


def temper_of(books, name):
    temper = Fraction(1)
    for book in books:
        for group in book.get("groups", {}).values():
            if name in group["marks"]:
                temper *= Fraction(group["temper"])
    return temper


def mark_clue(books, book, name, mark, seen, printer):
    """The clue of one mark, or None when it says nothing (a number outside the knots)."""
    if mark["kind"] == "serial" and any(value != "none" and serial_unread(mark, value) for value, _ in seen):
        return None
    schemes = [((book["book"], scheme), book["schemes"][scheme]) for scheme in mark.get("schemes", [])]
    return Clue(name, stray(mark), mark.get("piece"), mark.get("copied look", False), temper_of(books, name), mark["kind"] == "repeat",
                lambda t, world: seen_chance(mark, seen, t, world, schemes, printer), book["kind"] == "public")


def label_clue(books, book, saw, reader, code_lists):
    """Label kind and rows together: one clue. A stray one is a kind misjudged, its rows as they are; a kind not looked at is not misjudged."""
    labels = book["labels"]
    kinds, rows = labels["kinds"], rows_of(saw)
    seen = seen_list(saw["label"]) if "label" in saw else [(kind, Fraction(1)) for kind in kinds] + [("any other", Fraction(1))]
    named = [((book["book"], name), scheme) for name, scheme in book.get("schemes", {}).items()]

    def schemes_for(kind, world):
        allowed = kinds[kind].get("schemes") if kind in kinds else None
        there = {**world, "label": kind}
        return [(key, scheme) for key, scheme in named if (allowed is None or key[1] in allowed) and fits(scheme.get("when"), there)]

    def share_of(kind, t, world):
        shares, other = value_shares(kinds, other_weight(labels), t, world)
        if kind == "none":
            return lost(labels) + (1 - lost(labels)) * shares.get("none", 0)
        return (1 - lost(labels)) * shares.get(kind, other)

    def with_rows(share, kind, t, world):
        if not share or rows is None:
            return share
        layout = kinds[kind].get("rows", []) if kind in kinds else []
        return share * rows_given(reader, layout, schemes_for(kind, world), t, world, code_lists)

    def chance(t, world):
        return sum((weight * with_rows(share_of(kind, t, world), kind, t, world) for kind, weight in seen), Fraction(0))

    means = {}

    def mean_share(kind, world, months):
        key = (kind, world.get("market"), world.get("type"), world.get("plant"), world.get("lot"))
        if key not in means:
            means[key] = sum(share_of(kind, t, world) for t in months) / len(months)
        return means[key]

    def misjudged(t, world, months):
        return rate * sum((weight * with_rows(mean_share(kind, world, months), kind, t, world) for kind, weight in seen), Fraction(0))

    rate = stray(labels) if "label" in saw else Fraction(0)
    return Clue("label", rate, labels.get("piece", "care-label"), labels.get("copied look", False), temper_of(books, "label"), True, chance, False, misjudged)


def free_rows_clue(book, reader, code_lists):
    """Rows of a maker whose book has no labels."""
    named = [((book["book"], name), scheme) for name, scheme in book.get("schemes", {}).items()]
    return Clue("label", Fraction(0), None, False, Fraction(1), True, lambda t, world: rows_given(
        reader, [], [(key, scheme) for key, scheme in named if fits(scheme.get("when"), world)], t, world, code_lists))


def rows_given(reader, layout, schemes, t, world, code_lists):
    """Chance of the rows when the garment's codes are those of the case."""
    total = Fraction(0)
    for shown, chance in all_rows(reader, layout, schemes, t).items():
        for sort, span in zip(reader.tied, shown):
            if span is None:
                continue
            alone = code_lists[sort].joint(world[sort], t)
            chance = chance * code_lists[sort].joint(world[sort], t, span) / alone if alone else 0
        total += chance
    return total


def all_rows(reader, layout, schemes, t):
    """Kept, because the same sum serves every code that the garment may have."""
    key = (id(layout) if layout else None, tuple(key for key, _ in schemes), t)
    if key not in reader.kept:
        reader.kept[key] = reader.all_rows(layout, schemes, t)
    return reader.kept[key]
