"""The replay page: one file that needs nothing else, pinned by hash, told in sentences, worked by tap and key."""

import re
from base64 import b64encode
from hashlib import sha256
from html.parser import HTMLParser

import pytest
from show_evening import care, square_part
from show_recording import recording, setup
from show_toys import SQUARE_ROWS, square_spots

from turnout.show.captions import captions
from turnout.show.evening import SideView
from turnout.show.film import film_strip
from turnout.show.ink import contrast
from turnout.show.plan import setup_drawing
from turnout.show.replay import replay_files, replay_page

BIBS = (("amber", "yellow"), ("blue", "blue"))


def part(**changes):
    drawing = setup_drawing(setup(), bibs=BIBS, spots=square_spots(setup()), rows=SQUARE_ROWS)
    sides = tuple(SideView(side, 4, "4 bibs") for side in drawing.sides)
    return square_part(drawing=drawing, sides=sides, **changes)


def told():
    return captions(recording(), setup(), [view.side for view in part().sides])


@pytest.fixture(scope="module")
def page():
    return replay_page(recording(), setup(), part(), told())


class Tags(HTMLParser):
    def __init__(self, text):
        super().__init__()
        self.seen = []
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        self.seen.append((tag, dict(attrs)))


def pinned(text):
    return "sha256-" + b64encode(sha256(text.encode()).digest()).decode()


def test_the_policy_pins_the_one_script_and_the_one_style(page):
    (policy,) = re.findall(r'Content-Security-Policy" content="([^"]*)"', page)
    (style,) = re.findall(r"<style>(.*?)</style>", page, re.S)
    (script,) = re.findall(r"<script>(.*?)</script>", page, re.S)
    assert policy.startswith("default-src 'none';")
    assert f"style-src '{pinned(style)}'" in policy
    assert f"script-src '{pinned(script)}'" in policy
    assert "unsafe" not in policy
    assert page.index("Content-Security-Policy") < page.index("<style>")


def test_nothing_comes_from_outside_and_nothing_is_styled_in_place(page):
    for tag, attrs in Tags(page).seen:
        assert not {"src", "href", "style", "onclick", "onload"} & set(attrs), (tag, attrs)
    assert set(re.findall(r"https?://[^\"'`\s<]*", page)) == {"http://www.w3.org/2000/svg"}


def test_every_sentence_stands_numbered_and_can_be_reached_by_key(page):
    spans = [attrs for tag, attrs in Tags(page).seen if attrs.get("role") == "button"]
    assert len(spans) == len(told())
    assert all(attrs["tabindex"] == "0" for attrs in spans)
    for number, caption in enumerate(told(), start=1):
        assert f"<b>{number}</b>{caption.text}" in page


def test_rules_and_care_box_stand_on_the_page(page):
    for sentence in part().rules:
        assert sentence in page
    for caution in care():
        assert f"<b>{caution.do_now}</b> {caution.why} <small>({caution.source})</small>" in page


def test_a_name_cannot_become_markup():
    made = replay_page(recording(), setup(), part(name="</script><img src=x>"), told())
    assert "<img" not in made
    assert made.count("<script>") == 1


def test_a_server_gets_the_same_page_in_three_files():
    made = replay_files(recording(), setup(), part(), told())
    assert set(made) == {"replay.html", "replay.css", "replay.js"}
    assert "<script>" not in made["replay.html"]
    assert "<style" not in made["replay.html"]
    assert 'href="replay.css"' in made["replay.html"]
    assert 'src="replay.js"' in made["replay.html"]


def test_text_is_told_apart_from_the_ground():
    for ink in ("#17191E", "#43464D", "#63666C", "#98290F"):
        assert contrast(ink, "#FAF8F2") >= 4.5
        assert contrast(ink, "#FFFFFF") >= 4.5


def test_the_film_strip_shows_a_still_for_each_sentence():
    drawn = film_strip(recording(), setup(), part(), told(), stills=5, first=1)
    assert drawn.count("<g transform=") == 5
    assert all(caption.text.split()[0] in drawn for caption in told()[1:6])
    assert f'<desc id="{re.findall(r"<desc id=.([^>]*).>", drawn)[0]}">' in drawn
    assert len(re.findall(r"<title", drawn)) == 1


def opened(browser, tmp_path, page, **options):
    file = tmp_path / "replay.html"
    file.write_text(page, encoding="utf-8")
    tab = browser.new_page(**options)
    faults = []
    tab.on("pageerror", lambda error: faults.append(str(error)))
    tab.on("console", lambda message: faults.append(message.text) if message.type == "error" else None)
    tab.goto(file.as_uri())
    tab.wait_for_selector("[data-ready]")
    return tab, faults


def current(tab):
    return tab.inner_text("[aria-current=true]")


def test_taps_and_keys_move_through_the_sentences(browser, tmp_path, page):
    tab, faults = opened(browser, tmp_path, page)
    assert current(tab).startswith("1")
    tab.click("#on")
    assert current(tab).startswith("2")
    tab.click("[data-c='4']")
    assert current(tab).startswith("5")
    assert tab.get_attribute("[data-c='2']", "class") == "past"
    tab.keyboard.press("ArrowLeft")
    assert current(tab).startswith("4")
    tab.focus("[data-c='7']")
    tab.keyboard.press("Enter")
    assert current(tab).startswith("8")
    tab.click("#back")
    assert current(tab).startswith("7")
    assert faults == []
    tab.close()


def test_playing_moves_the_ball_and_stops_at_the_end(browser, tmp_path, page):
    tab, faults = opened(browser, tmp_path, page)
    before = tab.get_attribute("#ball", "transform")
    tab.click("[data-c='7']")
    tab.click("#run")
    assert tab.inner_text("#run") == "Pause"
    tab.wait_for_selector("#run:has-text('Play again')", timeout=8000)
    assert tab.get_attribute("#ball", "transform") != before
    assert current(tab).startswith("9")
    assert faults == []
    tab.close()


def test_a_player_who_changes_role_keeps_the_number(browser, tmp_path, page):
    tab, _ = opened(browser, tmp_path, page)
    assert tab.text_content("#p3s0") == "A3"
    tab.click("[data-c='5']")
    assert tab.is_visible("#p3s0")
    tab.close()


def test_with_reduced_motion_play_is_a_row_of_stills(browser, tmp_path, page):
    tab, faults = opened(browser, tmp_path, page, reduced_motion="reduce")
    tab.click("#run")
    tab.wait_for_timeout(400)
    first = tab.get_attribute("#ball", "transform")
    tab.wait_for_timeout(600)
    assert tab.get_attribute("#ball", "transform") == first
    assert faults == []
    tab.close()


def test_a_narrow_page_needs_no_sideways_scrolling(browser, tmp_path, page):
    tab, _ = opened(browser, tmp_path, page, viewport={"width": 320, "height": 700})
    assert tab.evaluate("document.documentElement.scrollWidth") <= 320
    sizes = tab.eval_on_selector_all("button", "all => all.map(b => Math.min(b.offsetWidth, b.offsetHeight))")
    assert min(sizes) >= 40
    tab.close()


def test_nothing_is_wrong_to_the_accessibility_checker(browser, tmp_path, page):
    from axe_playwright_python.sync_playwright import Axe

    # the checker is a script of its own, so it is given the page without the policy that would stop it
    bare = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", page)
    tab, _ = opened(browser, tmp_path, bare)
    results = Axe().run(tab)
    assert results.violations_count == 0, results.generate_report()
    tab.close()
