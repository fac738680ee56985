"""Shares of a sum of independent contributions: boxes (rectangles), a normal, Student's t; symmetrical about 0.

Three ways that have nothing in common with each other or with the program:
- boxes alone: the exact piecewise polynomial, in fractions;
- anything else: the characteristic function, turned back by the formula of Gil-Pelaez (1951) with Gauss-Legendre panels
  in double precision, about 1e-13;
- `tail_by_mpmath`, for checks of those: integrals of the normal by recurrence and quadrature over the t density, to 30
  digits and more. With two t it takes the Cauchy distribution only, whose sums are known.
"""
from fractions import Fraction
from itertools import product

import mpmath as mp
import numpy as np
from scipy import special

NODES, WEIGHTS = np.polynomial.legendre.leggauss(20)
MOST_NODES = 1_500_000


class TooLong(Exception):
    """One part is so much narrower than the others that the panels would be too many."""


class Sum:
    def __init__(self, boxes=(), normal=0.0, students=()):
        self.boxes = tuple(float(a) for a in boxes if a > 0)        # half-widths
        self.normal = float(normal)                                 # standard deviation
        self.students = tuple((float(s), float(v)) for s, v in students if s > 0)   # scale, degrees of freedom
        self.u = float(np.sqrt(sum(a * a for a in self.boxes) / 3 + self.normal ** 2
                               + sum(s * s for s, _ in self.students)))
        self._panels = None

    def tail(self, x):
        """P(Y > x)."""
        if x < 0:
            return 1 - self.tail(-x)
        if not self.normal and not self.students:
            return self._boxes_alone(x)
        t, w, phi = self._points(x)
        return float(0.5 - np.sum(w * np.sin(t * x) * phi / t) / np.pi)

    def density(self, x):
        if not self.normal and not self.students:
            step = 1e-7 * self.u
            return (self._boxes_alone(x - step) - self._boxes_alone(x + step)) / (2 * step)
        t, w, phi = self._points(x)
        return float(np.sum(w * np.cos(t * x) * phi) / np.pi)

    def half_width(self, coverage):
        """x with P(-x < Y < x) = coverage, by bisection kept safe and Newton made quick."""
        wanted, low, high = (1 - coverage) / 2, 0.0, 2 * self.u
        while self.tail(high) > wanted:
            low, high = high, 2 * high
        x = (low + high) / 2
        for _ in range(200):
            miss = self.tail(x) - wanted
            low, high = (x, high) if miss > 0 else (low, x)
            slope = self.density(x)
            step = x + miss / slope if slope > 0 else x
            following = step if low < step < high else (low + high) / 2
            if abs(following - x) <= 1e-14 * x or high - low <= 1e-14 * x:
                return following
            x = following
        return x

    def _boxes_alone(self, x):
        halves = [Fraction(a) for a in self.boxes]
        x, n, total = Fraction(x), len(halves), Fraction(0)
        for signs in product((1, -1), repeat=n):
            reach = sum(s * a for s, a in zip(signs, halves)) - x
            if reach > 0:
                total += reach ** n * (-1) ** signs.count(-1)
        for k in range(1, n + 1):
            total /= 2 * halves[k - 1] * k
        return float(total)

    def _phi(self, t):
        phi = np.exp(-0.5 * (self.normal * t) ** 2)
        for a in self.boxes:
            phi = phi * np.sinc(a * t / np.pi)
        for s, v in self.students:
            phi = phi * student_phi(s * t, v)
        return phi

    def _bound(self, t):
        bound = np.exp(-0.5 * (self.normal * t) ** 2)
        for a in self.boxes:
            bound = bound * np.minimum(1, 1 / (a * t))
        for s, v in self.students:
            bound = bound * student_phi(s * t, v)
        return bound

    def _points(self, x):
        fastest = max(x, 4 * self.u) + sum(self.boxes)
        if self._panels and self._panels[0] >= fastest:
            return self._panels[1:]
        grid = np.geomspace(1e-3, 1e9, 1201) / self.u
        beyond = grid[self._bound(grid) < 1e-16]
        end = beyond[0] if len(beyond) else grid[-1]
        longest = 4 * np.pi / fastest
        if self.normal:
            longest = min(longest, 3 / self.normal)
        for s, v in self.students:
            longest = min(longest, 4 / (np.sqrt(v) * s))
        if 20 * end / longest > MOST_NODES:
            raise TooLong
        dyadic = longest * 2.0 ** np.arange(-50, 1)
        edges = np.concatenate(([0], dyadic, longest + longest * np.arange(1, int(np.ceil(end / longest)) + 1)))
        half = np.diff(edges) / 2
        t = (edges[:-1, None] + half[:, None] * (1 + NODES[None, :])).ravel()
        w = (half[:, None] * WEIGHTS[None, :]).ravel()
        self._panels = (fastest, t, w, self._phi(t))
        return self._panels[1:]


