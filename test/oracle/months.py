"""Months, days and soft windows, as sections 1 and 3 of docs/model.md define them."""
from datetime import date, timedelta
from fractions import Fraction

HALF = Fraction(1, 2)


def month_index(text):
    """"1968-03" as months since 1900-01."""
    year, month = text.split("-")
    return (int(year) - 1900) * 12 + int(month) - 1


def month_text(index):
    return f"{1900 + index // 12:04d}-{index % 12 + 1:02d}"


def days_of(index):
    """Every day of a month, in order."""
    day = date(1900 + index // 12, index % 12 + 1, 1)
    days = []
    while day.month == index % 12 + 1:
        days.append(day)
        day += timedelta(days=1)
    return days


def clamp(value):
    return max(Fraction(0), min(Fraction(1), value))


def up(window, t):
    pair = (window or {}).get("begins")
    if not pair:
        return Fraction(1)
    first, usual = map(month_index, pair)
    if first == usual:
        return Fraction(1 if t >= first else 0)
    return clamp((t + HALF - first) / (usual - first))


def down(window, t):
    pair = (window or {}).get("ends")
    if not pair:
        return Fraction(1)
    usual, last = map(month_index, pair)
    if usual == last:
        return Fraction(1 if t <= last else 0)
    return clamp((last + 1 - t - HALF) / (last - usual))


def height(window, t, outside=0):
    """Height of a window at the middle of month t, from `outside` to 1."""
    return outside + (1 - Fraction(outside)) * up(window, t) * down(window, t)
