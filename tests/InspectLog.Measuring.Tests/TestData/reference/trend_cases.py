"""Straight lines by least squares (mpmath, 40 digits, from the decimals as written) and where they meet a limit."""
from functools import lru_cache

import mpmath as mp

HEADING = "points,lower,upper,slope,intercept,s,slopeError,interceptError,rSquared,why,edge,line,at,y,error,prediction"


@lru_cache(maxsize=None)
def factor(degrees):
    """Student's t for 95.45 %, two-sided."""
    beyond = mp.erfc(mp.sqrt(2))
    v = mp.mpf(degrees)
    return mp.findroot(lambda t: mp.betainc(v / 2, mp.mpf(1) / 2, 0, v / (v + t * t), regularized=True) - beyond,
                       (mp.mpf(2), mp.mpf(3)) if degrees > 2 else (mp.mpf(4), mp.mpf(14)), tol=mp.mpf(10) ** -30)


class Line:
    def __init__(self, points):
        x, y = [mp.mpf(a) for a, _ in points], [mp.mpf(b) for _, b in points]
        self.n = n = len(points)
        self.x, self.y = mp.fsum(x) / n, mp.fsum(y) / n
        self.sxx = mp.fsum((a - self.x) ** 2 for a in x)
        self.slope = mp.fsum((a - self.x) * (b - self.y) for a, b in zip(x, y)) / self.sxx
        rest = mp.fsum((b - self.at(a)) ** 2 for a, b in zip(x, y))
        total = mp.fsum((b - self.y) ** 2 for b in y)
        self.s = mp.sqrt(rest / (n - 2))
        self.intercept = self.at(mp.mpf(0))
        self.slope_error = self.s / mp.sqrt(self.sxx)
        self.intercept_error = self.error(mp.mpf(0))
        self.r_squared = 1 - rest / total if total else mp.mpf(0)

    def at(self, x):
        return self.y + self.slope * (x - self.x)

    def error(self, x):
        return self.s * mp.sqrt(1 / mp.mpf(self.n) + (x - self.x) ** 2 / self.sxx)

    def prediction(self, x):
        return factor(self.n - 2) * self.s * mp.sqrt(1 + 1 / mp.mpf(self.n) + (x - self.x) ** 2 / self.sxx)

    def edge(self, limit):
        """Where the edge of the prediction interval meets a limit that the line runs towards. In d = x - mean:
        (slope·d - c)² = (t·s)²·(1 + 1/n + d²/Sxx), of whose two roots one is the other edge's."""
        c, q = limit - self.y, (factor(self.n - 2) * self.s) ** 2
        a2, a1, a0 = self.slope ** 2 - q / self.sxx, -2 * self.slope * c, c * c - q * (1 + 1 / mp.mpf(self.n))
        root = mp.sqrt(max(mp.mpf(0), a1 * a1 - 4 * a2 * a0))     # 0 for readings exactly on a line
        ends = [self.x + (-a1 + sign * root) / (2 * a2) for sign in (1, -1)]
        sign = 1 if self.slope > 0 else -1
        return min(ends, key=lambda x: abs(self.at(x) + sign * self.prediction(x) - limit))


def points(random):
    n = random.choice([3, 4, 4, 5, 5, 6, 7, 8, 10, 12])
    start, span = random.choice([(0, 400), (48000, 30000), (2461000, 2000), (0, 5)])
    digits = 1 if span < 10 else 0
    x = [round(start + random.uniform(0, span), digits) for _ in range(n)]
    if random.random() < 0.02:
        x = [x[0]] * n
    level, change = random.choice([0.05, 1.5, 12, 8200]), random.choice([0, 0.01, 0.1, 0.1, 0.5, 0.5, -0.1, -0.1, -0.4])
    noise = level * random.choice([0, 0.0005, 0.005, 0.02])
    step = level * 0.001
    places = max(0, -int(mp.floor(mp.log10(step))))
    y = [round(level * (1 + change * (a - start) / span) + random.gauss(0, noise), places) for a in x]
    order = list(zip(x, y))
    return [(f"{a:.{digits}f}", f"{b:.{places}f}") for a, b in order]


def case(random):
    sample = points(random)
    same = len({a for a, _ in sample}) == 1
    if not same and len({a for a, _ in sample}) < 3:
        return None
    values = [float(b) for _, b in sample]
    low, high = min(values), max(values)
    span = max(high - low, abs(high) / 50)
    lower = f"{low - random.uniform(-0.3, 3) * span:.5g}" if random.random() < 0.6 else ""
    upper = f"{high + random.uniform(-0.3, 3) * span:.5g}" if random.random() < 0.6 else ""
    if lower and upper and float(lower) >= float(upper):
        return None
    head = [";".join(f"{a} {b}" for a, b in sample), lower, upper]
    text = lambda v: "" if v is None else mp.nstr(v, 13, min_fixed=-4, max_fixed=14)
    if same:
        return ",".join(head + [""] * 6 + ["same"] + [""] * 6)
    line = Line(sample)
    if len(sample) > 3 and line.s and abs(abs(line.slope) / (factor(line.n - 2) * line.slope_error) - 1) < 1e-6:
        return None
    why, edge, meets = reason(line, len(sample), lower, upper)
    if edge is not None and line.s == 0 and line.slope == 0:
        return None
    at = mp.mpf(f"{float(sample[-1][0]) + random.uniform(-1, 1.5) * (float(sample[-1][0]) - float(sample[0][0])):.1f}")
    figures = [line.slope, line.intercept, line.s, line.slope_error, line.intercept_error, line.r_squared]
    return ",".join(head + [text(v) for v in figures] + [why, text(edge), text(meets), mp.nstr(at, 12, max_fixed=14)]
                    + [text(v) for v in (line.at(at), line.error(at), line.prediction(at))])


def reason(line, count, lower, upper):
    if count < 4:
        return "few", None, None
    if abs(line.slope) <= factor(line.n - 2) * line.slope_error:
        return "slope", None, None
    if not lower and not upper:
        return "limit", None, None
    limit = upper if line.slope > 0 else lower
    if not limit:
        return "away", None, None
    return "", line.edge(mp.mpf(limit)), line.x + (mp.mpf(limit) - line.y) / line.slope


def cases(random, count=3000):
    with mp.workdps(40):
        made = 0
        while made < count:
            one = case(random)
            if one:
                made += 1
                yield one
