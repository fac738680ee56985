"""Readings with their uncertainty, probability outside limits and decision.

A reading is written in words that each begin with what they are:
  v values;...   a percent+counts   r step   l values;...|percent+counts|step|s (same instrument) or o (another)
  k standard deviation|degrees (nothing: known)   e, t, n an allowance: even, triangular, two standard deviations
  w at|to|within|constant   u value|standard uncertainty|degrees   b goes|stops|gauge uncertainty
  f goes blades;...|stops blades;...   with blade = size~tolerance
"""
from fractions import Fraction
from math import inf, isinf, sqrt

from scipy import special

from sums import Sum, TooLong

TWO_SIGMA = 0.95449973610364159
PASS, CONDITIONAL_PASS, CONDITIONAL_FAIL, FAIL = "P", "p", "f", "F"


class StudentLike:
    """What the classical evaluation goes by: t with the effective degrees of freedom, scaled to the combined u."""

    def __init__(self, u, degrees):
        self.u, self.degrees = u, degrees

    def tail(self, x):
        return float(special.ndtr(-x / self.u) if isinf(self.degrees) else special.stdtr(self.degrees, -x / self.u))

    def half_width(self, coverage):
        p = (1 + coverage) / 2
        return self.u * float(special.ndtri(p) if isinf(self.degrees) else special.stdtrit(self.degrees, p))


class Parts:
    def __init__(self):
        self.boxes, self.triangles, self.normals, self.students = [], [], [], []

    def times(self, factor):
        for kind in (self.boxes, self.triangles, self.normals):
            kind[:] = [a * factor for a in kind]
        self.students[:] = [(s * factor, v) for s, v in self.students]

    def spread(self, scale, degrees):
        if scale > 0:
            if isinf(degrees):
                self.normals.append(scale)
            else:
                self.students.append((scale, degrees))

    def sum(self):
        return Sum(self.boxes + [a / 2 for a in self.triangles for _ in range(2)],
                   sqrt(sum(s * s for s in self.normals)), self.students)

    def classical(self):
        lines = [(a / sqrt(3), inf) for a in self.boxes] + [(a / sqrt(6), inf) for a in self.triangles]
        lines += [(s, inf) for s in self.normals] + list(self.students)
        u = sqrt(sum(s * s for s, _ in lines))
        inverse = sum((s / u) ** 4 / v for s, v in lines)
        return StudentLike(u, 1 / inverse if inverse else inf)

    def kind(self):
        """x: at most two boxes and one t. a: more boxes. s: two t. b: both."""
        many = len([a for a in self.boxes if a > 0]) > 2 or any(a > 0 for a in self.triangles)
        return "b" if many and len(self.students) > 1 else "a" if many else "s" if len(self.students) > 1 else "x"


def plain(x, digits=12):
    return f"{float(x):.{digits}g}"


def mean_and_deviation(texts):
    values = [Fraction(t) for t in texts]
    mean = sum(values) / len(values)
    squares = sum((v - mean) ** 2 for v in values)
    return mean, sqrt(squares / (len(values) - 1)) if len(values) > 1 else 0.0


def spread_of(deviation, count, known):
    """Scale and degrees of freedom of the mean; None where two scatters can hardly be told apart."""
    if known is None:
        return (deviation / sqrt(count), count - 1) if count > 1 else (0.0, 1)
    before, degrees = known
    if count == 1:
        return before, degrees
    if before == 0:
        larger = deviation > 0
    else:
        f = (deviation / before) ** 2
        share = (special.chdtrc(count - 1, f * (count - 1)) if isinf(degrees)
                 else special.fdtrc(count - 1, degrees, f))
        if abs(share - 0.01) < 1e-6:
            return None
        larger = share < 0.01
    if larger:
        return deviation / sqrt(count), count - 1
    if isinf(degrees):
        return before / sqrt(count), inf
    pooled = sqrt(((count - 1) * deviation ** 2 + degrees * before ** 2) / (count - 1 + degrees))
    return pooled / sqrt(count), count - 1 + degrees


def repeats(random, step, counts, n, scatter):
    digits = max(0, -step)
    return [fixed(max(0, round(counts + random.gauss(0, scatter))), step, digits) for _ in range(n)]


