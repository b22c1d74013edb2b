"""One pack or several: voltage, resistance, and what they may give and take."""

import math
from bisect import bisect_right
from functools import lru_cache

from formulas import NOTHING, PULSE, Curve, arrhenius, arrhenius_through, line_beyond, line_through


# what makes voltage and resistance of a cell bend over its charge
BENDS = (
    "cell.open_circuit_voltage",
    "cell.resistance_by_charge",
    "cell.resistance_into_by_charge",
    "cell.resistance_cold_by_charge",
    "cell.sustained_rise_by_charge",
)


def values_under(inputs, prefix=""):
    """The values of the inputs whose names begin alike, by the rest of their names."""
    begin = len(prefix)
    return {k[begin:]: read(v["value"]) for k, v in inputs.items() if k.startswith(prefix)}


def read(value):
    """A list of pairs is a curve."""
    is_curve = isinstance(value, list) and value and isinstance(value[0], list)
    return Curve(value) if is_curve else value


class Pack:
    """One pack; its inputs stand under `pack.` or, of several, under `packs.1.`, `packs.2.`, ..."""

    def __init__(self, inputs, prefix):
        guard = prefix + "protection."
        self.guarded = inputs[guard + "path"]["value"] != "charge-lead"
        if not self.guarded:
            # what braking returns and driving draws goes past it: while riding it has no trip
            inputs = {k: v for k, v in inputs.items() if not k.startswith(guard)}
        self.inputs = inputs
        self.prefix = prefix
        self.values = values_under(inputs, prefix)
        self.series = self["series"]
        self.parallel = self["parallel"]
        self.capacity = self.parallel * self["cell.capacity"]  # [Ah]
        spread = self["resistance_spread"]
        # k: how much more than its even share the strongest of unequal cells carries
        self.strongest = self.parallel / (1 + (self.parallel - 1) * (1 - spread))
        # the worst of the groups in series against their mean
        self.uneven_charge = self.get("group_spread.charge", 0.0)
        self.uneven_capacity = self.get("group_spread.capacity", 0.0)
        self.uneven_resistance = self.get("group_spread.resistance", 0.0)
        self.stacked = self.series / self.parallel
        self.joints = self["joint_resistance"]
        self.nominal = self["cell.resistance"]
        self.sustained_rise = self.get("cell.sustained_rise", 0.0)
        self.voltage_by_charge = self["cell.open_circuit_voltage"]
        self.factor_by_charge = self.curve("cell.resistance_by_charge", 1.0)
        self.into_by_charge = self.curve("cell.resistance_into_by_charge", 0.0)
        self.cold_by_charge = self.curve("cell.resistance_cold_by_charge", 0.0)
        self.rise_by_charge = self.curve("cell.sustained_rise_by_charge", 1.0)
        points = self.get("cell.resistance_by_temperature")
        self.over_temperature = points and arrhenius(points)
        # one temperature or time is asked for over many charge states
        for name in ("by_temperature", "coldness", "onset", "risen"):
            setattr(self, name, lru_cache(maxsize=64)(getattr(self, name)))
        self.all_knots = self.find_knots()
        self.points = [(s, self.open_circuit(s)) for s in self.all_knots]

    def __getitem__(self, key):
        return self.values[key]

    def __contains__(self, key):
        return key in self.values

    def get(self, key, default=None):
        return self.values.get(key, default)

    def knots(self):
        return self.all_knots

    def curve(self, key, otherwise):
        """A curve over the charge, level where none is given."""
        return self.get(key) or Curve([(0.0, otherwise)])

    def by_temperature(self, temperature):
        straight = self.over_temperature
        return 1.0 if straight is None else arrhenius_through(straight, temperature)

    @staticmethod
    def coldness(celsius):
        """0 from 25 degC on, 1 at 10 degC, straight over 1/T."""
        mild, cold = 1 / (25 + 273.15), 1 / (10 + 273.15)
        return max(0.0, (1 / (celsius + 273.15) - mild) / (cold - mild))

    def cell_resistance(self, charge, temperature, seconds=PULSE, into=False):
        """r(s,T): more into the cell; an ohmic share at once, the rest up to 10 s, then a slow rise."""
        factor = line_through(self.factor_by_charge, charge)
        if into:
            factor += line_through(self.into_by_charge, charge)
        cold = self.coldness(temperature)
        if cold:
            factor += cold * line_through(self.cold_by_charge, charge)
        if seconds < PULSE:
            factor *= self.onset(seconds)
        elif seconds > PULSE:
            shape = line_through(self.rise_by_charge, charge)
            factor += self.sustained_rise * shape * self.risen(seconds)
        return self.nominal * factor * self.by_temperature(temperature)

    def risen(self, seconds):
        """Share of the slow rise that has come after a time."""
        return 1 - math.exp(-(seconds - PULSE) / self.get("cell.relaxation_time", 1.0))

    def onset(self, seconds):
        """Share of the 10 s resistance that is there after a shorter time."""
        ohmic, constant = self.get("cell.ohmic_share", 1.0), self.get("cell.onset_time", 1.0)
        come = (1 - math.exp(-seconds / constant)) / (1 - math.exp(-PULSE / constant))
        return ohmic + (1 - ohmic) * come

    def comes_after(self, share):
        """When that share of the 10 s resistance is there."""
        ohmic, constant = self.get("cell.ohmic_share", 1.0), self.get("cell.onset_time", 1.0)
        if share <= ohmic:
            return 0.0
        come = (share - ohmic) / (1 - ohmic) * (1 - math.exp(-PULSE / constant))
        return -constant * math.log(1 - come)

    def group_charge(self, charge, taking):
        """Charge state of the fullest group, or of the emptiest: it began lower and holds less."""
        if taking:
            return charge + self.uneven_charge
        return 1 - self.uneven_charge - (1 - charge) / (1 - self.uneven_capacity)

    def pack_charge(self, group, taking):
        """Charge state of the pack where that group has one."""
        if taking:
            return group - self.uneven_charge
        return 1 - (1 - self.uneven_charge - group) * (1 - self.uneven_capacity)

    def group_voltage(self, charge, taking):
        """At rest; a group beyond full or empty is on the continued end of its curve."""
        return line_beyond(self.voltage_by_charge, self.group_charge(charge, taking))

    def group_resistance(self, charge, temperature, taking, seconds=PULSE):
        """Of one of its cells."""
        own = self.group_charge(charge, taking)
        return (1 + self.uneven_resistance) * self.cell_resistance(own, temperature, seconds, taking)

    def mean_voltage(self, cell, taking):
        """Voltage of the mean cell at rest where the worst group has another."""
        if self.uneven_charge == 0 and (taking or self.uneven_capacity == 0):
            return cell
        points = self["cell.open_circuit_voltage"]
        if points[0][1] <= cell <= points[-1][1]:
            group = self.charge_at(self.series * cell, not taking)
        else:
            (x0, y0), (x1, y1) = points[:2] if cell < points[0][1] else points[-2:]
            x, y = (x0, y0) if cell < y0 else (x1, y1)
            group = x + (cell - y) * (x1 - x0) / (y1 - y0) if y1 > y0 else x
        return line_beyond(points, self.pack_charge(group, taking))

    def group_knots(self, taking):
        """Charge states of the pack at which the curves of its worst group bend."""
        bends = [self.pack_charge(x, taking) for key in BENDS for x, _ in self.get(key, [])]
        return [s for s in bends if 0 < s < 1]

    def first_instant(self):
        """Least resistance: warm cells, the mildest charge, no joints; 0.6 of the pulse or less."""
        each = self["cell.resistance"]
        each *= min((factor for _, factor in self.get("cell.resistance_by_charge", [])), default=1)
        points = self.get("cell.resistance_by_temperature", [])
        if points:
            low, high = self["cell.discharge_temperature"]
            asked = [low, high] + [t for t, _ in points if low < t < high]
            each *= min(self.by_temperature(t) for t in asked)
        ohmic = min(0.6, self.get("cell.ohmic_share", 1.0))
        return ohmic * self.series / self.parallel * each

    def open_circuit(self, charge):
        return self.series * line_through(self.voltage_by_charge, charge)

    def resistance(self, charge, temperature, seconds=PULSE, into=False):
        cells = self.cell_resistance(charge, temperature, seconds, into)
        return self.stacked * cells + self.joints

    def find_knots(self):
        """Charge states between which both curves are straight."""
        knots = {0.0, 1.0}
        for key in (*BENDS, "cell.charge_current_by_charge"):
            knots.update(x for x, _ in self.get(key, []) if 0 < x < 1)
        return sorted(knots)

    def charge_at(self, voltage, upper):
        """Charge state of a voltage at rest; of a level stretch its upper or its lower end."""
        points = self.points
        passed = [s for s, u in points if (u <= voltage if upper else u < voltage)]
        if len(passed) == len(points):
            return 1.0
        if not passed:
            return 0.0
        (s0, u0), (s1, u1) = points[len(passed) - 1], points[len(passed)]
        return s0 + (s1 - s0) * (voltage - u0) / (u1 - u0)

    def rating(self, kind, duration):
        """The cell rating that holds for a duration: the pulse rating up to the pulse time."""
        pulse = f"cell.{kind}_pulse"
        if pulse in self and duration <= self.get("cell.pulse_time", 10.0):
            return self[pulse]
        return self[f"cell.{kind}_current"]

    def wiring(self, margins):
        return wiring(self.inputs, self.prefix + "wiring.", margins)

    def take_rating(self, lasting, margins):
        """What its cells are rated to take.

        The pulse rating holds only where braking at the lasting one is over in the pulse time.
        """
        each = (1 - margins["cell"]) * self.parallel / self.strongest
        return each * self.rating("charge", lasting(each * self["cell.charge_current"]))

    def take_fixed(self, temperature, lasting, margins):
        """What the pack by itself may take whatever its charge state."""
        bounds = {"cell-charge-rating": self.take_rating(lasting, margins)}
        if "protection.charge_trip" in self:
            bounds["protection-charge-trip"] = (1 - margins["trip"]) * self[
                "protection.charge_trip"
            ]
        bounds.update(self.wiring(margins))
        low, high = self["cell.charge_temperature"]
        window = NOTHING
        if temperature < low or temperature > high:
            window = 0.0
        elif temperature < low + self.get("cell.cold_band", 0.0):
            window = self["cell.cold_charge_share"] * bounds["cell-charge-rating"]
        bounds["temperature-window"] = window
        return bounds

    def give_fixed(self, temperature, duration, margins):
        """What the pack by itself may give whatever its charge state."""
        rating = self.rating("discharge", duration)
        left = 1 - margins["cell"]
        bounds = {"cell-discharge-rating": left * self.parallel * rating / self.strongest}
        if "protection.discharge_trip" in self:
            bounds["protection-discharge-trip"] = (1 - margins["trip"]) * self[
                "protection.discharge_trip"
            ]
        bounds.update(self.wiring(margins))
        low, high = self["cell.discharge_temperature"]
        bounds["temperature-window"] = NOTHING if low <= temperature <= high else 0.0
        return bounds

    def take_at_charge(self, charge, lasting, margins):
        """The charge rating at a charge state, where it holds only up to one; None otherwise."""
        key = "cell.charge_current_by_charge"
        if key not in self or all(share == 1 for _, share in self[key]):
            return None
        return line_through(self[key], charge) * self.take_rating(lasting, margins)

    def ceilings(self, margins):
        """Highest cell voltage that each bound permits."""
        result = {"voltage-ceiling": self["cell.voltage_max"]}
        if "protection.cell_overvoltage_trip" in self:
            result["protection-overvoltage-trip"] = (
                self["protection.cell_overvoltage_trip"] - margins["overvoltage"]
            )
        return result

    def floors(self, margins):
        """Lowest cell voltage that each bound permits."""
        result = {"voltage-floor": self["cell.voltage_min"]}
        if "protection.cell_undervoltage_trip" in self:
            result["protection-undervoltage-trip"] = (
                self["protection.cell_undervoltage_trip"] + margins["overvoltage"]
            )
        return result


