"""How far each tendon was cut, at which zone, and how its ends were."""
