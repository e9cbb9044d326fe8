"""Parts as CadQuery solids and as trimesh meshes."""

from rodwright.solids.parts import location_of, solid_of

__all__ = ["location_of", "solid_of"]
