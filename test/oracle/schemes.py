"""The texts that a code scheme prints for a month, each with its chance (section 3 of docs/model.md)."""
from fractions import Fraction
from itertools import product

from characters import FIGURES, cell_among, inside, read, with_boundaries
from months import days_of, height


def year_figures(year, how):
    """Years as a list of possible texts: none when the table does not know the year."""
    if isinstance(how, dict):
        return [key for key, value in how.items() if value == year]
    return [{"last figure": str(year % 10), "two figures": f"{year % 100:02d}", "four figures": str(year)}[how]]


def fiscal_year(day):
    """US federal fiscal year; July to September 1976 is printed as 1976."""
    if (day.year, day.month) < (1976, 7):
        return day.year + (day.month >= 7)
    if (day.year, day.month) < (1976, 10):
        return 1976
    return day.year + (day.month >= 10)


def widths(count):
    return list(range(count[0], count[1] + 1)) if isinstance(count, list) else [count]


def part_texts(part, day, by_week):
    """What one part can print on a day: a list of token lists, all equally likely."""
    (name, how), = part.items()
    if name == "month":
        if isinstance(how, dict):
            return [list(key) for key, value in how.items() if value == day.month]
        return [list(f"{day.month:02d}" if how == "padded" else str(day.month))]
    if name == "quarter":
        quarter = (day.month - 1) // 3
        return [["ABCD"[quarter] if how == "letters" else str(quarter + 1)]]
    if name == "week":
        week = day.isocalendar()[1]
        return [list(f"{week:02d}" if how == "padded" else str(week))]
    if name == "day":
        return [list(f"{day.day:02d}" if how == "padded" else str(day.day))]
    if name == "day of year":
        number = day.timetuple().tm_yday
        return [list(f"{number:03d}" if how == "padded" else str(number))]
    if name == "year":
        return [list(text) for text in year_figures(day.isocalendar()[0] if by_week else day.year, how)]
    if name == "fiscal year":
        return [list(text) for text in year_figures(fiscal_year(day), how)]
    if name == "text":
        return [list(how.upper())]
    return [["figure" if name == "digits" else "letter"] * width for width in widths(how)]


def texts_of_month(scheme, t):
    by_week = any("week" in part for part in scheme["parts"])
    days = days_of(t)
    found = {}
    for day in days:
        choices = [part_texts(part, day, by_week) for part in scheme["parts"]]
        ways = 1
        for choice in choices:
            ways *= len(choice)
        for combination in product(*choices):
            printed = with_boundaries([token for tokens in combination for token in tokens])
            found[printed] = found.get(printed, 0) + Fraction(1, len(days) * ways)
    return found


def lags(scheme):
    """Months back from making to the date in the code, with weights that sum to 1."""
    lag = scheme.get("lag")
    if not lag:
        return [(0, Fraction(1))]
    usual, longest = lag["usual"], lag["longest"]
    weights = [Fraction(1) if d <= usual else Fraction(longest + 1 - d, longest + 1 - usual) for d in range(longest + 1)]
    return [(d, weight / sum(weights)) for d, weight in enumerate(weights)]


def texts(scheme, t):
    """Every text the scheme prints on garments made in month t: {printed: chance}."""
    found = {}
    for d, weight in lags(scheme):
        for printed, chance in texts_of_month(scheme, t - d).items():
            found[printed] = found.get(printed, 0) + weight * chance
    return found


def scheme_shares(schemes, other, t):
    """Share of each scheme in month t, and of a text written in no known way."""
    weights = [Fraction(scheme.get("weight", 1)) * height(scheme["window"], t) for scheme in schemes]
    total = sum(weights) + other
    if total == 0:
        return [Fraction(0)] * len(schemes), Fraction(0)
    return [weight / total for weight in weights], Fraction(other) / total


class Printer:
    """Keeps what each scheme prints in each month, and how a span reads against it."""

    def __init__(self, axis):
        self.axis = axis
        self.printed = {}
        self.read = {}

    def texts(self, key, scheme, t):
        if (key, t) not in self.printed:
            self.printed[key, t] = texts(scheme, t)
        return self.printed[key, t]

    def chance(self, key, scheme, t, span):
        if (key, t, span) not in self.read:
            self.read[key, t, span] = sum(
                (chance * read(span, printed) for printed, chance in self.texts(key, scheme, t).items()), Fraction(0))
        return self.read[key, t, span]

    def date(self, schemes, t, span):
        """Chance of a span as the date field of a row: known schemes, else 2 to 4 figures."""
        shares, unknown = scheme_shares([scheme for _, scheme in schemes], Fraction(10, 100), t)
        total = sum((share * self.chance(key, scheme, t, span) for share, (key, scheme) in zip(shares, schemes) if share), Fraction(0))
        cells, between = span
        if len(cells) in (2, 3, 4):
            figures = inside(between)
            for cell in cells:
                figures *= cell_among(cell, FIGURES)
            total += unknown * figures / 3
        return total
