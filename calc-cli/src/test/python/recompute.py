"""Recomputes the numbers of a JSON worksheet from its own inputs and compares them.

Usage: python3 recompute.py worksheet.json [...]

A second implementation, written from the formulas of the specification alone, with the standard
library only. It reads `inputs` and recomputes what follows from them: pack_by_charge, brake_map,
limits with their constraints and charge bounds, heat and drive. It also checks the rules that any
worksheet must keep: schema, names that end in a unit, no null and no NaN, verdict and findings that
agree. For each group the worst relative difference is printed, then every difference beyond the
tolerance: 1e-9 relative; 1e-8 for top speeds, which both sides iterate; 1e-6 for heat, which is
integrated here step by step (Runge-Kutta) where the worksheet solves it in closed form.

Exit status: 0 when all agree, 1 otherwise, 2 when a file cannot be read.

Units are SI, temperatures in degrees Celsius, charge states fractions. Names follow the
specification: u(s) and r(s,T) of a cell, U(s) and R(s,T) of the pack, k the share of the strongest
of several unequal parallel cells.
"""

import json
import math
import sys

TOLERANCE = 1e-9
HEAT_TOLERANCE = 1e-6
SPEED_TOLERANCE = 1e-8  # a top speed is found by iteration on both sides

GRAVITY = 9.80665  # [m/s2] ISO 2533:1975, standard acceleration
COPPER_COEFFICIENT = 0.00393  # [1/K] IEC 60028:1925, referred to 20 degC
NOTHING = None  # no bound, or no number


def line_through(points, x):
    """Reads a curve given as pairs: straight lines between them, constant beyond the ends."""
    if x <= points[0][0]:
        return points[0][1]
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        if x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    return points[-1][1]


def root(function, low, high):
    """Bisects to the last bit; function(low) and function(high) differ in sign."""
    rising = function(high) > 0
    for _ in range(400):
        middle = 0.5 * (low + high)
        if middle in (low, high):
            break
        if (function(middle) > 0) == rising:
            high = middle
        else:
            low = middle
    return 0.5 * (low + high)


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


