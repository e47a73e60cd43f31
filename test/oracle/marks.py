"""Chance of what was seen on one mark, month by month (section 2 of docs/model.md)."""
from fractions import Fraction

from characters import LETTERS, FIGURES, cell_given, typed
from codes import repeat_read
from months import HALF, clamp, down, height, month_index, up
from schemes import scheme_shares


def fits(when, world):
    """Whether a `when` holds; a code that the list does not know never fits."""
    for subject, values in (when or {}).items():
        values = [str(value) for value in (values if isinstance(values, list) else [values])]
        value = world.get(subject)
        if subject in ("plant", "lot"):
            value = value[1] if value and value[0] == "listed" else None
        if value not in values:
            return False
    return True


def seen_list(seen):
    """What was seen as [(value, weight)], the largest weight 1."""
    if isinstance(seen, bool):
        return [("present" if seen else "absent", Fraction(1))]
    if isinstance(seen, dict):
        most = max(seen["either"].values())
        return [(value, Fraction(weight) / most) for value, weight in seen["either"].items()]
    return [(str(value), Fraction(1)) for value in (seen if isinstance(seen, list) else [seen])]


def value_shares(values, other, t, world):
    """Share of every listed value in month t, and of any other one."""
    weights = {}
    for name, value in values.items():
        window, weight = value["window"], value.get("weight", 1)
        for variant in value.get("variants", []):
            if fits(variant["when"], world):
                window, weight = variant["window"], variant.get("weight", value.get("weight", 1))
        weights[name] = Fraction(weight) * height(window, t, value.get("outside", 0))
    total = sum(weights.values()) + other
    if total == 0:
        return {name: Fraction(0) for name in weights}, Fraction(0)
    return {name: weight / total for name, weight in weights.items()}, Fraction(other) / total


def lost(mark):
    return Fraction(mark.get("lost", Fraction(1, 10)))


def stray(mark):
    return Fraction(mark.get("stray", Fraction(3, 100)))


def other_weight(mark):
    return Fraction(mark.get("other", Fraction(5, 100)))


def choice(mark, value, t, world):
    shares, other = value_shares(mark["values"], other_weight(mark), t, world)
    if value == "none":
        return lost(mark) + (1 - lost(mark)) * shares.get("none", 0)
    return (1 - lost(mark)) * shares.get(value, other)


def presence(mark, value, t, world):
    window = mark["window"]
    for variant in mark.get("variants", []):
        if fits(variant["when"], world):
            window = variant["window"]
    outside = Fraction(mark["outside"])
    present = (1 - lost(mark)) * (outside + (mark["inside"] - outside) * up(window, t) * down(window, t))
    return present if value == "present" else 1 - present


def use_height(mark, x):
    """How usual a number is, x months after its issue."""
    rise, fuzz = Fraction(mark["use"]["rise"]), Fraction(mark["fuzz"])
    top = max(rise, fuzz)
    grown = clamp((x + fuzz) / (top + fuzz)) if top + fuzz > 0 else Fraction(1 if x >= 0 else 0)
    usual, longest = mark["use"].get("usual"), mark["use"].get("longest")
    if usual is None or longest is None:
        return grown
    if usual == longest:
        return grown if x <= usual else Fraction(0)
    return grown * clamp((longest - x) / Fraction(longest - usual))


def serial_unread(mark, value):
    return not mark["knots"][0]["number"] <= int(value) <= mark["knots"][-1]["number"]


def serial(mark, value, t, world):
    if value == "none":
        return lost(mark)
    knots = [(month_index(knot["month"]), knot["number"]) for knot in mark["knots"]]
    number, issued, issue = int(value), {}, None
    for (start, low), (end, high) in zip(knots, knots[1:]):
        for month in range(start, end):
            issued[month] = Fraction(high - low, end - start)
        if issue is None and low <= number <= high:
            issue = start + Fraction((number - low) * (end - start), high - low) if high > low else Fraction(start)
    total = sum(rate * use_height(mark, t + HALF - (month + HALF)) for month, rate in issued.items())
    return (1 - lost(mark)) * use_height(mark, t + HALF - issue) / total if total else Fraction(0)


def unknown_text(span):
    """A text written in no known way: every character one of 36."""
    chance = Fraction(1)
    for cell in span[0]:
        chance *= sum(cell_given(cell, x) for x in FIGURES + LETTERS) / 36
    return chance


def peak_shares(schemes, other, t, axis):
    """Shares of the schemes, of unknown ways, and of garments that carry a code at all: measured against the month with most codes."""
    def weights(month):
        return [Fraction(scheme.get("weight", 1)) * height(scheme["window"], month) for scheme in schemes]
    peak = max(sum(weights(month)) for month in axis) + other
    if not peak:
        return [Fraction(0)] * len(schemes), Fraction(0), Fraction(0)
    here = weights(t)
    return [weight / peak for weight in here], Fraction(other) / peak, (sum(here) + other) / peak


def coded(mark, value, t, world, schemes, printer):
    """`schemes` are the mark's (key, scheme); a value ("printed", text) is the clean text itself, ("unread",) any unknown one."""
    usable = [(key, scheme) for key, scheme in schemes if fits(scheme.get("when"), world)]
    shares, unknown, carried = peak_shares([scheme for _, scheme in usable], other_weight(mark), t, printer.axis)
    if value == "none":
        return lost(mark) + (1 - lost(mark)) * (1 - carried)
    if value[0] == "unread":
        chance = unknown
    elif value[0] == "printed":
        chance = sum(share * printer.texts(key, scheme, t).get(value[1], 0) for share, (key, scheme) in zip(shares, usable))
    else:
        span = typed(value)
        chance = unknown * unknown_text(span)
        chance += sum((share * printer.chance(key, scheme, t, span) for share, (key, scheme) in zip(shares, usable) if share), Fraction(0))
    return (1 - lost(mark)) * chance


def repeat(mark, value, t, world):
    inner, outer = Fraction(mark.get("inside", 1)), Fraction(mark.get("outside", 0))
    share = (1 - lost(mark)) * (outer + (inner - outer) * height(mark["window"], t))
    return 1 - share if value == "none" else share * repeat_read(typed(value), world[mark["of"]])


def seen_chance(mark, seen, t, world, schemes, printer):
    """P(seen | t, case) of a mark, before it can be stray."""
    if not fits(mark.get("when"), world):
        elsewhere = Fraction(mark.get("elsewhere", Fraction(2, 100)))
        nothing = seen[0][0] in ("absent", "none")
        return 1 - elsewhere if nothing else elsewhere
    total = Fraction(0)
    for value, weight in seen:
        if mark["kind"] == "coded":
            chance = coded(mark, value, t, world, schemes, printer)
        else:
            chance = {"choice": choice, "presence": presence, "serial": serial, "repeat": repeat}[mark["kind"]](mark, value, t, world)
        total += weight * chance
    return total