def wiring(inputs, prefix, margins):
    """What fuse, wire and plug carry; wire less in a deck warmer than the 30 C of its ampacity.

    Insulation for 105 C: heat that leaves goes with the difference to the air, heat that is made
    with the square of the current.
    """
    bounds = {}
    deck = inputs["use.deck_temperature"]["value"]
    cooled = math.sqrt(max(0.0, 105 - deck) / (105 - 30))
    for name, key, margin in (
        ("main-fuse", "fuse", "fuse"),
        ("main-wire", "wire_ampacity", "rating"),
        ("main-plug", "plug_rating", "rating"),
    ):
        if prefix + key in inputs:
            bounds[name] = (1 - margins[margin]) * inputs[prefix + key]["value"]
    if "main-wire" in bounds:
        bounds["main-wire"] *= cooled
    return bounds


class Battery:
    """All packs together as one voltage behind one resistance.

    In parallel they stand at one voltage at rest and divide a current as their conductances; full
    and empty where the first of them is. In series each carries all; they are full together, and
    empty where the smallest is.
    """

    def __init__(self, inputs):
        self.inputs = inputs
        if "pack.series" in inputs:
            self.packs = [Pack(inputs, "pack.")]
        else:
            count = 0
            while f"packs.{count + 1}.series" in inputs:
                count += 1
            self.packs = [Pack(inputs, f"packs.{i + 1}.") for i in range(count)]
        self.several = len(self.packs) > 1
        self.found_knots = None
        # what leads from all packs to the controllers
        self.lead = inputs["battery.lead_resistance"]["value"] if self.lead_told() else 0.0
        joining = inputs["battery.joining"]["value"] if self.several else "parallel"
        self.parallel = joining == "parallel"
        self.temperature = self.packs[0]["temperature"]
        if self.parallel:
            self.top = min(pack.open_circuit(1.0) for pack in self.packs)
            self.bottom = max(pack.open_circuit(0.0) for pack in self.packs)
            self.capacity = self.held(self.top, True)
            self.points = self.common_points()
            self.held_at = [ah for ah, _ in self.points]
        else:
            self.capacity = min(pack.capacity for pack in self.packs)
        self.own_charges = lru_cache(maxsize=None)(self.own_charges)
        self.open_circuit = lru_cache(maxsize=None)(self.open_circuit)
        self.resistances = lru_cache(maxsize=None)(self.resistances)
        self.resistance = lru_cache(maxsize=None)(self.resistance)
        self.share = lru_cache(maxsize=None)(self.share)
        self.cells = lru_cache(maxsize=None)(self.cells)
        self.greatest_share = lru_cache(maxsize=None)(self.greatest_share)

    def lead_told(self):
        return self.several and "battery.lead_resistance" in self.inputs

    def held(self, voltage, upper):
        """Ampere-hours that all packs in parallel hold above empty at a voltage at rest."""
        return sum(
            pack.capacity * (pack.charge_at(voltage, upper) - pack.charge_at(self.bottom, False))
            for pack in self.packs
        )

    def own_charges(self, charge):
        """Charge state of every pack where all together have one."""
        if not self.several:
            return (charge,)
        if not self.parallel:
            return tuple(1 - (1 - charge) * self.capacity / p.capacity for p in self.packs)
        # between the voltages at which any curve bends, ampere-hours and charges are straight
        asked = min(1.0, max(0.0, charge)) * self.capacity
        points = self.points
        i = bisect_right(self.held_at, asked)
        if i == len(points):
            return points[-1][1]
        (before, low), (after, high) = points[i - 1], points[i]
        part = (asked - before) / (after - before)
        return tuple(x + part * (y - x) for x, y in zip(low, high))

    def common_points(self):
        """Ampere-hours held and own charges wherever a curve bends, from empty to full."""
        bends = {p.open_circuit(s) for p in self.packs for s in p.knots()} | {self.bottom, self.top}
        points = []
        for u in sorted(x for x in bends if self.bottom <= x <= self.top):
            for upper in (False, True):
                own = tuple(p.charge_at(u, upper) for p in self.packs)
                points.append((self.held(u, upper), own))
        return [p for i, p in enumerate(points) if i == 0 or p[0] - points[i - 1][0] > 1e-12]

    def open_circuit(self, charge):
        if not self.several:
            return self.packs[0].open_circuit(charge)
        own = self.own_charges(charge)
        if self.parallel:
            return self.packs[0].open_circuit(own[0])
        return sum(pack.open_circuit(s) for pack, s in zip(self.packs, own))

    def resistances(self, charge, temperature, seconds=PULSE, into=False):
        own = self.own_charges(charge)
        return [p.resistance(s, temperature, seconds, into) for p, s in zip(self.packs, own)]

    def resistance(self, charge, temperature, seconds=PULSE, into=False):
        if not self.several:
            return self.packs[0].resistance(charge, temperature, seconds, into)
        each = self.resistances(charge, temperature, seconds, into)
        return self.lead + (1 / sum(1 / r for r in each) if self.parallel else sum(each))

    def share(self, place, charge, temperature, into=False):
        """w: part of the current of all that one pack carries."""
        if not (self.several and self.parallel):
            return 1.0
        each = self.resistances(charge, temperature, PULSE, into)
        return 1 / each[place] / sum(1 / r for r in each)

    def greatest_share(self, place, temperature, into=False):
        return max(self.share(place, s, temperature, into) for s in self.knots())

    def knots(self):
        """Charge states of all together between which the curves of every pack are straight."""
        if self.found_knots is None:
            self.found_knots = self.find_knots()
        return self.found_knots

    def find_knots(self):
        if not self.several:
            return self.packs[0].knots()
        return self.together([(pack, own) for pack in self.packs for own in pack.knots()])

    def together(self, places):
        """Charge states of all where a pack has one of its own; both ends are among them."""
        knots = {0.0, 1.0}
        for pack, own in places:
            if not self.several:
                knots.add(own)
            elif self.parallel:
                # a level stretch of one pack begins and ends at one voltage: take all of them
                u = pack.open_circuit(own)
                for upper in (False, True):
                    knots.add(self.held(u, upper) / self.capacity)
            else:
                knots.add(1 - (1 - own) * pack.capacity / self.capacity)
        inside = sorted(s for s in knots if 0 <= s <= 1)
        return [s for i, s in enumerate(inside) if i == 0 or s - inside[i - 1] > 1e-12]

    def bends(self, taking):
        """Knots, and where the curves of any pack's worst group bend."""
        places = [(pack, own) for pack in self.packs for own in pack.group_knots(taking)]
        return sorted({*self.knots(), *self.together(places)})

    def cell_voltages(self, drawn, charge, temperature, taking=False, seconds=PULSE):
        """Worst group of every pack, joints left out; drawn is negative while returning."""
        return [u - drawn * r for u, r in self.cells(charge, temperature, taking, seconds)]

    def cells(self, charge, temperature, taking, seconds):
        """Worst group of every pack: voltage at rest, and fall per ampere out of all packs."""
        own = self.own_charges(charge)
        return [
            (
                p.group_voltage(s, taking),
                self.share(i, charge, temperature, taking)
                / p.parallel
                * p.group_resistance(s, temperature, taking, seconds),
            )
            for i, (p, s) in enumerate(zip(self.packs, own))
        ]

    def label(self, name, place):
        return f"{name}@{place + 1}" if self.several else name

    def fixed(self, taking, temperature, lasting, margins):
        """Bounds of the packs on the current of all, whatever the charge state.

        Lasting tells how long a current of all packs lasts.
        """
        bounds = {}
        for i, pack in enumerate(self.packs):
            share = self.greatest_share(i, self.temperature, taking)
            if taking:
                own = pack.take_fixed(temperature, lambda x, w=share: lasting(x / w), margins)
            else:
                own = pack.give_fixed(temperature, lasting, margins)
            for name, bound in own.items():
                if bound is not NOTHING:
                    bound /= self.greatest_share(i, temperature, taking)
                bounds[self.label(name, i)] = bound
        if self.several:
            bounds.update(wiring(self.inputs, "battery.", margins))
        return bounds

    def gaps(self, taking, temperature, margins, lasting, seconds=PULSE):
        """Bounds that depend on the charge state, as voltage gap(s) and resistance(s) of each.

        A rating that depends on it stands for a gap, with the pack's share for a resistance.
        """
        result = {}
        for i, pack in enumerate(self.packs):
            share = self.greatest_share(i, self.temperature, taking)
            own_lasting = lambda current, w=share: lasting(current / w)
            if taking and pack.take_at_charge(0.5, own_lasting, margins) is not None:
                result[self.label("cell-charge-rating-at-charge", i)] = (
                    lambda s, i=i, pack=pack, last=own_lasting: pack.take_at_charge(
                        self.own_charges(s)[i], last, margins
                    ),
                    lambda s, i=i: self.share(i, s, temperature, taking),
                )
            ends = pack.ceilings(margins) if taking else pack.floors(margins)
            for name, end in ends.items():
                result[self.label(name, i)] = (
                    lambda s, i=i, pack=pack, end=end: (1 if taking else -1)
                    * pack.parallel
                    * (end - pack.group_voltage(self.own_charges(s)[i], taking)),
                    lambda s, i=i, pack=pack: self.share(i, s, temperature, taking)
                    * pack.group_resistance(
                        self.own_charges(s)[i], temperature, taking, seconds
                    ),
                )
        return result

    def ends(self, taking, margins):
        """Voltages of all packs at which a cell of one of them meets a bound."""
        result = {}
        for i, pack in enumerate(self.packs):
            bounds = pack.ceilings(margins) if taking else pack.floors(margins)
            if not taking and "protection.cell_undervoltage_trip" not in pack:
                # nothing opens before the cells are empty for good: the taper ends no lower
                usual = pack.get("cell.taper_floor", 0.0)
                bounds["voltage-floor"] = max(bounds["voltage-floor"], usual)
            for name, cell in bounds.items():
                result[self.label(name, i)] = self.voltage_where(i, pack.mean_voltage(cell, taking))
        return result

    def fuses(self):
        """Every fuse: its prefix and pack, the voltage it must break, and the fault current.

        A short is fed by full packs through their least resistance. Behind the common fuse all
        packs in parallel feed it, and one after the other in series; through the fuse of one pack
        flows what this one feeds out, or what all the others feed in.
        """
        full = [p.series * p["cell.voltage_max"] for p in self.packs]
        each = [u / p.first_instant() for u, p in zip(full, self.packs)]
        if self.parallel:
            voltage, whole = max(full), sum(each)
            through = [max(own, whole - own) for own in each]
        else:
            voltage = sum(full)
            whole = voltage / sum(p.first_instant() for p in self.packs)
            through = [max(own, whole) for own in each]
        found = [
            (p.prefix + "wiring.", i + 1 if self.several else None, voltage, fault)
            for i, (p, fault) in enumerate(zip(self.packs, through))
        ]
        if self.several:
            found.append(("battery.", None, voltage, whole))
        return [fuse for fuse in found if fuse[0] + "fuse" in self.inputs]

    def voltage_where(self, place, cell):
        """Voltage of all packs at rest where the cells of one have a voltage."""
        pack = self.packs[place]
        own = pack.series * cell
        if self.parallel:
            return own
        charge = 1 - (1 - pack.charge_at(own, True)) * pack.capacity / self.capacity
        charge = min(1.0, max(0.0, charge))  # the others are never emptier than at the end
        states = self.own_charges(charge)
        voltages = [p.open_circuit(s) for p, s in zip(self.packs, states)]
        return own + sum(voltages[:place] + voltages[place + 1 :])
