"""Recomputes the numbers of a JSON worksheet from its own inputs and compares them.

Usage: python3 recompute.py worksheet.json [...]

A second implementation, written from the formulas of the specification alone, with the standard
library only. It reads `inputs` and recomputes what follows from them: pack_by_charge, brake_map,
limits with their constraints and charge bounds and heat here; drive, thrust_map, sag, range and
what concerns several packs in driving.py; one pack or several are modelled in packs.py. It also
checks the rules that any worksheet must keep: schema, names that end in a unit, no null and no NaN,
verdict and findings that agree. For each group the worst relative difference is printed, then every
difference beyond the tolerance: 1e-9 relative; 1e-8 for top speeds, which both sides iterate; 1e-6
for heat, which is integrated here step by step (Runge-Kutta) where the worksheet solves it in
closed form; 1e-4 for rides, which both sides integrate, each in its own way.

Exit status: 0 when all agree, 1 otherwise, 2 when a file cannot be read.

Units are SI, temperatures in degrees Celsius, charge states fractions. Names follow the
specification: u(s) and r(s,T) of a cell, U(s) and R(s,T) of the pack, k the share of the strongest
of several unequal parallel cells.
"""

import json
import math
import sys
from collections import defaultdict
from functools import cached_property, lru_cache

sys.dont_write_bytecode = True  # the modules beside this one stay alone in their folder

from driving import compare_driving
from formulas import (
    COPPER_COEFFICIENT,
    GRAVITY,
    PULSE,
    NOTHING,
    air_density,
    driving_current,
    pulse_draw,
    pulse_return,
    root,
    settled,
)
from packs import Battery, values_under

TOLERANCE = 1e-9
HEAT_TOLERANCE = 1e-6
SPEED_TOLERANCE = 1e-8  # a top speed is found by iteration on both sides
# to the shortest time constant; the error of the fourth-order rule is 1/(120 * 20**4) = 5e-8 of it
STEPS_AS_QUICK = 20

