"""Pixels to readings. Knows symbologies and places in a picture, nothing of a shop."""

from scanflow.vision.decode import read
from scanflow.vision.decoders import engines
from scanflow.vision.readings import Certainty, ImageError, PictureReadings, Reading, Symbology
from scanflow.vision.second_look.book import Book

__all__ = ["Book", "Certainty", "ImageError", "PictureReadings", "Reading", "Symbology", "engines", "read"]
