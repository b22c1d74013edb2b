"""Recomputes the driving half of a worksheet: sag, thrust, climbing, range, heat, several packs.

Where the worksheet solves or uses Gauss quadrature between knots, this integrates adaptively or
steps finely, so the tolerances are those of the steps, not of the formulas.
"""

import math
from functools import lru_cache

from formulas import (
    ENDLESS,
    GRAVITY,
    NOTHING,
    PULSE,
    driving_current,
    first_below,
    integral,
    pulse_draw,
    pulse_return,
    root,
    settled,
)

TIGHT = 1e-9
ITERATED = 1e-8  # found by iteration on both sides
STEPPED = 1e-4  # integrated on both sides, each in its own way
WARMED = 2e-3  # by middle steps of about a kelvin there, by smaller ones here
ROUGH = 1e-2  # trapezoids over the charge, middle steps of speed
BRAKED = 2e-3  # middle steps on one side, one of which may straddle a jump of the brake
SLOWING = 3e-3  # slower and slower: the worksheet's rule strides over bends of the speed
STANDING = 0.05  # [m/s]
MILE = 1609.344  # [m] International yard and pound agreement, 1959


class Driving:
    """What the drive does with a pack state: pulse or endless, at a temperature."""

    def __init__(self, vehicle, seconds=PULSE, temperature=None):
        self.v = vehicle
        self.seconds = seconds
        own = vehicle.pack_temperature
        self.temperature = own if temperature is None else temperature
        self.taper = vehicle.get("settings.low_voltage_taper")
        self.asked = vehicle.set_pack("settings.pack_discharge_current")
        self.top = vehicle["settings.motor_drive_current"]
        self.loss = vehicle.loss
        self.pack = lru_cache(maxsize=None)(self.pack)
        self.pull_away = lru_cache(maxsize=None)(self.pull_away)
        # one speed is looked at over many charge states
        self.demand = lru_cache(maxsize=64)(self.demand)
        # what the ground and the rider bear: the whole grip, since a margin is for limits
        borne = vehicle.accelerations(braking=False, margin=0.0).values()
        self.borne = min([math.inf] + [b for b in borne if b is not NOTHING])
        self.borne *= vehicle.weight

    def pack(self, charge):
        battery = self.v.battery
        u = battery.open_circuit(charge)
        r = battery.resistance(charge, self.temperature, self.seconds)
        return u, r, settled(self.asked, self.taper, u, r)

    def current_for(self, force, speed):
        """Motor current that gives a force at the wheels."""
        v = self.v
        per_motor = force * v.wheel_radius / (v.motors * v.reduction * v.efficiency)
        return (per_motor + v.drag_torque(v.motor_speed(speed))) / v.torque_constant

    def power(self, current, speed):
        """Power that the motors draw from the pack."""
        v = self.v
        turning = v.torque_constant * v.motor_speed(speed) * current
        return v.motors * (turning + self.loss * current**2) / v.controller_efficiency

    def demand(self, speed, slope=0.0, headwind=0.0):
        """Force, motor current, power from the pack and voltage that a steady speed needs."""
        force = self.v.resistance_force(speed, slope, headwind)
        current = max(0.0, self.current_for(force, speed))
        return force, current, self.power(current, speed), self.v.voltage_need(current, speed)

    def reserve(self, speed, charge, slope=0.0, headwind=0.0):
        """Least that is left of any bound at a steady speed; it is held while not negative."""
        u, r, limit = self.pack(charge)
        force, current, power, voltage = self.demand(speed, slope, headwind)
        drawn = pulse_draw(u, r, power)
        most = min(limit, u / (2 * r))
        return min(
            self.top - current,
            most * (u - most * r) - power,
            -math.inf if drawn is None else u - drawn * r - voltage,
            self.borne - force,
        )

    def thrust(self, speed, charge):
        """Full thrust, no more than the ground bears."""
        v = self.v
        u, r, limit = self.pack(charge)
        emf = v.torque_constant * v.motor_speed(speed)
        most = min(limit, u / (2 * r))
        per_motor = most * (u - most * r) * v.controller_efficiency / v.motors
        by_pack = driving_current(emf, self.loss, per_motor)
        current = min(self.top, by_pack)

        def left(i):
            drawn = pulse_draw(u, r, self.power(i, speed))
            drawn = u / (2 * r) if drawn is None else drawn
            return u - drawn * r - v.voltage_need(i, speed)

        if left(current) < 0:
            current = root(left, 0.0, current) if left(0.0) > 0 else 0.0
        force = v.drive_force(current, speed)
        return (force, current) if force <= self.borne else (
            self.borne,
            self.current_for(self.borne, speed),
        )

    def pull_away(self, speed, charge, wind=0.0):
        """Time, distance, energy and charge at the terminals to reach a speed; None when never."""
        v = self.v
        u, r, _ = self.pack(charge)
        idle = v["use.idle_power"]
        inertia = v.mass * (1 + v["vehicle.rotating_share"])
        beside = max(0.0, u * u / (4 * r) - idle) * v.controller_efficiency / v.motors

        def rates(x):
            force, current = self.thrust(x, charge)
            emf = v.torque_constant * v.motor_speed(x)
            fed = driving_current(emf, self.loss, beside)
            if fed < current:
                current, force = fed, v.drive_force(fed, x)
            surplus = force - v.resistance_force(x, 0.0, wind)
            if surplus <= 0:
                raise ZeroDivisionError
            power = self.power(current, x) + idle
            drawn = pulse_draw(u, r, power)
            if drawn is None:
                drawn = u / (2 * r)
            return tuple(inertia / surplus * each for each in (1.0, x, power, drawn))

        try:
            parts = 8
            pieces = [
                integral(rates, speed * i / parts, speed * (i + 1) / parts, 1e-7, 18)
                for i in range(parts)
            ]
        except ZeroDivisionError:
            return None
        return tuple(sum(each) for each in zip(*pieces))


# --- drive


def compare_drive(c, v, sheet):
    drive = sheet.get("drive")
    if drive is None:
        return
    pulse = Driving(v)
    c.number("drive", "charge", drive["charge"], v["use.charge_from"])
    one_drive(c, v, pulse, drive, "drive")
    rows = sheet["drive_by_charge"]
    low, high = v["use.charge_to"], v["use.charge_from"]
    expected = {s for s in (1.0, 0.75, 0.5, 0.25, 0.1) if low <= s <= high} | {low, high}
    c.rule([r["charge"] for r in rows] == sorted(expected, reverse=True), "drive_by_charge charges")
    for row in rows:
        one_drive(c, v, pulse, row, "drive by charge")


def one_drive(c, v, pulse, drive, group):
    s = drive["charge"]

    def number(key, expected, tolerance=TIGHT, scale=0.0):
        c.number(group, f"{key} at {s:g}", drive.get(key), expected, tolerance, scale)

    launch_and_climb(c, v, pulse, drive, group)
    blow = v["use.headwind"]
    for key, word, wind, long in (
        ("top_speed_flat_m_per_s", "top_speed_bound_by", 0.0, PULSE),
        ("top_speed_headwind_m_per_s", "top_speed_headwind_bound_by", blow, PULSE),
        ("top_speed_lasting_m_per_s", "top_speed_lasting_bound_by", 0.0, ENDLESS),
        (
            "top_speed_headwind_lasting_m_per_s",
            "top_speed_headwind_lasting_bound_by",
            blow,
            ENDLESS,
        ),
    ):
        top = v.top_speed(s, 0.0, wind, long)
        number(key, top, ITERATED)
        if top == 0:
            c.rule(drive[word] == "standstill", f"{word} at {s:g} is {drive[word]}")
        else:
            bounds = v.drive_currents(top * (1 - 1e-12), s, long)
            c.binds(group, f"{word} at {s:g}", drive[word], bounds, 1e-6)
    cruise = v["use.cruise_speed"]
    number("cruise_m_per_s", cruise)
    reached = pulse.pull_away(cruise, s)
    number("time_to_cruise_s", reached and reached[0], STEPPED)
    number("distance_to_cruise_m", reached and reached[1], STEPPED)


