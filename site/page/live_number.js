// A number in the answer that can be turned: by dragging, by the arrow and page keys, by typing. Escape brings back
// what stood there when it was taken up.

const LIVE_LABELS = { load: "Load aboard", strength: "Push" };
const PIXELS_A_STEP = 3;
const PAGE_STEPS = 10;

class LiveNumber {
  // `project` gives the project as it is now; `hooks.turn` takes the tree that the turned number makes of it.
  constructor(what, project, hooks) {
    this.what = what;
    this.project = project;
    this.hooks = hooks;
    this.start = null;
    this.element = make("span", {
      class: "live", role: "spinbutton", tabindex: 0, "aria-label": LIVE_LABELS[what] || what, "data-live": what, "data-key": "live " + what,
      title: "Drag, use the arrow keys, or type",
      keydown: (event) => this.key(event),
      pointerdown: (event) => this.take(event),
      dblclick: () => this.edit(""),
      blur: () => this.editing || this.leave(),
    });
  }

  update(slot) {
    this.slot = slot;
    this.text = shown(slot.value, slot.kind, { rounding: slot.rounding });
    this.element.setAttribute("aria-valuenow", this.number(slot.value));
    this.element.setAttribute("aria-valuetext", this.text);
    if (!this.editing) this.element.textContent = this.text;
  }

  // The value as a plain number in the units of its field.
  number(value) {
    return Number(engineSays((engine) => engine.field_text(value, this.slot.kind, unitSystem.now)));
  }

  // A step is the third digit of the number, and never less than its last printed one.
  step() {
    const size = Math.abs(this.number(this.slot.value));
    const third = size > 0 ? 10 ** (Math.floor(Math.log10(size)) - 2) : 0.01;
    const decimals = (partsOfShown(this.text).number.split(".")[1] || "").length;
    return Math.max(third, 10 ** -decimals);
  }

  hold() {
    if (this.start === null) this.start = { tree: this.project().tree, text: this.project().text, value: this.slot.value, step: this.step(), steps: 0 };
  }

  leave() {
    this.start = null;
    this.project().rest();
  }

  move(steps) {
    this.hold();
    this.start.steps = steps;
    if (steps === 0) return this.bringBack();
    this.become(String(this.number(this.start.value) + steps * this.start.step));
  }

  become(text) {
    const { start } = this;
    onceWhole(() => this.turn(start, text));
  }

  turn(start, text) {
    const value = engineSays((engine) => engine.field_value(text, this.slot.kind, unitSystem.now));
    if (!Number.isFinite(value) || value <= 0) return;
    const changes = engineSays((engine) => engine.turned(start.text, this.what, value));
    if (!changes || changes.length === 0) return;
    let { tree } = start;
    for (const { path, value, word } of changes) tree = withValue(tree, path, word || value);
    this.hooks.turn(tree, "live " + this.what);
  }

  bringBack() {
    if (this.start !== null) this.hooks.turn(this.start.tree, "live " + this.what);
  }

  key(event) {
    if (this.editing || event.ctrlKey || event.metaKey || event.altKey) return;
    const moves = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: PAGE_STEPS, PageDown: -PAGE_STEPS };
    if (event.key in moves) {
      this.hold();
      this.move(this.start.steps + moves[event.key]);
    } else if (event.key === "Escape" && this.start !== null) {
      this.bringBack();
      this.start = null;
    } else if (event.key === "Enter" || event.key === "F2") {
      this.edit("");
    } else if (/^[\d.,]$/.test(event.key)) {
      this.edit(event.key);
    } else {
      return;
    }
    event.preventDefault();
  }

  // Dragging sideways turns the number; up and down still scrolls on a touch screen (the style says so).
  take(event) {
    if (this.editing || event.button !== 0) return;
    const from = event.clientX;
    this.start = null;
    this.hold();
    this.element.classList.add("taken");
    const move = (later) => this.move(Math.trunc((later.clientX - from) / PIXELS_A_STEP));
    const stop = (later) => {
      removeEventListener("pointermove", move);
      removeEventListener("pointerup", stop);
      removeEventListener("pointercancel", stop);
      removeEventListener("keydown", escape, true);
      this.element.classList.remove("taken");
      if (later.type === "pointercancel") this.bringBack();
      this.leave();
      this.hooks.ended();
    };
    const escape = (key) => {
      if (key.key !== "Escape") return;
      this.bringBack();
      stop(key);
    };
    addEventListener("pointermove", move);
    addEventListener("pointerup", stop);
    addEventListener("pointercancel", stop);
    addEventListener("keydown", escape, true);
  }

  edit(first) {
    if (this.editing) return;
    this.start = null;
    this.hold();
    this.editing = true;
    const label = this.element.getAttribute("aria-label");
    const input = make("input", { class: "typing", "aria-label": label, inputmode: "decimal", autocomplete: "off", size: 7,
      value: first || String(this.number(this.slot.value)),
      keydown: (event) => {
        event.stopPropagation();
        if (event.key === "Enter") finish(true);
        else if (event.key === "Escape") finish(false);
      },
      blur: () => finish(true),
    });
    const finish = (keep) => {
      if (!this.editing) return;
      const text = input.value.trim();
      const focused = this.element.getRootNode().activeElement === input;
      this.editing = false;
      this.element.textContent = this.text;
      if (keep && text !== "") this.become(text);
      this.leave();
      if (focused) this.element.focus({ preventScroll: true });
      this.hooks.ended();
    };
    fill(this.element, input);
    input.focus({ preventScroll: true });
    if (first === "") input.select();
  }
}
