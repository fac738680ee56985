#!/usr/bin/env python3
"""Writes spoken utterances the way a speech model writes them: figures for number words, signs for units.

usage: written.py SEED < utterances.jsonl > written.jsonl
"""
import json, random, re, sys

UNITS = {w: i for i, w in enumerate("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
                                    "sixteen seventeen eighteen nineteen".split())}
TENS = {w: 10 * i for i, w in enumerate("twenty thirty forty fifty sixty seventy eighty ninety".split(), 2)}
ZERO = {"oh", "zero", "nought", "o"}

def below_hundred(words, i):
    if i < len(words) and words[i] in TENS:
        if i + 1 < len(words) and 0 < UNITS.get(words[i + 1], 0) < 10:
            return TENS[words[i]] + UNITS[words[i + 1]], i + 2
        return TENS[words[i]], i + 1
    if i < len(words) and words[i] in UNITS:
        return UNITS[words[i]], i + 1
    return None

def cardinal(words, i):
    first = below_hundred(words, i)
    if first is None and words[i] == "a" and i + 1 < len(words) and words[i + 1] in ("hundred", "thousand"):
        first = (1, i + 1)
    if first is None:
        return None
    value, i = first
    for name, size in (("hundred", 100), ("thousand", 1000)):
        if i < len(words) and words[i] == name:
            value, i = value * size, i + 1
            j = i + 1 if i < len(words) and words[i] == "and" else i
            more = below_hundred(words, j) if j < len(words) else None
            if more and more[1] < len(words) and words[more[1]] == "hundred":
                more = (more[0] * 100, more[1] + 1)
            if more and not (more[1] < len(words) and words[more[1]] in ("half", "quarter", "quarters", "point")):
                value, i = value + more[0], more[1]
    return value, i

def number(words, i, rng):
    """The figures for the number that starts at a word, and the word after it; or nothing."""
    start = cardinal(words, i) if words[i] not in ZERO or words[i] == "zero" else (0, i + 1)
    if words[i] in ("oh", "o", "nought") and not (i + 1 < len(words) and words[i + 1] == "point"):
        return None
    if words[i] == "point":
        start = (None, i)
    if start is None:
        return None
    value, j = start
    if j < len(words) and words[j] == "point":
        digits, k = "", j + 1
        while k < len(words):
            if words[k] in ZERO:
                digits, k = digits + "0", k + 1
            elif (two := below_hundred(words, k)) and len(digits) + len(str(two[0])) <= 3 and not (digits and two[0] > 9):
                digits, k = digits + str(two[0]), two[1]
            else:
                break
        if not digits:
            return None
        whole = "" if value is None and rng.random() < 0.3 else str(value or 0)
        return f"{whole}.{digits}", k
    if value is None:
        return None
    if words[j:j + 3] == ["and", "a", "half"]:
        return rng.choice([f"{value}.5", f"{value} 1/2", f"{value}½"]), j + 3
    if words[j:j + 3] == ["and", "a", "quarter"]:
        return rng.choice([f"{value}.25", f"{value} 1/4"]), j + 3
    if words[j:j + 3] == ["and", "three", "quarters"]:
        return rng.choice([f"{value}.75", f"{value} and 3/4"]), j + 3
    return (f"{value:,}" if value >= 1000 and rng.random() < 0.6 else str(value)), j

SIGNS = [(r"\bkilohms?\b", [" kΩ", "k ohms", " kilohms"]), (r"\bkilo ohms?\b", [" kΩ", "k ohms"]), (r"(?<=\d) k\b", ["k", "K", " k", " kΩ"]),
         (r"(?<=\d) ohms?\b", [" ohms", " Ω", "Ω"]), (r"(?<=\d) volts?\b", [" volts", "V", " V"]),
         (r"(?<=\d) millimet(?:re|er)s?\b", [" mm", "mm", " millimeters"]), (r"(?<=\d) degrees\b", [" degrees", "°"]),
         (r"\b[Nn]umber (?=\d)", ["number ", "#", "No. "]), (r"\bmillimet(?:re|er)s\b", ["millimeters"]), (r"\bcentre\b", ["center"])]

def written(text, rng):
    pieces = re.findall(r"[A-Za-z']+|[^A-Za-z']+", text)
    words, marks = [], []
    for piece in pieces:
        if re.match(r"[A-Za-z']", piece):
            words.append(piece)
            marks.append("")
        elif words:
            marks[-1] += piece
    low = [w.lower() for w in words]
    out, i, changed = "", 0, False
    while i < len(words):
        # A number goes on over spaces and hyphens only.
        j = i
        while j + 1 < len(words) and marks[j] in (" ", "-"):
            j += 1
        found = number(low[i:j + 1], 0, rng)
        if found and not (low[i] == "one" and i and low[i - 1] in ("this", "that", "new", "each", "the", "a", "every")):
            figures, used = found
            out += figures + marks[i + used - 1]
            i += used
            changed = True
        else:
            out += words[i] + marks[i]
            i += 1
    if not changed:
        return None
    for pattern, forms in SIGNS:
        out = re.sub(pattern, lambda _: rng.choice(forms), out)
    return re.sub(r"  +", " ", out)

def main():
    rng = random.Random(int(sys.argv[1]))
    for line in sys.stdin:
        utterance = json.loads(line)
        text = written(utterance["text"], rng)
        if text is None or text == utterance["text"]:
            continue
        utterance["id"] += "-w"
        utterance["text"] = text
        utterance["form"] = "written"
        print(json.dumps(utterance, ensure_ascii=False))

main()