def launch_and_climb(c, v, pulse, drive, group):
    s = drive["charge"]
    currents = v.drive_currents(0.0, s)
    by_motor = v.drive_force(min(currents.values()), 0.0)
    borne = {
        name: v.weight * fraction
        for name, fraction in v.accelerations(braking=False, margin=0.0).items()
        if fraction is not NOTHING
    }
    thrust = min([by_motor, *borne.values()])
    left = max(0.0, thrust - v.resistance_force(0.0))
    launch = left / (v.mass * (1 + v["vehicle.rotating_share"]))
    c.number(group, f"launch at {s:g}", drive.get("launch_m_per_s2"), launch)
    by_name = {name: v.drive_force(current, 0.0) for name, current in currents.items()}
    c.binds(group, f"launch_bound_by at {s:g}", drive["launch_bound_by"], {**by_name, **borne})

    rolling = v["vehicle.rolling_resistance"]
    ground = v.climbing_bounds(rolling)
    slopes = list(ground)
    part = by_motor / (v.weight * math.hypot(1, rolling))
    if part < 1:
        slopes.append(math.tan(math.asin(part) - math.atan(rolling)))
    if slopes:
        slope = max(0.0, min(slopes))
        c.number(group, f"climb_slope_held at {s:g}", drive.get("climb_slope_held"), slope)
        sustained = drive.get("climb_slope_sustained", math.inf)
        c.rule(sustained <= drive.get("climb_slope_held", math.inf), "sustains more than it holds")
        current = pulse.current_for(v.resistance_force(0.0, slope), 0.0)
        if slope > 0:
            field = "climb_motor_current_A"
            c.number(group, f"{field} at {s:g}", drive.get(field), current, ITERATED)
            lasts(c, v, group, s, drive, "climb_held_for_s", current, 0.0)
    up = v["use.slope_max"]
    speed = v.top_speed(s, up) if all(up <= bound for bound in ground) else 0.0
    c.number(
        group, f"slope_speed at {s:g}", drive.get("slope_speed_m_per_s"), speed, ITERATED, 0.01
    )
    if speed > 0:
        current = pulse.current_for(v.resistance_force(speed, up), speed)
        field = "slope_motor_current_A"
        c.number(group, f"{field} at {s:g}", drive.get(field), current, 1e-6)
        lasts(c, v, group, s, drive, "slope_winding_lasts_s", current, speed)
    time = v["use.slope_length"] / speed if speed > 0 else None
    if v["use.slope_length"] > 0:
        c.number(group, f"slope_time at {s:g}", drive.get("slope_time_s"), time, 1e-6)


def lasts(c, v, group, s, drive, field, current, at):
    expected = v.time_to_limit(current, at) if v.heat_known() else None
    # near the continuous current the time is steep in the current
    steep = expected is not None and expected > 2000
    c.number(group, f"{field} at {s:g}", drive.get(field), expected, 1e-3 if steep else 1e-5)


def compare_thrust_map(c, v, sheet):
    chart = sheet.get("thrust_map")
    if chart is None:
        return
    taper = v.get("settings.low_voltage_taper")
    for i, s in enumerate(chart["charge"]):
        u, r = v.open_circuit(s), v.resistance(s, v.pack_temperature)
        limit = settled(v.set_pack("settings.pack_discharge_current"), taper, u, r)
        for j, speed in enumerate(chart["speed_m_per_s"]):
            where = f"at charge {s:g}, {speed:.4g} m/s"
            got = {k: chart[k][i][j] for k in CHART}
            bounds = v.drive_currents(speed, s)
            current = min(bounds.values())
            omega = v.motor_speed(speed)
            mechanical = v.torque_constant * omega * current
            copper = v.loss * current**2
            drawn = pulse_draw(u, r, v.motors * (mechanical + copper) / v.controller_efficiency)
            c.number("thrust map", "motor " + where, got["motor_current_A"], current, ITERATED, 1.0)
            # next to the greatest power a pack gives, its current is a root of nearly zero
            near = 1e-6 if drawn > 0.99 * u / (2 * r) else ITERATED
            c.number("thrust map", "pack " + where, got["pack_current_A"], drawn, near, 1.0)
            left = u - drawn * r
            c.number("thrust map", "voltage " + where, got["pack_voltage_V"], left, near)
            thrust = max(0.0, v.drive_force(current, speed))  # coasting is no thrust
            c.number("thrust map", "thrust " + where, got["thrust_N"], thrust, ITERATED, 1.0)
            c.binds("thrust map", "bound_by " + where, got["bound_by"], bounds, 1e-7)
            most = got["pack_current_A"] <= limit * (1 + 1e-9) + 1e-12
            c.rule(most, f"thrust_map passes the set pack discharge current {where}")
    for speed, got in zip(chart["speed_m_per_s"], chart["resistance_N"]):
        c.number("thrust map", f"resistance at {speed:.4g}", got, v.resistance_force(speed))
    rising = chart["speed_m_per_s"] == sorted(set(chart["speed_m_per_s"]))
    c.rule(rising and chart["speed_m_per_s"][0] == 0, "thrust_map speeds do not rise from 0")


CHART = ("thrust_N", "motor_current_A", "pack_current_A", "pack_voltage_V", "bound_by")


# --- sag


def compare_sag(c, v, sheet):
    cases = sheet.get("sag")
    if cases is None:
        return
    set_draw = v.set_pack("settings.pack_discharge_current")
    limit = sheet["limits"]["pack-discharge-current"]["limit"]
    expected = {
        (word, draw, cells, seconds)
        for word, draw in (("set", set_draw), ("recommended", limit))
        for cells in (v.pack_temperature, min(v.pack_temperature, v["use.pack_temperature"][0]))
        for seconds in (PULSE, ENDLESS)
    }
    for case in cases:
        one_sag(c, v, case)
        key = (case["draw"], case["draw_A"], case["cells_C"], case.get("pulse_s", ENDLESS))
        known = any(k[0] == key[0] and close(k[1:], key[1:]) for k in expected)
        c.rule(known, f"sag case {key} is not one of those to be looked at")
    drawn = {(round(k[1], 6), k[2], k[3]) for k in expected if k[1] > 0}
    got = {(round(k["draw_A"], 6), k["cells_C"], k.get("pulse_s", ENDLESS)) for k in cases}
    c.rule(drawn == got, f"sag looks at {sorted(got)}, expected {sorted(drawn)}")
    hard_pulls(c, v, sheet.get("hard_pull", []))


def close(one, other):
    return all(a == b or abs(a - b) <= 1e-9 * max(abs(a), abs(b)) for a, b in zip(one, other))


def with_idle(v, drawn, s, cells, seconds):
    """That and what electronics and lights draw beside it; no more than at the greatest power."""
    u, r = v.battery.open_circuit(s), v.battery.resistance(s, cells, seconds)
    if drawn == 0 or 2 * drawn * r >= u:
        return drawn
    both = pulse_draw(u, r, drawn * (u - drawn * r) + v["use.idle_power"])
    return u / (2 * r) if both is None else both


def most_drawn(v, draw, taper, asked, s, cells, seconds):
    """What the motors draw at most, as far as the draw and its taper let them."""
    u, r = v.battery.open_circuit(s), v.battery.resistance(s, cells, seconds)
    drawn = pulse_draw(u, r, asked)
    left = settled(draw, taper, u, r)
    return left if drawn is None else min(left, drawn)


WAITS = {"discharge-trip": 9e-3, "undervoltage-trip": 38e-3}  # [s] ABLIC S-8211C, typical


