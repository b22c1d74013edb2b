"""Small formulas that the recomputation shares. Units are SI, temperatures in degrees Celsius."""

import math
from bisect import bisect_left

GRAVITY = 9.80665  # [m/s2] ISO 2533:1975, standard acceleration
COPPER_COEFFICIENT = 0.00393  # [1/K] IEC 60028:1925, referred to 20 degC
PULSE = 10.0  # [s] the pulse that cell resistances are given for
ENDLESS = math.inf
NOTHING = None  # no bound, or no number


class Curve(list):
    """A curve given as pairs, with its places by themselves, to be searched.

    The piece that leads up to each place is its beginning, its width and its rise; what leads up
    to the first is level.
    """

    def __init__(self, points):
        super().__init__(points)
        self.places = [x for x, _ in points]
        self.last = points[-1][1]
        x, y = points[0]
        self.pieces = [(x, y, 1.0, 0.0)]
        for (x0, y0), (x1, y1) in zip(points, points[1:]):
            self.pieces.append((x0, y0, x1 - x0, y1 - y0))


def line_through(curve, x):
    """Reads a curve: straight lines between its points, constant beyond the ends."""
    places = curve.places
    if x >= places[-1]:
        return curve.last
    x0, y0, width, rise = curve.pieces[bisect_left(places, x)]
    return y0 + rise * (x - x0) / width


def line_beyond(points, x):
    """Reads a curve; beyond its ends the first and the last straight line go on."""
    if points.places[0] <= x <= points.places[-1]:
        return line_through(points, x)
    (x0, y0), (x1, y1) = points[:2] if x < points[0][0] else points[-2:]
    known = (x0, y0) if x < x0 else (x1, y1)
    return known[1] + (y1 - y0) / (x1 - x0) * (x - known[0])


def arrhenius(points):
    """A factor over temperature as ln f over 1/T, where it is straight."""
    return Curve([(1 / (t + 273.15), math.log(f)) for t, f in reversed(points)])


def arrhenius_through(straight, celsius):
    """Reads a factor over temperature, which goes on beyond the ends."""
    return math.exp(line_beyond(straight, 1 / (celsius + 273.15)))


def root(function, low, high):
    """Narrows down to the last bits; function(low) and function(high) differ in sign.

    Chandrupatla, Advances in Engineering Software 28 (1997) 145: inverse quadratic
    interpolation where the three last points allow it, bisection elsewhere.
    """
    old, at_old = low, function(low)
    new, at_new = high, function(high)
    part = 0.5
    while True:
        tried = new + part * (old - new)
        found = function(tried)
        if (found > 0) == (at_new > 0):
            third, at_third = new, at_new
        else:
            third, at_third = old, at_old
            old, at_old = new, at_new
        new, at_new = tried, found
        best, at_best = (new, at_new) if abs(at_new) < abs(at_old) else (old, at_old)
        least = 4e-16 * abs(best) / abs(old - new) if old != new else 1.0
        if least > 0.5 or at_best == 0:
            return best
        part = 0.5
        if at_third != at_old and at_new != at_third and math.isfinite(at_third + at_old + at_new):
            way = (new - old) / (third - old)
            height = (at_new - at_old) / (at_third - at_old)
            if height**2 < way and (1 - height) ** 2 < 1 - way:
                part = at_new / (at_old - at_new) * at_third / (at_old - at_third) + (
                    (third - new) / (old - new) * at_new / (at_third - at_new)
                ) * at_old / (at_third - at_old)
        part = min(1 - least, max(least, part))


def first_below(function, knots, parts=24):
    """Walks down the knots; the highest place at which the function is below zero.

    Returns the upper end when it is below zero there already, None when it never is.
    """
    upper = max(knots)
    if function(upper) < 0:
        return upper
    descending = sorted(knots, reverse=True)
    for high, low in zip(descending, descending[1:]):
        before = high
        for i in range(1, parts + 1):
            after = high + (low - high) * i / parts
            if function(after) < 0:
                return root(function, after, before)
            before = after
    return None


def integral(function, low, high, accuracy=1e-9, depth=24):
    """Adaptive Simpson quadrature of a function that returns a tuple."""

    def weigh(width, a, m, b):
        return [width / 6 * (x + 4 * y + z) for x, y, z in zip(a, m, b)]

    def part(x0, x2, a, m, b, whole, left):
        x1 = 0.5 * (x0 + x2)
        am, mb = function(0.5 * (x0 + x1)), function(0.5 * (x1 + x2))
        one, two = weigh(x1 - x0, a, am, m), weigh(x2 - x1, m, mb, b)
        near = all(
            abs(p + q - w) <= 15 * accuracy * max(abs(p + q), abs(w))
            for p, q, w in zip(one, two, whole)
        )
        if near or left == 0:
            return tuple(p + q for p, q in zip(one, two))
        lower = part(x0, x1, a, am, m, one, left - 1)
        upper = part(x1, x2, m, mb, b, two, left - 1)
        return tuple(p + q for p, q in zip(lower, upper))

    a, m, b = function(low), function(0.5 * (low + high)), function(high)
    return part(low, high, a, m, b, weigh(high - low, a, m, b), depth)


def air_density(altitude, temperature):
    """ISO 2533:1975 pressure in the lowest layer (0.0065 K/m); ideal gas at the temperature."""
    gas = 287.05287
    pressure = 101325.0 * (1 - 0.0065 * altitude / 288.15) ** 5.25588
    return pressure / (gas * (temperature + 273.15))


def pulse_draw(open_circuit, resistance, power):
    """Pack current that delivers a power at the terminals: the smaller root, None above U2/4R."""
    if resistance == 0:
        return power / open_circuit
    inside = open_circuit**2 - 4 * resistance * power
    if inside < -1e-12 * open_circuit**2:  # the greatest power itself may be drawn
        return None
    return 2 * power / (open_circuit + math.sqrt(max(0.0, inside)))


def pulse_return(open_circuit, resistance, power):
    """Pack current that takes a power in at the terminals."""
    return 2 * power / (open_circuit + math.sqrt(open_circuit**2 + 4 * resistance * power))


def driving_current(emf, loss, power):
    """Motor current that takes a power: emf times current and loss times its square."""
    if power <= 0:
        return 0.0
    return 2 * power / (emf + math.sqrt(emf**2 + 4 * loss * power))


def settled(asked, taper, open_circuit, resistance):
    """Draw at which a low-voltage taper and the sag it causes are at rest.

    The taper lets pass `asked` times (V - ends)/(begins - ends), and V = U - I R.
    """
    if taper is None:
        return asked
    begins, ends = taper
    if open_circuit - asked * resistance >= begins:
        return asked
    if open_circuit <= ends:
        return 0.0
    return asked * (open_circuit - ends) / (begins - ends + asked * resistance)
