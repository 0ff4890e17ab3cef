"""Geometry of tendon and joint: travel, Landsmeer's models, belt friction. Angles in degrees, lengths in mm."""

from dataclasses import dataclass
from math import exp, radians, tan

from notereader.appraisal.glide_tables import glide_tables


def travel(arm_mm: float, angle_deg: float) -> float:
    """Return the travel of a tendon held close to a joint, E = r x angle (Landsmeer's first model), mm."""
    return arm_mm * radians(angle_deg)


def travel_bowed(d_mm: float, y_mm: float, angle_deg: float) -> float:
    """Return the travel of a tendon held at a distance from the joint (Landsmeer's third model), mm.

    E = d x angle + 2 y [1 - (angle/2) / tan(angle/2)], with d the offset of the tendon at the pulley edge and y the
    distance from joint to pulley edge.
    """
    half = radians(angle_deg) / 2
    if half == 0:
        return 0.0
    return d_mm * 2 * half + 2 * y_mm * (1 - half / tan(half))


def arm_bowed(d_mm: float, y_mm: float, angle_deg: float) -> float:
    """Return the moment arm in Landsmeer's third model at an angle, mm: the slope of travel_bowed against the angle."""
    step = 1e-4
    rise = travel_bowed(d_mm, y_mm, angle_deg + step) - travel_bowed(d_mm, y_mm, angle_deg - step)
    return rise / radians(2 * step)


@dataclass(frozen=True, slots=True)
class Bowing:
    """What an opening does at the middle joint if nothing holds the tendon over it; all are upper bounds."""

    extra_mm: float
    lost_deg: float
    arm_mm: float
    intact_arm_mm: float


def bowstring(opening_mm: float) -> Bowing:
    """Return the bowing at the middle joint over an opening that nothing holds.

    The opening lengthens the distance from joint to pulley edge. The lost motion is what the intact travel no longer
    reaches; the arms are those at the angle of the table. Neighbouring pulleys that hold make all of it nought.
    """
    table = glide_tables().bowstring
    d, y, angle = table.d_mm, table.y_mm, table.angle_deg
    intact = travel_bowed(d, y, angle)
    return Bowing(
        extra_mm=travel_bowed(d, y + opening_mm, angle) - intact,
        lost_deg=angle - _angle_for(d, y + opening_mm, intact),
        arm_mm=arm_bowed(d, y + opening_mm, angle),
        intact_arm_mm=arm_bowed(d, y, angle),
    )


def _angle_for(d_mm: float, y_mm: float, wanted_mm: float) -> float:
    """Return the angle at which the bowed travel reaches a length, by halving; the travel rises with the angle."""
    low, high = 0.0, glide_tables().bowstring.angle_deg
    for _ in range(60):
        middle = (low + high) / 2
        if travel_bowed(d_mm, y_mm, middle) < wanted_mm:
            low = middle
        else:
            high = middle
    return high


def friction_loss(mu: float, angle_deg: float) -> float:
    """Return the share of force lost round a pulley by belt friction, 1 - exp(-mu x angle)."""
    return 1 - exp(-mu * radians(angle_deg))