def fixed(counts, step, digits):
    return f"{counts * 10.0 ** step:.{digits}f}"


def displayed(random, simple):
    """A displayed reading: its words, its value and its parts."""
    step = random.choice([-3, -2, -2, -1, 0])
    size = Fraction(10) ** step
    n = random.choice([1, 1, 1, 2, 2, 3, 3, 4, 5, 6, 7, 8, 9, 10])
    scatter = random.choice([0.3, 1, 3, 10, 30])
    percent, digits = random.choice([0, 0.05, 0.1, 0.5, 0.8, 1, 2, 3]), random.choice([0, 0, 0.5, 1, 2, 3, 5, 10])
    texts = repeats(random, step, random.choice([random.randint(20, 200), random.randint(200, 5000)]), n, scatter)
    mean, deviation = mean_and_deviation(texts)
    words, parts = ["v" + ";".join(texts), f"a{percent:g}+{digits:g}", f"r{fixed(1, step, max(0, -step))}"], Parts()
    gain, value = Fraction(str(percent)) / 100 * mean, mean
    step_of = float(size)
    known = None
    if random.random() < 0.15:
        known = (float(plain(random.choice([0.3, 1, 3, 10]) * random.uniform(0.5, 2) * step_of, 3)),
                 random.choice([inf, 1, 2, 3, 5, 8, 10.5, 20, 40]))
        words.append(f"k{known[0]:g}|{'' if isinf(known[1]) else format(known[1], 'g')}")
    if not simple and random.random() < 0.3:
        same = random.random() < 0.6
        lead_n = random.choice([1, 1, 2, 3, 5])
        lead_step = step if same or random.random() < 0.5 else step - 1
        lead_texts = repeats(random, lead_step, random.randint(0, 60), lead_n, random.choice([0.5, 2, 6]))
        lead_percent, lead_digits = (percent, digits) if same else (random.choice([0, 0.2, 0.5, 1]), random.choice([0, 1, 3]))
        lead_mean, lead_deviation = mean_and_deviation(lead_texts)
        lead_size = float(Fraction(10) ** lead_step)
        words.append("l" + ";".join(lead_texts) + f"|{lead_percent:g}+{lead_digits:g}|"
                     + fixed(1, lead_step, max(0, -lead_step)) + ("|s" if same else "|o"))
        lead_gain = Fraction(str(lead_percent)) / 100 * lead_mean
        gain = gain - lead_gain if same else gain
        parts.boxes += [(0 if same else float(lead_gain)) + lead_digits * lead_size, lead_size / 2]
        parts.spread(*spread_of(lead_deviation, lead_n, None))
        value -= lead_mean
    parts.boxes += [abs(float(gain)) + digits * step_of, step_of / 2]
    spread = spread_of(deviation, n, known)
    if spread is None:
        return None
    parts.spread(*spread)
    for _ in range(random.choice([1, 2, 3]) if not simple and random.random() < 0.4 else 0):
        allow(random, random.choice("etn"), words, parts, step_of)
    if simple and random.random() < 0.3:
        allow(random, "n", words, parts, step_of)
    if simple and percent == digits == 0 and random.random() < 0.6:
        allow(random, "e", words, parts, step_of)
    room = simple and len([a for a in parts.boxes if a]) < 2
    if random.random() < (0.5 if room else 0.2):
        at, to, constant = random.choice([-20, 5, 17.5, 20, 35, 60, 90]), random.choice([20, 20, 25, 75]), random.choice([235, 235, 234.5])
        within = random.choice([0, 1, 2, 5]) if room or not simple else 0
        words.append(f"w{at:g}|{to:g}|{within:g}|{constant:g}")
        factor = (constant + to) / (constant + at)
        parts.times(factor)
        referred = float(value) * factor
        parts.boxes.append(abs(referred) / (constant + at) * within)
        return " ".join(words), referred, parts
    return " ".join(words), float(value), parts


def allow(random, shape, words, parts, step):
    half = float(plain(step * random.choice([0.2, 1, 3, 10, 30]) * random.uniform(0.5, 2), 3))
    words.append(f"{shape}{half:g}")
    {"e": parts.boxes, "t": parts.triangles, "n": parts.normals}[shape].append(half / 2 if shape == "n" else half)