class Vehicle:
    """The inputs of a worksheet and the formulas of the specification on them."""

    def __init__(self, inputs):
        self.inputs = inputs
        self.series = self["pack.series"]
        self.parallel = self["pack.parallel"]
        self.pack_temperature = self["pack.temperature"]
        self.ambient = self["use.ambient"]
        self.motors = self["drive.motors"]
        self.controllers = self["controller.count"]
        self.wheel_radius = self["vehicle.wheel_diameter"] / 2
        self.reduction = self["drive.reduction"]
        self.efficiency = self["drive.efficiency"]
        self.controller_efficiency = self["controller.efficiency"]
        self.mass = self["rider.mass"] + self["vehicle.mass"] + self.get("vehicle.cargo", 0.0)
        self.emf = 60 / (2 * math.pi * self["motor.kv"])  # [V.s/rad], line to line
        self.phase_peak = self["controller.current_basis"] == "phase-peak"
        self.torque_constant = self.emf * (math.sqrt(3) / 2 if self.phase_peak else 1.0)
        spread = self["pack.resistance_spread"]
        self.share = self.parallel / (1 + (self.parallel - 1) * (1 - spread))

    def __getitem__(self, key):
        return self.inputs[key]["value"]

    def __contains__(self, key):
        return key in self.inputs

    def get(self, key, default=None):
        return self.inputs[key]["value"] if key in self.inputs else default

    def chosen(self, key):
        """Whether an input stands in the build file, not assumed."""
        return key in self and self.inputs[key]["from"] == "file"

    # --- cell and pack

    def cell_voltage(self, charge):
        return line_through(self["pack.cell.open_circuit_voltage"], charge)

    def cell_resistance(self, charge, temperature):
        result = self["pack.cell.resistance"]
        if "pack.cell.resistance_by_charge" in self:
            result *= line_through(self["pack.cell.resistance_by_charge"], charge)
        if "pack.cell.resistance_by_temperature" in self:
            result *= line_through(self["pack.cell.resistance_by_temperature"], temperature)
        return result

    def open_circuit(self, charge):
        return self.series * self.cell_voltage(charge)

    def resistance(self, charge, temperature):
        cells = self.series / self.parallel * self.cell_resistance(charge, temperature)
        return cells + self["pack.joint_resistance"]

    def charge_knots(self):
        """Charge states between which both curves are straight."""
        knots = {0.0, 1.0}
        for key in ("pack.cell.open_circuit_voltage", "pack.cell.resistance_by_charge"):
            knots.update(x for x, _ in self.get(key, []) if 0 < x < 1)
        return sorted(knots)

    def wiring_bounds(self):
        left = 1 - self["margins.rating"]
        bounds = {
            "controller-pack-rating": left
            * self["controller.pack_current_rating"]
            * self.controllers
        }
        if "pack.wiring.fuse" in self:
            bounds["main-fuse"] = (1 - self["margins.fuse"]) * self["pack.wiring.fuse"]
        if "pack.wiring.wire_ampacity" in self:
            bounds["main-wire"] = left * self["pack.wiring.wire_ampacity"]
        if "pack.wiring.plug_rating" in self:
            bounds["main-plug"] = left * self["pack.wiring.plug_rating"]
        return bounds

    def rating(self, continuous, pulse, duration):
        """The cell rating that holds for a duration: the pulse rating up to the pulse time."""
        if pulse in self and duration <= self.get("pack.cell.pulse_time", 10.0):
            return self[pulse]
        return self[continuous]

    def take_fixed(self, temperature):
        """What the pack may take whatever its charge state."""
        rating = self.rating(
            "pack.cell.charge_current", "pack.cell.charge_pulse", self["use.hard_brake"]
        )
        bounds = {"cell-charge-rating": self.parallel * rating / self.share}
        if "pack.protection.charge_trip" in self:
            bounds["protection-charge-trip"] = (1 - self["margins.trip"]) * self[
                "pack.protection.charge_trip"
            ]
        bounds.update(self.wiring_bounds())
        low, high = self["pack.cell.charge_temperature"]
        window = NOTHING
        if temperature < low or temperature > high:
            window = 0.0
        elif temperature < low + self.get("pack.cell.cold_band", 0.0):
            window = self["pack.cell.cold_charge_share"] * bounds["cell-charge-rating"]
        bounds["temperature-window"] = window
        return bounds

    def give_fixed(self, temperature):
        """What the pack may give whatever its charge state."""
        rating = self.rating(
            "pack.cell.discharge_current", "pack.cell.discharge_pulse", self["use.hard_pull"]
        )
        bounds = {"cell-discharge-rating": self.parallel * rating / self.share}
        if "pack.protection.discharge_trip" in self:
            bounds["protection-discharge-trip"] = (1 - self["margins.trip"]) * self[
                "pack.protection.discharge_trip"
            ]
        bounds.update(self.wiring_bounds())
        low, high = self["pack.cell.discharge_temperature"]
        bounds["temperature-window"] = NOTHING if low <= temperature <= high else 0.0
        return bounds

    def take_gaps(self, temperature):
        """Charge-dependent bounds on taking, as voltage gap(s) and resistance(s) of each."""
        parallel = self.parallel

        def per_cell(ceiling):
            return (
                lambda s: parallel * (ceiling - self.cell_voltage(s)),
                lambda s: self.cell_resistance(s, temperature),
            )

        gaps = {"voltage-ceiling": per_cell(self["pack.cell.voltage_max"])}
        if "pack.protection.cell_overvoltage_trip" in self:
            gaps["protection-overvoltage-trip"] = per_cell(
                self["pack.protection.cell_overvoltage_trip"] - self["margins.overvoltage"]
            )
        ceiling = self.controller_ceiling()
        gaps["controller-voltage-rating"] = (
            lambda s: ceiling - self.open_circuit(s),
            lambda s: self.resistance(s, temperature),
        )
        return gaps

    def give_gaps(self, temperature):
        """Charge-dependent bounds on giving, as voltage gap(s) and resistance(s) of each."""
        parallel = self.parallel

        def per_cell(floor):
            return (
                lambda s: parallel * (self.cell_voltage(s) - floor),
                lambda s: self.cell_resistance(s, temperature),
            )

        gaps = {"voltage-floor": per_cell(self["pack.cell.voltage_min"])}
        if "pack.protection.cell_undervoltage_trip" in self:
            gaps["protection-undervoltage-trip"] = per_cell(
                self["pack.protection.cell_undervoltage_trip"] + self["margins.overvoltage"]
            )
        return gaps

    @staticmethod
    def at_charge(fixed, gaps, charge):
        """All bounds at one charge state; a floor at or past zero gives 0."""
        bounds = dict(fixed)
        for name, (gap, resistance) in gaps.items():
            bounds[name] = max(0.0, gap(charge) / resistance(charge))
        return bounds

    def allowed_stretch(self, gaps, current):
        """Charge states at which every gap bears a current: (first loss going up, last gain).

        Between two knots gap(s) - current * resistance(s) is straight, so each stretch holds at
        most one crossing, found without iteration. Returns the highest state up to which all of
        them hold from charge 0 on, and the lowest from which all hold up to charge 1 (None: none).
        """
        knots = self.charge_knots()
        bad = []
        for gap, resistance in gaps.values():
            left = [gap(s) - current * resistance(s) for s in knots]
            for (s0, y0), (s1, y1) in zip(zip(knots, left), list(zip(knots, left))[1:]):
                if y0 >= 0 and y1 >= 0:
                    continue
                crossing = s0 + (s1 - s0) * y0 / (y0 - y1) if (y0 < 0) != (y1 < 0) else None
                bad.append((s0 if y0 < 0 else crossing, s1 if y1 < 0 else crossing))
        below = min((start for start, _ in bad), default=1.0)
        above = max((end for _, end in bad), default=0.0)
        return below, above

    # --- motor and powertrain

    def winding_resistance(self, temperature):
        """Terminal-to-terminal resistance."""
        return self["motor.resistance"] * (1 + COPPER_COEFFICIENT * (temperature - 20))

    def loss_resistance(self, temperature):
        """R_e: copper loss per square of the motor current."""
        return self.winding_resistance(temperature) * (0.75 if self.phase_peak else 1.0)

    def drag_torque(self, omega):
        no_load = self.emf * self.get("motor.no_load_current", 0.0)
        return no_load + self.get("motor.viscous_drag", 0.0) * omega

    def motor_speed(self, speed):
        return self.reduction * speed / self.wheel_radius

    def drive_force(self, current, speed):
        torque = self.torque_constant * current - self.drag_torque(self.motor_speed(speed))
        return self.motors * torque * self.reduction * self.efficiency / self.wheel_radius

    def brake_force(self, current, speed):
        torque = self.torque_constant * current + self.drag_torque(self.motor_speed(speed))
        return self.motors * torque * self.reduction / (self.efficiency * self.wheel_radius)

    def voltage_need(self, current, speed):
        omega = self.motor_speed(speed)
        winding = self.winding_resistance(self.ambient)
        if not self.phase_peak:
            return self.emf * omega + winding * current
        electrical = self["motor.pole_pairs"] * omega
        flux = self.emf / (math.sqrt(3) * self["motor.pole_pairs"])
        along = flux * electrical + winding / 2 * current
        across = electrical * self.get("motor.inductance", 0.0) * current
        return math.sqrt(3) * math.hypot(along, across)

    def resistance_force(self, speed, slope=0.0):
        angle = math.atan(slope)
        rolling = self["vehicle.rolling_resistance"] * math.cos(angle) + math.sin(angle)
        density = air_density(self["use.altitude"], self.ambient)
        air = 0.5 * density * self["vehicle.drag_area"] * speed**2
        return self.mass * GRAVITY * rolling + air

    def set_pack(self, key):
        return self[key] * self.controllers

    def drive_currents(self, speed, charge):
        """Motor current each bound permits at a speed and charge state."""
        u = self.open_circuit(charge)
        r = self.resistance(charge, self.pack_temperature)
        omega = self.motor_speed(speed)
        loss = self.loss_resistance(self.ambient)
        emf = self.torque_constant * omega

        def pack_power(current):
            return self.motors * (emf * current + loss * current**2) / self.controller_efficiency

        asked = self.set_pack("settings.pack_discharge_current")
        peak = u / (2 * r)
        most = min(asked, peak)
        per_motor = most * (u - most * r) * self.controller_efficiency / self.motors
        by_pack = 2 * per_motor / (emf + math.sqrt(emf**2 + 4 * loss * per_motor))

        def voltage_left(current):
            drawn = pulse_draw(u, r, pack_power(current))
            if drawn is None:
                drawn = peak
            return u - drawn * r - self.voltage_need(current, speed)

        top = self["settings.motor_drive_current"]
        most_current = min(top, by_pack)
        if voltage_left(0.0) <= 0:
            by_voltage = 0.0
        elif voltage_left(most_current) >= 0:
            by_voltage = math.inf
        else:
            by_voltage = root(voltage_left, 0.0, most_current)
        return {
            "motor-drive-current": top,
            "pack-discharge-current": by_pack,
            "pack-voltage": by_voltage,
        }

    def top_speed(self, charge):
        """Speed on the flat at which the largest thrust meets the resistance."""

        def surplus(speed):
            current = min(self.drive_currents(speed, charge).values())
            return self.drive_force(current, speed) - self.resistance_force(speed)

        if surplus(0.0) <= 0:
            return 0.0
        high = 1.0
        while surplus(high) > 0:
            high *= 2
        return root(surplus, 0.0, high)

    def brake_point(self, charge, speed):
        """Asked pack current, pack current, motor current, cell voltage and force of braking."""
        u = self.open_circuit(charge)
        r = self.resistance(charge, self.pack_temperature)
        emf = self.torque_constant * self.motor_speed(speed)
        loss = self.loss_resistance(self.ambient)

        def pack_current(motor_current):
            power = self.motors * (emf * motor_current - loss * motor_current**2)
            if power >= 0:
                return pulse_return(u, r, power * self.controller_efficiency)
            drawn = pulse_draw(u, r, -power / self.controller_efficiency)
            return -math.inf if drawn is None else -drawn

        # where braking draws, it draws no more than the pack can give
        most = u * u / (4 * r) * self.controller_efficiency / self.motors
        supplied = (emf + math.sqrt(emf**2 + 4 * loss * most)) / (2 * loss)
        current = min(self["settings.motor_brake_current"], supplied)
        asked = pack_current(current)
        limit = self.set_pack("settings.pack_regen_current")
        flowing = asked
        # The motor current builds up from 0 and stops where the returned power first reaches the
        # limit, also when it would fall below the limit again beyond its peak at emf / (2 loss).
        if pack_current(min(current, emf / (2 * loss))) > limit:
            per_motor = limit * (u + limit * r) / (self.motors * self.controller_efficiency)
            current = 2 * per_motor / (emf + math.sqrt(emf**2 - 4 * loss * per_motor))
            flowing = limit
        if flowing == -math.inf:  # the pack cannot supply that power: no current, no voltage
            return {
                "asked_pack_current_A": NOTHING,
                "pack_current_A": NOTHING,
                "motor_current_A": current,
                "cell_voltage_V": NOTHING,
                "wheel_force_N": self.brake_force(current, speed),
            }
        cell = self.cell_voltage(charge) + flowing / self.parallel * self.cell_resistance(
            charge, self.pack_temperature
        )
        return {
            "asked_pack_current_A": asked,
            "pack_current_A": flowing,
            "motor_current_A": current,
            "cell_voltage_V": cell,
            "wheel_force_N": self.brake_force(current, speed),
        }

    # --- heat

    def heat_known(self):
        return all(
            "motor." + key in self
            for key in (
                "winding_to_case",
                "case_to_air",
                "winding_heat_capacity",
                "case_heat_capacity",
            )
        )

    def case_loss(self):
        omega = self.motor_speed(self["use.speed_max"])
        return self.drag_torque(omega) * omega

    def continuous_current(self):
        """Motor current whose steady state is the winding limit."""
        limit = self["motor.winding_limit"]
        to_case, to_air = self["motor.winding_to_case"], self["motor.case_to_air"]
        rise = limit - self.ambient - to_air * self.case_loss()
        if rise <= 0:
            return 0.0
        return math.sqrt(rise / (self.loss_resistance(limit) * (to_case + to_air)))

    def heat_slopes(self, current):
        """Slopes of the winding and the case temperature at a motor current."""
        to_case, to_air = self["motor.winding_to_case"], self["motor.case_to_air"]
        winding, case = self["motor.winding_heat_capacity"], self["motor.case_heat_capacity"]
        loss = self.case_loss()

        def slopes(hot, shell):
            flow = (hot - shell) / to_case
            copper = self.loss_resistance(hot) * current**2
            return (
                (copper - flow) / winding,
                (flow - (shell - self.ambient) / to_air + loss) / case,
            )

        return slopes

    @staticmethod
    def step(slopes, hot, shell, dt):
        """One step of the classical Runge-Kutta method of fourth order."""
        a1, b1 = slopes(hot, shell)
        a2, b2 = slopes(hot + dt / 2 * a1, shell + dt / 2 * b1)
        a3, b3 = slopes(hot + dt / 2 * a2, shell + dt / 2 * b2)
        a4, b4 = slopes(hot + dt * a3, shell + dt * b3)
        return hot + dt / 6 * (a1 + 2 * a2 + 2 * a3 + a4), shell + dt / 6 * (
            b1 + 2 * b2 + 2 * b3 + b4
        )

    def quickest(self):
        """The shortest time in which a node follows its neighbours."""
        to_case, to_air = self["motor.winding_to_case"], self["motor.case_to_air"]
        coupled = to_case * to_air / (to_case + to_air)
        return min(
            self["motor.winding_heat_capacity"] * to_case,
            self["motor.case_heat_capacity"] * coupled,
        )

    def winding_after(self, current, duration):
        slopes = self.heat_slopes(current)
        steps = max(40, math.ceil(duration / (self.quickest() / 60)))
        hot = shell = self.ambient
        for _ in range(steps):
            hot, shell = self.step(slopes, hot, shell, duration / steps)
        return hot

    def time_to_limit(self, current):
        """Time in which a cold winding reaches its limit; None when it never does."""
        limit = self["motor.winding_limit"]
        if current <= self.continuous_current():
            return None
        slopes = self.heat_slopes(current)
        climb = slopes(self.ambient, self.ambient)[0]
        dt = min(self.quickest() / 60, (limit - self.ambient) / climb / 40)
        time, hot, shell = 0.0, self.ambient, self.ambient
        while True:
            after = self.step(slopes, hot, shell, dt)
            if after[0] >= limit:
                part = root(lambda d: self.step(slopes, hot, shell, d)[0] - limit, 0.0, dt)
                return time + part
            time, (hot, shell) = time + dt, after
            if time > 3e6:
                return None

    def heat_bound(self, duration):
        """Motor current that brings a cold winding to its limit just within a duration."""
        limit = self["motor.winding_limit"]
        low, high = 0.0, max(1.0, self.continuous_current())
        if self.winding_after(low, duration) >= limit:
            return 0.0
        while self.winding_after(high, duration) < limit:
            low, high = high, 2 * high
        # the winding temperature is smooth in the current: secant with bracket, 60 steps at most
        f_low = self.winding_after(low, duration) - limit
        f_high = self.winding_after(high, duration) - limit
        for _ in range(60):
            guess = high - f_high * (high - low) / (f_high - f_low)
            f_guess = self.winding_after(guess, duration) - limit
            if abs(f_guess) < 1e-10 * limit:
                return guess
            if f_guess > 0:
                high, f_high, f_low = guess, f_guess, f_low / 2
            else:
                low, f_low, f_high = guess, f_guess, f_high / 2
        return guess

    # --- limits

    def controller_ceiling(self):
        return (1 - self["margins.controller_voltage"]) * self["controller.voltage_rating"]

    def accelerations(self, braking, margin=None):
        """Bounds on the acceleration as fractions of gravity; grip less its margin."""
        wheelbase = self["vehicle.wheelbase"]
        height = self["vehicle.mass_centre_height"]
        from_front = self["vehicle.mass_centre_from_front"]
        margin = self["margins.grip"] if margin is None else margin
        grip = (1 - margin) * self["vehicle.grip"]
        axle = self["vehicle.driven_axle"]
        bounds = {}
        if axle == "both":
            bounds["grip"] = grip
        else:
            lever = from_front if axle == "rear" else wheelbase - from_front
            toward = (axle == "front") == braking  # the load moves onto this axle
            under = wheelbase - grip * height if toward else wheelbase + grip * height
            bounds["grip"] = grip * lever / under if under > 0 else NOTHING
        ahead = from_front if braking else wheelbase - from_front
        bounds["tipping"] = ahead / height
        if self["rider.stance"] != "seated":
            bounds["rider-balance"] = self["rider.support_half_length"] / self["rider.mass_height"]
        if braking and "criteria.rider_deceleration_max" in self:
            bounds["rider-tolerance"] = self["criteria.rider_deceleration_max"] / GRAVITY
        return bounds

    def climbing_bounds(self, rolling):
        """Slopes at which the driven wheels spin and the front wheels lift, at steady speed."""
        wheelbase = self["vehicle.wheelbase"]
        height = self["vehicle.mass_centre_height"]
        from_front = self["vehicle.mass_centre_from_front"]
        grip = self["vehicle.grip"]
        axle = self["vehicle.driven_axle"]
        slopes = [(wheelbase - from_front) / height]
        if axle == "both":
            slopes.append(grip - rolling)
        elif axle == "rear" and grip * height < wheelbase:
            slopes.append(
                (grip * from_front / wheelbase - rolling) / (1 - grip * height / wheelbase)
            )
        elif axle == "front":
            slopes.append(
                (grip * (wheelbase - from_front) / wheelbase - rolling)
                / (1 + grip * height / wheelbase)
            )
        return slopes

    def motor_bounds(self, braking):
        left = 1 - self["margins.rating"]
        bounds = {}
        if "motor.current_rating" in self:
            bounds["motor-current-rating"] = left * self["motor.current_rating"]
        bounds["controller-motor-rating"] = left * self["controller.motor_current_rating"]
        if self.heat_known():
            duration = self["use.hard_brake" if braking else "use.hard_pull"]
            bounds["winding-heat"] = self.heat_bound(duration)
        for name, fraction in self.accelerations(braking).items():
            if fraction is NOTHING:
                bounds[name] = NOTHING
                continue
            force = self.mass * GRAVITY * fraction
            if braking and name != "grip":
                # the rider and the vehicle feel the whole deceleration: the road brakes too
                road = self.resistance_force(self["use.speed_max"])
                turning = 1 + self["vehicle.rotating_share"]
                force = max(0.0, turning * force - road)
            lever = self.wheel_radius / (self.motors * self.reduction)
            if braking:
                torque = force * lever * self.efficiency - self.drag_torque(0.0)
            else:
                torque = force * lever / self.efficiency + self.drag_torque(0.0)
            bounds[name] = max(0.0, torque / self.torque_constant)
        return bounds

    def low_taper(self):
        ends = {"voltage-floor": self.series * self["pack.cell.voltage_min"]}
        if "pack.protection.cell_undervoltage_trip" in self:
            ends["protection-undervoltage-trip"] = self.series * (
                self["pack.protection.cell_undervoltage_trip"] + self["margins.overvoltage"]
            )
        coldest = self["use.pack_temperature"][0]
        band = self.set_pack("settings.pack_discharge_current") * self.resistance(
            self["use.charge_to"], coldest
        )
        end = max(ends.values())
        return [end + band, end], ends, band

    def high_taper(self):
        ends = {"voltage-ceiling": self.series * self["pack.cell.voltage_max"]}
        if "pack.protection.cell_overvoltage_trip" in self:
            ends["protection-overvoltage-trip"] = self.series * (
                self["pack.protection.cell_overvoltage_trip"] - self["margins.overvoltage"]
            )
        ends["controller-voltage-rating"] = self.controller_ceiling()
        coldest = self["use.pack_temperature"][0]
        band = self.set_pack("settings.pack_regen_current") * self.resistance(
            self["use.charge_from"], coldest
        )
        end = min(ends.values())
        return [end - band, end], ends, band

    def speed_bounds(self):
        per_volt = self.wheel_radius / (self.reduction * self.emf)
        return {
            "controller-back-emf": self.controller_ceiling() * per_volt,
            "pack-back-emf": self.open_circuit(self["use.charge_from"]) * per_volt,
        }