def student_phi(t, v):
    """Characteristic function of Student's t (Hurst 1995)."""
    if v == 1:
        return np.exp(-t)
    z, m = np.sqrt(v) * t, v / 2
    with np.errstate(over="ignore", under="ignore", invalid="ignore", divide="ignore"):
        k = special.kve(m, z)
        phi = np.exp(np.log(k) - z + m * np.log(z) - special.gammaln(m) - (m - 1) * np.log(2))
    if m > 2:
        # Near 0 the Bessel function leaves the range of a double; there its power series is short. Its other part, from
        # z to the power of 2m, is far below the last digit.
        q, term, series = np.where(z < 10, z * z / 4, 0), 1.0, 1.0
        for i in range(1, min(int(np.ceil(m)), 30)):
            term = term * q / (i * (i - m))
            series = series + term
        phi = np.where(~np.isfinite(phi) | (z < 1e-3), series, phi)
    return np.where(np.isfinite(phi), np.minimum(phi, 1), 1)


def tail_by_mpmath(boxes, normal, students, x):
    """P(Y > x) in high precision, for up to about four boxes and one t, or Cauchys."""
    with mp.workdps(50):
        boxes, normal, x = [mp.mpf(a) for a in boxes if a > 0], mp.mpf(normal), mp.mpf(x)
        students = [(mp.mpf(s), mp.mpf(v)) for s, v in students if s > 0]
        if len(students) == 2:
            assert all(v == 1 for _, v in students)
            students = [(students[0][0] + students[1][0], mp.mpf(1))]
        if not students:
            return _without_t(boxes, normal, x)
        s, v = students[0]
        scale = mp.gamma((v + 1) / 2) / (mp.sqrt(v * mp.pi) * mp.gamma(v / 2))

        def density(y):
            return scale * (1 + y * y / v) ** (-(v + 1) / 2)

        def student_above(y):
            part = mp.betainc(v / 2, mp.mpf(1) / 2, 0, v / (v + y * y), regularized=True) / 2
            return part if y >= 0 else 1 - part
        if not boxes and not normal:
            return student_above(x / s)
        reach = sum(boxes)
        knots = sorted({x - sum(e * a for e, a in zip(signs, boxes)) for signs in product((1, -1), repeat=len(boxes))})
        low, high = knots[0], knots[-1]
        if normal:
            low, high = low - 16 * normal, high + 16 * normal
            knots = [low, *knots, high] if reach else [low, x - 4 * normal, x, x + 4 * normal, high]
        cuts = sorted({k / s for k in knots} | {c for c in (mp.mpf(-20), mp.mpf(-4), mp.mpf(-1), mp.mpf(0), mp.mpf(1), mp.mpf(4), mp.mpf(20))
                                               if low < c * s < high})
        with mp.workdps(25):
            inner = mp.quad(lambda y: density(y) * _without_t(boxes, normal, x - s * y), cuts) if len(cuts) > 1 else mp.mpf(0)
        # Where the t alone reaches beyond all the rest can.
        return inner + student_above(high / s)


def _without_t(boxes, normal, x):
    """The same without a t: differences of the n-fold integral of the normal's tail, or of a step."""
    n, total = len(boxes), mp.mpf(0)
    with mp.workdps(60):
        if not boxes:
            return mp.erfc(x / normal / mp.sqrt(2)) / 2 if normal else mp.mpf(x < 0) + mp.mpf(x == 0) / 2
        for signs in product((1, -1), repeat=n):
            total += (-1) ** signs.count(-1) * _integral(n, normal, x - sum(e * a for e, a in zip(signs, boxes)))
        for a in boxes:
            total /= 2 * a
        return total


def _integral(n, normal, x):
    if not normal:
        return (-x) ** n / mp.factorial(n) if x < 0 else mp.mpf(0)
    z = x / (normal * mp.sqrt(2))
    before, now = 2 / mp.sqrt(mp.pi) * mp.exp(-z * z), mp.erfc(z)
    for k in range(1, n + 1):
        before, now = now, (before - 2 * z * now) / (2 * k)
    return (normal * mp.sqrt(2)) ** n * now / 2
