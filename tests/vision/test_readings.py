"""What a picture's readings say of how they are known."""

import json

from scanflow.vision import Certainty, PictureReadings, Reading, Symbology

CORNERS = ((1.0, 2.0), (9.0, 2.0), (9.0, 5.0), (1.0, 5.0))
DECODED = Reading("D0145", Symbology.CODE128, "zxing-cpp+zbar", CORNERS)
MATCHED = Reading("D0153", Symbology.CODE128, "match", CORNERS, Certainty.MATCHED)
UNREAD = Reading(None, Symbology.CODE128, "locate", CORNERS, Certainty.UNREAD)
PICTURE = PictureReadings(10, 6, 1.5, (MATCHED, DECODED, UNREAD))


def test_only_what_a_decoder_read_whole_is_decoded() -> None:
    """What was matched or merely located stands among the readings, and not among the decoded ones."""
    assert (DECODED,) == PICTURE.decoded
    assert () == PictureReadings(10, 6, 1.5, (MATCHED, UNREAD)).decoded


def test_a_picture_travels_as_json() -> None:
    """Every certainty comes back from JSON as it went, an unread text as null."""
    values = json.loads(json.dumps(PICTURE.as_dict()))

    assert ["matched", "decoded", "unread"] == [one["certainty"] for one in values["readings"]]
    assert ["D0153", "D0145", None] == [one["text"] for one in values["readings"]]
    assert PICTURE == PictureReadings.from_dict(values)


def test_engines_are_counted() -> None:
    """Two decoders that agree are two; matching and locating count as one each."""
    assert [1, 2, 1] == [one.engines for one in PICTURE.readings]