def known_value(random):
    value = float(plain(random.uniform(0.1, 50), 4))
    u = 0.0 if random.random() < 0.02 else float(plain(value * 10 ** random.uniform(-3, -0.3), 4))
    degrees = random.choice([inf, inf, 1, 1.5, 2, 2.7, 3, 4, 5, 8, 9.3, 12, 20, 50, 200])
    parts = Parts()
    parts.spread(u, degrees)
    return f"u{value:g}|{u:g}|{'' if isinf(degrees) else format(degrees, 'g')}", value, parts


def bracket(random):
    parts = Parts()
    if random.random() < 0.5:
        goes = float(plain(random.uniform(0.05, 2), 3))
        stops = float(plain(goes + random.choice([0.01, 0.02, 0.05, 0.1, 0.5]), 6))
        gauge = random.choice([0, 0, 0.001, 0.003, 0.01, 0.1])
        parts.boxes += [(stops - goes) / 2, gauge * sqrt(3)]
        return f"b{goes:g}|{stops:g}|{gauge:g}", (goes + stops) / 2, parts
    sizes = [Fraction(k, 100) for k in (3, 5, 8, 10, 15, 20, 25, 30, 35, 40, 50)]
    tolerance = {s: Fraction(random.choice([0, 2, 3, 5]), 1000) for s in sizes}
    while True:
        shared = random.sample(sizes, random.choice([0, 0, 1, 2]))
        rest = [s for s in sizes if s not in shared]
        goes = shared + random.sample(rest, 1 if not shared else random.choice([0, 1]))
        stops = shared + random.sample([s for s in rest if s not in goes], 1)
        if goes and sum(stops) - sum(goes) > sum(tolerance[s] for s in set(goes) ^ set(stops)):
            break
    middle, half = (sum(goes) + sum(stops)) / 2, (sum(stops) - sum(goes)) / 2
    # X = G + V(S − G), V even: the variance beyond the box is (v_goes + v_stops + covariance)/3.
    variance = sum(tolerance[s] ** 2 / 3 for group in (goes, stops, shared) for s in group) / 3
    parts.boxes += [float(half), sqrt(variance) * sqrt(3)]
    write = lambda stack: ";".join(f"{float(s):g}~{float(tolerance[s]):g}" for s in stack)
    return f"f{write(goes)}|{write(stops)}", float(middle), parts


def inside(value, lower, upper):
    return min(inf if lower is None else value - lower, inf if upper is None else upper - value)


def outside(distribution, value, lower, upper):
    return ((0 if lower is None else distribution.tail(value - lower))
            + (0 if upper is None else distribution.tail(upper - value)))


def limits(random, value, expanded, exact):
    g = random.choice([random.uniform(-2.5, 2.5), random.uniform(-1.2, 1.2), random.uniform(0.3, 4), 0.0,
                       *[s * (1 + e * d) for s in (1, -1) for e in (1, -1) for d in ((1e-3, 1e-5) if exact else (0.03,))]])
    if not g and abs(float(plain(value, 9)) - value) > 1e-14 * abs(value):
        g = 0.5     # no short number lies on such a value
    near = value + g * expanded if g else value
    digits = 9 if abs(abs(g) - 1) < 0.02 else 6
    sides = random.choice("ulb")
    width = expanded * random.choice([0.5, 1.5, 1.99, 2.01, 3, 10])
    mirror = random.random() < 0.5
    if mirror:
        near = 2 * value - near
    near = float(plain(near, 12 if not g else digits))
    far = float(plain(near + (width if mirror else -width), 6))
    lower, upper = (near, far) if mirror else (far, near)
    if sides != "b":
        lower, upper = (lower, None) if mirror else (None, upper)
    return (lower, upper) if None in (lower, upper) or lower < upper else (None, near)


