"""Where things lie on the drawn digit: shares of its length from the tip (0) to the forearm (100).

A drawing to point at, not a measured one. Pulleys over their joints and phalanges, zones I to V by the insertion of the
superficialis, the A1 pulley and the carpal tunnel: common practice, no source. Zones IA-IC and IIA-IID subdivide I and
II by the same landmarks: common practice, no source.
"""

from dataclasses import dataclass

from notereader.desktop.finger import Kind

Band = tuple[float, float]


@dataclass(frozen=True)
class Shape:
    """One kind of digit: half widths down its length, creases, and the stretches of zones, pulleys and tendons."""

    contour: tuple[tuple[float, float], ...]
    creases: tuple[float, ...]
    zones: dict[str, Band]
    parts_of_zones: dict[str, Band]
    pulleys: dict[str, Band]
    insertions: dict[str, float]

    def level(self, zone: str) -> float:
        """Return the middle of a zone or of a part of one."""
        top, bottom = self.parts_of_zones.get(zone) or self.zones[zone.rstrip("ABCD")]
        return (top + bottom) / 2


_FINGER = Shape(
    contour=(
        *((0, 8), (1.2, 16), (4, 24), (9, 28), (17, 28.5), (27, 29), (37, 32), (47, 31), (56, 34)),
        *((61, 42), (66, 51), (74, 56), (82, 54), (89, 47), (94, 44), (100, 44)),
    ),
    creases=(17.5, 37.5, 57),
    zones={"I": (5, 31), "II": (31, 68), "III": (68, 82), "IV": (82, 91), "V": (91, 100)},
    parts_of_zones={
        "IA": (6, 13),
        "IB": (13, 25),
        "IC": (25, 31),
        "IIA": (31, 38),
        "IIB": (38, 46),
        "IIC": (46, 58),
        "IID": (58, 68),
    },
    pulleys={
        "A5": (15.5, 18.5),
        "C3": (20.5, 22.5),
        "A4": (25, 31),
        "C2": (33, 35),
        "A3": (36.5, 39.5),
        "C1": (41, 43),
        "A2": (46, 58),
        "A1": (61, 67),
    },
    insertions={"FDP": 8, "FDS": 31},
)
_THUMB = Shape(
    contour=(
        *((0, 12), (1.5, 23), (5, 32), (12, 37), (20, 36), (29, 34.5), (38, 33), (48, 34), (56, 38)),
        *((63, 47), (71, 55), (80, 56), (88, 49), (94, 45), (100, 45)),
    ),
    creases=(29, 57),
    zones={"I": (6, 29), "II": (29, 64), "III": (64, 82), "IV": (82, 91), "V": (91, 100)},
    parts_of_zones={},
    pulleys={"A2": (26, 32), "oblique": (37, 49), "variable": (51.5, 54.5), "A1": (57, 63)},
    insertions={"FPL": 10},
)
_WRIST = Shape(
    contour=((0, 58), (10, 58), (22, 57), (34, 53), (46, 47), (58, 45), (72, 46), (86, 49), (100, 52)),
    creases=(46,),
    zones={"III": (2, 24), "IV": (24, 46), "V": (46, 98)},
    parts_of_zones={},
    pulleys={"flexor retinaculum": (24, 46)},
    insertions={"FCR": 18, "PL": 34, "FCU": 36},
)
SHAPES: dict[Kind, Shape] = {"finger": _FINGER, "thumb": _THUMB, "wrist": _WRIST}
# The usual tendons of each kind: drawn faintly where the record does not tell of them.
USUAL_TENDONS: dict[Kind, tuple[str, ...]] = {"finger": ("FDP", "FDS"), "thumb": ("FPL",), "wrist": ()}