def is_number(node):
    return isinstance(node, (int, float)) and not isinstance(node, bool) and math.isfinite(node)


class Comparison:
    """Collects differences by group."""

    def __init__(self):
        self.worst = {}
        self.faults = []

    def number(self, group, where, got, expected, tolerance=TOLERANCE, scale=0.0):
        """Compares a number of the worksheet with the recomputed one; None stands for absent."""
        self.worst.setdefault(group, [0, 0.0])
        if got is None and expected is None:
            return
        self.worst[group][0] += 1
        if got is None or expected is None or not is_number(got):
            self.faults.append(f"{group} {where}: worksheet {got}, recomputed {expected}")
            return
        size = max(abs(got), abs(expected), scale)
        difference = abs(got - expected) / size if size > 0 else 0.0
        self.worst[group][1] = max(self.worst[group][1], difference)
        if not difference <= tolerance:
            self.faults.append(
                f"{group} {where}: worksheet {got!r}, recomputed {expected!r}, rel {difference:.2e}"
            )

    def binds(self, group, where, name, bounds):
        """The named constraint must be one of the smallest."""
        real = {k: v for k, v in bounds.items() if v is not NOTHING}
        least = min(real.values())
        if name not in real or abs(real[name] - least) > 1e-9 * max(1e-9, abs(least)):
            best = min(real, key=real.get)
            self.faults.append(f"{group} {where}: worksheet names {name}, recomputed {best}")
        self.worst.setdefault(group, [0, 0.0])[0] += 1

    def rule(self, holds, text):
        self.worst.setdefault("rules", [0, 0.0])[0] += 1
        if not holds:
            self.faults.append("rules " + text)


