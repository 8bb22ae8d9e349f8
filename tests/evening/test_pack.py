"""The pack: every file of the evening, all or nothing."""

import io
import json
import re
import zipfile

import pytest
from pypdf import PdfReader

from turnout.evening import pack
from turnout.evening.fits import fit_evening
from turnout.evening.load import load_evening, with_facts
from turnout.evening.pack import DoesNotFit, likely_turnouts, pack_contents, write_pack, zipped

SECONDS = 60.0


@pytest.fixture(scope="module")
def answer():
    return fit_evening(load_evening(None))


@pytest.fixture(scope="module")
def contents(answer) -> dict[str, bytes]:
    return pack_contents(answer, seconds=SECONDS)


def test_all_files_are_there(answer, contents):
    replays = [name for name in contents if name.startswith("replay-")]
    assert len(replays) == len(answer.fitted.parts)
    assert set(contents) - set(replays) == {"cards.pdf", "fits.json", "forecast.json", "evening.txt"}


def test_the_cards_are_one_sheet_and_a_card_a_part(answer, contents):
    pages = PdfReader(io.BytesIO(contents["cards.pdf"])).pages
    assert len(pages) >= 1 + len(answer.fitted.parts)
    assert answer.evening.session.parts[0].practice.name in "".join(page.extract_text() for page in pages)


def test_fits_for_every_likely_turnout(answer, contents):
    low, high = answer.evening.session.expected
    fits = json.loads(contents["fits.json"])["fits"]
    assert list(fits) == [str(count) for count in range(low - 3, high + 4)]
    assert likely_turnouts((7, 23)) == range(6, 25)


def test_replays_need_nothing_from_outside(contents):
    for name, page in contents.items():
        if name.startswith("replay-"):
            text = page.decode()
            assert "default-src 'none'" in text
            assert not re.search(r"(?:src|href)=[\"'](?!data:|#)", text)


def test_names_go_without_club(contents):
    text = contents["evening.txt"].decode()
    assert "Ada" in text and "Saltmarsh" not in text
    assert b"Saltmarsh" not in contents["fits.json"]


def test_evening_text_tells_every_part(answer, contents):
    text = contents["evening.txt"].decode()
    assert all(part.practice.name in text for part in answer.evening.session.parts)
    assert "Care" in text


def test_the_zip_holds_the_same_bytes(contents):
    assert zipped(contents) == zipped(dict(contents))
    folder = zipfile.ZipFile(io.BytesIO(zipped(contents)))
    assert {name: folder.read(name) for name in folder.namelist()} == contents


def test_a_fault_on_the_way_leaves_the_old_pack(answer, tmp_path, monkeypatch):
    (tmp_path / "cards.pdf").write_bytes(b"last week's")

    def broken(*_arguments, **_options):
        raise RuntimeError("the printer is out")

    monkeypatch.setattr(pack, "replay_pages", broken)
    with pytest.raises(RuntimeError):
        write_pack(answer, tmp_path, seconds=SECONDS)
    assert [(file.name, file.read_bytes()) for file in tmp_path.iterdir()] == [("cards.pdf", b"last week's")]


def test_what_does_not_fit_is_not_packed(tmp_path):
    small = fit_evening(with_facts(load_evening(None), space="12 x 12 m"))
    with pytest.raises(DoesNotFit):
        write_pack(small, tmp_path / "out", seconds=SECONDS)
