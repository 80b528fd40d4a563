"""The structure tree of a tagged PDF (ISO 32000-1 14.7, 14.8): figures with their words, the rest as artifacts."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from reportlab.pdfbase.pdfdoc import PDFArray, PDFDictionary, PDFName, PDFString


class Tags:
    """Marks what is drawn on a reportlab canvas, page by page, and hangs the tree into the document at the end."""

    def __init__(self, canvas: Any) -> None:
        self._canvas = canvas
        self._document = canvas._doc  # reportlab has no public way to an indirect object or to a page's dictionary
        self._root = PDFDictionary({"Type": PDFName("StructTreeRoot")})
        element = {"Type": PDFName("StructElem"), "S": PDFName("Document"), "P": self._refer(self._root)}
        self._whole = PDFDictionary(element)
        self._pages: list[list[Any]] = [[]]

    def _refer(self, thing: Any) -> Any:
        return self._document.Reference(thing)

    @contextmanager
    def figure(self, alt: str) -> Iterator[None]:
        """What is drawn inside is one figure that says `alt`."""
        here = self._pages[-1]
        self._canvas.addLiteral(f"/Figure <</MCID {len(here)}>> BDC")
        yield
        self._canvas.addLiteral("EMC")
        element = {
            "Type": PDFName("StructElem"),
            "S": PDFName("Figure"),
            "P": self._refer(self._whole),
            "Pg": self._document.thisPageRef(),
            "K": len(here),
            "Alt": PDFString(alt),
        }
        here.append(self._refer(PDFDictionary(element)))

    @contextmanager
    def artifact(self) -> Iterator[None]:
        """What is drawn inside means nothing to who can't see it."""
        self._canvas.addLiteral("/Artifact BMC")
        yield
        self._canvas.addLiteral("EMC")

    def show_page(self) -> None:
        """End the page."""
        self._canvas.showPage()
        page = self._document.Pages.pages[-1]
        page.__NoDefault__ = [*page.__NoDefault__, "StructParents", "Tabs"]
        page.StructParents = len(self._pages) - 1
        page.Tabs = PDFName("S")
        self._pages.append([])

    def finish(self) -> None:
        """Hang the tree into the document."""
        figures = [figure for page in self._pages for figure in page]
        numbers = [part for index, page in enumerate(self._pages[:-1]) for part in (index, PDFArray(page))]
        self._whole["K"] = PDFArray(figures)
        self._root["K"] = self._refer(self._whole)
        self._root["ParentTree"] = PDFDictionary({"Nums": PDFArray(numbers)})
        self._root["ParentTreeNextKey"] = len(self._pages) - 1
        self._canvas.setCatalogEntry("StructTreeRoot", self._root)
        self._canvas.setCatalogEntry("MarkInfo", PDFDictionary({"Marked": "true"}))
