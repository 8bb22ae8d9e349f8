"""A coach's evening on the desk, in a real browser."""

import re
import zipfile

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import expect
from pypdf import PdfReader

PATIENCE_MS = 180_000  # the first forecast may wait for the simulator to be compiled


def own_requests_only(page) -> bool:
    """Whether every request went to the desk itself (a download's blob or a data address goes nowhere)."""
    origin = re.match(r"http://127\.0\.0\.1:\d+", page.url)
    return origin is not None and all(url.startswith(f"{origin[0]}/") for url in page.requests_made)


def violations(page) -> list[str]:
    """What axe faults on the page: rule and first place."""
    found = Axe().run(page).response["violations"]
    return [f"{fault['id']}: {fault['nodes'][0]['html'][:160]}" for fault in found]


def set_turnout(page, count: int) -> None:
    """Type a turnout and wait until everything on the page is for it."""
    page.fill("#players", str(count))
    page.press("#players", "Enter")
    expect(page.locator("#gave-title")).to_have_text(f"What gave way for {count}")


def played(page) -> None:
    """Wait until every part has been played to the end."""
    expect(page.locator("#played")).to_have_text("Every part has been played.", timeout=PATIENCE_MS)


def test_one_fewer_came_and_the_page_says_what_gave_way(desk):
    expect(desk.locator("#players")).to_have_value("14")
    before = desk.inner_text("#hour")
    desk.click("#fewer")
    expect(desk.locator("#gave-title")).to_have_text("What gave way for 13")
    expect(desk.locator("#players")).to_have_value("13")
    assert desk.evaluate("document.activeElement.id") == "fewer"
    assert desk.locator("#gave li").count() > 0
    assert desk.inner_text("#hour") != before
    expect(desk.locator("#said")).to_contain_text("13")
    set_turnout(desk, 14)
    assert desk.faults == []


def test_forecasts_come_in_by_themselves(desk):
    played(desk)
    parts = desk.locator("[data-part]").count()
    assert parts >= 2
    for index in range(parts):
        assert re.search(r"\d \(\S+–\S+\)", desk.inner_text(f"#how-{index}"))
    assert own_requests_only(desk) and desk.faults == []


def test_nonsense_is_told_beside_the_field(desk):
    desk.fill("#players", "abc")
    desk.press("#players", "Enter")
    expect(desk.locator("#problem-players .pen")).to_contain_text("whole number")
    expect(desk.locator("#players")).to_have_attribute("aria-invalid", "true")
    expect(desk.locator("#players")).to_have_value("abc")
    assert violations(desk) == []
    set_turnout(desk, 14)
    expect(desk.locator("#problem-players .pen")).to_have_count(0)
    assert desk.get_attribute("#players", "aria-invalid") is None


def test_less_space_and_time_change_the_evening(desk):
    desk.fill("#space", "60 x 40 m")
    desk.press("#space", "Tab")
    expect(desk.locator("#problem-space")).to_contain_text("66 x 44 yd")
    desk.fill("#minutes", "45")
    desk.press("#minutes", "Tab")
    expect(desk.locator("#problem-minutes")).to_contain_text("18:00 to 18:45")
    desk.fill("#space", "10 x 10 m")
    desk.press("#space", "Tab")
    expect(desk.locator("#gave-title")).to_have_text("It does not fit 14 players")
    assert desk.locator("#smallest").inner_text()
    assert violations(desk) == []
    desk.fill("#space", "third of 3G")
    desk.fill("#minutes", "60")
    desk.press("#minutes", "Tab")
    expect(desk.locator("#gave-title")).to_have_text("What gave way for 14")


def test_a_replay_opens_and_plays(desk):
    played(desk)
    desk.click("article.row:first-of-type a[href^='/replay/']")
    expect(desk.locator("#run")).to_be_visible(timeout=PATIENCE_MS)
    ball = desk.locator("#ball")
    before = ball.get_attribute("transform")
    desk.keyboard.press("Space")
    expect(ball).not_to_have_attribute("transform", before or "")
    desk.keyboard.press("Space")
    assert violations(desk) == []
    assert own_requests_only(desk) and desk.faults == []


def test_the_pack_can_be_kept(desk, tmp_path):
    played(desk)
    desk.set_default_timeout(PATIENCE_MS)
    with desk.expect_download() as waiting:
        desk.click("a[href='/pack/cards.pdf']")
    waiting.value.save_as(tmp_path / "cards.pdf")
    parts = desk.locator("[data-part]").count()
    assert len(PdfReader(tmp_path / "cards.pdf").pages) >= 1 + parts
    with desk.expect_download() as waiting:
        desk.click("a[href='/pack/evening.zip']")
    waiting.value.save_as(tmp_path / "evening.zip")
    names = zipfile.ZipFile(tmp_path / "evening.zip").namelist()
    assert {"cards.pdf", "fits.json", "forecast.json", "evening.txt"} <= set(names)
    assert sum(name.startswith("replay-") for name in names) == parts


def test_everything_goes_by_keyboard(desk):
    desk.keyboard.press("Tab")
    assert desk.evaluate("document.activeElement.className") == "skip"
    reached = set()
    for _ in range(40):
        desk.keyboard.press("Tab")
        reached.add(desk.evaluate("document.activeElement.id || document.activeElement.getAttribute('href') || ''"))
    assert {"fewer", "players", "more", "space", "minutes", "/pack/cards.pdf", "/replay/1/"} <= reached
    desk.focus("#more")
    desk.keyboard.press("Enter")
    expect(desk.locator("#players")).to_have_value("15")
    set_turnout(desk, 14)


def test_axe_finds_nothing_wide_or_narrow(desk):
    played(desk)
    assert violations(desk) == []
    for details in desk.locator("details").all():
        details.locator("summary").click()
    desk.set_viewport_size({"width": 320, "height": 700})
    assert violations(desk) == []


def test_nothing_runs_off_a_narrow_page_or_big_text(desk):
    for width, size in ((320, "100%"), (390, "100%"), (640, "200%"), (1440, "200%")):
        desk.set_viewport_size({"width": width, "height": 800})
        desk.evaluate("size => { document.documentElement.style.fontSize = size; }", size)
        assert desk.evaluate("document.documentElement.scrollWidth") <= width, (width, size)


def test_focus_can_be_seen(desk):
    desk.focus("#players")
    desk.keyboard.press("Shift+Tab")
    assert desk.evaluate("getComputedStyle(document.activeElement).outlineWidth") == "3px"


def test_without_a_script_the_page_works_by_forms(browser, desk_process):
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(desk_process)
    page.wait_for_selector("#hour")
    page.click("#fewer")
    page.wait_for_selector("#gave-title:has-text('13')")
    page.click("#more")
    page.wait_for_selector("#gave-title:has-text('14')")
    context.close()