def compare_pack(c, v, sheet):
    rows = sheet["pack_by_charge"]
    t = v.pack_temperature
    for row in rows:
        s = row["charge"]
        at = f"at charge {s:g}"
        c.number("pack", "open_circuit_V " + at, row.get("open_circuit_V"), v.open_circuit(s))
        c.number("pack", "resistance_ohm " + at, row.get("resistance_ohm"), v.resistance(s, t))
        c.number(
            "pack",
            "cell_resistance_ohm " + at,
            row.get("cell_resistance_ohm"),
            v.cell_resistance(s, t),
        )
        give = v.at_charge(v.give_fixed(t), v.give_gaps(t), s)
        take = v.at_charge(v.take_fixed(t), v.take_gaps(t), s)
        for name, bounds in (("give", give), ("take", take)):
            least = min(b for b in bounds.values() if b is not NOTHING)
            key = f"may_{name}_A"
            # a bound near zero is a small difference of two voltages: judged on a scale of 1 A
            c.number("pack", f"{key} {at}", row.get(key), least, scale=1.0)
            c.binds("pack", f"{key} {at}", row.get(f"{name}_bound_by"), bounds)
        if "settings.pack_discharge_current" in v:
            drawn = v.set_pack("settings.pack_discharge_current")
            left = v.open_circuit(s) - drawn * v.resistance(s, t)
            c.number(
                "pack",
                "loaded_V " + at,
                row.get("loaded_V"),
                left if left > 0 else None,
            )
            if "settings.motor_drive_current" in v:
                c.number(
                    "top speed",
                    "top_speed_m_per_s " + at,
                    row.get("top_speed_m_per_s"),
                    v.top_speed(s),
                    SPEED_TOLERANCE,
                )
    charges = [row["charge"] for row in rows]
    c.rule(charges == sorted(set(charges)), "pack_by_charge is not in rising order of charge")


