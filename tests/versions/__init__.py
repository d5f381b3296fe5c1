"""Which versions of its dependencies Samehour is tested with, and whether the ranges it declares are true."""
