#!/usr/bin/env python3
"""Makes decide.csv, trend.csv and refer.csv in this folder: what the Measuring room is checked against.

    python3 make_reference.py            writes the three files (a minute or two); the seeds are fixed
    python3 make_reference.py --check 400   works out that many of the readings again with mpmath, to 20 digits, and
                                         prints the largest difference

Needs mpmath 1.2, numpy 1.24 and scipy 1.10, or later ones. Nothing here is taken from the program: only the definitions
of JCGM 100:2008, JCGM 101:2008, JCGM 106:2012, ILAC-G8:09/2019 and ISO 14253-1. See sums.py for how.
"""
import argparse
import random
from pathlib import Path

import decide_cases
import refer_cases
import sums
import trend_cases

HERE = Path(__file__).parent


def write(name, heading, lines):
    text = "\n".join([heading, *lines]) + "\n"
    (HERE / name).write_text(text, encoding="utf-8", newline="\n")
    print(f"{name}: {text.count(chr(10)) - 1} cases, {len(text) / 1e6:.2f} MB")


def check(count):
    """The tail beyond U and the coverage, by mpmath."""
    every = [one for one in decide_cases.cases(random.Random(1)) if isinstance(one[1][0], sums.Sum)]
    tried, worst = 0, 0.0
    for line, (distribution, expanded, coverage) in random.Random(2).sample(every, len(every)):
        t = distribution.students
        if tried == count or len(distribution.boxes) > 4 or (len(t) > 1 and any(v != 1 for _, v in t)):
            continue
        exact = sums.tail_by_mpmath(distribution.boxes, distribution.normal, t, expanded)
        off = abs(float(1 - 2 * exact) - coverage)
        tried, worst = tried + 1, max(worst, off)
        if off > 1e-11:
            print(f"{off:.1e}  {line}")
    print(f"{tried} checked by mpmath; the largest difference of a coverage is {worst:.1e}")


if __name__ == "__main__":
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--check", type=int, metavar="N")
    asked = options.parse_args()
    if asked.check:
        check(asked.check)
    else:
        write("decide.csv", decide_cases.HEADING, (line for line, _ in decide_cases.cases(random.Random(1))))
        write("trend.csv", trend_cases.HEADING, trend_cases.cases(random.Random(2)))
        write("refer.csv", refer_cases.HEADING, refer_cases.cases(random.Random(3)))