def compare_brake_map(c, v, sheet):
    chart = sheet.get("brake_map")
    if chart is None:
        c.rule("settings.motor_brake_current" not in v, "brake_map is missing")
        return
    arrays = [
        "asked_pack_current_A",
        "pack_current_A",
        "motor_current_A",
        "cell_voltage_V",
        "wheel_force_N",
    ]
    charges, speeds = chart["charge"], chart["speed_m_per_s"]
    t = v.pack_temperature
    for name in arrays:
        square = len(chart[name]) == len(charges) and all(
            len(row) == len(speeds) for row in chart[name]
        )
        c.rule(square, f"brake_map {name} is not charge by speed")
    for i, s in enumerate(charges):
        take = v.at_charge(v.take_fixed(t), v.take_gaps(t), s)
        least = min(b for b in take.values() if b is not NOTHING)
        c.number("brake map", f"may_take_A at {s:g}", chart["may_take_A"][i], least, scale=1.0)
        for j, speed in enumerate(speeds):
            point = v.brake_point(s, speed)
            for name in arrays:
                where = f"{name} at charge {s:g}, {speed:.4g} m/s"
                # near the speed where the sign turns, the pack current is a difference: scale 1 A
                scale = 1.0 if name.endswith("_A") else 0.0
                c.number("brake map", where, chart[name][i][j], point[name], scale=scale)


