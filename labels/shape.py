"""What a drawing is made of. Lengths in mm, x to the right and y down from the top left corner of the sheet."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class SheetArea:
    """A rectangle of the sheet."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        return self.x + self.width

    @property
    def bottom(self) -> float:
        return self.y + self.height


@dataclass(frozen=True, slots=True)
class Rect:
    """A filled area, with a border of `line` mm inside it and rounded corners where given."""

    x: float
    y: float
    width: float
    height: float
    fill: str
    line: float = 0.0
    radius: float = 0.0


@dataclass(frozen=True, slots=True)
class Bars:
    """A bar code without its quiet zones: `widths` in modules of bar, space, bar ...; a module is `module` mm wide."""

    x: float
    y: float
    height: float
    module: float
    widths: tuple[int, ...]

    @property
    def width(self) -> float:
        return sum(self.widths) * self.module

    def strokes(self) -> list[tuple[float, float]]:
        """Left edge and width in mm of each bar."""
        strokes = []
        at = 0
        for index, width in enumerate(self.widths):
            if index % 2 == 0:
                strokes.append((self.x + at * self.module, width * self.module))
            at += width
        return strokes


@dataclass(frozen=True, slots=True)
class Pattern:
    """An area covered with the strokes of a named pattern."""

    x: float
    y: float
    width: float
    height: float
    name: str


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text: left end and baseline, size of the type."""

    x: float
    y: float
    size: float
    text: str
    font: str


@dataclass(frozen=True, slots=True)
class Picture:
    """A JPEG, as large as fits into the area, in its middle."""

    x: float
    y: float
    width: float
    height: float
    jpeg: bytes


Shape = Rect | Bars | Pattern | Text | Picture