class Vehicle:
    """The inputs of a worksheet and the formulas of the specification on them."""

    def __init__(self, inputs):
        self.inputs = inputs
        self.values = values_under(inputs)
        self.battery = Battery(inputs)
        self.open_circuit, self.resistance = self.battery.open_circuit, self.battery.resistance
        self.pack_temperature = self.battery.temperature
        self.margins = {
            name: self["margins." + name]
            for name in ("trip", "rating", "cell", "fuse", "overvoltage")
        }
        self.ambient = self["use.ambient"]
        self.motors = self["drive.motors"]
        self.controllers = self["controller.count"]
        self.wheel_radius = self["vehicle.wheel_diameter"] / 2
        self.reduction = self["drive.reduction"]
        self.efficiency = self["drive.efficiency"]
        self.controller_efficiency = self["controller.efficiency"]
        self.mass = self["rider.mass"] + self["vehicle.mass"] + self.get("vehicle.cargo", 0.0)
        self.weight = self.mass * GRAVITY
        self.emf = 60 / (2 * math.pi * self["motor.kv"])  # [V.s/rad], line to line
        basis = self["controller.current_basis"]
        self.sinusoidal = basis != "dc-equivalent"
        # a phase current is told by its peak, or by its effective value, 1/sqrt(2) of it
        self.peak = math.sqrt(2) if basis == "phase-rms" else 1.0
        self.torque_constant = self.emf * (
            math.sqrt(3) / 2 * self.peak if self.sinusoidal else 1.0
        )
        self.cold_winding = self["motor.resistance"]  # at 20 degC
        self.loss_share = 3 / 4 * self.peak**2 if self.sinusoidal else 1.0
        self.pole_pairs = self.get("motor.pole_pairs")
        self.inductance = self.get("motor.inductance", 0.0)
        self.no_load_torque = self.emf * self.get("motor.no_load_current", 0.0)
        self.viscous_drag = self.get("motor.viscous_drag", 0.0)
        # a share of the brakes recurs in each stop, a charge state in several tables
        for name in ("steepness", "grip_beside", "top_speed", "time_to_limit", "set_pack"):
            setattr(self, name, lru_cache(maxsize=None)(getattr(self, name)))

    def __getitem__(self, key):
        return self.values[key]

    def __contains__(self, key):
        return key in self.values

    def get(self, key, default=None):
        return self.values.get(key, default)

    def changed(self, values):
        """The same vehicle with other values of some inputs."""
        inputs = dict(self.inputs)
        for key, value in values.items():
            inputs[key] = {**inputs[key], "value": value}
        return Vehicle(inputs)

    def with_cells_at(self, celsius):
        """The same vehicle with packs of another temperature."""
        other = Vehicle(self.inputs)
        other.pack_temperature = celsius
        return other

    def chosen(self, key):
        """Whether an input stands in the build file, not assumed."""
        return key in self and self.inputs[key]["from"] == "file"

    # --- cell and pack

    def controllers_bound(self):
        return (
            (1 - self["margins.rating"]) * self["controller.pack_current_rating"] * self.controllers
        )

    def take_fixed(self, temperature):
        """What the packs together may take whatever their charge state."""
        bounds = self.battery.fixed(True, temperature, self.braking_time, self.margins)
        bounds["controller-pack-rating"] = self.controllers_bound()
        return bounds

    def give_fixed(self, temperature):
        """What the packs together may give whatever their charge state."""
        bounds = self.battery.fixed(False, temperature, self["use.hard_pull"], self.margins)
        bounds["controller-pack-rating"] = self.controllers_bound()
        return bounds

    def take_gaps(self, temperature):
        """Charge-dependent bounds on taking, as voltage gap(s) and resistance(s) of each."""
        seconds = max(PULSE, self.braking_time(self.set_pack("settings.pack_regen_current")))
        gaps = self.battery.gaps(True, temperature, self.margins, self.braking_time, seconds)
        ceiling = self.controller_ceiling()
        gaps["controller-voltage-rating"] = (
            lambda s: ceiling - self.open_circuit(s),
            lambda s: self.resistance(s, temperature, seconds, True),
        )
        return gaps

    @property
    def highest_speed(self):
        """That in use, or a speed cap above it."""
        return max(self["use.speed_max"], self.get("settings.speed_cap", 0.0))

    def braking_time(self, current, battery=None):
        """How long a current can be sent back: hard braking, or the energy of a stop or a slope.

        All of the motion's energy, or what the steepest slope gives over its length beyond rolling,
        over the power at the voltage at rest of the emptiest charge in use.
        """
        power = (battery or self.battery).open_circuit(self["use.charge_to"]) * current
        moving = 0.5 * self.mass * (1 + self["vehicle.rotating_share"]) * self.highest_speed**2
        angle = math.atan(self["use.slope_max"])
        rolling = self["vehicle.rolling_resistance"] * math.cos(angle)
        falling = self.mass * GRAVITY * self["use.slope_length"] * (math.sin(angle) - rolling)
        energy = max(moving, falling)
        return max(self["use.hard_brake"], energy / power if power > 0 else math.inf)

    def give_gaps(self, temperature):
        """Charge-dependent bounds on giving, as voltage gap(s) and resistance(s) of each."""
        return self.battery.gaps(False, temperature, self.margins, self["use.hard_pull"])

    @staticmethod
    def at_charge(fixed, gaps, charge):
        """All bounds at one charge state; a floor at or past zero gives 0."""
        bounds = dict(fixed)
        for name, (gap, resistance) in gaps.items():
            bounds[name] = max(0.0, gap(charge) / resistance(charge))
        return bounds

    def allowed_stretch(self, gaps, current, bends):
        """Charge states at which every gap bears a current: (first loss going up, last gain).

        Between two knots of one pack gap(s) - current * resistance(s) is straight, so each stretch
        holds at most one crossing, found without iteration; with several packs in parallel it
        bends a little, and the stretches are made short. Returns the highest state up to which all
        of them hold from charge 0 on, and the lowest from which all hold up to charge 1.
        """
        knots = bends
        if self.battery.several and self.battery.parallel:
            pieces = [s0 + (s1 - s0) * i / 8 for s0, s1 in zip(knots, knots[1:]) for i in range(8)]
            knots = [*pieces, 1.0]
        bad = []
        for gap, resistance in gaps.values():
            def over(s, gap=gap, resistance=resistance):
                whole = gap(s)
                left = whole - current * resistance(s)
                # a limit that is asked of itself leaves nothing but rounding
                return 0.0 if abs(left) <= 1e-12 * abs(whole) else left

            left = [over(s) for s in knots]
            for (s0, y0), (s1, y1) in zip(zip(knots, left), list(zip(knots, left))[1:]):
                if y0 >= 0 and y1 >= 0:
                    continue
                crossing = None
                if (y0 < 0) != (y1 < 0):
                    crossing = s0 + (s1 - s0) * y0 / (y0 - y1)
                    if self.battery.several:
                        crossing = root(over, s0, s1)
                bad.append((s0 if y0 < 0 else crossing, s1 if y1 < 0 else crossing))
        below = min((start for start, _ in bad), default=1.0)
        above = max((end for _, end in bad), default=0.0)
        return below, above

    # --- motor and powertrain

    @cached_property
    def winding(self):
        """Terminal-to-terminal resistance of a winding as warm as the air."""
        return self.winding_resistance(self.ambient)

    @cached_property
    def loss(self):
        """R_e of a winding as warm as the air."""
        return self.loss_resistance(self.ambient)

    def winding_resistance(self, temperature):
        """Terminal-to-terminal resistance."""
        return self.cold_winding * (1 + COPPER_COEFFICIENT * (temperature - 20))

    def loss_resistance(self, temperature):
        """R_e: copper loss per square of the motor current."""
        return self.winding_resistance(temperature) * self.loss_share

    def drag_torque(self, omega):
        return self.no_load_torque + self.viscous_drag * omega

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
        if not self.sinusoidal:
            return self.emf * omega + self.winding * current
        current = self.peak * current
        electrical = self.pole_pairs * omega
        along = self.flux * electrical + self.winding / 2 * current
        across = electrical * self.inductance * current
        return math.sqrt(3) * math.hypot(along, across)

    @cached_property
    def flux(self):
        """Flux linkage of a phase, peak."""
        return self.emf / (math.sqrt(3) * self.pole_pairs)

    @cached_property
    def air(self):
        """Drag over the square of the speed through the air."""
        density = air_density(self["use.altitude"], self.ambient)
        return 0.5 * density * self["vehicle.drag_area"]

    def steepness(self, slope):
        """Part of the weight that rolling and climbing take."""
        angle = math.atan(slope)
        return self["vehicle.rolling_resistance"] * math.cos(angle) + math.sin(angle)

    def resistance_force(self, speed, slope=0.0, headwind=0.0):
        wind = speed + headwind
        return self.weight * self.steepness(slope) + self.air * wind * abs(wind)

    def set_pack(self, key):
        return self[key] * self.controllers

    def drive_currents(self, speed, charge, seconds=PULSE):
        """Motor current each bound permits at a speed and charge state."""
        u = self.open_circuit(charge)
        r = self.resistance(charge, self.pack_temperature, seconds)
        omega = self.motor_speed(speed)
        loss = self.loss
        emf = self.torque_constant * omega

        def pack_power(current):
            return self.motors * (emf * current + loss * current**2) / self.controller_efficiency

        asked = settled(
            self.set_pack("settings.pack_discharge_current"),
            self.get("settings.low_voltage_taper"),
            u,
            r,
        )
        peak = u / (2 * r)
        most = min(asked, peak)
        per_motor = most * (u - most * r) * self.controller_efficiency / self.motors
        by_pack = driving_current(emf, loss, per_motor)

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

    def top_speed(self, charge, slope=0.0, headwind=0.0, seconds=PULSE):
        """Speed at which the largest thrust meets the resistance."""

        def surplus(speed):
            current = min(self.drive_currents(speed, charge, seconds).values())
            resisting = self.resistance_force(speed, slope, headwind)
            return self.drive_force(current, speed) - resisting

        if surplus(0.0) <= 0:
            return 0.0
        high = 1.0
        while surplus(high) > 0:
            high *= 2
        return root(surplus, 0.0, high)

    def return_limit(self, charge):
        """Set pack regen current, with what a high-voltage taper leaves of it at rest."""
        limit = self.set_pack("settings.pack_regen_current")
        taper = self.get("settings.high_voltage_taper")
        if taper is None or limit == 0:
            return limit
        begins, ends = taper
        u = self.open_circuit(charge)
        r = self.resistance(charge, self.pack_temperature, into=True)
        if u + limit * r <= begins:
            return limit
        return max(0.0, limit * (ends - u) / (ends - begins + limit * r))

    def brake_currents(self, charge, speed, limit=None, share=1.0):
        """Asked pack current, pack current and motor current of braking.

        With a share of the brake current that is set, while it builds up.
        """
        u = self.open_circuit(charge)
        back = self.resistance(charge, self.pack_temperature, into=True)
        emf = self.torque_constant * self.motor_speed(speed)
        loss = self.loss

        def pack_current(motor_current):
            power = self.motors * (emf * motor_current - loss * motor_current**2)
            if power >= 0:
                return pulse_return(u, back, power * self.controller_efficiency)
            r = self.resistance(charge, self.pack_temperature)
            drawn = pulse_draw(u, r, -power / self.controller_efficiency)
            return -math.inf if drawn is None else -drawn

        top = self["settings.motor_brake_current"]
        if speed < self["controller.brake_ends_below"]:
            top = 0.0  # the controllers have ended the brake: only the motors' drag is left of it
        current = share * top
        if current > emf / loss:  # braking draws, and no more than the pack can give
            r = self.resistance(charge, self.pack_temperature)
            most = u * u / (4 * r) * self.controller_efficiency / self.motors
            current = min(current, (emf + math.sqrt(emf**2 + 4 * loss * most)) / (2 * loss))
        asked = pack_current(current)
        if limit is None:
            limit = self.set_pack("settings.pack_regen_current")
        flowing = asked
        peak = emf / (2 * loss)
        # The motor current builds up from 0 and stops where the returned power first reaches the
        # limit, also when it would fall below the limit again beyond its peak.
        if (asked if current <= peak else pack_current(peak)) > limit:
            per_motor = limit * (u + limit * back) / (self.motors * self.controller_efficiency)
            current = 2 * per_motor / (emf + math.sqrt(emf**2 - 4 * loss * per_motor))
            flowing = limit
        return asked, flowing, current

    def brake_point(self, charge, speed, limit=None):
        """Asked pack current, pack current, motor current, cell voltage and force of braking."""
        asked, flowing, current = self.brake_currents(charge, speed, limit)
        if flowing == -math.inf:  # the pack cannot supply that power: no current, no voltage
            return {
                "asked_pack_current_A": NOTHING,
                "pack_current_A": NOTHING,
                "motor_current_A": current,
                "cell_voltage_V": NOTHING,
                "wheel_force_N": self.brake_force(current, speed),
            }
        cells = self.battery.cell_voltages(
            -flowing, charge, self.pack_temperature, taking=flowing >= 0
        )
        cell = max(cells) if flowing >= 0 else min(cells)
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

    def case_loss(self, speed=None):
        """Loss outside the winding; at the highest speed that is met where no other is given."""
        omega = self.motor_speed(self.highest_speed if speed is None else speed)
        return self.drag_torque(omega) * omega

    def continuous_current(self, speed=None):
        """Motor current whose steady state is the winding limit."""
        limit = self["motor.winding_limit"]
        to_case, to_air = self["motor.winding_to_case"], self["motor.case_to_air"]
        rise = limit - self.ambient - to_air * self.case_loss(speed)
        if rise <= 0:
            return 0.0
        return math.sqrt(rise / (self.loss_resistance(limit) * (to_case + to_air)))

    def heat_slopes(self, current, speed=None):
        """Slopes of the winding and the case temperature at a motor current."""
        to_case, to_air = self["motor.winding_to_case"], self["motor.case_to_air"]
        winding, case = self["motor.winding_heat_capacity"], self["motor.case_heat_capacity"]
        loss = self.case_loss(speed)
        square = current**2

        ambient, loss_resistance = self.ambient, self.loss_resistance

        def slopes(hot, shell):
            flow = (hot - shell) / to_case
            copper = loss_resistance(hot) * square
            return (copper - flow) / winding, (flow - (shell - ambient) / to_air + loss) / case

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
        steps = max(40, math.ceil(duration / (self.quickest() / STEPS_AS_QUICK)))
        hot = shell = self.ambient
        for _ in range(steps):
            hot, shell = self.step(slopes, hot, shell, duration / steps)
        return hot

    def time_to_limit(self, current, speed=None):
        """Time in which a cold winding reaches its limit; None when it never does."""
        limit = self["motor.winding_limit"]
        if current <= self.continuous_current(speed):
            return None
        slopes = self.heat_slopes(current, speed)
        climb = slopes(self.ambient, self.ambient)[0]
        dt = min(self.quickest() / STEPS_AS_QUICK, (limit - self.ambient) / climb / 40)
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

        def above(current):
            return self.winding_after(current, duration) - limit

        low, high = 0.0, max(1.0, self.continuous_current())
        f_low, f_high = above(low), above(high)
        if f_low >= 0:
            return 0.0
        while f_high < 0:
            low, f_low, high = high, f_high, 2 * high
            f_high = above(high)
        # the winding temperature is smooth in the current: secant with bracket, 60 steps at most
        for _ in range(60):
            guess = high - f_high * (high - low) / (f_high - f_low)
            f_guess = above(guess)
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

    def grip_beside(self, friction):
        """Force at which a driven wheel slides while the friction brake slows by so much.

        Sought by halving, from the loads of both axles: the friction brake takes the same part of
        the grip of each.
        """
        weight = self.weight
        grip = self["vehicle.grip"]
        wheelbase = self["vehicle.wheelbase"]

        def spare(force):
            moment = weight * self["vehicle.mass_centre_from_front"]
            moment -= (force + self.mass * friction) * self["vehicle.mass_centre_height"]
            rear = min(weight, max(0.0, moment / wheelbase))
            axle = self["vehicle.driven_axle"]
            driven = weight if axle == "both" else rear if axle == "rear" else weight - rear
            return (grip - friction / GRAVITY) * driven - force

        return root(spare, 0.0, 2 * grip * weight) if spare(0.0) > 0 else 0.0

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
            force = self.weight * fraction
            if braking and name != "grip":
                # the rider and the vehicle feel the whole deceleration: the road brakes too
                road = self.resistance_force(self.highest_speed)
                turning = 1 + self["vehicle.rotating_share"]
                force = max(0.0, turning * force - road)
            lever = self.wheel_radius / (self.motors * self.reduction)
            if braking:
                # drag brakes beside the current, most of all at the highest speed in use
                drag = self.drag_torque(self.motor_speed(self.highest_speed))
                torque = force * lever * self.efficiency - drag
            else:  # pulling away, where the motors hardly turn
                torque = force * lever / self.efficiency + self.drag_torque(0.0)
            bounds[name] = max(0.0, torque / self.torque_constant)
        if braking:
            bounds.update(self.overshoots())
        return bounds

    def overshoots(self):
        """Motor brake current that just meets a trip quicker than the regen limiter.

        Until the limiter acts the pack takes what the motors return at the highest speed; the
        smaller root of n (emf I - R_e I^2) eta_c = I_t (U + I_t R), least over cells and, for a
        charge trip, over the charge; an over-voltage trip bounds it at the lowest charge in use.
        """
        bounds = {}
        top = self.highest_speed
        emf = self.torque_constant * self.motor_speed(top)
        loss = self.loss
        low, high = self["use.charge_to"], self["use.charge_from"]
        charges = [low, high, *(s for s in self.battery.knots() if low < s < high)]
        coldest, warmest = self["use.pack_temperature"]
        own = self.pack_temperature
        for i, pack in enumerate(self.battery.packs):
            quick = {
                name
                for name in ("charge_trip", "cell_overvoltage_trip")
                if "protection." + name in pack
                and pack.get(f"protection.{name}_delay", math.inf)
                < self["controller.regen_response"]
            }
            if not quick:
                continue
            least = math.inf

            def power(permitted, s, t):
                back = self.resistance(s, t, into=True)
                return permitted * (self.open_circuit(s) + permitted * back)

            for t in {own, min(own, coldest), max(own, warmest)}:
                if "charge_trip" in quick:
                    permitted = (1 - self.margins["trip"]) * pack["protection.charge_trip"]
                    permitted /= self.battery.greatest_share(i, t, True)
                    least = min(least, *(power(permitted, s, t) for s in charges))
                if "cell_overvoltage_trip" in quick:
                    gap, resistance = self.battery.gaps(True, t, self.margins, self.braking_time)[
                        self.battery.label("protection-overvoltage-trip", i)
                    ]
                    permitted = max(0.0, gap(low) / resistance(low))
                    least = min(least, power(permitted, low, t))
            each = least / (self.motors * self.controller_efficiency)
            under = emf**2 - 4 * loss * each
            name = self.battery.label("regen-overshoot", i)
            bounds[name] = 2 * each / (emf + math.sqrt(under)) if under >= 0 else NOTHING
        return bounds

    def low_taper(self):
        ends = self.battery.ends(False, self.margins)
        coldest = self["use.pack_temperature"][0]
        band = self.set_pack("settings.pack_discharge_current") * self.resistance(
            self["use.charge_to"], coldest
        )
        end = max(ends.values())
        return [end + band, end], ends, band

    def high_taper(self):
        ends = self.battery.ends(True, self.margins)
        ends["controller-voltage-rating"] = self.controller_ceiling()
        coldest = self["use.pack_temperature"][0]
        band = self.set_pack("settings.pack_regen_current") * self.resistance(
            self["use.charge_from"], coldest, into=True
        )
        end = min(ends.values())
        return [end - band, end], ends, band

    def speed_bounds(self):
        per_volt = self.wheel_radius / (self.reduction * self.emf)
        return {
            "controller-back-emf": self.controller_ceiling() * per_volt,
            # the cap must hold down to the emptiest pack in use
            "pack-back-emf": self.open_circuit(self["use.charge_to"]) * per_volt,
        }


