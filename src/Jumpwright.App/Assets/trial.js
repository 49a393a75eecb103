// The trial view: force, velocity and displacement on one time axis, drawn on a canvas. Zoom, pan and correct by mouse, finger
// or keyboard; the server measures again and answers with the measures, so that no law of mechanics lives here.
"use strict";
(() => {
  const root = document.querySelector("[data-trial]");
  if (!root) return;
  const style = getComputedStyle(document.documentElement);
  const ink = style.getPropertyValue("--ink").trim();
  const pencil = style.getPropertyValue("--pencil").trim();
  const rule = style.getPropertyValue("--rule").trim();
  const blue = style.getPropertyValue("--blue-ink").trim();
  const paper = style.getPropertyValue("--paper").trim();
  const frame = root.querySelector(".trace");
  const canvas = frame.querySelector("canvas");
  const pen = canvas.getContext("2d");
  const said = root.querySelector("[data-said]");
  const words = root.dataset; // what is said in the page's language
  // A number as the page's language writes it; the program has the same rule (Numerals).
  const written = (n, digits) => document.documentElement.lang === "de" ? n.toFixed(digits).replace(".", ",") : n.toFixed(digits);
  const say = (text, lang) => {
    said.textContent = text;
    if (lang) said.lang = lang; else said.removeAttribute("lang");
  };
  const inputs = [...root.querySelectorAll("input[data-event]")];
  const align = root.querySelector("[data-align]");
  const left = 64, right = 12, top = 26, bottom = 30, between = 10, head = 20;
  const dashes = [[8, 4], [2, 3], [12, 3, 2, 3], [5, 2, 5, 8], [1, 6], [16, 4]];
  const traces = []; // the first is the trial itself; the others lie over it
  let view = { from: 0, to: 1 }, whole = { from: 0, to: 1 }, waiting = false;

  const column = text => {
    if (!text) return null;
    const raw = atob(text), bytes = new Uint8Array(raw.length);
    for (let i = 0; i < raw.length; i++) bytes[i] = raw.charCodeAt(i);
    return new Float32Array(bytes.buffer);
  };
  const read = async path => {
    const answer = await fetch(path + "/trace");
    const json = await answer.json();
    if (!answer.ok) throw Object.assign(new Error(json.refused || answer.statusText), { lang: json.lang || "en" });
    return {
      label: json.label, start: json.start_s, rate: json.rate_hz, weight: json.weight_n, events: json.events,
      phases: json.phases, shift: 0,
      force: column(json.force), left: column(json.left), right: column(json.right),
      velocity: column(json.velocity), displacement: column(json.displacement),
    };
  };

  const events = () => Object.fromEntries(inputs.map(i => [i.dataset.event, Number(i.value)]).filter(e => Number.isFinite(e[1])));
  const panels = () => {
    const main = traces[0];
    const some = [{ name: words.force, of: t => t.force, zero: true, parts: 3 }];
    if (main && main.velocity) some.push({ name: words.velocity, of: t => t.velocity, parts: 2 });
    if (main && main.displacement) some.push({ name: words.displacement, of: t => t.displacement, scale: 100, parts: 2 });
    return some;
  };
  const width = () => canvas.clientWidth - left - right;
  const x = t => left + (t - view.from) / (view.to - view.from) * width();
  const time = px => view.from + (px - left) / width() * (view.to - view.from);
  const step = span => {
    const ten = Math.pow(10, Math.floor(Math.log10(span)));
    return [1, 2, 5, 10].map(m => m * ten).find(s => span / s <= 6) || ten * 10;
  };

  // The least and greatest of a curve among the samples of each column of pixels: no sharp peak is lost at any zoom.
  const curve = (t, data, y, scale) => {
    const first = Math.max(0, Math.floor((view.from - t.shift - t.start) * t.rate) - 1);
    const last = Math.min(data.length - 1, Math.ceil((view.to - t.shift - t.start) * t.rate) + 1);
    const wide = Math.max(Math.floor(width()), 1), each = (last - first) / wide;
    const begin = x(t.start + first / t.rate + t.shift), sample = width() / (view.to - view.from) / t.rate; // px, px a sample: x() asks the layout
    if (each > 2) {
      const dash = pen.getLineDash(), period = dash.reduce((sum, d) => sum + d, 0);
      const drawn = c => {
        let at = c % period, on = true;
        for (const d of dash) { if (at < d) return on; at -= d; on = !on; }
        return on;
      };
      const thick = pen.lineWidth;
      pen.fillStyle = pen.strokeStyle;
      pen.beginPath();
      for (let c = 0; c < wide; c++) {
        if (period && !drawn(c)) continue;
        const a = Math.max(first, first + Math.floor(c * each) - 1), b = Math.min(last, first + Math.floor((c + 1) * each));
        let lo = data[a], hi = lo;
        for (let i = a + 1; i <= b; i++) { const v = data[i]; if (v < lo) lo = v; else if (v > hi) hi = v; }
        const px = begin + c * each * sample, up = y(hi * scale);
        pen.rect(px, up - thick / 2, 1.2, y(lo * scale) - up + thick);
      }
      pen.fill();
      return;
    }
    pen.beginPath();
    for (let i = first; i <= last; i++) {
      const px = begin + (i - first) * sample, py = y(data[i] * scale);
      if (i === first) pen.moveTo(px, py); else pen.lineTo(px, py);
    }
    pen.stroke();
  };

  // The first place where a word of that width stands free of every upright, or null.
  const roomFor = (uprights, wide) => {
    const i = uprights.slice(1).findIndex((px, i) => px - uprights[i] > wide + 12);
    return i < 0 ? null : uprights[i] + 6;
  };

  // Each leg's name at its own curve, beside dashes and dots: the higher one's above it, the lower one's below. They stand at the first
  // place where neither lies on a curve, an upright or what is written already; where there is none, the panel's head says it alone.
  const type = 16;
  const nameLegs = (t, y, uprights, floor, taken) => {
    const wide = Math.max(pen.measureText(words.left).width, pen.measureText(words.right).width);
    const perPx = (view.to - view.from) / width(), first = t.start + t.shift;
    const span = (data, at) => {
      const a = Math.max(0, Math.floor((view.from + (at - left) * perPx - first) * t.rate));
      const b = Math.min(data.length - 1, Math.ceil((view.from + (at + wide - left) * perPx - first) * t.rate));
      let lo = Infinity, hi = -Infinity;
      for (let i = a; i <= b; i++) { if (data[i] < lo) lo = data[i]; if (data[i] > hi) hi = data[i]; }
      return { lo, hi };
    };
    for (let at = left + 6; at + wide + 6 < uprights.at(-1); at += 16) {
      if (uprights.some(px => px > at - 5 && px < at + wide + 5)) continue;
      const one = span(t.left, at), other = span(t.right, at), both = span(t.force, at);
      const leftAbove = one.lo > other.hi;
      if (!leftAbove && !(other.lo > one.hi)) continue; // they cross there
      const upper = y(Math.max(one.hi, other.hi)) - 3, lower = y(Math.min(one.lo, other.lo)) + 4;
      if (upper - type < y(both.lo) + 2 || lower + type > floor) continue;
      if (taken && at < taken.to && upper > taken.top && upper - type < taken.bottom) continue;
      pen.textAlign = "left"; pen.fillStyle = ink;
      pen.textBaseline = "bottom"; pen.fillText(leftAbove ? words.left : words.right, at, upper);
      pen.textBaseline = "top"; pen.fillText(leftAbove ? words.right : words.left, at, lower);
      return;
    }
  };

  // All phases with their times, under the trace: there no name is too long.
  const list = root.querySelector("[data-phases]");
  let told = null;
  const tell = phases => {
    if (told === phases || !list) return;
    told = phases;
    list.replaceChildren(...phases.map((phase, i) => {
      const item = document.createElement("li");
      item.textContent = `${i + 1} ` + words.phase
        .replace("{name}", phase.name).replace("{from}", written(phase.from, 2)).replace("{to}", written(phase.to, 2));
      return item;
    }));
    if (traces[0].weight) {
      const line = document.createElement("li");
      line.textContent = `— · — ${words.weight}`;
      list.append(line);
    }
  };

  const paint = () => {
    waiting = false;
    const began = performance.now();
    const dense = window.devicePixelRatio || 1;
    const w = canvas.clientWidth, h = canvas.clientHeight;
    if (canvas.width !== Math.round(w * dense)) canvas.width = Math.round(w * dense);
    if (canvas.height !== Math.round(h * dense)) canvas.height = Math.round(h * dense);
    pen.setTransform(dense, 0, 0, dense, 0, 0);
    pen.fillStyle = paper;
    pen.fillRect(0, 0, w, h);
    const main = traces[0];
    if (!main) return;
    pen.font = "15px Lato, sans-serif";
    const shown = panels();
    const room = h - top - bottom - between * (shown.length - 1) - head * shown.length;
    const parts = shown.reduce((sum, p) => sum + p.parts, 0);
    let above = top;
    const heads = []; // each above its panel, in a strip of its own: no curve and no upright runs there
    const at = events();
    const uprights = [left, ...Object.values(at).map(x).filter(px => px > left && px < w - right).sort((a, b) => a - b), w - right];
    for (const panel of shown) {
      heads.push({
        text: panel.zero && main.left && traces.length === 1 ? panel.name + words.plates : panel.name, at: above,
      });
      above += head;
      const height = room * panel.parts / parts, scale = panel.scale || 1;
      Object.assign(heads.at(-1), { from: above, to: above + height });
      let lo = panel.zero ? 0 : Infinity, hi = -Infinity;
      for (const t of traces) {
        const data = panel.of(t);
        if (!data) continue;
        t.range ||= new Map();
        if (!t.range.has(panel.name)) {
          let a = Infinity, b = -Infinity;
          for (const v of data) { if (v < a) a = v; if (v > b) b = v; }
          t.range.set(panel.name, [a * scale, b * scale]);
        }
        lo = Math.min(lo, t.range.get(panel.name)[0]);
        hi = Math.max(hi, t.range.get(panel.name)[1]);
      }
      const margin = (hi - lo) * 0.06 || 1;
      lo -= margin; hi += margin;
      const y = v => above + height - (v - lo) / (hi - lo) * height;
      let taken = null; // by the word beside the line of body weight
      pen.lineWidth = 1;
      pen.strokeStyle = rule;
      pen.fillStyle = pencil;
      pen.textAlign = "right";
      pen.textBaseline = "middle";
      pen.setLineDash([]);
      const each = step(hi - lo);
      for (let v = Math.ceil(lo / each) * each; v <= hi; v += each) {
        pen.beginPath(); pen.moveTo(left, y(v)); pen.lineTo(w - right, y(v)); pen.stroke();
        pen.fillText(String(Math.round(v * 100) / 100).replace("-", "−"), left - 8, y(v));
      }
      pen.strokeStyle = ink;
      pen.beginPath(); pen.moveTo(left, above); pen.lineTo(left, above + height); pen.stroke();
      pen.save();
      pen.beginPath(); pen.rect(left, above - 2, width(), height + 4); pen.clip();
      if (panel.zero && main.weight) {
        pen.strokeStyle = pencil; pen.setLineDash([14, 4, 2, 4]);
        pen.beginPath(); pen.moveTo(left, y(main.weight)); pen.lineTo(w - right, y(main.weight)); pen.stroke();
        pen.textAlign = "left"; pen.textBaseline = "bottom"; pen.fillStyle = pencil;
        // Above it, where no leg's own curve runs, and between two uprights that leave it room.
        const free = roomFor(uprights, pen.measureText(words.weight).width);
        if (free !== null) {
          pen.fillText(words.weight, free, y(main.weight) - 4);
          taken = { to: free + pen.measureText(words.weight).width + 6, top: y(main.weight) - 4 - type, bottom: y(main.weight) - 4 };
        }
      }
      traces.slice(1).forEach((t, i) => {
        if (!panel.of(t)) return;
        pen.strokeStyle = pencil; pen.setLineDash(dashes[i % dashes.length]);
        curve(t, panel.of(t), y, scale);
      });
      pen.strokeStyle = ink;
      if (panel.zero && main.left && traces.length === 1) {
        pen.setLineDash([12, 5]); curve(main, main.left, y, scale);
        pen.setLineDash([2, 4]); curve(main, main.right, y, scale);
        nameLegs(main, y, uprights, above + height, taken);
      }
      pen.setLineDash([]); pen.lineWidth = 1.6;
      curve(main, panel.of(main), y, scale);
      pen.restore();
      above += height + between;
    }
    // Time, below all.
    pen.fillStyle = pencil; pen.textAlign = "center"; pen.textBaseline = "top"; pen.strokeStyle = rule; pen.lineWidth = 1;
    const tick = step(view.to - view.from);
    for (let t = Math.ceil(view.from / tick) * tick; t <= view.to; t += tick) {
      pen.beginPath(); pen.moveTo(x(t), h - bottom); pen.lineTo(x(t), h - bottom + 5); pen.stroke();
      pen.fillText(written(t, tick < 0.01 ? 3 : tick < 0.1 ? 2 : tick < 1 ? 1 : 0).replace("-", "−"), x(t), h - bottom + 8);
    }
    pen.textAlign = "right";
    pen.fillText("s", w - 2, h - bottom + 8);
    // Events: thin uprights through each panel; phases between them, named above the first.
    for (const name of Object.keys(at)) {
      const px = x(at[name]);
      if (px < left || px > w - right) continue;
      pen.strokeStyle = blue; pen.lineWidth = held === name ? 3 : 1.2;
      pen.beginPath();
      for (const { from, to } of heads) { pen.moveTo(px, from - 2); pen.lineTo(px, to + 2); }
      pen.stroke();
    }
    pen.textAlign = "left"; pen.textBaseline = "top";
    pen.fillStyle = ink;
    heads.forEach(({ text, at: y }, i) => pen.fillText(text, left, i === 0 ? 2 : y)); // the first above the phases' names
    // A phase too narrow for its name has its number, which stands with the name below the trace.
    pen.fillStyle = ink; pen.textBaseline = "bottom";
    let free = -Infinity;
    main.phases.forEach((phase, i) => {
      const a = Math.max(x(phase.from), left), b = Math.min(x(phase.to), w - right), middle = (a + b) / 2;
      if (b <= a) return;
      for (const text of [phase.name, String(i + 1)]) {
        const wide = pen.measureText(text).width;
        if (wide < b - a + 2 && middle - wide / 2 > free) {
          pen.textAlign = "center"; pen.fillText(text, middle, top + head - 6); free = middle + wide / 2 + 6;
          return;
        }
      }
    });
    tell(main.phases);
    frame.dataset.drawMs = (performance.now() - began).toFixed(2);
    frame.dataset.from = view.from.toFixed(4);
    frame.dataset.to = view.to.toFixed(4);
  };
  const draw = () => { if (!waiting) { waiting = true; requestAnimationFrame(paint); } };

  // View.
  const show = (from, to) => {
    const span = Math.min(Math.max(to - from, 0.02), whole.to - whole.from);
    from = Math.min(Math.max(from, whole.from), whole.to - span);
    view = { from, to: from + span };
    draw();
  };
  const zoom = (by, about) => show(about - (about - view.from) * by, about + (view.to - about) * by);
  const middle = () => (view.from + view.to) / 2;
  const pan = part => { const s = (view.to - view.from) * part; show(view.from + s, view.to + s); };
  const acts = {
    "+": () => zoom(0.8, middle()), "=": () => zoom(0.8, middle()), "-": () => zoom(1.25, middle()),
    ArrowLeft: () => pan(-0.1), ArrowRight: () => pan(0.1), PageUp: () => pan(-0.8), PageDown: () => pan(0.8),
    "0": () => show(whole.from, whole.to), Home: () => show(whole.from, whole.from + view.to - view.from),
    End: () => show(whole.to - view.to + view.from, whole.to),
  };
  frame.addEventListener("keydown", e => {
    const act = !e.ctrlKey && !e.metaKey && !e.altKey && acts[e.key];
    if (act) { e.preventDefault(); act(); }
  });
  root.querySelectorAll("[data-act]").forEach(b => b.addEventListener("click", () => acts[b.dataset.act]()));
  frame.addEventListener("wheel", e => {
    if (document.activeElement !== frame) return; // the page scrolls until somebody works in the trace
    e.preventDefault();
    zoom(Math.exp(e.deltaY * 0.002), time(e.offsetX));
  }, { passive: false });

  // Pointers: one drags the view or an event, two pinch.
  const fingers = new Map();
  let held = null, last = null;
  const near = px => {
    let best = null, least = 14;
    for (const [name, at] of Object.entries(events())) {
      const off = Math.abs(x(at) - px);
      if (off < least) { least = off; best = name; }
    }
    return best;
  };
  canvas.addEventListener("pointerdown", e => {
    frame.focus({ preventScroll: true });
    canvas.setPointerCapture(e.pointerId);
    fingers.set(e.pointerId, e.offsetX);
    held = fingers.size === 1 ? near(e.offsetX) : null;
    last = e.offsetX;
    draw();
  });
  canvas.addEventListener("pointermove", e => {
    canvas.style.cursor = near(e.offsetX) ? "ew-resize" : "grab";
    if (!fingers.has(e.pointerId)) return;
    if (fingers.size === 2) {
      const [a, b] = [...fingers.values()];
      fingers.set(e.pointerId, e.offsetX);
      const [c, d] = [...fingers.values()];
      if (Math.abs(c - d) > 8) zoom(Math.abs(a - b) / Math.abs(c - d), time((c + d) / 2));
      return;
    }
    fingers.set(e.pointerId, e.offsetX);
    if (held) {
      const input = inputs.find(i => i.dataset.event === held);
      input.value = time(e.offsetX).toFixed(3);
      moved();
    } else {
      const by = (last - e.offsetX) / width() * (view.to - view.from);
      show(view.from + by, view.to + by);
    }
    last = e.offsetX;
  });
  const lift = e => { fingers.delete(e.pointerId); held = null; draw(); };
  canvas.addEventListener("pointerup", lift);
  canvas.addEventListener("pointercancel", lift);

  // Corrections: each move is measured at once on the server; nothing is kept until somebody says so.
  let asked = 0, soon = 0;
  const changed = () => inputs
    .filter(i => i.value !== "" && Math.abs(Number(i.value) - Number(i.dataset.automatic)) > 0.0004)
    .map(i => ({ event: i.dataset.event, time_s: Number(i.value) }));
  const moved = () => { draw(); clearTimeout(soon); soon = setTimeout(again, 60); };
  const again = async () => {
    const mine = ++asked;
    const answer = await fetch(root.dataset.trial + "/try", {
      method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ events: changed() }),
    }).catch(() => null);
    if (mine !== asked) return;
    if (!answer) { say(words.noAnswer); return; }
    const json = await answer.json();
    if (json.refused) { say(json.refused, json.lang); return; }
    say(changed().length ? words.again : words.asMeasured);
    traces[0].phases = json.phases;
    root.querySelectorAll("[data-measure]").forEach(cell => { cell.textContent = json.measures[cell.dataset.measure] || "–"; });
    draw();
  };
  inputs.forEach(i => i.addEventListener("input", moved));
  const form = root.querySelector("form[data-keep]");
  if (form) {
    const who = form.elements.who;
    who.value ||= localStorage.getItem("jumpwright-who") || "";
    form.addEventListener("submit", async e => {
      e.preventDefault();
      localStorage.setItem("jumpwright-who", who.value);
      const answer = await fetch(root.dataset.trial + "/events", {
        method: "POST", headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ id: crypto.randomUUID(), who: who.value, why: form.elements.why.value, events: changed() }),
      }).catch(() => null);
      if (!answer) { say(words.notKept); return; }
      const json = await answer.json();
      if (json.refused) { say(json.refused, json.lang); return; }
      location.reload();
    });
    root.querySelector("[data-automatic-again]").addEventListener("click", () => {
      inputs.forEach(i => { i.value = i.dataset.automatic; });
      moved();
    });
  }

  // Several trials laid over each other, made level at one event.
  const level = () => {
    const name = align ? align.value : "take_off";
    const at = events()[name];
    traces.slice(1).forEach(t => { t.shift = at !== undefined && t.events[name] !== undefined ? at - t.events[name] : 0; });
    draw();
  };
  const chosen = [...root.querySelectorAll("input[data-over]")];
  const lay = async () => {
    const wanted = chosen.filter(c => c.checked);
    const others = await Promise.all(wanted.map(c => read(c.dataset.over).catch(() => null)));
    traces.length = 1;
    traces.push(...others.filter(Boolean));
    chosen.forEach(c => { c.parentElement.querySelector("[data-mark]").textContent = ""; });
    wanted.forEach((c, i) => {
      c.parentElement.querySelector("[data-mark]").textContent = ["– – –", "· · ·", "— · —", "– –  –", "·  ·", "—— ——"][i % 6];
    });
    level();
  };
  chosen.forEach(c => c.addEventListener("change", lay));
  if (align) align.addEventListener("change", level);
  new ResizeObserver(draw).observe(frame);
  document.fonts.ready.then(draw);
  read(root.dataset.trial).then(trace => {
    traces[0] = trace;
    whole = { from: trace.start, to: trace.start + (trace.force.length - 1) / trace.rate };
    const known = Object.values(trace.events);
    const from = Math.min(...known) - 0.5, to = Math.max(...known) + 0.8;
    view = { ...whole };
    frame.dataset.points = trace.force.length;
    known.length ? show(from, to) : draw();
  }).catch(e => say(e.message, e.lang || "en"));
})();