def hard_pulls(c, v, told):
    """What opens first in the hard pull at the charge that is told, stepped through time."""
    battery, lasts = v.battery, v["use.hard_pull"]
    draw = v.set_pack("settings.pack_discharge_current")
    top = max(v["use.speed_max"], v.get("settings.speed_cap", 0.0))
    taper = v.get("settings.low_voltage_taper")
    if too_narrow(v.low_taper(), taper):
        taper = None
    for pull in told:
        s, cells = pull["charge"], pull["cells_C"]
        drive = Driving(v, PULSE, cells)
        asked = drive.power(drive.top, top)

        def beyond(trip, i, after):
            pack = battery.packs[i]
            drawn = most_drawn(v, draw, taper, asked, s, cells, after)
            drawn = with_idle(v, drawn, s, cells, after)
            if trip == "discharge-trip":
                own = drawn * battery.share(i, s, cells)
                return own - pack.get("protection.discharge_trip", math.inf)
            volts = battery.cell_voltages(drawn, s, cells, seconds=after)[i]
            return pack.get("protection.cell_undervoltage_trip", -math.inf) - volts

        ways = []
        for i, pack in enumerate(battery.packs):
            keys = {
                "discharge-trip": "discharge_trip",
                "undervoltage-trip": "cell_undervoltage_trip",
            }
            for trip, key in keys.items():
                wait = pack.get(f"protection.{key}_delay")
                latest = lasts - (wait or 0.0)
                if latest < 0 or beyond(trip, i, latest) <= 0:
                    continue
                passed = 0.0
                if beyond(trip, i, 0.0) <= 0:
                    low, high = 0.0, latest
                    while high - low > 1e-12 * latest:
                        middle = 0.5 * (low + high)
                        low, high = (
                            (low, middle) if beyond(trip, i, middle) > 0 else (middle, high)
                        )
                    passed = high
                ways.append((passed + (WAITS[trip] if wait is None else wait), trip))
        after, trip = min(ways, default=(math.inf, None))
        c.rule(pull["opens"] == trip, f"a hard pull opens {pull['opens']}, recomputed {trip}")
        c.number("hard_pull", f"opens_after_s {cells:g} C", pull["opens_after_s"], after, 1e-6)


def one_sag(c, v, case):
    battery = v.battery
    draw, cells = case["draw_A"], case["cells_C"]
    seconds = case.get("pulse_s", ENDLESS)
    c.rule((case["lasts"] == "pulse") == (seconds == PULSE), "sag lasts otherwise than it says")
    taper = v.get("settings.low_voltage_taper")
    name = f"{case['draw']} {draw:.4g} A, {cells:g} C, {case['lasts']}"

    def state(s):
        return battery.open_circuit(s), battery.resistance(s, cells, seconds)

    def positive(volts):
        return volts if volts > 0 else None

    for row in case["by_charge"]:
        s = row["charge"]
        u, r = state(s)
        left = settled(draw, taper, u, r)
        at = f"{name} at {s:g}"
        c.number("sag", "pack_V " + at, row.get("pack_V"), positive(u - draw * r), scale=1.0)
        lowest = min(battery.cell_voltages(draw, s, cells, seconds=seconds))
        c.number("sag", "cell_V " + at, row.get("cell_V"), positive(lowest), scale=1.0)
        c.number("sag", "settled_A " + at, row["settled_A"], left, scale=1.0)
        c.number("sag", "settled_V " + at, row.get("settled_V"), positive(u - left * r), scale=1.0)

    drive = Driving(v, seconds, cells)
    top = max(v["use.speed_max"], v.get("settings.speed_cap", 0.0))
    asked = drive.power(drive.top, top)

    @lru_cache(maxsize=None)
    def flowing(s, after=seconds):
        return most_drawn(v, draw, taper, asked, s, cells, after)

    @lru_cache(maxsize=None)
    def loaded_cells(s, after=seconds):
        return battery.cell_voltages(flowing(s, after), s, cells, seconds=after)

    floors = [p["cell.voltage_min"] for p in battery.packs]
    tests = {"cell-floor": lambda s: min(x - y for x, y in zip(loaded_cells(s), floors))}
    trips = [p.get("protection.cell_undervoltage_trip") for p in battery.packs]
    if any(trip is not None for trip in trips):
        waits = [p.get("protection.cell_undervoltage_trip_delay", 0.0) for p in battery.packs]
        waited = [
            (i, trip, seconds - wait)
            for i, (trip, wait) in enumerate(zip(trips, waits))
            if trip is not None and wait <= seconds
        ]

        def above(s):
            """Of the trips that have waited by the end of the draw."""
            left = (loaded_cells(s, after)[i] - trip for i, trip, after in waited)
            return min(left, default=1.0)

        # where nothing flows a pack that is empty at rest is no matter of the draw
        tests["protection-trip"] = lambda s: 1.0 if flowing(s) == 0 else above(s)
    if taper is not None:
        tests["taper-begins"] = lambda s: state(s)[0] - draw * state(s)[1] - taper[0]
        tests["taper-ends"] = lambda s: state(s)[0] - taper[1]
    low, high = v["use.charge_to"], v["use.charge_from"]
    knots = sorted({low, high} | {s for s in battery.bends(False) if low < s < high})
    found = {}
    for event in ("taper-begins", "cell-floor", "protection-trip", "taper-ends"):
        charge = first_below(tests[event], knots) if event in tests else None
        if charge is not None:
            found[event] = charge
        got = [m for m in case["meetings"] if m["event"] == event]
        c.rule(len(got) == 1, f"sag {name} has {len(got)} meetings of {event}")
        for meeting in got:
            c.number("sag", f"{event} {name}", meeting.get("charge"), charge, ITERATED, 1.0)
    first = case.get("meets_first")
    if not found:
        c.rule(first is None, f"sag {name} meets nothing, yet {first} is first")
    else:
        best = max(found.values())
        c.rule(
            first in found and found[first] >= best - 1e-8,
            f"sag {name} meets {first} first, recomputed {found}",
        )


# --- range


