#!/usr/bin/env python3
"""Makes noisy forms of corpus utterances: misheard words, dropped small words, fillers.

A misheard word is another English word, or two, that sounds nearly the same: one or two sounds of the word (or of two
neighbouring words) are lost, added or confused, and the result is spelled with words of the pronouncing dictionary
that occur in ordinary text. The confusions below are classes of sounds known to be mixed up (voicing, place, vowel
neighbours, lost endings); they are not the costs the reader uses. What is meant stays the same.

usage: noisy.py DICT COMMON SEED < utterances.jsonl > noisy.jsonl
"""
import json, random, re, sys

GROUPS = ["P B", "T D", "K G", "F V", "S Z", "TH F", "TH S", "DH D", "M N", "N NG", "L R", "W R", "CH SH", "CH T", "JH CH",
          "SH S", "V B", "P T", "IH IY", "IH EH", "EH AE", "AE AH", "AH AA", "AA AO", "AO OW", "OW UH", "UH UW", "UH AH",
          "ER AH", "ER AO", "EY EH", "AY AA", "EY AY", "AW AA", "IH AH", "OY AY", "EH AH"]
CONFUSED = {}
for group in GROUPS:
    a, b = group.split()
    CONFUSED.setdefault(a, []).append(b)
    CONFUSED.setdefault(b, []).append(a)
ENDINGS = {"T", "D", "S", "Z", "K", "N", "L", "HH"}
ADDED = ["T", "D", "S", "Z"]
SMALL = {"the", "a", "is", "of", "at", "on", "it's", "i've", "got", "are"}
FILLERS = ["um", "uh", "er"]
KEEP = set("not no nothing none without except doesn't don't won't isn't but and or to was now sorry scratch that all every both "
           "rest other others it them same goes stops".split())
OWN = {"reluctor": "R IH L AH K T ER", "sooty": "S UW T IY", "thou": "TH AW", "kilohms": "K IH L OW M Z", "gapped": "G AE P T"}

def load(path, common_path):
    common = {}
    for rank, word in enumerate(open(common_path).read().split()):
        common[word] = rank
    say, spell = {}, {}
    for line in open(path):
        word, *phones = line.split()
        word = word.split("(")[0]
        say.setdefault(word, tuple(phones))
        if word in common and (len(word) > 1 or word in "ai"):
            spell.setdefault(tuple(phones), []).append(word)
    for phones in spell:
        spell[phones] = sorted(set(spell[phones]), key=lambda w: common[w])[:3]
    say.update({word: tuple(phones.split()) for word, phones in OWN.items()})
    return say, spell

def edit(phones, rng):
    phones = list(phones)
    kind = rng.random()
    at = rng.randrange(len(phones))
    if kind < 0.65 and phones[at] in CONFUSED:
        phones[at] = rng.choice(CONFUSED[phones[at]])
    elif kind < 0.85 and (phones[-1] in ENDINGS or phones[0] == "HH") and len(phones) > 2:
        phones.pop(0 if phones[0] == "HH" else -1)
    elif kind < 0.95:
        phones.append(rng.choice(ADDED))
    elif len(phones) > 4 and phones[at] in ("AH", "IH", "T", "D", "L", "R"):
        phones.pop(at)
    return tuple(phones)

def spellings(phones, spell):
    whole = [(w,) for w in spell.get(phones, [])]
    parts = []
    for cut in range(2, len(phones) - 1):
        for a in spell.get(phones[:cut], [])[:1]:
            for b in spell.get(phones[cut:], [])[:1]:
                parts.append((a, b))
    return whole + parts

def mishear(words, say, spell, rng):
    spots = [i for i, w in enumerate(words) if re.fullmatch(r"[A-Za-z]{3,}[.,]?", w) and w.strip(".,").lower() not in KEEP
             and w.strip(".,").lower() not in SMALL and w.strip(".,").lower() in say]
    rng.shuffle(spots)
    for i in spots:
        pair = i + 1 in spots and not words[i].endswith((".", ",")) and rng.random() < 0.3
        n = 2 if pair else 1
        said = sum((say[w.strip(".,").lower()] for w in words[i:i + n]), ())
        original = tuple(w.strip(".,").lower() for w in words[i:i + n])
        for _ in range(40):
            heard = edit(said, rng) if not pair or rng.random() < 0.5 else said
            if len(heard) > 4 and rng.random() < 0.25:
                heard = edit(heard, rng)
            options = [o for o in spellings(heard, spell) if o != original and not set(o) & KEEP]
            if options:
                new = list(rng.choice(options[:4]))
                if i == 0:
                    new[0] = new[0].capitalize()
                tail = words[i + n - 1][-1] if words[i + n - 1][-1] in ".," else ""
                return words[:i] + new[:-1] + [new[-1] + tail] + words[i + n:]
    return None

def noisy(text, say, spell, rng):
    words = text.split()
    kind = rng.random()
    if kind < 0.6:
        return mishear(words, say, spell, rng)
    if kind < 0.8:
        small = [i for i, w in enumerate(words) if w.lower() in SMALL]
        if not small:
            return mishear(words, say, spell, rng)
        i = rng.choice(small)
        words = words[:i] + words[i + 1:]
        words[0] = words[0][0].upper() + words[0][1:]
        return words
    i = rng.randrange(len(words))
    filler = rng.choice(FILLERS)
    return [filler.capitalize() + ","] + [words[0][0].lower() + words[0][1:]] + words[1:] if i == 0 else words[:i] + [filler + ","] + words[i:]

def main():
    say, spell = load(sys.argv[1], sys.argv[2])
    rng = random.Random(int(sys.argv[3]))
    for line in sys.stdin:
        utterance = json.loads(line)
        words = noisy(utterance["text"], say, spell, rng)
        if words is None:
            continue
        text = " ".join(words)
        if text == utterance["text"]:
            continue
        utterance["id"] += "-n"
        utterance["text"] = text
        utterance["form"] = "noisy"
        print(json.dumps(utterance, ensure_ascii=False))

main()
