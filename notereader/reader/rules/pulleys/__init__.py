"""What was found of and done to each pulley."""