class Ride:
    """A steady ride over the charge in use, with the resistance of an endless pull."""

    def __init__(self, v, headwind=0.0, slope=0.0, drive=None):
        self.v = v
        self.drive = drive or Driving(v, ENDLESS)
        self.wind, self.slope = headwind, slope
        self.idle = v["use.idle_power"]
        self.low, self.high = v["use.charge_to"], v["use.charge_from"]
        self.knots = sorted(
            {self.low, self.high} | {s for s in v.battery.knots() if self.low < s < self.high}
        )
        self.possible = lru_cache(maxsize=None)(self.possible)

    def possible(self, charge):
        def left(speed):
            return self.left(speed, charge)

        if left(STANDING / 10) <= 0:
            return 0.0
        high = 1.0
        while left(high) > 0:
            high *= 2
        return root(left, 0.0, high)

    def left(self, speed, charge):
        """What is left at a steady speed; the pack must also feed what idles."""
        u, r, _ = self.drive.pack(charge)
        reserve = self.drive.reserve(speed, charge, self.slope, self.wind)
        return min(reserve, u * u / (4 * r) - self.power(speed))

    def power(self, speed):
        return self.drive.demand(speed, self.slope, self.wind)[2] + self.idle

    def spent(self, speed, charge):
        """Power by part, part by part as the worksheet names them."""
        v = self.v
        angle = math.atan(self.slope)
        wind = speed + self.wind
        _, current, motor, _ = self.drive.demand(speed, self.slope, self.wind)
        omega = v.motor_speed(speed)
        torque = v.torque_constant * current - v.drag_torque(omega)
        u, r, _ = self.drive.pack(charge)
        drawn = pulse_draw(u, r, motor + self.idle)
        weight = v.weight
        return drawn, {
            "air_Wh": v.air * wind * abs(wind) * speed,
            "rolling_Wh": weight * v["vehicle.rolling_resistance"] * math.cos(angle) * speed,
            "climbing_Wh": weight * math.sin(angle) * speed,
            "moving_Wh": 0.0,
            "drive_Wh": v.motors * torque * omega * (1 - v.efficiency),
            "motor_drag_Wh": v.motors * v.drag_torque(omega) * omega,
            "copper_Wh": v.motors * self.drive.loss * current**2,
            "controller_Wh": motor * (1 - v.controller_efficiency),
            "idle_Wh": self.idle,
            "pack_Wh": drawn**2 * r,
            "cells_Wh": u * drawn,
        }

    def over(self, high, low, speed_at):
        """Time, distance and energies from a charge state down to another."""
        names = None
        sums = None
        edges = sorted({high, low} | {s for s in self.knots if low < s < high})
        for a, b in zip(edges, edges[1:]):

            def rates(s):
                nonlocal names
                speed = speed_at(s)
                drawn, parts = self.spent(speed, s)
                names = list(parts)
                dt = 3600 * self.v.battery.capacity / drawn
                return (dt, speed * dt, *(p * dt for p in parts.values()))

            piece = integral(rates, a, b, 1e-7, 12)
            sums = piece if sums is None else tuple(x + y for x, y in zip(sums, piece))
        if sums is None:
            return 0.0, 0.0, {}
        return sums[0], sums[1], dict(zip(names, (p / 3600 for p in sums[2:])))

    def held_down_to(self, speed):
        gone = first_below(lambda s: self.left(speed, s), self.knots)
        return self.low if gone is None else gone

    def at(self, speed):
        if self.power(speed) <= 0:
            return None
        down = self.held_down_to(speed)
        time, held, parts = self.over(self.high, down, lambda s: speed)
        # slower and slower, until it is as good as standing
        stands = None
        if down > self.low:
            below = sorted({down, self.low} | {s for s in self.knots if self.low < s < down})
            stands = first_below(lambda s: self.left(STANDING, s), below)
        end = self.low if stands is None else stands
        slower = lambda charge: min(speed, self.possible(charge))
        slow = self.over(down, end, slower) if end < down else (0.0, 0.0, {})
        spent = {k: parts.get(k, 0.0) + slow[2].get(k, 0.0) for k in {*parts, *slow[2]}}
        return {
            "down": down,
            "time": time + slow[0],
            "held": held,
            "distance": held + slow[1],
            "spent": spent,
            "spent_held": parts,
        }


def compare_range(c, v, sheet):
    rows = sheet.get("range")
    if rows is None:
        return
    ride = Ride(v, v["use.headwind"])
    cruise = v["use.cruise_speed"]
    top = max(v["use.speed_max"], v.get("settings.speed_cap", 0.0))
    steady = [(10 + 5 * i) / 3.6 for i in range(1000) if (10 + 5 * i) / 3.6 <= top + 1e-9]
    steady = [x for x in steady if abs(x - cruise) > 1e-6]
    got = [r["speed_m_per_s"] for r in rows if r["kind"] == "steady"]
    c.rule(len(got) == len(steady) and close(got, steady), "range has other steady speeds")
    kinds = [r["kind"] for r in rows]
    c.rule(kinds.count("cruise") == 1, "range has not one row of kind cruise")
    c.rule(("measured" in kinds) == ("use.measured_consumption" in v), "range measured")
    for row in rows:
        if "consumption_Wh_per_km" in row:
            per_mile = row["consumption_Wh_per_km"] * MILE / 1000
            c.number("range", "Wh per mile", row["consumption_Wh_per_mi"], per_mile)
        kind = row["kind"]
        if kind in ("steady", "cruise"):
            if kind == "cruise":
                c.number("range", "cruise speed", row["speed_m_per_s"], cruise)
            one_ride(c, ride, row)
        elif kind == "measured":
            measured_range(c, v, ride, row)
        elif kind == "town":
            town(c, v, row)
    effects = {e["change"]: e.get("distance_km") for e in sheet["range_effects"]}
    wind = v["use.headwind"]
    changed = {
        "headwind": Ride(v, wind + 3.0),
        "uphill": Ride(v, wind, 0.01),
        "rider-heavier": Ride(v.changed({"rider.mass": v["rider.mass"] + 10}), wind),
        "higher": Ride(v.changed({"use.altitude": min(9000, v["use.altitude"] + 1000)}), wind),
    }
    # the settings stay, and so does the recommended draw where none is set
    colder = v.changed({"use.ambient": max(-40, v.ambient - 15)})
    cells = max(-60, v.pack_temperature - 15)
    changed["colder"] = Ride(colder, wind, drive=Driving(colder, ENDLESS, cells))
    c.rule(set(effects) == set(changed), f"range_effects are {sorted(effects)}")
    for name, other in changed.items():
        result = other.at(cruise)
        expected = result and result["distance"] / 1000
        near = tolerance(other, result)
        c.number("range", "effect " + name, effects.get(name), expected, near, 0.01)


def tolerance(ride, result):
    return SLOWING if result and result["down"] > ride.low else STEPPED


def one_ride(c, ride, row):
    speed = row["speed_m_per_s"]
    result = ride.at(speed)
    at = f"at {speed:.4g} m/s"
    if result is None:
        c.number("range", "distance " + at, row.get("distance_km"), None)
        return
    near = tolerance(ride, result)
    whole = result["distance"] / 1000
    c.number("range", "distance " + at, row.get("distance_km"), whole, near, 0.01)
    held = result["held"] / 1000
    c.number("range", "held " + at, row.get("distance_held_km"), held, STEPPED, 0.01)
    down = row.get("held_down_to_charge")
    c.number("range", "held down to " + at, down, result["down"], 1e-7, 1.0)
    c.number("range", "time " + at, row.get("time_s"), result["time"], near, 1.0)
    per_km = ride.power(speed) / speed / 3.6 if held > 0 else None
    c.number("range", "consumption " + at, row.get("consumption_Wh_per_km"), per_km, STEPPED)
    for key in ("spent", "spent_held"):
        whole = result[key].get("cells_Wh", 0.0)
        if "cells_Wh" not in row[key]:
            c.number("range", f"{key} cells_Wh {at}", None, whole)
            continue
        total = sum(x for k, x in row[key].items() if k != "cells_Wh")
        c.number("range", f"sum of {key} {at}", row[key]["cells_Wh"], total, 1e-6, 1e-6)
        for part, expected in result[key].items():
            got = row[key].get(part)
            c.number("range", f"{key} {part} {at}", got, expected, near, max(0.01, whole))


def measured_range(c, v, ride, row):
    speed = v["use.measured_speed"]
    power = v["use.measured_consumption"] * 3.6 * speed
    c.number("range", "measured speed", row["speed_m_per_s"], speed)
    per_km = v["use.measured_consumption"]
    c.number("range", "measured consumption", row.get("consumption_Wh_per_km"), per_km)

    def left(s):
        u, r, limit = ride.drive.pack(s)
        most = min(limit, u / (2 * r))
        return most * (u - most * r) - power

    gone = first_below(left, ride.knots)
    down = ride.low if gone is None else gone
    edges = sorted({ride.high, down} | {s for s in ride.knots if down < s < ride.high})

    def rate(s):
        u, r, _ = ride.drive.pack(s)
        return (3600 * v.battery.capacity / (pulse_draw(u, r, power) or u / (2 * r)),)

    time = sum(integral(rate, a, b, 1e-7, 12)[0] for a, b in zip(edges, edges[1:]))
    c.number("range", "measured down to", row["held_down_to_charge"], down, 1e-7, 1.0)
    c.number("range", "measured distance", row["distance_km"], speed * time / 1000, STEPPED, 0.01)


# --- town