def decide(random, value, distribution, expanded, lower, upper):
    """A rule, its answer in one letter, how near that was to another answer, and the end of the accepted values."""
    d = inside(value, lower, upper)
    p_out = outside(distribution, value, lower, upper) if distribution else float(d < 0)
    rule = random.choice(["N", "N", "N", "N", "S", "G", "R", "Z", "I"])
    room = inf if None in (lower, upper) else (upper - lower) / 2
    if rule in "NSG":
        factor = {"N": 1, "S": 0, "G": random.choice([0.83, 1, 1.5, 0.5, 3])}[rule]
        band = factor * expanded
        slack = 1e-12 * max(abs(value), expanded)
        good, unclear = d >= band - slack, rule == "N"
        letter = PASS if good else CONDITIONAL_PASS if d >= -slack and unclear else \
            CONDITIONAL_FAIL if d >= -band - slack and unclear else FAIL
        near = min(abs(abs(d) - band), abs(room - band)) / expanded if expanded and band else 1
        return (f"G{factor:g}" if rule == "G" else rule), letter + ("e" if band > room * (1 + 1e-12) else ""), near, p_out, None
    if rule == "I":
        letter = "C" if 1 - p_out >= 0.95 else "N" if p_out >= 0.95 else "n"
        return rule, letter, min(abs(p_out - 0.05), abs(p_out - 0.95)), p_out, None
    edge, risk = None, random.choice([0.05, 0.05, 0.01, 0.025, 0.2, 0.5])
    if rule == "Z" and distribution:
        reach = min(expanded * random.uniform(0.1, 1.5), room * 0.99)
        edge = float(plain(lower + reach if upper is None else upper - reach, 9))
        risk = outside(distribution, edge, lower, upper)
        beyond = outside(distribution, edge + (1e-4 if lower is None or upper is not None else -1e-4) * expanded, lower, upper)
        # Between limits closer than a box is wide, the risk is the same for many values.
        if not 0.0005 < risk <= 0.499 or beyond - risk < 1e-6:
            edge, risk = None, 0.05
    risk = float(plain(risk, 15))
    return f"R{risk:.15g}", PASS if p_out <= risk else FAIL, abs(p_out - risk), p_out, edge


def case(random, what):
    made = {"x": lambda: displayed(random, True), "y": lambda: displayed(random, False), "c": lambda: displayed(random, random.random() < 0.5),
            "u": lambda: known_value(random), "b": lambda: bracket(random)}[what]()
    if made is None:
        return None
    words, value, parts = made
    classical = what == "c"
    kind = parts.kind()
    if (what == "x") != (kind == "x") and what in "xy":
        return None
    exact = kind == "x" or classical
    distribution = parts.classical() if classical else parts.sum()
    if not distribution.u:
        distribution, expanded, coverage = None, 0.0, TWO_SIGMA
    elif random.random() < 0.15:
        coverage = random.choice([TWO_SIGMA, TWO_SIGMA, 0.95, 0.99])
        expanded = distribution.half_width(coverage)
    else:
        expanded = float(plain(distribution.u * random.uniform(0.6, 3.5), 6))
        coverage = 1 - 2 * distribution.tail(expanded)
        if not 0.5 <= coverage <= 0.999:
            return None
    lower, upper = limits(random, value, expanded or value / 10, exact)
    rule, letter, near, p_out, edge = decide(random, value, distribution, expanded, lower, upper)
    if exact and near < 2e-7 and distribution:
        return None
    if not exact and near < (0.02 if coverage < 0.956 else 0.1):
        letter = "?"    # what the program approximates may decide otherwise
    text = lambda x: "" if x is None else f"{x:.12g}"
    line = ["c" if classical else kind, words, f"{coverage:.16g}", text(lower), text(upper), rule, text(value),
            f"{expanded:.10g}", f"{p_out:.10g}" if p_out > 1e-12 else "0", letter, text(edge)]
    line += [f"{distribution.u:.10g}", "" if isinf(distribution.degrees) else f"{distribution.degrees:.10g}"] if classical else ["", ""]
    return ",".join(line), (distribution, expanded, coverage)


HEADING = "kind,reading,coverage,lower,upper,rule,value,U,outside,decision,edge,u,degrees"
SHARES = [("x", 6200), ("y", 4700), ("c", 1500), ("u", 800), ("b", 800)]


def cases(random):
    for what, count in SHARES:
        made = 0
        while made < count:
            try:
                one = case(random, what)
            except TooLong:
                continue
            if one:
                made += 1
                yield one
