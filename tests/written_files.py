"""Files as people write them: the same facts with comments, blank lines, indents, quotes, brackets and line endings of
every kind."""

from collections.abc import Callable

from hypothesis import strategies as st

COMMENTS = ("# as on Tuesday", "#no space", "# - not an item", "# key: not a key", "# “quotes” and [brackets")
TAILS = ("", "  ", " # why", "   # - a: b")
WORDS = ("Edge players have 2 touches.", "A side scores 1: always", "it's so, or not", "-dash", "No #hash", "18:00",
         "yes", "“Grün” 10 °", "{brace", "* star", "tail ", "# not a comment")  # fmt: skip
KEYS = ("about", "rules", "look for", "square", "kit", "box 2", "ages", "north end")


def single(value: str) -> str:
    return "'" + value.replace("'", "''") + "'"


def double(value: str) -> str:
    return '"' + value.replace("\\", "\\\\").replace('"', '\\"') + '"'


def plain_will_do(value: str) -> bool:
    return not set(value) & set(":#{}[],*") and value[0] not in "-'\"" and value == value.strip()


values = st.sampled_from(WORDS)
trees: st.SearchStrategy = st.dictionaries(
    st.sampled_from(KEYS),
    st.recursive(
        values,
        lambda inner: (
            st.lists(inner, min_size=1, max_size=3)
            | st.dictionaries(st.sampled_from(KEYS), inner, min_size=1, max_size=3)
        ),
        max_leaves=8,
    ),
    min_size=1,
    max_size=4,
)


class Writer:
    """Writes one tree in a layout that is drawn as it goes."""

    def __init__(self, draw: Callable):
        self.draw = draw
        self.stop = draw(st.sampled_from(("\n", "\r\n", "\r")))
        self.lines: list[str] = []
        self.in_fold = False  # a comment that is indented would belong to the folded text above it

    def one_of(self, *ways: str) -> str:
        return self.draw(st.sampled_from(ways))

    def scalar(self, value: str) -> str:
        ways = [single(value), double(value)] + ([value] * 3 if plain_will_do(value) else [])
        return self.one_of(*ways)

    def line(self, text: str) -> None:
        for _ in range(self.draw(st.integers(0, 1))):
            self.lines.append(
                self.one_of("", *(" " * self.draw(st.integers(0, 0 if self.in_fold else 6)) + one for one in COMMENTS))
            )
        self.in_fold = False
        self.lines.append(text + self.one_of(*TAILS))

    def flow(self, value: object) -> str:
        space = self.one_of("", " ", "  ")
        if isinstance(value, dict):
            inner = [f"{self.scalar(key)}: {self.flow(one)}" for key, one in value.items()]
            return "{" + space + f",{self.one_of(' ', '   ')}".join(inner) + space + "}"
        if isinstance(value, list):
            return "[" + space + f",{self.one_of('', ' ', '  ')}".join(map(self.flow, value)) + space + "]"
        return self.scalar(value)  # type: ignore[arg-type]

    def pairs(self, value: dict, indent: int, lead: str | None = None) -> None:
        for key, one in value.items():
            head = (lead if lead is not None else " " * indent) + self.one_of(key, key, double(key)) + ":"
            lead = None
            self.under(head, one, indent, after_key=True)

    def items(self, value: list, indent: int, lead: str | None = None) -> None:
        for one in value:
            gap = self.one_of(" ", " ", "   ")
            head = (lead if lead is not None else " " * indent) + "-"
            lead, inner = None, indent + 1 + len(gap)
            if isinstance(one, dict) and self.draw(st.booleans()):
                self.pairs(one, inner, head + gap)
            elif isinstance(one, list) and self.draw(st.booleans()):
                self.items(one, inner, head + gap)
            else:
                self.under(head, one, indent, gap=gap)

    def under(self, head: str, value: object, indent: int, *, gap: str = " ", after_key: bool = False) -> None:
        if isinstance(value, str) and plain_will_do(value) and self.draw(st.integers(0, 5)) == 0:
            self.folded(head, value, indent)
        elif isinstance(value, str) or self.draw(st.integers(0, 2)) == 0:
            self.line(f"{head}{gap}{self.flow(value)}")
        else:
            self.line(head)
            more = (
                0
                if isinstance(value, list) and after_key and self.draw(st.booleans())
                else self.draw(st.integers(1, 4))
            )
            (self.items if isinstance(value, list) else self.pairs)(value, indent + more)  # type: ignore[arg-type]

    def folded(self, head: str, value: str, indent: int) -> None:
        inner = " " * (indent + 2)
        self.in_fold = True
        self.lines.append(f"{head} {self.one_of('>', '|', '>-', '|+', '> # folded')}")
        self.lines += [f"{inner}{value}", *([""] * self.draw(st.integers(0, 1)))]


@st.composite
def written(draw: Callable) -> tuple[str, dict]:
    """A text and what it says."""
    tree = draw(trees)
    writer = Writer(draw)
    writer.pairs(tree, 0)
    return writer.stop.join(writer.lines) + draw(st.sampled_from((writer.stop, writer.stop, ""))), tree
