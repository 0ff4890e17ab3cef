"""What the surgeon ordered for the time after."""
