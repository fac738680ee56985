"""Copper windings referred to another temperature (mpmath, 40 digits).

what: value (value and uncertainty), limits, hot (the temperature from two resistances), alpha (the constant from a
coefficient at 20 °C, and the coefficient at a temperature)
"""
import mpmath as mp

HEADING = "what,a,b,at,to,within,constant,first,second"


def number(random, low, high, digits=4):
    return f"{random.uniform(low, high):.{digits}g}"


def case(random):
    what = random.choice(["value"] * 6 + ["limits", "hot", "hot", "alpha"])
    at, to = (random.choice(["20", "-60", "300", "0", number(random, -60, 300), number(random, 5, 110)]) for _ in range(2))
    within, constant = random.choice(["0", "1", "5", number(random, 0, 20, 3)]), random.choice(["235", "235", "234.5", number(random, 225, 245)])
    a, b = f"{10 ** random.uniform(-2, 5):.4g}", ""
    k = mp.mpf(constant)
    factor = (k + mp.mpf(to)) / (k + mp.mpf(at))
    if what == "value":
        b = random.choice(["0", f"{float(a) * 10 ** random.uniform(-5, -1):.3g}"])
        first = mp.mpf(a) * factor
        # dR/dt = -R·(K + to)/(K + at)², its uncertainty a rectangle.
        second = mp.sqrt((mp.mpf(b) * factor) ** 2 + (first / (k + mp.mpf(at)) * mp.mpf(within) / mp.sqrt(3)) ** 2)
    elif what == "limits":
        b, within = f"{float(a) * random.uniform(1.01, 2):.5g}", ""
        first, second = mp.mpf(a) * factor, mp.mpf(b) * factor
    elif what == "hot":
        b, within, to = f"{float(a) * random.uniform(0.8, 1.6):.5g}", "", ""
        first, second = mp.mpf(b) / mp.mpf(a) * (k + mp.mpf(at)) - k, mp.mpf(0)
    else:
        a, within, to, constant = number(random, 0.0037, 0.0041, 5), "", "", ""
        first = 1 / mp.mpf(a) - 20
        second = 1 / (first + mp.mpf(at))
    return ",".join([what, a, b, at, to, within, constant, mp.nstr(first, 15, min_fixed=-5, max_fixed=16),
                     mp.nstr(second, 15, min_fixed=-5, max_fixed=16)])


def cases(random, count=3000):
    with mp.workdps(40):
        for _ in range(count):
            yield case(random)