def town(c, v, row):
    """Legs at many charge states, each by small steps of speed; pulses of the pack."""
    speed = v["use.cruise_speed"]
    length = 1000 / v["use.stops_per_km"]
    drive = Driving(v)
    low, high = v["use.charge_to"], v["use.charge_from"]
    # the full pack takes back least and the empty one gives least: closer at both ends
    count = 20
    states = [
        high - (high - low) * (1 - math.cos(math.pi * i / count)) / 2 for i in range(count + 1)
    ]
    legs, reached = [], speed
    for s in states:
        one, reached = leg(v, drive, speed, length, s, reached)
        if one is None:
            return
        legs.append(one)
    rides = time = out = back = 0.0
    for (s1, a), (s0, b) in zip(zip(states, legs), list(zip(states, legs))[1:]):
        n = 3600 * v.battery.capacity * (s1 - s0) * 2 / (a["charge"] + b["charge"])
        rides += n
        time += n * (a["time"] + b["time"]) / 2
        out += n * (a["out"] + b["out"]) / 2
        back += n * (a["back"] + b["back"]) / 2
    distance = rides * length
    c.number("town", "distance", row.get("distance_km"), distance / 1000, ROUGH)
    c.number("town", "mean speed", row.get("mean_speed_m_per_s"), distance / time, ROUGH)
    per_km = (out - back) / distance / 3.6
    c.number("town", "consumption", row.get("consumption_Wh_per_km"), per_km, ROUGH)
    c.number("town", "returned share", row.get("returned_share"), back / out, ROUGH, 0.2)


def leg(v, drive, speed, length, charge, guess):
    """What a leg takes, and the speed that it reaches; the search begins near a guess."""
    wind = v["use.headwind"]

    def ridden(top, steps=160):
        pull = drive.pull_away(top, charge, wind)
        return pull and (pull, stop(v, top, charge, steps, wind=wind))

    def over(top):
        """By how much pulling away and stopping are too long; None where it cannot pull."""
        ride = ridden(top, 40)
        return ride and ride[0][1] + ride[1]["distance"] - length

    whole = ridden(speed)
    reached = speed
    if whole is None or whole[0][1] + whole[1]["distance"] > length:
        # both distances grow about with the square of the speed: a secant through the squares;
        # where the speed is sought, few steps do, as a little less of it is ridden steadily
        low, high = 0.0, speed
        short, long = -length, whole and whole[0][1] + whole[1]["distance"] - length
        tried = guess if guess < speed else None
        reached = was_short = None
        while high - low > 1e-6 * speed:
            if tried is None:
                part = 0.5 if long is None else short / (short - long)
                tried = math.sqrt(low**2 + min(0.99, max(0.01, part)) * (high**2 - low**2))
            miss = over(tried)
            is_short = miss is not None and miss <= 0
            # an end that stays a second time counts half, or the secant would not leave it
            halved = 0.5 if is_short == was_short else 1.0
            was_short = is_short
            if is_short:
                low, short, reached = tried, miss, tried
                long = long and long * halved
                # what is ridden steadily instead costs far less than the steps of the stop
                if -miss < 1e-4 * length:
                    break
            else:
                high, long, short = tried, miss, short * halved
            tried = None
        whole = reached and ridden(reached)
    if not whole:
        return None, speed
    pull, braking = whole
    u, r, _ = drive.pack(charge)
    steady = max(0.0, length - pull[1] - braking["distance"]) / reached
    holding = drive.power(drive.current_for(max(0.0, v.resistance_force(reached, 0.0, wind)), reached), reached)
    holding += v["use.idle_power"]
    drawn = pulse_draw(u, r, holding)
    taken = {
        "time": pull[0] + steady + braking["time"],
        "out": pull[2] + holding * steady + braking["out"] + max(0.0, -braking["back"]),
        "back": max(0.0, braking["back"]),
        "charge": pull[3] + drawn * steady + braking["charge"],
    }
    return taken, reached


def compare_stops(c, v, sheet):
    """Stops on level dry road with both brakes, each by small steps of time, later of speed."""
    rows = sheet.get("stops", ())
    charges = sorted({row["charge"] for row in rows})
    looked_at = {*charges[::5], *charges[-1:]}
    for row in rows:
        if "distance_m" not in row or row["charge"] not in looked_at:
            continue
        speed, charge = row["from_m_per_s"], row["charge"]
        at = f"from {speed:.4g} m/s at charge {charge:g}"
        expected = stop(v, speed, charge, 240, friction=True, idle=0.0)
        distance = expected["distance"]
        for field, value in (
            ("distance_m", distance),
            ("time_s", expected["time"]),
            ("deceleration_mean_m_per_s2", speed**2 / (2 * distance)),
        ):
            c.number("stops", f"{field} {at}", row[field], value, BRAKED)


DELAYS = {"charge-trip": 9e-3, "overvoltage-trip": 1.2}  # [s] ABLIC S-8211C, typical


def compare_first_stops(c, v, sheet):
    """The first stop with the fullest pack in use, also with its protection opening on the way."""
    for row in sheet.get("first_stop", ()):
        at = f"with cells at {row['cells_C']:g}"
        there = v.with_cells_at(row["cells_C"])
        speed, charge, opens = row["from_m_per_s"], row["charge"], row["opens"]
        inertia = v.mass * (1 + v["vehicle.rotating_share"])
        rubbing = min(
            v.get("vehicle.friction_brake.deceleration", 0.0), v["vehicle.grip"] * GRAVITY
        )
        for field, x in (("left_m_per_s2", speed), ("left_slow_m_per_s2", 0.0)):
            left = (v.mass * rubbing + v.resistance_force(x)) / inertia
            c.number("first stop", f"{field} {at}", row[field], left)
        passed = trip_passed(there, speed, charge)
        c.rule(opens == (passed[1] if passed else "nothing"), f"first stop {at}: {opens} opens")
        c.rule(("opened" in row) == (opens != "nothing"), f"first stop {at}: opened or not")
        asked = [("first stop", row, math.inf)]
        if passed and "opened" in row:
            after = passed[0]
            c.number("first stop", f"after_s {at}", row["opened"]["after_s"], after, ITERATED)
            asked.append(("first stop opened", row["opened"], after))
        for group, told, lasts in asked:
            if "distance_m" not in told:
                continue
            expected = stop(there, speed, charge, 240, friction=True, idle=0.0, lasts=lasts)
            distance = expected["distance"]
            c.number(group, f"distance_m {at}", told["distance_m"], distance, BRAKED)
            c.number(group, f"time_s {at}", told["time_s"], expected["time"], BRAKED)


def trip_passed(v, speed, charge):
    """Which trip opens first and when after the brakes began to act; or None.

    The speed is that of the beginning; a taper too narrow to be stable holds nothing back.
    """
    battery, cells = v.battery, v.pack_temperature
    u, r = v.open_circuit(charge), v.resistance(charge, cells, into=True)
    emf = v.torque_constant * v.motor_speed(speed)
    loss = v.loss
    limit = v.return_limit(charge)
    if too_narrow(v.high_taper(), v.get("settings.high_voltage_taper")):
        limit = v.set_pack("settings.pack_regen_current")
    rest = [p.group_voltage(s, True) for p, s in zip(battery.packs, battery.own_charges(charge))]

    def into(share):
        current = min(share * v["settings.motor_brake_current"], emf / (2 * loss))
        power = v.motors * (emf * current - loss * current**2) * v.controller_efficiency
        return min(limit, pulse_return(u, r, power))

    def passed(share):
        """Both trips of every pack: by how much the current or the voltage is above them."""
        flowing = into(share)
        voltages = battery.cell_voltages(-flowing, charge, cells, taking=True)
        for i, pack in enumerate(battery.packs):
            own = flowing * battery.share(i, charge, cells, True)
            trip = pack.get("protection.charge_trip", math.inf)
            yield "charge-trip", i, own > trip
            trip = pack.get("protection.cell_overvoltage_trip", math.inf)
            yield "overvoltage-trip", i, flowing > 0 and voltages[i] > trip

    told = {"charge-trip": "charge_trip", "overvoltage-trip": "cell_overvoltage_trip"}
    full = battery.cell_voltages(-into(1.0), charge, cells, taking=True)
    ways = []
    for opens, i, over in passed(1.0):
        if not over:
            continue
        pack, low, high = battery.packs[i], 0.0, 1.0
        while high - low > 1e-12:
            middle = 0.5 * (low + high)
            there = (opens, i, True) in passed(middle)
            low, high = (low, middle) if there else (middle, high)
        risen = 0.0
        if opens == "overvoltage-trip":
            trip = pack["protection.cell_overvoltage_trip"]
            risen = pack.comes_after((trip - rest[i]) / (full[i] - rest[i]))
        delay = pack.get(f"protection.{told[opens]}_delay", DELAYS[opens])
        ways.append((max(v.get("use.brake_build_up", 0.0) * high, risen) + delay, opens))
    return min(ways, default=None)


