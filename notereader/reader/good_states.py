"""The good states of pulleys, tendons and repairs, by kind of mention: never told unless the note says so."""

GOOD_STATES = {
    "opened": frozenset(["intact", "repaired", "reconstructed"]),
    "extent": frozenset(["intact"]),
    "ends": frozenset(["clean"]),
    "glide": frozenset(["free"]),
    "gap": frozenset(["none"]),
    "tension": frozenset(["none"]),
    "bulk": frozenset(["none"]),
}
