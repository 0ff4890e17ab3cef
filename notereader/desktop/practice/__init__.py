"""Practice in the window: choosing a case, reading it unaided, the marking, progress and the teacher's view."""