def stop(v, speed, charge, steps=160, friction=False, idle=None, wind=0.0, lasts=math.inf):
    """A stop with the brakes as they are set: small steps of time, later of speed.

    The electric brake may be gone after a time that it lasts; the motors' drag goes on.
    """
    inertia = v.mass * (1 + v["vehicle.rotating_share"])
    idle = v["use.idle_power"] if idle is None else idle
    loss = v.loss
    lever = v.get("vehicle.friction_brake.deceleration", 0.0) if friction else 0.0
    slides = v["vehicle.grip"] * GRAVITY
    total = {"time": 0.0, "distance": 0.0, "out": 0.0, "back": 0.0, "charge": 0.0}
    now = speed

    def by_now():
        """Charge state."""
        return min(1.0, charge - total["charge"] / (3600 * v.battery.capacity))

    def at(s, x, share):
        """Force and power into the pack while a share of the brakes has built up."""
        rubbing = min(share * lever, slides)
        grip = v.grip_beside(rubbing)
        current = v.brake_currents(s, x, v.return_limit(s), share)[2]
        if total["time"] >= lasts * (1 - 1e-12):
            current = 0.0
        force = v.brake_force(current, x)
        if force > grip:
            force = grip
            torque = force * v.efficiency * v.wheel_radius / (v.motors * v.reduction)
            drag = v.drag_torque(v.motor_speed(x))
            current = max(0.0, (torque - drag) / v.torque_constant)
        emf = v.torque_constant * v.motor_speed(x)
        power = v.motors * (emf * current - loss * current**2)
        into = power * v.controller_efficiency if power > 0 else power / v.controller_efficiency
        return force + v.mass * rubbing + v.resistance_force(x, 0.0, wind), into

    def add(s, x, dt, power):
        u = v.open_circuit(s)
        total["time"] += dt
        total["distance"] += x * dt
        # a stop brings back what it returns less what it draws at the end; electronics go on
        total["back"] += power * dt
        total["out"] += idle * dt
        if power > idle:
            back = v.resistance(s, v.pack_temperature, into=True)
            total["charge"] -= pulse_return(u, back, power - idle) * dt
        else:
            r = v.resistance(s, v.pack_temperature)
            total["charge"] += (pulse_draw(u, r, idle - power) or u / (2 * r)) * dt

    build_up, ramp = v.get("use.brake_build_up", 0.0), 16
    edges = [build_up * i / ramp for i in range(ramp + 1)] if build_up > 0 else []
    edges = sorted(edges + [lasts] if 0 < lasts < build_up else edges)
    for start, end in zip(edges, edges[1:]):
        dt = end - start
        s = by_now()
        half = now - at(s, now, start / build_up)[0] / inertia * dt / 2
        if half <= 0:
            break
        force, power = at(s, half, 0.5 * (start + end) / build_up)
        dt = min(dt, now * inertia / force)
        add(s, half, dt, power)
        now -= force / inertia * dt
    dv = now / steps
    edges = [now - dv * i for i in range(1, steps)] + [0.0]
    ends = v["controller.brake_ends_below"]
    if 0 < ends < now:  # the force jumps where the brake ends
        edges = sorted({*edges, ends}, reverse=True)
    while edges:
        step = now - edges[0]
        s = by_now()
        force, power = at(s, now - step / 2, 1.0)
        dt = inertia * step / force
        if total["time"] < lasts * (1 - 1e-12) < total["time"] + dt:  # the brake vanishes within
            dt = lasts - total["time"]
            step = force * dt / inertia
        else:
            edges.pop(0)
        add(s, now - step / 2, dt, power)
        now -= step
    return total


# --- heat


def compare_heat(c, v, sheet):
    heat = sheet.get("heat", {})
    if v.heat_known():
        motor_heat(c, v, heat)
    pack_heat(c, v, heat)


class Nodes:
    """Winding and case at one current, solved in closed form."""

    def __init__(self, v, current, case_loss):
        to_case, to_air = v["motor.winding_to_case"], v["motor.case_to_air"]
        cw, cc = v["motor.winding_heat_capacity"], v["motor.case_heat_capacity"]
        at0 = v.loss_resistance(0.0) * current**2
        per_k = (v.loss_resistance(1.0) - v.loss_resistance(0.0)) * current**2
        self.a = ((per_k - 1 / to_case) / cw, 1 / to_case / cw)
        self.b = (1 / to_case / cc, -(1 / to_case + 1 / to_air) / cc)
        given = (at0 / cw, (v.ambient / to_air + case_loss) / cc)
        det = self.a[0] * self.b[1] - self.a[1] * self.b[0]
        self.steady = (
            (-given[0] * self.b[1] + self.a[1] * given[1]) / det,
            (-self.a[0] * given[1] + given[0] * self.b[0]) / det,
        )
        mean = (self.a[0] + self.b[1]) / 2
        self.mean = mean
        self.half = math.sqrt(((self.a[0] - self.b[1]) / 2) ** 2 + self.a[1] * self.b[0])

    def after(self, start, time):
        """exp(A t) = e^(m t) (cosh(q t) + sinh(q t) / q (A - m))."""
        x = tuple(s - e for s, e in zip(start, self.steady))
        m, q = self.mean, self.half
        up, down = math.exp((m + q) * time), math.exp((m - q) * time)
        even, odd = (up + down) / 2, (up - down) / (2 * q)
        ax = (self.a[0] * x[0] + self.a[1] * x[1], self.b[0] * x[0] + self.b[1] * x[1])
        return tuple(e + even * y + odd * (z - m * y) for e, y, z in zip(self.steady, x, ax))

    def time_to(self, start, limit):
        """First time at which the winding is at a limit; None when never."""
        if start[0] >= limit:
            return 0.0
        times = [0.0] + [10 ** (i / 40 - 3) for i in range(400)]
        for a, b in zip(times, times[1:]):
            try:
                hot = self.after(start, b)[0]
            except OverflowError:
                hot = math.inf
            if hot >= limit:
                return root(lambda t: self.after(start, t)[0] - limit, a, b)
        return None


def motor_heat(c, v, heat):
    limit = v["motor.winding_limit"]
    cruise = v["use.cruise_speed"]
    drive = Driving(v)
    wind = v["use.headwind"]
    holding = drive.current_for(max(0.0, v.resistance_force(cruise, 0.0, wind)), cruise)
    omega = v.motor_speed(cruise)
    warm = Nodes(v, holding, v.drag_torque(omega) * omega)
    reached = v.top_speed(v["use.charge_from"], 0.0, wind, ENDLESS) >= cruise
    settles = reached and warm.mean + warm.half < 0 and warm.steady[0] < limit
    start = warm.steady if settles else None
    c.number("heat", "warm winding", heat.get("warm_winding_C"), start and start[0], 1e-9)
    c.number("heat", "warm case", heat.get("warm_case_C"), start and start[1], 1e-9)
    current = v["settings.motor_drive_current"]
    pulling = Nodes(v, current, v.case_loss())
    field = "time_at_drive_set_warm_s"
    expected = pulling.time_to(start, limit) if start else 0.0 if reached else None
    c.number("heat", field, heat.get(field), expected, 1e-6, 1e-3)
    cold = (v.ambient, v.ambient)
    borne = pulling.time_to(cold, limit)
    pull = v["use.hard_pull"]
    expected = None
    if borne is not None and borne >= pull:
        hot = pulling.after(cold, borne)
        resting = Nodes(v, 0.0, 0.0)

        def over(rest):
            return pulling.after(resting.after(hot, rest), pull)[0] - limit

        times = [0.0] + [10 ** (i / 20 - 2) for i in range(200)]
        for a, b in zip(times, times[1:]):
            if over(b) <= 0:
                expected = root(over, a, b)
                break
    c.number("heat", "recovery_s", heat.get("recovery_s"), expected, 1e-6, 1e-3)


