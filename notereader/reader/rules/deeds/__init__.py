"""What was done to each tendon."""
