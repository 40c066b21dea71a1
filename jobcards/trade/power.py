"""Power: what a cut asks of the motor, the torque at the spindle, and the speeds that pulleys give.

Unit power here is power at the cutter for each unit of metal a minute, with a sharp tool. A worn tool asks a quarter
to a half more; a belt drive passes on about four fifths of the motor's power.
"""

import math

from jobcards.source import ARITHMETIC, COMMON, published
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive

FOOT_POUNDS_A_MINUTE = 33000  # one horsepower, by definition
WATT_SECONDS_PER_MM3 = 2.7303239  # one hp for each in³/min: 745.69987 W × 60 s over 16387.064 mm³


def fraction(efficiency: float) -> None:
    """Refuse an efficiency that is not above 0 and at most 1."""
    positive(efficiency=efficiency)
    if efficiency > 1:
        raise CannotBeDone(f"an efficiency of {efficiency:g} gives back more than it takes; write 0.8 for 80 percent")


@formula(title="Power at the cutter, inch", text="power = removal_rate * unit_power", source=COMMON)
def power_inch(removal_rate: float, unit_power: float) -> float:
    """Power that a cut asks at the cutter.

    Args:
        removal_rate [in³/min]: metal removed
        unit_power [hp/(in³/min)]: unit power at a sharp cutter, from the materials table
    Returns [hp]: power at the cutter
    Raises CannotBeDone: when the rate is less than zero or the unit power not more than zero.

    >>> round(power_inch(0.25, 0.8), 3)
    0.2
    """
    not_negative(removal_rate=removal_rate)
    positive(unit_power=unit_power)
    return removal_rate * unit_power


@formula(title="Power at the cutter, metric", text="power = removal_rate * unit_power / 60000", source=COMMON)
def power_metric(removal_rate: float, unit_power: float) -> float:
    """Power that a cut asks at the cutter.

    Args:
        removal_rate [mm³/min]: metal removed
        unit_power [W·s/mm³]: unit power, also called specific cutting energy
    Returns [kW]: power at the cutter
    Raises CannotBeDone: when the rate is less than zero or the unit power not more than zero.

    >>> round(power_metric(26602, 4), 2)
    1.77
    """
    not_negative(removal_rate=removal_rate)
    positive(unit_power=unit_power)
    return removal_rate * unit_power / 60000


@formula(
    title="Unit power, metric from inch",
    text="metric = unit_power * 2.7303239",
    source=published("NIST Special Publication 811", "2008", "appendix B.8, horsepower and inch"),
)
def unit_power_metric(unit_power: float) -> float:
    """Unit power in metric units.

    Args:
        unit_power [hp/(in³/min)]: unit power
    Returns [W·s/mm³]: the same unit power
    Raises CannotBeDone: when it is not more than zero.

    >>> round(unit_power_metric(1), 3)
    2.73
    """
    positive(unit_power=unit_power)
    return unit_power * WATT_SECONDS_PER_MM3


@formula(title="Motor power for a cut", text="motor = power / efficiency", source=COMMON)
def motor_power(power: float, efficiency: float) -> float:
    """Power that the motor must give, in the unit of the power at the cutter.

    Args:
        power [hp]: power at the cutter (or kW; the result is in the same unit)
        efficiency [1]: part of the motor's power that reaches the cutter, about 0.8
    Returns [hp]: power at the motor
    Raises CannotBeDone: when the power is less than zero or the efficiency not between 0 and 1.

    >>> motor_power(0.8, 0.8)
    1.0
    """
    not_negative(power=power)
    fraction(efficiency)
    return power / efficiency


@formula(
    title="Metal a motor can remove",
    text="removal_rate = motor * efficiency / unit_power",
    source=COMMON,
)
def removal_for_motor(motor: float, efficiency: float, unit_power: float) -> float:
    """The most metal a minute that a motor has the power for.

    Args:
        motor [hp]: power of the motor
        efficiency [1]: part of it that reaches the cutter, about 0.8
        unit_power [hp/(in³/min)]: unit power at the cutter
    Returns [in³/min]: removal rate
    Raises CannotBeDone: when a value is not more than zero or the efficiency is more than 1.

    >>> removal_for_motor(1, 0.8, 0.8)
    1.0
    """
    positive(motor=motor, unit_power=unit_power)
    fraction(efficiency)
    return motor * efficiency / unit_power


@formula(title="Torque, inch", text="torque = 33000 * power / (2 * pi * rpm)", source=ARITHMETIC)
def torque_inch(power: float, rpm: float) -> float:
    """Torque of a power at a speed: what turns in the vise, slips in the chuck or shears a key.

    Args:
        power [hp]: power
        rpm [rpm]: spindle speed
    Returns [lb·ft]: torque
    Raises CannotBeDone: when the power is less than zero or the speed not more than zero.

    >>> round(torque_inch(1, 700), 2)
    7.5
    """
    not_negative(power=power)
    positive(rpm=rpm)
    return FOOT_POUNDS_A_MINUTE * power / (2 * math.pi * rpm)


@formula(title="Torque, metric", text="torque = 60000 * power / (2 * pi * rpm)", source=ARITHMETIC)
def torque_metric(power: float, rpm: float) -> float:
    """Torque of a power at a speed.

    Args:
        power [kW]: power
        rpm [rpm]: spindle speed
    Returns [N·m]: torque
    Raises CannotBeDone: when the power is less than zero or the speed not more than zero.

    >>> round(torque_metric(1.7735, 700), 1)
    24.2
    """
    not_negative(power=power)
    positive(rpm=rpm)
    return 60000 * power / (2 * math.pi * rpm)


@formula(title="Speed of a driven pulley", text="rpm = motor_rpm * driver / driven", source=ARITHMETIC)
def pulley_speed(motor_rpm: float, driver: float, driven: float) -> float:
    """Speed of a shaft driven by a belt, before the belt slips.

    Args:
        motor_rpm [rpm]: speed of the driving shaft
        driver [length]: diameter of the driving pulley
        driven [length]: diameter of the driven pulley
    Returns [rpm]: speed of the driven shaft
    Raises CannotBeDone: when a value is not more than zero.

    >>> round(pulley_speed(1725, 1.125, 4))
    485
    """
    positive(motor_rpm=motor_rpm, driver=driver, driven=driven)
    return motor_rpm * driver / driven
