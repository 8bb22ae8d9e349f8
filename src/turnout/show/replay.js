// Plays one recorded passage: DATA holds frames in drawing pixels, captions and lines. Time goes by sentences only.
"use strict";
(() => {
  const byId = (id) => document.getElementById(id);
  const stage = byId("play"), run = byId("run"), speed = byId("speed"), live = byId("live");
  const sentences = [...document.querySelectorAll("[data-c]")];
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  const make = (tag, set) => {
    const node = document.createElementNS("http://www.w3.org/2000/svg", tag);
    for (const key in set) node.setAttribute(key, set[key]);
    return node;
  };
  const marks = DATA.marks.map((ids) => ids.map(byId));
  const balls = DATA.high[0].map((_, n) => [byId("ball" + (n || "")), byId("air" + n)]);
  const ties = [...byId("links").children];
  const trails = byId("trails"), lines = byId("lines");
  const last = DATA.t[DATA.t.length - 1];
  const sheet = stage.querySelector("svg");
  let zoom = 1; // on a narrow page marks grow against the shrinking drawing, so that their letters can be read
  const fit = () => { zoom = Math.min(1.8, Math.max(1, (0.72 * sheet.viewBox.baseVal.width) / sheet.clientWidth)); };
  let now = 0, playing = false, slow = false, before = 0, shown = -1;

  const frameAt = (t) => {
    let low = 0, high = DATA.t.length - 1;
    while (high - low > 1) { const mid = (low + high) >> 1; if (DATA.t[mid] <= t) low = mid; else high = mid; }
    const span = DATA.t[high] - DATA.t[low];
    return [low, high, span > 0 ? Math.min(1, Math.max(0, (t - DATA.t[low]) / span)) : 0];
  };
  const spot = (row, i, share, next) => [
    row[2 * i] + (next[2 * i] - row[2 * i]) * share, row[2 * i + 1] + (next[2 * i + 1] - row[2 * i + 1]) * share,
  ];
  const captionAt = (t) => {
    let found = 0;
    for (let i = 0; i < DATA.captions.length; i++) if (DATA.captions[i].t <= t + 1e-6) found = i;
    return found;
  };

  function players(t) {
    const [low, high, share] = frameAt(t);
    const [from, to] = [DATA.xy[low], DATA.xy[high]];
    const [oldLow, oldHigh, oldShare] = frameAt(Math.max(0, t - 2));
    trails.replaceChildren();
    DATA.marks.forEach((ids, i) => {
      const [x, y] = spot(from, i, share, to);
      const side = DATA.side[low][i];
      marks[i].forEach((node, n) => {
        if (!node) return;
        node.toggleAttribute("hidden", n !== side);
        node.setAttribute("display", n === side ? "inline" : "none");
        node.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${zoom})`);
      });
      const turn = DATA.face[low][i];
      const nose = byId("n" + i);
      nose.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turn}) scale(${zoom})`);
      const [px, py] = spot(DATA.xy[oldLow], i, oldShare, DATA.xy[oldHigh]);
      trail(px, py, x, y);
    });
    DATA.links.forEach(([a, b], n) => {
      const [[ax, ay], [cx, cy]] = [spot(from, a, share, to), spot(from, b, share, to)];
      ties[n].setAttribute("d", `M${ax.toFixed(1)} ${ay.toFixed(1)}L${cx.toFixed(1)} ${cy.toFixed(1)}`);
    });
    balls.forEach(([ball, ring], n) => {
      const [bx, by] = spot(from, DATA.marks.length + n, share, to);
      ball.setAttribute("transform", `translate(${bx.toFixed(1)} ${by.toFixed(1)}) scale(${zoom})`);
      ring.setAttribute("r", (DATA.high[low][n] + (DATA.high[high][n] - DATA.high[low][n]) * share).toFixed(1));
    });
  }

  function trail(px, py, x, y) {
    const long = Math.hypot(x - px, y - py), r = DATA.radius * zoom;
    if (long < DATA.trail + r) return;
    const [ux, uy] = [(x - px) / long, (y - py) / long];
    const [ex, ey] = [x - ux * (r + 4), y - uy * (r + 4)];
    trails.append(
      make("path", { d: `M${px + ux * 4} ${py + uy * 4}L${ex} ${ey}`, class: "run" }),
      make("path", { d: `M${ex - ux * 7 - uy * 4} ${ey - uy * 7 + ux * 4}L${ex} ${ey}L${ex - ux * 7 + uy * 4} ${ey - uy * 7 - ux * 4}`, class: "head" }),
      make("circle", { cx: px, cy: py, r: 3.6, class: "was" }),
    );
  }

  function telling(t, aloud) {
    const at = captionAt(t);
    if (at === shown) return;
    shown = at;
    sentences.forEach((node, i) => {
      node.className = i < at ? "past" : "";
      if (i === at) node.setAttribute("aria-current", "true"); else node.removeAttribute("aria-current");
    });
    [...lines.children].forEach((node) => {
      const number = Number(node.dataset.n);
      const seen = number <= at && number > at - 4;
      node.setAttribute("display", seen ? "inline" : "none");
      node.setAttribute("class", number === at ? "line on" : "line");
    });
    if (aloud) live.textContent = DATA.captions[at].text;
  }

  function draw(t, aloud) { now = Math.min(last, Math.max(0, t)); players(now); telling(now, aloud); }
  function say() { run.textContent = playing ? "Pause" : now >= last ? "Play again" : "Play"; }
  function stop() { playing = false; say(); }
  function go() {
    if (now >= last - 1e-6) draw(0, true);
    playing = true; before = 0; say(); requestAnimationFrame(tick);
  }
  function tick(ms) {
    if (!playing) return;
    const pace = slow ? 0.5 : 1;
    if (calm.matches) { // no movement: a still for each sentence
      if (!before) before = ms;
      if ((ms - before) * pace > 2500) { before = ms; if (shown + 1 >= DATA.captions.length) return stop(); jump(shown + 1, false); }
    } else {
      const step = before ? Math.min(0.1, (ms - before) / 1000) * pace : 0;
      before = ms;
      draw(now + step, false);
      if (now >= last) return stop();
    }
    requestAnimationFrame(tick);
  }
  function jump(at, aloud) {
    const to = Math.min(DATA.captions.length - 1, Math.max(0, at));
    before = 0;
    shown = -1;
    draw(DATA.captions[to].t + 0.001, aloud);
    say();
  }

  sentences.forEach((node, i) => {
    node.addEventListener("click", () => jump(i, true));
    node.addEventListener("keydown", (event) => {
      if (event.key === "Enter" || event.key === " ") { event.preventDefault(); jump(i, true); }
    });
  });
  run.addEventListener("click", () => (playing ? stop() : go()));
  byId("back").addEventListener("click", () => jump(shown - 1, true));
  byId("on").addEventListener("click", () => jump(shown + 1, true));
  speed.addEventListener("click", () => {
    slow = !slow;
    speed.textContent = slow ? "half" : "full";
    speed.setAttribute("aria-pressed", String(slow));
  });
  document.addEventListener("keydown", (event) => {
    if (event.target.closest("button,[role=button]") && event.key === " ") return;
    if (event.key === " ") { event.preventDefault(); playing ? stop() : go(); }
    if (event.key === "ArrowLeft") { event.preventDefault(); jump(shown - 1, true); }
    if (event.key === "ArrowRight") { event.preventDefault(); jump(shown + 1, true); }
  });
  addEventListener("resize", () => { fit(); players(now); });
  fit();
  stage.dataset.ready = "yes";
  draw(0, false);
})();
