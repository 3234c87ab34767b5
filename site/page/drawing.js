// Drawings: the engine gives marks in px for a width, and each becomes one SVG element with its class.

const DRAWING_WIDTH_MIN = 240;

// `opens` says that some of its marks are buttons, so that it is no mere picture.
function drawingOf(drawing, opens = false) {
  return draw("svg", {
    class: "drawing " + drawing.view, viewBox: [0, 0, drawing.width, drawing.height].join(" "), width: drawing.width, height: drawing.height,
    role: opens ? "group" : "img", "aria-label": drawing.title, "data-drawing": drawing.view, "data-mm-per-unit": drawing.mm_per_px,
  }, drawing.marks.map((mark) => markElement(mark)));
}

function markElement(mark) {
  const shared = {
    class: mark.class, "data-of": mark.of || null, "fill-opacity": mark.tone,
    "data-at-index": mark.at, "data-direction-deg": mark.direction_deg, "data-utilisation": mark.utilisation,
  };
  const points = mark.points;
  const [first, second] = points;
  if (mark.shape === "text") {
    return draw("text", { ...shared, x: first[0], y: first[1], "text-anchor": mark.anchor,
      transform: mark.turn ? "rotate(" + [mark.turn, ...first].join(" ") + ")" : null }, mark.text);
  }
  if (mark.shape === "circle") return draw("circle", { ...shared, cx: first[0], cy: first[1], r: mark.radius });
  if (mark.shape === "line") return draw("line", { ...shared, x1: first[0], y1: first[1], x2: second[0], y2: second[1] });
  if (mark.shape === "lines") {
    const path = points.map((point, place) => (place % 2 === 0 ? "M" : "L") + point.join(" ")).join("");
    return draw("path", { ...shared, d: path });
  }
  return draw(mark.shape, { ...shared, points: points.map((point) => point.join(",")).join(" ") });
}

// One drawing that follows the width of the place it stands in.
class Drawing {
  constructor(view, caption) {
    this.view = view;
    this.width = 0;
    this.frame = make("div", { class: "frame" });
    this.caption = make("figcaption", {}, caption);
    this.element = make("figure", { class: "figure " + view }, this.frame, this.caption);
    this.asked = null;
    new ResizeObserver(() => this.fit()).observe(this.frame);
  }

  update(assessment, at = null) {
    this.asked = { assessment, at };
    if (assessment.report !== null) this.caption.textContent = captionOf(this.view, assessment.report, at);
    this.render();
  }

  fit() {
    const width = Math.floor(this.frame.clientWidth);
    if (width === this.width || width === 0) return;
    this.width = width;
    this.render();
  }

  // The width is read only where it may have changed: reading it makes the browser lay out the whole page.
  render() {
    if (this.asked === null || this.asked.assessment.report === null) return;
    if (this.width === 0) this.width = Math.floor(this.frame.clientWidth);
    if (this.width === 0) return;
    const { assessment, at } = this.asked;
    const drawing = assessment.drawing(this.view, at, Math.max(this.width, DRAWING_WIDTH_MIN));
    keepingFocus(this.frame, () => fill(this.frame, this.picture(drawing)));
  }

  picture(drawing) {
    return drawingOf(drawing);
  }
}

// Plan, elevation and rose side by side, and beneath them the working of the direction that was picked on the rose.
class Drawings {
  // `drawn` says which checks the drawings are about; all where it is null.
  constructor(views = ["plan", "elevation", "rose"], drawn = null) {
    this.drawn = drawn;
    this.picked = null;
    this.panel = make("div", { class: "picked", hidden: true });
    this.drawings = views.map((view) => (view === "rose" ? new Rose((place) => this.pick(place)) : new Drawing(view, CAPTIONS[view])));
    this.element = make("div", { class: "drawings count-" + views.length, role: "group", "aria-label": "Drawings" },
      make("div", { class: "side-by-side" }, this.drawings.map((drawing) => drawing.element)), this.panel);
  }

  update(assessment, tree) {
    this.assessment = assessment;
    this.tree = tree;
    const { report } = assessment;
    if (report === null) return;
    const point = this.picked === null ? null : nearestPoint(report.rose, this.picked);
    const governing = this.drawn ? mostUsed(report.checks.filter((check) => this.drawn.test(check.id))) || assessment.governing : assessment.governing;
    const at = point ? point.at : governing && governing.at;
    for (const drawing of this.drawings) drawing.update(assessment, at || null);
    this.tell(point);
  }

  pick(point) {
    this.picked = point === null ? null : point.direction_rad;
    this.update(this.assessment, this.tree);
    if (point !== null) this.panel.querySelector("h2, button").focus({ preventScroll: true });
  }

  // The working of one direction, which plan and elevation then show as well.
  tell(point) {
    this.panel.hidden = point === null;
    if (point === null) return fill(this.panel);
    const { report } = this.assessment;
    const check = point.check === null || point.check === undefined ? null : report.checks[point.check];
    const close = make("button", { type: "button", class: "plain", "data-key": "close picked", click: () => this.pick(null) }, "Back to the direction that governs");
    keepingFocus(this.panel, () => orLater(() => fill(this.panel,
      make("h2", { tabindex: -1, "data-key": "picked" }, "Push towards ", shown(point.direction_rad, ANGLE), check && [": ", checkTitle(check.id), ", ", pointValue(point)]),
      close,
      workingBlock(this.assessment.working(point.at), { report, tree: this.tree, at: point.at })),
    // The answer stands; only this working has to wait.
    () => fill(this.panel, close, laterNote())));
  }
}

function mostUsed(checks) {
  return checks.filter((check) => check.at && check.utilisation !== null).sort((a, b) => b.utilisation - a.utilisation)[0] || null;
}

const CAPTIONS = {
  plan: "Plan, rear on top: pressure under the feet, pull in the anchors",
  elevation: "Elevation, seen across the push",
  rose: "Utilisation for every direction of the push",
};

// The push of the answer and that of the anchors' load cases differ, so it is said which one is drawn.
function captionOf(view, report, at) {
  const load = view === "elevation" && at ? report.cases[at.case] : null;
  return CAPTIONS[view] + (load && load.level === "amplified" ? ", here amplified for anchors in concrete" : "");
}

// The point of the rose that is nearest to a direction that was picked before the numbers changed.
function nearestPoint(rose, direction) {
  const apart = (point) => Math.abs(Math.sin((point.direction_rad - direction) / 2));
  return rose.reduce((best, point) => (best === null || apart(point) < apart(best) ? point : best), null);
}
