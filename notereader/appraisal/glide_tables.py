"""The figures for travel, friction and pulleys, read from glide.toml."""

from functools import cache

from pydantic import Field

from notereader.appraisal.figures import Sourced, Status, Table, load


class Arms(Table):
    """Moment arms of one digit in one published set, mm by tendon and joint."""

    set: str
    digit: str
    FDP: dict[str, float] = Field(default_factory=dict)
    FDS: dict[str, float] = Field(default_factory=dict)
    FPL: dict[str, float] = Field(default_factory=dict)


class ArmSource(Sourced):
    """Where a set of moment arms comes from."""

    set: str


class Fist(Sourced):
    """Joint angles of a full fist, degrees of flexion."""

    MCP: float
    PIP: float
    DIP: float
    IP: float
    thumb_mcp: float


class Delivered(Sourced):
    """What low-tension motion delivers of the theory, as a share."""

    low: float
    high: float
    words: str


class Measured(Sourced):
    """One measured travel, mm."""

    label: str
    mm: float
    spread: float | None = None


class Angles(Table):
    """A range of degrees."""

    low: float
    high: float


class UsualSplint(Sourced):
    """Splint angles in usual use."""

    mcp: Angles
    ip: Angles


class Friction(Sourced):
    """Belt friction at the pulleys."""

    low: float
    high: float
    angles: tuple[float, ...]
    words: str


class SutureFriction(Sourced):
    """Friction of one suture material."""

    material: str
    mu: float


class Bowstring(Sourced):
    """Landsmeer's third model at the middle joint."""

    d_mm: float
    y_mm: float
    angle_deg: float
    words: str


class Widths(Table):
    """Widths of the annular pulleys of a finger, mm."""

    mm: dict[str, float]
    source: str
    status: Status
    longest_factor: float


class Limit(Sourced):
    """One published sentence about opened pulleys."""

    when: str
    words: str


class Window(Table):
    """Published limit for one opening, mm."""

    low_mm: float
    high_mm: float


class GlideSentences(Table):
    """Sentences of the glide part."""

    suture_friction: str
    measured: str
    at_the_end: str
    stops: str
    fist: str
    splint: str
    splint_unknown: str
    thumb_splint: str
    no_splint: str
    immobilised: str
    no_arms: str


class GlideTables(Table):
    """Everything in glide.toml."""

    arms: tuple[Arms, ...]
    arm_source: tuple[ArmSource, ...]
    fist: Fist
    delivered: Delivered
    measured: tuple[Measured, ...]
    usual_splint: UsualSplint
    friction: Friction
    friction_suture: tuple[SutureFriction, ...]
    bowstring: Bowstring
    widths: Widths
    limit: tuple[Limit, ...]
    window: Window
    sentences: GlideSentences


@cache
def glide_tables() -> GlideTables:
    """Return the figures for travel, friction and pulleys."""
    return load("glide.toml", GlideTables)
