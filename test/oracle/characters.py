"""What a typed row says about the printed characters: look-alikes, doubt, separators (section 4 of docs/model.md)."""
import json
from fractions import Fraction
from functools import lru_cache
from pathlib import Path

FIGURES = "0123456789"
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
SEPARATORS = " -./"
UNREADABLE = None  # a cell is UNREADABLE or a tuple of (true character, likelihood)


def load_look_alikes():
    table = json.loads((Path(__file__).parent / "look-alike.json").read_text(), parse_float=Fraction)
    chances = {}
    for a, b, chance in table["pairs"]:
        chances[a, b] = chances[b, a] = chance
    for x in FIGURES + LETTERS:
        chances[x, x] = 1 - sum(chances.get((x, y), 0) for y in FIGURES + LETTERS if y != x)
    return chances


LOOK_ALIKE = load_look_alikes()


@lru_cache(maxsize=None)
def cell_given(cell, true):
    """Chance of what was typed for one character when `true` is printed."""
    if cell is UNREADABLE:
        return Fraction(1, 10)
    return sum((chance for x, chance in cell if x == true), Fraction(0))


@lru_cache(maxsize=None)
def cell_among(cell, alphabet):
    """The same for a character drawn evenly from an alphabet."""
    return sum(cell_given(cell, x) for x in alphabet) / len(alphabet)


@lru_cache(maxsize=None)
def cell_noise(cell):
    return Fraction(8, 10) * cell_among(cell, FIGURES) + Fraction(2, 10) * cell_among(cell, LETTERS)


def definite(o):
    return tuple((x, LOOK_ALIKE[o, x]) for x in FIGURES + LETTERS if (o, x) in LOOK_ALIKE)


def either(weights):
    total = sum(weights.values())
    merged = {}
    for x, weight in weights.items():
        merged[x.upper()] = merged.get(x.upper(), 0) + Fraction(weight) / total
    return tuple(sorted(merged.items()))


def split_typed(text):
    """Typed text as a list of cells and separators, `(3/8)` and `(8:80/3:20)` understood."""
    found, at = [], 0
    while at < len(text):
        x = text[at]
        if x == "(":
            end = text.index(")", at)
            weights = {}
            for choice in text[at + 1:end].split("/"):
                character, _, weight = choice.strip().partition(":")
                weights[character] = Fraction(weight or 1)
            found.append(either(weights))
            at = end
        elif x in SEPARATORS:
            found.append(x)
        else:
            found.append(UNREADABLE if x == "?" else definite(x.upper()))
        at += 1
    return found


def with_boundaries(items):
    """Items (cells or characters, and separators) as (characters, what stands between neighbours)."""
    cells, between, waiting = [], [], ""
    for item in items:
        if isinstance(item, str) and item in SEPARATORS:
            if waiting in ("", " "):
                waiting = item
            elif item != " ":
                raise ValueError("two separators in a row")
            continue
        if cells:
            between.append(waiting)
        elif waiting.strip():
            raise ValueError("a separator before the first character")
        cells.append(item)
        waiting = ""
    if waiting.strip():
        raise ValueError("a separator after the last character")
    return tuple(cells), tuple(between)


def typed(text):
    return with_boundaries(split_typed(text))


def typed_cells(entries):
    items = []
    for entry in entries:
        items.append(either(entry["either"]) if isinstance(entry, dict) else split_typed(entry)[0])
    return with_boundaries(items)


def boundary(seen, kind):
    """Chance that `seen` stands between two characters; kind: inside, joined, noise, or the listed separator itself."""
    if kind == "inside":
        return Fraction(97, 100) if seen == "" else Fraction(2, 100) if seen == " " else Fraction(1, 300)
    if kind == "joined":
        return Fraction(90, 100) if seen == "" else Fraction(7, 100) if seen == " " else Fraction(1, 100)
    if kind == "noise":
        return Fraction(60, 100) if seen == "" else Fraction(30, 100) if seen == " " else Fraction(1, 30)
    return Fraction(10, 100) if seen == "" else Fraction(85, 100) if seen == kind else Fraction(5, 300)


def inside(between):
    product = Fraction(1)
    for seen in between:
        product *= boundary(seen, "inside")
    return product


def read(span, printed):
    """
    Chance of the typed span when `printed` stands there.

    `printed` is (tokens, boundaries): a token is a character, "figure" or "letter" (any of them); a boundary is "" or a separator.
    """
    (cells, between), (tokens, kinds) = span, printed
    if len(cells) != len(tokens):
        return Fraction(0)
    product = Fraction(1)
    for cell, token in zip(cells, tokens):
        if token == "figure":
            product *= cell_among(cell, FIGURES)
        elif token == "letter":
            product *= cell_among(cell, LETTERS)
        else:
            product *= cell_given(cell, token)
    for seen, kind in zip(between, kinds):
        product *= boundary(seen, kind or "inside")
    return product


def plain(text):
    """A code as printed characters joined inside one field."""
    return tuple(text), ("",) * (len(text) - 1)


def cut(span, start, end):
    cells, between = span
    return cells[start:end], between[start:end - 1]
