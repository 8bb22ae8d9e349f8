"""Keyed random streams: one per purpose and player, so that draws never depend on the step or on other players.

A 32-bit mixing function (xor-shift-multiply, full avalanche) of seed, stream and counter; everything stays in plain
integers under a mask, so compiled and uncompiled runs draw the same numbers.
"""

import math

from turnout.play.kernel.compiling import kernel, kernel_inlined

MASK = 0xFFFFFFFF
PURPOSES = 10
(SEE, CHOOSE, KICK, TOUCH, TACKLE, SUPPORT, MARK, CLOCK, START, DEFLECT) = range(PURPOSES)


@kernel_inlined
def mix(value: int) -> int:
    """A 32-bit integer scrambled so that near inputs give far outputs."""
    h = value & MASK
    h = ((h ^ (h >> 16)) * 0x7FEB352D) & MASK
    h = ((h ^ (h >> 15)) * 0x846CA68B) & MASK
    return h ^ (h >> 16)


@kernel
def seed_streams(chance, seed):
    """Give every stream (purpose x player) of `chance` (streams, 2: key, counter) its key from the run's seed."""
    base = mix(mix(seed & MASK) ^ ((seed >> 32) & MASK))
    for stream in range(chance.shape[0]):
        chance[stream, 0] = mix(base ^ mix((stream * 0x9E3779B1) & MASK))
        chance[stream, 1] = 0


@kernel_inlined
def uniform(chance, stream):
    """The next number of a stream, in (0, 1)."""
    count = int(chance[stream, 1]) + 1
    chance[stream, 1] = count
    return (mix(int(chance[stream, 0]) ^ ((count * 0x85EBCA6B) & MASK)) + 0.5) / 4294967296.0


@kernel
def normal(chance, stream):
    """The next standard normal number of a stream (Box-Muller)."""
    first = uniform(chance, stream)
    second = uniform(chance, stream)
    return math.sqrt(-2.0 * math.log(first)) * math.cos(6.283185307179586 * second)


@kernel_inlined
def noise(chance, stream):
    """The next number of a stream, even round 0 with standard deviation 1: cheap doubt for comparing options."""
    return (uniform(chance, stream) - 0.5) * 3.4641016151377544


@kernel
def exponential(chance, stream):
    """The next unit exponential number of a stream: how much hazard is survived."""
    return -math.log(uniform(chance, stream))