def is_number(node):
    return isinstance(node, (int, float)) and not isinstance(node, bool) and math.isfinite(node)


class Comparison:
    """Collects differences by group."""

    def __init__(self):
        self.worst = defaultdict(lambda: [0, 0.0])  # how many, and the worst of them
        self.faults = []

    def number(self, group, where, got, expected, tolerance=TOLERANCE, scale=0.0):
        """Compares a number of the worksheet with the recomputed one; None stands for absent."""
        tally = self.worst[group]
        if got is None and expected is None:
            return
        tally[0] += 1
        if got is None or expected is None or not is_number(got):
            self.faults.append(f"{group} {where}: worksheet {got}, recomputed {expected}")
            return
        size = max(abs(got), abs(expected), scale)
        difference = abs(got - expected) / size if size > 0 else 0.0
        tally[1] = max(tally[1], difference)
        if not difference <= tolerance:
            self.faults.append(
                f"{group} {where}: worksheet {got!r}, recomputed {expected!r}, rel {difference:.2e}"
            )

    def binds(self, group, where, name, bounds, tolerance=1e-9):
        """The named constraint must be one of the smallest."""
        real = {}
        for key, bound in bounds.items():  # of several packs any may be the one
            base = key.split("@")[0]
            if bound is not NOTHING:
                real[base] = min(bound, real.get(base, math.inf))
        least = min(real.values())
        if name not in real or abs(real[name] - least) > tolerance * max(1e-9, abs(least)):
            best = min(real, key=real.get)
            self.faults.append(f"{group} {where}: worksheet names {name}, recomputed {best}")
        self.worst[group][0] += 1

    def rule(self, holds, text):
        self.worst["rules"][0] += 1
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
            v.battery.packs[0].cell_resistance(v.battery.own_charges(s)[0], t),
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
                # next to the greatest power a pack gives, its current is a root of nearly zero
                drawn = (point["pack_current_A"] or 0.0) < 0
                tolerance = 1e-6 if drawn else TOLERANCE
                c.number("brake map", where, chart[name][i][j], point[name], tolerance, scale)


