"""The trade's words and figures, loaded from the commented TOML files in resources/."""

from notereader.vocabulary.fields import FieldSpec, field_specs
from notereader.vocabulary.places import resource_file, resource_folder, samples_folder
from notereader.vocabulary.sutures import Material, Size, Stitch, materials, sizes, stitches
from notereader.vocabulary.terms import Term, terms

__all__ = [
    "FieldSpec",
    "Material",
    "Size",
    "Stitch",
    "Term",
    "field_specs",
    "materials",
    "resource_file",
    "resource_folder",
    "samples_folder",
    "sizes",
    "stitches",
    "terms",
]
