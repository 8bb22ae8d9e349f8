"""How fast Turnout is on this machine, beside a yardstick measured in the same run. Reports, never timed tests.

A benchmark is a file here with `run() -> {"figures": {name: number}, "yardstick": {name: number}}`; units stand in the
names (`simulated_s_per_cpu_s`). The yardstick is a piece of plain work that tells this machine from another.
"""
