"""Answers test/oracle/cases.json by literal enumeration with exact fractions, so that the engine can be held against it."""
import json
import platform
import sys
import time
from datetime import date
from fractions import Fraction
from pathlib import Path

from finding import Finding

HERE = Path(__file__).parent


def main():
    only = sys.argv[1:]
    cases = json.loads((HERE / "cases.json").read_text(), parse_float=Fraction)["cases"]
    answers = []
    for case in cases:
        if only and case["id"] not in only:
            continue
        start = time.time()
        answers.append(Finding(case).answer())
        print(f"{case['id']}: {time.time() - start:.1f} s", file=sys.stderr)
    header = {
        "by": "test/oracle/enumerate.py, from docs/model.md alone; rationals, rounded once to the nearest double",
        "python": platform.python_version(),
        "date": date.today().isoformat(),
    }
    lines = ",\n".join(json.dumps(answer) for answer in answers)
    text = f'{{\n"header": {json.dumps(header)},\n"answers": [\n{lines}\n]\n}}\n'
    if only:
        print(text)
    else:
        (HERE / "answers.json").write_text(text)


if __name__ == "__main__":
    main()
