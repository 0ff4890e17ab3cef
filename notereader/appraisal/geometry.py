"""Geometry of tendon and joint: travel, Landsmeer's three models, belt friction. Angles in degrees, lengths in mm."""

from math import exp, radians, sin, tan

from notereader.appraisal.glide_tables import glide_tables


def travel(arm_mm: float, angle_deg: float) -> float:
    """Return the travel of a tendon held close to a joint, E = r x angle (Landsmeer's first model), mm."""
    return arm_mm * radians(angle_deg)


def travel_free(arm_mm: float, angle_deg: float) -> float:
    """Return the travel of a tendon that cuts the corner, E = 2 r sin(angle/2) (Landsmeer's second model), mm."""
    return 2 * arm_mm * sin(radians(angle_deg) / 2)


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


def bowstring(opening_mm: float) -> tuple[float, float]:
    """Return (extra travel in mm, motion lost in degrees) at the middle joint if nothing holds over an opening.

    The opening lengthens the distance from joint to pulley edge. The lost motion is what the intact travel no longer
    reaches. Both are upper bounds: neighbouring pulleys that hold make them nought.
    """
    table = glide_tables().bowstring
    intact = travel_bowed(table.d_mm, table.y_mm, table.angle_deg)
    opened = travel_bowed(table.d_mm, table.y_mm + opening_mm, table.angle_deg)
    return opened - intact, table.angle_deg - _angle_for(table.d_mm, table.y_mm + opening_mm, intact)


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