def pack_heat(c, v, heat):
    drive = Driving(v, ENDLESS)
    cruise = v["use.cruise_speed"]
    wind = v["use.headwind"]
    holding = drive.current_for(max(0.0, v.resistance_force(cruise, 0.0, wind)), cruise)
    power = drive.power(holding, cruise) + v["use.idle_power"]
    draw = v.set_pack("settings.pack_discharge_current")
    own = v.pack_temperature
    warm = max(own, v["use.pack_temperature"][1])

    def hottest(found):
        """Of packs that are stopped the first, else the warmest at the end."""
        return (-found.get("stopped", math.inf), found["end"])

    def overheated(found):
        return found["highest"] - found["charging"], found["end"] - found["charging"]

    for word, start, current, most in (
        ("cruise", own, lambda u, r: pulse_draw(u, r, power), hottest),
        ("draw", own, lambda u, r: draw, hottest),
        ("cruise_warm", warm, lambda u, r: pulse_draw(u, r, power), overheated),
    ):
        reached = word == "draw" or v.top_speed(v["use.charge_from"], 0.0, wind, ENDLESS) >= cruise
        reached = reached and (word != "cruise_warm" or warm > own)
        found = warmest(v, current, start, most) if reached else None
        place, values = found if found else (None, {})
        keys = {
            f"pack_mean_current_{word}_A": "mean",
            f"pack_time_{word}_s": "time",
            f"pack_rise_{word}_K": "rise",
            f"pack_start_{word}_C": "start",
            f"pack_highest_{word}_C": "highest",
            f"pack_end_{word}_C": "end",
            f"pack_charge_limit_{word}_C": "charging",
            f"pack_discharge_limit_{word}_C": "drawing",
            f"pack_too_warm_to_charge_{word}_s": "too warm",
            f"pack_stopped_{word}_s": "stopped",
            f"charge_after_{word}_s": "wait",
        }
        named = heat.get(f"pack_warmest_{word}")
        other = None if place is None else f"pack-{place}"
        c.rule(named == other, f"pack_warmest_{word} is {named}, recomputed {other}")
        for key, name in keys.items():
            c.number("pack heat", key, heat.get(key), values.get(name), WARMED, 1.0)


def warmest(v, current, start, most):
    """The pack that warms most, and how: C dT/dt = I^2 r(s,T) - (T - Ta)/Rth while s falls.

    Where the maker permits no more drawing the cells are stopped; the charge flows on alone.
    """
    battery = v.battery
    low, high = v["use.charge_to"], v["use.charge_from"]
    edges = sorted({low, high} | {s for s in battery.knots() if low < s < high}, reverse=True)
    best = None
    for place, pack in enumerate(battery.packs):
        mass, specific = pack.get("cell.mass"), pack.get("cell.specific_heat")
        if mass is None or specific is None:
            continue
        capacity = pack.series * pack.parallel * mass * specific
        to_air = pack.get("to_air", math.inf)

        def flow(s, t, place=place, pack=pack):
            """Seconds for a whole charge, and the power of heat."""
            u, r = battery.open_circuit(s), battery.resistance(s, t, ENDLESS)
            drawn = current(u, r)
            if drawn is None or 2 * drawn * r > u * (1 + 1e-12):  # more would give less
                raise ZeroDivisionError
            part = drawn * battery.share(place, s, t)
            cells = pack.cell_resistance(battery.own_charges(s)[place], t, ENDLESS)
            return 3600 * battery.capacity / drawn, part**2 * cells * pack.series / pack.parallel

        def rates(s, t):
            seconds, power = flow(s, t)
            return (
                seconds * (power - (t - v.ambient) / to_air) / capacity,
                seconds,
                seconds * power,
            )

        def step(s, t, ds):
            """Classical Runge-Kutta: temperature, time and heat of a bit of charge."""
            k1 = rates(s, t)
            k2 = rates(s - ds / 2, t + ds / 2 * k1[0])
            k3 = rates(s - ds / 2, t + ds / 2 * k2[0])
            k4 = rates(s - ds, t + ds * k3[0])
            return [ds / 6 * (w + 2 * x + 2 * y + z) for w, x, y, z in zip(k1, k2, k3, k4)]

        charging, drawing = pack["cell.charge_temperature"][1], pack["cell.discharge_temperature"][1]
        values = {"start": start, "charging": charging, "drawing": drawing}
        t, time, heat, top = start, 0.0, 0.0, start
        if start > charging:
            values["too warm"] = 0.0
        if start > drawing:
            values["stopped"] = 0.0
        try:
            for upper, lower in zip(edges, edges[1:]):
                tau = to_air * capacity / flow(upper, t)[0]  # in charge
                steps = math.ceil(max(8, (upper - lower) / 0.01, 4 * (upper - lower) / tau))
                ds = (upper - lower) / steps
                for i in range(steps):
                    s = upper - i * ds
                    dt, passed, warmth = step(s, t, ds)
                    if "stopped" in values:
                        time += passed
                        continue
                    for name, limit in (("too warm", charging), ("stopped", drawing)):
                        if name not in values and t + dt > limit:
                            part = root(lambda x: t + step(s, t, x)[0] - limit, 0.0, ds)
                            values[name] = time + step(s, t, part)[1]
                            if name == "stopped":
                                dt, _, warmth = step(s, t, part)
                    t, time, heat = t + dt, time + passed, heat + warmth
                    top = max(top, t)
        except ZeroDivisionError:
            return None
        values.update(
            mean=3600 * battery.capacity * (high - low) / time if time else None,
            time=time,
            rise=heat / capacity,
            highest=top,
            end=t,
        )
        if t <= charging:
            values["wait"] = 0.0
        elif to_air < math.inf and charging > v.ambient:
            values["wait"] = (
                to_air * capacity * math.log((t - v.ambient) / (charging - v.ambient))
            )
        if best is None or most(values) > most(best[1]):
            best = (place + 1, values)
    return best


# --- several packs


def compare_packs(c, v, sheet):
    battery = v.battery
    packs = sheet.get("packs")
    c.rule((packs is not None) == battery.several, "packs are told for several packs alone")
    if packs is None:
        return
    for load in packs["loads"]:
        one_load(c, v, load)
    pieces = len(battery.packs) * 2
    c.rule(len(packs["loads"]) == 3 * pieces, "packs has not three loads each way of each pack")
    opening = 2 * sum(pack.guarded for pack in battery.packs)
    c.rule(len(packs["losses"]) == opening, "packs has not one loss each way of each that opens")
    joints = len(battery.packs) if battery.parallel else 0
    c.rule(len(packs["joints"]) == joints, "packs has not one joint of each parallel pack")
    for joint in packs["joints"]:
        one_joint(c, v, joint)
    for loss in packs["losses"]:
        one_loss(c, v, loss)


