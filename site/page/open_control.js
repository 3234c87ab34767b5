// Controls for what is not known: a number from one end to another, and ticks for the words that a choice may be.

class RangeControl extends Control {
  build() {
    this.inputs = ["from", "to"].map((end, place) => {
      const path = within(within(this.path, "between"), place);
      const input = make("input", { ...this.attributes(path, this.label + ", " + end), class: "number", inputmode: "decimal", type: "text", maxlength: 60,
        input: () => this.type(input, path) });
      return input;
    });
    this.element = make("span", { class: "control range" }, this.inputs);
  }

  type(input, path) {
    const value = this.seat.project().fieldValue(path, input.value, this.field.kind, unitSystem.now);
    this.change(value === undefined ? "" : value, path);
  }

  show() {
    for (const input of this.inputs) {
      const text = this.seat.project().fieldText(input.dataset.path, this.field.kind, unitSystem.now);
      if (input.value !== text) input.value = text;
    }
  }
}

class SetControl extends Control {
  build() {
    this.words = this.field.shape === "flag" ? [true, false] : this.field.words;
    const labels = this.words.map((word) => (word === true ? "yes" : word === false ? "no" : labelOfWord(this.field, word)));
    this.inputs = this.words.map((word, place) => make("input", { type: "checkbox", "data-path": this.path, "data-key": this.path + " " + word,
      "aria-label": this.label + ": " + labels[place], change: ({ currentTarget }) => this.tick(word, currentTarget.checked) }));
    this.element = make("span", { class: "control set" }, this.inputs.map((input, place) => make("label", { class: "word" }, input, " ", labels[place])));
  }

  list() {
    const value = this.seat.project().at(this.path);
    return isSet(value) ? value.one_of : [];
  }

  tick(word, may) {
    const list = this.list();
    this.change({ one_of: this.words.filter((other) => (other === word ? may : list.includes(other))) });
    this.seat.project().rest();
  }

  show() {
    const list = this.list();
    this.inputs.forEach((input, place) => {
      input.checked = list.includes(this.words[place]);
    });
  }
}

// Whether a field may be left open: what the file is called and which rule stands in it has to be known.
function mayBeOpen(field, path) {
  return ["number", "choice", "flag"].includes(field.shape) && field.key !== "rule" && path.includes(".");
}

function openedValue(field, value) {
  if (field.shape === "flag") return { one_of: [true, false] };
  if (field.shape === "choice") return { one_of: [value, field.default].filter((word) => field.words.includes(word)).slice(0, 1) };
  const now = typeof value === "number" ? value : field.default === undefined ? "" : field.default;
  return { between: [now, now] };
}

// What stands first in what it may be; nothing where that is empty.
function closedValue(value) {
  const [first] = value.between || value.one_of;
  return first === "" ? undefined : first;
}