def compare_constraints(c, group, listed, bounds, loose=()):
    def key(entry):
        return f"{entry['id']}@{entry['pack']:g}" if "pack" in entry else entry["id"]

    got = {key(entry): entry.get("limit") for entry in listed}
    c.rule(len(got) == len(listed), f"{group} lists a constraint twice")
    for entry in listed:
        c.rule(bool(entry.get("source")), f"{group} constraint {entry['id']} has no source")
    for name in sorted(set(got) | set(bounds)):
        tolerance = HEAT_TOLERANCE if name in loose else TOLERANCE
        c.number(group, name, got.get(name), bounds.get(name), tolerance, scale=1.0)


def compare_least(c, group, limit, least, tolerance=TOLERANCE):
    """The nominal limit is the least of its constraints; with tolerances the limit is no higher."""
    c.number(group, "limit", limit.get("limit_nominal", limit["limit"]), least, tolerance)
    c.rule(limit["limit"] <= least * (1 + tolerance), f"{group} is above its nominal value")


def compare_wet(c, v, group, limit, dry):
    """Where the grip of a wet road is what holds the brake current down, it is told beside."""
    bounds = v.changed({"vehicle.grip": v["vehicle.grip_wet"]}).motor_bounds(True)
    least = min(b for b in bounds.values() if b is not NOTHING)
    if "limit_nominal" in limit:
        c.rule(limit.get("limit_wet", 0.0) <= least * (1 + HEAT_TOLERANCE), f"{group} is high in wet")
    elif abs(least - dry) > HEAT_TOLERANCE * dry:
        c.number(group, "limit_wet", limit.get("limit_wet"), least if least < dry else None)
        if least < dry:
            c.binds(group, "bound_by_wet", limit.get("bound_by_wet"), bounds)


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
        compare_least(c, group, limit, least, HEAT_TOLERANCE if loose else TOLERANCE)
        if braking:
            compare_wet(c, v, group, limit, least)
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
        compare_least(c, group, limit, least)
        c.number(group, "per_controller", limit["per_controller"], limit["limit"] / v.controllers)
        c.binds(group, "bound_by", limit["bound_by"], fixed)
        if "constraints_at_end_of_use" in limit:
            at_end = v.at_charge(fixed, gaps, v[end])
            compare_constraints(c, group + " at end", limit["constraints_at_end_of_use"], at_end)
        key = "settings." + name.replace("-", "_")
        c.number(group, "set", limit.get("set"), v.set_pack(key) if v.chosen(key) else None)
        side = 0 if name == "pack-regen-current" else 1
        if side == 0 and v.set_pack(key) > 0:
            seconds, back = v.braking_time(v.set_pack(key)), v.set_pack(key)
            c.number(group, "braking_time_s", limit["braking_time_s"], seconds)
            adds = seconds * back / (3600 * v.battery.capacity)
            c.number(group, "braking_adds_charge", limit["braking_adds_charge"], adds)
        word = "holds_below_charge" if side == 0 else "holds_above_charge"
        asked = [(word, least)]
        if v.chosen(key):
            asked.append(("set_" + word, v.set_pack(key)))
        for field, current in asked:
            bound = v.allowed_stretch(gaps, current, v.battery.bends(side == 0))[side]
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
        same = [end for key, end in ends.items() if key.split("@")[0] == limit["bound_by"]]
        named = binding(same) if same else None
        c.rule(
            named is not None and abs(named - best) <= 1e-9 * abs(best),
            f"{name} names {limit['bound_by']}, which does not bind",
        )

    if "speed-cap" in limits:
        limit = limits["speed-cap"]
        bounds = v.speed_bounds()
        compare_constraints(c, "limit speed-cap", limit["constraints"], bounds)
        compare_least(c, "limit speed-cap", limit, min(bounds.values()))
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