def compare_constraints(c, group, listed, bounds, loose=()):
    got = {entry["id"]: entry.get("limit") for entry in listed}
    c.rule(len(got) == len(listed), f"{group} lists a constraint twice")
    for entry in listed:
        c.rule(bool(entry.get("source")), f"{group} constraint {entry['id']} has no source")
    for name in sorted(set(got) | set(bounds)):
        tolerance = HEAT_TOLERANCE if name in loose else TOLERANCE
        c.number(group, name, got.get(name), bounds.get(name), tolerance, scale=1.0)


def compare_limits(c, v, sheet):
    limits = sheet["limits"]
    t = v.pack_temperature

    for braking, name in ((False, "motor-drive-current"), (True, "motor-brake-current")):
        limit = limits[name]
        bounds = v.motor_bounds(braking)
        group = "limit " + name
        compare_constraints(c, group, limit["constraints"], bounds, ("winding-heat",))
        least = min(b for b in bounds.values() if b is not NOTHING)
        loose = limit["bound_by"] == "winding-heat"
        c.number(group, "limit", limit["limit"], least, HEAT_TOLERANCE if loose else TOLERANCE)
        c.rule(limit["bound_by"] in bounds, f"{name} is bound by an unknown constraint")
        if not loose:
            c.binds(group, "bound_by", limit["bound_by"], bounds)
        key = "settings." + name.replace("-", "_")
        c.number(group, "set", limit.get("set"), v[key] if v.chosen(key) else None)

    packs = (
        ("pack-discharge-current", v.give_fixed(t), v.give_gaps(t), "use.charge_to"),
        ("pack-regen-current", v.take_fixed(t), v.take_gaps(t), "use.charge_from"),
    )
    for name, fixed, gaps, end in packs:
        limit = limits[name]
        group = "limit " + name
        compare_constraints(c, group, limit["constraints"], fixed)
        least = min(b for b in fixed.values() if b is not NOTHING)
        c.number(group, "limit", limit["limit"], least)
        c.number(group, "per_controller", limit["per_controller"], least / v.controllers)
        c.binds(group, "bound_by", limit["bound_by"], fixed)
        if "constraints_at_end_of_use" in limit:
            at_end = v.at_charge(fixed, gaps, v[end])
            compare_constraints(c, group + " at end", limit["constraints_at_end_of_use"], at_end)
        key = "settings." + name.replace("-", "_")
        c.number(group, "set", limit.get("set"), v.set_pack(key) if v.chosen(key) else None)
        side = 0 if name == "pack-regen-current" else 1
        word = "holds_below_charge" if side == 0 else "holds_above_charge"
        asked = [(word, least)]
        if v.chosen(key):
            asked.append(("set_" + word, v.set_pack(key)))
        for field, current in asked:
            bound = v.allowed_stretch(gaps, current)[side]
            # accurate to a bisection step of the charge state, whose scale is 1
            c.number(group, field, limit.get(field), bound, scale=1.0)

    for name, needed, taper in (
        ("low-voltage-taper", "settings.pack_discharge_current", v.low_taper),
        ("high-voltage-taper", "settings.pack_regen_current", v.high_taper),
    ):
        if needed not in v or name not in limits:
            continue
        limit = limits[name]
        group = "limit " + name
        pair, ends, band = taper()
        compare_constraints(c, group, limit["constraints"], ends)
        if "limit" not in limit:  # no current to fade, or no band above zero is wide enough
            c.rule(pair[0] <= 0 or band == 0, f"{name} has no limit, yet {pair} would do")
            continue
        for i, word in enumerate(("begins", "ends")):
            c.number(group, word, limit["limit"][i], pair[i])
        if "band_least_V" in limit:
            c.number(group, "band_least_V", limit["band_least_V"], band)
        binding = min if name.startswith("high") else max
        best = binding(ends.values())
        named = ends.get(limit["bound_by"])
        c.rule(
            named is not None and abs(named - best) <= 1e-9 * abs(best),
            f"{name} names {limit['bound_by']}, which does not bind",
        )

    if "speed-cap" in limits:
        limit = limits["speed-cap"]
        bounds = v.speed_bounds()
        compare_constraints(c, "limit speed-cap", limit["constraints"], bounds)
        c.number("limit speed-cap", "limit", limit["limit"], min(bounds.values()))
        c.binds("limit speed-cap", "bound_by", limit["bound_by"], bounds)


