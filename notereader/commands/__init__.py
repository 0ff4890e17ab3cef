"""The commands of the command line, one file each: `add_arguments(parser)` and `run(arguments)`."""