def compare_fuses(c, v, sheet):
    """What each fuse must break; and that it is told where it cannot, or nobody knows."""
    told = sheet.get("fuses", [])
    expected = v.battery.fuses()
    c.rule(len(told) == len(expected), "fuses lists another number of them")
    found = {(f["id"].split(":")[0], f.get("pack")): f["signal"] for f in sheet["findings"]}
    for entry, (prefix, pack, voltage, fault) in zip(told, expected):
        where = prefix.rstrip(".")
        c.rule(entry.get("pack") == pack, f"fuses {where} is told of another pack")
        c.number("fuses", where + " full_V", entry.get("full_V"), voltage)
        c.number("fuses", where + " short_circuit_A", entry.get("short_circuit_A"), fault)
        breaks = v.get(prefix + "fuse_voltage"), v.get(prefix + "fuse_breaking_capacity")
        c.number("fuses", where + " breaks_V", entry.get("breaks_V"), breaks[0])
        c.number("fuses", where + " breaks_A", entry.get("breaks_A"), breaks[1])
        for topic, signal, holds in (
            ("fuse-voltage-over", "danger", breaks[0] is not None and voltage > breaks[0]),
            ("fuse-breaking-over", "warning", breaks[1] is not None and fault > breaks[1]),
            ("fuse-breaking-unknown", "caution", None in breaks),
        ):
            got = found.get((topic, pack))
            c.rule(got == (signal if holds else None), f"{where}: {topic} is {got}")
    plugs = [k[: -len("plug_rating")] for k in v.inputs if k.endswith(".plug_rating")]
    bare = plugs and all(v.get(p + "plug_anti_spark") != "yes" for p in plugs)
    full = [p.series * p["cell.voltage_max"] for p in v.battery.packs]
    sparks = bare and (max(full) if v.battery.parallel else sum(full)) >= 25
    got = found.get(("plug-sparks", None))
    c.rule(got == ("notice" if sparks else None), f"plug-sparks is {got}")
    if any(topic == "fuse-voltage-over" for topic, _ in found):
        c.rule(sheet["verdict"] == "outside-limits", "a fuse cannot break, and all is well")