def whole(v, charge, drawing, trusted=False):
    """Greatest current out of or into all packs up to the highest speed that is met.

    Trusted: a taper too narrow to be stable holds nothing back.
    """
    top = max(v["use.speed_max"], v.get("settings.speed_cap", 0.0))
    t = v.pack_temperature
    u, r = v.open_circuit(charge), v.resistance(charge, t, into=not drawing)
    if drawing:
        drive = Driving(v)
        asked = pulse_draw(u, r, drive.power(drive.top, top))
        limit = drive.pack(charge)[2]
        if trusted and too_narrow(v.low_taper(), v.get("settings.low_voltage_taper")):
            limit = v.set_pack("settings.pack_discharge_current")
        return min(limit, math.inf if asked is None else asked)
    limit = v.return_limit(charge)
    if trusted and too_narrow(v.high_taper(), v.get("settings.high_voltage_taper")):
        limit = v.set_pack("settings.pack_regen_current")
    emf = v.torque_constant * v.motor_speed(top)
    loss = v.loss
    set_current = v["settings.motor_brake_current"] if top >= v["controller.brake_ends_below"] else 0
    best = min(set_current, emf / (2 * loss))
    power = v.motors * (emf * best - loss * best**2) * v.controller_efficiency
    return min(limit, pulse_return(u, r, max(0.0, power)))


def too_narrow(needed, taper):
    """Whether a taper that is set spans less than the voltage its own current moves."""
    return taper is not None and abs(taper[0] - taper[1]) < needed[2] * (1 - 1e-9)


def own_bounds(v, pack, charge, drawing, fixed_only=False):
    t = v.pack_temperature

    def alone(current):
        return v.braking_time(current, pack)

    if drawing:
        fixed = pack.give_fixed(t, v["use.hard_pull"], v.margins)
    else:  # by itself it takes all of the energy
        fixed = pack.take_fixed(t, alone, v.margins)
    bounds = {k: b for k, b in fixed.items() if b is not NOTHING}
    if fixed_only:
        return bounds
    at_charge = None if drawing else pack.take_at_charge(charge, alone, v.margins)
    if at_charge is not None:
        bounds["cell-charge-rating-at-charge"] = at_charge
    ends = pack.floors(v.margins) if drawing else pack.ceilings(v.margins)
    for name, end in ends.items():
        gap = (pack.group_voltage(charge, not drawing) - end) * (1 if drawing else -1)
        resistance = pack.group_resistance(charge, t, not drawing)
        bounds[name] = max(0.0, pack.parallel * gap / resistance)
    return bounds


def one_load(c, v, load):
    battery = v.battery
    place, s, drawing = int(load["pack"]) - 1, load["charge"], load["while"] == "driving"
    pack = battery.packs[place]
    own = battery.own_charges(s)[place]
    at = f"of pack {place + 1} at {s:g} {load['while']}"
    c.number("packs", "own_charge " + at, load["own_charge"], own, TIGHT, 1.0)
    current = whole(v, s, drawing)
    c.number("packs", "whole " + at, load["whole_A"], current, ITERATED, 1.0)
    part = current * battery.share(place, s, v.pack_temperature, not drawing)
    c.number("packs", "current " + at, load["current_A"], part, ITERATED, 1.0)
    bounds = own_bounds(v, pack, own, drawing)
    limit = min(bounds.values())
    c.number("packs", "limit " + at, load.get("limit_A"), limit, ITERATED, 1.0)
    c.binds("packs", "bound_by " + at, load["bound_by"], bounds, 1e-8)
    if limit > 1e-3:
        c.number("packs", "use " + at, load.get("share_of_limit"), part / limit, 1e-6, 1e-3)


def branches(v, states):
    """Voltages and resistances of the packs at charge states of their own."""
    return [
        (p.open_circuit(s), p.first_instant())
        for p, s in zip(v.battery.packs, states)
    ]


def flow(all_branches, place):
    """Current out of one pack when all are joined and nothing else draws."""
    common = sum(u / r for u, r in all_branches) / sum(1 / r for _, r in all_branches)
    u, r = all_branches[place]
    return (u - common) / r


def one_joint(c, v, joint):
    packs = v.battery.packs
    place = int(joint["pack"]) - 1
    at = f"of pack {place + 1}"
    permitted = min(
        min(own_bounds(v, p, 0.5, way, True).values()) for p in packs for way in (True, False)
    )
    c.number("packs", "permitted " + at, joint["permitted_A"], permitted)
    half = branches(v, [0.5] * len(packs))
    rest = 1 / sum(1 / r for i, (_, r) in enumerate(half) if i != place)
    difference = permitted * (half[place][1] + rest)
    c.number("packs", "difference " + at, joint["difference_V"], difference)
    worst = max(
        abs(flow(branches(v, [own if i == place else 1 - own for i in range(len(packs))]), place))
        for own in (0.0, 1.0)
    )
    c.number("packs", "worst " + at, joint["worst_A"], worst)
    told = [p.get("charge") for p in packs]
    if any(s is None for s in told):
        c.number("packs", "joining " + at, joint.get("current_A"), None)
        return
    out = flow(branches(v, told), place)
    c.number("packs", "joining " + at, joint.get("current_A"), abs(out), TIGHT, 1.0)
    if abs(out) > 1e-9:
        c.rule((joint["flows"] == "into-pack") == (out < 0), f"joining {at} flows the other way")
    if abs(abs(out) - permitted) > 1e-9:
        word = "not-permitted" if abs(out) > permitted else "permitted"
        c.rule(joint["joining"] == word, f"joining {at} is {joint['joining']}")


def carried(v, s, place, drawing):
    """Greatest use of a trip when one pack opens at a charge, and how many are left in the end."""
    battery = v.battery
    current = whole(v, s, drawing, trusted=True)
    each = battery.resistances(s, v.pack_temperature, into=not drawing)
    key = f"protection.{'discharge' if drawing else 'charge'}_trip"
    trips = [p.get(key) for p in battery.packs]
    closed = {i for i in range(len(each)) if i != place}
    first = None
    while closed:
        conducting = sum(1 / each[i] for i in closed)
        uses = {
            i: current / each[i] / conducting / trips[i] for i in closed if trips[i] is not None
        }
        if first is None:
            first = max(uses.values(), default=-1.0)
        opening = {i for i, use in uses.items() if use > 1}
        if not opening:
            break
        closed -= {max(opening, key=uses.get)}
    return first, len(closed)


def one_loss(c, v, loss):
    battery = v.battery
    place, drawing = int(loss["pack"]) - 1, loss["while"] == "driving"
    at = f"of pack {place + 1} lost {loss['while']}"
    field = "greatest_share_of_trip"
    if not battery.parallel:
        c.rule(loss["left"] == "none", f"some are left {at} in series")
        c.number("packs", f"{field} {at}", loss.get(field), None)
        return
    s = loss.get("charge")
    if s is None:
        first, closed = -1.0, None
    else:
        first, closed = carried(v, s, place, drawing)
        # somewhere in the charge in use there may be no worse place than the one that is told
        low, high = v["use.charge_to"], v["use.charge_from"]
        for i in range(101):
            other, left = carried(v, low + (high - low) * i / 100, place, drawing)
            c.rule(closed == 0 or left > 0, f"all are lost {at} elsewhere")
            if (left == 0) == (closed == 0):
                c.rule(other <= first * (1 + 1e-3), f"{other} of a trip {at} is more than told")
    expected = first if first is not None and first >= 0 else None
    c.number("packs", f"{field} {at}", loss.get(field), expected, ITERATED, 1e-3)
    word = "none" if closed == 0 else "some"
    c.rule(loss["left"] == word, f"{loss['left']} are left {at}, recomputed {word}")


def compare_driving(c, v, sheet):
    """Compares everything of the driving half of a worksheet."""
    compare_drive(c, v, sheet)
    compare_thrust_map(c, v, sheet)
    compare_sag(c, v, sheet)
    compare_range(c, v, sheet)
    compare_stops(c, v, sheet)
    compare_first_stops(c, v, sheet)
    compare_heat(c, v, sheet)
    compare_packs(c, v, sheet)
