"""Nerves, arteries, plates, ligaments, extensor tendons and bones."""