UNIT_ENDINGS = tuple(
    "_A _V _W _ohm _m _s _N _kg _K _C _Wh _km _m_per_s _m_per_s2 _Wh_per_km _Wh_per_mi".split()
)
UNITLESS = {
    "charge",
    "worst_charge",
    "safe_charge",
    "slope",
    "value",
    "tolerance",
    "limit",
    "limit_nominal",
    "limit_wet",
    "set",
    "set_per_controller",
    "per_controller",
    "climb_slope_held",
    "climb_slope_sustained",
    "end_of_use_charge",
    "holds_below_charge",
    "holds_above_charge",
    "set_holds_below_charge",
    "set_holds_above_charge",
    "held_down_to_charge",
    "taper_weakens_from_charge",
    "braking_adds_charge",
    "own_charge",
    "pack",
    "returned_share",
    "share_of_limit",
    "greatest_share_of_trip",
    "nominal",  # in tolerances a unit stands beside these
    "worst",
    "best",
    "severity",
    "low",
    "high",
    "severity_at_low",
    "severity_at_high",
    "safe_charge_at_low",
    "safe_charge_at_high",
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
        named = key in UNITLESS or (key or "").endswith(UNIT_ENDINGS)
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
    if verdict == "within-limits":
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
    compare_fuses(c, v, sheet)
    compare_driving(c, v, sheet)
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
