// The cabinet as it rocks: the engine gives the path, this only turns the drawing. Whoever asked for less motion gets it
// still, at its largest angle, with a slider for the time.

const ROCKING_WIDTH = 360;
const ROCKING_HEIGHT = 250;
const ROCKING_FLOOR = 222;

class RockingFigure {
  constructor() {
    this.frame = 0;
    this.still = globalThis.matchMedia ? matchMedia("(prefers-reduced-motion: reduce)") : { matches: true };
  }

  // The figure for a project and a record; nothing where there is nothing to follow.
  of(text, extra) {
    this.pause();
    const path = engineSays((engine) => engine.rocking_path(text, extra));
    if (!path || path.points.length < 2) return null;
    this.path = path;
    this.length = path.points[path.points.length - 1][0];
    const drawn = this.drawn(path);
    this.slider = make("input", { type: "range", min: 0, max: this.length, step: "any", value: 0, "aria-label": "Time", "data-key": "rocking time",
      input: () => {
        this.pause();
        this.show(Number(this.slider.value));
      } });
    this.time = make("output", { class: "rocking-time" });
    this.button = make("button", { type: "button", class: "plain", "data-key": "rocking play", click: () => (this.frame ? this.pause() : this.play()) }, "Play");
    const figure = make("figure", { class: "figure rocking", "data-still": String(this.still.matches) },
      make("div", { class: "frame" }, drawn), make("div", { class: "rocking-bar" }, this.button, this.slider, this.time),
      make("figcaption", {}, sentenceCase(path.state) + ", " + wordsOf(path.way) + ": " + wordsOf(path.end) + ". One run of many, with the impacts of Housner and the motion as it is."));
    const highest = path.points.reduce((best, point) => (Math.abs(point[1]) > Math.abs(best[1]) && Math.abs(point[1]) < Math.PI / 2 ? point : best), path.points[0]);
    this.show(highest[0]);
    if (!this.still.matches) this.playWhenSeen(figure);
    return figure;
  }

  drawn({ left_mm, right_mm, height_mm, top_mm }) {
    const scale = Math.min((ROCKING_FLOOR - 24) / Math.hypot(top_mm, left_mm + right_mm), (ROCKING_WIDTH - 40) / (2 * top_mm));
    const middle = ROCKING_WIDTH / 2 + ((left_mm - right_mm) / 2) * scale;
    this.edges = { left: middle - left_mm * scale, right: middle + right_mm * scale };
    const width = (left_mm + right_mm) * scale;
    this.body = draw("g", {},
      draw("rect", { class: "cabinet", x: this.edges.left, y: ROCKING_FLOOR - top_mm * scale, width, height: top_mm * scale }),
      draw("circle", { class: "centre", cx: middle, cy: ROCKING_FLOOR - height_mm * scale, r: 4 }));
    this.plumb = draw("line", { class: "dashed", y1: 12, y2: ROCKING_FLOOR });
    this.centre = { x: middle, y: ROCKING_FLOOR - height_mm * scale };
    return draw("svg", { class: "drawing rocking", viewBox: [0, 0, ROCKING_WIDTH, ROCKING_HEIGHT].join(" "), width: ROCKING_WIDTH, height: ROCKING_HEIGHT, role: "img", "aria-label": "The cabinet as it rocks, to scale" },
      draw("line", { class: "ground", x1: 8, x2: ROCKING_WIDTH - 8, y1: ROCKING_FLOOR, y2: ROCKING_FLOOR }), this.body, this.plumb);
  }

  angleAt(time) {
    const { points } = this.path;
    let low = 0;
    let high = points.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (points[middle][0] <= time) low = middle;
      else high = middle;
    }
    const [[from, a], [to, b]] = [points[low], points[high]];
    return to > from ? a + ((b - a) * Math.min(time - from, to - from)) / (to - from) : a;
  }

  show(time) {
    const angle = this.angleAt(time);
    const pivot = angle >= 0 ? this.edges.right : this.edges.left;
    this.body.setAttribute("transform", "rotate(" + [(angle * 180) / Math.PI, pivot, ROCKING_FLOOR].join(" ") + ")");
    const x = pivot + (this.centre.x - pivot) * Math.cos(angle) - (this.centre.y - ROCKING_FLOOR) * Math.sin(angle);
    this.plumb.setAttribute("x1", x);
    this.plumb.setAttribute("x2", x);
    this.slider.value = time;
    this.time.textContent = shown(time, TIME) + ", " + shown(Math.abs(angle), ANGLE, { digits: 2 });
    this.body.dataset.angle = String(angle);
  }

  play() {
    let started = null;
    const from = Number(this.slider.value) >= this.length ? 0 : Number(this.slider.value);
    const tick = (now) => {
      if (!this.body.isConnected) {
        this.pause();
        return;
      }
      started = started === null ? now : started;
      const time = from + (now - started) / 1000;
      this.show(Math.min(time, this.length));
      if (time >= this.length) this.pause();
      else this.frame = requestAnimationFrame(tick);
    };
    this.button.textContent = "Pause";
    this.frame = requestAnimationFrame(tick);
  }

  pause() {
    cancelAnimationFrame(this.frame);
    this.frame = 0;
    if (this.button) this.button.textContent = "Play";
  }

  // Once, from the beginning, when it comes into sight.
  playWhenSeen(figure) {
    if (!globalThis.IntersectionObserver) return;
    const watcher = new IntersectionObserver((seen) => {
      if (!seen.some((one) => one.isIntersecting)) return;
      watcher.disconnect();
      this.slider.value = 0;
      this.play();
    }, { threshold: 0.6 });
    watcher.observe(figure);
  }
}