def compare_heat(c, v, sheet):
    heat = sheet.get("heat", {})
    if not v.heat_known():
        c.rule("continuous_motor_current_A" not in heat, "heat is given without its inputs")
        return
    number = heat.get("continuous_motor_current_A")
    c.number("heat", "continuous_motor_current_A", number, v.continuous_current(), HEAT_TOLERANCE)
    if "case_loss_W" in heat:
        c.number("heat", "case_loss_W", heat["case_loss_W"], v.case_loss())
    for word in ("drive", "brake"):
        key = f"settings.motor_{word}_current"
        expected = v.time_to_limit(v[key]) if key in v else None
        field = f"time_at_{word}_set_s"
        c.number("heat", field, heat.get(field), expected, HEAT_TOLERANCE)


def compare_drive(c, v, sheet):
    drive = sheet.get("drive")
    if drive is None:
        return
    charge = v["use.charge_from"]
    currents = v.drive_currents(0.0, charge)
    by_motor = v.drive_force(min(currents.values()), 0.0)
    # what the road and the rider bear: the whole grip here, since a margin is for limits
    borne = {
        name: v.mass * GRAVITY * fraction
        for name, fraction in v.accelerations(braking=False, margin=0.0).items()
        if fraction is not NOTHING
    }
    thrust = min([by_motor, *borne.values()])
    left = max(0.0, thrust - v.resistance_force(0.0))
    launch = left / (v.mass * (1 + v["vehicle.rotating_share"]))
    c.number("drive", "launch_m_per_s2", drive.get("launch_m_per_s2"), launch)
    by_name = {name: v.drive_force(current, 0.0) for name, current in currents.items()}
    c.binds("drive", "launch_bound_by", drive["launch_bound_by"], {**by_name, **borne})
    rolling = v["vehicle.rolling_resistance"]
    slopes = v.climbing_bounds(rolling)
    part = by_motor / (v.mass * GRAVITY * math.hypot(1, rolling))
    if part < 1:
        slopes.append(math.tan(math.asin(part) - math.atan(rolling)))
    if slopes:
        slope = max(0.0, min(slopes))
        c.number("drive", "climb_slope_held", drive.get("climb_slope_held"), slope)
    top = drive.get("top_speed_flat_m_per_s")
    c.number("drive", "top_speed_flat_m_per_s", top, v.top_speed(charge), SPEED_TOLERANCE)


