"""Format version 1 of the record, written out once more by hand, so that fields.toml and models cannot drift."""

DIGITS = ["thumb", "index", "middle", "ring", "small"]
TENDONS = ["FDP", "FDS", "FPL", "FCR", "FCU", "PL"]
PULLEYS = ["A1", "A2", "A3", "A4", "A5", "C1", "C2", "C3", "variable", "oblique", "flexor retinaculum"]
STRUCTURES = [
    "digital nerve", "common digital nerve", "digital artery", "median nerve", "ulnar nerve", "radial nerve branch",
    "radial artery", "ulnar artery", "phalanx", "metacarpal", "volar plate", "collateral ligament", "joint",
    "extensor tendon",
]  # fmt: skip
MATERIALS = [
    "braided polyester", "polyblend", "polypropylene", "nylon", "polydioxanone", "polyglactin", "steel", "silk",
    "polybutester", "other",
]  # fmt: skip
STITCHES = [
    "kessler", "modified kessler", "double modified kessler", "kirchmayr", "tajima", "kessler-tajima", "pennington",
    "bunnell", "strickland", "cruciate", "locked cruciate", "adelaide", "savage", "modified savage", "lim-tsai",
    "m-tang", "tsuge", "double tsuge", "triple tsuge", "becker", "evans", "lee", "winters-gelberman", "yoshizu",
    "krackow", "horizontal mattress", "figure-of-eight", "simple", "pulvertaft", "pull-out", "anchor", "other",
]  # fmt: skip

IMPLIED_STRANDS = {
    2: ["kessler", "modified kessler", "kirchmayr", "tajima", "kessler-tajima", "pennington", "bunnell", "tsuge"],
    4: [
        "strickland", "cruciate", "locked cruciate", "adelaide", "double modified kessler", "becker", "evans", "lee",
        "double tsuge",
    ],
    6: ["savage", "lim-tsai", "m-tang", "triple tsuge", "yoshizu"],
    8: ["winters-gelberman"],
}  # fmt: skip
NO_COUNT = [
    "modified savage", "krackow", "horizontal mattress", "figure-of-eight", "simple", "pulvertaft", "pull-out",
    "anchor", "other",
]  # fmt: skip
LOCKING_BY_NAME = ["locked cruciate", "adelaide", "pennington"]

# Fields whose value is one of a list.
CHOICES = {
    "operation": {
        "side": ["left", "right", "both"],
        "anaesthesia": ["general", "regional", "local", "wide-awake local", "sedation"],
        "mechanism": ["sharp", "saw", "crush", "avulsion", "rupture", "bite", "blast", "other"],
    },
    "repairs": {
        "zone": ["I", "IA", "IB", "IC", "II", "IIA", "IIB", "IIC", "IID", "III", "IV", "V"],
        "extent": ["complete", "partial", "intact"],
        "treatment": ["repaired", "reinserted", "grafted", "tenodesed", "trimmed", "excised", "left"],
        "stitch": STITCHES,
        "material": MATERIALS,
        "hold": ["locking", "grasping"],
        "knot": ["buried", "external"],
        "peripheral": ["present", "absent"],
        "peripheral_pattern": [
            "running", "running locking", "cross-stitch", "horizontal mattress", "interrupted", "other",
        ],
        "peripheral_material": MATERIALS,
        "ends": ["clean", "ragged", "crushed", "attenuated"],
        "gap": ["none", "seen"],
        "test": ["active", "passive", "traction"],
        "glide": ["free", "catching", "restricted"],
        "tension": ["none", "present"],
        "bulk": ["none", "present"],
    },
    "pulleys": {
        "finding": [
            "intact", "injured", "vented", "released", "trimmed", "excised", "widened", "repaired", "reconstructed",
        ],
        "part": ["proximal", "distal", "middle"],
    },
    "injuries": {
        "extent": ["complete", "partial", "intact", "contused"],
        "treatment": ["repaired", "grafted", "conduit", "ligated", "fixed", "left"],
    },
    "aftercare": {
        "splint": ["dorsal blocking", "other"],
        "programme": ["early active", "place and hold", "early passive", "immobilisation"],
    },
}  # fmt: skip

ELEMENTS = [
    "surgeon", "assistant", "anaesthetist", "diagnosis", "procedure", "indication", "findings", "consent", "tourniquet",
    "antibiotics", "blood_loss", "complications", "specimens", "implants", "closure", "dressing", "instructions",
    "signature",
]  # fmt: skip

# The other fields by what they take.
OTHERS = {
    "date": [("operation", "date"), ("operation", "injury_date")],
    "percent": [("repairs", "extent_percent"), ("pulleys", "extent_percent")],
    "number": [("repairs", "trimmed_mm"), ("repairs", "gap_mm"), ("pulleys", "extent_mm")],
    "whole": [("repairs", "strands")],
    "size": [("repairs", "size"), ("repairs", "peripheral_size")],
    "yes-no": [("repairs", "looped")],
    "interval": [
        ("repairs", "purchase_mm"), ("repairs", "lock_mm"), ("aftercare", "wrist_flexion_deg"),
        ("aftercare", "mcp_flexion_deg"), ("aftercare", "ip_flexion_deg"), ("aftercare", "start_day"),
        ("aftercare", "splint_weeks"),
    ],
}  # fmt: skip
