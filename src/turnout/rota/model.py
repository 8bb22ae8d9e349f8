"""The answer of a rota."""

from dataclasses import dataclass


@dataclass(frozen=True)
class BlockPlaces:
    """Who is where in one block: (copy index, group key) -> labels; waiting labels apart."""

    minutes: float
    who: tuple[tuple[tuple[int, str], tuple[str, ...]], ...]
    waiting: tuple[str, ...] = ()


@dataclass(frozen=True)
class PartRota:
    """The blocks of one part, how even they are and how even they could be."""

    part: int
    blocks: tuple[BlockPlaces, ...]
    spread: int  # most minus least blocks in a turning role or waiting, over players
    bound: int  # the least spread arithmetic allows
    note: str

    @property
    def optimal(self) -> bool:
        return self.spread == self.bound