UNIT_ENDINGS = (
    "_A _V _W _ohm _m _s _N _kg _K _C _Wh _km _m_per_s _m_per_s2 _Wh_per_km".split()
)
UNITLESS = {
    "charge",
    "worst_charge",
    "safe_charge",
    "slope",
    "value",
    "tolerance",
    "limit",
    "set",
    "set_per_controller",
    "per_controller",
    "climb_slope_held",
    "end_of_use_charge",
    "holds_below_charge",
    "holds_above_charge",
    "set_holds_below_charge",
    "set_holds_above_charge",
}


def check_tree(c, node, path, key=None):
    if isinstance(node, dict):
        for name, child in node.items():
            check_tree(c, child, f"{path}.{name}", name)
    elif isinstance(node, list):
        for i, child in enumerate(node):
            check_tree(c, child, f"{path}[{i}]", key)
    elif node is None:
        c.rule(False, f"{path} is null")
    elif isinstance(node, str):
        c.rule(node not in ("NaN", "Infinity", "-Infinity"), f"{path} is {node}")
    elif isinstance(node, (int, float)) and not isinstance(node, bool):
        c.rule(math.isfinite(node), f"{path} is not finite")
        named = key in UNITLESS or any((key or "").endswith(end) for end in UNIT_ENDINGS)
        c.rule(named, f"{path} does not end in its unit")


def check_rules(c, v, sheet):
    c.rule(sheet.get("schema") == "brakewright.worksheet/1", "schema is not the expected one")
    verdict = sheet.get("verdict")
    c.rule(
        verdict in ("within-limits", "conditional", "outside-limits"), f"verdict is {verdict!r}"
    )
    check_tree(c, sheet, "$")
    for key, entry in sheet["inputs"].items():
        known = entry.get("from") in ("file", "table", "assumed") and bool(entry.get("source"))
        c.rule(known and "unit" in entry, f"inputs {key} lacks its unit, origin or source")
    for finding in sheet.get("findings", []):
        word = finding.get("signal")
        c.rule(word in ("danger", "warning", "caution", "notice"), f"signal word {word!r}")
    signals = [f["signal"] for f in sheet.get("findings", [])]
    if verdict == "within-limits":
        c.rule("danger" not in signals, "within limits in spite of a danger")
        for name, limit in sheet["limits"].items():
            if limit["unit"] == "A" and "set" in limit:
                fits = limit["set"] <= limit["limit"] * (1 + 1e-12)
                c.rule(fits, f"within limits though {name} is set above its limit")
    if "brake_map" in sheet:
        most = v.set_pack("settings.pack_regen_current")
        for row in sheet["brake_map"]["pack_current_A"]:
            fits = all(x <= most * (1 + 1e-9) for x in row if is_number(x))
            c.rule(fits, "brake_map passes the set pack regen current")


def recompute(path):
    """Compares one worksheet, prints the outcome and returns whether all agrees."""
    with open(path, encoding="utf-8") as file:
        sheet = json.load(file)
    v = Vehicle(sheet["inputs"])
    c = Comparison()
    check_rules(c, v, sheet)
    compare_pack(c, v, sheet)
    compare_brake_map(c, v, sheet)
    compare_limits(c, v, sheet)
    compare_heat(c, v, sheet)
    compare_drive(c, v, sheet)
    print(path)
    for group, (count, worst) in c.worst.items():
        print(f"  {group:40s} {count:6d} compared, worst relative difference {worst:.1e}")
    for fault in c.faults:
        print("  DIFFERS " + fault)
    return not c.faults


def main(paths):
    if not paths:
        print(__doc__.strip().splitlines()[2], file=sys.stderr)
        return 2
    try:
        return 0 if all([recompute(path) for path in paths]) else 1
    except (OSError, ValueError) as error:
        print(error, file=sys.stderr)
        return 2


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
