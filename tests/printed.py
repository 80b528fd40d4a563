"""What another library finds in a PDF. Lengths in mm, y down."""

import ctypes

import pypdfium2.raw as pdfium

MM = 25.4 / 72


def filled(page):
    """(rgb, boxes) of every filled path; boxes are (left, top, right, bottom) of its parts, the file's own transforms
    applied."""
    height = page.get_height()
    for path in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]):
        rgba = [ctypes.c_uint() for _ in range(4)]
        assert pdfium.FPDFPageObj_GetFillColor(path, *rgba)
        boxes = []
        for part in _parts(path):
            places = [path.get_matrix().on_point(x, y) for x, y in part]
            across, up = [x * MM for x, _ in places], [(height - y) * MM for _, y in places]
            boxes.append((min(across), min(up), max(across), max(up)))
        yield tuple(part.value for part in rgba[:3]), boxes


def _parts(path):
    """The points of each subpath."""
    x, y = ctypes.c_float(), ctypes.c_float()
    parts = []
    for index in range(pdfium.FPDFPath_CountSegments(path)):
        segment = pdfium.FPDFPath_GetPathSegment(path, index)
        pdfium.FPDFPathSegment_GetPoint(segment, x, y)
        if pdfium.FPDFPathSegment_GetType(segment) == pdfium.FPDF_SEGMENT_MOVETO:
            parts.append([])
        parts[-1].append((x.value, y.value))
    return [part for part in parts if len(part) > 1]


def bars(page):
    """For each black path, a card's bars, the boxes of its bars."""
    return [boxes for rgb, boxes in filled(page) if rgb == (0, 0, 0)]
